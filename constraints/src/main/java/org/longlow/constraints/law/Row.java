package org.longlow.constraints.law;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.words.Names;

/**
 * One thing that one body of rules asks.
 *
 * @param rules whose row
 * @param lamp which lamps it is about, if it is about lamps
 * @param zone where along the machine they must be to count
 * @param asked what is asked
 * @param least least of it: lamps, mm or mm²; negative infinity if there is none
 * @param most most of it; infinity if there is none
 * @param colours allowed colours of light
 * @param other the lamps it is measured to, where there are such
 * @param text a state, a field of view, or what is not answered
 * @param sources where it stands, the first one first
 */
public record Row(
    RuleSet rules,
    Optional<LampPart.Kind> lamp,
    Zone zone,
    Asked asked,
    double least,
    double most,
    Set<LampPart.Colour> colours,
    Optional<LampPart.Kind> other,
    String text,
    List<LawSource> sources) {

  /** Each edit asks for them; there are as many as texts in the tables. */
  private static final Map<String, FieldOfView> FIELDS = new ConcurrentHashMap<>();

  /** Which half of the wheelbase a lamp is in. */
  public enum Zone {
    ANYWHERE,
    FRONT,
    REAR
  }

  /** Returns the kind of lamp it is about, which it must have. */
  public LampPart.Kind kind() {
    return lamp.orElseThrow();
  }

  /** Returns from where its lamps have to be seen, if it is about that. */
  public FieldOfView field() {
    return FIELDS.computeIfAbsent(text, FieldOfView::read);
  }

  /** Returns whether this row asks for a least figure. */
  public boolean hasLeast() {
    return least > Double.NEGATIVE_INFINITY;
  }

  /** Returns whether this row asks for a greatest figure. */
  public boolean hasMost() {
    return most < Double.POSITIVE_INFINITY;
  }

  /** Returns whether a lamp is in the zone. */
  public boolean inZone(LampItem item) {
    return counts(item.ahead());
  }

  /** Returns whether a lamp in the front or the rear half of the wheelbase is in the zone. */
  public boolean counts(boolean ahead) {
    return zone == Zone.ANYWHERE || ahead == (zone == Zone.FRONT);
  }

  /** Returns its name in ids. */
  public String name() {
    String kind = lamp.map(Names::word).orElse("");
    String to = other.map(Names::word).orElse("");
    return switch (asked) {
      case CENTRES_APART -> kind + ".apart";
      case EDGES_APART -> kind + ".edges-apart";
      case PAIR_GAP -> kind + ".pair-gap";
      case GAP, GAP_OR_LESS, RED_GAP_TO_SINGLE -> kind + "." + to + "-gap";
      case OUTSIDE -> kind + ".outside-" + to;
      case AHEAD_OF_REARMOST -> kind + ".ahead";
      case NOT_ABOVE -> kind + ".below-" + to;
      case NOT_COVERED -> text.substring(0, text.indexOf(';'));
      // side reflectors have rows for each half
      default ->
          lamp.equals(Optional.of(LampPart.Kind.SIDE_REFLECTOR)) && zone != Zone.ANYWHERE
              ? Names.word(zone) + "-" + kind
              : kind;
    };
  }

  /** Returns the name of its lamps for reports. */
  public String words() {
    return words(name(), kind());
  }

  /** Returns the name of a kind of lamp for reports. */
  public static String words(LampPart.Kind kind) {
    return words(Names.word(kind), kind);
  }

  private static String words(String name, LampPart.Kind kind) {
    String plain = name.replace('-', ' ');
    return switch (kind) {
      case TAIL, STOP, FRONT_POSITION, DAYTIME, FRONT_FOG, REAR_FOG -> plain + " lamp";
      case PLATE -> "number plate";
      default -> plain;
    };
  }
}

package org.longlow.constraints.law;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.longlow.constraints.layout.Part.LampKind;

/**
 * What one body of rules asks of one kind of lamp. What is absent is not asked, or is named in
 * {@code unread}.
 *
 * @param rules whose row
 * @param name the lamp's name in ids, words joined by hyphens
 * @param kind which lamps it is about
 * @param zone where along the machine they must be to count
 * @param count how many
 * @param colours allowed colours
 * @param across where across the machine
 * @param heights heights above the road
 * @param area least lit area
 * @param unread what the law asks of this lamp that is not listed here, such as {@code height}
 */
public record LampRow(
    RuleSet rules,
    String name,
    LampKind kind,
    Zone zone,
    Count count,
    Optional<Colours> colours,
    Optional<Across> across,
    Optional<Heights> heights,
    Optional<Area> area,
    Optional<String> unread) {

  /** Which half of the wheelbase a lamp is in. */
  public enum Zone {
    ANYWHERE,
    FRONT,
    REAR;

    /** Returns whether {@code lamp} is in it. */
    public boolean holds(LampItem lamp) {
      return this == ANYWHERE || lamp.ahead() == (this == FRONT);
    }
  }

  /**
   * How many.
   *
   * @param least fewest, 0 if optional
   * @param most most of them; absent where the law read names only how many must be there
   */
  public record Count(int least, OptionalInt most, LawSource source) {

    static Count range(int least, int most, LawSource source) {
      return new Count(least, OptionalInt.of(most), source);
    }

    static Count atLeast(int least, LawSource source) {
      return new Count(least, OptionalInt.empty(), source);
    }
  }

  /** Colours of light, any of {@code allowed}. */
  public record Colours(Set<LampColour> allowed, LawSource source) {}

  /** Where across the machine. */
  public record Across(Placement placement, LawSource source) {}

  /** Where across the machine a kind of lamp must be. */
  public enum Placement {
    /** On the centreline, or in pairs symmetric about it. */
    CENTRELINE_OR_PAIR,
    /** On the centreline or on the right, the off side where traffic keeps left. */
    CENTRELINE_OR_OFF_SIDE,
    /** The same number on each side, at the same height. */
    EACH_SIDE
  }

  /** What of a lamp its height counts to. */
  public enum Datum {
    CENTRE,
    /** Lower edge of the lit area for a least height, upper edge for a greatest. */
    EDGE
  }

  /** Heights above the road, each with its own source. */
  public record Heights(Datum datum, Optional<Bound> least, Optional<Bound> most) {}

  /** One limit, mm above the road. */
  public record Bound(double mm, LawSource source) {}

  /**
   * Least lit area.
   *
   * @param aloneMm2 of a lamp that does the work alone, mm²
   * @param sharedMm2 of each of several that share it, mm²
   */
  public record Area(double aloneMm2, double sharedMm2, LawSource source) {}

  /** Returns the name for reports. */
  public String words() {
    return words(name, kind);
  }

  /** Returns the name of a kind of lamp for reports. */
  public static String words(LampKind kind) {
    return words(kind.name().toLowerCase(Locale.ROOT), kind);
  }

  private static String words(String name, LampKind kind) {
    String plain = name.replace('-', ' ').replace('_', ' ');
    return switch (kind) {
      case TAIL, STOP, FRONT_POSITION, DAYTIME, FRONT_FOG, REAR_FOG -> plain + " lamp";
      case PLATE -> "number plate";
      default -> plain;
    };
  }

  /** Returns a row that asks for nothing but a number. */
  static LampRow of(RuleSet rules, String name, LampKind kind, Zone zone, Count count) {
    return new LampRow(
        rules,
        name,
        kind,
        zone,
        count,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  LampRow with(Colours asked) {
    return new LampRow(
        rules, name, kind, zone, count, Optional.of(asked), across, heights, area, unread);
  }

  LampRow with(Across asked) {
    return new LampRow(
        rules, name, kind, zone, count, colours, Optional.of(asked), heights, area, unread);
  }

  LampRow with(Heights asked) {
    return new LampRow(
        rules, name, kind, zone, count, colours, across, Optional.of(asked), area, unread);
  }

  LampRow with(Area asked) {
    return new LampRow(
        rules, name, kind, zone, count, colours, across, heights, Optional.of(asked), unread);
  }

  LampRow unread(String what) {
    return new LampRow(
        rules, name, kind, zone, count, colours, across, heights, area, Optional.of(what));
  }
}

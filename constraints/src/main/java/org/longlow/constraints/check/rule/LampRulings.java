package org.longlow.constraints.check.rule;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.rule.Ruling.Outcome;
import org.longlow.constraints.law.Asked;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.law.Row;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.words.Names;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/** The lamps of a machine against one row of the tables: number, colour, place, height, size. */
final class LampRulings {

  /** Off-centre or out of level by less counts as drawn true; ours, not the law's, mm. */
  static final double DRAWN_TRUE_MM = 1;

  private final Row row;
  private final List<LampItem> lamps;
  private final int elsewhere;

  private LampRulings(Row row, List<LampItem> all) {
    this.row = row;
    List<LampItem> kind = all.stream().filter(l -> l.kind() == row.kind()).toList();
    this.lamps = kind.stream().filter(row::inZone).toList();
    // side reflectors have a row for each half
    this.elsewhere = row.kind() == LampPart.Kind.SIDE_REFLECTOR ? 0 : kind.size() - lamps.size();
  }

  /**
   * Returns what the row says.
   *
   * @param all every lamp of the machine
   */
  static List<Ruling> of(Row row, List<LampItem> all) {
    LampRulings rulings = new LampRulings(row, all);
    return switch (row.asked()) {
      case COUNT -> rulings.count().stream().toList();
      case COLOUR -> rulings.each(rulings::colour);
      case HEIGHT_OF_CENTRE, HEIGHT_OF_EDGE -> rulings.each(rulings::height);
      case STATE_HEIGHT -> rulings.each(rulings::stateHeight);
      case AREA -> rulings.each(rulings::area);
      case AREA_ALONE -> rulings.lamps.size() == 1 ? rulings.each(rulings::area) : List.of();
      case AREA_SHARED -> rulings.lamps.size() > 1 ? rulings.each(rulings::area) : List.of();
      case UNREAD -> List.of(rulings.unread());
      case CENTRELINE_OR_PAIR, CENTRELINE_OR_OFF_SIDE, EACH_SIDE ->
          rulings.lamps.isEmpty() ? List.of() : List.of(rulings.across());
      default -> throw new IllegalArgumentException(row.asked() + " is not about a kind of lamp");
    };
  }

  /** Returns the names of the parts of some lamps, each once. */
  static List<String> parts(List<LampItem> lamps) {
    return lamps.stream().map(LampItem::part).distinct().toList();
  }

  /** Lamps on one side, lowest first. */
  static List<LampItem> sideOf(List<LampItem> lamps, int sign) {
    return lamps.stream()
        .filter(l -> l.yMm() * sign > 0)
        .sorted(Comparator.comparingDouble(LampItem::zMm))
        .toList();
  }

  /** One ruling for each part; the second of a pair is as the first. */
  private List<Ruling> each(Function<LampItem, Ruling> judge) {
    return lamps.stream().filter(l -> !l.other()).map(judge).toList();
  }

  private String subject() {
    return lamps.isEmpty() ? row.words() : String.join(", ", parts(lamps));
  }

  /** All lamps of the row, or the kind of lamp where there are none. */
  private About about(String aspect) {
    return new About(subject(), parts(lamps), Optional.empty(), List.of(row.name(), aspect));
  }

  private About about(String aspect, LampItem lamp) {
    return About.parts(lamp.part()).named(row.name(), aspect, lamp.part());
  }

  private Optional<Ruling> count() {
    int n = lamps.size();
    int least = (int) row.least();
    boolean open = !row.hasMost();
    if (least == 0 && n + elsewhere == 0) {
      return Optional.empty();
    }
    int most = open ? least : (int) row.most();
    Outcome outcome =
        n < least || (n > most && !open)
            ? Outcome.OUTSIDE
            : n > most || elsewhere > 0 ? Outcome.CARE : Outcome.INSIDE;
    String asked =
        least == most
            ? least + " asked"
            : least == 0 ? "at most " + most + " allowed" : least + " to " + most + " asked";
    String remedy =
        n < least
            ? "; add a part of kind lamp that is a " + Names.word(row.kind())
            : n > most ? open ? "; whether more are allowed was not read" : "; leave some out" : "";
    String half = row.zone() == Row.Zone.FRONT ? "rear" : "front";
    String astray =
        elsewhere == 0 ? "" : "; " + elsewhere + " in the " + half + " half not counted";
    String given = row.words() + ": " + (n == 0 ? "none" : n) + " given, ";
    return Optional.of(
        Ruling.of(
            row,
            about("count"),
            outcome,
            Figures.within(n, least, most, FigureUnit.COUNT),
            Words.of(given + asked + remedy + astray)));
  }

  private Ruling colour(LampItem lamp) {
    return Ruling.of(
        row,
        about("colour", lamp),
        row.colours().contains(lamp.colour()) ? Outcome.INSIDE : Outcome.OUTSIDE,
        Figures.NONE,
        Words.of(
            lamp.part()
                + " is "
                + Names.word(lamp.colour())
                + "; allowed is "
                + row.colours().stream().map(Names::word).collect(Collectors.joining(" or "))));
  }

  /** Each edge has its own limit: the one with less to spare is told. */
  private Ruling height(LampItem lamp) {
    boolean centre = row.asked() == Asked.HEIGHT_OF_CENTRE;
    double lowMm = centre ? lamp.zMm() : lamp.lowestMm();
    double highMm = centre ? lamp.zMm() : lamp.highestMm();
    boolean nearLow = lowMm - row.least() <= row.most() - highMm;
    Figures figures =
        nearLow
            ? Figures.atLeast(lowMm, row.least(), FigureUnit.MM)
            : Figures.atMost(highMm, row.most(), FigureUnit.MM);
    return Ruling.of(
        row,
        about("height", lamp),
        figures,
        Say.format(
            "%s: the %s is %s above the road%s, at %s %s asked%s",
            lamp.part(),
            centre ? "centre" : (nearLow ? "lower" : "upper") + " edge of the lit area",
            Say.mm(figures.value()),
            lamp.steered() ? ", wheel straight ahead" : "",
            nearLow ? "least" : "most",
            Say.mm(figures.limit()),
            figures.inside()
                ? ""
                : Words.of(
                    "; " + (nearLow ? "raise" : "lower") + " it by ",
                    Words.atLeast(-figures.margin()))));
  }

  private Ruling stateHeight(LampItem lamp) {
    Figures figures = Figures.within(lamp.zMm(), row.least(), row.most(), FigureUnit.MM);
    return Ruling.of(
        row,
        About.parts(lamp.part())
            .named(row.words().replace(' ', '-'), "state-height", row.text(), lamp.part()),
        figures.inside() ? Outcome.INSIDE : Outcome.CARE,
        figures,
        Say.format(
            "%s: states may differ; %s asks %s to %s to the centre, and it is at %s",
            lamp.part(), row.text(), Say.mm(row.least()), Say.mm(row.most()), Say.mm(lamp.zMm())));
  }

  private Ruling area(LampItem lamp) {
    Figures figures = Figures.atLeast(lamp.areaMm2(), row.least(), FigureUnit.MM2);
    // as wide as high may be a square, too
    boolean square = lamp.round() && lamp.boxAreaMm2() >= row.least();
    return Ruling.of(
        row,
        about("area", lamp),
        figures.inside() ? Outcome.INSIDE : square ? Outcome.CARE : Outcome.OUTSIDE,
        figures,
        Say.format(
            "%s: the lit area as drawn%s is %s, at least %s asked",
            lamp.part(),
            lamp.round() ? ", taken as round," : "",
            Words.figure(lamp.areaMm2(), FigureSort.AREA),
            Words.figure(row.least(), FigureSort.AREA)));
  }

  private Ruling across() {
    return switch (row.asked()) {
      case CENTRELINE_OR_PAIR ->
          drawnTrue(
              lamps.stream().mapToDouble(this::offSymmetryMm).max().orElseThrow(),
              "off the centreline, or off the mirror image of its pair");
      case CENTRELINE_OR_OFF_SIDE ->
          drawnTrue(
              Math.max(0, lamps.stream().mapToDouble(LampItem::yMm).min().orElseThrow()),
              "left of the centreline; it may be on it or on the right");
      default -> eachSide();
    };
  }

  private Ruling drawnTrue(double offMm, String what) {
    return Ruling.of(
        row,
        about("placement"),
        Figures.atMost(offMm, DRAWN_TRUE_MM, FigureUnit.MM),
        Say.format(
            "%s (%s): %s %s, %s counts as true",
            row.words(), subject(), Say.mm(offMm), what, Say.mm(DRAWN_TRUE_MM)));
  }

  private double offSymmetryMm(LampItem lamp) {
    double off = Math.abs(lamp.yMm());
    for (LampItem other : lamps) {
      if (other != lamp) {
        off = Math.min(off, Math.hypot(lamp.yMm() + other.yMm(), lamp.zMm() - other.zMm()));
      }
    }
    return off;
  }

  private Ruling eachSide() {
    List<LampItem> left = sideOf(lamps, 1);
    List<LampItem> right = sideOf(lamps, -1);
    if (left.isEmpty()
        || left.size() != right.size()
        || left.size() + right.size() != lamps.size()) {
      return Ruling.said(
          row,
          about("placement"),
          Outcome.OUTSIDE,
          Say.format(
              "%s: %d on the left and %d on the right; the same number belongs on each side",
              row.words(), left.size(), right.size()));
    }
    double difference = 0;
    for (int i = 0; i < left.size(); i++) {
      difference = Math.max(difference, Math.abs(left.get(i).zMm() - right.get(i).zMm()));
    }
    return drawnTrue(difference, "between the heights of left and right");
  }

  private Ruling unread() {
    return Ruling.said(
        row,
        About.thing(row.words(), row.name(), "not-covered"),
        Outcome.NOT_COVERED,
        Words.read(
            "Not covered: " + row.text() + " of the " + row.words() + "; the text was not read"));
  }
}

package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.longlow.constraints.check.Ruling.Outcome;
import org.longlow.constraints.law.LampColour;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.law.LampRow;
import org.longlow.constraints.law.LampRow.Bound;
import org.longlow.constraints.law.LampRow.Datum;
import org.longlow.constraints.law.LampRow.Zone;
import org.longlow.constraints.law.LawSource;
import org.longlow.constraints.layout.Part.LampKind;

/** The lamps of a machine against one row of a lamp table: number, colour, place, height, size. */
final class LampRulings {

  /** Off-centre or out of level by less counts as drawn true; ours, not the law's, mm. */
  static final double DRAWN_TRUE_MM = 1;

  private final LampRow row;
  private final List<LampItem> lamps;
  private final int elsewhere;
  private final List<Ruling> out = new ArrayList<>();

  private LampRulings(LampRow row, List<LampItem> all) {
    this.row = row;
    List<LampItem> kind = all.stream().filter(l -> l.kind() == row.kind()).toList();
    this.lamps = kind.stream().filter(row.zone()::holds).toList();
    // side reflectors have a row for each half
    this.elsewhere = row.kind() == LampKind.SIDE_REFLECTOR ? 0 : kind.size() - lamps.size();
  }

  /**
   * Returns what the row says.
   *
   * @param all every lamp of the machine
   */
  static List<Ruling> of(LampRow row, List<LampItem> all) {
    LampRulings rulings = new LampRulings(row, all);
    rulings.count();
    for (LampItem lamp : rulings.lamps) {
      if (!lamp.other()) {
        rulings.colour(lamp);
        rulings.height(lamp);
        rulings.area(lamp);
      }
    }
    rulings.across();
    rulings.unread();
    return rulings.out;
  }

  /** Returns the names of the parts of some lamps, each once. */
  static List<String> parts(List<LampItem> lamps) {
    return lamps.stream().map(LampItem::part).distinct().toList();
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

  private void add(
      About about, Outcome outcome, Figures figures, String text, List<LawSource> sources) {
    out.add(new Ruling(row.rules(), about, outcome, figures, text, sources));
  }

  private void count() {
    int n = lamps.size();
    int least = row.count().least();
    boolean open = row.count().most().isEmpty();
    if (least == 0 && (open || n + elsewhere == 0)) {
      return;
    }
    int most = row.count().most().orElse(Math.max(1, least));
    Outcome outcome =
        n < least || (n > most && !open)
            ? Outcome.OUTSIDE
            : n > most || elsewhere > 0 ? Outcome.CARE : Outcome.INSIDE;
    Figures figures =
        n - least <= most - n
            ? Figures.atLeast(n, least, FigureUnit.COUNT)
            : Figures.atMost(n, most, FigureUnit.COUNT);
    String asked =
        least == most
            ? least + " asked"
            : least == 0 ? "at most " + most + " allowed" : least + " to " + most + " asked";
    String remedy =
        n < least
            ? "; add a part of kind lamp that is a "
                + row.kind().name().toLowerCase(Locale.ROOT).replace('_', '-')
            : n > most ? open ? "; whether more are allowed was not read" : "; leave some out" : "";
    String astray =
        elsewhere == 0
            ? ""
            : "; "
                + elsewhere
                + (row.zone() == Zone.FRONT ? " in the rear half" : " in the front half")
                + " not counted";
    add(
        about("count"),
        outcome,
        figures,
        row.words() + ": " + (n == 0 ? "none" : n) + " given, " + asked + remedy + astray,
        List.of(row.count().source()));
  }

  private void colour(LampItem lamp) {
    row.colours()
        .ifPresent(
            colours -> {
              boolean allowed = colours.allowed().contains(lamp.colour());
              add(
                  about("colour", lamp),
                  allowed ? Outcome.INSIDE : Outcome.OUTSIDE,
                  Figures.NONE,
                  lamp.part()
                      + " is "
                      + lamp.colour().word()
                      + "; allowed is "
                      + words(colours.allowed()),
                  List.of(colours.source()));
            });
  }

  private static String words(Set<LampColour> colours) {
    return EnumSet.copyOf(colours).stream()
        .map(LampColour::word)
        .collect(Collectors.joining(" or "));
  }

  private void height(LampItem lamp) {
    row.heights()
        .ifPresent(
            heights -> {
              boolean centre = heights.datum() == Datum.CENTRE;
              List<LawSource> sources = new ArrayList<>();
              heights.least().map(Bound::source).ifPresent(sources::add);
              heights
                  .most()
                  .map(Bound::source)
                  .filter(s -> !sources.contains(s))
                  .ifPresent(sources::add);
              // each edge has its own limit: the one with less to spare is told
              Figures low =
                  Figures.atLeast(
                      centre ? lamp.zMm() : lamp.lowestMm(),
                      heights.least().map(Bound::mm).orElse(Double.NEGATIVE_INFINITY),
                      FigureUnit.MM);
              Figures high =
                  Figures.atMost(
                      centre ? lamp.zMm() : lamp.highestMm(),
                      heights.most().map(Bound::mm).orElse(Double.POSITIVE_INFINITY),
                      FigureUnit.MM);
              boolean nearLow = low.margin() <= high.margin();
              Figures figures = nearLow ? low : high;
              add(
                  about("height", lamp),
                  Outcome.of(figures),
                  figures,
                  lamp.part()
                      + ": the "
                      + (centre
                          ? "centre"
                          : (nearLow ? "lower" : "upper") + " edge of the lit area")
                      + " is "
                      + Say.mm(figures.value())
                      + " above the road"
                      + (lamp.steered() ? ", wheel straight ahead" : "")
                      + ", at "
                      + (nearLow ? "least " : "most ")
                      + Say.mm(figures.limit())
                      + " asked"
                      + (figures.inside()
                          ? ""
                          : "; "
                              + (nearLow ? "raise" : "lower")
                              + " it by "
                              + Say.mm(-figures.margin())),
                  sources);
            });
  }

  private void area(LampItem lamp) {
    row.area()
        .ifPresent(
            area -> {
              boolean shared =
                  lamps.size() > 1
                      && row.across()
                          .filter(a -> a.placement() == LampRow.Placement.EACH_SIDE)
                          .isEmpty();
              double least = shared ? area.sharedMm2() : area.aloneMm2();
              Figures figures = Figures.atLeast(lamp.areaMm2(), least, FigureUnit.MM2);
              // as wide as high may be a square, too
              boolean square = lamp.round() && lamp.boxAreaMm2() >= least;
              add(
                  about("area", lamp),
                  figures.inside() ? Outcome.INSIDE : square ? Outcome.CARE : Outcome.OUTSIDE,
                  figures,
                  Say.format(
                      "%s: the lit area as drawn%s is %.0f mm2, at least %.0f mm2 asked",
                      lamp.part(), lamp.round() ? ", taken as round," : "", lamp.areaMm2(), least),
                  List.of(area.source()));
            });
  }

  private void across() {
    if (lamps.isEmpty() || row.across().isEmpty()) {
      return;
    }
    List<LawSource> source = List.of(row.across().get().source());
    switch (row.across().get().placement()) {
      case CENTRELINE_OR_PAIR ->
          drawnTrue(
              lamps.stream().mapToDouble(this::offSymmetryMm).max().orElseThrow(),
              "off the centreline, or off the mirror image of its pair",
              source);
      case CENTRELINE_OR_OFF_SIDE ->
          drawnTrue(
              Math.max(0, lamps.stream().mapToDouble(LampItem::yMm).min().orElseThrow()),
              "left of the centreline; it may be on it or on the right",
              source);
      case EACH_SIDE -> eachSide(source);
    }
  }

  private void drawnTrue(double offMm, String what, List<LawSource> sources) {
    Figures figures = Figures.atMost(offMm, DRAWN_TRUE_MM, FigureUnit.MM);
    add(
        about("placement"),
        Outcome.of(figures),
        figures,
        row.words()
            + " ("
            + subject()
            + "): "
            + Say.mm(offMm)
            + " "
            + what
            + ", "
            + Say.mm(DRAWN_TRUE_MM)
            + " counts as true",
        sources);
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

  private void eachSide(List<LawSource> sources) {
    List<LampItem> left = sideOf(lamps, 1);
    List<LampItem> right = sideOf(lamps, -1);
    if (left.isEmpty()
        || left.size() != right.size()
        || left.size() + right.size() != lamps.size()) {
      add(
          about("placement"),
          Outcome.OUTSIDE,
          Figures.NONE,
          row.words()
              + ": "
              + left.size()
              + " on the left and "
              + right.size()
              + " on the right; the same number belongs on each side",
          sources);
      return;
    }
    double difference = 0;
    for (int i = 0; i < left.size(); i++) {
      difference = Math.max(difference, Math.abs(left.get(i).zMm() - right.get(i).zMm()));
    }
    drawnTrue(difference, "between the heights of left and right", sources);
  }

  /** Lamps on one side, lowest first. */
  static List<LampItem> sideOf(List<LampItem> lamps, int sign) {
    return lamps.stream()
        .filter(l -> l.yMm() * sign > 0)
        .sorted(Comparator.comparingDouble(LampItem::zMm))
        .toList();
  }

  private void unread() {
    row.unread()
        .ifPresent(
            what ->
                add(
                    About.thing(row.words(), row.name(), "not-covered"),
                    Outcome.CARE,
                    Figures.NONE,
                    "Not covered: " + what + " of the " + row.words() + "; the text was not read",
                    List.of(row.count().source())));
  }
}

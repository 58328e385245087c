package org.longlow.constraints.check.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.rule.Ruling.Outcome;
import org.longlow.constraints.law.Asked;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.law.Row;
import org.longlow.constraints.layout.LampPart;
import org.longlow.rider.words.Words;

/** Distances between the lamps of a machine against one row of the tables. */
final class SpacingRulings {

  private final Row row;
  private final List<LampItem> lamps;
  private final double rearmostXMm;
  private final List<Ruling> out = new ArrayList<>();

  private SpacingRulings(Row row, List<LampItem> lamps, double rearmostXMm) {
    this.row = row;
    this.lamps = lamps;
    this.rearmostXMm = rearmostXMm;
  }

  /**
   * Returns what the row says; nothing where a lamp it is about is not given.
   *
   * @param rearmostXMm rearmost point of the machine, mm
   */
  static List<Ruling> of(Row row, List<LampItem> lamps, double rearmostXMm) {
    SpacingRulings rulings = new SpacingRulings(row, lamps, rearmostXMm);
    rulings.judge();
    return rulings.out;
  }

  private List<LampItem> all(LampPart.Kind kind) {
    return lamps.stream().filter(l -> l.kind() == kind).toList();
  }

  private void judge() {
    List<LampItem> those = all(row.kind());
    switch (row.asked()) {
      case CENTRES_APART, EDGES_APART -> apart(those);
      case PAIR_GAP -> pairGap(those);
      case GAP, GAP_OR_LESS, OUTSIDE, NOT_ABOVE -> toOthers(those, all(row.other().orElseThrow()));
      case RED_GAP_TO_SINGLE -> redGap(those, all(row.other().orElseThrow()));
      case AHEAD_OF_REARMOST ->
          those.stream()
              .filter(l -> !l.other())
              .forEach(
                  l -> add(List.of(l), l.xMm() - rearmostXMm, "distance ahead of the rear end"));
      default -> throw new IllegalArgumentException(row.asked() + " is not about a distance");
    }
  }

  private void apart(List<LampItem> those) {
    List<LampItem> left = LampRulings.sideOf(those, 1);
    List<LampItem> right = LampRulings.sideOf(those, -1);
    boolean edges = row.asked() == Asked.EDGES_APART;
    for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
      LampItem l = left.get(i);
      LampItem r = right.get(i);
      double lit = edges ? l.halfWidthMm() + r.halfWidthMm() : 0;
      add(
          List.of(l, r),
          l.yMm() - r.yMm() - lit,
          edges ? "distance between the inner edges" : "distance between the centres");
    }
  }

  private void pairGap(List<LampItem> those) {
    if (those.size() == 2
        && those.stream().noneMatch(l -> Math.abs(l.yMm()) <= LampRulings.DRAWN_TRUE_MM)) {
      LampItem a = those.get(0);
      LampItem b = those.get(1);
      add(
          those,
          Math.abs(a.yMm() - b.yMm()) - a.halfWidthMm() - b.halfWidthMm(),
          "gap between the lit areas of the two");
    }
  }

  private void redGap(List<LampItem> signals, List<LampItem> lamp) {
    boolean single = lamp.size() == 1 && Math.abs(lamp.get(0).yMm()) <= LampRulings.DRAWN_TRUE_MM;
    boolean red = signals.stream().anyMatch(s -> s.colour() == LampPart.Colour.RED);
    if (single && red) {
      toOthers(signals.stream().filter(s -> s.colour() == LampPart.Colour.RED).toList(), lamp);
    } else if (!signals.isEmpty() && !lamp.isEmpty()) {
      out.add(
          Ruling.said(
              row,
              About.lamps(LampRulings.parts(signals)).named(row.name()),
              Outcome.NOT_APPLICABLE,
              Say.format(
                  "The gap of %s to the %s is asked only of red signals beside a single one on the"
                      + " centreline",
                  Say.mm(row.least()), Row.words(row.other().orElseThrow()))));
    }
  }

  /** Each part against each other part, at the places where that is worst. */
  private void toOthers(List<LampItem> those, List<LampItem> others) {
    for (String part : LampRulings.parts(those)) {
      for (String other : LampRulings.parts(others)) {
        List<LampItem[]> pairs =
            those.stream()
                .filter(l -> l.part().equals(part))
                .flatMap(
                    l ->
                        others.stream()
                            .filter(o -> o.part().equals(other))
                            .map(o -> new LampItem[] {l, o}))
                .toList();
        worst(pairs)
            .ifPresent(p -> add(List.of(p[0], p[1]), measured(p[0], p[1]).orElseThrow(), words()));
      }
    }
  }

  private Optional<LampItem[]> worst(List<LampItem[]> pairs) {
    Comparator<LampItem[]> byValue =
        Comparator.comparingDouble(p -> measured(p[0], p[1]).orElseThrow());
    Stream<LampItem[]> that = pairs.stream().filter(p -> measured(p[0], p[1]).isPresent());
    return row.hasLeast() ? that.min(byValue) : that.max(byValue);
  }

  private OptionalDouble measured(LampItem lamp, LampItem other) {
    return switch (row.asked()) {
      case OUTSIDE ->
          lamp.yMm() * other.yMm() >= 0 || Math.abs(other.yMm()) <= LampRulings.DRAWN_TRUE_MM
              ? OptionalDouble.of(
                  Math.abs(lamp.yMm())
                      - lamp.halfWidthMm()
                      - Math.abs(other.yMm())
                      - other.halfWidthMm())
              : OptionalDouble.empty();
      case NOT_ABOVE -> OptionalDouble.of(lamp.highestMm() - other.highestMm());
      default -> OptionalDouble.of(lamp.frontViewGapMm(other));
    };
  }

  private String words() {
    return switch (row.asked()) {
      case OUTSIDE -> "distance outside the other's outer edge";
      case NOT_ABOVE -> "height of the upper edge above the other's";
      default -> "gap between the lit areas, seen along the machine";
    };
  }

  private void add(List<LampItem> about, double valueMm, String what) {
    List<String> parts = LampRulings.parts(about);
    boolean depends = row.asked() == Asked.GAP_OR_LESS;
    Figures figures = Figures.within(valueMm, row.least(), row.most(), FigureUnit.MM);
    Words remedy =
        depends
            ? Words.of("; less may be allowed, see the source")
            : Words.of("; move it by ", Words.atLeast(-figures.margin()));
    out.add(
        Ruling.of(
            row,
            About.lamps(parts).named(row.name(), String.join("+", parts)),
            figures.inside() ? Outcome.INSIDE : depends ? Outcome.CARE : Outcome.OUTSIDE,
            figures,
            Say.format(
                "%s: %s is %s, at %s %s asked%s",
                String.join(", ", parts),
                what,
                Say.mm(valueMm),
                row.hasLeast() ? "least" : "most",
                Say.mm(figures.limit()),
                figures.inside() ? "" : remedy)));
  }
}

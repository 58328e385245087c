package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.ByPlaces;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Spreads;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.seat.FoamLayer;
import org.longlow.rider.seat.FoamStack;
import org.longlow.rider.seat.LongRide;
import org.longlow.rider.seat.SeatGeometry;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.words.Words;

/** How hard a pan presses over a long ride, and whether its cover lies close or bridges. */
public final class LongRideFindings {

  /** Pressure under the sit bones. */
  public static final FindingKind PRESSURE =
      new FindingKind("pressure", FindingGroup.SEAT, Rests.ON_DRAWING);

  /** What a cover must give. */
  public static final FindingKind COVER =
      new FindingKind("cover", FindingGroup.SEAT, Rests.ON_DRAWING);

  private static final List<Basis> PRESSED =
      List.of(
          Basis.model("layered foam pressed by the body's outline"),
          Basis.practice(
              "twice that under the sit bones is an order of magnitude, common practice"),
          Basis.published(
              Known.FROM_MEMORY,
              "what drivers' seats aim at there (Diebschlag 1988, Reed 2000, from memory)"));

  private static final List<Basis> COVERED =
      List.of(
          Basis.model("arc of the buttocks less its chord"),
          Basis.published(
              Known.CHECKED,
              "covers as sewn did not change peak pressure (Denne 1981; Crawford and others)"),
          Basis.practice(
              "that a tight cover which gives less bridges the hollow is common practice"));

  /** By how much layers are thought thicker, mm. */
  private static final double THICKER_MM = 20;

  /**
   * A layer that is worth being thicker.
   *
   * @param name of the layer
   * @param kPa about what is left under the sit bones then
   */
  private record Thicker(String name, double kPa) {
    Words words() {
      return Say.format(
          ": make %s %s thicker, for about %s then", name, Say.wholeMm(THICKER_MM), Say.kpa(kPa));
    }
  }

  private static final ByPlaces<Sitting, Optional<Thicker>> THICKER =
      new ByPlaces<>(32, 2, LongRideFindings::thicker);

  private LongRideFindings() {}

  public static List<Finding> of(Sitting sitting, Condition stance, Places places) {
    Optional<SeatOutcome.Seated> seated = sitting.seated().filter(s -> s.load().carried());
    if (seated.isEmpty()) {
      return List.of();
    }
    SeatOutcome.Seated s = seated.get();
    CushionPart pan = sitting.parts().pan();
    double width = Spreads.of(pan.base(), places).stream().mapToDouble(Interval::length).sum();
    double give = LongRide.coverGiveMm(sitting.body(), s.pan().sinkMm(), width);
    List<Finding> findings = new ArrayList<>(List.of(pressure(sitting, stance, places, s, give)));
    pan.coverGive()
        .ifPresent(g -> findings.add(cover(sitting, stance, pan, s, give, places.value(g))));
    return findings;
  }

  private static Finding pressure(
      Sitting sitting, Condition stance, Places places, SeatOutcome.Seated s, double give) {
    CushionPart pan = sitting.parts().pan();
    double kPa = LongRide.sitBonesKPa(s.pan());
    Figures figures = Figures.atMost(kPa, LongRide.MOST_KPA, FigureUnit.KPA);
    boolean soft = figures.verdict() == Verdict.PASS;
    return new Finding(
            PRESSURE,
            About.person(sitting.occupant(), "sit bones on " + pan.name(), "sit-bones")
                .on(pan.name()),
            Optional.of(stance),
            soft ? Verdict.PASS : Verdict.CAUTION,
            figures,
            PRESSED,
            Words.of(
                Say.format(
                    "%s presses on %s with about %s under the sit bones, %s on average; seats for"
                        + " long rides keep to %s",
                    sitting.occupant().words(),
                    pan.name(),
                    Say.kpa(kPa),
                    Say.kpa(s.pan().meanKPa()),
                    Say.kpa(LongRide.MOST_KPA)),
                soft
                    ? "."
                    : Words.of(
                        THICKER.of(sitting, places).map(Thicker::words).orElse(Words.NONE),
                        "; the cushion bench tries other foam too (What next?)."),
                Rucksack.words(sitting),
                pan.coverGive().isPresent()
                    ? Words.NONE
                    : Say.format(
                        " So deep, the cover must get %s longer front to back, or it bridges the"
                            + " hollow.",
                        Say.wholeMm(give))))
        .at(s.pan().centre());
  }

  /** The layer that helps most where it is thicker; empty where none does. */
  private static Optional<Thicker> thicker(Sitting sitting, Places places) {
    SeatOutcome.Seated seated = sitting.seated().orElseThrow();
    SeatGeometry seat = Seats.geometry(sitting.parts(), places).orElseThrow();
    List<FoamLayer> layers = seat.pan().foam().layers();
    List<Thicker> all = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      FoamLayer layer = layers.get(i);
      List<FoamLayer> other = new ArrayList<>(layers);
      other.set(i, new FoamLayer(layer.thicknessMm() + THICKER_MM, layer.foam()));
      FoamStack stack = new FoamStack(other);
      String called = sitting.parts().pan().layers().get(i).name();
      all.add(
          new Thicker(
              "layer " + (i + 1) + (called.isEmpty() ? "" : " (" + called + ")"),
              LongRide.sitBonesKPa(sitting.body(), seat, seated, stack)));
    }
    return all.stream()
        .min(Comparator.comparingDouble(Thicker::kPa))
        .filter(t -> t.kPa() < LongRide.sitBonesKPa(seated.pan()));
  }

  private static Finding cover(
      Sitting sitting,
      Condition stance,
      CushionPart pan,
      SeatOutcome.Seated s,
      double needed,
      double gives) {
    Figures figures = Figures.atLeast(gives, needed, FigureUnit.MM);
    boolean close = figures.verdict() == Verdict.PASS;
    return new Finding(
            COVER,
            About.person(sitting.occupant(), "cover of " + pan.name(), "cover").on(pan.name()),
            Optional.of(stance),
            close ? Verdict.PASS : Verdict.CAUTION,
            figures,
            COVERED,
            Words.of(
                Say.format(
                    "The cover of %s can get %s longer; %s, sunk in, needs %s",
                    pan.name(), Say.mm(gives), sitting.occupant().words(), Say.mm(needed)),
                close
                    ? Words.of(".")
                    : Say.format(
                        ": it bridges the hollow like a hammock and the foam does less than is said"
                            + " here. Sew in %s of slack or pleats, or take a cover that stretches.",
                        Words.atLeast(needed - gives))))
        .at(s.pan().centre());
  }
}

package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
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
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.chassis.LoadIndex;
import org.longlow.constraints.machine.chassis.TyreSize;
import org.longlow.constraints.machine.chassis.TyreSizeReader;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.Words;

/** Whether tyres carry what stands on them, and are as large as their size says. */
public final class TyreFindings {

  /** What a tyre carries. */
  public static final FindingKind TYRE_LOAD =
      new FindingKind("tyre-load", FindingGroup.LOADS, Rests.ON_MASSES);

  /** A measured radius against the size written beside it. */
  static final FindingKind TYRE_SIZE =
      new FindingKind("tyre-size", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** A gap round a tyre against how much a tyre of its size may be larger, and grows. */
  static final FindingKind TYRE_GROWTH =
      new FindingKind("tyre-growth", FindingGroup.GAPS, Rests.ON_DRAWING);

  /** A tyre grows by so much in radius at speed and warm, mm; common practice, no source. */
  static final double GROWTH_MM = 10;

  private static final Basis GROWTH =
      Basis.practice(
          "common practice, no source: a tyre grows by up to 10 mm in radius at speed and warm");

  /** Pressure at which a tyre carries all that its index says; from memory, read the sidewall. */
  static final double FULL_KPA = 280;

  /** A tyre may be so much of its section's height larger or smaller than its size; from memory. */
  static final double LARGER = 0.04;

  static final double SMALLER = 0.03;

  /**
   * A size in letters is read as the nearest in figures, and may be so far from it; judgement, mm.
   */
  private static final double CONVERTED_MM = 3;

  private static final Memo<String, OptionalInt> INDEXES =
      new Memo<>(16, tyre -> TyreSizeReader.read(tyre).size().loadIndex());

  private static final double KPA = 0.001;

  private static final List<Basis> LOAD_BASIS =
      List.of(
          Basis.model("statics of masses on two axles, at rest"),
          Basis.published(
              Known.CHECKED, "load index table of ISO 4000-1 and ETRTO, as a tyre shop has it"),
          Basis.practice(
                  Say.format(
                      "common practice, from memory: all of it at %s, less in proportion under that;"
                          + " the sidewall says the true pressure",
                      Say.kpa(FULL_KPA)))
              .fromMemory());

  private static final List<Basis> SIZE_BASIS =
      List.of(
          Basis.model("section and rim of the size"),
          Basis.published(
              Known.FROM_MEMORY,
              "UN R75: a tyre is up to 4 % of its section's height larger in radius than its size,"
                  + " or 3 % smaller"));

  private TyreFindings() {}

  /** Returns what each tyre carries, with the crew that loads it most. */
  public static List<Finding> loads(Wheels wheels, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    for (boolean front : new boolean[] {true, false}) {
      WheelPart wheel = front ? wheels.front() : wheels.rear();
      standings.stream()
          .filter(s -> s.kind() == Stance.Kind.LADEN || s.kind() == Stance.Kind.UNLADEN)
          .filter(s -> s.load() != null && !wheel.tyre().isEmpty())
          .max(Comparator.comparingDouble(s -> carriedKg(s, front)))
          .filter(s -> carriedKg(s, front) > 0)
          .map(s -> load(wheel, s, carriedKg(s, front)))
          .ifPresent(findings::add);
    }
    return findings;
  }

  /** Returns the same of tyres with a load index: that one is missing is not about who rides. */
  public static List<Finding> indexed(Wheels wheels, List<Standing> standings) {
    return loads(wheels, standings).stream().filter(f -> Double.isFinite(f.limit())).toList();
  }

  private static double carriedKg(Standing s, boolean front) {
    return (front ? s.load().axles().frontN() : s.load().axles().rearN())
        / Values.STANDARD_GRAVITY_MS2;
  }

  private static Finding load(WheelPart wheel, Standing s, double carriedKg) {
    OptionalInt index = INDEXES.of(wheel.tyre());
    String people = s.condition().people();
    Words carries =
        Say.format(
            "With %s the tyre of %s carries %s",
            people.isEmpty() ? "nobody on it" : people, wheel.name(), Say.kg(carriedKg));
    OptionalInt asked = LoadIndex.carrying(carriedKg);
    if (index.isEmpty() || LoadIndex.kg(index.getAsInt()).isEmpty()) {
      return of(
          wheel,
          s,
          Verdict.CAUTION,
          Figures.only(carriedKg, FigureUnit.KG),
          Words.of(
              carries,
              index.isEmpty()
                  ? ", and no load index is written behind its size"
                  : ", and no table has its load index " + index.getAsInt(),
              asked.isPresent()
                  ? "; it takes at least "
                      + asked.getAsInt()
                      + ": read it on the sidewall and write it there, such as 58H."
                  : "; no index of the table is enough for that."));
    }
    double fullKg = LoadIndex.kg(index.getAsInt()).getAsDouble();
    double kpa = wheel.pressure().map(p -> s.places().value(p) / KPA).orElse(FULL_KPA);
    double nowKg = fullKg * Math.min(1, kpa / FULL_KPA);
    Words bears =
        Say.format("; its load index %d is good for %s", index.getAsInt(), Say.kg(fullKg));
    Words air =
        nowKg < fullKg
            ? Say.format(", and at %s about %s", Say.kpa(kpa), Say.kg(nowKg))
            : Words.NONE;
    boolean over = carriedKg > fullKg;
    boolean soft = !over && carriedKg > nowKg;
    return of(
        wheel,
        s,
        over ? Verdict.FAIL : soft ? Verdict.CAUTION : Verdict.PASS,
        Figures.atMost(carriedKg, over ? fullKg : nowKg, FigureUnit.KG),
        Words.of(
            carries,
            bears,
            air,
            over
                ? asked.isPresent()
                    ? Words.of(
                        ": take a tyre with an index of at least " + asked.getAsInt(),
                        pumped(carriedKg, asked.getAsInt(), kpa))
                    : Words.of(": no tyre of the table carries that.")
                : soft
                    ? Say.format(
                        ": pump it up to at least %s, if the sidewall allows it.",
                        Say.kpa(Math.ceil(FULL_KPA * carriedKg / fullKg)))
                    : Words.of(".")));
  }

  /** What air a tyre of an index needs besides, where it has less than that. */
  private static Words pumped(double carriedKg, int index, double kpa) {
    double needs = Math.ceil(FULL_KPA * carriedKg / LoadIndex.kg(index).getAsDouble());
    return kpa < needs
        ? Say.format(", pumped up to at least %s, if the sidewall allows it.", Say.kpa(needs))
        : Words.of(".");
  }

  private static Finding of(
      WheelPart wheel, Standing s, Verdict verdict, Figures figures, Words text) {
    return new Finding(
            TYRE_LOAD,
            About.parts(wheel.name()),
            Optional.of(s.condition()),
            verdict,
            figures,
            LOAD_BASIS,
            text)
        .at(s.places().pin(wheel.axle()));
  }

  /** Returns one for each wheel that says both a size and a radius. */
  public static List<Finding> sizes(Placed placed) {
    return placed
        .layout()
        .parts(WheelPart.class)
        .filter(w -> w.radius().isPresent() && !w.tyre().isEmpty())
        .map(w -> size(w, placed.places()))
        .toList();
  }

  /**
   * Returns one for each wheel round which less is asked than its tyre may grow. Gaps are those of
   * a tyre as its size says it, so what is asked round one must hold its tolerance and its growth.
   */
  public static List<Finding> grown(Placed placed) {
    return placed
        .layout()
        .parts(WheelPart.class)
        .map(w -> grown(w, placed))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Finding> grown(WheelPart wheel, Placed placed) {
    Layout layout = placed.layout();
    Places places = placed.places();
    boolean measured = wheel.radius().isPresent();
    double larger =
        measured ? 0 : LARGER * TyreSizeReader.read(wheel.tyre()).size().sectionHeightMm();
    double needed = larger + GROWTH_MM;
    double asked = places.value(layout.demands().limit(Demands.Key.TYRE_GAP));
    String where = "the demand tyreGap";
    for (Map.Entry<String, Limit> own : layout.limits().entrySet()) {
      Limit limit = own.getValue();
      if (limit.kind() == Limit.Kind.GAP
          && limit.from().isPresent()
          && limit.parts().contains(wheel.name())
          && places.value(limit.from().get()) < asked) {
        asked = places.value(limit.from().get());
        where = "the limit " + own.getKey();
      }
    }
    if (asked >= needed) {
      return Optional.empty();
    }
    return Optional.of(
        new Finding(
                TYRE_GROWTH,
                About.parts(wheel.name()),
                Optional.empty(),
                Verdict.CAUTION,
                Figures.atLeast(asked, needed, FigureUnit.MM),
                measured ? List.of(GROWTH) : List.of(GROWTH, SIZE_BASIS.get(1)),
                Words.of(
                    Say.format(
                        "Round the tyre of %s %s asks for %s, and it may grow by %s at speed",
                        wheel.name(), where, Say.mm(asked), Say.mm(GROWTH_MM)),
                    measured
                        ? Words.NONE
                        : Say.format(", one of its size being up to %s larger", Say.mm(larger)),
                    Say.format(": ask for at least %s.", Words.atLeast(needed))))
            .at(places.pin(wheel.axle())));
  }

  private static Finding size(WheelPart wheel, Places places) {
    TyreSize size = TyreSizeReader.read(wheel.tyre()).size();
    double radius = places.value(wheel.radius().orElseThrow());
    double nominal = size.freeRadiusMm();
    double near = size.nearEquivalent() ? CONVERTED_MM : 0;
    double most = nominal + LARGER * size.sectionHeightMm() + near;
    double least = nominal - SMALLER * size.sectionHeightMm() - near;
    Figures figures = Figures.within(radius, least, most, FigureUnit.MM);
    boolean fits = figures.verdict() == Verdict.PASS;
    return new Finding(
            TYRE_SIZE,
            About.parts(wheel.name()),
            Optional.empty(),
            fits ? Verdict.PASS : Verdict.CAUTION,
            figures,
            SIZE_BASIS,
            Words.of(
                Say.format(
                    "%s says a radius of %s, and its size %s one of %s",
                    wheel.name(), Say.mm(radius), size.designation(), Say.mm(nominal)),
                fits
                    ? Words.of(".")
                    : Say.format(
                        "; tyres of that size are from %s to %s: measure again, or write the size"
                            + " that is on its sidewall.",
                        Say.mm(least), Say.mm(most))))
        .at(places.pin(wheel.axle()));
  }
}

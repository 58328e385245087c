package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoublePredicate;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * A fork and the tyre on its axle: its legs stand beside the tyre and can be set farther out; its
 * stem stays where it is while the tyre comes up to it, so only less bump or a higher head clears
 * it. Each cure is tried on the same bodies before it is said.
 */
final class ForkOnAxle {

  /** A head is not raised by more than this, mm; what needs more is another machine. Judgement. */
  private static final int MOST_RAISED_MM = 300;

  /** An axis flatter than this has no way up along it. */
  private static final double LEAST_UP = 0.1;

  private final FrontPart fork;
  private final WheelPart wheel;
  private final Tyre tyre;
  private final double askedMm;
  private final Basis source;
  private final Places drawn;
  private final Suspension suspension;
  private final List<Standing> standings;

  /**
   * Made for one fork.
   *
   * @param askedMm the gap asked between them
   * @param source where that comes from
   * @param drawn places as drawn
   * @param suspension how the wheel moves
   * @param standings the stances
   */
  ForkOnAxle(
      FrontPart fork,
      WheelPart wheel,
      Tyre tyre,
      double askedMm,
      Basis source,
      Places drawn,
      Suspension suspension,
      List<Standing> standings) {
    this.fork = fork;
    this.wheel = wheel;
    this.tyre = tyre;
    this.askedMm = askedMm;
    this.source = source;
    this.drawn = drawn;
    this.suspension = suspension;
    this.standings = standings;
  }

  /** A gap and the stance it is in; none as drawn. */
  private record Worst(Gap gap, Optional<Condition> stance) {

    String when() {
      return stance.map(c -> "at " + c.says()).orElse("as drawn");
    }
  }

  /** A body of the fork as it is in a stance. */
  private interface Shown {
    Solid in(PartShape shape);
  }

  /**
   * Returns what of the fork is in the tyre or too close to it.
   *
   * @param shape the fork as drawn
   * @param ring the tyre with its rim
   */
  List<Finding> all(PartShape shape, Solid ring) {
    List<Finding> findings = new ArrayList<>();
    double half = tyre.widthMm() / 2;
    double tube = drawn.value(fork.tube());
    double beside = drawn.value(fork.y()) - tube / 2 - half;
    if (beside < askedMm) {
      worst(ring, shape, this::legs)
          .ifPresent(w -> findings.add(legs(w, beside, half + askedMm + tube / 2)));
    }
    if (!fork.type().turns()) {
      return findings; // it is about an axis in the hub
    }
    // a stem is never inside a rim, so the whole disc is in its way
    Solid disc =
        new Solid(
            wheel.name(),
            List.of(
                new Prism(
                    Curves.disc(drawn.pin(wheel.axle()), tyre.freeRadiusMm()),
                    new Interval(-half, half))));
    worst(disc, shape, s -> new Solid(fork.name(), s.prisms().subList(0, 1)))
        .ifPresent(w -> findings.add(stem(w, disc)));
    return findings;
  }

  private Solid legs(PartShape shape) {
    int stem = fork.type().turns() ? 1 : 0;
    return new Solid(fork.name(), shape.prisms().subList(stem, shape.prisms().size()));
  }

  private Optional<Worst> worst(Solid wheelBody, PartShape shape, Shown shown) {
    Worst worst = null;
    Gap asDrawn = wheelBody.to(shown.in(shape), askedMm);
    if (asDrawn != null) {
      worst = new Worst(asDrawn, Optional.empty());
    }
    for (Standing s : standings) {
      if (!s.moved().containsKey(wheel.name()) && !s.moved().containsKey(fork.name())) {
        continue;
      }
      PointMm travel = s.places().pin(wheel.axle()).minus(drawn.pin(wheel.axle()));
      double cut = worst == null ? askedMm : worst.gap().gapMm() - 1e-6;
      Gap gap = wheelBody.moved(Solid.by(travel)).to(shown.in(s.shapes().get(fork.name())), cut);
      if (gap != null) {
        worst = new Worst(gap, Optional.of(s.condition()));
      }
    }
    return Optional.ofNullable(worst);
  }

  /** Legs are set apart: each is in the tyre by as much as it takes to get out to its side. */
  private Finding legs(Worst worst, double besideMm, double neededYMm) {
    double gap = Math.max(worst.gap().gapMm(), besideMm);
    return finding(
        About.parts(fork.name(), wheel.name()),
        worst,
        gap,
        Say.format(
            "The legs of %s %s; set each leg %s farther out: y of %s is needed.",
            fork.name(),
            near(worst, gap),
            Words.atLeast(neededYMm - drawn.value(fork.y())),
            Words.atLeast(neededYMm)));
  }

  private Finding stem(Worst worst, Solid disc) {
    List<Words> cures = new ArrayList<>();
    lessBump(disc)
        .ifPresent(
            mm ->
                cures.add(
                    Say.format(
                        "allow at most %s of bump instead of %s",
                        Words.atMost(mm), Say.mm(drawn.value(fork.bump())))));
    higherHead(disc)
        .ifPresent(
            mm ->
                cures.add(
                    Say.format(
                        "set %s %s higher along the steering axis, with %s",
                        fork.bottom(), Words.atLeast(mm), fork.top())));
    return finding(
        About.parts(fork.name(), wheel.name()).named(fork.name(), wheel.name(), "stem"),
        worst,
        worst.gap().gapMm(),
        Say.format(
            "The stem and lower crown of %s, at %s, %s; %s.",
            fork.name(),
            fork.bottom(),
            near(worst, worst.gap().gapMm()),
            cures.isEmpty()
                ? Words.of(
                    "neither less bump nor a head up to ",
                    Say.mm(MOST_RAISED_MM),
                    " higher clears it: a smaller wheel is needed")
                : Words.join(", or ", cures)));
  }

  /** Returns the most whole millimetres of bump with which the tyre stays off the stem. */
  private OptionalInt lessBump(Solid disc) {
    Solid stem = stemRaised(0);
    DoublePredicate clears = travel -> clears(disc, stem, travel);
    return IntStream.iterate((int) Math.floor(drawn.value(fork.bump())), b -> b >= 0, b -> b - 1)
        .filter(bump -> within(clears, bump))
        .findFirst();
  }

  /** Whether every stance clears once the wheel rises by no more than {@code bumpMm}. */
  private boolean within(DoublePredicate clears, int bumpMm) {
    double most = suspension.path().travelForRiseMm(bumpMm);
    return clears.test(0)
        && standings.stream()
            .mapToDouble(s -> Math.min(s.frontTravelMm(), most))
            .allMatch(clears::test);
  }

  /** Returns the fewest whole millimetres that the head must be higher. */
  private OptionalInt higherHead(Solid disc) {
    if (!(axis().z() > LEAST_UP)) {
      return OptionalInt.empty();
    }
    IntPredicate clears =
        mm -> {
          Solid stem = stemRaised(mm);
          return clears(disc, stem, 0)
              && standings.stream().allMatch(s -> clears(disc, stem, s.frontTravelMm()));
        };
    return IntStream.rangeClosed(1, MOST_RAISED_MM).filter(clears).findFirst();
  }

  private boolean clears(Solid disc, Solid stem, double travelMm) {
    PointMm by = suspension.path().axle(travelMm).minus(suspension.path().axle(0));
    return disc.moved(Solid.by(by)).to(stem, askedMm) == null;
  }

  /** Returns the stem slid up along the steering axis until it is so much higher. */
  private Solid stemRaised(double mm) {
    PointMm up = axis();
    Solid stem = new Solid(fork.name(), List.of(Shapes.stem(fork, drawn)));
    return mm == 0 ? stem : stem.moved(Solid.by(up.times(mm / up.z())));
  }

  /** The unit vector up along the steering axis. */
  private PointMm axis() {
    PointMm up = drawn.pin(fork.top()).minus(drawn.pin(fork.bottom()));
    return up.times(1 / Math.max(1e-9, up.length()));
  }

  private Words near(Worst worst, double gap) {
    return gap < 0
        ? Say.format("are in the tyre of %s by %s %s", wheel.name(), Say.mm(-gap), worst.when())
        : Say.format(
            "come within %s of the tyre of %s %s, where %s are asked",
            Say.mm(gap), wheel.name(), worst.when(), Words.atLeast(askedMm));
  }

  private Finding finding(About about, Worst worst, double gapMm, Words text) {
    return Finding.held(
            GapRules.JOINT,
            about,
            worst.stance(),
            Figures.atLeast(gapMm, askedMm, FigureUnit.MM),
            List.of(source),
            text)
        .at(worst.gap().where());
  }
}

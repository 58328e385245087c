package org.longlow.sketcher.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.gap.TravelTouches;
import org.longlow.constraints.check.road.LeanFindings;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.lock.LockWay;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Travel;
import org.longlow.constraints.stand.TravelWay;
import org.longlow.constraints.stand.Turning;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.Touch;

/** The ways along which a machine is moved to look at it, with what touches on each. */
public final class Ways {

  /** What touches upright already is kept on its side by this, deg. */
  private static final double UPRIGHT_DEG = 1e-9;

  private Ways() {}

  /** Returns the way of a section that opens: it stops where it first comes too close. */
  public static Slide opening(List<Finding> findings, Condition open) {
    List<Slide.Mark> marks =
        findings.stream()
            .filter(f -> f.verdict() == Verdict.FAIL && f.stance().filter(open::equals).isPresent())
            .filter(f -> f.from().isPresent())
            .map(
                f ->
                    new Slide.Mark(
                        f.from().getAsDouble(),
                        String.format(
                            Locale.ROOT, "too close from %.0f %%", 100 * f.from().getAsDouble()),
                        Slide.Stop.RISING,
                        true,
                        Optional.empty()))
            .min(Comparator.comparingDouble(Slide.Mark::at))
            .stream()
            .toList();
    return new Slide(0, 1, marks);
  }

  /**
   * Returns the way of the wheels in a stance.
   *
   * @param still where the wheel is that does not move, if one does not
   */
  public static TravelWay travelWay(
      Study study, Standing stance, TravelWay.Ends ends, Travel still) {
    List<Standing> named = new ArrayList<>();
    study.standing(Condition.empty(Stance.Kind.UNLADEN)).ifPresent(named::add);
    if (stance.kind() == Stance.Kind.LADEN) {
      named.add(stance);
    }
    return TravelWay.of(wheels(study), named, ends, still);
  }

  /** Returns the named stances on a way of the wheels, and what first touches going up and down. */
  public static Slide travel(Study study, Standing stance, TravelWay way) {
    List<Slide.Mark> marks = new ArrayList<>();
    for (TravelWay.Stop stop : way.stops()) {
      marks.add(new Slide.Mark(stop.share(), stop.name(), Slide.Stop.NOT, false, Optional.empty()));
    }
    TravelTouches touches =
        new TravelTouches(
            study.layout(), wheels(study), study.shapes(), stance.condition(), study.sittings());
    double begin = begin(study, stance, way);
    for (double end : new double[] {1, 0}) {
      touches
          .first(way, begin, end)
          .ifPresent(
              t ->
                  marks.add(
                      new Slide.Mark(
                          t.share(),
                          t.words() + " touch",
                          end == 1 ? Slide.Stop.RISING : Slide.Stop.FALLING,
                          true,
                          Optional.of(t.where()))));
    }
    marks.sort(Comparator.comparingDouble(Slide.Mark::at));
    return new Slide(0, 1, marks);
  }

  /** At rest under the load of the stance, or under its own where that is one end of the way. */
  private static double begin(Study study, Standing stance, TravelWay way) {
    boolean rests = stance.kind() == Stance.Kind.LADEN || stance.kind() == Stance.Kind.UNLADEN;
    Standing rest =
        rests ? stance : study.standing(Condition.empty(Stance.Kind.UNLADEN)).orElse(stance);
    return way.share(Travel.of(rest));
  }

  /** Returns how far somebody's machine leans to both sides, left first, and what touches, deg. */
  public static Slide lean(Study study, Standing laden) {
    Wheels wheels = wheels(study);
    List<Slide.Mark> marks =
        marks(Touch.lean(new LeanFindings(study.layout(), wheels).of(List.of(laden))), Touch::what);
    double steepest =
        Math.toDegrees((new Turning(wheels, laden, 1).steps() - 1) * Turning.STEP_RAD);
    double most = Math.min(LeanFindings.LISTED_TO_DEG, Math.max(0, steepest));
    return new Slide(-most, most, marks);
  }

  /**
   * Returns how far the steering is turned to both sides, left first, and what it meets or which
   * hand leaves its grip, as the findings have it; deg.
   */
  public static Slide steer(Study study) {
    double most =
        Math.toDegrees(
            new LockWay(
                    study.placed().places().value(study.layout().demands().limit(Demands.Key.LOCK)))
                .lockRad());
    return new Slide(-most, most, marks(Touch.steer(study.findings()), Ways::inItsStance));
  }

  private static String inItsStance(Touch touch) {
    return touch.what() + touch.stance().map(c -> ", " + c.says()).orElse("");
  }

  /** Returns marks where things touch to both sides, in order; the first of each stops a hand. */
  private static List<Slide.Mark> marks(List<Touch> touches, Function<Touch, String> words) {
    List<Touch> first = Touch.first(touches, 1);
    return touches.stream()
        .map(
            t ->
                new Slide.Mark(
                    (t.left() ? -1 : 1) * Math.max(t.deg(), UPRIGHT_DEG),
                    words.apply(t),
                    !first.contains(t)
                        ? Slide.Stop.NOT
                        : t.left() ? Slide.Stop.FALLING : Slide.Stop.RISING,
                    true,
                    Optional.of(t.where()),
                    t.yMm()))
        .sorted(Comparator.comparingDouble(Slide.Mark::at))
        .toList();
  }

  private static Wheels wheels(Study study) {
    return Wheels.of(study.layout(), study.placed().places());
  }
}

package org.longlow.constraints.check.ride;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.ride.WhippleModel;
import org.longlow.constraints.machine.ride.WhippleParameters;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/**
 * A machine with one crew as it balances by itself.
 *
 * @param stance the stance
 * @param parameters what the linear model knows of it
 * @param model that model
 */
public record Balanced(Standing stance, WhippleParameters parameters, WhippleModel model) {

  static final double KM_PER_HOUR = 3.6;

  private static final double MORE_RAKE_RAD = Math.toRadians(3);

  private static final double MORE_TRAIL_M = 0.030;

  private static final double FARTHER_M = 0.050;

  private static final double HEAVIER_KG = 3;

  /**
   * What a small change does.
   *
   * @param what the change, in words
   * @param weave from which speed it then balances by itself, in words; empty if from none
   * @param capsize from which it slowly falls to a side; empty if from none
   * @param fromMs that first speed, m/s; infinite if from none
   */
  public record Change(Words what, Optional<Words> weave, Optional<Words> capsize, double fromMs) {

    static Change of(Words what, WhippleModel model) {
      return new Change(
          what,
          words(model.weaveSpeedMs()),
          words(model.capsizeSpeedMs()),
          model.weaveSpeedMs().orElse(Double.POSITIVE_INFINITY));
    }

    private static Optional<Words> words(OptionalDouble ms) {
      return ms.isPresent() ? Optional.of(speed(ms.getAsDouble())) : Optional.empty();
    }
  }

  /** Returns it with the crew with which it balances last; empty where a mass is missing. */
  public static Optional<Balanced> last(Wheels wheels, List<Standing> standings) {
    return standings.stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN)
        .flatMap(s -> SingleTrack.of(s, wheels).map(p -> new Balanced(s, p, p.model())).stream())
        .max(
            Comparator.comparing((Balanced r) -> !r.balances())
                .thenComparingDouble(Balanced::fromMs));
  }

  /** Returns from which speed it balances by itself, m/s; infinite if from none. */
  double fromMs() {
    return model.weaveSpeedMs().orElse(Double.POSITIVE_INFINITY);
  }

  /** Returns up to which speed it does. */
  double toMs() {
    return model.capsizeSpeedMs().orElse(Double.POSITIVE_INFINITY);
  }

  boolean balances() {
    return fromMs() < toMs();
  }

  /** Returns it as it is, then with one thing changed at a time, all else as it is. */
  public List<Change> changes() {
    Words farther = Say.mm(1000 * FARTHER_M);
    return List.of(
        Change.of(Words.of("as it is"), model),
        Change.of(
            Words.of(Say.deg(Math.toDegrees(MORE_RAKE_RAD)), " more rake"),
            moreRake(parameters).model()),
        Change.of(
            Words.of(Say.mm(1000 * MORE_TRAIL_M), " more trail"), moreTrail(parameters).model()),
        Change.of(
            Words.of("frame and crew ", farther, " farther forward"),
            shifted(parameters, FARTHER_M, 0).model()),
        Change.of(
            Words.of("frame and crew ", farther, " higher"),
            shifted(parameters, 0, FARTHER_M).model()),
        Change.of(
            Words.of("front wheel ", Say.kg(HEAVIER_KG), " heavier"),
            heavierFront(parameters).model()),
        Change.of(
            Words.of("rear wheel ", Say.kg(HEAVIER_KG), " heavier"),
            heavierRear(parameters).model()));
  }

  /** Returns the small change that has it balance by itself soonest, if one does sooner. */
  Optional<Change> soonest() {
    return changes().stream()
        .min(Comparator.comparingDouble(Change::fromMs))
        .filter(change -> change.fromMs() < fromMs());
  }

  static WhippleParameters moreRake(WhippleParameters p) {
    return new WhippleParameters(
        p.wheelbaseM(),
        p.trailM(),
        p.rakeRad() + MORE_RAKE_RAD,
        p.gravity(),
        p.rearWheel(),
        p.rearFrame(),
        p.frontFrame(),
        p.frontWheel());
  }

  static WhippleParameters moreTrail(WhippleParameters p) {
    return new WhippleParameters(
        p.wheelbaseM(),
        p.trailM() + MORE_TRAIL_M,
        p.rakeRad(),
        p.gravity(),
        p.rearWheel(),
        p.rearFrame(),
        p.frontFrame(),
        p.frontWheel());
  }

  /** Returns all that is not steered moved; z down in the model. */
  static WhippleParameters shifted(WhippleParameters p, double forwardM, double upM) {
    WhippleParameters.Body b = p.rearFrame();
    return new WhippleParameters(
        p.wheelbaseM(),
        p.trailM(),
        p.rakeRad(),
        p.gravity(),
        p.rearWheel(),
        new WhippleParameters.Body(
            b.xM() + forwardM, b.zM() - upM, b.massKg(), b.ixx(), b.ixz(), b.izz()),
        p.frontFrame(),
        p.frontWheel());
  }

  /** Returns it with a front wheel that is heavier all over, so that its inertia grows alike. */
  static WhippleParameters heavierFront(WhippleParameters p) {
    return wheels(p, p.rearWheel(), heavier(p.frontWheel()));
  }

  /** Returns it with a rear wheel that is heavier all over. */
  static WhippleParameters heavierRear(WhippleParameters p) {
    return wheels(p, heavier(p.rearWheel()), p.frontWheel());
  }

  private static WhippleParameters.Wheel heavier(WhippleParameters.Wheel w) {
    double share = (w.massKg() + HEAVIER_KG) / w.massKg();
    return new WhippleParameters.Wheel(
        w.radiusM(), share * w.massKg(), share * w.ixx(), share * w.iyy());
  }

  private static WhippleParameters wheels(
      WhippleParameters p, WhippleParameters.Wheel rear, WhippleParameters.Wheel front) {
    return new WhippleParameters(
        p.wheelbaseM(),
        p.trailM(),
        p.rakeRad(),
        p.gravity(),
        rear,
        p.rearFrame(),
        p.frontFrame(),
        front);
  }

  /** Returns a speed in words. */
  static Words speed(double ms) {
    return Words.figure(KM_PER_HOUR * ms, FigureSort.SPEED);
  }
}

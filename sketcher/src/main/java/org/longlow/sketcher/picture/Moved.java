package org.longlow.sketcher.picture;

import java.util.Locale;
import java.util.Optional;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Travel;
import org.longlow.constraints.stand.Turning;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;

/** What moves the machine from how it is in a stance: its wheels, its lean, its steering. */
public sealed interface Moved {

  /** Returns the stance with its wheels moved. */
  Standing of(Study study, Standing stance);

  /** Returns how it leans then, if it does. */
  default Optional<Leaned> leaned(Study study, Standing stance) {
    return Optional.empty();
  }

  /** Returns how far the steering is turned, left positive, rad. */
  default double steerRad() {
    return 0;
  }

  /** Returns what is moved in words. */
  String words(Standing moved);

  /** The wheels put somewhere by hand, as far as their stops let them. */
  record ByHand(Travel travel) implements Moved {
    @Override
    public Standing of(Study study, Standing stance) {
      Wheels wheels = Wheels.of(study.layout(), study.placed().places());
      return moved(
          study,
          stance,
          wheels,
          new Travel(
              held(travel.frontMm(), wheels.frontSuspension()),
              held(travel.rearMm(), wheels.rearSuspension())));
    }

    @Override
    public String words(Standing moved) {
      return String.format(
          Locale.ROOT,
          "wheels moved by %.0f and %.0f mm",
          moved.frontTravelMm(),
          moved.rearTravelMm());
    }

    private static double held(double mm, Suspension suspension) {
      return Math.max(-suspension.droopMm(), Math.min(suspension.bumpMm(), mm));
    }
  }

  /**
   * The wheels as a steady turn presses them that holds the machine at a lean.
   *
   * @param rollRad to the left where positive
   */
  record ByTurn(double rollRad) implements Moved {
    @Override
    public Standing of(Study study, Standing stance) {
      Wheels wheels = Wheels.of(study.layout(), study.placed().places());
      Turning.State there = state(wheels, stance);
      return moved(study, stance, wheels, new Travel(there.frontTravelMm(), there.rearTravelMm()));
    }

    @Override
    public Optional<Leaned> leaned(Study study, Standing stance) {
      Wheels wheels = Wheels.of(study.layout(), study.placed().places());
      return Optional.of(new Leaned(state(wheels, stance), side()));
    }

    private int side() {
      return rollRad < 0 ? -1 : 1;
    }

    private Turning.State state(Wheels wheels, Standing stance) {
      Turning turning = new Turning(wheels, stance, side());
      double most = Math.max(0, turning.steps() - 1) * Turning.STEP_RAD;
      return turning.at(Math.min(Math.abs(rollRad), most));
    }

    @Override
    public String words(Standing moved) {
      return turned("leaned", rollRad);
    }
  }

  /**
   * The steering turned by hand.
   *
   * @param steerRad to the left where positive
   */
  record BySteering(double steerRad) implements Moved {
    @Override
    public Standing of(Study study, Standing stance) {
      return stance;
    }

    @Override
    public String words(Standing moved) {
      return turned("steered", steerRad);
    }
  }

  private static String turned(String how, double rad) {
    double deg = Math.toDegrees(Math.abs(rad));
    return String.format(
        Locale.ROOT, "%s %.1f\u00b0 to the %s", how, deg, rad < 0 ? "right" : "left");
  }

  private static Standing moved(Study study, Standing stance, Wheels wheels, Travel travel) {
    return new Stances(wheels, study.shapes()).moved(stance.condition(), stance.rider(), travel);
  }

  /** Returns a stance as options move it. */
  static Optional<Standing> in(Study study, Optional<Standing> stance, Optional<Moved> moved) {
    return moved.isEmpty() ? stance : stance.map(s -> moved.get().of(study, s));
  }
}

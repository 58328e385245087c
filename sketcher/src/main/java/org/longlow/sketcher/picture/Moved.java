package org.longlow.sketcher.picture;

import java.util.Optional;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Travel;
import org.longlow.constraints.stand.Turning;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;

/** What moves the wheels from where they are in a stance. */
public sealed interface Moved {

  /** Returns the stance with its wheels moved. */
  Standing of(Study study, Standing stance);

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
      Turning turning = new Turning(wheels, stance, rollRad < 0 ? -1 : 1);
      double most = Math.max(0, turning.steps() - 1) * Turning.STEP_RAD;
      Turning.State there = turning.at(Math.min(Math.abs(rollRad), most));
      return moved(study, stance, wheels, new Travel(there.frontTravelMm(), there.rearTravelMm()));
    }
  }

  private static Standing moved(Study study, Standing stance, Wheels wheels, Travel travel) {
    return new Stances(wheels, study.shapes()).moved(stance.condition(), stance.rider(), travel);
  }

  /** Returns a stance as options move it. */
  static Optional<Standing> in(Study study, Optional<Standing> stance, Optional<Moved> moved) {
    return moved.isEmpty() ? stance : stance.map(s -> moved.get().of(study, s));
  }
}

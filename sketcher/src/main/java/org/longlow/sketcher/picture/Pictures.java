package org.longlow.sketcher.picture;

import java.util.List;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.study.Study;
import org.longlow.svg.drawing.Drawing;

/** Draws a machine with its people from wherever it is asked for. */
public final class Pictures {

  private Pictures() {}

  /**
   * Returns the picture of a study at real size, in the axes of the road.
   *
   * @throws IllegalArgumentException if the stance asked for does not exist
   */
  public static Drawing of(Study study, PictureOptions options) {
    return options.aspect() == Aspect.SIDE
        ? side(study, options)
        : AspectPicture.of(study, options);
  }

  private static Drawing side(Study study, PictureOptions options) {
    Scene scene = Scenes.of(study, options);
    Drawing picture = ElevationPicture.of(scene, options);
    return options.over().isEmpty()
        ? picture
        : OverlayInk.over(picture, study, scene, options.over());
  }

  /** Returns the states of a machine that may be drawn over it, in the order to step through. */
  public static List<String> states(Layout layout) {
    return OverlayInk.states(layout);
  }

  /**
   * Returns the front view or plan with what the findings say touches first as the machine leans,
   * or as it is steered.
   */
  public static Drawing withTouches(Study study, PictureOptions options) {
    return AspectPicture.withTouches(study, options);
  }

  /** Returns what is marked so, in words; empty where nothing is. */
  public static String touched(Study study, PictureOptions options) {
    return FirstTouches.of(study, options.aspect(), View.shown(study, options).seated()).isEmpty()
        ? ""
        : FirstTouches.words(options.aspect());
  }

  /** Returns the names of those who are drawn. */
  public static List<String> people(Study study, PictureOptions options) {
    return View.shown(study, options).seated().stream().map(Occupant::person).distinct().toList();
  }

  /**
   * Returns from where the machine is seen on that picture.
   *
   * @param ground the road under the machine in the stance shown
   */
  public static Eye eye(Study study, PictureOptions options, Ground ground) {
    return Eye.of(
        options.aspect(),
        ground,
        options
            .moved()
            .flatMap(m -> Scenes.stance(study, options).flatMap(s -> m.leaned(study, s))));
  }
}

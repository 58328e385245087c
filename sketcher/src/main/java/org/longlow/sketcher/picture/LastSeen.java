package org.longlow.sketcher.picture;

import java.lang.ref.SoftReference;
import java.util.Map;
import java.util.Set;
import org.longlow.constraints.study.Study;

/**
 * What was seen last from the front or from above. Working out what hides what takes most of such a
 * picture, and neither scale nor what is picked or marked on it changes that.
 */
final class LastSeen {

  private static volatile SoftReference<LastSeen> last = new SoftReference<>(null);

  private final Study study;
  private final PictureOptions options;
  private final AspectBodies bodies;

  private LastSeen(Study study, PictureOptions options) {
    this.study = study;
    this.options = options;
    Scene scene = Scenes.of(study, options);
    this.bodies =
        new AspectBodies(
            scene,
            Scenes.seated(study, options, Scenes.standing(study, options)),
            SubjectLook.of(ElevationPicture.of(scene, PictureOptions.PLAIN)),
            options.aspect());
  }

  /** Returns what is seen of a study with such options. */
  static AspectBodies of(Study study, PictureOptions options) {
    PictureOptions plain =
        options
            .withFindings(Map.of())
            .withChosen("")
            .withGhosts(Set.of())
            .withPins(false)
            .withNames(false)
            .withNameWidth(Double.POSITIVE_INFINITY)
            .withDimensions(false)
            .withDenominator(1);
    LastSeen known = last.get();
    if (known == null || !known.study.isOfSame(study) || !known.options.equals(plain)) {
      known = new LastSeen(study, plain);
      last = new SoftReference<>(known);
    }
    return known.bodies;
  }
}

package org.longlow.sketcher.picture;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Measured;
import org.longlow.constraints.study.Study;

/** The dimensions that a layout keeps, worked out as a picture shows the machine. */
public final class KeptDimensions {

  private KeptDimensions() {}

  /**
   * Returns them by name, in the order of the layout.
   *
   * @throws IllegalArgumentException if the stance asked for does not exist
   */
  public static Map<String, Measured> of(Study study, PictureOptions options) {
    return of(Scenes.of(study, options));
  }

  static Map<String, Measured> of(Scene scene) {
    Function<String, Geometry> outlines =
        part -> Optional.ofNullable(scene.shapes().get(part)).map(PartShape::outline).orElse(null);
    Map<String, Measured> all = new LinkedHashMap<>();
    scene
        .layout()
        .dimensions()
        .forEach(
            (name, d) ->
                Measured.of(
                        d, scene.layout(), scene.places(), outlines, scene.ground(), scene.opened())
                    .ifPresent(m -> all.put(name, m)));
    return all;
  }
}

package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.machine.chassis.Steering;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;

/** Says where wheelbase and rake are not as set, because springs are pressed. */
final class PressedWords {

  private PressedWords() {}

  private static String length(Scene scene, double mm) {
    return scene.layout().units().bare(mm, FigureSort.LENGTH);
  }

  /** Returns them in words where the stance that a scene shows has others. */
  static Optional<String> said(Scene scene) {
    AsDrawn set = scene.drawn();
    List<String> said = new ArrayList<>();
    boolean other = false;
    if (!Double.isNaN(set.wheelbaseMm())) {
      String base = length(scene, set.wheelbaseMm());
      other = !base.equals(length(scene, scene.ground().wheelbaseMm()));
      said.add("wheelbase " + base);
    }
    if (!Double.isNaN(set.rakeRad())) {
      FrontPart front = scene.front().orElseThrow();
      PointMm top = scene.ground().toRoad(scene.places().pin(front.top()));
      PointMm bottom = scene.ground().toRoad(scene.places().pin(front.bottom()));
      other |=
          !AsDrawn.degrees(set.rakeRad()).equals(AsDrawn.degrees(Steering.rakeRad(top, bottom)));
      said.add("rake " + AsDrawn.degrees(set.rakeRad()));
    }
    return other && scene.condition().isPresent()
        ? Optional.of(String.join(", ", said))
        : Optional.empty();
  }

  /** Returns what is added to the names of such dimensions where they are not as set. */
  static String pressed(Scene scene) {
    return said(scene).flatMap(s -> scene.condition()).map(c -> ", " + c.word()).orElse("");
  }
}

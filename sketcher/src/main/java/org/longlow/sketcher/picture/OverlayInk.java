package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.built.BuiltLayout;
import org.longlow.constraints.document.Varied;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Variant;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Another state of the machine over its picture: the outlines of what is elsewhere in it. */
final class OverlayInk {

  private OverlayInk() {}

  /** Returns the states that may be drawn over a machine, in the order in which one steps. */
  static List<String> states(Layout layout) {
    List<String> all = new ArrayList<>();
    if (!layout.asBuilt().isNothing()) {
      all.add(Variant.AS_BUILT);
    }
    all.addAll(layout.variants().keySet());
    return all;
  }

  /** Returns a picture with that state over it; as it is where the machine has none. */
  static Drawing over(Drawing picture, Study study, Scene scene, String state) {
    Optional<Placed> placed = placed(study, state);
    if (placed.isEmpty()) {
      return picture;
    }
    Map<String, PartShape> now = Shapes.of(placed.get().layout(), placed.get().places());
    List<Mark> marks = new ArrayList<>();
    now.forEach(
        (name, shape) -> {
          PartShape was = study.shapes().get(name);
          if (!shape.outline().isEmpty() && (was == null || OverlayPicture.apart(was, shape))) {
            // it is looked at only: whatever is picked there is what lies below
            marks.add(
                new Mark.Shape(
                    "", shape.outline(), Style.line(Tone.CHOSEN, ElevationPicture.CHOSEN_MM)));
          }
        });
    Layer layer = new Layer("over", "The machine as " + state, marks);
    Drawing over = ElevationPicture.onRoad(Drawing.of("", layer), scene);
    return marks.isEmpty() ? picture : picture.plus(over.layers().get(0));
  }

  private static Optional<Placed> placed(Study study, String state) {
    Layout layout = study.layout();
    if (!states(layout).contains(state)) {
      return Optional.empty();
    }
    if (state.equals(Variant.AS_BUILT)) {
      return Optional.of(BuiltLayout.of(study.placed()).placed());
    }
    try {
      return Optional.of(Placer.solve(Varied.named(layout, state)));
    } catch (OutOfRange e) {
      return Optional.empty(); // who asks for it is told why
    }
  }
}

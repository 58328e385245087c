package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Slide;
import org.longlow.sketcher.desk.SlideWork;
import org.longlow.svg.drawing.Tone;

/** Marks on the card where something touches on the way of the slider that is open. */
final class SlideInk {

  private static final double RING_PX = 7;

  /** Nearer marks share one label, px. */
  private static final double SHARED_PX = 40;

  private SlideInk() {}

  private record Spot(PointMm px, List<String> words) {}

  static void paint(Overlay glass, UnaryOperator<PointMm> onScreen, SlideWork slides) {
    Slide slide = slides.slide().orElse(null);
    if (slide == null) {
      return;
    }
    boolean leans = slides.open().filter(SlideWork.Kind.LEAN::equals).isPresent();
    List<Slide.Mark> marks = new ArrayList<>();
    if (leans) {
      marks.addAll(slide.sides(true, 2));
      marks.addAll(slide.sides(false, 2));
    } else {
      slide.marks().stream().filter(Slide.Mark::touch).forEach(marks::add);
    }
    List<Spot> spots = new ArrayList<>();
    for (Slide.Mark mark : marks) {
      if (mark.where().isEmpty()) {
        continue;
      }
      PointMm px = onScreen.apply(mark.where().get());
      ring(glass, px, touches(mark, slides.value()));
      String side = mark.at() < 0 ? " to the left" : " to the right";
      String words = leans ? mark.leanWords() + side : mark.words();
      spots.stream()
          .filter(s -> s.px().distance(px) < SHARED_PX)
          .findFirst()
          .orElseGet(() -> added(spots, px))
          .words()
          .add(words);
    }
    List<Spots.Box> rings = new ArrayList<>();
    for (Slide.Mark mark : marks) {
      mark.where().ifPresent(at -> rings.add(around(onScreen.apply(at))));
    }
    List<Spots.Box> labels =
        glass.labelBoxes(
            spots.stream().map(Spot::words).toList(),
            spots.stream().map(s -> around(s.px())).toList(),
            rings);
    for (int i = 0; i < labels.size(); i++) {
      leader(glass, spots.get(i).px(), labels.get(i));
      glass.label(spots.get(i).words(), labels.get(i), false);
    }
  }

  private static void leader(Overlay glass, PointMm px, Spots.Box box) {
    Pen gc = glass.pen();
    gc.setStroke(glass.colour(Tone.PENCIL));
    gc.setLineWidth(1);
    double x = Math.max(box.x(), Math.min(box.right(), px.x()));
    double y = Math.max(box.y(), Math.min(box.bottom(), px.z()));
    double far = Math.hypot(x - px.x(), y - px.z());
    if (far > RING_PX) {
      double share = RING_PX / far;
      gc.strokeLine(px.x() + share * (x - px.x()), px.z() + share * (y - px.z()), x, y);
    }
  }

  private static Spots.Box around(PointMm px) {
    return new Spots.Box(px.x() - RING_PX, px.z() - RING_PX, 2 * RING_PX, 2 * RING_PX);
  }

  private static Spot added(List<Spot> spots, PointMm px) {
    spots.add(new Spot(px, new ArrayList<>()));
    return spots.get(spots.size() - 1);
  }

  private static boolean touches(Slide.Mark mark, double value) {
    double near = 1e-9;
    return mark.stop() == Slide.Stop.FALLING || mark.at() < 0
        ? value <= mark.at() + near
        : value >= mark.at() - near;
  }

  private static void ring(Overlay glass, PointMm px, boolean touches) {
    Pen gc = glass.pen();
    gc.setStroke(glass.colour(touches ? Tone.BAD : Tone.CHOSEN));
    gc.setLineWidth(touches ? 3 : 1.5);
    gc.strokeOval(px.x() - RING_PX, px.z() - RING_PX, 2 * RING_PX, 2 * RING_PX);
    gc.strokeLine(px.x() - RING_PX - 4, px.z(), px.x() - RING_PX, px.z());
    gc.strokeLine(px.x() + RING_PX, px.z(), px.x() + RING_PX + 4, px.z());
  }
}

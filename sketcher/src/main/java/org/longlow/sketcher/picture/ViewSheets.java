package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;

/** Elevation, front view and plan on framed sheets, one of them or all in line with each other. */
public final class ViewSheets {

  /** Air between two views, paper mm. */
  private static final double APART_MM = 10;

  private final Study study;
  private final Scene scene;
  private final List<Sitting> seated;
  private final Views views;
  private final Map<Aspect, AspectBodies> bodies = new EnumMap<>(Aspect.class);

  private ViewSheets(Study study, PictureOptions options, Views views) {
    this.study = study;
    this.scene = Scenes.of(study, options);
    this.seated = Scenes.seated(study, options, Scenes.standing(study, options));
    this.views = views;
  }

  /**
   * Returns views on a framed sheet.
   *
   * @param options who is shown, and in which stance; their scale is not used
   * @param scale the scale; the largest preferred one (ISO 5455) that fits unless given
   * @param date date of issue for the title block, such as 2026-11-25; may be empty
   * @throws OutOfRange if it does not fit; the message names a scale that does, if any
   */
  public static DimensionedElevation.Sheet sheet(
      Study study,
      PictureOptions options,
      Views views,
      Optional<Scale> scale,
      Paper paper,
      String date) {
    SheetChoice choice = new ViewSheets(study, options, views).choice(study, paper, date);
    return scale.map(choice::at).orElseGet(choice::largest);
  }

  private SheetChoice choice(Study study, Paper paper, String date) {
    boolean side = views.kind() == Views.Kind.SIDE;
    boolean all = views.kind() == Views.Kind.ALL;
    return new SheetChoice(
        paper,
        DimensionedElevation.title(study, date).withDocumentType(views.kind().words()),
        (side ? "" : "the " + views.kind().words() + " of ") + DimensionedElevation.machine(scene),
        all,
        side || all ? MachineInk.bounds(scene) : new Envelope(),
        all ? List.of(Detail.values()) : List.of(Detail.FULL, Detail.MAIN),
        all ? 1 : SheetChoice.MUCH_LARGER,
        this::at);
  }

  /** Returns the views at real size, lettered for a scale. */
  Drawing at(double n, Detail detail) {
    return switch (views.kind()) {
      case SIDE ->
          DimensionedElevation.of(scene, n, detail, views.layers(), side -> ringed(side, n));
      case FRONT ->
          alone(Aspect.FRONT, "Seen from ahead: the machine's left is at the right.", n, detail);
      case PLAN -> alone(Aspect.PLAN, "Seen from above, the front to the right.", n, detail);
      case ALL -> all(n, detail);
    };
  }

  /** Returns the elevation with rings where something comes too close as it is steered. */
  private Drawing ringed(Drawing side, double n) {
    List<TouchRing> rings = FirstTouches.of(study, Aspect.SIDE, Company.occupants(seated));
    Eye eye = Eye.of(Aspect.SIDE, scene.ground(), Optional.empty());
    return TouchInk.on(side, rings, MachineInk.bounds(scene), eye, n);
  }

  private Drawing alone(Aspect aspect, String how, double n, Detail detail) {
    AspectBodies seen = seen(aspect);
    Drawing view =
        AspectPicture.of(scene, seen, new AspectDimensions(scene, seen, detail, n).all(), n);
    List<String> lines = DimensionedElevation.lines(scene, detail);
    List<String> said = new ArrayList<>(List.of(lines.get(0), how));
    List<TouchRing> touches = FirstTouches.of(study, aspect, Company.occupants(seated));
    if (!touches.isEmpty()) {
      said.add("Rings: " + FirstTouches.words(aspect) + ".");
      view = TouchInk.on(view, touches, seen.machine(), seen.eye(), n);
    }
    if (aspect == Aspect.FRONT && detail == Detail.FULL) {
      LampSpans.said(scene).ifPresent(said::add);
    }
    if (detail != Detail.FULL) {
      said.add(DimensionedElevation.LARGER);
    }
    said.add(lines.get(lines.size() - 1));
    return view.plus(DimensionedElevation.notes(said, view, n));
  }

  private AspectBodies seen(Aspect aspect) {
    return bodies.computeIfAbsent(aspect, this::bodies);
  }

  private AspectBodies bodies(Aspect aspect) {
    Drawing elevation = ElevationPicture.of(scene, PictureOptions.PLAIN);
    return new AspectBodies(scene, seated, SubjectLook.of(elevation), aspect);
  }

  private Drawing all(double n, Detail detail) {
    boolean first = views.projection() == Views.Projection.FIRST_ANGLE;
    Drawing side = DimensionedElevation.bare(scene, n, detail, views.layers());
    AspectBodies ahead = seen(Aspect.FRONT);
    List<Mark> breadth = new AspectDimensions(scene, ahead, detail, n).breadth();
    Drawing front = AspectPicture.of(scene, ahead, breadth, n);
    Drawing plan = AspectPicture.of(scene, seen(Aspect.PLAN), List.of(), n);
    Envelope s = onPaper(side, n);
    Envelope f = onPaper(front, n);
    Envelope p = onPaper(plan, n);
    double air = APART_MM * n;
    double right = first ? s.getMinX() - air - f.getMaxX() : s.getMaxX() + air - f.getMinX();
    double up = first ? s.getMinY() - air - p.getMaxY() : s.getMaxY() + air - p.getMinY();
    List<Layer> layers = new ArrayList<>(side.layers());
    layers.addAll(named("front", "Front view", front.moved(right, 0)));
    layers.addAll(named("plan", "Plan", plan.moved(0, up)));
    Drawing three = new Drawing(side.title(), layers);
    Envelope box = onPaper(three, n);
    Drawing marked =
        three.plus(
            first
                ? ProjectionSymbol.firstAngle(box.getMinX(), box.getMinY(), n)
                : ProjectionSymbol.thirdAngle(box.getMaxX(), box.getMaxY(), n));
    List<String> lines = new ArrayList<>(DimensionedElevation.lines(scene, detail));
    lines.add(1, views.projection().words() + ".");
    return marked.plus(DimensionedElevation.notes(lines, marked, n));
  }

  private static Envelope onPaper(Drawing drawing, double n) {
    Envelope box = drawing.scaled(1 / n).paperBoundsMm();
    return new Envelope(box.getMinX() * n, box.getMaxX() * n, box.getMinY() * n, box.getMaxY() * n);
  }

  private static List<Layer> named(String id, String title, Drawing view) {
    return view.layers().stream()
        .map(l -> new Layer(id + "-" + l.id(), title + ": " + l.title(), l.marks()))
        .toList();
  }

  /**
   * Returns the dimensioned elevation on a framed sheet at the largest preferred scale (ISO 5455)
   * that fits, the paper turned whichever way gives the larger one; the scale of the options is not
   * used.
   *
   * @param date date of issue for the title block, such as 2026-11-25; may be empty
   * @throws OutOfRange if it fits at no scale
   */
  public static DimensionedElevation.Sheet elevation(
      Study study, PictureOptions options, Paper paper, String date) {
    return sheet(study, options, Views.SIDE, Optional.empty(), paper, date);
  }

  /**
   * Returns the dimensioned elevation on a framed sheet at a given scale; the scale of the options
   * is not used.
   *
   * @param date date of issue for the title block, such as 2026-11-25; may be empty
   * @throws OutOfRange if it does not fit; the message names a scale that does
   */
  public static DimensionedElevation.Sheet elevation(
      Study study, PictureOptions options, Paper paper, Scale scale, String date) {
    return sheet(study, options, Views.SIDE, Optional.of(scale), paper, date);
  }
}

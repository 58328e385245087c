package org.longlow.constraints.check.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.FurtherBody;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Opening;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Holes;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * Outlines as they come to lie: edges that cross themselves, and what is left between holes and
 * edges. What a file alone tells is refused when it is read; pins and smooth runs are known here.
 */
public final class EdgeFindings {

  /** An edge that crosses itself. */
  static final FindingKind EDGE = new FindingKind("edge", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** Holes and what stands round them. */
  static final FindingKind HOLES = new FindingKind("holes", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** Less than this round a hole tears out or burns through; common practice, from memory. */
  private static final double LEAST_WEB_MM = 3;

  private static final Basis WEB =
      Basis.practice("that 3 mm are left round a hole is common practice, from memory");

  private static final Basis PLANE = Basis.model("plane geometry of the drawn edge");

  private EdgeFindings() {}

  public static List<Finding> of(Layout layout, Places places) {
    List<Finding> findings = new ArrayList<>();
    for (Part part : layout.parts().values()) {
      if (part instanceof Part.Outlined outlined) {
        String name = part.name();
        of(outlined.frame(), outlined.outline(), About.parts(name), name, places)
            .ifPresent(findings::add);
        int number = 1;
        for (FurtherBody body : outlined.bodies()) {
          number++;
          String called = body.name().isEmpty() ? "body " + number : body.name();
          About about = About.parts(name).named(name, "body " + number);
          of(outlined.frame(), body.outline(), about, called + " of " + name, places)
              .ifPresent(findings::add);
        }
      }
    }
    return findings;
  }

  /** Returns what is wrong with one edge, or is left round its holes. */
  private static Optional<Finding> of(
      LocalAxes frame, Outline outline, About about, String what, Places places) {
    if (!outline.closed()) {
      return Optional.empty();
    }
    Polygon within = Outlines.within(frame, outline, places);
    List<Holes.Placed> holes = Holes.of(frame, outline, places);
    return crossed("The edge of " + what, about, within)
        .or(
            () ->
                holes.isEmpty()
                    ? Optional.empty()
                    : Optional.of(holes(what, about, within, holes)));
  }

  private static Optional<Finding> crossed(String what, About about, Geometry area) {
    return Optional.ofNullable(new IsValidOp(area).getValidationError())
        .map(
            error -> {
              Coordinate near = error.getCoordinate();
              return Finding.note(
                      EDGE,
                      about,
                      Verdict.FAIL,
                      PLANE,
                      Say.format(
                          "%s crosses or touches itself near x %s, z %s: put its"
                              + " vertices in order round it, or move the pins they lie on.",
                          what, Say.tenths(near.x), Say.tenths(near.y)))
                  .at(new PointMm(near.x, near.y));
            });
  }

  private static Finding holes(String part, About about, Polygon within, List<Holes.Placed> holes) {
    for (Holes.Placed hole : holes) {
      if (!hole.opening().core().isValid()) {
        return crossed(name(hole) + " of " + part, about, hole.opening().core()).orElseThrow();
      }
    }
    double least = Double.POSITIVE_INFINITY;
    String between = "";
    Opening where = holes.get(0).opening();
    for (int i = 0; i < holes.size(); i++) {
      Opening hole = holes.get(i).opening();
      double web = hole.webMm(within);
      if (web < least) {
        least = web;
        between = name(holes.get(i)) + " and the edge";
        where = hole;
      }
      for (int k = 0; k < i; k++) {
        web = hole.webMm(holes.get(k).opening());
        if (web < least) {
          least = web;
          boolean image = holes.get(k).index() == holes.get(i).index();
          between = name(holes.get(k)) + " and " + (image ? "its image" : name(holes.get(i)));
          where = hole;
        }
      }
    }
    Coordinate at = where.core().getInteriorPoint().getCoordinate();
    boolean stands = least > 0;
    boolean thin = stands && least < LEAST_WEB_MM;
    Figures figures =
        Figures.atLeast(
            stands ? least : Math.min(least, -1e-9), thin ? LEAST_WEB_MM : 0, FigureUnit.MM);
    return new Finding(
            HOLES,
            about,
            Optional.empty(),
            thin ? Verdict.CAUTION : figures.verdict(),
            figures,
            List.of(thin ? WEB : PLANE),
            stands
                ? Say.format(
                    "%s keeps %s at least round its holes, between %s; %s.",
                    part,
                    Say.tenths(least),
                    between,
                    thin
                        ? Words.of(
                            "so little tears out or burns through: leave ",
                            Words.atLeast(LEAST_WEB_MM))
                        : Words.of("whether that carries the load is not looked at"))
                : Say.format(
                    "In %s nothing is left between %s: move the hole, make it smaller, or draw the"
                        + " edge round it.",
                    part, between))
        .at(new PointMm(at.x, at.y));
  }

  private static String name(Holes.Placed hole) {
    return "hole " + (hole.index() + 1);
  }
}

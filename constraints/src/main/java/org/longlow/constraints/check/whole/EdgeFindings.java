package org.longlow.constraints.check.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
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
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FurtherBody;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Allowance;
import org.longlow.constraints.shape.AngleFlat;
import org.longlow.constraints.shape.HoleRoom;
import org.longlow.constraints.shape.Holes;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.shape.Unrolled;
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

  private static final Basis WEB =
      Basis.practice(
              "that 3 mm are left round an opening, and that a bolt keeps 1.5 diameters from an edge and"
                  + " 3 from another (in plywood 4 and 25 mm, and 4), is common practice, from memory")
          .fromMemory();

  private static final Basis FOLD =
      Basis.practice(
          "that sheet is folded round one thickness of it, and that no opening reaches into the"
              + " fold, is common practice, from memory");

  private static final Basis PLANE = Basis.model("plane geometry of the drawn edge");

  private EdgeFindings() {}

  public static List<Finding> of(Layout layout, Places places) {
    List<Finding> findings = new ArrayList<>();
    for (Part part : layout.parts().values()) {
      if (part instanceof Part.Outlined outlined) {
        String name = part.name();
        String material = part.base().material();
        Optional<AngleFlat> angle = AngleFlat.of(part, places);
        if (angle.isPresent()) {
          if (!angle.get().holes().isEmpty()) {
            findings.add(holes(name, About.parts(name), angle.get().holes(), angle.get().rooms()));
          }
        } else {
          of(outlined.frame(), outlined.outline(), About.parts(name), name, material, places)
              .ifPresent(findings::add);
        }
        tooMuch(part, angle, places).ifPresent(findings::add);
        int number = 1;
        for (FurtherBody body : outlined.bodies()) {
          number++;
          String called = body.name().isEmpty() ? "body " + number : body.name();
          About about = About.parts(name).named(name, "body " + number);
          of(outlined.frame(), body.outline(), about, called + " of " + name, material, places)
              .ifPresent(findings::add);
        }
      } else {
        tooMuch(part, Optional.empty(), places).ifPresent(findings::add);
      }
    }
    return findings;
  }

  /** Returns what is wrong with one edge, or is left round its holes. */
  private static Optional<Finding> of(
      LocalAxes frame, Outline outline, About about, String what, String material, Places places) {
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
                    : Optional.of(holes(what, about, holes, HoleRoom.of(within, holes, material))));
  }

  /** Returns what is cut of what has no outline of its own: an arm, a leg, a board in plan. */
  private static Geometry plain(Part part, Places places) {
    PartShape shape = Shapes.of(part, places, false);
    if (!(part instanceof CushionPart cushion)) {
      return shape.outline();
    }
    double along = places.pin(cushion.from()).distance(places.pin(cushion.to()));
    double across = shape.prisms().get(0).across().length();
    return shape.outline().getFactory().toGeometry(new Envelope(0, along, 0, across));
  }

  /** Reports a line to cut that nothing is left within, or that closes holes or parts it. */
  private static Optional<Finding> tooMuch(Part part, Optional<AngleFlat> angle, Places places) {
    Allowance allowance = Allowance.of(part, places);
    if (allowance.mm() == 0) {
      return Optional.empty();
    }
    List<Geometry> nets = new ArrayList<>();
    if (angle.isPresent()) {
      nets.add(angle.get().outline());
    } else if (!(part instanceof Part.Outlined)) {
      nets.add(plain(part, places));
    } else {
      if (part instanceof Part.Outlined o && isWhole(o, places)) {
        nets.add(Outlines.area(o.frame(), o.outline(), places));
      }
      Unrolled.of(part, places)
          .ifPresent(u -> u.patterns().forEach(pattern -> nets.add(pattern.outline())));
    }
    return nets.stream().allMatch(net -> !net.isValid() || allowance.leavesAll(net))
        ? Optional.empty()
        : Optional.of(
            Finding.note(
                EDGE,
                About.parts(part.name()),
                Verdict.FAIL,
                PLANE,
                Say.format(
                    "The line to cut of %s, %s %s its net outline, %s: write a smaller allowance.",
                    part.name(),
                    Say.tenths(Math.abs(allowance.mm())),
                    allowance.mm() < 0 ? "inside" : "outside",
                    allowance.mm() < 0
                        ? "leaves nothing of it, cuts it in two or opens a hole"
                        : "closes a hole or a notch")));
  }

  private static boolean isWhole(Part.Outlined part, Places places) {
    return part.outline().closed()
        && Outlines.within(part.frame(), part.outline(), places).isValid();
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

  private static Finding holes(
      String part, About about, List<Holes.Placed> holes, List<HoleRoom> all) {
    for (Holes.Placed hole : holes) {
      if (!hole.opening().core().isValid()) {
        String what = "hole " + (hole.index() + 1) + " of " + part;
        return crossed(what, about, hole.opening().core()).orElseThrow();
      }
    }
    HoleRoom least = HoleRoom.least(all);
    boolean stands = least.webMm() > 0;
    Optional<HoleRoom> thin = stands ? HoleRoom.tightest(all) : Optional.empty();
    HoleRoom told = thin.orElse(least);
    Coordinate at = told.hole().core().getInteriorPoint().getCoordinate();
    Figures figures =
        Figures.atLeast(
            stands ? told.webMm() : Math.min(told.webMm(), -1e-9),
            thin.map(HoleRoom::needMm).orElse(0.0),
            FigureUnit.MM);
    return new Finding(
            HOLES,
            about,
            Optional.empty(),
            thin.isPresent() ? Verdict.CAUTION : figures.verdict(),
            figures,
            List.of(thin.isEmpty() ? PLANE : told.folded() ? FOLD : WEB),
            said(part, told, stands, thin.isPresent()))
        .at(new PointMm(at.x, at.y));
  }

  private static Words said(String part, HoleRoom told, boolean stands, boolean thin) {
    if (!stands) {
      return Say.format(
          "In %s nothing is left between %s: move the hole, make it smaller, or draw the edge round"
              + " it.",
          part, told.between());
    }
    return thin
        ? Say.format(
            told.folded()
                ? "%s keeps %s between %s; the fold pulls what is so near out of shape: leave %s."
                : "%s keeps %s between %s; so little tears out or burns through: leave %s.",
            part,
            Say.tenths(told.webMm()),
            told.between(),
            Words.atLeast(told.needMm()))
        : Say.format(
            "%s keeps %s at least round its holes, between %s; whether that carries the load is not"
                + " looked at.",
            part, Say.tenths(told.webMm()), told.between());
  }
}

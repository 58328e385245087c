package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.ANGLE;
import static org.longlow.constraints.document.Type.DENSITY;
import static org.longlow.constraints.document.Type.FLAG;
import static org.longlow.constraints.document.Type.FORCE;
import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.NUMBER;
import static org.longlow.constraints.document.Type.PRESSURE;
import static org.longlow.constraints.document.Type.TEXT;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.words.Quoted;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.seat.Foam;

/** What parts are made of: local axes, outlines, layers of foam. */
final class ShapeKinds {

  static final Kind<LocalAxes> FRAME =
      Kind.of(
              "frame",
              "The local axes of an outline: the pin at the origin, or an object.",
              ShapeKinds::frame)
          .shortAs("origin")
          .rule(ShapeKinds::direction);

  static final Type.Outlines OUTLINE =
      new Type.Outlines(
          Kind.of("drawn", "An outline written out.", ShapeKinds::drawn).rule(EdgeRules::whole),
          Kind.of("traced", "An outline taken from a path of an SVG file.", ShapeKinds::traced)
              .rule(ShapeKinds::named));

  /** Judgement: no foam is thinner, mm. */
  private static final double LEAST_FOAM_MM = 0.1;

  /** Likewise no file is drawn in finer units, mm. */
  private static final double LEAST_UNIT_MM = 1e-6;

  static final Kind<FoamSpec> FOAM =
      Kind.of(
              "foam",
              "One layer of foam. Open-cell foam needs ifd25 and supportFactor, closed-cell foam"
                  + " wallStress and polymerDensity.",
              ShapeKinds::foam)
          .rule(ShapeKinds::foamCanBe);

  private ShapeKinds() {}

  private static LocalAxes frame(Source<LocalAxes> s) {
    return new LocalAxes(
        s.pin("origin", "the outline's origin", LocalAxes::origin, "The pin at the local origin."),
        s.may(
            "along",
            Type.ref(Referent.PIN),
            LocalAxes::along,
            "The pin that the local x axis points at; absent keeps the axes of the elevation."),
        s.may("angle", ANGLE, LocalAxes::angle, "Turn of the local axes on top of that."));
  }

  private static void direction(LocalAxes frame, Spot at) {
    if (frame.along().equals(Optional.of(frame.origin())) && !frame.origin().isEmpty()) {
      at.fault(
          "along",
          Quoted.of(frame.origin()),
          "is the same pin as the origin and gives no direction",
          "name another pin or leave it out");
    }
  }

  private static Outline.Drawn drawn(Source<Outline.Drawn> s) {
    return new Outline.Drawn(
        s.need(
            "points",
            new Type.ListOf<>(
                new Type.Vertices(true, Optional.of(ReachKind.REACH)), 2, Type.Outlines.MAX_POINTS),
            "the vertices in order",
            Outline.Drawn::vertices,
            "The vertices in order round the edge; the first is not repeated."),
        s.orSaid(
            "closed",
            FLAG,
            true,
            Outline.Drawn::closed,
            "Whether the last vertex joins the first."),
        s.flag(
            "half",
            Outline.Drawn::half,
            "True if the points are one half: the line from the first to the last is the axis, and"
                + " the other half is their image across it."),
        HoleKinds.holes(s));
  }

  private static Outline.Traced traced(Source<Outline.Traced> s) {
    return new Outline.Traced(
        s.need(
            "svg",
            TEXT,
            "an SVG file",
            Outline.Traced::file,
            "An SVG file in the folder of the layout file or below."),
        s.text(
            "path",
            Outline.Traced::path,
            "The id of the path; absent takes the first. Curves become chords within 0.1 mm."),
        s.need(
            "scale",
            LENGTH.atLeast(LEAST_UNIT_MM),
            Outline.Traced::scale,
            "How long one user unit of the SVG is."),
        List.of(),
        true,
        HoleKinds.holes(s));
  }

  private static void named(Outline.Traced outline, Spot at) {
    if (outline.file().isEmpty()) {
      at.fault("svg", "\"\"", "names no file", "name an SVG file");
    }
  }

  private static FoamSpec foam(Source<FoamSpec> s) {
    return new FoamSpec(
        s.text("name", FoamSpec::name, "For people, such as medium HR."),
        s.need("thickness", LENGTH.atLeast(LEAST_FOAM_MM), FoamSpec::thickness, "Free thickness."),
        s.need("density", DENSITY.positive(), FoamSpec::density, "Density of the foam."),
        s.may(
            "ifd25",
            FORCE.positive(),
            FoamSpec::ifd25,
            "Indentation force at 25 %, open-cell foam."),
        s.may(
            "supportFactor",
            NUMBER.positive(),
            FoamSpec::supportFactor,
            "IFD at 65 % over IFD at 25 %, open-cell foam."),
        s.flag("closedCell", FoamSpec::closedCell, "True for closed-cell foam."),
        s.may(
            "wallStress",
            PRESSURE.positive(),
            FoamSpec::wallStress,
            "Cell-wall stress, closed-cell foam."),
        s.may(
            "polymerDensity",
            DENSITY.positive(),
            FoamSpec::polymerDensity,
            "Density of the solid polymer, closed-cell foam."));
  }

  private static void foamCanBe(FoamSpec foam, Spot at) {
    if (!at.isSound("closedCell")) {
      return; // which of the two it is meant to be is not known
    }
    String kind = foam.closedCell() ? "closed-cell foam" : "open-cell foam";
    belongs("ifd25", foam.ifd25(), !foam.closedCell(), kind, at);
    belongs("supportFactor", foam.supportFactor(), !foam.closedCell(), kind, at);
    belongs("wallStress", foam.wallStress(), foam.closedCell(), kind, at);
    belongs("polymerDensity", foam.polymerDensity(), foam.closedCell(), kind, at);
    Optional<Double> density = at.fixed(foam.density());
    Optional<Double> first =
        (foam.closedCell() ? foam.wallStress() : foam.ifd25()).flatMap(at::fixed);
    Optional<Double> second =
        (foam.closedCell() ? foam.polymerDensity() : foam.supportFactor()).flatMap(at::fixed);
    if (density.isEmpty() || first.isEmpty() || second.isEmpty()) {
      return;
    }
    double kgM3 = Unit.KG_PER_M3.fromInternal(density.get());
    try {
      if (foam.closedCell()) {
        Foam.closedCell(
            kgM3,
            Unit.KILOPASCAL.fromInternal(first.get()),
            Unit.KG_PER_M3.fromInternal(second.get()));
      } else {
        Foam.openCell(kgM3, first.get(), second.get());
      }
    } catch (OutOfRange e) {
      at.fault("", "", "is no such foam: " + words(e.getMessage()), "look at the data sheet");
    }
  }

  /** The foam model's message with the keys of the file. */
  private static String words(String message) {
    return message
        .replace("densityKgM3", "density")
        .replace("ifd25N", "ifd25")
        .replace("wallStressKPa", "wallStress")
        .replace("polymerDensityKgM3", "polymerDensity");
  }

  private static void belongs(
      String key, Optional<Formula> value, boolean needed, String kind, Spot at) {
    if (value.isPresent() && !needed) {
      at.fault(key, "", "is no property of " + kind, "take it out");
    } else if (value.isEmpty() && needed) {
      at.fault(key, "", "is missing, " + kind + " needs it", "add it from the data sheet");
    }
  }
}

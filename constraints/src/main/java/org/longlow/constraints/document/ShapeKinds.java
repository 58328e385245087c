package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.ANGLE;
import static org.longlow.constraints.document.Type.FLAG;
import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.TEXT;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.words.Quoted;

/** What parts are made of: local axes, outlines. */
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

  /** Judgement: no file is drawn in finer units, mm. */
  private static final double LEAST_UNIT_MM = 1e-6;

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
}

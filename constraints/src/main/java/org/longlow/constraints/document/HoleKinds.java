package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.LENGTH;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.layout.Hole;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Vertex;

/** Holes and cut-outs of an outline. */
final class HoleKinds {

  /** Most holes of one outline. */
  static final int MAX_HOLES = 200;

  /** Judgement: no drill is finer, mm. */
  private static final double LEAST_MM = 0.1;

  private static final Type.Vertices PLACE = new Type.Vertices(false, Optional.empty());

  static final Type.Choice<Hole> HOLE =
      new Type.Choice<>(
          "hole",
          "An opening through a part from one side to the other, in the axes of its outline.",
          "hole",
          kinds(),
          hole -> {
            if (hole instanceof Hole.Round) {
              return "round";
            }
            return hole instanceof Hole.Slot ? "slot" : "cut";
          });

  private HoleKinds() {}

  private static Map<String, Kind<? extends Hole>> kinds() {
    Map<String, Kind<? extends Hole>> kinds = new LinkedHashMap<>();
    kinds.put("round", Kind.of("round", "A drilled hole.", HoleKinds::round));
    kinds.put("slot", Kind.of("slot", "A hole with round ends.", HoleKinds::slot));
    kinds.put(
        "cut",
        Kind.of("cut", "A cut-out with an edge of its own.", HoleKinds::cut)
            .rule(EdgeRules::uncrossed));
    return kinds;
  }

  static <T extends Outline> List<Hole> holes(Source<T> s) {
    return s.or(
        "holes",
        new Type.ListOf<>(HOLE, 0, MAX_HOLES),
        List.of(),
        T::holes,
        "Openings through the part from one side to the other; those of a half are mirrored with"
            + " it.");
  }

  private static Hole.Round round(Source<Hole.Round> s) {
    return new Hole.Round(
        place(s, "at", "the centre", Hole.Round::at, "Its centre."),
        s.need("diameter", LENGTH.atLeast(LEAST_MM), Hole.Round::diameter, "Its diameter."));
  }

  private static Hole.Slot slot(Source<Hole.Slot> s) {
    return new Hole.Slot(
        place(s, "from", "the centre of one end", Hole.Slot::from, "Centre of one round end."),
        place(s, "to", "the centre of the other end", Hole.Slot::to, "Centre of the other end."),
        s.need(
            "width",
            LENGTH.atLeast(LEAST_MM),
            Hole.Slot::width,
            "Across it: the diameter of its ends."));
  }

  private static Hole.Cut cut(Source<Hole.Cut> s) {
    return new Hole.Cut(
        s.need(
            "points",
            new Type.ListOf<>(
                new Type.Vertices(true, Optional.empty()), 3, Type.Outlines.MAX_POINTS),
            "the vertices in order",
            Hole.Cut::vertices,
            "The vertices in order round the cut-out; the first is not repeated."));
  }

  private static <T> Vertex place(
      Source<T> s,
      String key,
      String what,
      java.util.function.Function<T, Vertex> get,
      String help) {
    return s.need(key, PLACE, what + ", " + PLACE.said(), get, help);
  }
}

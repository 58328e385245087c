package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.words;
import static org.longlow.constraints.layout.Dimension.Along.ANGLE;
import static org.longlow.constraints.layout.Dimension.Along.STRAIGHT;
import static org.longlow.constraints.layout.Dimension.Along.UPRIGHT;

import java.util.Optional;
import org.longlow.constraints.layout.Dimension;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.words.Quoted;

/** Dimensions that are kept on the drawing. */
final class DimensionKinds {

  private static final Kind<Dimension.End> END =
      Kind.of(
              "end",
              "What a dimension ends at: a pin, or an object that names a part and may name a point"
                  + " of its outline.",
              DimensionKinds::end)
          .shortAs("pin")
          .clearing("pin", "part", "point")
          .clearing("part", "pin")
          .rule(DimensionKinds::named);

  static final Kind<Dimension> DIMENSION =
      Kind.of(
              "dimension",
              "A length or angle that was measured and is kept on the drawing; it tells and holds"
                  + " nothing.",
              DimensionKinds::dimension)
          .rule(DimensionKinds::ends)
          .rule(DimensionKinds::stands);

  private DimensionKinds() {}

  private static Dimension.End end(Source<Dimension.End> s) {
    return new Dimension.End(
        s.or(
            "pin", new Type.Ref(Referent.PIN, true), "", Dimension.End::pin, "The pin it ends at."),
        s.or(
            "part",
            new Type.Ref(Referent.PART, true),
            "",
            Dimension.End::part,
            "The part it ends at, where that is nearest to the other end."),
        s.may(
            "point",
            new Type.Whole(Type.Outlines.MAX_POINTS),
            Dimension.End::point,
            "Which point of the part's outline it ends at, counted from 0."));
  }

  private static void named(Dimension.End end, Spot at) {
    if (end.pin().isEmpty() && end.part().isEmpty()) {
      if (at.isSound("pin") && at.isSound("part")) {
        at.fault("", "", "names neither a pin nor a part", "add \"pin\" or \"part\"");
      }
    } else if (!end.pin().isEmpty() && !end.part().isEmpty()) {
      at.fault("part", Quoted.of(end.part()), "is named beside a pin", "take one of them out");
    }
    if (end.point().isPresent() && !end.part().isEmpty()) {
      point(end.part(), end.point().get(), at);
    } else if (end.point().isPresent() && at.isSound("part")) {
      at.fault("point", end.point().get().toString(), "is a point of no part", "name the part");
    }
  }

  private static void point(String name, int point, Spot at) {
    Part part = at.part(name);
    if (part == null) {
      return;
    }
    Optional<Outline> outline = part.edge();
    if (outline.isEmpty()) {
      at.fault(
          "point",
          Integer.toString(point),
          "is a point of " + name + ", which has no outline of its own",
          "name a pin instead, or leave the point out");
    } else if (point >= outline.get().count() && outline.get().count() > 0) {
      at.fault(
          "point",
          Integer.toString(point),
          "is no point of " + name + ", which has points 0 to " + (outline.get().count() - 1),
          "count points from 0, round the edge as the outline has them");
    }
  }

  private static Dimension dimension(Source<Dimension> s) {
    return new Dimension(
        s.or(
            "along",
            words(Dimension.Along.class),
            STRAIGHT,
            Dimension::along,
            "Which way it runs: straight: the distance itself; level: along the road; upright:"
                + " square to it; angle: at its second end."),
        s.need(
            "ends",
            new Type.ListOf<>(new Type.Nested<>(END), 1, 3),
            "what it runs between",
            Dimension::ends,
            "What it runs between: two; of an upright one to the ground below one; of an angle"
                + " three, the second of which it is at."),
        s.may(
            "off",
            LENGTH,
            Dimension::off,
            "Where its line stands: of a straight one so far to the left of its way, of a level one"
                + " above its first end, of an upright one ahead of it, of an angle so far from the"
                + " point it is at; absent for beside what is measured."),
        s.note(Dimension::note));
  }

  private static void ends(Dimension d, Spot at) {
    if (!at.isSound("ends") || !at.isSound("along")) {
      return;
    }
    Dimension.Along along = d.along();
    String word = words(Dimension.Along.class).of(along);
    int count = d.ends().size();
    int fewest = along == ANGLE ? 3 : along == UPRIGHT ? 1 : 2;
    int most = along == ANGLE ? 3 : 2;
    if (count < fewest || count > most) {
      at.fault(
          "ends",
          "[...]",
          "has " + count + ", " + word + " needs " + (fewest < most ? "1 or 2" : most),
          count < fewest
              ? "add what is missing; to the ground below only upright runs"
              : "drop what is too many, or write \"along\": \"angle\" for three");
    }
    for (int i = 0; i < count; i++) {
      Dimension.End end = d.ends().get(i);
      if (along != STRAIGHT && end.isEdge() && !end.part().isEmpty()) {
        // what is nearest to the other end is so straight across
        at.itemFault(
            "ends",
            i,
            Quoted.of(end.part()),
            "is a whole part, and only straight runs to where a part is nearest",
            "name a point of it or a pin, or write \"along\": \"straight\" instead of " + word);
      }
      if (!end.words().isEmpty() && d.ends().indexOf(end) < i) {
        at.itemFault(
            "ends", i, Quoted.of(end.words()), "is named twice", "name something else there");
      }
    }
  }

  private static void stands(Dimension d, Spot at) {
    if (d.along() == ANGLE) {
      d.off()
          .flatMap(at::fixed)
          .filter(mm -> mm <= 0)
          .ifPresent(
              mm ->
                  at.fault(
                      "off",
                      Quoted.of(d.off().get().text()),
                      "is " + Range.number(mm) + " mm, the arc of an angle needs more than 0",
                      "write a length above 0 or take it out"));
    }
  }
}

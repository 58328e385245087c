package org.longlow.constraints.document;

import java.util.List;
import java.util.stream.Stream;
import org.longlow.constraints.layout.AngleLeg;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.words.Quoted;

/** The second leg of brackets of angle section. */
final class AngleKinds {

  static final Kind<AngleLeg> LEG =
      Kind.of(
              "angleLeg",
              "The second leg of a bracket of angle section, turned square across the machine along"
                  + " an edge of its outline, as long as the bracket is broad.",
              AngleKinds::leg)
          .rule(AngleKinds::placed);

  private AngleKinds() {}

  private static AngleLeg leg(Source<AngleLeg> s) {
    return new AngleLeg(
        s.or(
            "edge",
            new Type.Whole(Type.Outlines.MAX_POINTS),
            1,
            AngleLeg::edge,
            "Along which edge: from this point of the outline to the next, counted from 1."),
        s.may(
            "sheet",
            PartSizes.SHEET,
            AngleLeg::sheet,
            "Thickness of both legs; absent where there is no second one."),
        s.orSaid(
            "turned",
            Type.words(AngleLeg.Side.class),
            AngleLeg.Side.LEFT,
            AngleLeg::turned,
            "The side that it is turned to; of a pair that of the left one."),
        s.or(
            "holes",
            new Type.ListOf<>(HoleKinds.HOLE, 0, HoleKinds.MAX_HOLES),
            List.of(),
            AngleLeg::holes,
            "Openings of this leg: x along the edge from that point, z out from the heel."));
  }

  /** A place on the leg is no place of the elevation, so no pin lies there. */
  private static void placed(AngleLeg leg, Spot at) {
    if (leg.sheet().isEmpty() && !leg.holes().isEmpty()) {
      at.fault(
          "sheet", "", "is missing, so there is no leg for its holes", "write how thick it is");
    }
    for (int i = 0; i < leg.holes().size(); i++) {
      Stream<Vertex> places =
          leg.holes().get(i) == null ? Stream.empty() : leg.holes().get(i).vertices().stream();
      String pin = places.map(v -> v.pin()).filter(p -> p != null).findFirst().orElse("");
      if (!pin.isEmpty()) {
        at.itemFault(
            "holes",
            i,
            Quoted.of(pin),
            "is a pin of the elevation, which the leg stands across",
            "write how far along the edge and how far out from the heel it is");
      }
    }
  }

  /** A leg needs a straight edge of a plate that is as broad everywhere. */
  static void straight(Part part, Spot at) {
    if (!(part instanceof SolidPart solid)
        || solid.angle().sheet().isEmpty()
        || solid.outline() == null) {
      return;
    }
    int edge = solid.angle().edge();
    int points = solid.outline().count();
    String said = Integer.toString(edge);
    if (edge < 1 || edge > points) {
      at.itemFault(
          "angle",
          "edge",
          said,
          "is no edge of its outline",
          "write 1 to " + points + " for its edge");
      return;
    }
    List<Boolean> smooth = solid.outline().smooth();
    if (smooth.get(edge - 1) || smooth.get(edge % points)) {
      at.itemFault(
          "angle",
          "edge",
          said,
          "is an edge that ends at a smooth point, which cannot be folded",
          "take an edge between two corners");
    }
    if (!solid.outline().closed()
        || !solid.bodies().isEmpty()
        || !solid.breadth().isEven(solid.outline())) {
      at.fault(
          "angle",
          "",
          "is for one plate whose outline closes and whose breadth is one, the length of its leg",
          "close the outline and write left and right alone");
    }
  }
}

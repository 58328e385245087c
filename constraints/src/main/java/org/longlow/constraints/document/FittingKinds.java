package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.ANGLE;
import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.words;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.StandPart;

/**
 * What hands and feet rest on, lamps, and stands: the fields of parts that are bought or hung on.
 */
final class FittingKinds {

  private static final Formula UPRIGHT = Formula.parse("0 deg");

  private FittingKinds() {}

  static RestPart rest(RestPart.Kind type, Source<RestPart> s) {
    boolean board = type.board();
    return new RestPart(
        PartCommon.across(s),
        type,
        s.orSaid("seat", Type.FILLED, Occupant.RIDER, RestPart::seat, "Whose it is."),
        s.pin(
            "at",
            board ? "its rear end" : "its centre",
            RestPart::at,
            board ? "Its rear end." : "Its centre."),
        board
            ? Optional.of(s.pin("to", "its front end", p -> p.to().orElse(""), "Its front end."))
            : Optional.empty(),
        s.need(
            "diameter",
            PartSizes.SIZE,
            RestPart::diameter,
            "Diameter of a grip, peg or handhold, thickness of a footboard."),
        s.need(
            "y",
            LENGTH.notNegative(),
            RestPart::y,
            "Distance of its middle from the middle plane; there is one on each side."),
        s.need("length", PartSizes.SIZE, RestPart::length, "Sideways length."),
        s.flag(
            "folds",
            RestPart::folds,
            "True if it folds up when it touches the road, so that it only warns."),
        board
            && s.flag(
                "heelStop", RestPart::heelStop, "True if an edge keeps the heel from sliding."));
  }

  static LampPart lamp(Source<LampPart> s) {
    LampPart.Kind type =
        s.need("lamp", words(LampPart.Kind.class), LampPart::type, "What the lamp rules call it.");
    return new LampPart(
        PartCommon.across(s),
        type,
        s.pin("at", "the centre of the lit area", LampPart::at, "Centre of the lit area."),
        s.orSaid(
            "y",
            LENGTH,
            Formula.parse("0 mm"),
            LampPart::y,
            "Distance of its centre from the middle plane, 0 mm where absent."),
        s.flag("pair", LampPart::pair, "True if there is one on each side."),
        s.need("halfWidth", PartSizes.SIZE, LampPart::halfWidth, "Half the lit width."),
        s.need("halfHeight", PartSizes.SIZE, LampPart::halfHeight, "Half the lit height."),
        s.need(
            "depth",
            PartSizes.SIZE,
            LampPart::depth,
            "Length along the machine, behind the lit face."),
        s.orSaid(
            "colour",
            words(LampPart.Colour.class),
            colour(type),
            LampPart::colour,
            "Colour of the light; absent takes the usual one of its kind."),
        ElectricKinds.said(s, LampPart::electric));
  }

  /** The colour that a lamp has where the file gives none. */
  private static LampPart.Colour colour(LampPart.Kind type) {
    if (type == null) {
      return LampPart.Colour.WHITE;
    }
    return switch (type) {
      case TAIL, STOP, REAR_FOG, REAR_REFLECTOR -> LampPart.Colour.RED;
      case FRONT_SIGNAL, REAR_SIGNAL, SIDE_REFLECTOR -> LampPart.Colour.AMBER;
      case HEADLAMP, DRIVING_BEAM, DAYTIME, FRONT_FOG, FRONT_POSITION, PLATE_LAMP, PLATE ->
          LampPart.Colour.WHITE;
    };
  }

  static StandPart stand(Source<StandPart> s) {
    return new StandPart(
        PartCommon.cut(s),
        s.or(
            "type",
            words(StandPart.Kind.class),
            StandPart.Kind.SIDE,
            StandPart::type,
            "What it does. side: one leg that the machine leans on; centre: two legs that lift a"
                + " wheel off the road; pair: two legs that come down at a stop, both wheels on the"
                + " road."),
        s.pin("pivot", "the hinge", StandPart::pivot, "Where it hinges."),
        s.pin(
            "foot", "the foot when parked", StandPart::foot, "Its foot on the ground when parked."),
        s.pin("stowed", "the foot when riding", StandPart::stowed, "Its foot when riding."),
        s.need(
            "y",
            LENGTH,
            StandPart::y,
            "Sideways place of the foot when parked, left positive; of two feet, of either."),
        s.need("diameter", PartSizes.SIZE, StandPart::diameter, "Diameter of the leg."),
        s.or(
            "lean",
            ANGLE.between(0, 45),
            UPRIGHT,
            StandPart::lean,
            "How far the parked machine leans towards a side stand."),
        s.may(
            "lever",
            Type.ref(Referent.PIN),
            StandPart::lever,
            "Where a foot treads a centre stand down, with the machine on it; absent where a hand"
                + " pulls the machine back onto it."));
  }
}

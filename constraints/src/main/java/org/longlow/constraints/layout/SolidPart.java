package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.constraints.layout.Traits.Joint;
import org.longlow.constraints.layout.Traits.Make;
import org.longlow.constraints.words.Names;

/**
 * A body drawn by its outline.
 *
 * @param breadth how its breadth varies
 * @param bodies what it has besides the body of its outline
 * @param formers asked for as templates
 * @param duct how air is led to a radiator and away
 * @param working by what of the rider a lever is worked, if it is said
 * @param glassRadius radius that the glass of a mirror is bulged to; absent where it is flat
 * @param angle the second leg of a bracket of angle section
 * @param holds mass of what it holds when full, besides its own
 * @param electric what it takes from the electrics and gives to them
 */
public record SolidPart(
    PartBase base,
    Kind type,
    LocalAxes frame,
    Outline outline,
    Breadth breadth,
    List<FurtherBody> bodies,
    Formers formers,
    Duct duct,
    Working working,
    Optional<Formula> glassRadius,
    AngleLeg angle,
    Optional<Formula> holds,
    Electric electric)
    implements Part.Flat {

  public SolidPart {
    bodies = List.copyOf(bodies);
  }

  /** Returns by what of the rider a lever is worked, and where, if it is said. */
  public Optional<Control> worked() {
    return working.control();
  }

  /** A part without formers or anything of its kind alone. */
  public SolidPart(
      PartBase base,
      Kind type,
      LocalAxes frame,
      Outline outline,
      Breadth breadth,
      List<FurtherBody> bodies) {
    this(
        base,
        type,
        frame,
        outline,
        breadth,
        bodies,
        Formers.NONE,
        Duct.NONE,
        Working.NOT_SAID,
        Optional.empty(),
        AngleLeg.NONE,
        Optional.empty(),
        Electric.NOT_SAID);
  }

  /** A part of one body that is as broad everywhere. */
  public SolidPart(PartBase base, Kind type, LocalAxes frame, Outline outline) {
    this(base, type, frame, outline, Breadth.EVEN, List.of());
  }

  /** What a body drawn by its outline is. */
  public enum Kind {
    ENGINE(Duty.DRIVE, Joint.HUB, Heat.BEARS, Make.BOUGHT, false),
    MOTOR(Duty.DRIVE, Joint.HUB, Heat.BEARS, Make.BOUGHT, false),
    TANK(Duty.LOAD, Joint.BODY, Heat.SUFFERS, Make.MADE, false),
    BATTERY(Duty.LOAD, Joint.BODY, Heat.SUFFERS, Make.MADE, false),
    BOX(Duty.LOAD, Joint.BODY, Heat.BEARS, Make.FITTED, false),
    RADIATOR(Duty.LOAD, Joint.BODY, Heat.BEARS, Make.MADE, false),
    SILENCER(Duty.LOAD, Joint.BODY, Heat.GIVES, Make.MADE, false),
    LATCH(Duty.LOAD, Joint.BODY, Heat.BEARS, Make.FITTED, false),
    BRACKET(Duty.FRAME, Joint.BODY, Heat.BEARS, Make.FITTED, false),
    LEVER(Duty.CONTROL, Joint.BODY, Heat.BEARS, Make.FITTED, true),
    /** What is read while riding. */
    INSTRUMENT(Duty.LOAD, Joint.BODY, Heat.BEARS, Make.BOUGHT, false),
    /** A mirror; its glass is as broad as it is. */
    MIRROR(Duty.LOAD, Joint.BODY, Heat.BEARS, Make.BOUGHT, false),
    /** A plain block of one material, solid right through. */
    BLOCK(Duty.LOAD, Joint.HUB, Heat.BEARS, Make.FITTED, true);

    private final Duty duty;
    private final Joint joint;
    private final Heat heat;
    private final Make make;
    private final boolean filled;

    Kind(Duty duty, Joint joint, Heat heat, Make make, boolean filled) {
      this.duty = duty;
      this.joint = joint;
      this.heat = heat;
      this.make = make;
      this.filled = filled;
    }

    public boolean usuallyHot() {
      return heat == Heat.GIVES;
    }
  }

  @Override
  public List<String> ownPins() {
    return Stream.concat(
            pins().stream(),
            worked().stream().flatMap(w -> Stream.concat(Stream.of(w.pad()), w.pivot().stream())))
        .distinct()
        .toList();
  }

  @Override
  public Optional<Formula> held() {
    return holds;
  }

  @Override
  public Kind look() {
    return type;
  }

  @Override
  public Traits traits() {
    return new Traits(Names.word(type), type.duty, type.joint, type.heat, type.make, type.filled);
  }
}

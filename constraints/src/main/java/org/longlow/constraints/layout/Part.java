package org.longlow.constraints.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.constraints.layout.Traits.Joint;
import org.longlow.constraints.layout.Traits.Make;
import org.longlow.constraints.words.Names;

/** A physical thing of the machine. The kinds differ in how their outline comes about. */
public sealed interface Part {

  PartBase base();

  /** What is asked of every kind of part. */
  Traits traits();

  /** Returns what {@code visitor} makes of its kind. */
  <R> R accept(Visitor<R> visitor);

  /** What differs between the kinds so much that each has a method; none can be forgotten. */
  interface Visitor<R> {
    R wheel(Wheel wheel);

    R front(Front front);

    R swingarm(Swingarm arm);

    R tube(Tube tube);

    R flat(Flat flat);

    R shell(Shell shell);

    R cushion(Cushion cushion);

    R rest(Rest rest);

    R lamp(Lamp lamp);

    R stand(Stand stand);
  }

  /** The word for the kind in files, such as {@code cushion}. */
  default String kind() {
    return traits().kind();
  }

  /** The pins it hangs on, in a fixed order, without repeats. */
  List<String> pins();

  /** Its outline, where it has one of its own. */
  default Optional<Outline> edge() {
    return Optional.empty();
  }

  /** Whose seat it belongs to, where it is of one. */
  default Optional<String> seatOf() {
    return Optional.empty();
  }

  default String name() {
    return base().name();
  }

  /** Whether there are two of it, one on each side. */
  default boolean paired() {
    return base().spread().filter(Spread::both).isPresent();
  }

  /** A part drawn by its own outline in a frame. */
  sealed interface Outlined extends Part {
    LocalAxes frame();

    Outline outline();

    @Override
    default Optional<Outline> edge() {
      return Optional.of(outline());
    }

    @Override
    default List<String> pins() {
      List<String> pins = new ArrayList<>(List.of(frame().origin()));
      frame().along().ifPresent(pins::add);
      outline().vertices().stream()
          .map(Outline.Vertex::pin)
          .filter(p -> p != null)
          .forEach(pins::add);
      return pins.stream().distinct().toList();
    }
  }

  /** A body that fills its outline over its breadth. */
  sealed interface Flat extends Outlined {

    /** The kind of solid that it is drawn like. */
    SolidKind look();

    @Override
    default <R> R accept(Visitor<R> visitor) {
      return visitor.flat(this);
    }
  }

  /** A part at one end of the machine: the wheel there, or what carries it. */
  sealed interface AtEnd extends Part {
    End end();

    String axle();
  }

  /** What carries a wheel, with its travel and spring. */
  sealed interface Carrier extends AtEnd {
    Formula bump();

    Formula droop();

    Optional<Formula> rate();

    Optional<Formula> preload();
  }

  /** A part that somebody on a seat rests on. */
  sealed interface Seated extends Part {
    String seat();

    @Override
    default Optional<String> seatOf() {
      return Optional.of(seat());
    }
  }

  /** Which end of the machine a wheel is at. */
  enum End {
    FRONT,
    REAR
  }

  /**
   * A wheel with its tyre.
   *
   * @param axle its axle pin
   * @param tyre size designation such as {@code 120/70 R17}; may be empty if radius is given
   * @param radius measured free radius, instead of the designation's
   * @param width measured section width, instead of the designation's
   * @param crown measured section (crown) radius, instead of half the width
   */
  record Wheel(
      PartBase base,
      End end,
      String axle,
      String tyre,
      Optional<Formula> radius,
      Optional<Formula> width,
      Optional<Formula> crown)
      implements AtEnd {
    @Override
    public Traits traits() {
      return new Traits("wheel", Duty.WHEEL, Joint.OTHER, Heat.BEARS, Make.BOUGHT, false);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.wheel(this);
    }

    @Override
    public List<String> pins() {
      return List.of(axle);
    }
  }

  /** How the front wheel is carried. */
  enum FrontKind {
    TELESCOPIC,
    LEADING_LINK,
    TRAILING_LINK
  }

  /**
   * The front system, from the steering axis to the axle.
   *
   * @param top upper pin of the steering axis
   * @param bottom lower pin of the steering axis
   * @param pivot link pivot; absent for a telescopic fork
   * @param axle front axle pin
   * @param tube diameter of stanchion, stem or link
   * @param y distance of each leg from the middle plane
   * @param bump wheel travel up from the drawn position
   * @param droop wheel travel down from the drawn position
   * @param rate force for each mm that the axle moves along its way
   * @param preload force along that way carried already at full droop
   */
  record Front(
      PartBase base,
      FrontKind type,
      String top,
      String bottom,
      Optional<String> pivot,
      String axle,
      Formula tube,
      Formula y,
      Formula bump,
      Formula droop,
      Optional<Formula> rate,
      Optional<Formula> preload)
      implements Carrier {
    @Override
    public End end() {
      return End.FRONT;
    }

    @Override
    public Traits traits() {
      return new Traits(
          "front", Duty.CARRIER, Joint.BAR, Optional.of(tube), Heat.BEARS, Make.BOUGHT, false);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.front(this);
    }

    @Override
    public List<String> pins() {
      List<String> pins = new ArrayList<>(List.of(top, bottom));
      pivot.ifPresent(pins::add);
      pins.add(axle);
      return pins;
    }
  }

  /** The rear swingarm; travels and rate as for {@link Front}. */
  record Swingarm(
      PartBase base,
      String pivot,
      String axle,
      Formula depth,
      Formula bump,
      Formula droop,
      Optional<Formula> rate,
      Optional<Formula> preload)
      implements Carrier {
    @Override
    public End end() {
      return End.REAR;
    }

    @Override
    public Traits traits() {
      return new Traits(
          "swingarm", Duty.CARRIER, Joint.BAR, Optional.of(depth), Heat.BEARS, Make.MADE, false);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.swingarm(this);
    }

    @Override
    public List<String> pins() {
      return List.of(pivot, axle);
    }
  }

  /** What a bent tube is. */
  enum TubeKind {
    RAIL(Duty.FRAME, Heat.BEARS),
    EXHAUST(Duty.LOAD, Heat.GIVES);

    private final Duty duty;
    private final Heat heat;

    TubeKind(Duty duty, Heat heat) {
      this.duty = duty;
      this.heat = heat;
    }

    public boolean usuallyHot() {
      return heat == Heat.GIVES;
    }
  }

  /**
   * A round tube through pins, bent at the inner ones.
   *
   * @param path pins in order, at least two
   * @param diameter outside diameter
   * @param wall wall thickness
   * @param bendRadius centre-line radius of the bends
   * @param y distance of the tube's centre from the middle plane, left positive
   * @param both true if there is one on each side
   */
  record Tube(
      PartBase base,
      TubeKind type,
      List<String> path,
      Formula diameter,
      Formula wall,
      Formula bendRadius,
      Formula y,
      boolean both)
      implements Part {
    public Tube {
      path = List.copyOf(path);
    }

    @Override
    public boolean paired() {
      return both;
    }

    @Override
    public Traits traits() {
      Optional<Formula> depth = Optional.of(diameter);
      return new Traits(Names.word(type), type.duty, Joint.BAR, depth, type.heat, Make.TUBE, true);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.tube(this);
    }

    @Override
    public List<String> pins() {
      return path.stream().distinct().toList();
    }
  }

  /** What a body drawn by its outline is. */
  enum SolidKind {
    ENGINE(Duty.DRIVE, Joint.HUB, Heat.BEARS, Make.BOUGHT, false),
    MOTOR(Duty.DRIVE, Joint.HUB, Heat.BEARS, Make.BOUGHT, false),
    TANK(Duty.LOAD, Joint.BODY, Heat.SUFFERS, Make.MADE, false),
    BATTERY(Duty.LOAD, Joint.BODY, Heat.SUFFERS, Make.MADE, false),
    BOX(Duty.LOAD, Joint.BODY, Heat.BEARS, Make.FITTED, false),
    RADIATOR(Duty.LOAD, Joint.BODY, Heat.BEARS, Make.MADE, false),
    SILENCER(Duty.LOAD, Joint.BODY, Heat.GIVES, Make.MADE, false),
    LATCH(Duty.LOAD, Joint.BODY, Heat.BEARS, Make.FITTED, false),
    BRACKET(Duty.FRAME, Joint.BODY, Heat.BEARS, Make.FITTED, false),
    LEVER(Duty.CONTROL, Joint.BODY, Heat.BEARS, Make.FITTED, false),
    /** A plain block of one material, solid right through. */
    BLOCK(Duty.LOAD, Joint.HUB, Heat.BEARS, Make.FITTED, true);

    private final Duty duty;
    private final Joint joint;
    private final Heat heat;
    private final Make make;
    private final boolean filled;

    SolidKind(Duty duty, Joint joint, Heat heat, Make make, boolean filled) {
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

  /** A body drawn by its outline. */
  record Solid(PartBase base, SolidKind type, LocalAxes frame, Outline outline) implements Flat {
    @Override
    public SolidKind look() {
      return type;
    }

    @Override
    public Traits traits() {
      return new Traits(Names.word(type), type.duty, type.joint, type.heat, type.make, type.filled);
    }
  }

  /** What a shell is. */
  enum ShellKind {
    COWL(false),
    SCREEN(true);

    private final boolean seeThrough;

    ShellKind(boolean seeThrough) {
      this.seeThrough = seeThrough;
    }

    /** Whether the road may be seen through it. */
    public boolean seeThrough() {
      return seeThrough;
    }
  }

  /**
   * A sheet wrapped round the machine: edge strip and two sides where closed, a strip where open.
   *
   * @param thickness of the sheet
   * @param open true if the sides are left open, as on a screen or a mudguard
   */
  record Shell(
      PartBase base,
      ShellKind type,
      LocalAxes frame,
      Outline outline,
      Formula thickness,
      boolean open)
      implements Outlined {
    @Override
    public Traits traits() {
      return new Traits(Names.word(type), Duty.LOAD, Joint.OTHER, Heat.SUFFERS, Make.SHEET, true);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.shell(this);
    }
  }

  /** Which cushion of a seat. */
  enum CushionRole {
    PAN,
    BACK,
    HEAD
  }

  /**
   * A cushion: foam on a board.
   *
   * @param seat whose seat it belongs to, {@code rider} unless said otherwise
   * @param from the board's face: rear end of a pan, lower end of a back or head rest
   * @param to the board's face: front end of a pan, upper end of a back or head rest
   * @param board thickness of the board, on the far side from the person
   * @param layers foam from the top (next to the person) down to the board
   */
  record Cushion(
      PartBase base,
      CushionRole role,
      String seat,
      String from,
      String to,
      Formula board,
      List<FoamSpec> layers)
      implements Seated {
    public Cushion {
      layers = List.copyOf(layers);
    }

    @Override
    public Traits traits() {
      return new Traits("cushion", Duty.LOAD, Joint.OTHER, Heat.SUFFERS, Make.FOAM, true);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.cushion(this);
    }

    @Override
    public List<String> pins() {
      return List.of(from, to);
    }
  }

  /** The end of a limb. */
  enum Limb {
    HAND,
    FOOT
  }

  /** What a hand or foot rests on. */
  enum RestKind {
    GRIP(Limb.HAND, false),
    PEG(Limb.FOOT, false),
    FOOTBOARD(Limb.FOOT, true);

    private final Limb limb;
    private final boolean board;

    RestKind(Limb limb, boolean board) {
      this.limb = limb;
      this.board = board;
    }

    /** What rests on it. */
    public Limb limb() {
      return limb;
    }

    /** Whether it is a board from one pin to another, which a shop makes; else a bought bar. */
    public boolean board() {
      return board;
    }
  }

  /**
   * A grip, peg or footboard.
   *
   * @param seat whose it is
   * @param at its centre; the rear end of a footboard
   * @param to the front end of a footboard; absent otherwise
   * @param diameter of a grip or peg, thickness of a board
   * @param y distance of its middle from the middle plane; there is one on each side
   * @param length sideways
   * @param folds true if it folds up when it touches the road
   */
  record Rest(
      PartBase base,
      RestKind type,
      String seat,
      String at,
      Optional<String> to,
      Formula diameter,
      Formula y,
      Formula length,
      boolean folds)
      implements Seated {
    @Override
    public boolean paired() {
      return true;
    }

    @Override
    public Traits traits() {
      boolean made = type.board();
      Make make = made ? Make.MADE : Make.BOUGHT;
      Optional<Formula> depth = Optional.of(diameter);
      return new Traits(Names.word(type), Duty.LOAD, Joint.OTHER, depth, Heat.BEARS, make, made);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.rest(this);
    }

    @Override
    public List<String> pins() {
      return to.isPresent() ? List.of(at, to.get()) : List.of(at);
    }
  }

  /** What a lamp rule speaks of. */
  enum LampKind {
    /** Lower beam, with or without the upper beam in the same lamp. */
    HEADLAMP,
    /** A separate lamp with only the upper beam. */
    DRIVING_BEAM,
    DAYTIME,
    FRONT_FOG,
    /** Rear position lamp. */
    TAIL,
    STOP,
    REAR_FOG,
    FRONT_SIGNAL,
    REAR_SIGNAL,
    FRONT_POSITION,
    /** The lamp that lights the number plate. */
    PLATE_LAMP,
    REAR_REFLECTOR,
    SIDE_REFLECTOR,
    /** The number plate itself; it gives no light. */
    PLATE
  }

  /** Colour of the light given or sent back. */
  enum LampColour {
    WHITE,
    AMBER,
    RED
  }

  /**
   * A lamp, reflector or number plate.
   *
   * @param at centre of the lit area
   * @param y distance of its centre from the middle plane
   * @param pair true if there is one on each side
   * @param halfWidth half the lit width
   * @param halfHeight half the lit height
   * @param depth length along the machine, behind the lit face
   * @param colour of the light given or sent back
   */
  record Lamp(
      PartBase base,
      LampKind type,
      String at,
      Formula y,
      boolean pair,
      Formula halfWidth,
      Formula halfHeight,
      Formula depth,
      LampColour colour)
      implements Part {
    @Override
    public boolean paired() {
      return pair;
    }

    @Override
    public Traits traits() {
      return new Traits("lamp", Duty.LOAD, Joint.BODY, Heat.BEARS, Make.BOUGHT, false);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.lamp(this);
    }

    @Override
    public List<String> pins() {
      return List.of(at);
    }
  }

  /**
   * A side stand.
   *
   * @param pivot where it hinges
   * @param foot its foot on the ground when parked
   * @param stowed its foot when riding
   * @param y sideways place of the foot when parked, left positive
   * @param diameter of the leg
   * @param lean how far the parked machine leans towards the stand
   */
  record Stand(
      PartBase base,
      String pivot,
      String foot,
      String stowed,
      Formula y,
      Formula diameter,
      Formula lean)
      implements Part {
    @Override
    public Traits traits() {
      return new Traits(
          "stand", Duty.STAND, Joint.BAR, Optional.of(diameter), Heat.BEARS, Make.MADE, false);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.stand(this);
    }

    @Override
    public List<String> pins() {
      return List.of(pivot, foot, stowed);
    }
  }
}

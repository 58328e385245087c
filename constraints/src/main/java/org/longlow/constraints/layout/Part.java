package org.longlow.constraints.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/** A physical thing of the machine. The kinds differ in how their outline comes about. */
public sealed interface Part {

  PartBase base();

  /** The word for the kind in files, such as {@code cushion}. */
  String kind();

  /** The pins it hangs on, in a fixed order, without repeats. */
  List<String> pins();

  /** Whether it is hot unless something else is said: what exhaust goes through. */
  default boolean usuallyHot() {
    return usuallyHot(kind());
  }

  /** Whether a kind of part, as in files, is hot unless something else is said. */
  static boolean usuallyHot(String kind) {
    return kind.equals("exhaust") || kind.equals("silencer");
  }

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

  /**
   * Whether its material fills the body drawn for it, so that volume and material give its mass.
   * What is hollow, or holds something else, has no mass but the one it is given.
   */
  default boolean filledByMaterial() {
    return false;
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
      implements Part {
    @Override
    public String kind() {
      return "wheel";
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
   * @param rate wheel rate, force for each mm of wheel travel
   * @param preload wheel load already carried at full droop
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
      implements Part {
    @Override
    public String kind() {
      return "front";
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
      implements Part {
    @Override
    public String kind() {
      return "swingarm";
    }

    @Override
    public List<String> pins() {
      return List.of(pivot, axle);
    }
  }

  /** What a bent tube is. */
  enum TubeKind {
    RAIL,
    EXHAUST
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
    public String kind() {
      return type.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public List<String> pins() {
      return path.stream().distinct().toList();
    }

    @Override
    public boolean filledByMaterial() {
      return true;
    }
  }

  /** What a body drawn by its outline is. */
  enum SolidKind {
    ENGINE,
    MOTOR,
    TANK,
    BATTERY,
    BOX,
    RADIATOR,
    SILENCER,
    LATCH,
    BRACKET,
    LEVER,
    /** A plain block of one material, solid right through. */
    BLOCK
  }

  /** A body drawn by its outline; only a {@link SolidKind#BLOCK} is filled by its material. */
  record Solid(PartBase base, SolidKind type, Frame frame, Outline outline) implements Part {
    @Override
    public String kind() {
      return type.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public Optional<Outline> edge() {
      return Optional.of(outline);
    }

    @Override
    public List<String> pins() {
      return framePins(frame, outline);
    }

    @Override
    public boolean filledByMaterial() {
      return type == SolidKind.BLOCK;
    }
  }

  /** What a shell is. */
  enum ShellKind {
    COWL,
    SCREEN
  }

  /**
   * A sheet wrapped round the machine: edge strip and two sides where closed, a strip where open.
   *
   * @param thickness of the sheet
   * @param open true if the sides are left open, as on a screen or a mudguard
   */
  record Shell(
      PartBase base, ShellKind type, Frame frame, Outline outline, Formula thickness, boolean open)
      implements Part {
    @Override
    public String kind() {
      return type.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public Optional<Outline> edge() {
      return Optional.of(outline);
    }

    @Override
    public List<String> pins() {
      return framePins(frame, outline);
    }

    @Override
    public boolean filledByMaterial() {
      return true;
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
      implements Part {
    public Cushion {
      layers = List.copyOf(layers);
    }

    @Override
    public Optional<String> seatOf() {
      return Optional.of(seat);
    }

    @Override
    public String kind() {
      return "cushion";
    }

    @Override
    public List<String> pins() {
      return List.of(from, to);
    }

    @Override
    public boolean filledByMaterial() {
      return true;
    }
  }

  /** What a hand or foot rests on. */
  enum RestKind {
    GRIP,
    PEG,
    FOOTBOARD
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
      implements Part {
    @Override
    public Optional<String> seatOf() {
      return Optional.of(seat);
    }

    @Override
    public String kind() {
      return type.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public List<String> pins() {
      return to.isPresent() ? List.of(at, to.get()) : List.of(at);
    }

    @Override
    public boolean filledByMaterial() {
      return type == RestKind.FOOTBOARD;
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
    public String kind() {
      return "lamp";
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
    public String kind() {
      return "stand";
    }

    @Override
    public List<String> pins() {
      return List.of(pivot, foot, stowed);
    }
  }

  private static List<String> framePins(Frame frame, Outline outline) {
    List<String> pins = new ArrayList<>(List.of(frame.origin()));
    frame.along().ifPresent(pins::add);
    outline.vertices().stream().map(Outline.Vertex::pin).filter(p -> p != null).forEach(pins::add);
    return pins.stream().distinct().toList();
  }
}

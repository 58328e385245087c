package org.longlow.constraints.layout;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.formula.Formula;

/** A physical thing of the machine. The kinds differ in how their outline comes about. */
public sealed interface Part
    permits Part.Outlined, Part.AtEnd, Part.Seated, TubePart, LampPart, StandPart {

  PartBase base();

  /** What is asked of every kind of part. */
  Traits traits();

  /** Returns what {@code visitor} makes of its kind. */
  <R> R accept(Visitor<R> visitor);

  /** What differs between the kinds so much that each has a method; none can be forgotten. */
  interface Visitor<R> {
    R wheel(WheelPart wheel);

    R front(FrontPart front);

    R swingarm(SwingarmPart arm);

    R tube(TubePart tube);

    R flat(Flat flat);

    R shell(ShellPart shell);

    R cushion(CushionPart cushion);

    R rest(RestPart rest);

    R lamp(LampPart lamp);

    R stand(StandPart stand);
  }

  /** The word for the kind in files, such as {@code cushion}. */
  default String kind() {
    return traits().kind();
  }

  /** What it is for people, where the word of its kind is too wide for it. */
  default String what() {
    return kind();
  }

  /** The pins it hangs on, in a fixed order, without repeats. */
  List<String> pins();

  /**
   * The pins that go with it where it is moved, turned, copied or taken out: those it hangs on, and
   * those that mark what of it is worked.
   */
  default List<String> ownPins() {
    return pins();
  }

  /** Its outline, where it has one of its own. */
  default Optional<Outline> edge() {
    return Optional.empty();
  }

  /** Mass of what it holds when full, besides its own; absent where it holds nothing. */
  default Optional<Formula> held() {
    return Optional.empty();
  }

  /** What it takes from the electrics and gives to them. */
  default Electric electric() {
    return Electric.NOT_SAID;
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
  sealed interface Outlined extends Part permits Flat, ShellPart {
    LocalAxes frame();

    Outline outline();

    /** How its breadth varies. */
    Breadth breadth();

    /** The formers that are asked for. */
    Formers formers();

    /** The bodies that it has besides that of its outline. */
    default List<FurtherBody> bodies() {
      return List.of();
    }

    @Override
    default Optional<Outline> edge() {
      return Optional.of(outline());
    }

    @Override
    default List<String> pins() {
      Set<String> pins = new LinkedHashSet<>();
      pins.add(frame().origin());
      frame().along().ifPresent(pins::add);
      pins(outline(), pins);
      bodies().forEach(body -> pins(body.outline(), pins));
      return List.copyOf(pins);
    }

    private static void pins(Outline edge, Set<String> into) {
      vertices(edge.vertices(), into);
      edge.holes().forEach(hole -> vertices(hole.vertices(), into));
    }

    private static void vertices(List<Vertex> vertices, Set<String> into) {
      for (Vertex vertex : vertices) {
        if (vertex.pin() != null) {
          into.add(vertex.pin());
        }
      }
    }
  }

  /** A body that fills its outline over its breadth. */
  sealed interface Flat extends Outlined permits SolidPart {

    /** The kind of solid that it is drawn like. */
    SolidPart.Kind look();

    @Override
    default <R> R accept(Visitor<R> visitor) {
      return visitor.flat(this);
    }
  }

  /** A part at one end of the machine: the wheel there, or what carries it. */
  sealed interface AtEnd extends Part permits Carrier, WheelPart {
    End end();

    String axle();
  }

  /** What carries a wheel, with its travel and spring. */
  sealed interface Carrier extends AtEnd permits FrontPart, SwingarmPart {
    Formula bump();

    Formula droop();

    Optional<Formula> rate();

    Optional<Formula> preload();
  }

  /** A part that somebody on a seat rests on. */
  sealed interface Seated extends Part permits CushionPart, RestPart {
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
}

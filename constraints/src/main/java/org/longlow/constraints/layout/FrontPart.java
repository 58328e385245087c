package org.longlow.constraints.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.constraints.layout.Traits.Joint;
import org.longlow.constraints.layout.Traits.Make;

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
 * @param postTop upper pin of the axis that the bars turn about, where they stand on a post of
 *     their own and a link takes their turn to the fork, as far as they turn; absent where they
 *     turn about the steering axis
 * @param postBottom lower pin of that axis
 * @param brakeRod true if a rod beside the link holds the brake, so that it does not swing with the
 *     link
 * @param links the upright of a front with two links
 */
public record FrontPart(
    PartBase base,
    Kind type,
    String top,
    String bottom,
    Optional<String> pivot,
    String axle,
    Formula tube,
    Formula y,
    Formula bump,
    Formula droop,
    Optional<Formula> rate,
    Optional<Formula> preload,
    Optional<String> postTop,
    Optional<String> postBottom,
    boolean brakeRod,
    Links links)
    implements Part.Carrier {

  /** How the front wheel is carried. */
  public enum Kind {
    TELESCOPIC,
    /** The axle at the end of a link, ahead of its pivot. */
    LEADING_LINK,
    /** Likewise behind it. */
    TRAILING_LINK,
    /** Two links, which turn with the steering, hold an upright with the axle. */
    PARALLELOGRAM,
    /**
     * An arm and a rod, which stay with the frame, hold an upright with the axle; the wheel turns
     * about an axis in that.
     */
    HUB_CENTRE;

    /** Whether one link carries the axle. */
    public boolean oneLink() {
      return this == LEADING_LINK || this == TRAILING_LINK;
    }

    /** Whether two links carry it; see {@link Links}. */
    public boolean twoLinks() {
      return this == PARALLELOGRAM || this == HUB_CENTRE;
    }

    /** Whether what carries the axle turns with the steering. */
    public boolean turns() {
      return this != HUB_CENTRE;
    }
  }

  /**
   * The upright of a front with two links: the lower one goes from the front's pivot to a joint.
   *
   * @param joint pin at which the lower link holds it; it goes with the front wheel
   * @param rodPivot pin about which the upper link turns
   * @param rodJoint pin at which that holds it; it goes with the front wheel
   */
  public record Links(
      Optional<String> joint, Optional<String> rodPivot, Optional<String> rodJoint) {

    /** Of a front without an upright. */
    public static final Links NONE =
        new Links(Optional.empty(), Optional.empty(), Optional.empty());

    /** Whether all is said. */
    public boolean whole() {
      return joint.isPresent() && rodPivot.isPresent() && rodJoint.isPresent();
    }

    public List<String> pins() {
      return Stream.of(joint, rodPivot, rodJoint).flatMap(Optional::stream).toList();
    }
  }

  /**
   * What lies on both sides between two pins, straight.
   *
   * @param what in one word
   */
  public record Piece(String what, String from, String to) {}

  /** Returns whether links carry the axle; a shop can make these and the legs. */
  public boolean linked() {
    return pivot.isPresent();
  }

  @Override
  public Part.End end() {
    return Part.End.FRONT;
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
    links.pins().stream().filter(p -> !pins.contains(p)).forEach(pins::add);
    return pins;
  }

  @Override
  public List<String> ownPins() {
    return Stream.concat(pins().stream(), Stream.of(postTop, postBottom).flatMap(Optional::stream))
        .distinct()
        .toList();
  }

  /** Returns its legs and links in side view, each a line over pins. */
  public List<List<String>> lines() {
    if (type.twoLinks() && links.whole() && pivot.isPresent()) {
      String joint = links.joint().get();
      String rod = links.rodJoint().get();
      return List.of(
          List.of(pivot.get(), joint),
          List.of(links.rodPivot().get(), rod),
          joint.equals(axle) ? List.of(rod, axle) : List.of(rod, joint, axle));
    }
    return pivot.isPresent()
        ? List.of(List.of(bottom, pivot.get(), axle))
        : List.of(List.of(top, axle));
  }

  /** Returns these piece by piece. */
  public List<Piece> pieces() {
    List<String> words =
        type.twoLinks()
            ? type == Kind.PARALLELOGRAM
                ? List.of("lower link", "upper link", "upright", "lower end of the upright")
                : List.of("arm", "rod", "upright", "lower end of the upright")
            : List.of("leg", "link");
    List<Piece> pieces = new ArrayList<>();
    for (List<String> line : lines()) {
      for (int i = 1; i < line.size(); i++) {
        pieces.add(new Piece(words.get(pieces.size()), line.get(i - 1), line.get(i)));
      }
    }
    return pieces;
  }
}

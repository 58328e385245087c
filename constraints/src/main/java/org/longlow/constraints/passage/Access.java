package org.longlow.constraints.passage;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.layout.Traits;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/**
 * The ways of legs and trunk between a seat and the open at either side. A limb is a disc of the
 * elevation that goes within the band across the machine where it is ridden, and leaves it sideways
 * where nothing stands farther out. That is needed for getting in and out and not enough: limbs are
 * long and turn.
 */
public final class Access {

  /** Half the breadth of a foot's band, mm; judgement. */
  private static final double FOOT_HALF_MM = 55;

  /** A trunk's band, mm; judgement. */
  private static final Interval TRUNK = new Interval(-150, 150);

  /** The room that a leg is lifted through, from sole to shin, mm; judgement. */
  public static final double LEG_MM = 140;

  /**
   * The hip of somebody who stands, mm: about the survey's mean of men and women (901 and 845) in
   * boots. A leg leaves sideways where the line from there to its foot does, so under nothing.
   */
  private static final double HIP_MM = 900;

  private static final double BEHIND_MM = 450;
  private static final double AHEAD_MM = 350;
  private static final double TOP_MM = 1500;

  private static final Memo<Same, Access> KNOWN = new Memo<>(16);

  /** The same bodies about the same seat: the same objects. */
  private record Same(SeatParts seat, PartShape[] shapes) {

    @Override
    public boolean equals(Object other) {
      if (!(other instanceof Same s) || s.seat != seat || s.shapes.length != shapes.length) {
        return false;
      }
      for (int i = 0; i < shapes.length; i++) {
        if (shapes[i] != s.shapes[i]) {
          return false;
        }
      }
      return true;
    }

    @Override
    public int hashCode() {
      int hash = System.identityHashCode(seat);
      for (PartShape shape : shapes) {
        hash = 31 * hash + System.identityHashCode(shape);
      }
      return hash;
    }
  }

  /** The ways at one side. */
  private record Side(
      LimbWays near,
      LimbWays over,
      LimbWays trunk,
      Optional<PointMm> nearSill,
      Optional<PointMm> sill) {}

  private final Side left;
  private final Side right;

  private Access(Side left, Side right) {
    this.left = left;
    this.right = right;
  }

  /**
   * Returns the ways about a seat; empty where it has nowhere for the feet.
   *
   * @param shapes every part where it is
   */
  public static Optional<Access> of(SeatParts seat, Places places, Collection<PartShape> shapes) {
    if (seat.feet().isEmpty()) {
      return Optional.empty();
    }
    Lattice lattice = lattice(seat, places);
    PartShape[] concerned =
        shapes.stream().filter(shape -> concerns(lattice, shape)).toArray(PartShape[]::new);
    return Optional.of(
        KNOWN.of(new Same(seat, concerned), () -> found(seat, places, lattice, concerned)));
  }

  /** Returns whether a body reaches to where these ways are looked for. */
  public static boolean concerns(SeatParts seat, Places places, PartShape shape) {
    return seat.feet().isPresent() && concerns(lattice(seat, places), shape);
  }

  private static boolean concerns(Lattice lattice, PartShape shape) {
    return !(shape.part() instanceof StandPart)
        && shape.part().traits().duty() != Traits.Duty.CONTROL // moved, or stepped over
        && lattice.sees(shape.outline());
  }

  private static Lattice lattice(SeatParts seat, Places places) {
    double pan = places.pin(seat.pan().from()).x();
    double foot = foot(seat, places).x();
    return Lattice.over(Math.min(pan, foot) - BEHIND_MM, Math.max(pan, foot) + AHEAD_MM, 0, TOP_MM);
  }

  /** The middle of a foot on its rest, as far as it is told without a body. */
  private static PointMm foot(SeatParts seat, Places places) {
    RestPart rest = seat.feet().orElseThrow();
    PointMm at = places.pin(rest.at());
    PointMm up = new PointMm(0, LEG_MM / 2 + places.value(rest.diameter()) / 2);
    return rest.to().map(to -> at.towards(places.pin(to), 0.5)).orElse(at).plus(up);
  }

  private static Access found(SeatParts seat, Places places, Lattice lattice, PartShape[] shapes) {
    List<Part> own = seat.parts();
    List<Prism> others = new ArrayList<>();
    List<Prism> cushions = new ArrayList<>();
    List<Prism> rests = new ArrayList<>();
    for (PartShape shape : shapes) {
      boolean rest = seat.feet().filter(shape.part()::equals).isPresent();
      boolean cushion =
          !rest && shape.part() != seat.hands().orElse(null) && own.contains(shape.part());
      (rest ? rests : cushion ? cushions : others).addAll(shape.prisms());
    }
    double y = places.value(seat.feet().orElseThrow().y());
    PointMm foot = foot(seat, places);
    PointMm pan = places.pin(seat.pan().from()).towards(places.pin(seat.pan().to()), 0.5);
    PointMm hip = new PointMm(pan.x(), HIP_MM);
    List<Prism> withCushions = new ArrayList<>(others);
    withCushions.addAll(cushions);
    Rooms rooms =
        new Rooms(
            lattice,
            others,
            withCushions,
            cushions,
            rests,
            hip,
            foot,
            y,
            lattice.filled(others, TRUNK));
    Side left = rooms.side(true);
    return new Access(left, isEven(withCushions, rests) ? left : rooms.side(false));
  }

  /** Whether both sides are alike for sure: each body is even, or the next is its image. */
  private static boolean isEven(List<Prism> bodies, List<Prism> rests) {
    List<Prism> all = new ArrayList<>(bodies);
    all.addAll(rests);
    Prism waits = null;
    for (Prism body : all) {
      if (waits != null) {
        if (body.outline() != waits.outline() || !body.across().equals(waits.across().mirrored())) {
          return false;
        }
        waits = null;
      } else if (body.across().from() != -body.across().to()) {
        waits = body;
      }
    }
    return waits == null;
  }

  /** What stands about a seat. */
  private record Rooms(
      Lattice lattice,
      List<Prism> others,
      List<Prism> withCushions,
      List<Prism> cushions,
      List<Prism> rests,
      PointMm hip,
      PointMm foot,
      double y,
      boolean[] atTrunk) {

    Side side(boolean left) {
      Interval near = new Interval(Math.max(0, y - FOOT_HALF_MM), y + FOOT_HALF_MM);
      Interval far = near.mirrored();
      LimbWays leg = leg(left, near);
      LimbWays over = leg(left, far);
      int radius = (int) Math.round(LEG_MM / 2);
      int at = lattice.cell(foot);
      Optional<PointMm> nearSill = leg.sill(at, radius);
      Optional<PointMm> sill =
          nearSill.flatMap(
              n -> over.sill(at, radius).map(farther -> n.z() > farther.z() ? n : farther));
      LimbWays body =
          LimbWays.of(
              lattice,
              atTrunk,
              lattice.filled(others, out(left, TRUNK.from())),
              lattice.filled(cushions, TRUNK));
      return new Side(leg, over, body, nearSill, sill);
    }

    /** From a place across the machine, as at the left, out to that side. */
    private static Interval out(boolean left, double from) {
      return left ? new Interval(from, 1e6) : new Interval(-1e6, -from);
    }

    /**
     * The ways of a leg.
     *
     * @param band where it is, as if at the left it leaves by
     */
    private LimbWays leg(boolean left, Interval band) {
      Interval own = left ? band : band.mirrored();
      return LimbWays.ofLeg(
          lattice,
          lattice.filled(withCushions, own),
          lattice.filled(withCushions, out(left, band.from())),
          lattice.filled(rests, own),
          hip);
    }
  }

  private Side at(boolean atLeft) {
    return atLeft ? left : right;
  }

  /**
   * Returns the widest that a leg may be for its foot to get out at a side, mm.
   *
   * @param foot where some of it is
   */
  public double legMm(boolean atLeft, PointMm... foot) {
    return widestMm(at(atLeft).near, foot);
  }

  /** Returns the same for the other foot, which leaves over the machine. */
  public double farLegMm(boolean atLeft, PointMm... foot) {
    return widestMm(at(atLeft).over, foot);
  }

  /**
   * Returns the deepest that a trunk may be to get out at a side, mm.
   *
   * @param trunk where some of it is
   */
  public double trunkMm(boolean atLeft, PointMm... trunk) {
    return widestMm(at(atLeft).trunk, trunk);
  }

  /** What sits there has room there: only how it goes on from the freest of its places counts. */
  private static double widestMm(LimbWays ways, PointMm... from) {
    int[] cells = new int[from.length];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = ways.lattice().cell(from[i]);
    }
    return 2.0 * ways.widestMm(cells);
  }

  /**
   * Returns the lowest place that a foot is lifted over to get in from a side, of the leg that must
   * be lifted higher, mm; empty where one of them does not get in.
   */
  public Optional<PointMm> sill(boolean atLeft) {
    return at(atLeft).sill;
  }

  /** Returns the same of the nearer leg alone. */
  public Optional<PointMm> nearSill(boolean atLeft) {
    return at(atLeft).nearSill;
  }
}

package org.longlow.constraints.passage;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.StandPart;
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

  /** Half the breadth of a trunk's band, mm; judgement. */
  private static final double TRUNK_HALF_MM = 150;

  /** The room that a leg is lifted through, from sole to shin, mm; judgement. */
  public static final double LEG_MM = 140;

  /** A hip above the board that is sat on, mm; only parts what is over legs from what is under. */
  private static final double HIP_MM = 150;

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
  private record Side(Ways near, Ways over, Ways trunk, double sillMm) {}

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
  public static Optional<Access> of(
      SeatParts seat, Places places, Collection<PartShape> shapes) {
    return seat.feet().isEmpty()
        ? Optional.empty()
        : Optional.of(
            KNOWN.of(
                new Same(seat, shapes.toArray(new PartShape[0])),
                () -> found(seat, places, shapes)));
  }

  /** Returns whether a body reaches to where these ways are looked for. */
  public static boolean concerns(SeatParts seat, Places places, PartShape shape) {
    return seat.feet().isPresent() && lattice(seat, places).sees(shape.outline());
  }

  private static Lattice lattice(SeatParts seat, Places places) {
    double pan = places.pin(seat.pan().from()).x();
    double foot = foot(seat, places).x();
    return Lattice.over(
        Math.min(pan, foot) - BEHIND_MM, Math.max(pan, foot) + AHEAD_MM, 0, TOP_MM);
  }

  /** The middle of a foot on its rest, as far as it is told without a body. */
  private static PointMm foot(SeatParts seat, Places places) {
    RestPart rest = seat.feet().orElseThrow();
    PointMm at = places.pin(rest.at());
    PointMm up = new PointMm(0, LEG_MM / 2 + places.value(rest.diameter()) / 2);
    return rest.to().map(to -> at.towards(places.pin(to), 0.5)).orElse(at).plus(up);
  }

  private static Access found(SeatParts seat, Places places, Collection<PartShape> shapes) {
    Lattice lattice = lattice(seat, places);
    List<Part> own = seat.parts();
    List<Prism> others = new ArrayList<>();
    List<Prism> cushions = new ArrayList<>();
    List<Prism> rests = new ArrayList<>();
    for (PartShape shape : shapes) {
      if (shape.part() instanceof StandPart || !lattice.sees(shape.outline())) {
        continue;
      }
      boolean rest = seat.feet().filter(shape.part()::equals).isPresent();
      boolean cushion = !rest && shape.part() != seat.hands().orElse(null)
          && own.contains(shape.part());
      (rest ? rests : cushion ? cushions : others).addAll(shape.prisms());
    }
    double y = places.value(seat.feet().orElseThrow().y());
    PointMm foot = foot(seat, places);
    PointMm hip =
        places.pin(seat.pan().from()).plus(new PointMm(0, HIP_MM));
    List<Prism> withCushions = new ArrayList<>(others);
    withCushions.addAll(cushions);
    Rooms rooms = new Rooms(lattice, others, withCushions, cushions, rests, hip, foot, y);
    return new Access(rooms.side(true), rooms.side(false));
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
      double y) {

    Side side(boolean left) {
      Interval near = new Interval(Math.max(0, y - FOOT_HALF_MM), y + FOOT_HALF_MM);
      Interval far = near.mirrored();
      Interval trunk = new Interval(-TRUNK_HALF_MM, TRUNK_HALF_MM);
      Ways leg = leg(left, near);
      Ways over = leg(left, far);
      int radius = (int) Math.round(LEG_MM / 2);
      int at = lattice.cell(foot);
      double sill = Math.max(leg.sillMm(at, radius), over.sillMm(at, radius));
      Ways body =
          Ways.of(
              lattice,
              lattice.clearMm(lattice.filled(others, trunk)),
              lattice.clearMm(lattice.filled(others, out(left, trunk.from()))),
              lattice.filled(cushions, trunk));
      return new Side(leg, over, body, sill);
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
    private Ways leg(boolean left, Interval band) {
      Interval own = left ? band : band.mirrored();
      boolean[] within = lattice.filled(withCushions, own);
      boolean[] outside = lattice.filled(withCushions, out(left, band.from()));
      boolean[] rest = lattice.filled(rests, own);
      int[] leaves = lattice.clearMm(outside);
      boolean[] beneath = beneath(outside);
      for (int i = 0; i < leaves.length; i++) {
        leaves[i] = beneath[i] ? 0 : leaves[i];
      }
      boolean[] walls = beneath(rest);
      return Ways.of(lattice, lattice.clearMm(within), leaves, walls);
    }

    /**
     * Cells that are filled, or have a filled one between them and the line from hip to foot: a leg
     * would go under the machine there.
     */
    private boolean[] beneath(boolean[] filled) {
      boolean[] beneath = filled.clone();
      int columns = lattice.columns();
      double run = foot.x() - hip.x();
      for (int c = 0; c < columns; c++) {
        double x = lattice.middle(c).x();
        double share = run == 0 ? 0 : Math.max(0, Math.min(1, (x - hip.x()) / run));
        boolean under = false;
        int top = lattice.cell(new PointMm(x, hip.z() + share * (foot.z() - hip.z())));
        for (int i = top; i >= 0; i -= columns) {
          under = under || filled[i];
          beneath[i] = under;
        }
      }
      return beneath;
    }
  }

  private Side at(boolean atLeft) {
    return atLeft ? left : right;
  }

  /** Returns the widest that a leg may be for its foot to get out at a side, mm. */
  public double legMm(boolean atLeft, PointMm foot) {
    Ways ways = at(atLeft).near;
    return 2.0 * ways.widestMm()[ways.lattice().cell(foot)];
  }

  /** Returns the same for the other foot, which leaves over the machine. */
  public double farLegMm(boolean atLeft, PointMm foot) {
    Ways ways = at(atLeft).over;
    return 2.0 * ways.widestMm()[ways.lattice().cell(foot)];
  }

  /** Returns the deepest that a trunk may be to get out at a side, mm. */
  public double trunkMm(boolean atLeft, PointMm chest) {
    Ways ways = at(atLeft).trunk;
    return 2.0 * ways.widestMm()[ways.lattice().cell(chest)];
  }

  /** Returns how high both feet must be lifted to get in from a side, mm; NaN where none gets in. */
  public double sillMm(boolean atLeft) {
    return at(atLeft).sillMm;
  }
}

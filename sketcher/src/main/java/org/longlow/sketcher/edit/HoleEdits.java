package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Hole;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.shape.Holes;
import org.longlow.constraints.shape.Local;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/** Edits of holes and cut-outs as a whole; their points are moved by {@link PointEdits}. */
public final class HoleEdits {

  /** What a new hole is. */
  public enum Sort {
    ROUND("round hole"),
    SLOT("slot"),
    CUT("cut-out");

    private final String words;

    Sort(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  private HoleEdits() {}

  /**
   * Returns the edit that adds a hole about a place.
   *
   * @param sizeMm diameter, or length over all
   */
  public static Edit add(String part, Places places, Sort sort, PointMm at, double sizeMm) {
    return new Edit(
        "add " + sort.words() + " to " + part,
        layout -> {
          Part.Outlined outlined = outlined(layout, part);
          PointMm c = Local.of(outlined.frame(), places).within(at);
          return with(layout, part, outlined.outline().holes().size(), hole(sort, c, sizeMm));
        });
  }

  /** Returns the edit that adds a round hole centred on a pin. */
  public static Edit addOnPin(String part, String pin, double diameterMm) {
    return new Edit(
        "add round hole to " + part + " at " + pin,
        layout ->
            with(
                layout,
                part,
                outlined(layout, part).outline().holes().size(),
                new Hole.Round(new Vertex(null, null, pin, false), PointEdits.mm(diameterMm))));
  }

  private static Hole hole(Sort sort, PointMm c, double size) {
    double half = size / 2;
    return switch (sort) {
      case ROUND -> new Hole.Round(PointEdits.written(c, false), PointEdits.mm(size));
      case SLOT ->
          new Hole.Slot(
              PointEdits.written(c.plus(new PointMm(-half / 2, 0)), false),
              PointEdits.written(c.plus(new PointMm(half / 2, 0)), false),
              PointEdits.mm(half));
      case CUT ->
          new Hole.Cut(
              List.of(
                  PointEdits.written(c.plus(new PointMm(-half, -half)), false),
                  PointEdits.written(c.plus(new PointMm(half, -half)), false),
                  PointEdits.written(c.plus(new PointMm(half, half)), false),
                  PointEdits.written(c.plus(new PointMm(-half, half)), false)));
    };
  }

  /** Returns the edit that takes a hole out. */
  public static Edit takeOut(String part, int hole) {
    return new Edit(
        "take out hole " + (hole + 1) + " of " + part,
        layout ->
            Typing.dropped(
                layout, List.of("parts", part, "outline", "holes", Integer.toString(hole))));
  }

  /**
   * Returns the edit that shifts a hole as a whole; what of it lies on pins or is worked out is
   * told, and nothing moves.
   */
  public static Edit shift(String part, int hole, Places places, PointMm by) {
    return new Edit(
        "shift hole " + (hole + 1) + " of " + part,
        layout -> {
          Layout shifted = layout;
          for (Handle handle : Handle.of(layout, places, part)) {
            if (handle.hole() == hole) {
              shifted =
                  PointEdits.move(handle, places, handle.at().plus(by), false).applied(shifted);
            }
          }
          return shifted;
        });
  }

  /** Returns the edit that gives a round hole its diameter, or a slot its width. */
  public static Edit size(String part, int hole, String text) {
    return new Edit(
        "hole " + (hole + 1) + " of " + part + " to " + text,
        layout -> {
          Hole now = outlined(layout, part).outline().holes().get(hole);
          Formula size = Formula.parse(text.strip());
          if (now instanceof Hole.Cut) {
            throw new OutOfRange("a cut-out has no diameter; drag its points");
          }
          Hole sized =
              now instanceof Hole.Round round
                  ? new Hole.Round(round.at(), size)
                  : new Hole.Slot(((Hole.Slot) now).from(), ((Hole.Slot) now).to(), size);
          return with(layout, part, hole, sized);
        });
  }

  /** Puts a hole in the place of another, or behind the last. */
  private static Layout with(Layout layout, String part, int index, Hole hole) {
    List<Hole> all = new ArrayList<>(outlined(layout, part).outline().holes());
    if (index < all.size()) {
      all.set(index, hole);
    } else {
      all.add(hole);
    }
    return Change.set(layout, all, "parts", part, "outline", "holes");
  }

  /** Returns the holes of a half with their images written out. */
  static List<Hole> withImages(Part.Outlined part, Outline half, Places places) {
    Local local = Local.of(part.frame(), places);
    List<PointMm> axis = local.places(half.axis());
    List<Hole> all = new ArrayList<>();
    int before = -1;
    for (Holes.Placed placed : Holes.of(part.frame(), half, places)) {
      boolean image = placed.index() == before;
      before = placed.index();
      all.add(image ? image(placed.hole(), local, axis) : placed.hole());
    }
    return all;
  }

  private static Hole image(Hole hole, Local local, List<PointMm> axis) {
    List<PointMm> at = local.places(hole.vertices());
    List<Vertex> there = new ArrayList<>();
    for (int i = 0; i < at.size(); i++) {
      PointMm image = at.get(i).mirrored(axis.get(0), axis.get(1));
      there.add(PointEdits.written(local.within(image), hole.vertices().get(i).smooth()));
    }
    if (hole instanceof Hole.Round round) {
      return new Hole.Round(there.get(0), round.diameter());
    }
    return hole instanceof Hole.Slot slot
        ? new Hole.Slot(there.get(0), there.get(1), slot.width())
        : new Hole.Cut(there);
  }

  private static Part.Outlined outlined(Layout layout, String part) {
    if (layout.parts().get(part) instanceof Part.Outlined outlined) {
      return outlined;
    }
    throw new OutOfRange(part + " has no outline of its own, so no holes either");
  }
}

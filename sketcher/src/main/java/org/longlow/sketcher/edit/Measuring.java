package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.layout.Dimension.Along;
import org.longlow.constraints.stand.Measured;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/**
 * A measurement on its way: from one thing to another, or an angle at the second of three.
 *
 * @param spots up to three
 */
public record Measuring(List<MeasureSpot> spots) {

  public static final Measuring NOTHING = new Measuring(List.of());

  public Measuring {
    spots = List.copyOf(spots);
  }

  /**
   * One thing that the spots tell.
   *
   * @param nearest whether it runs where an edge is nearest, not to the place pointed at
   * @param measured in the axes of the road
   */
  public record Reading(Along along, boolean nearest, Measured measured) {

    /** Says it beside the pointer. */
    public String words(Units units) {
      double value = measured.value();
      return word()
          + " "
          + (along == Along.ANGLE
              ? Bench.figure(value, Dim.ANGLE, units)
              : units.says(value, FigureSort.LENGTH));
    }

    private String word() {
      return switch (along) {
        case STRAIGHT -> nearest ? "nearest" : "straight";
        case LEVEL -> "across";
        case UPRIGHT -> "up";
        case ANGLE -> "angle";
      };
    }
  }

  /**
   * Returns this with one more spot; after two begins the next measurement.
   *
   * @param third whether it is the third of an angle instead
   */
  public Measuring with(MeasureSpot spot, boolean third) {
    boolean more = spots.size() < 2 || spots.size() == 2 && third;
    List<MeasureSpot> next = new ArrayList<>(more ? spots : List.of());
    next.add(spot);
    return new Measuring(next);
  }

  public Measuring back() {
    return new Measuring(spots.subList(0, Math.max(0, spots.size() - 1)));
  }

  /** Returns this as the machine is now; nothing if what it was on is there no more. */
  public Measuring in(MeasureView view) {
    List<MeasureSpot> again = new ArrayList<>();
    for (MeasureSpot spot : spots) {
      Optional<MeasureSpot> now = view.again(spot);
      if (now.isEmpty()) {
        return NOTHING;
      }
      again.add(now.get());
    }
    return new Measuring(again);
  }

  public boolean isDone() {
    return spots.size() >= 2;
  }

  /** Returns what the spots tell, what is most likely meant first; none for fewer than two. */
  public List<Reading> readings(MeasureView view) {
    if (!isDone()) {
      return List.of();
    }
    List<PointMm> at = spots.stream().map(s -> view.ground().toRoad(s.at())).toList();
    if (at.size() == 3) {
      return List.of(
          new Reading(Along.ANGLE, false, Measured.angle(at.get(0), at.get(1), at.get(2))));
    }
    List<Reading> all = new ArrayList<>();
    nearest(view).ifPresent(all::add);
    for (Along along : List.of(Along.STRAIGHT, Along.LEVEL, Along.UPRIGHT)) {
      all.add(new Reading(along, false, Measured.length(along, at.get(0), at.get(1))));
    }
    if (spots.get(0).onGround() != spots.get(1).onGround()) {
      // to the ground people mean the height
      all.add(0, all.remove(all.size() - 1));
    }
    return all;
  }

  private Optional<Reading> nearest(MeasureView view) {
    MeasureSpot a = spots.get(0);
    MeasureSpot b = spots.get(1);
    boolean edges = a.isEdge() || b.isEdge();
    boolean other = a.isEdge() ? !a.part().equals(b.part()) : edges;
    boolean held = (a.isEdge() || a.end().isPresent()) && (b.isEdge() || b.end().isPresent());
    if (!other || !held) {
      return Optional.empty();
    }
    List<PointMm> ends = Measured.nearest(geometry(a, view), geometry(b, view));
    return Optional.of(
        new Reading(
            Along.STRAIGHT,
            true,
            Measured.length(
                Along.STRAIGHT,
                view.ground().toRoad(ends.get(0)),
                view.ground().toRoad(ends.get(1)))));
  }

  private static Geometry geometry(MeasureSpot spot, MeasureView view) {
    return spot.isEdge() ? view.outlines().get(spot.part()) : Measured.place(spot.at());
  }

  /** Returns what a reading can be kept on only once a pin is nailed there, in words. */
  public Set<String> without(Reading reading) {
    Set<String> without = new LinkedHashSet<>();
    for (MeasureSpot spot : spots) {
      if (spot.end().isEmpty()
          && !(reading.nearest() && spot.isEdge())
          && !isGroundBelow(spot, reading)) {
        without.add(
            spot.isEdge()
                ? "the edge of " + spot.part()
                : spot.onGround() ? "the ground" : "a bare place");
      }
    }
    return without;
  }

  /** An upright dimension runs to the ground without anything to end at there. */
  boolean isGroundBelow(MeasureSpot spot, Reading reading) {
    return reading.along() == Along.UPRIGHT
        && spot.onGround()
        && spots.stream().filter(MeasureSpot::onGround).count() == 1;
  }
}

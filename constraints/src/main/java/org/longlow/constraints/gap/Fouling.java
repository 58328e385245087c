package org.longlow.constraints.gap;

import java.nio.DoubleBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.machine.linkage.Moving;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.space.Piece;
import org.longlow.rider.geom.PointMm;

/**
 * How a part of a section comes too close to another body on its way, and what would clear it.
 *
 * @param first the first opening at which it is too close
 * @param worst the opening at which it is closest
 * @param gapMm the gap there, mm; negative by how deep they are in each other
 * @param withinMm nowhere are they closer by more than this
 * @param where the place there
 * @param shift the shift of the body to be moved, in tenths of mm, as {@link SweptClearing} proves
 * @param across its shift across the machine, left positive, mm
 * @param apart how much farther out both its sides must be, mm
 * @param cutOfPart the straight cut off the section's part
 * @param cutOfOther the straight cut off the other body
 */
public record Fouling(
    double first,
    double worst,
    double gapMm,
    double withinMm,
    PointMm where,
    Optional<PointMm> shift,
    Optional<Double> across,
    Optional<Double> apart,
    Optional<StraightCut> cutOfPart,
    Optional<StraightCut> cutOfOther) {

  /** Places are taken to this, mm, so that a machine drawn elsewhere is the same to the digit. */
  private static final double GRAIN_MM = 1e-6;

  private static final Memo<Case, Fouling> KNOWN = new Memo<>(64, Case::solve);

  /** What may be done about it. */
  public enum Remedy {
    SHIFT_PART,
    SHIFT_OTHER,
    CUT_PART,
    CUT_OTHER
  }

  /**
   * Returns how a part fouls a body, or nothing if it keeps the gap all the way.
   *
   * <p>Remedies take a hundred times as long as the finding; those of the last cases are kept, the
   * same wherever on the drawing they are.
   *
   * @param part of the section, shut
   */
  public static Optional<Fouling> of(
      Moving motion, Solid part, Solid other, double gapMm, List<Remedy> remedies) {
    PointMm pole = motion.swing(0, 0).pole();
    Case here =
        new Case(
            motion.seenFrom(pole, GRAIN_MM),
            seenFrom(part, pole),
            seenFrom(other, pole),
            gapMm,
            List.copyOf(remedies));
    Fouling there = KNOWN.of(here);
    return Double.isNaN(there.first)
        ? Optional.empty()
        : Optional.of(there.at(there.where.plus(pole)));
  }

  /** Whether they are so deep in each other that no remedy is sought. */
  public boolean isDeep() {
    return gapMm < -Sweep.DEEP_MM;
  }

  private Fouling at(PointMm place) {
    return new Fouling(
        first, worst, gapMm, withinMm, place, shift, across, apart, cutOfPart, cutOfOther);
  }

  private record Side(
      DoubleBuffer ends, List<Integer> rings, List<Interval> across, List<Piece> pieces) {}

  private static List<Side> seenFrom(Solid body, PointMm origin) {
    List<Side> sides = new ArrayList<>();
    for (Face face : body.faces()) {
      double[] ends = face.edges().ends.clone();
      for (int k = 0; k < ends.length; k += 2) {
        ends[k] = Math.rint((ends[k] - origin.x()) / GRAIN_MM) * GRAIN_MM;
        ends[k + 1] = Math.rint((ends[k + 1] - origin.z()) / GRAIN_MM) * GRAIN_MM;
      }
      List<Integer> rings = new ArrayList<>();
      for (int ring : face.edges().rings) {
        rings.add(ring);
      }
      RigidMotion there = Solid.by(origin.times(-1));
      List<Piece> pieces =
          face.pieces().stream().map(p -> p.moved(there).grained(GRAIN_MM)).toList();
      sides.add(new Side(DoubleBuffer.wrap(ends), rings, List.copyOf(face.across()), pieces));
    }
    return sides;
  }

  private record Case(
      Moving motion, List<Side> part, List<Side> other, double gapMm, List<Remedy> remedies) {

    private static Fouling without(
        double first, double worst, double gapMm, double withinMm, PointMm where) {
      return new Fouling(
          first,
          worst,
          gapMm,
          withinMm,
          where,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
    }

    private static Solid body(String name, List<Side> sides) {
      List<Face> faces = new ArrayList<>();
      for (Side side : sides) {
        int[] rings = side.rings().stream().mapToInt(Integer::intValue).toArray();
        faces.add(
            new Face(
                new Edges(side.ends().array(), rings),
                side.across(),
                side.pieces(),
                Face.Core.of(side.pieces())));
      }
      return new Solid(faces, name);
    }

    Fouling solve() {
      Sweep sweep = new Sweep(motion);
      Solid a = body("part", part);
      Solid b = body("other", other);
      double first = sweep.firstBelow(a, b, gapMm);
      if (Double.isNaN(first)) {
        return without(first, first, 0, 0, PointMm.ORIGIN);
      }
      Sweep.Worst worst = sweep.worst(a, b, first);
      Gap gap = worst.gap();
      Fouling found = without(first, worst.opening(), gap.gapMm(), worst.withinMm(), gap.where());
      if (found.isDeep() || remedies.isEmpty()) {
        return found;
      }
      SweptClearing clearing = new SweptClearing(sweep, a, b, gapMm, worst.opening());
      boolean shiftsPart = remedies.contains(Remedy.SHIFT_PART);
      boolean shiftsOther = remedies.contains(Remedy.SHIFT_OTHER);
      return new Fouling(
          first,
          worst.opening(),
          gap.gapMm(),
          worst.withinMm(),
          gap.where(),
          shiftsPart
              ? clearing.shiftOfPart()
              : shiftsOther ? clearing.shiftOfOther() : Optional.empty(),
          shiftsOther ? clearing.acrossOfOther() : Optional.empty(),
          shiftsPart
              ? clearing.apartOfPart()
              : shiftsOther ? clearing.apartOfOther() : Optional.empty(),
          remedies.contains(Remedy.CUT_PART) ? clearing.cutOfPart() : Optional.empty(),
          remedies.contains(Remedy.CUT_OTHER) ? clearing.cutOfOther() : Optional.empty());
    }
  }
}

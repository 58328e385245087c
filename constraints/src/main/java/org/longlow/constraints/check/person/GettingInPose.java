package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.SpaceMm;
import org.longlow.constraints.space.Strut;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.Flesh;
import org.longlow.rider.pose.Posture;

/**
 * One pose of somebody who gets in, in the axes of the frame.
 *
 * @param step which one
 * @param outer trunk, arms, and the leg that is farther out on the side one gets in from
 * @param inner the same trunk with the other leg and arm
 * @param left whether one gets in from the left
 * @param asideMm middle plane of the machine to that of the body, towards that side, mm
 */
public record GettingInPose(Step step, Posture outer, Posture inner, boolean left, double asideMm) {

  /** The poses in order; getting out is the way back. */
  public enum Step {
    BESIDE("standing beside"),
    OVER("stepping over"),
    RISING("going down or rising"),
    DOWN("sitting down"),
    LEGS("lifting the legs in"),
    SEATED("seated");

    private final String words;

    Step(String words) {
      this.words = words;
    }

    /** Whether the weight is on the seat. */
    public boolean sits() {
      return compareTo(DOWN) >= 0;
    }

    /** Returns it in words, such as {@code stepping over}. */
    public String words() {
      return words;
    }
  }

  /**
   * A limb that moves past the machine. Its body is made when it is first asked for: where another
   * meets something nobody asks. For one thread.
   */
  static final class Limb {
    private final String name;
    private final Supplier<Solid> making;
    private Solid made;

    private Limb(String name, Supplier<Solid> making) {
      this.name = name;
      this.making = making;
    }

    String name() {
      return name;
    }

    Solid body() {
      if (made == null) {
        made = making.get();
      }
      return made;
    }
  }

  /** Returns the limbs that move past the machine. */
  List<Limb> limbs(Body body) {
    List<Limb> limbs = new ArrayList<>();
    switch (step) {
      case OVER -> {
        leg(body, inner, -1, limbs);
        for (Figure.Part part : List.of(Figure.Part.CHEST, Figure.Part.PELVIS, Figure.Part.HEAD)) {
          limbs.add(new Limb(part.word(), () -> trunk(body, part)));
        }
      }
      case RISING -> {
        leg(body, outer, 1, limbs);
        leg(body, inner, -1, limbs);
        for (Figure.Part part : List.of(Figure.Part.CHEST, Figure.Part.HEAD)) {
          limbs.add(new Limb(part.word(), () -> trunk(body, part)));
        }
      }
      case DOWN, LEGS -> {
        leg(body, outer, 1, limbs);
        leg(body, inner, -1, limbs);
      }
      case BESIDE, SEATED -> {
        // nothing moves past
      }
    }
    return limbs;
  }

  private Solid trunk(Body body, Figure.Part part) {
    Figure figure = new Figure(body, outer);
    Flesh f = figure.part(part);
    double y = sign() * asideMm;
    Interval across = new Interval(y - f.outerMm(), y + f.outerMm());
    List<Prism> prisms = new ArrayList<>(List.of(new Prism(f.outline(), across)));
    if (part == Figure.Part.CHEST) {
      figure.rucksack().ifPresent(pack -> prisms.add(new Prism(pack.outline(), across)));
    }
    return new Solid(f.name(), prisms);
  }

  private int sign() {
    return left ? 1 : -1;
  }

  /**
   * Adds a leg as round bars between its joints. Of somebody who sits, the thigh's half at the hip
   * is left out: it lies on the seat and bends over its edge.
   *
   * @param out 1 for the outer one, -1 for the inner one
   */
  private void leg(Body body, Posture p, int out, List<Limb> limbs) {
    double knee = body.measures().get("lowerthighcircumference") / (2 * Math.PI);
    double calf = body.measures().get("calfcircumference") / (2 * Math.PI);
    double sole = Figure.toeHeightMm(body) / 2;
    SpaceMm hipAt = at(p.hip(), out * p.across().hipMm());
    SpaceMm kneeAt = at(p.knee(), out * p.across().kneeMm());
    SpaceMm ankleAt = at(p.ankle(), out * p.across().ankleMm());
    PointMm up = p.ball().minus(p.heel()).left();
    PointMm off = up.times(sole / Math.max(up.length(), 1));
    SpaceMm above = step == Step.OVER ? hipAt : kneeAt.plus(hipAt).times(0.5);
    limbs.add(limb("thigh", above, kneeAt, knee));
    limbs.add(limb("shank", kneeAt, ankleAt, calf));
    limbs.add(
        limb(
            "foot",
            at(p.heel().plus(off), out * p.across().ankleMm()),
            at(p.toe().plus(off), out * p.across().ballMm()),
            sole));
  }

  private static Limb limb(String name, SpaceMm from, SpaceMm to, double radius) {
    return new Limb(name, () -> bar(name, from, to, radius));
  }

  private SpaceMm at(PointMm p, double outMm) {
    return SpaceMm.of(p, sign() * (asideMm + outMm));
  }

  private static Solid bar(String name, SpaceMm from, SpaceMm to, double radius) {
    Interval across =
        new Interval(Math.min(from.y(), to.y()) - radius, Math.max(from.y(), to.y()) + radius);
    return new Solid(
        name,
        List.of(
            new Prism(
                Curves.bar(from.side(), to.side(), 2 * radius),
                across,
                List.of(new Strut(from, to, radius, true, true)))));
  }
}

package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.machine.ride.ParkedStability;
import org.longlow.constraints.machine.ride.ParkedStability.PlanMm;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.Words;

/**
 * A work stand under either axle, that is no part of the machine: what it takes to pull the empty
 * machine onto it, and what tips it there, the other wheel on the road.
 */
public final class WorkStandFindings {

  /** What it takes to lift a wheel with a work stand, and how the machine stands on it. */
  public static final FindingKind WORK_STAND =
      new FindingKind("work-stand", FindingGroup.STAND, Rests.ON_MASSES);

  private static final Basis LEVER =
      Basis.model(
          "a lever about its rollers: all of the axle's load on the hook, hands at the end");

  private static final Basis STATICS =
      Basis.model("statics on one tyre and two feet under the other axle, the springs as they are");

  /** Angles that differ by less read alike, deg. */
  private static final double ALIKE_DEG = 0.05;

  private WorkStandFindings() {}

  /** Returns what is found of both axles; nothing where the machine does not stand empty. */
  public static List<Finding> of(Layout layout, Wheels wheels, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    standings.stream()
        .filter(s -> s.kind() == Stance.Kind.UNLADEN && s.load() != null)
        .filter(s -> stands(s.load().axles()))
        .findFirst()
        .ifPresent(
            s -> {
              findings.addAll(of(layout, s, wheels.rear(), s.load().axles().rearN()));
              findings.addAll(of(layout, s, wheels.front(), s.load().axles().frontN()));
            });
    return findings;
  }

  private static boolean stands(AxleLoads axles) {
    return axles.frontN() > 0 && axles.rearN() > 0 && axles.total().at().z() > 0;
  }

  private static List<Finding> of(Layout layout, Standing s, WheelPart wheel, double loadN) {
    return List.of(lift(layout, s, wheel, loadN), tip(layout, s, wheel));
  }

  private static double asked(Layout layout, Standing s, Demands.Key key) {
    return s.places().value(layout.demands().limit(key));
  }

  private static Finding lift(Layout layout, Standing s, WheelPart wheel, double loadN) {
    double lever = Values.positive("workLever", asked(layout, s, Demands.Key.WORK_LEVER));
    Figures figures =
        Figures.atMost(loadN / lever, asked(layout, s, Demands.Key.HEAVE), FigureUnit.NEWTON);
    boolean heavy = figures.margin() < 0;
    return finding(
        s,
        wheel,
        "lift",
        figures,
        List.of(
            LEVER,
            Sources.of(layout, Demands.Key.WORK_LEVER),
            Sources.of(layout, Demands.Key.HEAVE)),
        Words.of(
            "A work stand under the axle of " + wheel.name() + " carries ",
            Say.newton(loadN),
            " with nobody aboard; with a handle ",
            Say.number(lever) + " times as long as its hook hands press ",
            Say.newton(figures.value()),
            " to pull the machine onto it, ",
            Say.newton(figures.limit()),
            " are asked at most",
            heavy ? ": take one with a longer handle, or pull together." : "."));
  }

  private static Finding tip(Layout layout, Standing s, WheelPart wheel) {
    double apart = asked(layout, s, Demands.Key.WORK_FEET);
    AxleLoads axles = s.load().axles();
    boolean rear = wheel.end() == WheelPart.End.REAR;
    double on = rear ? 0 : axles.wheelbaseMm();
    ParkedStability stood =
        ParkedStability.on(
            new PlanMm(axles.wheelbaseMm() - on, 0),
            new PlanMm(on, -apart / 2),
            new PlanMm(on, apart / 2),
            new PlanMm(axles.total().at().x(), axles.total().yMm()),
            axles.total().at().z());
    double left = Math.toDegrees(stood.tipOverFrontEdgeRad());
    double right = Math.toDegrees(stood.tipOverWheelsRad());
    Figures figures =
        Figures.atLeast(
            Math.min(left, right),
            Math.toDegrees(asked(layout, s, Demands.Key.TIP)),
            FigureUnit.DEG);
    return finding(
        s,
        wheel,
        "tip",
        figures,
        List.of(
            STATICS,
            Sources.of(layout, Demands.Key.WORK_FEET),
            Sources.of(layout, Demands.Key.TIP)),
        Words.of(
            "On a work stand under the axle of " + wheel.name() + " whose feet are ",
            Say.mm(apart),
            " apart the machine tips at ",
            sides(left, right),
            "; ",
            Say.deg(figures.limit()),
            " are asked",
            figures.margin() < 0
                ? ": take one with feet farther apart, and tie the machine before you pull at it."
                : "."));
  }

  /** Both angles, that to the side it tips to first before the other. */
  private static Words sides(double left, double right) {
    if (Math.abs(left - right) < ALIKE_DEG) {
      return Words.of(Say.deg(left), " to either side");
    }
    String first = left < right ? "left" : "right";
    return Words.of(
        Say.deg(Math.min(left, right)),
        " to the " + first + " and at ",
        Say.deg(Math.max(left, right)),
        " to the " + (left < right ? "right" : "left"));
  }

  /** What a stand that is bought asks for is care, not another machine. */
  private static Finding finding(
      Standing s, WheelPart wheel, String what, Figures figures, List<Basis> basis, Words words) {
    return new Finding(
            WORK_STAND,
            About.parts(wheel.name()).named(wheel.name(), what),
            Optional.of(s.condition()),
            figures.margin() < 0 ? Verdict.CAUTION : Verdict.PASS,
            figures,
            basis,
            words)
        .at(s.places().pin(wheel.axle()));
  }
}

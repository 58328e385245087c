package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.words.Words;

/** Whether instruments are read with a glance. */
final class InstrumentFindings {

  /** How far the eyes turn to an instrument. */
  static final FindingKind INSTRUMENT =
      new FindingKind("instrument", FindingGroup.SIGHT_AND_FOOT, Rests.ON_DRAWING);

  private static final List<Basis> BASIS =
      List.of(
          Basis.model("straight line from the eye to the middle of it"),
          Basis.published(
              Known.CHECKED, "eyes turn down 25 degrees (LaValle, Virtual Reality, ch. 5)"),
          Basis.judgement(
              "that a glance goes no farther aside or up than 30 degrees is judgement"));

  /** Farther aside or up the head must turn each time; judgement. */
  private static final double GLANCE_DEG = 30;

  private InstrumentFindings() {}

  static List<Finding> of(Sitting sitting, Posture posture, Standing standing) {
    List<Finding> findings = new ArrayList<>();
    for (PartShape shape : standing.shapes().values()) {
      if (shape.part() instanceof SolidPart solid && solid.type() == SolidPart.Kind.INSTRUMENT) {
        findings.add(finding(sitting, posture, standing, shape));
      }
    }
    return findings;
  }

  private static Finding finding(
      Sitting sitting, Posture posture, Standing standing, PartShape shape) {
    PointMm at = shape.centre();
    double y = shape.centreYMm();
    PointMm to = standing.ground().toRoad(at).minus(standing.ground().toRoad(posture.eye()));
    double ahead = Math.hypot(Math.max(to.x(), 0), y);
    double down = Math.toDegrees(Math.atan2(-to.z(), ahead));
    double most = Math.toDegrees(HeadUpFindings.EYES_DOWN_RAD);
    Optional<String> before = before(sitting, posture, standing, shape, at, y);
    double aside = Math.toDegrees(Math.atan2(Math.abs(y), to.x()));
    boolean sees = aside <= GLANCE_DEG && -down <= GLANCE_DEG && down <= most && before.isEmpty();
    return new Finding(
            INSTRUMENT,
            About.person(sitting.occupant(), shape.part().name(), shape.part().name())
                .on(shape.part().name()),
            Optional.of(standing.condition()),
            sees ? Verdict.PASS : Verdict.CAUTION,
            figures(down, aside, most),
            BASIS,
            Words.of(
                Say.format(
                    "From the horizon %s looks %s %s%s to %s; eyes turn down %s",
                    sitting.occupant().words(),
                    down < 0 ? "up" : "down",
                    Say.deg(Math.abs(down)),
                    aside > GLANCE_DEG ? Words.of(" and ", Say.deg(aside), " aside") : Words.NONE,
                    shape.part().name(),
                    Say.deg(most)),
                before.map(b -> Words.of(", and " + b + " before it")).orElse(Words.NONE),
                sees
                    ? "."
                    : before.isPresent()
                        ? ": move it to where nothing stands before it."
                        : aside > GLANCE_DEG || -down > GLANCE_DEG
                            ? ": move it ahead of the eyes, or the head must turn each time."
                            : ": move it up or forward, or the head must nod each time."))
        .at(at, y);
  }

  /** How far the eyes turn the way that is too far; down where none is. */
  private static Figures figures(double downDeg, double asideDeg, double mostDeg) {
    return downDeg <= mostDeg && asideDeg > GLANCE_DEG
        ? Figures.atMost(asideDeg, GLANCE_DEG, FigureUnit.DEG)
        : -downDeg > GLANCE_DEG
            ? Figures.atMost(-downDeg, GLANCE_DEG, FigureUnit.DEG)
            : Figures.atMost(downDeg, mostDeg, FigureUnit.DEG);
  }

  /** What stands between eye and instrument, told with its verb. */
  private static Optional<String> before(
      Sitting sitting,
      Posture posture,
      Standing standing,
      PartShape instrument,
      PointMm at,
      double yMm) {
    PointMm eye = posture.eye();
    Geometry line = Curves.line(List.of(eye, eye.towards(at, 0.98)));
    Interval across = new Interval(Math.min(0, yMm), Math.max(0, yMm));
    for (Map.Entry<String, List<Prism>> limb : sitting.fineLimbs().entrySet()) {
      boolean own = Set.of("thigh", "forearm").contains(limb.getKey());
      if (own && limb.getValue().stream().anyMatch(p -> hides(p, line, across))) {
        return Optional.of("own " + (limb.getKey().equals("thigh") ? "legs" : "hands") + " stand");
      }
    }
    for (PartShape shape : standing.shapes().values()) {
      boolean clear = shape == instrument || LookingAhead.clear(shape.part());
      if (!clear && shape.prisms().stream().anyMatch(p -> hides(p, line, across))) {
        return Optional.of(shape.part().name() + " stands");
      }
    }
    return Optional.empty();
  }

  private static boolean hides(Prism prism, Geometry line, Interval across) {
    return prism.across().gap(across) <= 0 && prism.outline().intersects(line);
  }
}

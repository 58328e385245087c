package org.longlow.rider.seat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.HeadSolver;
import org.longlow.rider.pose.HeadTarget;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.PoseSolver;

/** Turns a settled state into an answer. */
final class SeatedReport {

  /** Greatest gap from head to head rest in cars, mm; FMVSS 202a, from memory. */
  private static final double CAR_HEAD_GAP_MM = 55;

  /** Highest pressure that a verdict is worked out for, kPa; foam is solid long before. */
  private static final double MOST_KPA = 50_000;

  /** Thickness left of foam that a thigh squeezes over an edge, 1; judgement. */
  private static final double SQUEEZED_SHARE = 1.0 / 3;

  private SeatedReport() {}

  static SeatOutcome of(Settling s) {
    if (s.panOutline() == null) {
      return new SeatOutcome.Unseatable(
          "The person's seat bones miss the pan: the hip lies off its board. Move pan or back, or make"
              + " the pan longer.");
    }
    if (!(s.load().panNormalN() > 0)) {
      return new SeatOutcome.Unseatable(
          "The pan carries no weight in this position: raise the back or level the pan.");
    }
    HeadTarget head =
        s.leaning ? new HeadTarget.OnRest(s.restSurface(), s.restNormal()) : new HeadTarget.Gaze();
    PoseResult pose =
        PoseSolver.solve(
            s.body, s.hip(), s.recline(), head, s.seat.foot(), s.seat.hand(), s.seat.width());
    double gap = s.leaning ? 0 : s.headGapMm();
    return new SeatOutcome.Seated(
        pose,
        s.hip(),
        s.recline(),
        pan(s),
        back(s),
        s.leaning ? Optional.of(headRest(s)) : Optional.empty(),
        s.leaning,
        gap,
        s.load(),
        s.load().held(),
        s.rounds(),
        s.settled(),
        notes(s, pose, gap));
  }

  private static List<String> notes(Settling s, PoseResult pose, double gap) {
    List<String> notes = new ArrayList<>();
    if (s.panStation() < -Outline.BUTTOCK_REAR_MM - 60) {
      notes.add("The buttocks reach behind the pan: part of them hangs free.");
    }
    double dip = thighDipMm(s, pose);
    if (dip > 0) {
      notes.add(
          String.format(
              Locale.ROOT,
              "The front edge of the pan presses %.0f mm into the underside of the thighs: shorten the"
                  + " pan, lower its front or raise the feet.",
              dip));
    }
    if (!s.leansBack()) {
      notes.add(
          s.recline() <= 0
              ? "The back leans forward or stands upright: it carries nothing."
              : "The back board does not reach the torso: it carries nothing.");
    }
    double pitch = pose.posture().angles().headPitch();
    if (!HeadSolver.roadInView(pitch)) {
      notes.add(
          String.format(
              Locale.ROOT,
              "The head is held %.0f deg %s: the road is hard to see.",
              Math.abs(Math.toDegrees(pitch)),
              pitch > 0 ? "nose up" : "nose down"));
    }
    if (gap < -1) {
      notes.add(
          String.format(
              Locale.ROOT,
              "The head rest stands %.0f mm into the helmet: move it back or down.",
              -gap));
    }
    if (gap > CAR_HEAD_GAP_MM) {
      notes.add(
          String.format(
              Locale.ROOT,
              "The head rest is %.0f mm behind the helmet; cars allow %.0f mm.",
              gap,
              CAR_HEAD_GAP_MM));
    }
    if (!s.settled()) {
      notes.add("Posture and sink did not agree in " + s.rounds() + " rounds; figures are rough.");
    }
    notes.addAll(s.seat.pan().foam().warnings());
    notes.addAll(s.seat.back().foam().warnings());
    return notes;
  }

  /** How far the pan's front edge, its foam squeezed to a third, stands into the thigh, mm. */
  private static double thighDipMm(Settling s, PoseResult pose) {
    Cushion pan = s.seat.pan();
    PointMm edge =
        pan.to().plus(s.panAlong.left().times(pan.foam().thicknessMm() * SQUEEZED_SHARE));
    PointMm hip = s.hip();
    PointMm toKnee = pose.posture().knee().minus(hip);
    double seen = toKnee.length();
    PointMm thigh = toKnee.times(1 / Math.max(seen, 1));
    double along = thigh.dot(edge.minus(hip));
    if (along <= 0 || along >= seen) {
      return 0;
    }
    double share = along / seen;
    double underside = s.body.hipAboveSeatMm() - Outline.THIGH_GAP_MM;
    double knee = s.body.measures().get("lowerthighcircumference") / (2 * Math.PI);
    double flesh = underside + share * (knee - underside);
    return flesh + thigh.cross(edge.minus(hip));
  }

  private static CushionLoad pan(Settling s) {
    Contact safe = s.panSafe();
    Contact best = s.panBest();
    PointMm centre = s.seat.pan().from().plus(s.panAlong.times(s.panStation() + best.centreMm()));
    return new CushionLoad(
        s.load().panNormalN(),
        s.load().panShearN(),
        best.sinkMm(),
        safe.sinkMm(),
        safe.remainingMm(),
        best.peakKPa(),
        best.meanKPa(),
        best.areaCm2(),
        centre,
        safe.stack(),
        s.seat.pan().foam().holdsBump(Math.min(safe.peakKPa(), MOST_KPA)),
        worn(s.seat.pan().foam(), s.panWorn()));
  }

  private static CushionLoad back(Settling s) {
    FoamStack foam = s.seat.back().foam();
    BackContact torso = s.torso();
    double area = torso.lengthMm() * s.backWidthM * 10;
    double peak = peakKPa(torso);
    double force = s.leansBack() ? s.load().backN() : 0;
    double sink = sinkMm(torso, foam, force);
    FoamStack old = foam.worn();
    BackContact later = s.torsoIn(old);
    double laterPeak = peakKPa(later);
    PointMm centre = s.seat.back().from().plus(s.backAlong.times(s.backCentreStation()));
    return new CushionLoad(
        force,
        0,
        sink,
        sink,
        foam.thicknessMm() - sink,
        peak,
        area > 0 ? force / area * 10 : 0,
        area,
        centre,
        foam.compress(peak),
        foam.holdsBump(peak),
        new CushionLoad.Worn(
            sinkMm(later, old, force),
            old.compress(laterPeak).verdict(),
            old.holdsBump(laterPeak)));
  }

  private static double peakKPa(BackContact torso) {
    return Math.min(torso.peakPa() / 1000, MOST_KPA);
  }

  private static double sinkMm(BackContact torso, FoamStack foam, double force) {
    return force > 0 ? Math.max(torso.lowMm(), torso.highMm()) + foam.rigidSinkMm() : 0;
  }

  private static CushionLoad.Worn worn(FoamStack foam, Contact contact) {
    return new CushionLoad.Worn(
        contact.sinkMm(),
        contact.stack().verdict(),
        foam.worn().holdsBump(Math.min(contact.peakKPa(), MOST_KPA)));
  }

  private static CushionLoad headRest(Settling s) {
    Cushion rest = s.seat.headRest();
    Contact c = s.head();
    PointMm centre = rest.from().plus(rest.along().times(s.headStation(s.headPitch())));
    return new CushionLoad(
        s.load().headRestN(),
        0,
        c.sinkMm(),
        c.sinkMm(),
        c.remainingMm(),
        c.peakKPa(),
        c.meanKPa(),
        c.areaCm2(),
        centre,
        c.stack(),
        rest.foam().holdsBump(Math.min(c.peakKPa(), MOST_KPA)),
        worn(rest.foam(), s.headWorn()));
  }
}

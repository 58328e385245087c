package org.longlow.rider.seat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.HeadSolver;
import org.longlow.rider.pose.HeadTarget;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.PoseSolver;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

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
    if (s.at().panOutline() == null) {
      return new SeatOutcome.Unseatable(
          "The person's seat bones miss the pan: the hip lies off its board. Move pan or back, or"
              + " make the pan longer.");
    }
    if (!(s.pressing().load().panNormalN() > 0)) {
      return new SeatOutcome.Unseatable(
          "The pan carries no weight in this position: raise the back or level the pan.");
    }
    HeadTarget head =
        s.fit().leaning()
            ? new HeadTarget.OnRest(s.at().restSurface(), s.fit().restNormal())
            : new HeadTarget.Gaze();
    PoseResult pose =
        PoseSolver.solve(
            s.fit().body(),
            s.at().hip(),
            s.at().recline(),
            head,
            s.fit().seat().foot(),
            s.fit().seat().hand(),
            s.fit().seat().width());
    double gap = s.fit().leaning() ? 0 : s.at().headGapMm();
    return new SeatOutcome.Seated(
        pose,
        s.at().hip(),
        s.at().recline(),
        pan(s),
        back(s),
        s.fit().leaning() ? Optional.of(headRest(s)) : Optional.empty(),
        s.fit().leaning(),
        gap,
        s.pressing().load(),
        s.pressing().load().held(),
        s.rounds(),
        s.settled(),
        notes(s, pose, gap));
  }

  private static List<SeatNote> notes(Settling s, PoseResult pose, double gap) {
    List<SeatNote> notes = new ArrayList<>();
    if (s.at().panStation() < -Underside.BUTTOCK_REAR_MM - 60) {
      notes.add(
          new SeatNote(
              SeatNote.About.BUTTOCKS,
              Words.of("The buttocks reach behind the pan: part of them hangs free.")));
    }
    double dip = thighDipMm(s, pose);
    if (dip > 0) {
      notes.add(
          new SeatNote(
              SeatNote.About.THIGHS,
              Words.format(
                  "The front edge of the pan presses %s into the underside of the thighs: shorten"
                      + " the pan, lower its front or raise the feet.",
                  Words.figure(dip, FigureSort.LENGTH_IN_TENTHS))));
    }
    if (!s.at().leansBack()) {
      notes.add(
          new SeatNote(
              SeatNote.About.BACK,
              Words.of(
                  s.at().recline() <= 0
                      ? "The back leans forward or stands upright: it carries nothing."
                      : "The back board does not reach the torso: it carries nothing.")));
    }
    double pitch = pose.posture().angles().headPitch();
    if (!HeadSolver.roadInView(pitch)) {
      notes.add(
          new SeatNote(
              SeatNote.About.HEAD,
              Words.format(
                  "The head is held %.0f deg %s: the road is hard to see.",
                  Math.abs(Math.toDegrees(pitch)), pitch > 0 ? "nose up" : "nose down")));
    }
    if (gap < -1) {
      notes.add(
          new SeatNote(
              SeatNote.About.HEAD_REST,
              Words.format(
                  "The head rest stands %s into the helmet: move it back or down.",
                  Words.figure(-gap, FigureSort.WHOLE_LENGTH))));
    }
    if (gap > CAR_HEAD_GAP_MM) {
      notes.add(
          new SeatNote(
              SeatNote.About.HEAD_REST,
              Words.format(
                  "The head rest is %s behind the helmet; cars allow %s.",
                  Words.figure(gap, FigureSort.WHOLE_LENGTH),
                  Words.figure(CAR_HEAD_GAP_MM, FigureSort.WHOLE_LENGTH))));
    }
    foam(notes, SeatNote.About.PAN_FOAM, "pan", s.fit().seat().pan());
    foam(notes, SeatNote.About.BACK_FOAM, "back", s.fit().seat().back());
    return notes;
  }

  private static void foam(
      List<SeatNote> notes, SeatNote.About about, String cushion, Cushion made) {
    List<Words> warnings = made.foam().warnings();
    if (!warnings.isEmpty()) {
      notes.add(
          new SeatNote(about, Words.of("In the " + cushion + ": ", Words.join(" ", warnings))));
    }
  }

  /** How far the pan's front edge, its foam squeezed to a third, stands into the thigh, mm. */
  private static double thighDipMm(Settling s, PoseResult pose) {
    Cushion pan = s.fit().seat().pan();
    PointMm edge =
        pan.to().plus(s.fit().panAlong().left().times(pan.foam().thicknessMm() * SQUEEZED_SHARE));
    PointMm hip = s.at().hip();
    PointMm toKnee = pose.posture().knee().minus(hip);
    double seen = toKnee.length();
    PointMm thigh = toKnee.times(1 / Math.max(seen, 1));
    double along = thigh.dot(edge.minus(hip));
    if (along <= 0 || along >= seen) {
      return 0;
    }
    double share = along / seen;
    double underside = s.fit().body().hipAboveSeatMm() - Underside.THIGH_GAP_MM;
    double knee = s.fit().body().measures().get("lowerthighcircumference") / (2 * Math.PI);
    double flesh = underside + share * (knee - underside);
    return flesh + thigh.cross(edge.minus(hip));
  }

  private static CushionLoad pan(Settling s) {
    FoamContact safe = s.pressing().panSafe(s.at());
    FoamContact best = s.pressing().panBest(s.at());
    PointMm centre =
        s.fit()
            .seat()
            .pan()
            .from()
            .plus(s.fit().panAlong().times(s.at().panStation() + best.centreMm()));
    return new CushionLoad(
        s.pressing().load().panNormalN(),
        s.pressing().load().panShearN(),
        best.sinkMm(),
        safe.sinkMm(),
        safe.remainingMm(),
        best.peakKPa(),
        best.meanKPa(),
        best.areaCm2(),
        centre,
        safe.stack(),
        s.fit().seat().pan().foam().holdsBump(Math.min(safe.peakKPa(), MOST_KPA)),
        worn(s.fit().seat().pan().foam(), s.pressing().panWorn(s.at())));
  }

  private static CushionLoad back(Settling s) {
    FoamStack foam = s.fit().seat().back().foam();
    BackContact torso = s.pressing().torso();
    double area = torso.lengthMm() * s.fit().backWidthM() * 10;
    double peak = peakKPa(torso);
    double force = s.at().leansBack() ? s.pressing().load().backN() : 0;
    double sink = sinkMm(torso, foam, force);
    FoamStack old = foam.worn();
    BackContact later = s.pressing().torsoIn(old, s.at());
    double laterPeak = peakKPa(later);
    PointMm centre =
        s.fit().seat().back().from().plus(s.fit().backAlong().times(s.at().backCentreStation()));
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

  private static CushionLoad.Worn worn(FoamStack foam, FoamContact contact) {
    return new CushionLoad.Worn(
        contact.sinkMm(),
        contact.stack().verdict(),
        foam.worn().holdsBump(Math.min(contact.peakKPa(), MOST_KPA)));
  }

  private static CushionLoad headRest(Settling s) {
    Cushion rest = s.fit().seat().headRest();
    FoamContact c = s.pressing().head(s.at());
    PointMm centre = rest.from().plus(rest.along().times(s.at().headStation(s.at().headPitch())));
    return new CushionLoad(
        s.pressing().load().headRestN(),
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
        worn(rest.foam(), s.pressing().headWorn(s.at())));
  }
}

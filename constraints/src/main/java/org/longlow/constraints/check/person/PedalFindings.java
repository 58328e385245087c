package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
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
import org.longlow.constraints.layout.Control;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Pressed;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.JointLimits;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.words.Words;

/** Whether feet work their pedals through the travel while the heel stays where it rests. */
public final class PedalFindings {

  /** The ankle while a pedal goes through its travel. */
  public static final FindingKind PEDAL =
      new FindingKind("pedal", FindingGroup.POSTURE, Rests.ON_DRAWING);

  /** Shank and sole over the travel, rad: common practice without a source. */
  private static final double EASY_LEAST = Math.toRadians(85);

  private static final double EASY_MOST = Math.toRadians(115);

  /** How far a pedal may be behind the ball of the foot, mm; judgement. */
  private static final double BEHIND_BALL_MM = 40;

  /** How much of the toes must be on it, mm; judgement. */
  private static final double TOES_MM = 15;

  /** How much of a pedal's breadth must be under the sole, mm; judgement. */
  private static final double OVERLAP_MM = 25;

  /** How far a foot turns about its heel without taking the knee along, rad; judgement. */
  private static final double ASIDE_RAD = Math.toRadians(15);

  /** Farther no foot turns outwards with a bent knee, rad; from memory (some 40°, inwards 30°). */
  private static final double ASIDE_MOST_RAD = Math.toRadians(40);

  /** How far a pedal is moved to see whether that helps, mm. */
  private static final double TRY_MM = 10;

  /** Less than this is no help, rad. */
  private static final double HELPS_RAD = Math.toRadians(0.5);

  /** Places of a board where a heel is tried. */
  private static final int HEELS = 24;

  private static final List<Basis> BASIS =
      List.of(
          Basis.model("foot turned about where it rests, hip and knee in space"),
          Basis.published(Known.CHECKED, "links and feet of the survey"),
          // they can fail a pedal; what is easy lets it pass
          Basis.judgement("stops of the ankle, clinical tables from memory").fromMemory().aside(),
          Basis.practice("85 to 115 deg between shank and sole: common practice, no source"));

  private final Layout layout;
  private final Places places;
  private final Map<String, PartShape> shapes;

  /**
   * @param shapes every part as drawn
   */
  public PedalFindings(Layout layout, Places places, Map<String, PartShape> shapes) {
    this.layout = layout;
    this.places = places;
    this.shapes = shapes;
  }

  /**
   * Returns what is found of all pedals of whoever rides; nothing where no part is said to be one,
   * or they do not sit.
   */
  public List<Finding> of(Sitting sitting, Condition stance) {
    List<Finding> findings = new ArrayList<>();
    if (!sitting.occupant().rides() || sitting.posture().isEmpty()) {
      return findings;
    }
    for (SolidPart part : layout.parts(SolidPart.class).toList()) {
      Pressed.pedal(part).ifPresent(w -> findings.add(pedal(sitting, stance, part, w)));
    }
    return findings;
  }

  private Finding pedal(Sitting sitting, Condition stance, SolidPart part, Control worked) {
    Body body = sitting.body();
    PointMm pad = places.pin(worked.pad());
    PedalSweep best = null;
    double cost = Double.POSITIVE_INFINITY;
    for (PointMm rest : rests(sitting)) {
      PedalSweep sweep = sweep(sitting, rest, pad, worked);
      double strays =
          beyond(sweep.leastRad(), sweep.mostRad(), EASY_LEAST, EASY_MOST)
              + beyond(
                  sweep.leastRad(), sweep.mostRad(), JointLimits.ANKLE_LOW, JointLimits.ANKLE_HIGH);
      double now =
          1000 * strays
              + 10 * off(body, sweep)
              + 10 * sweep.missMm()
              + rest.distance(rests(sitting).get(0)) / 10;
      if (now < cost) {
        cost = now;
        best = sweep;
      }
    }
    About about = About.person(sitting.occupant(), part.name(), part.name()).on(part.name());
    double arm = pad.distance(places.pin(worked.pivot().orElseThrow()));
    Figures swing = Figures.atMost(places.value(worked.travel().orElseThrow()), arm, FigureUnit.MM);
    if (swing.margin() < 0) {
      return tooFar(stance, part, about, swing).at(pad);
    }
    double aside = aside(sitting, part, best);
    Finding f = judged(sitting, stance, part, worked, about, best, aside);
    return f.at(pad);
  }

  /** A rubber that goes farther than its arm is long turns by more than a right angle can show. */
  private static Finding tooFar(Condition stance, SolidPart part, About about, Figures swing) {
    return Finding.held(
        PEDAL,
        about,
        Optional.of(stance),
        swing,
        BASIS,
        Words.of(
            "The rubber of " + part.name() + " is to go ",
            Say.mm(swing.value()),
            " and is ",
            Say.mm(swing.limit()),
            " from its pivot, so it would turn ",
            Say.deg(Math.toDegrees(Math.min(2 * Math.PI, swing.value() / swing.limit()))),
            swing.value() / swing.limit() > 2 * Math.PI ? " and more" : "",
            "; a foot follows no travel longer than the arm: give it less travel."));
  }

  private Finding judged(
      Sitting sitting,
      Condition stance,
      SolidPart part,
      Control worked,
      About about,
      PedalSweep sweep,
      double asideRad) {
    double off = off(sitting.body(), sweep);
    if (off > 0 || sweep.missMm() > 0) {
      boolean behind = sweep.padMm() < sitting.body().foot().ballMm();
      boolean far = !(behind && off > 0);
      double mm = far ? Math.max(off, sweep.missMm()) : off;
      return Finding.held(
          PEDAL,
          about,
          Optional.of(stance),
          Figures.atMost(mm, 0, FigureUnit.MM),
          BASIS,
          Words.of(
              "The foot of "
                  + sitting.person()
                  + " does not work "
                  + part.name()
                  + " from where it rests: it is ",
              Say.mm(mm),
              far
                  ? " too far ahead of the heel; bring it nearer."
                  : " too near to the heel; set it farther ahead."));
    }
    if (asideRad > ASIDE_MOST_RAD) {
      Figures turn =
          Figures.atMost(Math.toDegrees(asideRad), Math.toDegrees(ASIDE_MOST_RAD), FigureUnit.DEG);
      return Finding.held(
          PEDAL,
          about,
          Optional.of(stance),
          turn,
          BASIS,
          Words.of(
              "The foot of " + sitting.person() + " must turn ",
              Say.deg(turn.value()),
              " aside to work "
                  + part.name()
                  + " from where it rests, and no foot turns more than ",
              Say.deg(turn.limit()),
              ": bring it in line with the foot rest."));
    }
    boolean low = sweep.leastRad() - EASY_LEAST < EASY_MOST - sweep.mostRad();
    double worst = low ? sweep.leastRad() : sweep.mostRad();
    boolean beyond =
        sweep.leastRad() < JointLimits.ANKLE_LOW || sweep.mostRad() > JointLimits.ANKLE_HIGH;
    double limit =
        beyond
            ? low ? JointLimits.ANKLE_LOW : JointLimits.ANKLE_HIGH
            : low ? EASY_LEAST : EASY_MOST;
    Figures figures =
        low
            ? Figures.atLeast(Math.toDegrees(worst), Math.toDegrees(limit), FigureUnit.DEG)
            : Figures.atMost(Math.toDegrees(worst), Math.toDegrees(limit), FigureUnit.DEG);
    boolean turned = asideRad > ASIDE_RAD;
    Verdict verdict =
        beyond ? Verdict.FAIL : figures.margin() < 0 || turned ? Verdict.CAUTION : Verdict.PASS;
    Words text =
        Say.format(
            "On %s the ankle of %s goes from %s to %s while the foot turns %s about where it rests;"
                + " %s to %s %s%s%s",
            part.name(),
            sitting.person(),
            Say.deg(Math.toDegrees(sweep.leastRad())),
            Say.deg(Math.toDegrees(sweep.mostRad())),
            Say.deg(Math.toDegrees(sweep.turnRad())),
            Say.deg(Math.toDegrees(beyond ? JointLimits.ANKLE_LOW : EASY_LEAST)),
            Say.deg(Math.toDegrees(beyond ? JointLimits.ANKLE_HIGH : EASY_MOST)),
            beyond ? "is as far as ankles go" : "is easy",
            figures.margin() >= 0 ? "." : cures(sitting, part, worked, sweep),
            turned
                ? Say.format(
                    " The foot must turn %s aside for it: bring it in line with the foot rest.",
                    Say.deg(Math.toDegrees(asideRad)))
                : Words.NONE);
    return new Finding(PEDAL, about, Optional.of(stance), verdict, figures, BASIS, text);
  }

  /** What makes the ankle stray less from what is easy, each tried by itself. */
  private String cures(Sitting sitting, SolidPart part, Control worked, PedalSweep sweep) {
    PointMm pad = places.pin(worked.pad());
    PointMm to = pad.minus(sweep.rest());
    PointMm along = to.times(TRY_MM / Math.max(1, to.length()));
    double now = strays(sweep);
    List<String> helps = new ArrayList<>();
    BiFunction<PointMm, Double, PedalSweep> tried =
        (moved, share) -> sweep(sitting, sweep.rest(), pad, worked, moved, share);
    if (strays(tried.apply(along.left(), 1.0)) < now - HELPS_RAD) {
      helps.add("set it with its pivot nearer to the shin");
    } else if (strays(tried.apply(along.left().times(-1), 1.0)) < now - HELPS_RAD) {
      helps.add("set it with its pivot farther from the shin");
    }
    PedalSweep ahead = tried.apply(along, 1.0);
    if (off(sitting.body(), ahead) == 0 && strays(ahead) < now - HELPS_RAD) {
      helps.add("set it with its pivot farther ahead of the heel");
    }
    if (strays(tried.apply(PointMm.ORIGIN, 0.5)) < now - HELPS_RAD) {
      helps.add("give it less travel");
    }
    return ": "
        + (helps.isEmpty()
            ? "move the seat or where the foot rests; neither moving "
                + part.name()
                + " a little nor less travel helps"
            : String.join(", or ", helps))
        + ".";
  }

  private static double strays(PedalSweep sweep) {
    return beyond(sweep.leastRad(), sweep.mostRad(), EASY_LEAST, EASY_MOST) + sweep.missMm();
  }

  private PedalSweep sweep(Sitting sitting, PointMm rest, PointMm pad, Control worked) {
    return sweep(sitting, rest, pad, worked, PointMm.ORIGIN, 1);
  }

  /**
   * Follows a foot.
   *
   * @param moved how pedal and pivot are moved for it
   * @param share of its travel
   */
  private PedalSweep sweep(
      Sitting sitting, PointMm rest, PointMm at, Control worked, PointMm moved, double share) {
    PointMm pad = at.plus(moved);
    Body body = sitting.body();
    boolean board = sitting.parts().feet().orElseThrow().type().board();
    double d = PedalSweep.alongMm(sitting.posture().orElseThrow(), rest, pad);
    // over a peg the foot slides until its ball is on the pedal, as far as heel and toes let it
    double sole = board ? 0 : Math.max(0, Math.min(body.foot().ballMm() - d, body.foot().ballMm()));
    double travel = share * places.value(worked.travel().orElseThrow());
    return PedalSweep.of(
        body,
        sitting.posture().orElseThrow(),
        rest,
        sole,
        pad,
        places.pin(worked.pivot().orElseThrow()).plus(moved),
        travel,
        worked.by() == Control.By.TOES ? travel : 0);
  }

  /** How far a pedal is off the part of the sole that works it, mm; 0 where it is on it. */
  private static double off(Body body, PedalSweep sweep) {
    return Math.max(
        0,
        Math.max(
            body.foot().ballMm() - BEHIND_BALL_MM - sweep.padMm(),
            sweep.padMm() - body.foot().frontMm() + TOES_MM));
  }

  private static double beyond(double least, double most, double low, double high) {
    return Math.max(0, low - least) + Math.max(0, most - high);
  }

  /** Where the foot may rest meanwhile: as it does first, else along its board. */
  private List<PointMm> rests(Sitting sitting) {
    Posture posture = sitting.posture().orElseThrow();
    RestPart feet = sitting.parts().feet().orElseThrow();
    if (!feet.type().board()) {
      return List.of(posture.ball());
    }
    List<PointMm> rests = new ArrayList<>(List.of(posture.heel()));
    PointMm rear = places.pin(feet.at());
    PointMm along = places.pin(feet.to().orElseThrow()).minus(rear);
    PointMm up =
        along.left().times(places.value(feet.diameter()) / 2 / Math.max(1, along.length()));
    for (int k = 0; k <= HEELS; k++) {
      rests.add(rear.plus(up).plus(along.times((double) k / HEELS)));
    }
    return rests;
  }

  /** How far a foot must turn about where it rests for enough of the pedal to be under it, rad. */
  private double aside(Sitting sitting, SolidPart part, PedalSweep sweep) {
    double half = Figure.footBreadthMm(sitting.body()) / 2;
    double middle = sitting.posture().orElseThrow().across().ballMm();
    Interval foot = new Interval(middle - half, middle + half);
    double least = Double.POSITIVE_INFINITY;
    for (Prism prism : shapes.get(part.name()).prisms()) {
      double enough = Math.min(OVERLAP_MM, prism.across().length());
      for (Interval i : List.of(prism.across(), prism.across().mirrored())) {
        least = Math.min(least, Math.max(0, i.gap(foot) + enough));
      }
    }
    return Math.atan2(
        Double.isInfinite(least) ? 0 : least, Math.max(1, sweep.padMm() - sweep.soleMm()));
  }
}

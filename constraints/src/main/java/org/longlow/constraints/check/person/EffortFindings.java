package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
import org.longlow.constraints.check.finding.Tug;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.Effort.Held;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.body.Sex;
import org.longlow.rider.effort.Joint;
import org.longlow.rider.effort.Strength;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.ComfortBands;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.seat.SeatLoad;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/** What muscles hold in neck, arms and legs, riding along in the wind and braking. */
public final class EffortFindings {

  /** What neck, arms or legs hold. */
  public static final FindingKind EFFORT =
      new FindingKind("effort", FindingGroup.EFFORT, Rests.ON_DRAWING);

  /** A moment of the whole person that rounds to nothing, N m. */
  private static final double CLOSED_NM = 1e-6;

  /**
   * How far off its place a contact may be in fact, mm: what is less than that shifts it;
   * judgement.
   */
  private static final double PLACED_MM = 25;

  private static final double KMH_PER_MS = 3.6;

  private static final double MM_PER_M = 1e3;

  private static final double S_PER_MIN = 60;

  private static final Basis MODEL =
      Basis.model(
          "statics of each limb with gear: what grips, rests and cushions bear as the seat has it");

  private static final Basis AIR =
      Basis.published(
          Known.FROM_MEMORY,
          "drag of heads and limbs (from memory) on what stands over cowls and screens ahead: an"
              + " estimate");

  private static final Basis WAKE =
      Basis.judgement(
          "that the air behind a cowl or screen is still for %.0f of its breadths is judgement"
              .formatted(Shelter.CLOSES));

  private static final Basis ALL_DAY =
      Basis.published(
          Known.TRANSCRIBED,
          "Sjogaard and Jensen, Low-Level Static Exertions: 2 to 5 % of strength all day, 8 % for"
              + " an hour");

  private static final Basis FORCE =
      Basis.published(
          Known.TRANSCRIBED, "EN 1005-3 by a summary: half of one's strength for a short force");

  private static final Basis PRACTICE =
      Basis.practice(
          "weak people at 0.6 of the mean, and 15 % of the mean as the most for riding, are common"
              + " practice");

  private static final Basis BENT =
      Basis.judgement(
          "judgement: a head with nothing behind it is not bent forward by more than 30 deg for"
              + " long");

  /** Joints whose muscles tire together. */
  private enum Region {
    NECK("neck", "the neck of", Joint.NECK),
    ARMS("arms", "each arm of", Joint.SHOULDER, Joint.ELBOW),
    LEGS("legs", "each leg of", Joint.HIP, Joint.KNEE, Joint.ANKLE);

    private final String word;
    private final String whose;
    private final List<Joint> joints;

    Region(String word, String whose, Joint... joints) {
      this.word = word;
      this.whose = whose;
      this.joints = List.of(joints);
    }
  }

  private final Sitting sitting;
  private final SeatOutcome.Seated seated;
  private final Posture posture;
  private final Condition stance;
  private final Effort effort;
  private final EffortAdvice advice;
  private final List<Basis> demands;

  private EffortFindings(
      Layout layout, Sitting sitting, List<Standing> standings, Effort effort, Places places) {
    this.sitting = sitting;
    seated = sitting.seated().orElseThrow();
    posture = seated.pose().posture();
    stance = Standing.under(sitting.occupant(), standings);
    this.effort = effort;
    advice = EffortAdvice.of(layout, sitting, standings, effort, places);
    demands =
        Stream.of(Demands.Key.SPEED, Demands.Key.BRAKING, Demands.Key.GRIP)
            .map(key -> Sources.of(layout, key))
            .toList();
  }

  /** Returns those of somebody who sits; why others do not is told where they are seated. */
  public static List<Finding> of(
      Layout layout, Sitting sitting, List<Standing> standings, Places places) {
    Optional<Effort> effort = Effort.of(layout, sitting, standings, places);
    if (effort.isEmpty()) {
      return List.of();
    }
    EffortFindings all = new EffortFindings(layout, sitting, standings, effort.get(), places);
    return Stream.of(Region.values()).map(all::finding).toList();
  }

  private Finding finding(Region region) {
    if (region == Region.NECK && seated.bendsHead()) {
      return bent();
    }
    if (region == Region.LEGS && Math.abs(effort.balance().leftNm()) > CLOSED_NM) {
      return unbalanced();
    }
    List<Held> all =
        region.joints.stream()
            .flatMap(j -> Stream.of(effort.riding().get(j), effort.stopping().get(j)))
            .toList();
    Verdict verdict = all.stream().map(Held::verdict).min(Comparator.naturalOrder()).orElseThrow();
    Held worst =
        all.stream()
            .filter(h -> h.verdict() == verdict)
            .max(Comparator.comparingDouble(h -> h.weak() / h.limit()))
            .orElseThrow();
    List<Basis> basis = new ArrayList<>(List.of(MODEL));
    all.stream().map(Held::muscles).distinct().map(m -> strength(m, all)).forEach(basis::add);
    basis.addAll(
        List.of(worst.brief() ? FORCE : ALL_DAY, PRACTICE, windless(region) ? AIR.aside() : AIR));
    basis.add(WAKE);
    basis.addAll(demands);
    return made(
            region,
            worst.joint(),
            verdict,
            Figures.atMost(worst.weak(), worst.limit(), FigureUnit.SHARE),
            basis,
            Words.of(along(region), braking(region, worst), rest(worst, verdict)))
        .pulling(
            verdict == Verdict.PASS || worst.inside() ? Optional::empty : () -> advice.pull(worst));
  }

  /** Where the strength of some muscles is from; of those that hold nothing it decides nothing. */
  private static Basis strength(Strength muscles, List<Held> all) {
    Basis from =
        Basis.published(muscles.read() ? Known.TRANSCRIBED : Known.FROM_MEMORY, muscles.source());
    return all.stream().filter(h -> h.muscles().equals(muscles)).allMatch(Held::nothing)
        ? from.aside()
        : from;
  }

  /** Whether wind takes no part in what its muscles hold. */
  private boolean windless(Region region) {
    return region.joints.stream().allMatch(j -> windless(effort.riding().get(j)));
  }

  private boolean windless(Held held) {
    return Math.abs(held.loadNm() - stillNm(held)) < Effort.NOTHING_NM;
  }

  private double stillNm(Held held) {
    return effort.still().get(held.joint()).loadNm();
  }

  private Finding bent() {
    double bent = Math.toDegrees(posture.angles().neckFlexion());
    double most = Math.toDegrees(ComfortBands.NECK_HIGH);
    return made(
            Region.NECK,
            Joint.NECK,
            Verdict.FAIL,
            Figures.atMost(bent, most, FigureUnit.DEG),
            List.of(MODEL, BENT),
            Say.format(
                "The back leans so far that %s holds the head %s forward on the trunk with nothing"
                    + " behind it, and more than %s tires a neck: give the head a rest that it leans"
                    + " on, or set the back steeper.",
                who(), Say.deg(bent), Say.deg(most)))
        .pulling(
            Optional.of(
                Tug.of(Tug.Thing.BACK, Tug.Way.STEEPER, "give the head a rest that it leans on")));
  }

  private Finding unbalanced() {
    double left = Math.abs(effort.balance().leftNm());
    double shifts = sitting.body().massInGearKg() * SeatLoad.GRAVITY * PLACED_MM / MM_PER_M;
    return made(
        Region.LEGS,
        Joint.HIP,
        left > shifts ? Verdict.FAIL : Verdict.CAUTION,
        Figures.NONE,
        List.of(MODEL),
        Say.format(
            "%s about the hips of %s find nothing to bear them, wherever pan and back push: make pan"
                + " and back longer, or bring the foot rests under the legs.",
            torque(effort.balance().leftNm()), who()));
  }

  private Finding made(
      Region region,
      Joint joint,
      Verdict verdict,
      Figures figures,
      List<Basis> basis,
      Words words) {
    return new Finding(
            EFFORT,
            About.person(sitting.occupant(), "effort of the " + region.word, region.word),
            Optional.of(stance),
            verdict,
            figures,
            basis,
            words)
        .at(place(joint));
  }

  private Words along(Region region) {
    List<Words> parts = new ArrayList<>();
    for (Joint joint : region.joints) {
      parts.add(said(region, effort.riding().get(joint), parts.isEmpty() ? strength() : ""));
    }
    return Say.format(
        "At %s %s %s holds %s",
        Words.figure(KMH_PER_MS * effort.speedMs(), FigureSort.SPEED),
        region.whose,
        who(),
        Words.join(", ", parts));
  }

  private String strength() {
    return sitting.body().sex() == Sex.MALE
        ? " of a weak man's strength"
        : " of a weak woman's strength";
  }

  private Words said(Region region, Held held, String strength) {
    String where = region == Region.NECK ? "" : " at the " + held.joint().word();
    return held.nothing()
        ? Words.of("nothing" + where)
        : Say.format(
            "%s%s (%s%s%s)",
            torque(held.loadNm()),
            where,
            Say.percent(held.weak()),
            strength,
            windless(held) ? Words.NONE : Say.format("; %s without wind", torque(stillNm(held))));
  }

  /** Says what braking asks where that is worst. */
  private Words braking(Region region, Held worst) {
    return !worst.brief()
        ? Words.NONE
        : Say.format(
            "; braking with %s%s it is %s%s, %s of such strength",
            Say.gravity(effort.slowed().g()),
            effort.slowed().where(),
            torque(worst.loadNm()),
            region == Region.NECK ? "" : " at the " + worst.joint().word(),
            Say.percent(worst.weak()));
  }

  /** Says what may be held, how long this is, and what to do. */
  private Words rest(Held held, Verdict verdict) {
    if (verdict == Verdict.PASS) {
      return Words.of(".");
    }
    if (held.inside()) {
      return Words.of(
          ". That is little, but such strength is known from memory only: try it in cardboard.");
    }
    return Words.of(
        sitting.occupant().rides() || windless(held)
            ? Words.NONE
            : Words.of(" (whoever sits ahead is not counted as shelter)"),
        held.brief()
            ? Say.format("; %s is enough for a stop: ", Say.percent(held.limit()))
            : Say.format(
                "; %s is held all day, the %s %s: ",
                Say.percent(held.limit()), held.joint().word(), time(held)),
        advice.words(held),
        ".");
  }

  private static String time(Held held) {
    double s = held.heldS();
    return s < S_PER_MIN
        ? "for less than a minute"
        : s > S_PER_MIN * S_PER_MIN
            ? "for an hour or more"
            : "about " + Say.number(Math.rint(s / S_PER_MIN)) + " min";
  }

  private String who() {
    return SeatFindings.who(sitting);
  }

  private static Words torque(double nm) {
    return Words.figure(Math.abs(nm), FigureSort.TORQUE);
  }

  private PointMm place(Joint joint) {
    return switch (joint) {
      case NECK -> posture.neckBase();
      case SHOULDER -> posture.shoulder();
      case ELBOW -> posture.elbow();
      case HIP -> posture.hip();
      case KNEE -> posture.knee();
      case ANKLE -> posture.ankle();
    };
  }
}

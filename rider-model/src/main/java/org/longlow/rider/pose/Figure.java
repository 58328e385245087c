package org.longlow.rider.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.RoundHull.Circle;

/**
 * Flesh, boots and helmet round a posture, for drawing and for gap checks.
 *
 * <p>Each part is the convex hull of a few circles on its segment (a tapered capsule). Limb radii
 * are girth over 2π, trunk and thigh radii half the survey's depths; where the circles sit is a
 * judgement. The trunk's rear touches the back plane, its underside the loaded seat. Good to some
 * 15 mm of flesh: leave gaps accordingly.
 */
public final class Figure {

  /** Radius of the shoulder cap, mm; judgement. */
  private static final double SHOULDER_MM = 62;

  /** Height of belly and chest over hip-shoulder length; judgement. */
  public static final double BELLY_AT = 0.30;

  private static final double CHEST_AT = 0.72;

  /**
   * Middle of the buttocks behind the hip, and half their depth where they meet the back, mm;
   * judgement: so that they do not lie in the pan of a deep recline, whose slope is not known here.
   */
  private static final double SEAT_BEHIND_MM = 15;

  private static final double TAIL_MM = 40;

  /** Ends of a rucksack over hip-shoulder length; judgement. */
  private static final double PACK_FROM = 0.2;

  private static final double PACK_TO = 0.85;

  /** Boot shaft and upper over the skin, mm; judgement, worn only with boots. */
  private static final double BOOT_WALL_MM = 12;

  private final Body body;
  private final Posture p;
  private final PointMm up;
  private final PointMm behind;

  /** What a rider is made of. */
  public enum Part {
    HEAD("head"),
    NECK("neck"),
    CHEST("chest"),
    PELVIS("pelvis"),
    THIGH("thigh"),
    SHANK("shank"),
    FOOT("foot"),
    UPPER_ARM("upperArm"),
    FOREARM("forearm");

    private final String word;

    Part(String word) {
      this.word = word;
    }

    /** Returns the name of its flesh. */
    public String word() {
      return word;
    }
  }

  /** A rider in a posture. */
  public Figure(Body body, Posture posture) {
    this.body = body;
    this.p = posture;
    double recline = posture.angles().recline();
    up = new PointMm(-Math.sin(recline), Math.cos(recline));
    behind = up.left();
  }

  /**
   * Returns the parts of a rider: head, neck, chest, pelvis, thigh, shank, foot, upperArm, forearm,
   * and the rucksack of who wears one.
   */
  public static List<Flesh> parts(Body body, Posture posture) {
    Figure figure = new Figure(body, posture);
    return Stream.concat(Stream.of(Part.values()).map(figure::part), figure.rucksack().stream())
        .toList();
  }

  /**
   * Returns the parts of a rider with thighs and forearms in pieces along them, each only as far
   * out as the limb is there; {@link #parts} takes all of a limb as wide as its ends together.
   *
   * @param pieces how many each of these limbs has, &gt;= 1
   */
  public static List<Flesh> fineParts(Body body, Posture posture, int pieces) {
    Figure figure = new Figure(body, posture);
    List<Flesh> all = new ArrayList<>();
    for (Part part : Part.values()) {
      switch (part) {
        case THIGH -> {
          for (int i = 0; i < pieces; i++) {
            all.add(figure.thigh((double) i / pieces, (i + 1.0) / pieces));
          }
        }
        case FOREARM -> {
          for (int i = 0; i < pieces; i++) {
            all.add(figure.arms().fore(part.word, (double) i / pieces, (i + 1.0) / pieces));
          }
          all.add(figure.arms().hand(part.word));
        }
        default -> all.add(figure.part(part));
      }
    }
    figure.rucksack().ifPresent(all::add);
    return all;
  }

  /** Returns one part. */
  public Flesh part(Part part) {
    return switch (part) {
      case HEAD -> head();
      case NECK -> neck();
      case CHEST -> chest();
      case PELVIS -> pelvis();
      case THIGH -> thigh();
      case SHANK -> shank();
      case FOOT -> foot();
      case UPPER_ARM -> arms().upper(part.word);
      case FOREARM -> arms().fore(part.word);
    };
  }

  /** Returns the arms. */
  public Arms arms() {
    return new Arms(body, p);
  }

  /** Returns one smooth outline of all parts, for drawing; inner corners are rounded. */
  public static Geometry silhouette(List<Flesh> parts) {
    List<Geometry> outlines = new ArrayList<>();
    for (Flesh part : parts) {
      outlines.add(part.outline());
    }
    double fillet = 14;
    return UnaryUnionOp.union(outlines).buffer(fillet, 8).buffer(-fillet, 8);
  }

  private double measure(String name) {
    return body.measures().get(name);
  }

  private double girthRadius(String name) {
    return Rounds.girthRadius(body, name);
  }

  private Flesh head() {
    double r = body.head().radiusMm();
    double pitch = p.angles().headPitch();
    PointMm chin = p.headCentre().plus(new PointMm(0.30 * r, -0.42 * r).turned(pitch));
    double half = 0.5 * measure("headbreadth") + body.gear().helmetMm();
    return hull(
        Part.HEAD, 0, half, Rounds.circle(p.headCentre(), r), Rounds.circle(chin, 0.72 * r));
  }

  private double neckRadius() {
    return 0.5 * measure("d_neckdiameter");
  }

  private Flesh neck() {
    double neck = neckRadius();
    return hull(Part.NECK, 0, neck, collar(), Rounds.circle(p.headCentre(), 0.85 * neck));
  }

  /** The neck's lower end, C7 on its rear. */
  private Circle collar() {
    double neck = neckRadius();
    PointMm ahead = PointMm.unit(p.angles().neckLean());
    return Rounds.circle(p.neckBase().plus(ahead.times(neck)), neck);
  }

  private Circle bellyRound() {
    return onBack(BELLY_AT, "abdominalextensiondepthsitting");
  }

  /** A round of the trunk: its rear on the back, in front the jacket. */
  private Circle onBack(double height, String depth) {
    double half = 0.5 * (measure(depth) + body.gear().jacketMm());
    PointMm at = p.hip().plus(up.times(height * body.hipToShoulderMm()));
    return Rounds.circle(at.plus(behind.times(body.hipToJacketMm() - half)), half);
  }

  private Flesh chest() {
    double jacket = body.gear().jacketMm();
    return hull(
        Part.CHEST,
        0,
        trunkHalfMm(),
        bellyRound(),
        onBack(CHEST_AT, "chestdepth"),
        Rounds.circle(p.shoulder(), SHOULDER_MM + jacket),
        collar());
  }

  private double trunkHalfMm() {
    return Math.max(p.across().shoulderMm(), 0.5 * measure("waistbreadth"))
        + body.gear().jacketMm();
  }

  private Circle pack(double at, double half) {
    PointMm on = p.hip().plus(up.times(at * body.hipToShoulderMm()));
    return Rounds.circle(on.plus(behind.times(body.hipToJacketMm() + half)), half);
  }

  /** Returns the rucksack, if one is worn: as broad as the trunk, to the safe side. */
  public Optional<Flesh> rucksack() {
    double half = 0.5 * body.gear().rucksackMm();
    return half > 0
        ? Optional.of(
            Rounds.hull("rucksack", 0, trunkHalfMm(), pack(PACK_FROM, half), pack(PACK_TO, half)))
        : Optional.empty();
  }

  private Flesh pelvis() {
    double seat = body.hipAboveSeatMm();
    return hull(
        Part.PELVIS,
        0,
        0.5 * measure("hipbreadthsitting"),
        Rounds.circle(p.hip().plus(behind.times(SEAT_BEHIND_MM)), seat),
        Rounds.circle(p.hip().plus(behind.times(body.hipToJacketMm() - TAIL_MM)), TAIL_MM),
        bellyRound());
  }

  private double kneeRadius() {
    return girthRadius("lowerthighcircumference");
  }

  private Flesh thigh() {
    return thigh(0, 1);
  }

  /** The thigh between two shares of its length from the hip. */
  private Flesh thigh(double from, double to) {
    double hipRound = 0.5 * measure("thighclearance");
    double hipAcross = 0.25 * measure("hipbreadthsitting");
    double thighAcross = girthRadius("thighcircumference");
    double knee = kneeRadius();
    double k = p.across().kneeMm();
    double round = knee + body.gear().armourMm();
    double innerHip = hipAcross - thighAcross;
    double innerKnee = k - knee;
    double outerHip = 0.5 * measure("hipbreadthsitting");
    double outerKnee = k + knee;
    return hull(
        Part.THIGH,
        Math.max(
            0,
            Math.min(Rounds.mix(innerHip, innerKnee, from), Rounds.mix(innerHip, innerKnee, to))),
        Math.max(Rounds.mix(outerHip, outerKnee, from), Rounds.mix(outerHip, outerKnee, to)),
        Rounds.circle(p.hip().towards(p.knee(), from), Rounds.mix(hipRound, round, from)),
        Rounds.circle(p.hip().towards(p.knee(), to), Rounds.mix(hipRound, round, to)));
  }

  private double bootWall() {
    return body.gear().bootLengthMm() > 0 ? BOOT_WALL_MM : 0;
  }

  private double ankleRadius() {
    return girthRadius("anklecircumference") + bootWall();
  }

  private Flesh shank() {
    double knee = kneeRadius();
    double calf = girthRadius("calfcircumference");
    double ankle = ankleRadius();
    PointMm along = p.ankle().minus(p.knee());
    PointMm back = along.left().times(-0.2 * calf / Math.max(along.length(), 1));
    PointMm calfAt = p.knee().plus(along.times(0.3)).plus(back);
    double k = p.across().kneeMm();
    double a = p.across().ankleMm();
    return hull(
        Part.SHANK,
        Math.max(0, Math.min(k - knee, a - ankle)),
        Math.max(k + knee, a + ankle),
        Rounds.circle(p.knee(), 0.92 * knee + body.gear().armourMm()),
        Rounds.circle(calfAt, calf),
        Rounds.circle(p.ankle(), ankle));
  }

  private Flesh foot() {
    Body.Foot foot = body.foot();
    PointMm along = p.ball().minus(p.heel()).times(1 / foot.ballMm());
    PointMm off = along.left().times(1 / Math.max(along.length(), 0.1));
    double heelRound = 0.18 * foot.ankle().z();
    double ballRound = 0.5 * (body.gear().ballMm() + 62);
    double toeRound = 0.5 * toeHeightMm(body);
    PointMm heelAt = p.heel().plus(along.times(heelRound - foot.backMm()));
    PointMm toes = p.toe().minus(p.ball()).times(1 / (foot.toeMm() - foot.ballMm()));
    PointMm toeAt = p.ball().plus(toes.times(foot.frontMm() - foot.ballMm() - toeRound));
    PointMm toesOff = toes.left().times(1 / Math.max(toes.length(), 0.1));
    double half = 0.5 * footBreadthMm(body);
    double a = p.across().ankleMm();
    double b = p.across().ballMm();
    return hull(
        Part.FOOT,
        Math.max(0, Math.min(a, b) - half),
        Math.max(a, b) + half,
        Rounds.circle(heelAt.plus(off.times(heelRound)), heelRound),
        Rounds.circle(p.ball().plus(toesOff.times(ballRound)), ballRound),
        Rounds.circle(toeAt.plus(toesOff.times(toeRound)), toeRound),
        Rounds.circle(p.ankle(), ankleRadius()));
  }

  /** Returns how high the toes are in their boot, mm; judgement. */
  public static double toeHeightMm(Body body) {
    return 0.55 * (body.gear().ballMm() + 62);
  }

  /** Returns how broad a foot is in its boot, mm. */
  public static double footBreadthMm(Body body) {
    return body.measures().get("footbreadthhorizontal")
        + (body.gear().bootLengthMm() > 0 ? 2 * BOOT_WALL_MM : 0);
  }

  private static Flesh hull(Part part, double inner, double outer, Circle... circles) {
    return Rounds.hull(part.word, inner, outer, circles);
  }
}

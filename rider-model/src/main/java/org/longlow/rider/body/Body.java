package org.longlow.rider.body;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * One person as a jointed skeleton for the side view, with gear. Lengths mm, mass kg.
 *
 * <p>Links after the survey's landmarks: thigh = d_thighlink + 15; shank = d_shanklink; hip 95
 * above a hard seat, so hip to neck base (C7) = d_cervicaleheightsitting − 95 and hip to shoulder =
 * d_acromionheightsitting_standing − 95; upper arm = acromionradialelength from the acromion pin
 * (never mixed with the shoulder joint centre); elbow to grip = d_elbowtogrip.
 *
 * <p>Head points are given for an upright head (Frankfurt plane level) as displacements from the
 * neck base; the foot's in the frame of the boot's sole: origin at the heel's contact, x towards
 * the ball along the sole, z up from the sole.
 */
public final class Body {

  /**
   * Hip above a hard seat, mm, both sexes, ±10; judgement from three routes (98, 95-110, 63-74).
   */
  public static final double HIP_ABOVE_SEAT_MM = 95;

  /** Hip in front of the back plane, mm, men; survey and judgement, SD about 25. */
  public static final double HIP_TO_BACK_MALE_MM = 137;

  /** Hip in front of the back plane, mm, women; survey and judgement, SD about 25. */
  public static final double HIP_TO_BACK_FEMALE_MM = 142;

  /** Hip centre above the palpated trochanterion, mm; judgement. */
  public static final double HIP_ABOVE_TROCHANTERION_MM = 15;

  /**
   * Hip joint from the middle plane, mm, both sexes; judgement: 0.36 of the distance between the
   * front hip spines (Bell, Pedersen and Brand 1990, as quoted in a manual of motion analysis)
   * taken as 235 mm, from memory. Errors up to 31 mm in adults (Harrington et al. 2007).
   */
  public static final double HIP_HALF_MM = 85;

  /** Ankle axis from the heel over foot length; from memory, not certain. */
  public static final double ANKLE_ALONG_FOOT = 0.25;

  /**
   * Angle of the line C7 to tragion above the horizontal, deg; Raine and Twomey 1997, from memory.
   */
  public static final double CRANIOVERTEBRAL_DEG = 50;

  /** Outer corner of the eye behind the glabella, mm; from memory (20 to 25), not certain. */
  public static final double EYE_BEHIND_GLABELLA_MM = 22.5;

  /**
   * Shoulder joint centre below the acromion over acromion-radiale length; de Leva 1996, companion
   * note, J Biomech 29:1231-1233, from memory, not certain.
   */
  public static final double SHOULDER_JOINT_DOWN = 0.104;

  /** Elbow joint centre from the acromion over the same length; as above. */
  public static final double ELBOW_JOINT_DOWN = 0.957;

  private final BodyMeasures measures;
  private final Gear gear;
  private final double thighMm;
  private final double shankMm;
  private final double hipToShoulderMm;
  private final double hipToNeckMm;
  private final double upperArmMm;
  private final double forearmMm;
  private final double elbowToGripMm;
  private final double neckBehindMm;
  private final Head head;
  private final Spine spine;
  private final Foot foot;

  /**
   * Head points from the neck base (C7), head upright, mm.
   *
   * @param tragion ear hole
   * @param eye outer corner of the eye
   * @param vertex top of the head
   * @param centre middle of the skull
   * @param radiusMm half the head's length, helmet included, mm
   */
  public record Head(
      PointMm tragion, PointMm eye, PointMm vertex, PointMm centre, double radiusMm) {}

  /**
   * Foot in its boot, in the frame of the sole, mm.
   *
   * @param ankle ankle axis
   * @param ballMm ball of the foot along the sole (its contact lies at (ballMm, 0))
   * @param toeMm toe tip of the bare foot along the sole
   * @param backMm how far the boot reaches behind the heel point
   * @param frontMm how far the boot reaches from the heel point to its tip
   */
  public record Foot(PointMm ankle, double ballMm, double toeMm, double backMm, double frontMm) {}

  private Body(BodyMeasures measures, Gear gear) {
    this.measures = measures;
    this.gear = gear;
    thighMm = measures.get("d_thighlink") + HIP_ABOVE_TROCHANTERION_MM;
    shankMm = measures.get("d_shanklink");
    hipToShoulderMm = measures.get("d_acromionheightsitting_standing") - HIP_ABOVE_SEAT_MM;
    hipToNeckMm = measures.get("d_cervicaleheightsitting") - HIP_ABOVE_SEAT_MM;
    upperArmMm = measures.get("acromionradialelength");
    forearmMm = measures.get("radialestylionlength");
    elbowToGripMm = measures.get("d_elbowtogrip");
    neckBehindMm =
        measures.get("d_tragionabovecervicale") / Math.tan(Math.toRadians(CRANIOVERTEBRAL_DEG));
    double[] links = {
      thighMm, shankMm, hipToShoulderMm, hipToNeckMm, upperArmMm, forearmMm, elbowToGripMm
    };
    for (double link : links) {
      if (!(link > 1)) {
        throw new OutOfRange(
            "measured values leave a body link of "
                + link
                + " mm; check trochanterionheight, lateralfemoralepicondyleheight, sittingheight,"
                + " acromialheight and cervicaleheight");
      }
    }
    head = makeHead();
    spine = Spine.of(hipToShoulderMm, hipToNeckMm, neckBehindMm, head.tragion());
    foot = makeFoot();
  }

  /** Returns the body of a person of whom the measures are known. */
  public static Body of(BodyMeasures measures, Gear gear) {
    return new Body(measures, gear);
  }

  /** Returns an average body of that sex, stature and mass. */
  public static Body of(Sex sex, double statureMm, double massKg, Gear gear) {
    return new Body(BodyMeasures.of(sex, statureMm, massKg), gear);
  }

  /** Returns a real rider who has measured some things: the rest follows them. */
  public static Body of(
      Sex sex, double statureMm, double massKg, Map<String, Double> measured, Gear gear) {
    return new Body(BodyMeasures.of(sex, statureMm, massKg, measured), gear);
  }

  private Head makeHead() {
    double forward = neckBehindMm;
    double up = measures.get("d_tragionabovecervicale");
    double top = up + measures.get("tragiontopofhead");
    double half = 0.5 * measures.get("headlength");
    PointMm vertex = new PointMm(forward, top);
    PointMm eye =
        new PointMm(forward + half - EYE_BEHIND_GLABELLA_MM, top - measures.get("d_eyetovertex"));
    return new Head(
        new PointMm(forward, up),
        eye,
        vertex,
        new PointMm(forward, top - half),
        half + gear.helmetMm());
  }

  private Foot makeFoot() {
    double length = measures.get("footlength");
    double ball = measures.get("balloffootlength");
    // The boot lifts heel and ball by different amounts: its sole line runs under both.
    PointMm along = new PointMm(ball, gear.heelMm() - gear.ballMm());
    PointMm x = along.times(1 / along.length());
    PointMm ankle =
        new PointMm(
            ANKLE_ALONG_FOOT * length, gear.heelMm() + measures.get("lateralmalleolusheight"));
    double toe = length * along.length() / ball;
    return new Foot(
        new PointMm(ankle.dot(x), ankle.dot(x.left())),
        along.length(),
        toe,
        gear.bootLengthMm() / 3,
        toe + gear.bootLengthMm() * 2 / 3);
  }

  public BodyMeasures measures() {
    return measures;
  }

  public Gear gear() {
    return gear;
  }

  public Sex sex() {
    return measures.sex();
  }

  /** Returns the bare body's mass, kg. */
  public double massKg() {
    return measures.massKg();
  }

  /** Returns the mass with all that is worn, kg: what loads seat and machine. */
  public double massInGearKg() {
    return massKg() + gear.mass().totalKg();
  }

  /** Returns the mass of one such segment with what it wears, kg. */
  public double massInGearKg(Segment segment) {
    return segment.massShare(sex()) * massKg() + gear.mass().onKg(segment);
  }

  /** Returns the mass of one such segment in gear over that of all, 1. */
  public double shareInGear(Segment segment) {
    return massInGearKg(segment) / massInGearKg();
  }

  public double thighMm() {
    return thighMm;
  }

  public double shankMm() {
    return shankMm;
  }

  /** Returns hip to acromion along the trunk line, mm. */
  public double hipToShoulderMm() {
    return hipToShoulderMm;
  }

  /** Returns hip to neck base (C7) along the trunk line, mm. */
  public double hipToNeckMm() {
    return hipToNeckMm;
  }

  /**
   * Returns how far the neck base lies behind the trunk line, mm: as far as the ear lies ahead of
   * it, so that the ear of an upright sitter is over the trunk line (judgement).
   */
  public double neckBehindMm() {
    return neckBehindMm;
  }

  public double upperArmMm() {
    return upperArmMm;
  }

  /** Returns elbow to wrist, mm. */
  public double forearmMm() {
    return forearmMm;
  }

  /** Returns elbow to centre of grip with a straight wrist, mm. */
  public double elbowToGripMm() {
    return elbowToGripMm;
  }

  public Head head() {
    return head;
  }

  /** Returns the spine in segments. */
  public Spine spine() {
    return spine;
  }

  public Foot foot() {
    return foot;
  }

  /** Returns the hip above the compressed pan, along its normal, mm, clothing included. */
  public double hipAboveSeatMm() {
    return HIP_ABOVE_SEAT_MM + gear.seatClothingMm();
  }

  /**
   * Returns the hip ahead of the compressed back, along its normal, mm, clothing and rucksack
   * included.
   */
  public double hipToBackMm() {
    return hipToJacketMm() + gear.rucksackMm();
  }

  /** Returns the same without the rucksack: how far the rider's own back is behind the hip, mm. */
  public double hipToJacketMm() {
    return (sex() == Sex.MALE ? HIP_TO_BACK_MALE_MM : HIP_TO_BACK_FEMALE_MM)
        + gear.backClothingMm();
  }

  /** Returns the hip joint from the middle plane, mm. */
  public double hipHalfMm() {
    return HIP_HALF_MM;
  }

  /** Returns the acromion from the middle plane, mm. */
  public double shoulderHalfMm() {
    return 0.5 * measures.get("biacromialbreadth");
  }

  /** Returns the length of each segment of one limb, mm, as its mass constants need it. */
  public Map<Segment, Double> segmentLengthsMm() {
    Map<Segment, Double> out = new EnumMap<>(Segment.class);
    out.put(Segment.HEAD, head.vertex().length());
    out.put(Segment.TRUNK, Math.hypot(hipToNeckMm(), neckBehindMm()));
    out.put(Segment.UPPER_ARM, upperArmMm());
    out.put(Segment.FOREARM, forearmMm());
    out.put(Segment.HAND, measures.get("handlength"));
    out.put(Segment.THIGH, thighMm());
    out.put(Segment.SHANK, shankMm());
    out.put(Segment.FOOT, measures.get("footlength"));
    return out;
  }

  /** Returns the answer to "what is this body": plain values, nothing computed later. */
  public Sheet sheet() {
    Map<String, Double> lengths = new LinkedHashMap<>();
    Map<String, Double> masses = new LinkedHashMap<>();
    Map<String, Centre> centres = new LinkedHashMap<>();
    segmentLengthsMm()
        .forEach(
            (segment, length) -> {
              lengths.put(segment.key(), length);
              masses.put(segment.key(), segment.massShare(sex()) * massKg());
              double share = segment.centreShare(sex());
              double mm =
                  switch (segment) {
                    case UPPER_ARM ->
                        length
                            * (SHOULDER_JOINT_DOWN
                                + share * (ELBOW_JOINT_DOWN - SHOULDER_JOINT_DOWN));
                    case HAND -> length * HAND_TO_KNUCKLE * share;
                    default -> length * share;
                  };
              centres.put(segment.key(), new Centre(mm / length, mm));
            });
    for (Spine.Part part : Spine.Part.values()) {
      lengths.put(part.key(), spine.lengthMm(part));
      masses.put(part.key(), part.shareOfTrunk() * Segment.TRUNK.massShare(sex()) * massKg());
    }
    lengths.put("neck", spine.neckMm());
    lengths.put("hipToShoulder", hipToShoulderMm());
    lengths.put("hipToNeck", hipToNeckMm());
    lengths.put("elbowToGrip", elbowToGripMm());
    lengths.put("ankleHeight", measures.get("lateralmalleolusheight"));
    return new Sheet(
        new LinkedHashMap<>(measures.values()), lengths, masses, centres, measures.notes());
  }

  /**
   * Wrist to third knuckle over hand length: 86.2 mm (de Leva 1996, men) over 193.3 mm (survey
   * mean, men); the two landmarks differ, so this is a judgement.
   */
  public static final double HAND_TO_KNUCKLE = 0.446;

  /**
   * A centre of mass.
   *
   * @param fraction from the proximal end over the segment's length given beside it
   * @param mm from the proximal end, mm
   */
  public record Centre(double fraction, double mm) {}

  /**
   * Everything about a body as plain values. Segments are one limb's; masses of paired segments
   * count twice in the body. Pelvis, lumbar and thorax are what the trunk is made of.
   *
   * @param measures every survey measurement by name, mm ({@code weightkg} kg)
   * @param segmentLengthsMm by segment, mm
   * @param segmentMassesKg by segment, kg
   * @param segmentCentres by segment
   * @param notes plain words
   */
  public record Sheet(
      Map<String, Double> measures,
      Map<String, Double> segmentLengthsMm,
      Map<String, Double> segmentMassesKg,
      Map<String, Centre> segmentCentres,
      List<String> notes) {}
}

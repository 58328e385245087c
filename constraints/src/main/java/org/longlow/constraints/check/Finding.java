package org.longlow.constraints.check;

import java.util.Optional;
import java.util.OptionalDouble;
import org.longlow.rider.geom.PointMm;

/**
 * One answer about the machine.
 *
 * @param id stable name, such as {@code gap.tank.rider}
 * @param subject what it is about, in the user's names
 * @param stance the state in which it is worst; empty where it holds in every state
 * @param verdict how it came out
 * @param value the figure, in {@code unit}; NaN where there is none
 * @param limit what it is held against, in {@code unit}; NaN where there is none
 * @param margin how far it is inside the limit, negative outside, in {@code unit}; NaN where none
 * @param unit mm, deg, N, kPa, kg, share or empty
 * @param source where the limit comes from
 * @param text one sentence for the user
 * @param where the place on the elevation, in the axes of the drawn machine, if it has one
 * @param who the person it is about, on which seat, if it is about one
 * @param group what it belongs to, and so the caution that goes with it
 * @param opening how far the section of its stance is open where it is worst, 0 shut to 1 open
 */
public record Finding(
    String id,
    String subject,
    String stance,
    Verdict verdict,
    double value,
    double limit,
    double margin,
    String unit,
    String source,
    String text,
    Optional<PointMm> where,
    Optional<Occupant> who,
    FindingGroup group,
    OptionalDouble opening) {

  /**
   * A crew member on a seat.
   *
   * @param person the crew's name
   * @param seat the seat's name, such as {@code rider} or {@code passenger}
   */
  public record Occupant(String person, String seat) {}

  /** Makes a finding about no one person. */
  public Finding(
      String id,
      String subject,
      String stance,
      Verdict verdict,
      double value,
      double limit,
      double margin,
      String unit,
      String source,
      String text,
      Optional<PointMm> where) {
    this(
        id,
        subject,
        stance,
        verdict,
        value,
        limit,
        margin,
        unit,
        source,
        text,
        where,
        Optional.empty(),
        FindingGroup.LAYOUT,
        OptionalDouble.empty());
  }

  /** Returns a finding held to at least {@code limit}. */
  public static Finding atLeast(
      String id,
      String subject,
      String stance,
      double value,
      double limit,
      String unit,
      String source,
      String text) {
    return held(id, subject, stance, value, limit, value - limit, unit, source, text);
  }

  /** Returns a finding held to at most {@code limit}. */
  public static Finding atMost(
      String id,
      String subject,
      String stance,
      double value,
      double limit,
      String unit,
      String source,
      String text) {
    return held(id, subject, stance, value, limit, limit - value, unit, source, text);
  }

  private static Finding held(
      String id,
      String subject,
      String stance,
      double value,
      double limit,
      double margin,
      String unit,
      String source,
      String text) {
    return new Finding(
        id,
        subject,
        stance,
        margin >= 0 ? Verdict.PASS : Verdict.FAIL,
        value,
        limit,
        margin,
        unit,
        source,
        text,
        Optional.empty());
  }

  /** Returns a finding that only tells. */
  public static Finding note(
      String id,
      String subject,
      String stance,
      Verdict verdict,
      double value,
      String unit,
      String source,
      String text) {
    return new Finding(
        id,
        subject,
        stance,
        verdict,
        value,
        Double.NaN,
        Double.NaN,
        unit,
        source,
        text,
        Optional.empty());
  }

  public Finding at(PointMm point) {
    return new Finding(
        id,
        subject,
        stance,
        verdict,
        value,
        limit,
        margin,
        unit,
        source,
        text,
        Optional.of(point),
        who,
        group,
        opening);
  }

  /** Returns this finding as one that is worst where a section is open by {@code share}. */
  public Finding openBy(double share) {
    return new Finding(
        id,
        subject,
        stance,
        verdict,
        value,
        limit,
        margin,
        unit,
        source,
        text,
        where,
        who,
        group,
        OptionalDouble.of(share));
  }

  /** Returns this finding as one about a person on a seat. */
  public Finding about(String person, String seat) {
    return about(new Occupant(person, seat));
  }

  /** Returns this finding as one about {@code person}. */
  public Finding about(Occupant person) {
    return new Finding(
        id,
        subject,
        stance,
        verdict,
        value,
        limit,
        margin,
        unit,
        source,
        text,
        where,
        Optional.of(person),
        group,
        opening);
  }

  /** Returns this finding as one of {@code other}. */
  Finding in(FindingGroup other) {
    return new Finding(
        id, subject, stance, verdict, value, limit, margin, unit, source, text, where, who, other,
        opening);
  }

  public Finding withText(String other) {
    return new Finding(
        id, subject, stance, verdict, value, limit, margin, unit, source, other, where, who, group,
        opening);
  }

  public Finding withVerdict(Verdict other) {
    return new Finding(
        id, subject, stance, other, value, limit, margin, unit, source, text, where, who, group,
        opening);
  }
}

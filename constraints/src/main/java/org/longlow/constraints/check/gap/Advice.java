package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.gap.Clearing;
import org.longlow.constraints.gap.Fouling;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.gap.StraightCut;
import org.longlow.constraints.gap.Tenths;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** What to do about bodies that come too close, in words. Doing any one thing that is said does. */
final class Advice {

  /** Moves that are larger than this are no remedy but another machine, mm. */
  static final double SENSIBLE_MM = 60;

  /** Of a part more than this is not cut away, as a share of its area in side view. */
  private static final double MOST_CUT = 0.5;

  private Advice() {}

  /**
   * Returns what moves a body away.
   *
   * @param what the name of the body that is moved
   */
  static Words move(String what, Clearing clearing) {
    Optional<PointMm> shift = clearing.elevationInTenths();
    double elevation = shift.map(PointMm::length).orElse(clearing.elevationMm());
    double across = Tenths.away(clearing.acrossMm());
    double apart = Tenths.away(clearing.apartMm());
    boolean whole = Math.abs(across) <= Math.abs(apart);
    double short_ = Math.min(Math.abs(across), Math.abs(apart));
    Words aside = whole ? across(across) : apart(apart);
    if (shift.isPresent() && elevation <= short_) {
      return Words.of(
          "move " + what + " ",
          Say.way(shift.get()),
          (short_ <= SENSIBLE_MM ? Words.of(", or ", aside) : ""));
    }
    if (Double.isInfinite(short_)) {
      return Words.of(
          "no move of " + what + " of less than ", Words.atMost(Math.floor(elevation)), " helps");
    }
    return Words.of(
        Words.atLeast(short_),
        " short across the machine: set " + what + " ",
        aside,
        (shift.isPresent() && elevation <= SENSIBLE_MM
            ? Words.of(", or move it ", Say.way(shift.get()))
            : Words.of(
                "; no move in side view of less than ",
                Words.atMost(Math.floor(elevation)),
                " helps")));
  }

  /** Returns the moves that {@link #move} tells, in its order. */
  static List<AfterMove.Move> moves(Clearing clearing) {
    Optional<PointMm> shift = clearing.elevationInTenths();
    double elevation = shift.map(PointMm::length).orElse(clearing.elevationMm());
    double across = Tenths.away(clearing.acrossMm());
    double apart = Tenths.away(clearing.apartMm());
    double aside = Math.min(Math.abs(across), Math.abs(apart));
    List<AfterMove.Move> moves = new ArrayList<>();
    boolean first = shift.isPresent() && elevation <= aside;
    if (Double.isFinite(aside) && (!first || aside <= SENSIBLE_MM)) {
      boolean whole = Math.abs(across) <= Math.abs(apart);
      moves.add(
          new AfterMove.Move(
              "set so across the machine", s -> whole ? s.across(across) : s.apart(apart)));
    }
    shift
        .filter(by -> first || elevation <= SENSIBLE_MM)
        .ifPresent(
            by ->
                moves.add(
                    first ? 0 : moves.size(),
                    new AfterMove.Move("moved so in side view", s -> s.moved(Solid.by(by)))));
    return moves;
  }

  /**
   * Returns what clears a section's way.
   *
   * @param moved which of the two is to be moved
   */
  static Words ways(String part, String other, String moved, Fouling fouling) {
    List<Words> ways = new ArrayList<>();
    fouling
        .shift()
        .ifPresent(
            s ->
                ways.add(
                    Words.of(
                        "move " + moved + " ",
                        Say.way(s),
                        (moved.equals(part) ? " as shut" : ""))));
    double across = fouling.across().map(Math::abs).orElse(Double.POSITIVE_INFINITY);
    double apart = fouling.apart().map(Math::abs).orElse(Double.POSITIVE_INFINITY);
    double aside = Math.min(across, apart);
    // what no move in side view mends is told how far it is across, however far
    if (aside <= SENSIBLE_MM || ways.isEmpty() && Double.isFinite(aside)) {
      ways.add(
          Words.of(
              "set " + moved + " ",
              (across <= apart ? across(fouling.across().get()) : apart(fouling.apart().get()))));
    }
    cut(part, fouling.cutOfPart()).ifPresent(ways::add);
    cut(other, fouling.cutOfOther()).ifPresent(ways::add);
    return ways.isEmpty() ? Words.of("change how it opens") : Words.join(", or ", ways);
  }

  /** Returns a shift across the machine in words. */
  static Words across(double mm) {
    return Words.of(Words.atLeast(Math.abs(mm)), (mm > 0 ? " to the left" : " to the right"));
  }

  /** Returns how far both sides are set in words. */
  static Words apart(double mm) {
    return Words.of(
        Words.atLeast(Math.abs(mm)), (mm > 0 ? " farther out" : " farther in") + " on each side");
  }

  /** Returns a cut in words, if it leaves enough of the part. */
  static Optional<Words> cut(String what, Optional<StraightCut> cut) {
    return cut.filter(c -> c.share() <= MOST_CUT)
        .map(
            c ->
                Words.of(
                    "cut ",
                    Words.atLeast(c.depthMm()),
                    " off "
                        + what
                        + " straight across where it reaches farthest "
                        + towards(c.towardsDeg())));
  }

  /** Returns a direction of the elevation in words. */
  static String towards(int deg) {
    String along = Math.abs(deg) < 90 ? "forward" : "back";
    int slope = Math.abs(deg) < 90 ? Math.abs(deg) : 180 - Math.abs(deg);
    if (slope == 0) {
      return along;
    }
    if (slope == 90) {
      return deg > 0 ? "up" : "down";
    }
    return along + ", " + slope + "° " + (deg > 0 ? "up" : "down");
  }
}

package org.longlow.constraints.check.road;

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
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.machine.chassis.BeltRun;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.shape.Runs;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.words.Words;

/**
 * How far a chain or belt goes round each wheel that drives or is driven, and whether it touches
 * its idlers at all.
 *
 * @param least the sprocket wrapped least, over all stances
 * @param missed the idler that it does not touch, if there is one
 */
public record Wrap(Wrapped least, Optional<Missed> missed) {

  /** How runs are looked at, by whatever speaks of one. */
  static final Basis HOW =
      Basis.model("all straight stretches in every stance, plates 16 mm high; no slack or whip");

  static final FindingKind WRAP = new FindingKind("wrap", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** Round a wheel that drives or is driven, rad: a third of a turn. */
  private static final double LEAST_WRAP_RAD = Math.toRadians(120);

  private static final Basis WRAPPED =
      Basis.practice("at least 120 deg round a sprocket or pulley is common practice; no source");

  /** How far it is wrapped round one of its wheels. */
  record Wrapped(String pin, double rad, Standing standing) {}

  /**
   * An idler that is not touched.
   *
   * @param standing where; empty where it is not as drawn, so that the length which is asked could
   *     only be met by wheels that went somewhere else
   */
  public record Missed(String pin, Optional<Standing> standing) {}

  /**
   * Returns that of a run in all stances.
   *
   * @param standings at least one
   */
  public static Wrap of(Tie tie, Placed placed, List<Standing> standings) {
    List<String> sprockets = Runs.sprockets(tie);
    Wrapped least = null;
    Optional<Missed> missed = Optional.empty();
    for (Standing s : standings) {
      List<Double> wraps = Runs.of(tie, s.places()).wrapsRad();
      for (int i = 0; i < wraps.size(); i++) {
        Wrapped here = new Wrapped(tie.pins().get(i), wraps.get(i), s);
        if (!sprockets.contains(here.pin())) {
          boolean follows = tie.run().sprung().filter(here.pin()::equals).isPresent();
          if (missed.isEmpty() && !follows && !BeltRun.touches(here.rad())) {
            missed = Optional.of(new Missed(here.pin(), Optional.of(s)));
          }
        } else if (least == null || here.rad() < least.rad()) {
          least = here;
        }
      }
    }
    if (missed.isEmpty() && !tie.run().idlers().isEmpty()) {
      boolean little = least.rad() < LEAST_WRAP_RAD;
      missed =
          Runs.missed(tie, Runs.of(tie, placed.places()))
              .or(
                  () ->
                      little
                          ? Runs.missed(tie, Runs.of(tie, placed.problem().drawn()))
                          : Optional.empty())
              .map(pin -> new Missed(pin, Optional.empty()));
    }
    return new Wrap(least, missed);
  }

  Finding finding(String name) {
    return missed.map(m -> untouched(name, m)).orElseGet(() -> wrapped(name));
  }

  private static Finding untouched(String name, Missed missed) {
    Standing seen = missed.standing().orElse(null);
    Finding finding =
        new Finding(
            WRAP,
            About.thing(name, name),
            missed.standing().map(Standing::condition),
            Verdict.FAIL,
            Figures.NONE,
            List.of(HOW),
            Words.of(
                name
                    + " does not touch its idler about "
                    + missed.pin()
                    + (seen == null
                        ? " as it is drawn, so where its length sets its wheels cannot be trusted"
                        : "")
                    + ": move that towards the run, or say as \"back\" from which side it"
                    + " presses."));
    return seen == null ? finding : finding.at(seen.places().pin(missed.pin()));
  }

  private Finding wrapped(String name) {
    double deg = Math.toDegrees(least.rad());
    return Finding.held(
            WRAP,
            About.thing(name, name),
            Optional.of(least.standing().condition()),
            Figures.atLeast(deg, Math.toDegrees(LEAST_WRAP_RAD), FigureUnit.DEG),
            List.of(WRAPPED),
            Words.of(
                name + " goes round the wheel about " + least.pin() + " by ",
                Say.deg(deg),
                least.rad() < LEAST_WRAP_RAD
                    ? Words.of(
                        "; ",
                        Say.deg(Math.toDegrees(LEAST_WRAP_RAD)),
                        " are asked, or it jumps teeth or slips: a larger wheel there, a longer"
                            + " run, or an idler on its back beside it.")
                    : Words.of(", the least of its wheels that drive or are driven.")))
        .at(least.standing().places().pin(least.pin()));
  }
}

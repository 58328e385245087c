package org.longlow.constraints.check.person;

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
import org.longlow.constraints.check.finding.Tug;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.effort.Vibration;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.seat.LongRide;
import org.longlow.rider.seat.PanRate;
import org.longlow.rider.seat.SeatGeometry;
import org.longlow.rider.seat.SeatLoad;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.seat.Support;
import org.longlow.rider.words.Words;

/** What presses on the skin, and what the pan passes on of the road's shaking. */
public final class ContactFindings {

  /** How hard seat, back and foot rests press. */
  public static final FindingKind CONTACT =
      new FindingKind("contact", FindingGroup.EFFORT, Rests.ON_DRAWING);

  /** How the pan shakes. */
  public static final FindingKind VIBRATION =
      new FindingKind("vibration", FindingGroup.EFFORT, Rests.ON_DRAWING);

  /** What sitters in a study had. */
  static final double MEAN_KPA = LongRide.STUDIED_MEAN_KPA;

  /** Sit bones over the peak in the side view; common practice, "order of". */
  private static final double BONES = 2;

  /** Contact of a heel in its boot, mm²; judgement. */
  private static final double HEEL_MM2 = 2500;

  private static final double KPA = 1e3;

  private static final List<Basis> PRESSURE =
      List.of(
          Basis.model("layered foam under the body's outline"),
          Basis.published(
              Known.CHECKED,
              "mean pressure on the rear half of the seat under 15 able-bodied sitters"
                  + " (BioMed Eng OnLine 2018): what they had, no limit of comfort; none was found for"
                  + " pans, backs or heels"),
          Basis.practice("sit bones at twice the peak is common practice"));

  private static final List<Basis> SHAKING =
      List.of(
          Basis.model("a mass on a spring with a damper: an estimate"),
          Basis.published(
              Known.FROM_MEMORY,
              "damping 0.3 and foam 1.75 times as stiff when shaken, frequencies as felt after ISO"
                  + " 2631-1 (from memory); a road that holds 1 to 20 Hz alike is a judgement"));

  private ContactFindings() {}

  /** Returns both for somebody who sits. */
  public static List<Finding> of(Sitting sitting, Condition stance, Places places) {
    Optional<SeatGeometry> seat = Seats.geometry(sitting.parts(), places);
    if (sitting.seated().isEmpty() || seat.isEmpty()) {
      return List.of(); // why not is told where they are seated
    }
    SeatOutcome.Seated seated = sitting.seated().get();
    return List.of(
        pressure(sitting, stance, seat.get(), seated),
        shaking(sitting, stance, seat.get(), seated));
  }

  private static Finding pressure(
      Sitting sitting, Condition stance, SeatGeometry seat, SeatOutcome.Seated seated) {
    Figures figures = Figures.atMost(seated.pan().meanKPa(), MEAN_KPA, FigureUnit.KPA);
    return new Finding(
            CONTACT,
            About.person(sitting.occupant(), "contact"),
            Optional.of(stance),
            Verdict.CAUTION, // nobody published how much is comfortable
            figures,
            PRESSURE,
            Words.of(
                Say.format(
                    "%s presses the pan with %s on average and about %s under the sit bones",
                    SeatFindings.who(sitting),
                    Say.kpa(seated.pan().meanKPa()),
                    Say.kpa(BONES * seated.pan().peakKPa())),
                seated.back().normalN() > 0
                    ? Say.format(", the back with %s", Say.kpa(seated.back().meanKPa()))
                    : Words.NONE,
                feet(sitting, seat, seated),
                advice(Support.of(seated.pan()), figures)))
        .at(seated.pan().centre())
        .pulling(
            Support.of(seated.pan()).fresh() == Support.Hold.HOLDS
                    && figures.verdict() != Verdict.PASS
                ? Optional.of(Tug.of(Tug.Thing.PAN, Tug.Way.LONGER, "make the pan wider"))
                : Optional.empty());
  }

  /** What to do: foam that bottoms comes first, for then the mean says nothing. */
  private static Words advice(Support support, Figures figures) {
    if (support.fresh() != Support.Hold.HOLDS) {
      return Words.of(". The mean says little, for the foam " + support.advice() + ".");
    }
    return Say.format(
        figures.verdict() == Verdict.PASS
            ? "; sitters in a study had up to %s on average, but no limit of comfort is published:"
                + " sit on it for as long as you ride."
            : "; sitters in a study had up to %s: make the pan longer or wider under the thighs, or"
                + " get up more often.",
        Say.kpa(MEAN_KPA));
  }

  private static Words feet(Sitting sitting, SeatGeometry seat, SeatOutcome.Seated seated) {
    double each = 0.5 * seated.load().pegsN();
    return seat.foot() instanceof FootContact.BallOnPeg
        ? Say.format(
            "; the ball of each foot bears %s on %s",
            Say.newton(each), sitting.parts().feet().map(RestPart::name).orElse("its peg"))
        : Say.format(
            "; each foot bears %s, which is %s where all of it is on the heel",
            Say.newton(each), Say.kpa(each / HEEL_MM2 * KPA));
  }

  private static Finding shaking(
      Sitting sitting, Condition stance, SeatGeometry seat, SeatOutcome.Seated seated) {
    About about = About.person(sitting.occupant(), "vibration");
    double rate = PanRate.nPerMm(sitting.body(), seat, seated);
    if (!(rate > 0 && rate < Double.POSITIVE_INFINITY)) {
      return new Finding(
          VIBRATION,
          about,
          Optional.of(stance),
          Verdict.CAUTION,
          Figures.NONE,
          SHAKING,
          Words.of(
              "How the pan shakes under "
                  + SeatFindings.who(sitting)
                  + " is not known: nothing in it springs; put a layer of springy foam into it."));
    }
    Vibration v = Vibration.of(seated.load().panNormalN() / SeatLoad.GRAVITY, rate);
    double felt = v.felt();
    return new Finding(
            VIBRATION,
            about,
            Optional.of(stance),
            Verdict.CAUTION,
            Figures.atMost(felt, 1, FigureUnit.NONE),
            SHAKING,
            Say.format(
                "Estimate: under %s the pan shakes by itself at about %.1f Hz, where it makes jolts"
                    + " %.1f times as large, and takes off what is faster than %.1f Hz; of a road"
                    + " that holds 1 to 20 Hz alike %s is felt on it%s",
                SeatFindings.who(sitting),
                v.naturalHz(),
                v.peak(),
                v.isolatesHz(),
                Say.percent(felt),
                felt <= 1
                    ? ": jolts slower than that are the springs' work, so try it on a rough road."
                    : ", more than without foam: make the foam thicker, which bottoms later too."))
        .at(seated.pan().centre());
  }
}

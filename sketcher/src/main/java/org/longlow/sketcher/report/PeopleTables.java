package org.longlow.sketcher.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.SaidFigures;
import org.longlow.constraints.check.person.BoardFindings;
import org.longlow.constraints.check.person.ContactFindings;
import org.longlow.constraints.check.person.HandFindings;
import org.longlow.constraints.check.person.LongRideFindings;
import org.longlow.constraints.check.person.Rucksack;
import org.longlow.constraints.check.person.SeatFindings;
import org.longlow.constraints.check.person.SightFindings;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.rider.body.AgeEffect;
import org.longlow.rider.pose.Comfort;
import org.longlow.rider.pose.JointReading;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.seat.CushionLoad;
import org.longlow.rider.seat.LongRide;
import org.longlow.rider.seat.SeatLoad;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.seat.Support;
import org.longlow.rider.words.FigureSort;

/** Each person on each seat: posture against its bands, reach, cushions, loads. */
final class PeopleTables {

  private static final List<String> POSTURE =
      List.of("Angle", Html.VERDICT, "Now", "Comfort", "Joint's range", "To spare");

  private static final List<String> CUSHION =
      List.of(
          "Cushion",
          Html.VERDICT,
          "Force on board",
          "Likely sink",
          "Design sink",
          "Foam left then",
          "Mean",
          "Most, evened across",
          "Under sit bones");

  private static final List<String> OWN_HEADINGS = List.of("What", Html.VERDICT, "Figure", "Limit");

  /** What is told besides sight and foot. */
  private static final List<FindingKind> OWN =
      List.of(
          HandFindings.HANDS,
          LongRideFindings.PRESSURE,
          LongRideFindings.COVER,
          BoardFindings.BOARD,
          ContactFindings.CONTACT,
          ContactFindings.VIBRATION);

  private static final List<FindingKind> BY_WORD = List.of(SightFindings.SIGHT, SightFindings.FOOT);

  private PeopleTables() {}

  static void write(Html h, Study study) {
    if (study.sittings().isEmpty()) {
      return;
    }
    h.element("h2", "People");
    h.element(
        "p class=\"note\"",
        Support.DESIGN_MEANING
            + " Sink is good to ±20 %: foam differs from batch to batch and softens with use. Sit"
            + " on it for 15 minutes before you cover it.");
    study.sittings().stream()
        .map(Sitting::seat)
        .distinct()
        .forEach(seat -> SeatPictures.write(h, study, seat));
    GettingInStrip.write(h, study);
    Set<String> described = new HashSet<>();
    for (Sitting s : study.sittings()) {
      h.element("h3", s.person() + " on the " + s.seat() + " seat");
      if (described.add(s.person())) {
        body(h, study, FigureWords.of(study), s);
      }
      person(h, study, s);
    }
  }

  private static void body(Html h, Study study, FigureWords figures, Sitting s) {
    h.element(
        "p class=\"quiet\"",
        s.body().sex().name().toLowerCase(Locale.ROOT)
            + ", "
            + figures.units().says(s.body().measures().statureMm(), FigureSort.WHOLE_LENGTH)
            + " tall, "
            + figures.units().says(s.body().massKg(), FigureSort.WHOLE_MASS)
            + ", "
            + figures.units().says(s.body().massInGearKg(), FigureSort.MASS_IN_TENTHS)
            + " in gear"
            + aged(study, s));
    s.doubt()
        .ifPresent(
            doubt ->
                h.element(
                    "p class=\"warn\"",
                    "Rough, as " + doubt + ": " + String.join(" ", s.body().measures().notes())));
  }

  /** What a known age has changed in them. */
  private static String aged(Study study, Sitting s) {
    return study.layout().crew().get(s.person()).age().stream()
        .mapToDouble(study.placed().places()::value)
        .mapToObj(
            years -> {
              double mm = AgeEffect.mm(s.body().sex(), years);
              String belly =
                  mm == 0
                      ? "which changes nothing here"
                      : String.format(
                          Locale.ROOT,
                          "for which the belly is taken %s %s than at %.0f",
                          FigureWords.of(study)
                              .units()
                              .says(Math.abs(mm), FigureSort.LENGTH_IN_TENTHS),
                          mm > 0 ? "deeper" : "flatter",
                          AgeEffect.MEAN_YEARS_MALE);
              return String.format(Locale.ROOT, "; %.0f years old, %s", years, belly);
            })
        .findFirst()
        .orElse("");
  }

  private static void person(Html h, Study study, Sitting s) {
    FigureWords figures = FigureWords.of(study);
    if (s.outcome() instanceof SeatOutcome.Unseatable no) {
      h.element("p class=\"warn\"", "Cannot sit: " + no.reason());
      return;
    }
    SeatOutcome.Seated seated = (SeatOutcome.Seated) s.outcome();
    reach(h, figures, seated.pose());
    String rucksack = Rucksack.words(s).in(figures.units()).strip();
    if (!rucksack.isEmpty()) {
      h.element("p class=\"quiet\"", rucksack);
    }
    own(h, study, s);
    posture(h, s, seated.pose().posture());
    cushions(h, study, s, seated);
    loads(h, figures, seated.load());
    EffortTables.write(h, study, s);
  }

  private static void reach(Html h, FigureWords figures, PoseResult pose) {
    if (pose.shortfalls().isEmpty()) {
      h.element("p", "Feet and hands reach.");
    }
    for (PoseResult.Shortfall f : pose.shortfalls()) {
      h.element(
          "p class=\"warn\"",
          (f.limb() == PoseResult.Limb.LEG ? "The feet: rest is " : "The hands: grip is ")
              + figures.mm(f.mm())
              + (f.side() == PoseResult.Side.TOO_FAR ? " too far away." : " too near."));
    }
  }

  /** What is found of somebody alone on this seat, beside posture and cushions. */
  private static void own(Html h, Study study, Sitting s) {
    List<Finding> own =
        study.findings().stream()
            .filter(f -> OWN.contains(f.kind()) || f.group() == FindingGroup.SIGHT_AND_FOOT)
            .filter(f -> f.who().equals(Optional.of(s.occupant())))
            .toList();
    if (own.isEmpty()) {
      return;
    }
    h.table("own", "Sight, foot, hands and seat of " + s.person(), OWN_HEADINGS);
    for (Finding f : own) {
      SaidFigures said = f.said(study.layout().units());
      h.row(
          f.verdict().word(),
          OWN_HEADINGS,
          List.of(what(f), FindingTables.verdict(f.verdict()), said.value(), said.limit()));
    }
    h.closeTable();
  }

  /** What a row is about: its own word, or the aspect of the person. */
  private static String what(Finding f) {
    return f.kind() == HandFindings.HANDS
        ? "hands on turned grips"
        : BY_WORD.contains(f.kind()) ? f.kind().word() : f.about().aspect();
  }

  private static void posture(Html h, Sitting s, Posture posture) {
    List<JointReading> readings = Comfort.read(posture.angles(), s.body().sex());
    long good =
        readings.stream().filter(r -> r.verdict() == JointReading.Verdict.COMFORTABLE).count();
    h.raw("<details>\n")
        .element("summary", "Posture: " + good + " of " + readings.size() + " angles comfortable");
    h.table("posture", "Posture of " + s.person(), POSTURE);
    for (JointReading r : readings) {
      String kind =
          switch (r.verdict()) {
            case COMFORTABLE -> "pass";
            case OUTSIDE_COMFORT -> "caution";
            case BEYOND_LIMIT -> "fail";
          };
      String verdict =
          switch (r.verdict()) {
            case COMFORTABLE -> "● comfortable";
            case OUTSIDE_COMFORT -> "▲ outside comfort";
            case BEYOND_LIMIT -> "■ beyond the joint";
          };
      h.row(
          kind,
          POSTURE,
          List.of(
              FigureWords.words(r.name()),
              verdict,
              FigureWords.deg(r.valueRad()),
              band(r.softBand()),
              band(r.hardRange()),
              FigureWords.deg(r.marginRad())));
    }
    h.closeTable().raw("</details>\n");
  }

  private static String band(JointReading.Band band) {
    return FigureWords.deg(band.lowRad()) + " to " + FigureWords.deg(band.highRad());
  }

  private static void cushions(Html h, Study study, Sitting s, SeatOutcome.Seated seated) {
    h.table("cushions", "Cushions under " + s.person(), CUSHION);
    cushion(h, study, s, s.parts().pan().name(), seated.pan());
    s.parts().back().ifPresent(c -> cushion(h, study, s, c.name(), seated.back()));
    s.parts()
        .head()
        .ifPresent(c -> seated.headRest().ifPresent(load -> cushion(h, study, s, c.name(), load)));
    h.closeTable();
  }

  /** A row with the verdict of the finding about this cushion. */
  private static void cushion(Html h, Study study, Sitting s, String name, CushionLoad load) {
    Finding found =
        study.findings().stream()
            .filter(f -> f.kind() == SeatFindings.SINK)
            .filter(f -> f.who().equals(Optional.of(s.occupant())))
            .filter(f -> f.about().parts().contains(name))
            .findFirst()
            .orElseThrow();
    FigureWords figures = FigureWords.of(study);
    h.row(
        found.verdict().word(),
        CUSHION,
        List.of(
            name,
            FindingTables.verdict(found.verdict()) + ": " + Support.of(load).words(),
            figures.says(load.normalN(), FigureUnit.NEWTON),
            figures.mm(load.sinkMm()) + " ±20 %",
            figures.mm(load.safeSinkMm()) + " ±20 %",
            figures.mm(load.remainingMm()),
            figures.says(load.meanKPa(), FigureUnit.KPA),
            figures.says(load.peakKPa(), FigureUnit.KPA),
            name.equals(s.parts().pan().name())
                ? "about " + figures.says(LongRide.sitBonesKPa(load), FigureUnit.KPA)
                : "–"));
  }

  private static void loads(Html h, FigureWords figures, SeatLoad.Shares load) {
    List<String> shares = new ArrayList<>();
    shares.add("pan " + figures.says(load.panVerticalN(), FigureUnit.NEWTON));
    shares.add("back " + figures.says(load.backN(), FigureUnit.NEWTON));
    if (load.headRestN() > 0) {
      shares.add("head rest " + figures.says(load.headRestN(), FigureUnit.NEWTON));
    }
    shares.add("feet " + figures.says(load.pegsN(), FigureUnit.NEWTON));
    shares.add("hands " + figures.says(load.handsN(), FigureUnit.NEWTON));
    h.element(
        "p",
        "Carried by "
            + String.join(", ", shares)
            + ". To stay put the pan needs a friction of "
            + FigureUnit.NONE.says(load.frictionNeeded())
            + "; count on "
            + FigureUnit.NONE.says(SeatLoad.DESIGN_FRICTION)
            + ".");
  }
}

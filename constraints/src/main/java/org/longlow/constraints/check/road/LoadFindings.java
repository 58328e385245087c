package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.machine.ride.DrivenWheels;
import org.longlow.constraints.shape.Drives;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.body.GearMass;
import org.longlow.rider.words.Words;

/** Axle loads and centre of mass, with and without each crew member. */
public final class LoadFindings {

  /** Masses and axle loads. */
  public static final FindingKind LOAD =
      new FindingKind("load", FindingGroup.LOADS, Rests.ON_EACH_LOAD);

  /** The acceleration that lifts a wheel. */
  public static final FindingKind LIFT =
      new FindingKind("lift", FindingGroup.LOADS, Rests.ON_EACH_LOAD);

  private static final Basis STATICS = Basis.model("statics of masses on two axles");

  private static final Basis HELMET =
      Basis.practice(
              Say.format(
                  "helmet %s, from memory", Say.kg(GearMass.of(true, false, false).totalKg())))
          .fromMemory()
          .aside();

  private static final Basis GEAR =
      Basis.practice(
          Say.format(
              "boots %s and clothes %s, common practice",
              Say.kg(GearMass.of(false, true, false).totalKg()),
              Say.kg(GearMass.of(false, false, true).totalKg())));

  private static final Basis LIFT_BASIS = Basis.model("statics; no aerodynamics, level road");

  private static final String IN_ROAD =
      "the centre of mass lies in the road or under it; look at the places and masses of the heavy"
          + " parts.";

  private LoadFindings() {}

  public static List<Finding> of(Layout layout, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    for (Standing s : standings) {
      boolean laden = s.kind() == Stance.Kind.LADEN;
      if (s.load() == null || !(laden || s.kind() == Stance.Kind.UNLADEN)) {
        continue;
      }
      AxleLoads axles = s.load().axles();
      double full = axles.frontShare();
      OptionalDouble empty =
          s.emptied().map(Standing::load).stream()
              .mapToDouble(e -> e.axles().frontShare())
              .findFirst();
      double least = s.places().value(layout.demands().limit(Demands.Key.FRONT_SHARE_MIN));
      double most = s.places().value(layout.demands().limit(Demands.Key.FRONT_SHARE_MAX));
      String who = laden ? "with " + s.condition().people() : "with nobody on it";
      Words text =
          Say.format(
              "%s the machine weighs %s%s; front axle %s, rear axle %s, %s on the front;"
                  + " centre of mass %s ahead of the rear contact, %s up and %s.",
              who.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + who.substring(1),
              Say.kg(s.load().total().massKg()),
              laden ? " with gear" : "",
              Say.newton(axles.frontN()),
              Say.newton(axles.rearN()),
              Say.percent(full),
              Say.wholeMm(s.ground().toRoad(s.load().total().at()).x()),
              Say.wholeMm(s.ground().toRoad(s.load().total().at()).z()),
              across(s.load().total().yMm()));
      double other = empty.orElse(full);
      double share =
          Math.min(other - least, most - other) < Math.min(full - least, most - full)
              ? other
              : full;
      if (empty.isPresent()) {
        text =
            Words.of(
                text,
                " Tanks and boxes empty it weighs ",
                Say.kg(s.emptied().orElseThrow().load().total().massKg()),
                ", ",
                Say.percent(other),
                share == full
                    ? " on the front."
                    : " on the front; the figure is of them empty, which is nearer to a limit.");
      }
      Optional<Condition> stance = Optional.of(s.condition());
      if (laden && !isOverRoad(axles)) {
        findings.add(
            new Finding(
                    LOAD,
                    about(s),
                    stance,
                    Verdict.FAIL,
                    Figures.only(share, FigureUnit.SHARE),
                    List.of(STATICS, HELMET, GEAR),
                    Words.of(text, " That is no place for it: ", IN_ROAD))
                .at(s.load().total().at()));
        findings.add(lift(layout, s, axles));
      } else if (laden) {
        boolean low = share - least < most - share;
        Words limits =
            share < least
                ? Say.format(
                    " At least %s are asked there: move heavy parts or the seat forward.",
                    Say.percent(least))
                : share > most
                    ? Say.format(
                        " At most %s are asked there: move heavy parts or the seat back.",
                        Say.percent(most))
                    : Words.NONE;
        Finding f =
            Finding.held(
                LOAD,
                about(s),
                stance,
                low
                    ? Figures.atLeast(share, least, FigureUnit.SHARE)
                    : Figures.atMost(share, most, FigureUnit.SHARE),
                List.of(
                    STATICS,
                    HELMET,
                    GEAR,
                    Sources.of(
                        layout, low ? Demands.Key.FRONT_SHARE_MIN : Demands.Key.FRONT_SHARE_MAX)),
                Words.of(text, limits));
        findings.add(f.at(s.load().total().at()));
        findings.add(lift(layout, s, axles));
      } else if (!stands(axles)) {
        findings.add(lift(layout, s, axles));
      } else {
        findings.add(
            new Finding(
                    LOAD,
                    About.thing("machine", "unladen"),
                    stance,
                    Verdict.PASS,
                    Figures.only(share, FigureUnit.SHARE),
                    List.of(STATICS),
                    text)
                .at(s.load().total().at()));
      }
    }
    return findings;
  }

  /** Where the centre lies across the machine, in words. */
  private static Words across(double yMm) {
    double mm = Math.abs(yMm);
    return mm < 0.5
        ? Words.of("in the middle")
        : Words.of(Say.wholeMm(mm), " to the " + (yMm > 0 ? "left" : "right") + " of the middle");
  }

  /** Whether the centre of mass lies over the road and between the wheels. */
  private static boolean stands(AxleLoads axles) {
    return isOverRoad(axles) && axles.frontN() > 0 && axles.rearN() > 0;
  }

  private static boolean isOverRoad(AxleLoads axles) {
    return axles.total().at().z() > 0;
  }

  private static Finding lift(Layout layout, Standing s, AxleLoads axles) {
    String people = s.condition().people().isEmpty() ? "nobody on it" : s.condition().people();
    if (!isOverRoad(axles)) {
      return lift(s, Verdict.FAIL, Double.NaN, Words.of("With " + people + " ", IN_ROAD));
    }
    double least = Math.min(axles.brakeLiftG(), axles.driveLiftG());
    return least > 0
        ? lift(
            s,
            Verdict.PASS,
            axles.brakeLiftG(),
            Drives.of(layout) == DrivenWheels.FRONT
                ? Say.format(
                    "With %s braking lifts the rear wheel at %.2f g, if the tyres grip that well;"
                        + " pulling away, with the front wheel driven, lifts none.",
                    people, axles.brakeLiftG())
                : Say.format(
                    "With %s braking lifts the rear wheel at %.2f g and pulling away lifts the"
                        + " front at %.2f g, if the tyres grip that well.",
                    people, axles.brakeLiftG(), axles.driveLiftG()))
        : lift(
            s,
            Verdict.FAIL,
            least,
            Say.format(
                "With %s the centre of mass lies outside the wheels: the %s wheel lifts at rest.",
                people, axles.driveLiftG() > 0 ? "rear" : "front"));
  }

  private static About about(Standing s) {
    String people = s.condition().people();
    return people.isEmpty() ? About.thing("machine", "unladen") : About.thing(people, people);
  }

  private static Finding lift(Standing s, Verdict verdict, double g, Words text) {
    return new Finding(
        LIFT,
        about(s),
        Optional.of(s.condition()),
        verdict,
        Figures.only(g, FigureUnit.G),
        List.of(LIFT_BASIS),
        text);
  }
}

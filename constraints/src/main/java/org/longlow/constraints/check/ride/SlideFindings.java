package org.longlow.constraints.check.ride;

import java.util.Comparator;
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
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.ride.DrivenWheels;
import org.longlow.constraints.machine.ride.GripLimits;
import org.longlow.constraints.shape.Drives;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.words.Words;

/** How hard the machine brakes and pulls away before a tyre slides or a wheel lifts. */
public final class SlideFindings {

  /** Tyres that slide. */
  public static final FindingKind SLIDE =
      new FindingKind("slide", FindingGroup.LOADS, Rests.ON_MASSES);

  /** What each brake alone and both must do, laden, g: 4.4, 2.9 and 5.8 m/s² of 93/14/EEC. */
  static final double FRONT_G = 4.4 / Values.STANDARD_GRAVITY_MS2;

  static final double REAR_G = 2.9 / Values.STANDARD_GRAVITY_MS2;
  static final double BOTH_G = 5.8 / Values.STANDARD_GRAVITY_MS2;

  private static final List<Basis> BASIS =
      List.of(
          Basis.model("statics; both tyres of one grip, level road, no aerodynamics, no dive"),
          Basis.published(
              Known.CHECKED,
              "93/14/EEC, laden: 0.45 g by the front brake alone, 0.3 g by the rear, 0.59 g by both"));

  private SlideFindings() {}

  /** Returns one, of the crew with which a brake does least of what is asked of it. */
  public static List<Finding> of(Layout layout, List<Standing> standings) {
    return standings.stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN && s.load() != null)
        .flatMap(s -> slid(layout, s).stream())
        .min(Comparator.comparingDouble(s -> s.worst().share()))
        .map(s -> s.finding(layout))
        .stream()
        .toList();
  }

  private static Optional<Slid> slid(Layout layout, Standing s) {
    double grip = s.places().value(layout.demands().limit(Demands.Key.GRIP));
    DrivenWheels driven = Drives.of(layout);
    return GripLimits.ifAny(s.load().axles(), grip)
        .map(
            limits ->
                new Slid(
                    s, grip, limits, driven, GripLimits.driving(s.load().axles(), grip, driven)));
  }

  /** What a brake does, of what is asked of it. */
  private record Brake(String name, double doesG, double askedG) {

    double share() {
      return doesG / askedG;
    }
  }

  private record Slid(
      Standing at,
      double grip,
      GripLimits limits,
      DrivenWheels driven,
      GripLimits.Driving driving) {

    Brake worst() {
      return List.of(
              new Brake("the front brake alone", limits.frontG(), FRONT_G),
              new Brake("the rear brake alone", limits.rearG(), REAR_G),
              new Brake("both brakes", limits.bothG(), BOTH_G))
          .stream()
          .min(Comparator.comparingDouble(Brake::share))
          .orElseThrow();
    }

    Finding finding(Layout layout) {
      Brake worst = worst();
      Figures figures = Figures.atLeast(worst.doesG(), worst.askedG(), FigureUnit.G);
      boolean passes = figures.verdict() == Verdict.PASS;
      return new Finding(
          SLIDE,
          About.thing("tyres", "tyres"),
          Optional.of(at.condition()),
          passes ? Verdict.PASS : Verdict.CAUTION,
          figures,
          List.of(BASIS.get(0), Sources.of(layout, Demands.Key.GRIP), BASIS.get(1)),
          Words.of(
              Say.format(
                  "With %s on a road with a grip of %.2f the front brake alone slows down at %.2f g"
                      + " before %s, the rear alone at %.2f g, both at %.2f g; pulling away %s at"
                      + " %.2f g",
                  at.condition().people(),
                  grip,
                  limits.frontG(),
                  limits.brakingLifts() ? "the rear wheel lifts" : "its tyre slides",
                  limits.rearG(),
                  limits.bothG(),
                  driving.lifts() ? "the front wheel lifts" : slides(),
                  driving.g()),
              passes
                  ? Words.of(".")
                  : Say.format(
                      "; %s should do %.2f g: %s.", worst.name(), worst.askedG(), advice(worst))));
    }

    private String slides() {
      return switch (driven) {
        case FRONT -> "the front tyre slides, which drives,";
        case REAR -> "the rear tyre slides";
        case BOTH -> "both tyres slide, which drive,";
      };
    }

    private String advice(Brake worst) {
      if (grip < worst.askedG() && limits.bothG() >= grip - 1e-9) {
        return "no machine does that on this road, wherever its weight is; ask for more grip";
      }
      if (worst.askedG() == REAR_G) {
        return "move heavy parts or the seat back";
      }
      return limits.brakingLifts()
          ? "move heavy parts or the seat down and back"
          : worst.askedG() == FRONT_G
              ? "move heavy parts or the seat forward"
              : "there the road holds no more";
    }
  }
}

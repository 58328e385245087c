package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;

/** Springs of first machines, by forces on the wheel cut free instead of virtual work. */
class FirstSpringsTest {

  private static final double G = 9.80665;

  private static Study study(FrontPart.Kind front, int seats) {
    Answers answers = new Answers.Builder().front(front).seats(seats).answers();
    return ((FirstMachine.Made) FirstMachine.of(answers)).study();
  }

  private static double said(Formula formula) {
    return formula.evaluate(name -> Double.NaN);
  }

  private static List<Standing> all(Study study, Stance.Kind kind) {
    return study.standings().stream().filter(s -> s.kind() == kind).toList();
  }

  private static double frontMm(Study study, Standing s) {
    return s.places().pin("frontAxle").minus(study.placed().places().pin("frontAxle")).z();
  }

  private static double rearMm(Study study, Standing s) {
    return s.places().pin("rearAxle").minus(study.placed().places().pin("rearAxle")).z();
  }

  /** Whoever is heaviest presses the wheels to where they are drawn; nobody leaves a little sag. */
  @Test
  void wheelsAreDrawnWhereTheHeaviestPressesThem() {
    for (FrontPart.Kind kind : Answers.FRONTS) {
      for (int seats = 1; seats <= 2; seats++) {
        Study study = study(kind, seats);
        String name = kind + " " + seats;
        List<Standing> laden = all(study, Stance.Kind.LADEN);
        Standing empty = all(study, Stance.Kind.UNLADEN).get(0);
        assertThat(laden.stream().mapToDouble(s -> frontMm(study, s)).max().orElseThrow())
            .as(name)
            .isCloseTo(0, within(0.3));
        assertThat(laden.stream().mapToDouble(s -> rearMm(study, s)).max().orElseThrow())
            .as(name)
            .isCloseTo(0, within(0.3));
        // from full droop, 32 mm down
        assertThat(32 + frontMm(study, empty)).as(name).isBetween(7.0, 20.0);
        assertThat(32 + rearMm(study, empty)).as(name).isBetween(7.0, 17.0);
      }
    }
  }

  /**
   * What the legs of a slider bear on their stop against what the road and the wheel's own mass ask
   * of them there, all of the machine taken to stand as it does laden.
   */
  @Test
  void theForkStaysOffItsStopUpToSixTenthsAndNoStifferThanThat() {
    for (int seats = 1; seats <= 2; seats++) {
      Study study = study(FrontPart.Kind.TELESCOPIC, seats);
      FrontPart fork = study.layout().parts(FrontPart.class).findFirst().orElseThrow();
      double rake = Math.toRadians(Rolling.RAKE_DEG);
      double travel = (said(fork.bump()) + said(fork.droop())) / Math.cos(rake);
      double stopN = said(fork.preload().orElseThrow()) + said(fork.rate().orElseThrow()) * travel;
      double most = 0;
      for (Standing s : all(study, Stance.Kind.LADEN)) {
        most = Math.max(most, alongN(study, s, 0.6, rake));
      }
      assertThat(stopN).isGreaterThan(most);
      assertThat(stopN).isLessThan(most * 1.06);
    }
  }

  private static double alongN(Study study, Standing s, double brakingG, double rake) {
    AxleLoads axles = s.load().axles();
    double weight = axles.total().massKg() * G;
    double road =
        weight * (axles.total().at().x() + brakingG * axles.total().at().z()) / axles.wheelbaseMm();
    double unsprung = unsprungKg(study) * G;
    return (road - unsprung) * Math.cos(rake) + brakingG * (weight - unsprung) * Math.sin(rake);
  }

  /** The front wheel, half the fork, and what hangs on the axle's pin. */
  private static double unsprungKg(Study study) {
    double kg = 0;
    for (Part part : study.layout().parts().values()) {
      if (part.pins().stream().anyMatch("frontAxle"::equals)) {
        double mass = part.base().mass().map(FirstSpringsTest::said).orElseThrow();
        kg += part instanceof FrontPart ? mass / 2 : mass;
      }
    }
    return kg;
  }

  @Test
  void noSpringIsAStop() {
    for (FrontPart.Kind kind : Answers.FRONTS) {
      Study study = study(kind, 2);
      FrontPart fork = study.layout().parts(FrontPart.class).findFirst().orElseThrow();
      SwingarmPart arm = study.layout().parts(SwingarmPart.class).findFirst().orElseThrow();
      assertThat(said(fork.rate().orElseThrow())).as(kind.toString()).isBetween(6.0, 30.0);
      assertThat(said(arm.rate().orElseThrow())).as(kind.toString()).isBetween(10.0, 60.0);
    }
  }
}

package org.longlow.constraints.machine.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.machine.linkage.FourBar;
import org.longlow.constraints.machine.linkage.Hinge;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.machine.section.SectionForces.Gas;
import org.longlow.constraints.machine.section.SectionForces.Weight;
import org.longlow.rider.geom.PointMm;

/** Forces on sections by another way: how the energy of weights and gas changes on the way. */
class SectionForcesTest {

  private static final double G = 9.80665;
  private static final double STEP = 1e-5;
  private static final PointMm DOWN = new PointMm(0, -1);

  /** A road that slopes by about 3 degrees. */
  private static final PointMm SLOPED = PointMm.unit(Math.toRadians(-87));

  static List<SectionForces> sections() {
    Hinge hinge = new Hinge(new PointMm(100, 900), Math.toRadians(70));
    FourBar links =
        new FourBar(
            new PointMm(0, 600),
            new PointMm(120, 630),
            new PointMm(-20, 800),
            new PointMm(150, 860),
            Math.toRadians(-50));
    Gas gas =
        new Gas(new PointMm(180, 640), new PointMm(260, 880), new GasLaw(210, 420, 150, 1.4, 2));
    Weight fixed = new Weight(new PointMm(-90, 930), Optional.empty(), 2.5);
    Weight hung = new Weight(new PointMm(250, 870), Optional.of(new PointMm(20, 1300)), 3);
    PointMm centre = new PointMm(430, 910);
    return List.of(
        new SectionForces(hinge, 8, centre, DOWN, List.of(gas), List.of()),
        new SectionForces(hinge, 8, centre, SLOPED, List.of(gas, gas), List.of(fixed)),
        new SectionForces(hinge, 8, centre, DOWN, List.of(), List.of(fixed, hung)),
        new SectionForces(links, 8, centre, SLOPED, List.of(gas), List.of(hung)),
        new SectionForces(links, 0, centre, DOWN, List.of(gas), List.of(fixed)));
  }

  @ParameterizedTest
  @MethodSource("sections")
  void opensByAsMuchAsItsEnergyFalls(SectionForces forces) {
    for (double share : new double[] {0, 0.8, 1.07}) {
      for (double at : new double[] {0.05, 0.4, 0.95}) {
        double slope =
            (energy(forces, at + STEP, share) - energy(forces, at - STEP, share)) / (2 * STEP);
        assertThat(forces.opening(at, share))
            .isCloseTo(-slope, within(1e-3 + 1e-6 * Math.abs(slope)));
      }
    }
  }

  /** A hand's work over its way is what the energy rises by. */
  @ParameterizedTest
  @MethodSource("sections")
  void aHandWorksWhatTheEnergyRisesBy(SectionForces forces) {
    PointMm grip = new PointMm(600, 900);
    int steps = 4000;
    double work = 0;
    PointMm last = grip;
    for (int k = 1; k <= steps; k++) {
      PointMm now = forces.motion().at((double) k / steps).apply(grip);
      work += forces.handN((k - 0.5) / steps, 1, grip) * now.distance(last);
      last = now;
    }
    double rise = energy(forces, 1, 1) - energy(forces, 0, 1);
    assertThat(work).isCloseTo(rise, within(1e-2 + 1e-5 * Math.abs(rise)));
  }

  /** N mm; a spring's is what is left to give until it is at its full length. */
  private static double energy(SectionForces f, double opening, double share) {
    SectionMotion motion = f.motion();
    double sum = -f.massKg() * G * f.down().dot(motion.at(opening).apply(f.centre()));
    for (Gas gas : f.springs()) {
      GasLaw law = gas.law();
      double pressed = law.lengthMm() - motion.at(opening).apply(gas.on()).distance(gas.frame());
      double stiff = law.forceN() * (law.progression() - 1) / law.strokeMm();
      sum += share * law.count() * (law.forceN() * pressed + stiff * pressed * pressed / 2);
    }
    for (Weight weight : f.weights()) {
      PointMm at = motion.at(opening).apply(weight.on());
      double height = weight.pulley().map(p -> p.distance(at)).orElseGet(() -> -f.down().dot(at));
      sum += weight.massKg() * G * height;
    }
    return sum;
  }

  /** 8 kg 450 mm from the hinge, a hand at 900 mm, 30 degrees up: worked by hand, 33.97 N. */
  @Test
  void aLidInAHandIsThatOfALever() {
    Hinge hinge = new Hinge(PointMm.ORIGIN, Math.toRadians(60));
    SectionForces lid =
        new SectionForces(hinge, 8, new PointMm(450, 0), DOWN, List.of(), List.of());
    assertThat(lid.handN(0.5, 1, new PointMm(900, 0))).isCloseTo(33.971232, within(1e-6));
    assertThat(lid.turnsOver(1, 1)).isEmpty();
  }

  /** A lid tipped past upright goes on by itself from upright on. */
  @Test
  void whatPassesUprightTurnsOverThere() {
    SectionForces lid =
        new SectionForces(
            new Hinge(PointMm.ORIGIN, Math.toRadians(120)),
            5,
            new PointMm(300, 0),
            DOWN,
            List.of(),
            List.of());
    assertThat(lid.turnsOver(1, 1).orElseThrow()).isCloseTo(0.75, within(1e-5));
    assertThat(lid.turnsOver(0.7, 1)).isEmpty();
    SectionForces up =
        new SectionForces(
            lid.motion(),
            0,
            PointMm.ORIGIN,
            DOWN,
            List.of(),
            List.of(new Weight(new PointMm(-300, 0), Optional.empty(), 1)));
    assertThat(up.turnsOver(0.7, 1)).contains(0.0);
  }

  /** Seen from the other side all is as heavy. */
  @ParameterizedTest
  @MethodSource("sections")
  void whatIsMirroredIsAsHeavy(SectionForces forces) {
    SectionForces other = mirrored(forces);
    PointMm grip = new PointMm(600, 900);
    for (double at : new double[] {0, 0.3, 1}) {
      assertThat(other.handN(at, 0.9, mirrored(grip)))
          .isCloseTo(forces.handN(at, 0.9, grip), within(1e-9));
    }
  }

  private static PointMm mirrored(PointMm p) {
    return new PointMm(-p.x(), p.z());
  }

  private static SectionForces mirrored(SectionForces f) {
    SectionMotion motion =
        f.motion() instanceof Hinge h
            ? new Hinge(mirrored(h.pivot()), -h.openRad())
            : mirrored((FourBar) f.motion());
    return new SectionForces(
        motion,
        f.massKg(),
        mirrored(f.centre()),
        mirrored(f.down()),
        f.springs().stream()
            .map(g -> new Gas(mirrored(g.frame()), mirrored(g.on()), g.law()))
            .toList(),
        f.weights().stream()
            .map(
                w ->
                    new Weight(
                        mirrored(w.on()), w.pulley().map(SectionForcesTest::mirrored), w.massKg()))
            .toList());
  }

  private static FourBar mirrored(FourBar f) {
    return new FourBar(
        mirrored(f.inputPivot()),
        mirrored(f.outputPivot()),
        mirrored(f.inputPin()),
        mirrored(f.outputPin()),
        -f.openRad());
  }

  /** By the gas law and a tenth lost: 0.9 × 263.15 / 293.15, and 313.15 / 293.15. */
  @Test
  void gasSpringsAreWeakerColdAndStrongerHot() {
    assertThat(GasLaw.COLD_AND_WORN).isCloseTo(0.807897, within(1e-6));
    assertThat(GasLaw.HOT).isCloseTo(1.068224, within(1e-6));
    GasLaw law = new GasLaw(100, 400, 150, 1.3, 2);
    assertThat(law.pushN(400)).isEqualTo(200);
    assertThat(law.pushN(law.shortestMm())).isCloseTo(260, within(1e-9));
  }
}

package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.start.Answers.Box;
import org.longlow.constraints.start.Answers.Drive;
import org.longlow.constraints.start.Answers.Place;
import org.longlow.rider.body.Anthropometry;
import org.longlow.rider.body.MeasureStats;
import org.longlow.rider.body.Sex;

/** What is carried where, what drives, and who rides where nobody said. */
class CargoTest {

  private static Cargo of(Brief brief) {
    return Cargo.of(brief, new Rolling(brief));
  }

  private static String names(List<Cargo.Item> items) {
    return String.join(" ", items.stream().map(Cargo.Item::name).toList());
  }

  @ParameterizedTest
  @CsvSource({
    "ENGINE, BEFORE, '', 'battery tank', engine",
    "ENGINE, UNDER, '', engine, 'tank battery'",
    "ENGINE, BEHIND, engine, tank, battery",
    "MOTOR, BEFORE, '', 'controller battery', motor",
    "MOTOR, UNDER, '', motor, 'battery controller'",
    "MOTOR, BEHIND, motor, battery, controller",
    "MOTOR, HUB, '', controller, battery"
  })
  void heavyThingsBalanceTheRider(
      Drive drive, Place place, String behind, String under, String ahead) {
    Brief brief = Brief.of(new Answers.Builder().drive(drive).place(place).answers());
    assertThat(brief.electric()).isEqualTo(drive == Drive.MOTOR);
    Cargo cargo = of(brief);
    assertThat(names(cargo.behind())).isEqualTo(behind);
    assertThat(names(cargo.under())).isEqualTo(under);
    assertThat(names(cargo.ahead())).isEqualTo(ahead);
  }

  @Test
  void anEngineIsAsLargeAsItsBoxAndNeedsRoomForItsPipe() {
    Brief brief =
        Brief.of(
            new Answers.Builder()
                .drive(Drive.ENGINE)
                .place(Place.BEFORE)
                .box(new Box(400, 300, 280, 51))
                .answers());
    Cargo cargo = of(brief);
    Cargo.Item engine = cargo.ahead().get(0);
    assertThat(engine.lengthMm()).isEqualTo(400);
    assertThat(engine.heightMm()).isEqualTo(300);
    assertThat(engine.halfMm()).isEqualTo(140);
    assertThat(engine.massKg()).isEqualTo(51);
    assertThat(engine.drives()).isTrue();
    assertThat(engine.roomMm()).isEqualTo(400 + 78);
    // its gearbox, four tenths of it, is low enough for a pan
    assertThat(cargo.lowRearMm()).isEqualTo(160);
    assertThat(cargo.under()).noneMatch(Cargo.Item::drives);
    // battery of 90 and tank of 215 with 12 beside each
    assertThat(Cargo.lengthMm(cargo.under())).isEqualTo(90 + 12 + 215 + 12);
    assertThat(Cargo.heightMm(cargo.under())).isEqualTo(160);
    assertThat(Cargo.heightMm(List.of())).isZero();
    assertThat(of(Brief.of(new Answers.Builder().drive(Drive.MOTOR).answers())).lowRearMm())
        .isZero();
    assertThat(of(Brief.of(new Answers.Builder().place(Place.UNDER).answers())).lowRearMm())
        .isZero();
    // what stands between the rails is 4 mm off them
    Rolling rolling = new Rolling(brief);
    assertThat(cargo.under().get(1).halfMm())
        .isEqualTo(Math.min(110, Math.floor(rolling.railYMm - 20)));
  }

  // --- what was not said

  @Test
  void whatWasNotSaidIsFilledIn() {
    Brief none = Brief.of(Answers.NONE);
    assertThat(none.crew()).hasSize(1);
    assertThat(none.pillion()).isFalse();
    assertThat(none.drive()).isEqualTo(Drive.ENGINE);
    assertThat(none.place()).isEqualTo(Place.BEFORE);
    assertThat(none.wheelbaseMm()).isNaN();
    assertThat(none.reclineDeg()).isEqualTo(30);
    Brief motor = Brief.of(new Answers.Builder().drive(Drive.MOTOR).answers());
    assertThat(motor.place()).isEqualTo(Place.BEHIND);
    Brief hub = Brief.of(new Answers.Builder().place(Place.HUB).answers());
    assertThat(hub.drive()).isEqualTo(Drive.MOTOR);
    Brief under = Brief.of(new Answers.Builder().place(Place.UNDER).answers());
    assertThat(under.drive()).isEqualTo(Drive.ENGINE);
    // lying, under a seat
    assertThat(under.box().heightMm()).isLessThan(none.box().heightMm());
    assertThat(hub.box().lengthMm()).isEqualTo(hub.box().heightMm());
  }

  @Test
  void whoComesSecondSitsWhereThereIsASeat() {
    Brief shared = Brief.of(new Answers.Builder().second(Who.percentile(Sex.FEMALE, 50)).answers());
    assertThat(shared.pillion()).isFalse();
    assertThat(shared.on("rider")).hasSize(2);
    assertThat(shared.on("passenger")).isEmpty();
    Brief two = Brief.of(new Answers.Builder().seats(2).answers());
    assertThat(two.pillion()).isTrue();
    assertThat(two.on("rider")).hasSize(1);
    assertThat(two.on("passenger")).hasSize(1);
    assertThat(Brief.of(new Answers.Builder().seats(1).answers()).crew()).hasSize(1);
  }

  /** As heavy for its size as the usual one, 48 kg in 390 by 310 by 320 mm. */
  @Test
  void massesAreGuessedBySize() {
    assertThat(Brief.guessedKg(Drive.ENGINE, 390 * 310 * 320)).isEqualTo(48);
    assertThat(Brief.guessedKg(null, 390 * 310 * 160)).isEqualTo(24);
    // 22 kg in a cube of 220 mm
    assertThat(Brief.guessedKg(Drive.MOTOR, 220 * 220 * 330)).isEqualTo(33);
    assertThat(Brief.guessedKg(Drive.MOTOR, 1)).isEqualTo(Answers.Box.LEAST.massKg());
  }

  // --- percentiles

  /** At a published percentile its figure, between two of them the straight line. */
  @ParameterizedTest
  @CsvSource({"FEMALE", "MALE"})
  void percentilesAreThoseOfTheSurveyAndLinesBetween(Sex sex) {
    MeasureStats.Percentiles p = Anthropometry.survey().measures(sex).get("stature").percentiles();
    assertThat(Who.percentile(sex, 1).statureMm()).isCloseTo(p.p1(), within(0.5));
    assertThat(Who.percentile(sex, 5).statureMm()).isCloseTo(p.p5(), within(0.5));
    assertThat(Who.percentile(sex, 25).statureMm()).isCloseTo(p.p25(), within(0.5));
    assertThat(Who.percentile(sex, 50).statureMm()).isCloseTo(p.p50(), within(0.5));
    assertThat(Who.percentile(sex, 75).statureMm()).isCloseTo(p.p75(), within(0.5));
    assertThat(Who.percentile(sex, 95).statureMm()).isCloseTo(p.p95(), within(0.5));
    assertThat(Who.percentile(sex, 99).statureMm()).isCloseTo(p.p99(), within(0.5));
    assertThat(Who.percentile(sex, 10).statureMm())
        .isCloseTo(p.p5() + (p.p25() - p.p5()) / 4, within(0.5));
    assertThat(Who.percentile(sex, 97).statureMm()).isCloseTo((p.p95() + p.p99()) / 2, within(0.5));
    MeasureStats.Percentiles kg =
        Anthropometry.survey().measures(sex).get("weightkg").percentiles();
    assertThat(Who.percentile(sex, 75).massKg()).isCloseTo(kg.p75(), within(0.5));
  }
}

package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.constraints.start.FirstMachines.made;
import static org.longlow.constraints.start.FirstMachines.say;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.start.Answers.Drive;
import org.longlow.constraints.start.Answers.Place;
import org.longlow.constraints.study.Study;
import org.longlow.rider.body.Sex;

/** Where the drive of a first machine is, and what goes with it: chain, tank and fuel. */
class FirstDriveTest {

  @Test
  void theDriveIsWhereItIsSaidToBe() {
    for (Drive drive : Drive.values()) {
      for (Place place : Place.values()) {
        if (drive == Drive.ENGINE && place == Place.HUB) {
          continue;
        }
        Study study = made(say().drive(drive).place(place).answers()).study();
        String name = drive == Drive.MOTOR ? "motor" : "engine";
        double middle = study.shapes().get(name).outline().getEnvelopeInternal().centre().x;
        Places at = study.placed().places();
        switch (place) {
          case BEFORE ->
              assertThat(middle).isBetween(at.pin("panFront").x(), at.pin("frontAxle").x());
          case UNDER ->
              assertThat(middle).isBetween(at.pin("panRear").x() - 60, at.pin("panFront").x());
          case BEHIND ->
              assertThat(middle).isBetween(at.pin("swingPivot").x(), at.pin("panRear").x());
          case HUB -> assertThat(middle).isCloseTo(0, within(1.0));
        }
        boolean fuelled =
            study.layout().parts(SolidPart.class).anyMatch(s -> s.type() == SolidPart.Kind.TANK);
        assertThat(fuelled).isEqualTo(drive == Drive.ENGINE);
      }
    }
  }

  /**
   * By ISO 606 a pitch circle has P / sin(180 deg / z): 16 teeth of 15.875 mm have 81.37 mm. The
   * length is counted by its arcs and tangents, not by what the tie says.
   */
  @Test
  void aChainOfWholeLinksRunsFromTheDriveToTheRearWheel() {
    for (Place place : List.of(Place.BEFORE, Place.UNDER, Place.BEHIND)) {
      for (Drive drive : Drive.values()) {
        Study study = made(say().drive(drive).place(place).answers()).study();
        Places at = study.placed().places();
        double gear = at.measures().get("gearSprocket");
        double wheel = at.measures().get("wheelSprocket");
        assertThat(gear).isCloseTo(81.37 / 2, within(0.01));
        double apart = at.pin("sprocket").distance(at.pin("rearAxle"));
        double lean = Math.asin((wheel - gear) / apart);
        double length =
            2 * apart * Math.cos(lean) + gear * (Math.PI - 2 * lean) + wheel * (Math.PI + 2 * lean);
        double links = length / 15.875;
        assertThat(links / 2).isCloseTo(Math.rint(links / 2), within(1e-6));
        var box =
            study
                .shapes()
                .get(drive == Drive.MOTOR ? "motor" : "engine")
                .outline()
                .getEnvelopeInternal();
        assertThat(at.pin("sprocket").x()).isBetween(box.getMinX(), box.getMaxX());
        assertThat(at.pin("sprocket").z()).isBetween(box.getMinY(), box.getMaxY());
        assertThat(study.findings())
            .filteredOn(f -> f.id().endsWith(".chain") && f.verdict() != Verdict.PASS)
            .as(drive + " " + place)
            .extracting(f -> f.kind().word())
            .isSubsetOf("slack");
      }
    }
    assertThat(made(say().place(Place.HUB).answers()).layout().ties()).doesNotContainKey("chain");
  }

  /** Large wheels under a low pan: at full bump the upper run would be in its board. */
  @Test
  void whereAChainWouldMeetThePanNoneIsDrawnAndItIsSaid() {
    Answers large =
        say()
            .rider(Who.percentile(Sex.FEMALE, 50))
            .second(Who.percentile(Sex.MALE, 50))
            .front(FrontPart.Kind.TRAILING_LINK)
            .frontTyre("100/90-18")
            .rearTyre("120/80-18")
            .drive(Drive.MOTOR)
            .place(Place.BEFORE)
            .answers();
    assertThat(made(large).layout().ties()).doesNotContainKey("chain");
    assertThat(made(large).study().failing()).isZero();
    assertThat(made(large).yours().get(0)).startsWith("No chain is drawn").contains("idler");
    assertThat(made(Answers.NONE).yours()).noneMatch(y -> y.contains("chain"));
  }

  /** A litre of petrol weighs 0.72 to 0.775 kg (EN 228), so the box gives no more than it holds. */
  @Test
  void theTankHoldsItsFuelBesidesItsOwnMass() {
    Study study = made(Answers.NONE).study();
    SolidPart tank = (SolidPart) study.layout().parts().get("tank");
    Places at = study.placed().places();
    var shape = study.shapes().get("tank");
    double litres = shape.outline().getArea() * (shape.leftMm() + shape.rightMm()) * 1e-6;
    assertThat(at.value(tank.holds().orElseThrow()))
        .isBetween(0.8 * 0.72 * litres, 0.95 * 0.775 * litres);
    assertThat(at.value(tank.base().mass().orElseThrow())).isBetween(1.0, 5.0);
  }
}

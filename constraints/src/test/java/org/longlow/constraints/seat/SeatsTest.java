package org.longlow.constraints.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.HandContact;
import org.longlow.rider.seat.Foam;
import org.longlow.rider.seat.SeatGeometry;

/** From parts to what people sit on, and which limb may lie on which part. */
class SeatsTest {

  private static final Study TOURER = TestMachine.asFiled("tourer");
  private static final Study RUNABOUT = TestMachine.asFiled("runabout");

  private static SeatGeometry geometry(Study study) {
    SeatParts parts = SeatParts.of(study.layout()).get("rider");
    return Seats.geometry(parts, study.placed().places()).orElseThrow();
  }

  @Test
  void aFootboardIsItsPinsRaisedByHalfItsThickness() {
    FootContact.Footboard board = (FootContact.Footboard) geometry(RUNABOUT).foot();
    Places places = RUNABOUT.placed().places();
    PointMm heel = places.pin("boardRear");
    // 12 mm thick, 22 deg up
    PointMm up = PointMm.unit(Math.toRadians(112)).times(6);
    assertThat(board.rear().distance(heel.plus(up))).isLessThan(1e-6);
    assertThat(board.front().distance(places.pin("boardFront").plus(up))).isLessThan(1e-6);
  }

  @Test
  void aPegIsMetOnItsRearUpperSide() {
    Study pegs =
        TestMachine.runabout()
            .with(
                "parts",
                "boards",
                "{'kind': 'peg', 'at': 'boardRear', 'diameter': '40 mm', 'y': '200 mm', 'length':"
                    + " '90 mm'}")
            .study();
    PointMm at = pegs.placed().places().pin("boardRear");
    PointMm met = ((FootContact.BallOnPeg) geometry(pegs).foot()).contact();
    assertThat(met.x()).isCloseTo(at.x() - 14.142, within(1e-3));
    assertThat(met.z()).isCloseTo(at.z() + 14.142, within(1e-3));
  }

  @Test
  void cushionsAreAsWideAndThickAsTheirParts() {
    SeatGeometry seat = geometry(RUNABOUT);
    assertThat(seat.pan().widthMm()).isCloseTo(360, within(1e-9));
    assertThat(seat.pan().foam().thicknessMm()).isCloseTo(95, within(1e-9));
    assertThat(seat.back().widthMm()).isCloseTo(340, within(1e-9));
    assertThat(seat.back().foam().thicknessMm()).isCloseTo(60, within(1e-9));
    assertThat(seat.headRest()).isNull();
    assertThat(geometry(TOURER).headRest()).isNotNull();
    // the top layer, from its own figures
    assertThat(seat.pan().foam().layers().get(0).foam()).isEqualTo(Foam.openCell(45, 225, 2.7));
    PointMm grip = RUNABOUT.placed().places().pin("grip");
    assertThat(((HandContact.Grip) seat.hand()).centre().distance(grip)).isLessThan(1e-9);
    assertThat(seat.width().footHalfMm()).isEqualTo(215);
    assertThat(seat.width().gripHalfMm()).isEqualTo(310);
  }

  @Test
  void withoutABackOrAPlaceForTheFeetNobodySits() {
    for (String part : new String[] {"back", "boards"}) {
      Study study = TestMachine.runabout().lacking(part).study();
      SeatParts parts = SeatParts.of(study.layout()).get("rider");
      assertThat(Seats.geometry(parts, study.placed().places())).as(part).isEmpty();
      for (Sitting s : study.sittings()) {
        assertThat(s.seated()).isEmpty();
        assertThat(s.flesh()).isEmpty();
        assertThat(s.prisms()).isEmpty();
        assertThat(s.finePrisms()).isEmpty();
        assertThat(s.masses()).isEmpty();
      }
    }
  }

  @Test
  void everybodySitsOnEverySeatTheyMustFit() {
    assertThat(RUNABOUT.sittings()).extracting(Sitting::person).containsExactly("Nell", "Joss");
    assertThat(TOURER.sittings())
        .extracting(s -> s.person() + " " + s.seat())
        .contains("Bram rider", "Runa rider", "Runa passenger");
  }

  /** 57 kg in a helmet of 1.5, boots of 2, jacket 2.5, trousers 1.5 and gloves 0.3 kg. */
  @Test
  void aBodyWeighsWhatItIsAndWears() {
    Sitting nell = RUNABOUT.sittings().get(0);
    assertThat(nell.masses().stream().mapToDouble(MassPoint::massKg).sum())
        .isCloseTo(64.8, within(1e-9));
  }

  @Test
  void limbsOutAtTheSidesAreThereOnBothSides() {
    Sitting nell = RUNABOUT.sittings().get(0);
    double left = nell.prisms().stream().mapToDouble(p -> p.across().to()).max().orElseThrow();
    double right = nell.prisms().stream().mapToDouble(p -> p.across().from()).min().orElseThrow();
    assertThat(left).isPositive().isCloseTo(-right, within(1e-9));
    for (Prism p : nell.prisms()) {
      assertThat(nell.prisms())
          .anyMatch(
              q ->
                  q.outline().equals(p.outline())
                      && q.across().from() == -p.across().to()
                      && q.across().to() == -p.across().from());
    }
    assertThat(nell.prismsWithout(Set.of("head"))).hasSizeLessThan(nell.prisms().size());
    assertThat(nell.finePrisms()).hasSizeGreaterThan(nell.prisms().size());
  }

  @Test
  void eachLimbLiesOnItsOwnPartOnly() {
    Map<String, Part> parts = TOURER.layout().parts();
    Sitting rider =
        TOURER.sittings().stream().filter(s -> s.occupant().rides()).findFirst().orElseThrow();
    Sitting passenger =
        TOURER.sittings().stream().filter(s -> !s.occupant().rides()).findFirst().orElseThrow();
    SeatParts seat = rider.parts();
    assertThat(Resting.limbs(rider, seat.pan())).contains("thigh").doesNotContain("head", "foot");
    assertThat(Resting.limbs(rider, seat.back().orElseThrow()))
        .contains("chest")
        .doesNotContain("thigh", "head");
    assertThat(Resting.limbs(rider, seat.head().orElseThrow())).contains("head");
    assertThat(Resting.limbs(rider, seat.feet().orElseThrow())).contains("foot");
    assertThat(Resting.limbs(rider, seat.hands().orElseThrow())).containsExactly("forearm");
    assertThat(Resting.limbs(rider, parts.get("rearWheel"))).isEmpty();
    for (Part own : seat.parts()) {
      assertThat(Resting.limbs(passenger, own)).as(own.name()).isEmpty();
      // of what carries others, thighs keep clear where they are at each place
      assertThat(Resting.clear(passenger, own).fine()).as(own.name()).isTrue();
      assertThat(Resting.clear(rider, own).fine()).as(own.name()).isFalse();
      boolean cushion = own instanceof CushionPart;
      assertThat(Resting.ownCushion(rider, own)).as(own.name()).isEqualTo(cushion);
      assertThat(Resting.ownCushion(passenger, own)).isFalse();
    }
    assertThat(Resting.clear(rider, parts.get("rearWheel")).fine()).isFalse();
  }
}

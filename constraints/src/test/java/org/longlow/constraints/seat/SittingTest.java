package org.longlow.constraints.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.pose.Flesh;
import org.longlow.rider.seat.SeatOutcome;

/** Somebody seated as a solid of mirrored limbs and as masses; what may touch which part. */
class SittingTest {

  private static Sitting nell() {
    return TestMachine.asFiled("runabout").sittings().get(0);
  }

  @Test
  void whoSitsAndHow() {
    Sitting nell = nell();
    assertThat(nell.occupant()).isEqualTo(new Occupant("Nell", "rider"));
    assertThat(nell.seated()).hasValueSatisfying(s -> assertThat(s).isSameAs(nell.outcome()));
    assertThat(nell.posture()).contains(((SeatOutcome.Seated) nell.outcome()).pose().posture());
  }

  /**
   * A limb out at the side is there twice, at the left and right; others once, across the middle.
   */
  @Test
  void limbsAreMirrored() {
    Sitting nell = nell();
    List<Prism> expected = new ArrayList<>();
    int pairs = 0;
    for (Flesh f : nell.flesh()) {
      if (f.innerMm() > 0) {
        pairs++;
        expected.add(new Prism(f.outline(), new Interval(f.innerMm(), f.outerMm())));
        expected.add(new Prism(f.outline(), new Interval(-f.outerMm(), -f.innerMm())));
      } else {
        expected.add(new Prism(f.outline(), new Interval(-f.outerMm(), f.outerMm())));
      }
    }
    assertThat(pairs).isGreaterThan(3).isLessThan(nell.flesh().size());
    same(nell.prisms(), expected);
    same(Sitting.prisms(nell.body(), nell.posture().orElseThrow()), expected);
    same(nell.prismsWithout(Set.of()), expected);
    List<Prism> without = new ArrayList<>();
    for (Prism p : expected) {
      boolean gone =
          nell.flesh().stream()
              .anyMatch(
                  f ->
                      Set.of("thigh", "head").contains(f.name())
                          && f.outline().equalsExact(p.outline()));
      if (!gone) {
        without.add(p);
      }
    }
    assertThat(without).hasSizeLessThan(expected.size() - 2);
    same(nell.prismsWithout(Set.of("thigh", "head")), without);
  }

  private static void same(List<Prism> prisms, List<Prism> expected) {
    assertThat(prisms).hasSameSizeAs(expected);
    for (Prism p : prisms) {
      assertThat(expected)
          .anyMatch(q -> q.across().equals(p.across()) && q.outline().equalsExact(p.outline()));
    }
  }

  /** Limbs that go outwards are taken in pieces, each within the limb and narrower than it. */
  @Test
  void fineLimbsLieWithinThePlainOnes() {
    Sitting nell = nell();
    List<Prism> fine = nell.finePrisms();
    assertThat(fine.size()).isGreaterThan(nell.prisms().size());
    int narrower = 0;
    for (Prism piece : fine) {
      assertThat(nell.prisms())
          .anyMatch(
              p ->
                  p.across().from() <= piece.across().from() + 1e-6
                      && p.across().to() >= piece.across().to() - 1e-6);
      boolean own = nell.prisms().stream().noneMatch(p -> p.across().equals(piece.across()));
      narrower += own ? 1 : 0;
    }
    assertThat(narrower).isGreaterThan(7);
  }

  @Test
  void massesLieWhereTheBodyIs() {
    Sitting nell = nell();
    double kg = 0;
    for (MassPoint m : nell.masses()) {
      kg += m.massKg();
      assertThat(m.yMm()).isZero();
    }
    assertThat(kg).isCloseTo(nell.body().massInGearKg(), within(1e-9));
    // each lies within the side view of the body, or beside it where limbs are bent
    for (MassPoint m : nell.masses()) {
      assertThat(nell.flesh())
          .anyMatch(
              f ->
                  f.outline()
                          .distance(
                              f.outline()
                                  .getFactory()
                                  .createPoint(new Coordinate(m.at().x(), m.at().z())))
                      < 25);
    }
  }

  @Test
  void whoCannotSitHasNoBody() {
    Sitting nell = nell();
    Sitting none =
        new Sitting(
            "Nell", "rider", nell.parts(), nell.body(), new SeatOutcome.Unseatable("no back"));
    assertThat(none.seated()).isEmpty();
    assertThat(none.posture()).isEmpty();
    assertThat(none.flesh()).isEmpty();
    assertThat(none.prisms()).isEmpty();
    assertThat(none.finePrisms()).isEmpty();
    assertThat(none.prismsWithout(Set.of())).isEmpty();
    assertThat(none.masses()).isEmpty();
  }

  private static Layout withLever() {
    return TestMachine.tourer()
        .pin("leverPin", 1500, 300)
        .with(
            "parts",
            "brakeLever",
            "{'kind': 'lever', 'frame': 'leverPin', 'outline': {'points': [['0 mm', '0 mm'], ['40"
                + " mm', '0 mm'], ['40 mm', '12 mm'], ['0 mm', '12 mm']]}, 'left': '-280 mm',"
                + " 'right': '320 mm', 'mass': '0.4 kg'}")
        .layout();
  }

  @Test
  void onlyWhoSteersWorksTheLevers() {
    Layout layout = withLever();
    List<Sitting> sittings = Seats.of(layout, Placer.place(layout).places());
    Part lever = layout.parts().get("brakeLever");
    Sitting rider = sitting(sittings, true);
    Sitting passenger = sitting(sittings, false);
    assertThat(Resting.limbs(rider, lever)).containsExactlyInAnyOrder("foot", "shank", "forearm");
    assertThat(Resting.limbs(passenger, lever)).isEmpty();
    assertThat(Resting.limbs(rider, layout.parts().get("battery"))).isEmpty();
    assertThat(Resting.ownCushion(rider, lever)).isFalse();
    assertThat(Resting.clear(rider, lever).fine()).isFalse();
    assertThat(Resting.clear(rider, lever).without()).isEqualTo(Resting.limbs(rider, lever));
  }

  private static Sitting sitting(List<Sitting> sittings, boolean rides) {
    return sittings.stream()
        .filter(s -> s.occupant().rides() == rides && s.posture().isPresent())
        .findFirst()
        .orElseThrow();
  }

  /** Of a cushion of others all of somebody keeps clear, of their own all but what lies on it. */
  @Test
  void whatKeepsClearOfACushion() {
    List<Sitting> sittings = TestMachine.asFiled("tourer").sittings();
    Sitting rider = sitting(sittings, true);
    Part own = rider.parts().pan();
    same(
        Resting.clear(rider, own).prisms(rider),
        rider.prismsWithout(Set.of("pelvis", "thigh", "chest")));
    Part others = sitting(sittings, false).parts().pan();
    same(Resting.clear(rider, others).prisms(rider), rider.finePrisms());
    assertThat(Resting.ownCushion(rider, own)).isTrue();
    assertThat(Resting.ownCushion(rider, others)).isFalse();
    Optional<RestPart> boards = rider.parts().feet();
    assertThat(Resting.ownCushion(rider, boards.orElseThrow())).isFalse();
  }
}

package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.TravelWay.Ends;
import org.longlow.constraints.study.TestMachine;

/** The way of the wheels goes through the named stances, together or one wheel alone. */
class TravelWayTest {

  private final Stood stood = new Stood(TestMachine.tourer());
  private final Standing unladen = stood.in(Stance.Kind.UNLADEN);

  private TravelWay way(Ends ends, Travel still) {
    return TravelWay.of(stood.wheels, List.of(unladen), ends, still);
  }

  @Test
  void bothGoThroughEachNamedStance() {
    TravelWay way = way(Ends.BOTH, new Travel(0, 0));
    assertThat(way.stops())
        .extracting(TravelWay.Stop::name)
        .containsExactly("full droop", "unladen", "full bump");
    for (Stance.Kind kind :
        List.of(Stance.Kind.FULL_DROOP, Stance.Kind.UNLADEN, Stance.Kind.FULL_BUMP)) {
      Travel asked = Travel.of(stood.in(kind));
      Travel there = way.at(way.share(asked));
      assertThat(there.frontMm()).isCloseTo(asked.frontMm(), within(1e-9));
      assertThat(there.rearMm()).isCloseTo(asked.rearMm(), within(1e-9));
    }
    // half way between two stops both wheels are half way
    TravelWay.Stop a = way.stops().get(1);
    TravelWay.Stop b = way.stops().get(2);
    Travel half = way.at((a.share() + b.share()) / 2);
    assertThat(half.frontMm())
        .isCloseTo((a.travel().frontMm() + b.travel().frontMm()) / 2, within(1e-9));
    assertThat(half.rearMm())
        .isCloseTo((a.travel().rearMm() + b.travel().rearMm()) / 2, within(1e-9));
  }

  @Test
  void oneAloneLeavesTheOtherWhereItIs() {
    double bump = stood.wheels.frontSuspension().bumpMm();
    double droop = stood.wheels.frontSuspension().droopMm();
    TravelWay way = way(Ends.FRONT, new Travel(99, 7));
    for (double share : new double[] {0, 0.3, 1}) {
      assertThat(way.at(share).rearMm()).isEqualTo(7);
      assertThat(way.at(share).frontMm()).isCloseTo(-droop + share * (bump + droop), within(1e-9));
    }
    assertThat(way.lengthMm()).isCloseTo(bump + droop, within(1e-9));
    assertThat(way(Ends.REAR, new Travel(5, 99)).at(0.5).frontMm()).isEqualTo(5);
    assertThat(way.share(new Travel(1e6, 0))).isEqualTo(1);
    assertThat(way.share(new Travel(-1e6, 0))).isZero();
  }

  @Test
  void theMachineIsAsItIsInTheStancesThere() {
    Standing bump = stood.in(Stance.Kind.FULL_BUMP);
    TravelWay way = way(Ends.BOTH, new Travel(0, 0));
    Standing moved =
        new Stances(stood.wheels, stood.shapes).moved(unladen.condition(), Rider.NOBODY, way.at(1));
    assertThat(moved.places().pins()).isEqualTo(bump.places().pins());
    assertThat(moved.ground()).isEqualTo(bump.ground());
    assertThat(moved.moved().keySet()).isEqualTo(bump.moved().keySet());
  }
}

package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.effort.Joint;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.seat.SeatGeometry;

/** What is said to help the hips does, as much as is said; a rucksack is named as the cause. */
class HipReliefTest {

  private static TestMachine worn(String rucksack) {
    return TestMachine.runabout().field("crew", "Nell", "rucksack", rucksack);
  }

  private static Sitting nell(Study study) {
    return study.sitting("Nell", Occupant.RIDER).orElseThrow();
  }

  private static double hips(Study study) {
    return Effort.of(study.layout(), nell(study), study.standings(), study.placed().places())
        .orElseThrow()
        .riding()
        .get(Joint.HIP)
        .weak();
  }

  private static HipRelief relief(Study study) {
    return HipRelief.of(nell(study), study.placed().places()).orElseThrow();
  }

  /** A pan that ends under the buttocks of somebody pushed forward. */
  @Test
  void aLongerPanTakesOffTheHipsWhatIsSaid() {
    Study before = worn("'9 kg'").field("ties", "panSize", "is", "'340 mm'").study();
    HipRelief relief = relief(before);
    assertThat(relief.words(1).toString()).contains("make the pan");
    Study after = worn("'9 kg'").field("ties", "panSize", "is", "'380 mm'").study();
    assertThat(hips(after) / hips(before)).isCloseTo(relief.share(), within(0.02)).isLessThan(0.9);
  }

  /** What is said to be moved is what is moved, by 40 mm or 3 degrees, that way. */
  @Test
  void eachTrialMovesWhatItSays() {
    Study study = TestMachine.asFiled("runabout");
    SeatGeometry seat = Seats.geometry(nell(study).parts(), study.placed().places()).orElseThrow();
    PointMm along = seat.pan().to().minus(seat.pan().from());
    Map<String, PointMm> moved = new HashMap<>();
    for (HipRelief.Trial t : HipRelief.trials(seat)) {
      SeatGeometry then = t.seat();
      String said = Say.format(t.how(), t.by()).toString();
      moved.put(said + " pan", then.pan().to().minus(seat.pan().to()));
      moved.put(said + " feet", foot(then).minus(foot(seat)));
      double lean = lean(then) - lean(seat);
      assertThat(lean)
          .as(said)
          .isCloseTo(said.contains("the back") ? Math.toRadians(3) : 0, within(1e-9));
    }
    double length = along.length();
    Map<String, PointMm> expected =
        Map.of(
            "make the pan 40 mm longer at its front pan", along.times(40 / length),
            "raise the front of the pan by 40 mm pan",
                new PointMm(-along.z(), along.x()).times(40 / length),
            "lower the foot rests by 40 mm feet", new PointMm(0, -40),
            "bring the foot rests 40 mm nearer feet", new PointMm(-40, 0),
            "move the foot rests 40 mm farther away feet", new PointMm(40, 0));
    moved.forEach(
        (what, by) ->
            assertThat(by.distance(expected.getOrDefault(what, PointMm.ORIGIN)))
                .as(what)
                .isLessThan(1e-9));
    assertThat(moved.keySet()).containsAll(expected.keySet());
  }

  private static PointMm foot(SeatGeometry seat) {
    return seat.foot() instanceof FootContact.Footboard b
        ? b.rear()
        : ((FootContact.BallOnPeg) seat.foot()).contact();
  }

  /** How far the back leans from upright, to the rear. */
  private static double lean(SeatGeometry seat) {
    PointMm up = seat.back().to().minus(seat.back().from());
    return Math.atan2(-up.x(), up.z());
  }

  @Test
  void aRucksackIsNamedAndOneOfNoMassIsNone() {
    Study bare = TestMachine.asFiled("runabout");
    Study none = worn("'0 kg'").study();
    Study pack = worn("'9 kg'").study();
    double hip = nell(bare).seated().orElseThrow().hip().x();
    assertThat(nell(none).seated().orElseThrow().hip().x()).isEqualTo(hip);
    assertThat(nell(pack).seated().orElseThrow().hip().x()).isGreaterThan(hip + 50);
    assertThat(Rucksack.words(nell(none)).toString()).isEmpty();
    for (Study study : new Study[] {bare, pack}) {
      assertThat(study.findings())
          .filteredOn(f -> f.who().filter(w -> w.person().equals("Nell")).isPresent())
          .filteredOn(f -> f.kind() == SeatFindings.SINK || f.kind() == LongRideFindings.PRESSURE)
          .hasSizeGreaterThan(2)
          .allMatch(f -> f.text().contains("The rucksack, 120 mm thick") == (study == pack));
    }
  }
}

package org.longlow.constraints.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.layout.Part.LampKind;

/** Areas, edges and gaps of lamps; rows that keep what they are given. */
class LampItemTest {

  private static LampItem lamp(double yMm, double zMm, double halfWidth, double halfHeight) {
    return new LampItem(
        "l", false, LampKind.TAIL, LampColour.RED, false, 5, yMm, zMm, halfWidth, halfHeight, true);
  }

  @Test
  void areaAndEdges() {
    LampItem round = lamp(0, 700, 30, 30);
    assertThat(round.areaMm2()).isCloseTo(2827.43, within(0.01));
    assertThat(round.boxAreaMm2()).isEqualTo(3600);
    LampItem oblong = lamp(0, 700, 40, 10);
    assertThat(oblong.areaMm2()).isEqualTo(1600);
    assertThat(oblong.lowestMm()).isEqualTo(690);
    assertThat(oblong.highestMm()).isEqualTo(710);
  }

  // rectangles 40 x 20 and circles of 30
  @ParameterizedTest
  @CsvSource({
    "40, 10, 40, 10, 100, 0, 20",
    "40, 10, 40, 10, -100, 0, 20",
    "40, 10, 40, 10, 0, 50, 30",
    "40, 10, 40, 10, 83, -24, 5",
    "30, 30, 30, 30, 30, 40, -10",
    "30, 30, 30, 30, 60, 80, 40",
    "40, 10, 30, 30, 43, 14, -25",
    "30, 30, 40, 10, -80, 40, 20"
  })
  void gapSeenAlongTheMachine(
      double w1, double h1, double w2, double h2, double dy, double dz, double gap) {
    LampItem one = lamp(10, 700, w1, h1);
    LampItem other = lamp(10 + dy, 700 + dz, w2, h2);
    assertThat(one.frontViewGapMm(other)).isCloseTo(gap, within(1e-9));
    assertThat(other.frontViewGapMm(one)).isCloseTo(gap, within(1e-9));
  }

  @Test
  void theOtherOfAPairIsOnTheOtherSide() {
    LampItem other = lamp(120, 700, 40, 10).mirrored();
    assertThat(other.yMm()).isEqualTo(-120);
    assertThat(other.other()).isTrue();
    assertThat(other.mirrored().yMm()).isEqualTo(120);
    assertThat(other.zMm()).isEqualTo(700);
    assertThat(other.steered()).isTrue();
  }

  private static LampItem odd(double x, double y, double z, double w, double h) {
    return new LampItem("l", false, LampKind.TAIL, LampColour.RED, true, x, y, z, w, h, false);
  }

  @Test
  void nonsenseIsRefusedWithItsName() {
    double no = Double.NaN;
    assertThatThrownBy(() -> odd(no, 0, 0, 1, 1)).hasMessageContaining("centre x mm is NaN");
    assertThatThrownBy(() -> odd(0, no, 0, 1, 1)).hasMessageContaining("centre y mm is NaN");
    assertThatThrownBy(() -> odd(0, 0, no, 1, 1)).hasMessageEndingWith("a finite number");
    assertThatThrownBy(() -> odd(0, 0, 0, 0, 1)).hasMessageEndingWith("a finite number above 0");
    assertThatThrownBy(() -> odd(0, 0, 0, 1, -1)).hasMessageContaining("half height mm is -1");
    assertThatThrownBy(
            () ->
                new LampItem(" ", false, LampKind.TAIL, LampColour.RED, true, 0, 0, 0, 1, 1, true))
        .hasMessageContaining("needs a name");
    assertThat(odd(-1, -2, 0, 0.1, 0.1).yMm()).isEqualTo(-2);
  }

  @Test
  void aRowKeepsWhatItIsGiven() {
    LawSource source = new LawSource("7.1", "2000", "one lamp", Known.TRANSCRIBED);
    LampRow.Count two = LampRow.Count.range(1, 2, source);
    assertThat(two).isEqualTo(new LampRow.Count(1, OptionalInt.of(2), source));
    LampRow.Count some = LampRow.Count.atLeast(3, source);
    assertThat(some).isEqualTo(new LampRow.Count(3, OptionalInt.empty(), source));
    LampRow.Colours colours = new LampRow.Colours(Set.of(LampColour.RED), source);
    LampRow.Across across = new LampRow.Across(LampRow.Placement.EACH_SIDE, source);
    LampRow.Heights heights =
        new LampRow.Heights(LampRow.Datum.EDGE, Optional.empty(), Optional.empty());
    LampRow.Area area = new LampRow.Area(5000, 2200, source);
    LampRow row =
        LampRow.of(RuleSet.UK, "tail", LampKind.TAIL, LampRow.Zone.REAR, two)
            .with(colours)
            .with(across)
            .with(heights)
            .with(area)
            .unread("angles");
    assertThat(row)
        .isEqualTo(
            new LampRow(
                RuleSet.UK,
                "tail",
                LampKind.TAIL,
                LampRow.Zone.REAR,
                two,
                Optional.of(colours),
                Optional.of(across),
                Optional.of(heights),
                Optional.of(area),
                Optional.of("angles")));
    assertThat(source.section()).isEqualTo("7.1");
    assertThat(source.edition()).isEqualTo("2000");
    assertThat(source.cite()).isEqualTo("7.1 (2000): one lamp; " + Known.TRANSCRIBED.words());
    assertThat(Known.FROM_MEMORY.words()).startsWith("from memory");
  }

  @Test
  void aZoneHoldsItsHalfOfTheMachine() {
    LampItem behind = lamp(0, 700, 40, 10);
    LampItem ahead = odd(0, 0, 700, 40, 10);
    assertThat(LampRow.Zone.ANYWHERE.holds(behind)).isTrue();
    assertThat(LampRow.Zone.ANYWHERE.holds(ahead)).isTrue();
    assertThat(LampRow.Zone.REAR.holds(behind)).isTrue();
    assertThat(LampRow.Zone.REAR.holds(ahead)).isFalse();
    assertThat(LampRow.Zone.FRONT.holds(behind)).isFalse();
    assertThat(LampRow.Zone.FRONT.holds(ahead)).isTrue();
  }

  @Test
  void lampsHaveTheirNames() {
    assertThat(LampRow.words(LampKind.REAR_FOG)).isEqualTo("rear fog lamp");
    assertThat(LampRow.words(LampKind.PLATE)).isEqualTo("number plate");
    assertThat(LampRow.words(LampKind.SIDE_REFLECTOR)).isEqualTo("side reflector");
    LawSource source = new LawSource("7.1", "2000", "one lamp", Known.CHECKED);
    LampRow.Count one = LampRow.Count.atLeast(1, source);
    LampRow row = LampRow.of(RuleSet.UK, "front-stop", LampKind.STOP, LampRow.Zone.FRONT, one);
    assertThat(row.words()).isEqualTo("front stop lamp");
  }
}

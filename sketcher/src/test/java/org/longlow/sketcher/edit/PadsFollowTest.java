package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.layout.Control;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.rider.geom.PointMm;

/** Where a lever is worked goes with the lever, as the gallery has it 130 mm ahead and 13 up. */
class PadsFollowTest {

  private static final Layout WITH =
      Adding.of("lever").with(PinSpot.at(new PointMm(900, 300))).edit().applied(Gallery.layout());

  private static final String LEVER = Adding.of("lever").nameIn(Gallery.layout());

  private static PointMm at(Layout layout, String pin) {
    return Drawn.places(layout).pin(pin);
  }

  private static Control worked(Layout layout, String part) {
    return ((SolidPart) layout.parts().get(part)).worked().orElseThrow();
  }

  private static void isAt(PointMm point, double x, double z) {
    assertThat(point.x()).isCloseTo(x, within(1e-6));
    assertThat(point.z()).isCloseTo(z, within(1e-6));
  }

  @Test
  void anAddedLeverBringsWhereItIsWorked() {
    Control own = worked(WITH, LEVER);
    assertThat(own.pad()).isNotEqualTo("leverPad");
    isAt(at(WITH, own.pad()), 1030, 313);
    isAt(at(WITH, own.pivot().orElseThrow()), 900, 300);
  }

  @Test
  void itGoesAlongMovedCopiedAndTurned() {
    PointMm step = new PointMm(40, -20);
    Layout moved = Several.move(Several.pins(WITH, List.of(LEVER)), step).applied(WITH);
    isAt(at(moved, worked(moved, LEVER).pad()), 1070, 293);
    Layout twice = Several.duplicate(List.of(LEVER), step).applied(WITH);
    String copy = Several.copies(WITH, List.of(LEVER)).get(LEVER);
    assertThat(worked(twice, copy).pad()).isNotEqualTo(worked(WITH, LEVER).pad());
    isAt(at(twice, worked(twice, copy).pad()), 1070, 293);
    isAt(at(twice, worked(twice, LEVER).pad()), 1030, 313);
    // about a line 50 mm ahead of its pivot
    Layout round = Mirror.turnedRound(List.of(LEVER), 950).applied(WITH);
    isAt(at(round, worked(round, LEVER).pad()), 870, 313);
    isAt(at(round, worked(round, LEVER).pivot().orElseThrow()), 1000, 300);
  }

  @Test
  void itIsRenamedAndTakenOutWithItsLever() {
    String pad = worked(WITH, LEVER).pad();
    Layout renamed = Edits.rename(new Entry("pins", pad), "rubber").applied(WITH);
    assertThat(worked(renamed, LEVER).pad()).isEqualTo("rubber");
    Layout without = Several.takeOut(List.of(new Entry("parts", LEVER))).applied(WITH);
    assertThat(without.pins()).isEqualTo(Gallery.layout().pins());
    // without its pad a lever is there, and nothing is said of what works it
    Layout bare = Several.takeOut(List.of(new Entry("pins", pad))).applied(WITH);
    assertThat(((SolidPart) bare.parts().get(LEVER)).worked()).isEmpty();
    assertThat(bare.pins()).doesNotContainKey(pad);
  }
}

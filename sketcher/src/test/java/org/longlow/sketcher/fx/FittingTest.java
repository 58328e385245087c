package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** A machine of 2000 x 1000 mm fitted into cards of several shapes, worked out by hand. */
class FittingTest {

  private static final double MARGIN = 34;

  private static final Mark MACHINE =
      new Mark.Shape("part:frame", Planar.rectangle(0, 0, 2000, 1000), Style.area(Tone.WOOD, 1));

  private static Drawing drawing(Mark... names) {
    return new Drawing(
        "machine",
        List.of(
            new Layer("frame", "Frame", List.of(MACHINE)),
            new Layer("names", "Names", List.of(names))));
  }

  private static ViewFrame fitted(double wide, double high, double letters, Mark... names) {
    Spots.Box card = new Spots.Box(0, 0, wide, high);
    return Fitting.of(drawing(names), card, MARGIN, letters, letters, true);
  }

  private static Layer body(String subject) {
    Mark mark =
        new Mark.Shape(subject, Planar.rectangle(200, 100, 600, 900), Style.area(Tone.WOOD, 1));
    return new Layer("bodies", "Bodies", List.of(mark));
  }

  @Test
  void whatReachesOutOfTheCardIsCutOff() {
    ViewFrame frame = new ViewFrame(0.5, 100, 500);
    Drawing bare = new Drawing("bare", List.of());
    Drawing seated = new Drawing("seated", List.of(body("person:Ada")));
    Drawing part = new Drawing("part", List.of(body("part:box")));
    // it is from 200 to 400 px across and from 50 to 450 px down
    assertThat(Fitting.cutsOff(seated, frame, new Spots.Box(200, 50, 200, 400))).isFalse();
    assertThat(Fitting.cutsOff(seated, frame, new Spots.Box(200, 60, 200, 400))).isTrue();
    assertThat(Fitting.cutsOff(seated, frame, new Spots.Box(210, 50, 200, 400))).isTrue();
    assertThat(Fitting.cutsOff(part, frame, new Spots.Box(200, 50, 200, 400))).isFalse();
    assertThat(Fitting.cutsOff(part, frame, new Spots.Box(200, 50, 190, 400))).isTrue();
    assertThat(Fitting.cutsOff(bare, frame, new Spots.Box(0, 0, 1, 1))).isFalse();
  }

  /** 568 px of width are to 268 px of height as the machine is, so nothing is left over. */
  /** 400 by 300 mm at half size, on a card of 500 by 400 px that begins at 20, 10. */
  @Test
  void someOfTheMachineStaysHoweverFarTheCardIsPushed() {
    Envelope machine = new Envelope(0, 400, 0, 300);
    Spots.Box seen = new Spots.Box(20, 10, 500, 400);
    ViewFrame here = new ViewFrame(0.5, 100, 300);
    assertThat(here.keeping(machine, seen, 40)).isEqualTo(here);
    assertThat(here.panned(9000, 0).keeping(machine, seen, 40).originX()).isEqualTo(480);
    assertThat(here.panned(-9000, 0).keeping(machine, seen, 40).originX()).isEqualTo(60 - 200);
    assertThat(here.panned(0, 9000).keeping(machine, seen, 40).originY()).isEqualTo(370 + 150);
    assertThat(here.panned(0, -9000).keeping(machine, seen, 40).originY()).isEqualTo(50);
  }

  @Test
  void aMachineThatFillsTheCardLiesInItsMiddle() {
    ViewFrame frame = fitted(636, 568, 1);
    assertThat(frame.pxPerMm()).isCloseTo(568.0 / 2000, within(1e-9));
    assertThat(frame.screenX(1000)).isCloseTo(318, within(1e-9));
    ViewFrame filled = fitted(2 * (568 - 68) + 68, 568, 1);
    assertThat(filled.screenY(500)).isCloseTo(284, within(1e-9));
  }

  @Test
  void onAWideCardTheRoomForATicketIsAtTheRight() {
    ViewFrame frame = fitted(2000, 568, 1);
    assertThat(frame.pxPerMm()).as("as high as the card").isCloseTo(0.5, within(1e-9));
    assertThat(frame.screenX(0)).isCloseTo(MARGIN, within(1e-9));
    assertThat(2000 - frame.screenX(2000)).isGreaterThan(TicketSize.leastWidePx(1));
  }

  @Test
  void onAHighCardTheRoomForATicketIsAtTheTop() {
    ViewFrame frame = fitted(868, 1200, 1);
    assertThat(frame.screenY(0)).as("the road is low").isCloseTo(1200 - MARGIN, within(1e-9));
    assertThat(frame.screenY(1000)).isGreaterThan(TicketSize.leastHighPx(1));
  }

  /** A tenth of its size is worth a ticket beside it, a third is not. */
  @Test
  void itGivesUpALittleOfItsSizeForATicketNotMuch() {
    double ticket = TicketSize.leastWidePx(1);
    double whole = 1000 + 2 * MARGIN;
    assertThat(fitted(whole + ticket - 100, 500 + 2 * MARGIN, 1).pxPerMm())
        .isCloseTo(0.45, within(1e-9));
    ViewFrame large = fitted(whole + ticket - 300, 500 + 2 * MARGIN, 1);
    assertThat(large.pxPerMm()).isCloseTo(0.5 - Math.max(0, (300 - ticket) / 2000), within(1e-9));
  }

  /** A name above it and a ticket together cost no more of its size than the ticket may. */
  @Test
  void namesAndTicketTogetherDoNotMakeItSmall() {
    Mark above = new Mark.Words("part:frame", "mast", 1000, 1150, 2.5, 0, Anchor.MIDDLE, Tone.INK);
    int beside = 0;
    for (double wide = 700; wide < 1300; wide += 20) {
      double alone = Math.min((wide - 2 * MARGIN) / 2000, (560 - 2 * MARGIN) / 1000);
      ViewFrame named = fitted(wide, 560, 1, above);
      if (wide - named.screenX(2000) > TicketSize.leastWidePx(1)) {
        beside++;
        assertThat(named.pxPerMm()).as("%s px", wide).isGreaterThanOrEqualTo(0.85 * alone - 1e-9);
      }
    }
    assertThat(beside).isPositive();
  }

  @Test
  void whereTheTicketLiesElsewhereTheMachineHasTheCard() {
    Spots.Box card = new Spots.Box(0, 0, 1300, 560);
    ViewFrame with = Fitting.of(drawing(), card, MARGIN, 1, 1, true);
    ViewFrame without = Fitting.of(drawing(), card, MARGIN, 1, 1, false);
    assertThat(with.pxPerMm()).isLessThan(0.48);
    assertThat(without.pxPerMm()).isCloseTo((560 - 2 * MARGIN) / 1000, within(1e-9));
    assertThat(without.screenX(1000)).as("in the middle").isCloseTo(650, within(1e-9));
  }

  @Test
  void namesAreSeenWhereverTheyStand() {
    for (double letters : new double[] {1, 2}) {
      Mark left = new Mark.Words("part:frame", "boot", -60, 500, 2.5, 0, Anchor.END, Tone.INK);
      Mark above =
          new Mark.Words("part:frame", "screen", 900, 1120, 2.5, 0, Anchor.MIDDLE, Tone.INK);
      for (double wide : new double[] {700, 1100, 2400}) {
        ViewFrame frame = fitted(wide, 640, letters, left, above);
        for (Spots.Box name : Fitting.words(drawing(left, above), frame, letters)) {
          assertThat(name.x()).as("%s at %s px", letters, wide).isPositive();
          assertThat(name.right()).isLessThan(wide);
          assertThat(name.y()).isPositive();
        }
      }
    }
  }

  /** Words that would need the whole card are cut before the machine is a speck. */
  @Test
  void wordsDoNotMakeTheMachineASpeck() {
    Mark far =
        new Mark.Words("part:frame", "x".repeat(300), -60, 500, 2.5, 0, Anchor.END, Tone.DIMENSION);
    double bare = fitted(1100, 640, 2).pxPerMm();
    assertThat(fitted(1100, 640, 2, far).pxPerMm()).isGreaterThan(0.74 * bare);
  }

  /** Lines of dimensions 300 mm below and 200 mm left of the machine, seen whole on a wide card. */
  @Test
  void dimensionLinesAreSeenToTheEdgeOfTheCard() {
    Mark below =
        new Mark.Shape("", Planar.line(0, -300, 2000, -300), Style.line(Tone.DIMENSION, 0.2));
    Mark left =
        new Mark.Shape("", Planar.line(-200, 0, -200, 1000), Style.line(Tone.DIMENSION, 0.2));
    Drawing drawing =
        new Drawing(
            "machine",
            List.of(
                new Layer("frame", "Frame", List.of(MACHINE)),
                new Layer("dimensions", "Dimensions", List.of(below, left))));
    Spots.Box seen = new Spots.Box(20, 10, 1200, 500);
    ViewFrame frame = Fitting.of(drawing, seen, MARGIN, 1, 1, true);
    assertThat(frame.screenY(-300)).isLessThanOrEqualTo(seen.bottom());
    assertThat(frame.screenX(-200)).isGreaterThanOrEqualTo(seen.x());
    assertThat(frame.screenY(1000)).isGreaterThanOrEqualTo(seen.y() + MARGIN - 1e-9);
    // 1,300 mm within 500 - 34 - 8 px at most
    assertThat(frame.pxPerMm()).isBetween(0.9 * 458 / 1300, 458.0 / 1300);
  }
}

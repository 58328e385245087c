package org.longlow.sketcher.fx;

import java.util.EnumMap;
import java.util.Map;
import org.longlow.svg.drawing.Colour;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.drawing.Tone;

/**
 * The colours of the window: the palette of the drawing, and the bench it lies on.
 *
 * @param palette of the drawing; its paper is the card
 * @param bench what the card lies on
 * @param slip slips of paper beside the card
 * @param edge thin lines between them
 * @param night true for the dark look
 */
record Look(Palette palette, Colour bench, Colour slip, Colour edge, boolean night) {

  /** Ink on cream card, on a bench of bare wood. */
  static final Look DAY =
      new Look(
          onCard(Palette.CARD, "#fcf9f1"),
          Colour.hex("#d9cdb6"),
          Colour.hex("#f3ebd8"),
          Colour.hex("#7c6d50"),
          false);

  /** Chalk on slate, on a bench in the dark. */
  static final Look NIGHT =
      new Look(
          Palette.NIGHT, Colour.hex("#101416"), Colour.hex("#262c31"), Colour.hex("#88929c"), true);

  private static Palette onCard(Palette base, String card) {
    Map<Tone, Colour> colours = new EnumMap<>(Tone.class);
    for (Tone tone : Tone.values()) {
      colours.put(tone, base.of(tone));
    }
    colours.put(Tone.PAPER, Colour.hex(card));
    return new Palette(base.name() + " on the bench", colours);
  }

  Look other() {
    return night ? DAY : NIGHT;
  }

  /** Returns the colours and the letters as a style for the root of the window. */
  String rootStyle() {
    return "-paper: "
        + palette.of(Tone.PAPER).toHex()
        + "; -ink: "
        + palette.of(Tone.INK).toHex()
        + "; -pencil: "
        + palette.of(Tone.PENCIL).toHex()
        + "; -faint: "
        + palette.of(Tone.FAINT).toHex()
        + "; -good: "
        + palette.of(Tone.GOOD).toHex()
        + "; -care: "
        + palette.of(Tone.CARE).toHex()
        + "; -bad: "
        + palette.of(Tone.BAD).toHex()
        + "; -chosen: "
        + palette.of(Tone.CHOSEN).toHex()
        + "; -bench: "
        + bench.toHex()
        + "; -slip: "
        + slip.toHex()
        + "; -edge: "
        + edge.toHex()
        + "; -fx-font-family: \""
        + DrawingPainter.Letters.FAMILY
        + "\";";
  }
}

package org.longlow.svg.drawing;

import static java.util.Map.entry;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/** What every {@link Tone} looks like. A palette without a colour for each tone is refused. */
public record Palette(String name, Map<Tone, Colour> colours) {

  /** Ink and pencil on white card: for paper and a light screen. */
  public static final Palette CARD =
      new Palette(
          "card",
          colours(
              entry(Tone.INK, "#22262b"),
              entry(Tone.PENCIL, "#5a5d63"),
              entry(Tone.FAINT, "#bcb8af"),
              entry(Tone.STEEL, "#74818c"),
              entry(Tone.ALUMINIUM, "#6f93ad"),
              entry(Tone.PLASTIC, "#6e6496"),
              entry(Tone.FOAM_SOFT, "#f0e2b6"),
              entry(Tone.FOAM_FIRM, "#d3b46c"),
              entry(Tone.WOOD, "#b98b5c"),
              entry(Tone.RUBBER, "#403c3b"),
              entry(Tone.COWL, "#a65a43"),
              entry(Tone.SCREEN, "#b4d4d6"),
              entry(Tone.FIGURE, "#7b5d6c"),
              entry(Tone.ENGINE, "#7c7e86"),
              entry(Tone.TANK, "#4e6f62"),
              entry(Tone.EXHAUST, "#8b6a50"),
              entry(Tone.LAMP, "#f1e09a"),
              entry(Tone.LAMP_AMBER, "#e0a030"),
              entry(Tone.LAMP_RED, "#c2423a"),
              entry(Tone.GROUND, "#6c5e4a"),
              entry(Tone.DIMENSION, "#3a5468"),
              entry(Tone.GOOD, "#1d686c"),
              entry(Tone.CARE, "#875600"),
              entry(Tone.BAD, "#9b2447"),
              entry(Tone.CHOSEN, "#5540a0"),
              entry(Tone.PAPER, "#ffffff")));

  /** Chalk on slate: for a dark screen. */
  public static final Palette NIGHT =
      new Palette(
          "night",
          colours(
              entry(Tone.INK, "#ece7dc"),
              entry(Tone.PENCIL, "#aaa79f"),
              entry(Tone.FAINT, "#4b5157"),
              entry(Tone.STEEL, "#8d9ba7"),
              entry(Tone.ALUMINIUM, "#86aac6"),
              entry(Tone.PLASTIC, "#9c92c8"),
              entry(Tone.FOAM_SOFT, "#b9a877"),
              entry(Tone.FOAM_FIRM, "#8f7740"),
              entry(Tone.WOOD, "#8a6844"),
              entry(Tone.RUBBER, "#8a8482"),
              entry(Tone.COWL, "#cf8168"),
              entry(Tone.SCREEN, "#5f8488"),
              entry(Tone.FIGURE, "#bf98ab"),
              entry(Tone.ENGINE, "#9b9da6"),
              entry(Tone.TANK, "#7fa594"),
              entry(Tone.EXHAUST, "#b89374"),
              entry(Tone.LAMP, "#efe2a6"),
              entry(Tone.LAMP_AMBER, "#d99c38"),
              entry(Tone.LAMP_RED, "#cf5349"),
              entry(Tone.GROUND, "#9a8b74"),
              entry(Tone.DIMENSION, "#9dbbd1"),
              entry(Tone.GOOD, "#74c4c4"),
              entry(Tone.CARE, "#e0ac4e"),
              entry(Tone.BAD, "#f0829f"),
              entry(Tone.CHOSEN, "#b7a6f2"),
              entry(Tone.PAPER, "#1d2226")));

  /** One black ink: whatever is not the paper. */
  public static final Palette BLACK = new Palette("black", black());

  public Palette {
    Set<Tone> missing = EnumSet.allOf(Tone.class);
    missing.removeAll(colours.keySet());
    if (!missing.isEmpty()) {
      throw new IllegalArgumentException("palette '" + name + "' has no colour for " + missing);
    }
    colours = Map.copyOf(colours);
  }

  /** Returns the colour of a tone; never null. */
  public Colour of(Tone tone) {
    return colours.get(tone);
  }

  /**
   * Returns whether the background is plain white, so that nothing needs to be painted on paper.
   */
  public boolean isWhitePaper() {
    return of(Tone.PAPER).equals(new Colour(255, 255, 255));
  }

  private static Map<Tone, Colour> black() {
    Map<Tone, Colour> map = new EnumMap<>(Tone.class);
    for (Tone tone : Tone.values()) {
      map.put(tone, tone == Tone.PAPER ? new Colour(255, 255, 255) : new Colour(0, 0, 0));
    }
    return map;
  }

  @SafeVarargs
  private static Map<Tone, Colour> colours(Map.Entry<Tone, String>... entries) {
    Map<Tone, Colour> map = new EnumMap<>(Tone.class);
    for (Map.Entry<Tone, String> e : entries) {
      map.put(e.getKey(), Colour.hex(e.getValue()));
    }
    return map;
  }
}

package org.longlow.svg.drawing;

/** A named ink. What it looks like is the business of a {@link Palette}. */
public enum Tone {
  /** Outlines and headings. */
  INK(Use.WORDS),
  /** Secondary outlines, notes, construction. */
  PENCIL(Use.WORDS),
  /** Grid lines, hatching, anything that should stay in the background. */
  FAINT(Use.AREA),
  /** Tube, plate, brackets. */
  STEEL(Use.LINE),
  /** Castings, light plate. */
  ALUMINIUM(Use.LINE),
  /** Moulded parts. */
  PLASTIC(Use.LINE),
  /** Soft foam. */
  FOAM_SOFT(Use.AREA),
  /** Firm or closed-cell foam. */
  FOAM_FIRM(Use.AREA),
  /** Boards. */
  WOOD(Use.AREA),
  /** Tyres, grips, mounts. */
  RUBBER(Use.LINE),
  /** Bodywork. */
  COWL(Use.LINE),
  /** See-through sheet. */
  SCREEN(Use.AREA),
  /** The person. */
  FIGURE(Use.LINE),
  /** Engine and gearbox. */
  ENGINE(Use.LINE),
  /** Fuel tank. */
  TANK(Use.LINE),
  /** Exhaust and silencer. */
  EXHAUST(Use.LINE),
  /** Lamps that give white light. */
  LAMP(Use.AREA),
  /** Amber lamps and reflectors. */
  LAMP_AMBER(Use.AREA),
  /** Red lamps and reflectors. */
  LAMP_RED(Use.AREA),
  /** Road surface. */
  GROUND(Use.LINE),
  /** Dimension lines and their figures. */
  DIMENSION(Use.WORDS),
  /** A finding that passes. */
  GOOD(Use.WORDS),
  /** A finding that needs care. */
  CARE(Use.WORDS),
  /** A finding that fails. */
  BAD(Use.WORDS),
  /** What the user has picked. */
  CHOSEN(Use.WORDS),
  /** The background, also used to back words that stand on a picture. */
  PAPER(Use.BACKGROUND);

  /** What a tone is fit for; it decides how much contrast every palette owes it. */
  public enum Use {
    /** Letters, lines and areas: contrast with the background at least 4.5:1 (WCAG 2, 1.4.3). */
    WORDS(4.5),
    /** Lines and areas: contrast at least 3:1 (WCAG 2, 1.4.11). */
    LINE(3.0),
    /** Areas that carry an outline in another tone: no contrast asked. */
    AREA(1.0),
    /** The background itself. */
    BACKGROUND(1.0);

    private final double leastContrast;

    Use(double leastContrast) {
      this.leastContrast = leastContrast;
    }

    /** Returns the smallest contrast ratio with the background, in [1, 21]. */
    public double leastContrast() {
      return leastContrast;
    }
  }

  private final Use use;

  Tone(Use use) {
    this.use = use;
  }

  /** Returns what the tone is fit for. */
  public Use use() {
    return use;
  }
}

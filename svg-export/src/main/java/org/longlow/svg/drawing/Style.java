package org.longlow.svg.drawing;

/**
 * How a shape is drawn. All lengths are paper millimetres and do not scale with the drawing.
 *
 * @param stroke tone of the line, or null for none
 * @param strokeMm line width, mm, in (0, 10] when there is a stroke
 * @param fill tone of the area, or null for none
 * @param fillOpacity in [0, 1]
 * @param line line type, not null
 */
public record Style(Tone stroke, double strokeMm, Tone fill, double fillOpacity, LineType line) {

  /** Wide line on A4 to A2 sheets, ISO 128-2, mm. */
  public static final double WIDE_MM = 0.5;

  /** Narrow line, half the wide one, ISO 128-2, mm. */
  public static final double NARROW_MM = 0.25;

  public Style {
    if (line == null) {
      throw new IllegalArgumentException("style needs a line type");
    }
    if (stroke == null && fill == null) {
      throw new IllegalArgumentException("style needs a stroke or a fill");
    }
    if (stroke != null && !(strokeMm > 0 && strokeMm <= 10)) {
      throw new IllegalArgumentException(
          "stroke width is " + strokeMm + " mm; allowed: more than 0, at most 10");
    }
    if (!(fillOpacity >= 0 && fillOpacity <= 1)) {
      throw new IllegalArgumentException("fill opacity is " + fillOpacity + "; allowed: 0 to 1");
    }
  }

  /** Returns a continuous line without fill. */
  public static Style line(Tone tone, double widthMm) {
    return new Style(tone, widthMm, null, 1, LineType.CONTINUOUS);
  }

  /** Returns a continuous line of the wide width {@value #WIDE_MM} mm. */
  public static Style wide(Tone tone) {
    return line(tone, WIDE_MM);
  }

  /** Returns a continuous line of the narrow width {@value #NARROW_MM} mm. */
  public static Style narrow(Tone tone) {
    return line(tone, NARROW_MM);
  }

  /** Returns an area without outline. */
  public static Style area(Tone tone, double opacity) {
    return new Style(null, 0, tone, opacity, LineType.CONTINUOUS);
  }

  /** Returns a copy with another line type. */
  public Style withLine(LineType other) {
    return new Style(stroke, strokeMm, fill, fillOpacity, other);
  }

  /** Returns a copy with a stroke. */
  public Style withStroke(Tone tone, double widthMm) {
    return new Style(tone, widthMm, fill, fillOpacity, line);
  }

  /** Returns a copy with a fill. */
  public Style withFill(Tone tone, double opacity) {
    return new Style(stroke, strokeMm, tone, opacity, line);
  }
}

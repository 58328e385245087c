package org.longlow.sketcher.template;

import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * What a line on a template is that is not cut, told by its type alone (ISO 128-2: 02.1, 04.1 and
 * 05.1, and 01.1 for where a bend starts). The line to cut is the wide one. No template has two
 * that look alike.
 */
enum TemplateLine {
  FOLD("fold", LineType.DASHED),
  CENTRE("middle", LineType.CHAIN),
  BESIDE("lies behind or beside", LineType.DOUBLE_CHAIN),
  BEND("bend starts, ends", LineType.CONTINUOUS),
  NET("net outline", LineType.DOUBLE_CHAIN),
  SEAM("seam", LineType.CHAIN),
  STAPLES("staples", LineType.DOUBLE_CHAIN),
  CORNER("corner to cut", LineType.CONTINUOUS);

  private final String word;
  private final LineType type;

  TemplateLine(String word, LineType type) {
    this.word = word;
    this.type = type;
  }

  /** Returns what the key of a template calls it. */
  String word() {
    return word;
  }

  Style style() {
    return Style.narrow(Tone.INK).withLine(type);
  }
}

package org.longlow.svg.write;

/** How files say which program made them. */
public final class MadeHere {

  /** In an HTML page's head. */
  public static final String HTML = "<meta name=\"generator\" content=\"Longlow\"/>";

  /** After the first line of an SVG file. */
  static final String SVG = "<!-- Made with Longlow -->";

  /** Producer of a PDF. */
  static final String PRODUCER = "Longlow";

  private MadeHere() {}
}

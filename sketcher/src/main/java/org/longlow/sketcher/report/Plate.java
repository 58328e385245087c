package org.longlow.sketcher.report;

import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.write.SvgWriter;

/**
 * A picture of the page. It is as wide as the column; a tap, or the space bar, makes it larger than
 * that and lets it be moved about, another puts it back. A box to tick does this, for a page that
 * somebody is sent must need no script.
 */
final class Plate {

  private Plate() {}

  /**
   * Writes it.
   *
   * @param id begins the ids inside it; no other picture of the page has it
   * @param what it shows, in words
   */
  static void write(Html h, String id, String what, Page... pages) {
    h.raw("<label class=\"sheet\"><input type=\"checkbox\" aria-label=\"");
    h.text("Larger: " + what).raw("\"/>\n");
    h.raw(SvgWriter.inline(id, Palette.CARD, h.outlines(), pages));
    h.raw("</label>\n");
  }
}

package org.longlow.svg.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Scanner;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Page;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SharedOutlinesTest {

  private static final Geometry RING =
      Planar.disc(70.12345, 61.0007, 30).difference(Planar.disc(71, 62, 12.3456));

  /** A ring with a hole, the same elsewhere in another style, another ring, a short line. */
  private static Page page() {
    Drawing rings =
        Drawing.of(
            "d",
            new Layer(
                "rings",
                "Rings",
                List.of(
                    new Mark.Shape("a", RING, Style.wide(Tone.INK)),
                    new Mark.Shape("b", Planar.disc(70, 61, 29), Style.wide(Tone.INK)),
                    new Mark.Shape("c", Planar.line(1, 2, 3, 5), Style.wide(Tone.INK)))));
    List<Layer> both = new ArrayList<>(rings.layers());
    Mark moved = new Mark.Shape("d", RING, Style.area(Tone.RUBBER, 0.5));
    both.addAll(
        Drawing.of("m", new Layer("moved", "Moved", List.of(moved))).moved(-35, 90).layers());
    return Page.round(new Drawing("both", both), 4);
  }

  /** Walks a path of steps, thousandths of a mm: a list for each of its lines. */
  private static List<List<Long>> walked(String path, double fromX, double fromY) {
    List<List<Long>> lines = new ArrayList<>();
    boolean steps = path.startsWith("m");
    double x = fromX;
    double y = fromY;
    for (String part : path.split("(?=[mM])")) {
      List<Long> line = new ArrayList<>();
      Scanner words =
          new Scanner(part.substring(1).replace('L', ' ').replace("Z", "").replace("z", ""));
      double startX = Double.NaN;
      double startY = Double.NaN;
      while (words.hasNext()) {
        x = (steps ? x : 0) + Double.parseDouble(words.next());
        y = (steps ? y : 0) + Double.parseDouble(words.next());
        startX = Double.isNaN(startX) ? x : startX;
        startY = Double.isNaN(startY) ? y : startY;
        line.add(Math.round(x * 1000));
        line.add(Math.round(y * 1000));
      }
      if (part.toLowerCase().endsWith("z")) {
        x = startX;
        y = startY;
      }
      lines.add(line);
    }
    return lines;
  }

  private static Document picture(String prefix, SharedOutlines shared) throws IOException {
    return SvgWriterTest.parse(SvgWriter.inline(prefix, Palette.CARD, shared, page()).strip());
  }

  // The file of the page says where every point is, without sharing: the other route.
  @Test
  void whatIsUsedAgainLiesWhereTheFileHasIt() throws IOException {
    NodeList plain =
        SvgWriterTest.parse(SvgWriterTest.svg(page(), Palette.CARD)).getElementsByTagName("path");
    Document page = picture("p", new SharedOutlines());
    List<Element> drawn = new ArrayList<>();
    NodeList all = page.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      if (((Element) all.item(i)).hasAttribute("data-subject")) {
        drawn.add((Element) all.item(i));
      }
    }
    assertThat(drawn).hasSize(4).hasSize(plain.getLength());
    for (int i = 0; i < 4; i++) {
      Element e = drawn.get(i);
      Element file = (Element) plain.item(i);
      boolean used = e.getTagName().equals("use");
      assertThat(used).isEqualTo(i != 2);
      Element path =
          used
              ? page.getElementById(
                  e.getAttributeNS("http://www.w3.org/1999/xlink", "href").substring(1))
              : e;
      assertThat(
              walked(
                  path.getAttribute("d"),
                  used ? Double.parseDouble(e.getAttribute("x")) : 0,
                  used ? Double.parseDouble(e.getAttribute("y")) : 0))
          .isEqualTo(walked(file.getAttribute("d"), 0, 0));
      for (String name : List.of("data-subject", "fill", "fill-opacity", "stroke-width")) {
        assertThat(e.getAttribute(name)).isEqualTo(file.getAttribute(name));
      }
    }
  }

  @Test
  void onePageWritesEachOutlineOnceAcrossItsPictures() throws IOException {
    SharedOutlines shared = new SharedOutlines();
    assertThat(picture("p", shared).getElementsByTagName("defs").getLength()).isEqualTo(2);
    assertThat(picture("q", shared).getElementsByTagName("defs").getLength()).isZero();
  }
}

package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/** Pictures compared as XML: the same words in the same places. */
final class GoldenSvg {

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

  /** Coordinates are written to 0.001 mm; rounding may go either way. */
  private static final double TOLERANCE = 0.0021;

  private GoldenSvg() {}

  /** Asserts that a picture looks as the golden one does. */
  static void same(byte[] golden, byte[] now) throws Exception {
    same("/", root(golden), root(now));
  }

  private static Element root(byte[] xml) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(xml)).getDocumentElement();
  }

  private static void same(String where, Element a, Element b) {
    String here = where + "/" + a.getTagName();
    assertThat(b.getTagName()).as(here).isEqualTo(a.getTagName());
    NamedNodeMap attributes = a.getAttributes();
    assertThat(b.getAttributes().getLength()).as(here).isEqualTo(attributes.getLength());
    for (int i = 0; i < attributes.getLength(); i++) {
      Node attribute = attributes.item(i);
      sameText(
          here + "@" + attribute.getNodeName(),
          attribute.getNodeValue(),
          b.getAttribute(attribute.getNodeName()));
    }
    List<Element> as = children(a);
    List<Element> bs = children(b);
    assertThat(bs).as(here).hasSameSizeAs(as);
    if (as.isEmpty()) {
      assertThat(b.getTextContent()).as(here).isEqualTo(a.getTextContent());
    }
    for (int i = 0; i < as.size(); i++) {
      same(here + "[" + i + "]", as.get(i), bs.get(i));
    }
  }

  private static void sameText(String where, String a, String b) {
    assertThat(NUMBER.matcher(b).replaceAll("#"))
        .as(where)
        .isEqualTo(NUMBER.matcher(a).replaceAll("#"));
    Matcher x = NUMBER.matcher(a);
    Matcher y = NUMBER.matcher(b);
    while (x.find() && y.find()) {
      assertThat(Double.parseDouble(y.group()))
          .as(where)
          .isCloseTo(Double.parseDouble(x.group()), within(TOLERANCE));
    }
  }

  private static List<Element> children(Element e) {
    List<Element> out = new ArrayList<>();
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        out.add(child);
      }
    }
    return out;
  }
}

package org.longlow.svg.write;

import java.util.Map;
import java.util.TreeMap;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/**
 * Writes a tree of elements and text as XML, attributes in alphabetical order. Batik's own writer
 * refuses characters outside the basic plane and leaves the order of attributes to a hash table.
 */
final class XmlText {

  private XmlText() {}

  static String of(Element root) {
    StringBuilder out = new StringBuilder();
    append(out, root);
    return out.toString();
  }

  private static void append(StringBuilder out, Element e) {
    out.append('<').append(e.getNodeName());
    Map<String, String> sorted = new TreeMap<>();
    NamedNodeMap attributes = e.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      sorted.put(attributes.item(i).getNodeName(), attributes.item(i).getNodeValue());
    }
    if (e.getParentNode() == e.getOwnerDocument()) {
      sorted.put("xmlns", e.getNamespaceURI());
    }
    sorted.forEach(
        (name, value) -> {
          out.append(' ').append(name).append("=\"");
          escape(out, value);
          out.append('"');
        });
    if (e.getFirstChild() == null) {
      out.append("/>");
      return;
    }
    out.append('>');
    for (Node n = e.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element inner) {
        append(out, inner);
      } else if (n instanceof Text text) {
        escape(out, text.getData());
      }
    }
    out.append("</").append(e.getNodeName()).append('>');
  }

  private static void escape(StringBuilder out, String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '&' -> out.append("&amp;");
        case '"' -> out.append("&quot;");
        default -> out.append(c);
      }
    }
  }
}

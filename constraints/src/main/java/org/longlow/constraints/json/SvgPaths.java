package org.longlow.constraints.json;

import java.awt.geom.AffineTransform;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.batik.parser.AWTTransformProducer;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.TransformListParser;

/** A walk over the paths of an SVG file, without its DTD and entities from outside. */
final class SvgPaths {

  private SvgPaths() {}

  /**
   * What the outermost element says of its size.
   *
   * @param width as written, or null
   * @param height as written, or null
   * @param viewBox as written, or null
   * @param fitted preserveAspectRatio as written, or null
   */
  record Root(String width, String height, String viewBox, String fitted) {}

  /** Takes one path after another. */
  interface Each {

    /**
     * @param id or null
     * @param d path data, or null
     * @param to from the path's units to where the walk began
     * @return whether to go on
     */
    boolean take(String id, String d, AffineTransform to);
  }

  /**
   * Walks.
   *
   * @param first what the units of the file become
   * @throws ParseException at a transform that cannot be read
   * @throws XMLStreamException if it is no XML
   */
  static Root walk(InputStream in, AffineTransform first, Each each) throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setXMLResolver((publicId, systemId, base, name) -> InputStream.nullInputStream());
    XMLStreamReader xml = factory.createXMLStreamReader(in);
    Deque<AffineTransform> transforms = new ArrayDeque<>();
    transforms.push(first);
    Root root = null;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.END_ELEMENT) {
        transforms.pop();
      } else if (event == XMLStreamConstants.START_ELEMENT) {
        if (root == null) {
          root =
              new Root(
                  xml.getAttributeValue(null, "width"),
                  xml.getAttributeValue(null, "height"),
                  xml.getAttributeValue(null, "viewBox"),
                  xml.getAttributeValue(null, "preserveAspectRatio"));
        }
        AffineTransform here = new AffineTransform(transforms.peek());
        String transform = xml.getAttributeValue(null, "transform");
        if (transform != null) {
          here.concatenate(transform(transform));
        }
        transforms.push(here);
        if (xml.getLocalName().equals("path")
            && !each.take(
                xml.getAttributeValue(null, "id"), xml.getAttributeValue(null, "d"), here)) {
          return root;
        }
      }
    }
    return root;
  }

  private static AffineTransform transform(String text) {
    AWTTransformProducer producer = new AWTTransformProducer();
    TransformListParser parser = new TransformListParser();
    parser.setTransformListHandler(producer);
    parser.parse(text);
    return producer.getAffineTransform();
  }
}

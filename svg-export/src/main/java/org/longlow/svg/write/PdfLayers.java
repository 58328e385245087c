package org.longlow.svg.write;

import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;

/**
 * The optional content groups of one PDF: layers with the same title share a group across pages.
 */
final class PdfLayers {

  private final PDOptionalContentProperties properties = new PDOptionalContentProperties();
  private final Map<String, PDOptionalContentGroup> groups = new LinkedHashMap<>();

  PdfLayers(PDDocument document) {
    document.getDocumentCatalog().setOCProperties(properties);
  }

  PDOptionalContentGroup of(Layer layer) {
    String name = Lettering.printable(layer.title().isEmpty() ? layer.id() : layer.title());
    return groups.computeIfAbsent(
        name,
        n -> {
          PDOptionalContentGroup group = new PDOptionalContentGroup(n);
          properties.addGroup(group);
          return group;
        });
  }
}

package org.longlow.svg.write;

import java.io.IOException;
import java.io.OutputStream;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.GregorianCalendar;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;

/**
 * Writes pages as one PDF, straight from the drawing.
 *
 * <p>Media boxes have the exact size of the paper in points, UserUnit is left at 1, print scaling
 * is asked to be off. Words use an embedded font; characters it lacks appear as a square. Layers
 * become optional content, so a reader can switch them.
 */
public final class PdfWriter {

  /** Start value for the document id, in place of the clock. */
  private static final long ID_SEED = 0x4c6f6e676c6f77L;

  private PdfWriter() {}

  /**
   * Writes the pages as one PDF; the stream is flushed, not closed.
   *
   * @throws IllegalArgumentException if there are no pages
   */
  public static void write(List<Page> pages, Palette palette, PdfInfo info, OutputStream out)
      throws IOException {
    if (pages.isEmpty()) {
      throw new IllegalArgumentException("a PDF needs at least one page, got none");
    }
    try (PDDocument document = new PDDocument();
        PdfFont font = new PdfFont(document)) {
      document.setDocumentId(ID_SEED);
      document.setDocumentInformation(information(info));
      PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
      preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
      document.getDocumentCatalog().setViewerPreferences(preferences);
      document.setVersion(1.6f);
      PdfLayers layers = new PdfLayers(document);
      for (Page page : pages) {
        PDPage sheet =
            new PDPage(
                new PDRectangle(
                    (float) (page.paper().widthMm() * PdfPainter.POINTS_PER_MM),
                    (float) (page.paper().heightMm() * PdfPainter.POINTS_PER_MM)));
        document.addPage(sheet);
        try (PDPageContentStream content =
            new PDPageContentStream(document, sheet, AppendMode.OVERWRITE, true)) {
          new PdfPainter(content, font, palette, layers).paint(page);
        }
      }
      document.save(out, CompressParameters.NO_COMPRESSION);
      out.flush();
    }
  }

  private static PDDocumentInformation information(PdfInfo info) {
    PDDocumentInformation out = new PDDocumentInformation();
    out.setProducer(MadeHere.PRODUCER);
    if (!info.title().isEmpty()) {
      out.setTitle(info.title());
    }
    if (!info.author().isEmpty()) {
      out.setAuthor(info.author());
    }
    if (!info.subject().isEmpty()) {
      out.setSubject(info.subject());
    }
    if (info.created() != null) {
      out.setCreationDate(
          GregorianCalendar.from(ZonedDateTime.ofInstant(info.created(), ZoneOffset.UTC)));
    }
    return out;
  }
}

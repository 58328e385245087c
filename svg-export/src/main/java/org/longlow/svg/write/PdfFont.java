package org.longlow.svg.write;

import java.io.IOException;
import java.io.InputStream;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.longlow.svg.drawing.Lettering;

/**
 * The embedded font of one PDF: Liberation Sans, which PDFBox ships; only the characters used are
 * embedded.
 */
final class PdfFont implements AutoCloseable {

  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  /** Stand-ins for a character the font does not have, best first: white square, question mark. */
  private static final int[] STAND_INS = {0x25A1, '?'};

  /** Read files that no PDF needs just now: reading one takes longer than most pages do. */
  private static final Queue<TrueTypeFont> IDLE = new ConcurrentLinkedQueue<>();

  private final TrueTypeFont file;
  private final CmapLookup glyphs;
  private final PDFont font;

  PdfFont(PDDocument document) throws IOException {
    TrueTypeFont idle = IDLE.poll();
    file = idle == null ? read() : idle;
    glyphs = file.getUnicodeCmapLookup();
    font = PDType0Font.load(document, file, true);
  }

  private static TrueTypeFont read() throws IOException {
    try (InputStream in = PDDocument.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IOException("font " + FILE + " is missing from the PDF library");
      }
      TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(in));
      // a ligature would not be as wide as was measured, and looking for them took half of the time
      file.setEnableGsub(false);
      return file;
    }
  }

  PDFont font() {
    return font;
  }

  /** Returns the text with every character the font does not have replaced by one that is seen. */
  String writable(String text) {
    StringBuilder out = new StringBuilder(text.length());
    Lettering.printable(text)
        .codePoints()
        .forEach(c -> out.appendCodePoint(glyphs.getGlyphId(c) != 0 ? c : standIn()));
    return out.toString();
  }

  private int standIn() {
    for (int c : STAND_INS) {
      if (glyphs.getGlyphId(c) != 0) {
        return c;
      }
    }
    throw new IllegalStateException("font has not even a question mark");
  }

  /** Returns the width of text that is {@linkplain #writable writable}, in the unit of the size. */
  double width(String writable, double size) throws IOException {
    return font.getStringWidth(writable) / 1000 * size;
  }

  /** Leaves the file to the next PDF; nothing in it was changed. */
  @Override
  public void close() {
    IDLE.add(file);
  }
}

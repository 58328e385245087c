package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * A sheet of its own before those of a template that leave no room for a {@link CoverBlock}: map,
 * how to print, measure, glue and cut, both bars and the square.
 */
final class CoverSheet {

  private static final double NOTE_MM = 2.4;
  private static final double NOTE_STEP_MM = 4.2;
  private static final double NOTE_GAP_MM = 1.6;

  /** Words may come out a fifth wider in a font other than the intended one. */
  private static final double FONT_RESERVE = 1.2;

  private CoverSheet() {}

  static Page page(TemplatePlan plan) {
    double w = plan.width();
    double h = plan.height();
    int all = plan.sheets().size();
    List<Mark> words = new ArrayList<>();
    String name = plan.part().isBlank() ? "Part without a name" : Lettering.printable(plan.part());
    words.add(line(Lettering.fitted(name, 7, (w - 28) / FONT_RESERVE), 0, h - 9, 7, Tone.INK));
    words.add(
        line(
            "Full-size template, "
                + all
                + " sheets of "
                + plan.settings().paper().label()
                + ". Sheet map and how to put it together.",
            0,
            h - 16,
            2.6,
            Tone.PENCIL));

    boolean inches = plan.settings().lengths().inchBar();
    String measure = ScaleBar.measure(plan.settings().correction());
    List<Mark> bars = new ArrayList<>(ScaleBar.across(0, 0, measure, inches));
    bars.addAll(ScaleBar.along(w - ScaleBar.BLOCK_SHORT_MM, 0, measure, inches));
    double squareY = ScaleBar.BLOCK_SHORT_MM + 4;
    bars.addAll(ScaleBar.square(4, squareY));

    double notesX = ScaleBar.SQUARE_MM + 10;
    double notesWide = w - notesX - ScaleBar.BLOCK_SHORT_MM - 6;
    List<List<String>> notes =
        SheetGuide.notes(plan).stream()
            .map(note -> Lettering.wrapped(note, NOTE_MM, notesWide / FONT_RESERVE))
            .toList();
    double notesHigh =
        NOTE_GAP_MM * (notes.size() - 1)
            + NOTE_STEP_MM * (notes.stream().mapToInt(List::size).sum() - 1)
            + NOTE_MM;
    double top = squareY + Math.max(ScaleBar.SQUARE_MM, notesHigh);
    double y = top - NOTE_MM;
    for (List<String> note : notes) {
      for (String text : note) {
        words.add(line(text, notesX, y, NOTE_MM, Tone.INK));
        y -= NOTE_STEP_MM;
      }
      y -= NOTE_GAP_MM;
    }

    double mapRight = top + 6 < ScaleBar.BLOCK_LONG_MM ? w - ScaleBar.BLOCK_SHORT_MM - 4 : w;
    Envelope mapBox = new Envelope(0, mapRight, top + 6, h - 21);
    SheetMap map = new SheetMap(plan, mapBox);
    words.addAll(
        Compass.marks(
            plan.settings().upWord(), plan.settings().rightWord(), plan.turnRad(), w - 16, h - 10));

    Affine toPage = plan.toPage();
    return new Page(
        plan.part() + ": sheet map",
        plan.settings().paper(),
        List.of(
            new Page.Piece(
                Drawing.of("", new Layer("sheet-map", "Sheet map", map.fields(null))),
                toPage,
                null),
            new Page.Piece(outline(plan.drawing()), map.placement().then(toPage), null),
            new Page.Piece(
                Drawing.of(
                    "",
                    new Layer("sheet-names", "Sheet names", map.names(4)),
                    new Layer("sheet-bars", "Scale bars", bars),
                    new Layer("sheet-notes", "Notes", words)),
                toPage,
                null)));
  }

  /** Returns the shapes only, in thin lines: words and wide strokes would fill a small map. */
  static Drawing outline(Drawing drawing) {
    List<Mark> out = new ArrayList<>();
    for (Layer layer : drawing.layers()) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Shape s) {
          Style style = s.style();
          out.add(
              new Mark.Shape(
                  "",
                  s.geometry(),
                  style.stroke() == null
                      ? style
                      : style.withStroke(style.stroke(), Math.min(style.strokeMm(), 0.18))));
        }
      }
    }
    return Drawing.of("", new Layer("sheet-outline", "Outline", out));
  }

  private static Mark line(String text, double x, double y, double size, Tone tone) {
    return Mark.Words.level(text, x, y, size, Anchor.START, tone);
  }
}

package org.longlow.sketcher.picture;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Page;

/** With what a drawing is printed. */
public enum SheetInk {
  /** As on the card. */
  COLOUR("colour", Palette.CARD),
  /** Black alone, lines told apart by width and type (ISO 128-2), no grey to be screened. */
  BLACK("black", Palette.BLACK);

  /** Paper behind something at least so dense hides what is below, else it lets it through. */
  private static final double COVERS = 0.8;

  private final String word;
  private final Palette palette;

  SheetInk(String word, Palette palette) {
    this.word = word;
    this.palette = palette;
  }

  /** Returns it in a word. */
  public String word() {
    return word;
  }

  /** Returns the ink of a word, if it is one. */
  public static Optional<SheetInk> of(String word) {
    return Arrays.stream(values()).filter(ink -> ink.word.equals(word)).findFirst();
  }

  /** Returns the colours that files are written in. */
  public Palette palette() {
    return palette;
  }

  /** Returns a sheet in this ink. */
  public Page on(Page page) {
    if (this == COLOUR) {
      return page;
    }
    List<Page.Piece> pieces =
        page.pieces().stream()
            .map(p -> new Page.Piece(on(p.drawing()), p.placement(), p.clip()))
            .toList();
    return new Page(page.title(), page.paper(), pieces);
  }

  /** Returns a drawing in this ink. */
  public Drawing on(Drawing drawing) {
    if (this == COLOUR) {
      return drawing;
    }
    return new Drawing(
        drawing.title(),
        drawing.layers().stream()
            .map(
                l ->
                    new Layer(
                        l.id(), l.title(), l.marks().stream().flatMap(SheetInk::black).toList()))
            .toList());
  }

  private static Stream<Mark> black(Mark mark) {
    if (mark instanceof Mark.Shape s) {
      return black(s.style())
          .map(style -> new Mark.Shape(s.subject(), s.geometry(), style))
          .stream()
          .map(Mark.class::cast);
    }
    Mark.Words w = (Mark.Words) mark;
    return Stream.of(
        new Mark.Words(
            w.subject(),
            w.text(),
            w.x(),
            w.y(),
            w.heightMm(),
            w.rotationDeg(),
            w.anchor(),
            Tone.INK));
  }

  /** Returns what a line or area becomes; empty if nothing is left of it. */
  private static Optional<Style> black(Style style) {
    Tone fill = fill(style);
    if (style.stroke() == null) {
      return Optional.ofNullable(fill).map(tone -> Style.area(tone, 1));
    }
    Style line = Style.line(ink(style.stroke()), width(style)).withLine(type(style));
    return Optional.of(fill == null ? line : line.withFill(fill, 1));
  }

  private static Tone ink(Tone tone) {
    return tone == Tone.PAPER ? Tone.PAPER : Tone.INK;
  }

  /** Arrow heads and marks stay solid; areas of a material are told by their edges. */
  private static Tone fill(Style style) {
    if (style.fill() == null || style.fillOpacity() < COVERS) {
      return null;
    }
    return switch (style.fill().use()) {
      case WORDS -> Tone.INK;
      case BACKGROUND -> Tone.PAPER;
      default -> null;
    };
  }

  /** What is found, and the skin that is made, are wide; what is only hinted at is narrow. */
  private static double width(Style style) {
    return switch (style.stroke()) {
      case BAD, CARE, CHOSEN, COWL, SCREEN ->
          style.strokeMm() > Style.NARROW_MM
              ? Math.max(style.strokeMm(), Style.WIDE_MM)
              : style.strokeMm();
      case FAINT, FIGURE -> Math.min(style.strokeMm(), Style.NARROW_MM);
      default -> style.strokeMm();
    };
  }

  /** The person is long-dashed double-dotted, as ISO 128-2 has what is not the thing drawn. */
  private static LineType type(Style style) {
    return style.stroke() == Tone.FIGURE && style.line() == LineType.CONTINUOUS
        ? LineType.DOUBLE_CHAIN
        : style.line();
  }
}

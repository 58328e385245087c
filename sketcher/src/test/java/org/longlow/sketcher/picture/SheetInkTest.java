package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.write.SvgWriter;

/** Drawings in black alone: what colour told apart, lines do. */
class SheetInkTest {

  private static final DimensionedElevation.Sheet COLOUR =
      ViewSheets.sheet(
          Shipped.study("heron"),
          PictureOptions.PLAIN,
          new Views(Views.Kind.ALL, Views.Projection.FIRST_ANGLE),
          Optional.empty(),
          Paper.A3,
          "");
  private static final DimensionedElevation.Sheet BLACK = COLOUR.in(SheetInk.BLACK);

  private static List<Mark.Shape> shapes(Page page, Tone stroke) {
    return page.layers().stream()
        .flatMap(l -> l.marks().stream())
        .filter(Mark.Shape.class::isInstance)
        .map(Mark.Shape.class::cast)
        .filter(s -> s.style().stroke() == stroke)
        .toList();
  }

  private static List<String> words(Page page) {
    return page.layers().stream()
        .flatMap(l -> l.marks().stream())
        .filter(Mark.Words.class::isInstance)
        .map(m -> ((Mark.Words) m).text())
        .toList();
  }

  @Test
  void aFileHasNoColourAndNoGrey() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(BLACK.page(), BLACK.ink().palette(), out);
    String svg = out.toString(StandardCharsets.UTF_8);
    Set<String> colours = new TreeSet<>();
    Matcher m = Pattern.compile("#[0-9a-fA-F]{6}").matcher(svg);
    while (m.find()) {
      colours.add(m.group());
    }
    assertThat(colours).containsExactly("#000000", "#ffffff");
    assertThat(svg).doesNotContain("opacity");
  }

  @Test
  void nothingThatIsWrittenAndNoLineIsLost() {
    assertThat(words(BLACK.page())).isEqualTo(words(COLOUR.page()));
    long lines = 0;
    for (Tone tone : Tone.values()) {
      lines += tone == Tone.PAPER ? 0 : shapes(COLOUR.page(), tone).size();
    }
    assertThat(shapes(BLACK.page(), Tone.INK)).hasSize((int) lines);
  }

  @Test
  void peopleAreDoubleDottedAndSkinsAreWide() {
    List<Mark.Shape> before = with(shapes(COLOUR.page(), Tone.FIGURE), "person:");
    long drawnThrough = count(before, LineType.CONTINUOUS);
    assertThat(drawnThrough).isGreaterThan(10);
    List<Mark.Shape> after = with(shapes(BLACK.page(), Tone.INK), "person:");
    assertThat(count(after, LineType.DOUBLE_CHAIN))
        .isEqualTo(drawnThrough + count(before, LineType.DOUBLE_CHAIN));
    long skins =
        shapes(COLOUR.page(), Tone.COWL).stream()
            .filter(s -> s.style().strokeMm() > Style.NARROW_MM)
            .count();
    assertThat(skins).isPositive();
    assertThat(shapes(BLACK.page(), Tone.INK).stream())
        .filteredOn(s -> s.style().strokeMm() == Style.WIDE_MM)
        .hasSizeGreaterThanOrEqualTo((int) skins);
  }

  private static long count(List<Mark.Shape> shapes, LineType type) {
    return shapes.stream().filter(s -> s.style().line() == type).count();
  }

  private static List<Mark.Shape> with(List<Mark.Shape> shapes, String subject) {
    return shapes.stream().filter(s -> s.subject().startsWith(subject)).toList();
  }

  @Test
  void inColourAllStays() {
    assertThat(COLOUR.in(SheetInk.COLOUR).page()).isSameAs(COLOUR.page());
  }
}

package org.longlow.sketcher.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.picture.DimensionedElevation;
import org.longlow.sketcher.picture.OverlayPicture;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.SheetInk;
import org.longlow.sketcher.picture.Shipped;
import org.longlow.sketcher.picture.ViewSheets;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;
import org.longlow.svg.page.TemplateSettings;

/**
 * Every sheet of the shipped machines, as painted: what is painted later over something in paper
 * hides it, all else is seen. No line, hatching of a glue strip or other word runs through words,
 * or through a bar to measure by. Words and maps alone take no sheet.
 */
class ReadableSheetsTest {

  /** Something painted, in order. */
  private record Ink(int order, String layer, Mark mark, Envelope box) {}

  static Stream<Arguments> papers() {
    return Shipped.sample()
        .flatMap(
            machine ->
                Stream.of(Paper.A4, Paper.LETTER).map(paper -> Arguments.of(machine, paper)));
  }

  @ParameterizedTest
  @MethodSource("papers")
  void noLineRunsThroughWordsOrBars(String machine, Paper paper) {
    TemplateSettings settings = TemplateSettings.on(paper);
    TemplateSet set =
        TemplateSet.of(Shipped.study(machine), Set.of(), settings, StepWatch.NONE).orElseThrow();
    List<String> faults = new ArrayList<>();
    for (Page page : set.pages()) {
      look(page, faults);
      if (page.layers().stream().noneMatch(l -> l.id().equals("outline"))) {
        faults.add(page.title() + ": nothing on it is cut");
      }
    }
    assertThat(faults).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("org.longlow.sketcher.picture.Shipped#sample")
  void noLineRunsThroughDimensions(String machine) {
    for (Paper paper : List.of(Paper.A4.turned(), Paper.A3.turned(), Paper.TABLOID.turned())) {
      for (SheetInk ink : SheetInk.values()) {
        DimensionedElevation.Sheet sheet =
            ViewSheets.elevation(Shipped.study(machine), PictureOptions.PLAIN, paper, "");
        List<String> faults = new ArrayList<>();
        look(sheet.in(ink).page(), faults);
        assertThat(faults).as(paper.name() + " " + ink).isEmpty();
      }
    }
  }

  /** With all that is said of two machines that have little in common. */
  @Test
  void aComparisonIsReadWhole() {
    Study before = Shipped.study("curlew");
    Study after = Shipped.study("dunlin");
    List<String> lines =
        ComparisonSheet.lines(
            List.of("a".repeat(200), "dunlin"), Comparison.of(before, after), Units.MM);
    for (Paper paper : List.of(Paper.A3, Paper.A4)) {
      Page page = OverlayPicture.sheet(before, after, lines, Optional.empty(), paper, "").page();
      List<String> faults = new ArrayList<>();
      look(page, faults);
      assertThat(faults).as(paper.name()).isEmpty();
      assertThat(words(page)).noneMatch(w -> w.contains("…"));
    }
  }

  /** What comes too close as it is steered is told without a smaller scale. */
  @Test
  void ringsAreToldOverTheMachine() {
    PictureOptions bram = PictureOptions.PLAIN.withPerson("Bram");
    DimensionedElevation.Sheet sheet =
        ViewSheets.elevation(Shipped.study("heron"), bram, Paper.A3, "");
    assertThat(sheet.scale()).isEqualTo(Scale.oneTo(10));
    assertThat(words(sheet.page())).anyMatch(w -> w.startsWith("steered, bars and a limb of Bram"));
    List<String> faults = new ArrayList<>();
    look(sheet.page(), faults);
    assertThat(faults).isEmpty();
  }

  private static List<String> words(Page page) {
    return page.layers().stream()
        .flatMap(l -> l.marks().stream())
        .filter(Mark.Words.class::isInstance)
        .map(m -> ((Mark.Words) m).text())
        .toList();
  }

  private static void look(Page page, List<String> faults) {
    List<Ink> inks = new ArrayList<>();
    for (Layer layer : page.layers()) {
      for (Mark mark : layer.marks()) {
        Envelope box =
            mark instanceof Mark.Words w
                ? w.boxMm()
                : ((Mark.Shape) mark).geometry().getEnvelopeInternal();
        inks.add(new Ink(inks.size(), layer.id(), mark, box));
      }
    }
    List<Ink> paper = inks.stream().filter(i -> isPaper(i.mark()) && hides(i.mark())).toList();
    for (Ink at : inks) {
      boolean bar = at.layer().equals("sheet-bars");
      if (isTick(at)) {
        inks.stream()
            .filter(i -> i.layer().equals("sheet-strips") || i.mark() instanceof Mark.Words)
            .filter(i -> i.box().intersects(at.box()))
            .filter(i -> over(i.mark()).intersects(((Mark.Shape) at.mark()).geometry()))
            .forEach(i -> faults.add(page.title() + ": a tick is under " + i.layer()));
      }
      if (!bar && !(at.mark() instanceof Mark.Words)) {
        continue;
      }
      Geometry body = body(at.mark());
      for (Ink other : inks) {
        if (other == at
            || other.layer().equals(at.layer()) && bar
            || other.layer().equals("sheet-map") && at.layer().equals("sheet-names")
            || isPaper(other.mark())
            || !other.box().intersects(body.getEnvelopeInternal())) {
          continue;
        }
        if (other.mark() instanceof Mark.Words && other.order() < at.order() && !bar) {
          continue; // told once
        }
        if (at.layer().equals("sheet-names") && other.layer().startsWith("sheet-outline")) {
          continue; // the small map
        }
        Geometry seen = over(other.mark()).intersection(body);
        for (Ink hides : paper) {
          if (hides.order() > other.order() && !seen.isEmpty()) {
            seen = seen.difference(((Mark.Shape) hides.mark()).geometry());
          }
        }
        if (!seen.isEmpty() && seen.getLength() > 0.05) {
          faults.add(
              page.title()
                  + ": "
                  + (bar ? "bar" : at.layer() + " '" + ((Mark.Words) at.mark()).text() + "'")
                  + " under "
                  + other.layer()
                  + (other.mark() instanceof Mark.Words w ? " '" + w.text() + "'" : ""));
        }
      }
    }
  }

  /** Ticks of datum lines are 5 mm long. */
  private static boolean isTick(Ink ink) {
    return ink.layer().equals("stations")
        && ink.mark() instanceof Mark.Shape s
        && s.geometry().getLength() < 6;
  }

  private static Geometry over(Mark mark) {
    return mark instanceof Mark.Words ? body(mark) : line(mark);
  }

  private static boolean isPaper(Mark mark) {
    return mark instanceof Mark.Shape s && s.style().fill() == Tone.PAPER;
  }

  private static boolean hides(Mark mark) {
    return ((Mark.Shape) mark).style().fillOpacity() == 1;
  }

  /** A line as it is stroked; a filled area as it is. */
  private static Geometry line(Mark mark) {
    Mark.Shape s = (Mark.Shape) mark;
    return s.style().fill() != null || s.geometry().getDimension() < 2
        ? s.geometry()
        : s.geometry().getBoundary();
  }

  /** What words or a bar take: capitals from the base line up, a little less all round. */
  private static Geometry body(Mark mark) {
    if (mark instanceof Mark.Shape s) {
      return Planar.rectangle(s.geometry().getEnvelopeInternal());
    }
    Mark.Words w = (Mark.Words) mark;
    double air = 0.05 * w.heightMm();
    double left = -w.anchor().along() * w.widthMm();
    double low = -w.anchor().up() * w.heightMm();
    Geometry flat =
        Planar.rectangle(left + air, low + air, left + w.widthMm() - air, low + w.heightMm() - air);
    AffineTransformation t = AffineTransformation.rotationInstance(Math.toRadians(w.rotationDeg()));
    t.translate(w.x(), w.y());
    return t.transform(flat);
  }
}

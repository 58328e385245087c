package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.Aspect;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.Shipped;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;

/** The machine on the wall is told with the size of all that is drawn, and nothing is cut by it. */
class WholeViewTest {

  @Test
  @Tag("long")
  void aTapeIsHeldAgainstAllThatIsDrawn() {
    TemplateSettings settings = TemplateSettings.on(Paper.A0);
    NamedDrawing whole =
        WholeView.of(
            Shipped.study("dunlin"), PictureOptions.PLAIN.withAspect(Aspect.FRONT), settings);
    Envelope box = lines(whole);
    // somebody of about 1.2 m above the road sits on it
    assertThat(box.getHeight()).isBetween(1000.0, 1500.0);
    String words =
        whole.sheets(settings).stream().map(WholeViewTest::words).collect(Collectors.joining(" "));
    assertThat(words)
        .contains("all that is drawn is")
        .contains(String.format(java.util.Locale.ROOT, "%.1f mm high", box.getHeight()))
        .doesNotContain("The line stays")
        .doesNotContain("line to cut");
  }

  @Test
  void roadAndSightLineNeedNoPaper() {
    Study study = Shipped.study("curlew");
    TemplateSettings settings = TemplateSettings.on(Paper.A0);
    NamedDrawing whole = WholeView.of(study, PictureOptions.PLAIN, settings);
    Envelope machine = new Envelope();
    study
        .shapes()
        .values()
        .forEach(s -> machine.expandToInclude(s.outline().getEnvelopeInternal()));
    // axes run a few mm past the tyres
    assertThat(lines(whole).getWidth()).isBetween(machine.getWidth(), machine.getWidth() + 60);
    assertThat(whole.sheets(settings))
        .hasSize(6); // 1647 mm high, and two of A0 on their sides hold 1632
  }

  private static Envelope lines(NamedDrawing whole) {
    Envelope box = new Envelope();
    whole.drawing().layers().stream()
        .flatMap(layer -> layer.marks().stream())
        .filter(mark -> mark instanceof Mark.Shape s && s.style().stroke() != null)
        .forEach(mark -> box.expandToInclude(((Mark.Shape) mark).geometry().getEnvelopeInternal()));
    return box;
  }

  private static String words(Page page) {
    return page.pieces().stream()
        .flatMap(piece -> piece.drawing().layers().stream())
        .flatMap(layer -> layer.marks().stream())
        .filter(Mark.Words.class::isInstance)
        .map(mark -> ((Mark.Words) mark).text())
        .collect(Collectors.joining(" "));
  }
}

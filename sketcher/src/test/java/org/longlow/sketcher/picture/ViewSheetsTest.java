package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;

/** Front view, plan and the three in line, measured on the sheet against the layout's figures. */
class ViewSheetsTest {

  private static final Study PLOVER = Study.of(Plover.layout());
  private static final Page FIRST = page(Views.Kind.ALL, Views.Projection.FIRST_ANGLE);

  private static Page page(Views.Kind kind, Views.Projection projection) {
    return ViewSheets.sheet(
            PLOVER,
            PictureOptions.PLAIN.withAsDrawn(),
            new Views(kind, projection),
            Optional.of(Scale.oneTo(20)),
            Paper.A2,
            "")
        .page();
  }

  /** Returns the box round what is drawn of a subject on layers of a view, paper mm. */
  private static Envelope box(Page page, Predicate<String> layers, String subject) {
    Envelope box = new Envelope();
    for (Mark.Shape s : shapes(page, layers)) {
      if (s.subject().equals(subject)) {
        box.expandToInclude(s.geometry().getEnvelopeInternal());
      }
    }
    return box;
  }

  private static List<Mark.Shape> shapes(Page page, Predicate<String> layers) {
    return page.layers().stream()
        .filter(l -> layers.test(l.id()))
        .flatMap(l -> l.marks().stream())
        .filter(Mark.Shape.class::isInstance)
        .map(Mark.Shape.class::cast)
        .toList();
  }

  private static Predicate<String> of(String view) {
    return id ->
        id.startsWith(view + "-")
            && !id.endsWith("-dimensions")
            && !id.endsWith("-axes")
            && !id.endsWith("-ground");
  }

  @Test
  void gripsAreAsBroadAsTheLayoutSays() {
    Layout layout = PLOVER.layout();
    Places places = PLOVER.placed().places();
    List<RestPart> grips =
        layout.parts(RestPart.class).filter(r -> r.type() == RestPart.Kind.GRIP).toList();
    assertThat(grips).isNotEmpty();
    for (RestPart grip : grips) {
      double broad = 2 * (places.value(grip.y()) + places.value(grip.length()) / 2);
      String subject = "part:" + grip.name();
      assertThat(box(FIRST, of("front"), subject).getWidth()).isCloseTo(broad / 20, within(0.02));
      assertThat(box(FIRST, of("plan"), subject).getHeight()).isCloseTo(broad / 20, within(0.02));
    }
  }

  @Test
  void viewsShareScaleRoadAndRearContact() {
    String wheel = "part:" + PLOVER.layout().wheel(Part.End.FRONT).get().name();
    Envelope side = box(FIRST, id -> id.equals("wheels"), wheel);
    Envelope front = box(FIRST, of("front"), wheel);
    Envelope plan = box(FIRST, of("plan"), wheel);
    assertThat(front.getMinY()).isCloseTo(side.getMinY(), within(0.02));
    assertThat(front.getMaxY()).isCloseTo(side.getMaxY(), within(0.02));
    assertThat(plan.getMaxX()).isCloseTo(side.getMaxX(), within(0.02));
    assertThat(plan.getHeight()).isCloseTo(front.getWidth(), within(0.02));
  }

  @Test
  void frontViewAndPlanStandWhereTheProjectionSays() {
    Envelope side = all(FIRST, id -> id.equals("wheels"));
    assertThat(all(FIRST, of("front")).getMaxX()).isLessThan(side.getMinX());
    assertThat(all(FIRST, of("plan")).getMaxY()).isLessThan(side.getMinY());
    Page third = page(Views.Kind.ALL, Views.Projection.THIRD_ANGLE);
    Envelope there = all(third, id -> id.equals("wheels"));
    assertThat(all(third, of("front")).getMinX()).isGreaterThan(there.getMaxX());
    assertThat(all(third, of("plan")).getMinY()).isGreaterThan(there.getMaxY());
  }

  private static Envelope all(Page page, Predicate<String> layers) {
    Envelope box = new Envelope();
    shapes(page, layers).forEach(s -> box.expandToInclude(s.geometry().getEnvelopeInternal()));
    return box;
  }

  @Test
  void hiddenEdgesAreNarrowAndDashed() {
    List<Mark.Shape> hidden = shapes(FIRST, id -> id.endsWith("-hidden"));
    assertThat(hidden).isNotEmpty();
    assertThat(hidden)
        .allMatch(s -> s.style().line() == LineType.DASHED)
        .allMatch(s -> s.style().strokeMm() == Canvas.FINE_MM);
  }

  /** Pieces of bodies go round curves; the outlines of the elevation do not. */
  @ParameterizedTest
  @ValueSource(strings = {"heron", "dunlin", "curlew"})
  void planAndElevationSayOneLength(String machine) {
    List<String> said =
        Stream.of(Views.Kind.SIDE, Views.Kind.PLAN)
            .map(kind -> new Views(kind, Views.Projection.FIRST_ANGLE))
            .flatMap(views -> lengths(Shipped.study(machine), views))
            .toList();
    assertThat(said).hasSize(2);
    assertThat(said.get(1)).isEqualTo(said.get(0));
  }

  private static Stream<String> lengths(Study study, Views views) {
    Paper paper = Paper.A3.turned();
    return ViewSheets.sheet(study, PictureOptions.PLAIN, views, Optional.empty(), paper, "")
        .page()
        .layers()
        .stream()
        .flatMap(l -> l.marks().stream())
        .filter(Mark.Words.class::isInstance)
        .map(m -> ((Mark.Words) m).text())
        .filter(t -> t.startsWith("length "));
  }
}

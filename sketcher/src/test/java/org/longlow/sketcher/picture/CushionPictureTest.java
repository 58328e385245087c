package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.SeatFindings;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.study.Study;
import org.longlow.rider.seat.CushionLoad;
import org.longlow.rider.words.Decimals;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.desk.Wren;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.write.SvgWriter;

/** A cushion cut through shows what the study found, to scale, and no words on other words. */
class CushionPictureTest {

  private static final Study WREN = Study.of(Wren.layout());

  private static CushionStack stack(String cushion) {
    return CushionStack.of(WREN, cushion).orElseThrow();
  }

  private static List<Mark.Words> words(Drawing drawing) {
    return drawing.layers().stream()
        .flatMap(layer -> layer.marks().stream())
        .filter(Mark.Words.class::isInstance)
        .map(Mark.Words.class::cast)
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"pan", "back"})
  void whatIsShownIsWhatTheStudyFound(String cushion) {
    CushionStack stack = stack(cushion);
    assertThat(stack.loads()).extracting(CushionStack.Load::who).containsExactly("Mara", "Tor");
    List<String> said =
        words(CushionPicture.of(stack, 140, 2, 0)).stream().map(Mark.Words::text).toList();
    for (CushionStack.Load load : stack.loads()) {
      Finding finding =
          WREN.findings().stream()
              .filter(f -> f.kind().equals(SeatFindings.SINK))
              .filter(f -> f.about().who().orElseThrow().person().equals(load.who()))
              .filter(f -> f.about().parts().equals(List.of(cushion)))
              .findFirst()
              .orElseThrow();
      CushionLoad carried = load.carried().orElseThrow();
      assertThat(load.verdict()).isEqualTo(finding.verdict());
      assertThat(carried.safeSinkMm()).isEqualTo(finding.figures().value());
      // the sentence of the finding, word for word as the picture has it
      assertThat(finding.text())
          .contains(
              "likely sink %s; design sink %s, leaves %s, %s."
                  .formatted(
                      mm(carried.sinkMm()),
                      mm(carried.safeSinkMm()),
                      mm(carried.remainingMm()),
                      load.says()));
      assertThat(said)
          .contains(mm(carried.sinkMm()), mm(carried.safeSinkMm()), mm(carried.remainingMm()))
          .contains(load.verdict().says());
      double sum = carried.layers().layers().stream().mapToDouble(l -> l.sinkMm()).sum();
      assertThat(sum).as(load.who()).isCloseTo(carried.safeSinkMm(), within(0.05));
    }
  }

  /** A figure with one decimal or none, written another way than the picture's. */
  private static String mm(double value) {
    return new java.text.DecimalFormat(
                "0.#", java.text.DecimalFormatSymbols.getInstance(java.util.Locale.ROOT))
            .format(value)
        + " mm";
  }

  @Test
  void anInchMachineHasNoMillimetresOnItsBench() {
    Layout inches = Change.set(Wren.layout(), Units.IN, "units");
    CushionStack stack = CushionStack.of(Study.of(inches), "pan").orElseThrow();
    List<String> said =
        words(CushionPicture.of(stack, 140, 2, 0)).stream().map(Mark.Words::text).toList();
    assertThat(said).noneMatch(t -> t.matches(".*\\d (mm|kPa|N|kg).*|.*, mm.*"));
    assertThat(said)
        .filteredOn(t -> t.contains("lb/ft"))
        .hasSameSizeAs(stack.layers())
        .allMatch(t -> t.matches(".*, factor \\d.*[^\u2026]"));
    CushionLoad carried = stack.loads().get(0).carried().orElseThrow();
    // 40 and 25 mm of foam; a pressure of 6.894757 kPa is 1 psi
    assertThat(said)
        .contains("1.57 in", "0.98 in")
        .contains(
            Decimals.upTo(2, carried.peakKPa() / 6.894757293168) + " psi",
            Decimals.upTo(2, carried.safeSinkMm() / 25.4) + " in");
  }

  @Test
  void heightsAreToScaleAndPressedLayersAreLowerByTheirSink() {
    CushionStack stack = stack("pan");
    Drawing drawing = CushionPicture.of(stack, 140, 2, -1);
    List<Envelope> top = boxes(drawing, "layer:0");
    List<Envelope> base = boxes(drawing, "layer:1");
    assertThat(base.get(0).getMinY()).isZero();
    assertThat(base.get(0).getHeight()).isCloseTo(40, within(1e-9));
    assertThat(top.get(0).getMinY()).isCloseTo(40, within(1e-9));
    assertThat(top.get(0).getHeight()).isCloseTo(25, within(1e-9));
    for (int i = 0; i < 2; i++) {
      var layers = stack.loads().get(i).carried().orElseThrow().layers().layers();
      assertThat(base.get(i + 1).getHeight()).isCloseTo(40 - layers.get(1).sinkMm(), within(1e-9));
      assertThat(top.get(i + 1).getHeight()).isCloseTo(25 - layers.get(0).sinkMm(), within(1e-9));
    }
    assertThat(boxes(drawing, "board").get(0).getMaxY()).isZero();
  }

  /** The boxes of what is filled, once each, from left to right. */
  private static List<Envelope> boxes(Drawing drawing, String subject) {
    return drawing.layers().stream()
        .flatMap(layer -> layer.marks().stream())
        .filter(m -> m.subject().equals(subject))
        .filter(m -> m instanceof Mark.Shape s && s.style().fill() != null)
        .map(m -> ((Mark.Shape) m).geometry().getEnvelopeInternal())
        .distinct()
        .toList();
  }

  /** A crew of so many, from small to large, with one name longer than its room. */
  static Study crew(int people) {
    Map<String, Person> crew = new LinkedHashMap<>();
    Person first = Wren.layout().crew().values().iterator().next();
    for (int i = 0; i < people; i++) {
      String name = i == 3 ? "Wilhelmina Featherstone" : "P" + i;
      crew.put(
          name,
          new Person(
              name,
              first.sex(),
              Formula.parse(1560 + 60 * i + " mm"),
              Formula.parse(52 + 13 * i + " kg"),
              first.measured(),
              first.seats(),
              first.helmet(),
              first.boots(),
              first.clothes()));
    }
    Layout layout = Change.set(Wren.layout(), crew, "crew");
    return Study.of(layout);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 5, 9})
  void noWordsLieOnOthersHoweverManySitThere(int people) {
    CushionStack stack = CushionStack.of(crew(people), "pan").orElseThrow();
    assertThat(stack.loads()).hasSize(people);
    for (double width : new double[] {130, 200}) {
      double n = 2;
      Drawing drawing = CushionPicture.of(stack, width, n, 1);
      List<Envelope> taken = new ArrayList<>();
      for (Mark.Words word : words(drawing)) {
        Envelope box = Labels.box(word, n);
        box.expandBy(-0.25 * n);
        assertThat(Labels.free(box, taken)).as(word.text() + " at " + width).isTrue();
        assertThat(box.getMaxX()).isLessThan((width - CushionPicture.NAMES_MM) * n);
        taken.add(box);
      }
    }
  }

  @Test
  void whoDoesNotLeanOnItOrCannotSitIsSaidSo() {
    assertThat(CushionStack.of(WREN, "rail")).isEmpty();
    Layout noPegs = Entries.without(Wren.layout(), new Entries.Entry("parts", "pegs")).layout();
    CushionStack.Load hanging =
        CushionStack.of(Study.of(noPegs), "pan").orElseThrow().loads().get(0);
    assertThat(hanging.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(hanging.says()).startsWith("cannot sit: ").contains("nowhere to put the feet");
    CushionStack.Load nobody =
        new CushionStack.Load(
            "Ada", Verdict.NOT_APPLICABLE, java.util.Optional.empty(), "does not lean on it");
    CushionStack stack = stack("pan");
    Drawing drawing =
        CushionPicture.of(
            new CushionStack("head", Units.MM, 9, stack.layers(), List.of(nobody)), 140, 2, -1);
    List<String> said = words(drawing).stream().map(Mark.Words::text).toList();
    assertThat(said).contains("does not apply", "Ada: does not lean on it.");
    assertThat(said.stream().filter("-"::equals)).hasSize(5);
    assertThat(boxes(drawing, "layer:0").get(1).getHeight()).isCloseTo(25, within(1e-9));
  }

  static LongStream seeds() {
    return LongStream.range(0, 20);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void labelsComeApartAsLittleAsTheyMust(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Double> wanted = new ArrayList<>();
    double y = 100;
    for (int i = 0; i < 8; i++) {
      wanted.add(y);
      y -= random.nextDouble(0, 12);
    }
    List<Double> at = CushionPicture.spread(wanted, 5);
    double middle = 0;
    for (int i = 0; i < 8; i++) {
      middle += at.get(i) - wanted.get(i);
      if (i > 0) {
        assertThat(at.get(i - 1) - at.get(i)).isGreaterThan(5 - 1e-9);
        boolean far = wanted.get(i - 1) - wanted.get(i) > 5;
        boolean touching = at.get(i - 1) - at.get(i) < 5 + 1e-9;
        assertThat(far || touching).as("moved no farther than asked").isTrue();
      }
    }
    assertThat(middle).as("each block keeps its middle").isCloseTo(0, within(1e-9));
  }

  private static byte[] svg() throws IOException {
    Drawing drawing = CushionPicture.of(stack("pan"), 140, 2, 1);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(Page.round(drawing.scaled(0.5), 4), Palette.CARD, out);
    return out.toByteArray();
  }

  /** Look at the picture before it is accepted with {@code -Dgolden.update=true}. */
  @Test
  void thePanOfTheSmallMachineLooksAsItDid() throws Exception {
    if (Boolean.getBoolean("golden.update")) {
      Files.write(Path.of("src/test/resources/org/longlow/sketcher/picture/cushion.svg"), svg());
    }
    try (InputStream golden = CushionPictureTest.class.getResourceAsStream("cushion.svg")) {
      assertThat(golden).as("accepted picture").isNotNull();
      GoldenSvg.same(golden.readAllBytes(), svg());
    }
  }
}

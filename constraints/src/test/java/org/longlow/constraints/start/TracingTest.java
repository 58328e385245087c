package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/** The drive of a first machine by an outline that somebody traced. */
class TracingTest {

  /** An L: 400 long, its rear half 150 high and its front half 300; one of its units is 0.5 mm. */
  private static final String CASE = "M 20 600 L 820 600 L 820 0 L 420 0 L 420 300 L 20 300 Z";

  @TempDir Path folder;

  private String svg(String size, String paths) throws IOException {
    Path file = folder.resolve("engine.svg");
    Files.writeString(
        file,
        "<svg xmlns='http://www.w3.org/2000/svg' "
            + size
            + " viewBox='0 0 1000 800'>"
            + paths
            + "</svg>");
    return file.toString();
  }

  private String engine() throws IOException {
    return svg(
        "width='500mm' height='400mm'",
        "<path id='lid' d='M 0 0 L 10 10'/><path id='case' d='" + CASE + "'/>");
  }

  private static AnswerReader.Reading read(Map<Question, String> said) {
    return AnswerReader.read(said);
  }

  private static Map<Question, String> said(String tracing, String... more) {
    Map<Question, String> said = new EnumMap<>(Question.class);
    said.put(Question.TRACING, tracing);
    for (int i = 0; i < more.length; i += 2) {
      said.put(Question.of(more[i]).orElseThrow(), more[i + 1]);
    }
    return said;
  }

  @Test
  void measuresAreThoseOfTheFigure() throws IOException {
    AnswerReader.Reading reading = read(said(engine() + "#case"));
    assertThat(reading.faults()).isEmpty();
    Tracing tracing = reading.answers().tracing().orElseThrow();
    assertThat(tracing.lengthMm()).isCloseTo(400, within(1e-6));
    assertThat(tracing.heightMm()).isCloseTo(300, within(1e-6));
    assertThat(tracing.frontMm(100)).isCloseTo(400, within(1e-6));
    assertThat(tracing.corners()).hasSize(6).contains(new PointMm(0, 0), new PointMm(200, 150));
    // low is what is under 180 mm
    assertThat(tracing.lowRearMm()).isCloseTo(200, within(1e-6));
    assertThat(tracing.drawn()).hasSize(6);
  }

  /** A slope from 0 at the rear to 300 at the front is 180 high at 240, and a peak at its rear. */
  @Test
  void whatIsLowAndWhereItsFrontIsFollowItsEdge() {
    Tracing slope =
        Tracing.of(List.of(new PointMm(7, 2), new PointMm(407, 2), new PointMm(407, 302)), 1);
    assertThat(slope.lowRearMm()).isCloseTo(240, within(1e-9));
    assertThat(slope.frontMm(150)).isEqualTo(400);
    Tracing back =
        Tracing.of(List.of(new PointMm(0, 0), new PointMm(100, 0), new PointMm(0, 300)), 1);
    assertThat(back.lowRearMm()).isZero();
    assertThat(back.frontMm(150)).isCloseTo(50, within(1e-9));
    assertThat(back.frontMm(900)).isEqualTo(100);
    Tracing peak =
        Tracing.of(List.of(new PointMm(0, 0), new PointMm(400, 0), new PointMm(100, 300)), 1);
    // its rear edge is at 180 mm 60 mm from the rear
    assertThat(peak.lowRearMm()).isCloseTo(60, within(1e-9));
  }

  @Test
  void theBoxSaysHowLongItIs() throws IOException {
    AnswerReader.Reading reading =
        read(said(engine() + "#case", "box", "360 x 270 x 300 mm, 40 kg"));
    assertThat(reading.faults()).isEmpty();
    assertThat(reading.answers().tracing().orElseThrow().lengthMm()).isCloseTo(360, within(1e-6));
    assertThat(read(said(engine() + "#case", "box", "400 x 220 x 300 mm, 40 kg")).faults())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.path()).isEqualTo("tracing");
              assertThat(f.message())
                  .isEqualTo("is 300 mm high where it is 400 mm long, and the box 220 mm");
            });
    assertThat(read(said(engine() + "#case", "box", "400 x 296 x 300 mm, 40 kg")).faults())
        .isEmpty();
    assertThat(read(said(engine() + "#case", "box", "400 x 290 x 300 mm, 40 kg")).faults())
        .hasSize(1);
  }

  @ParameterizedTest
  @CsvSource({
    "before, engine",
    "under, engine",
    "behind, engine",
    "before, motor",
    "behind, motor"
  })
  void aMachineIsMadeRoundIt(String place, String drive) throws IOException {
    Map<Question, String> said = said(engine() + "#case", "place", place, "drive", drive);
    FirstMachine.Outcome outcome = FirstMachine.of(read(said).answers());
    assertThat(outcome).isInstanceOf(FirstMachine.Made.class);
    FirstMachine.Made made = (FirstMachine.Made) outcome;
    Study study = made.study();
    assertThat(study.placed().report().status()).isEqualTo(SolveStatus.SOLVED);
    assertThat(study.failing()).as(made.yours().toString()).isZero();
    assertThat(made.yours().get(0))
        .startsWith("That the " + drive + " is ")
        .endsWith("kg is a guess: measure and weigh yours.");
    PartShape shape = study.shapes().get(drive);
    Geometry drawn = shape.outline();
    assertThat(drawn.getArea()).isCloseTo(200 * 150 + 200 * 300, within(1.0));
    assertThat(drawn.getEnvelopeInternal().getWidth()).isCloseTo(400, within(0.1));
    if (drive.equals("engine")) {
      Part header = study.layout().parts().get("header");
      assertThat(study.shapes().get(header.name()).outline().distance(drawn)).isZero();
    }
  }

  @Test
  void whatCannotBeTracedIsSaid() throws IOException {
    String file = engine();
    says(read(said(file)), "is a line that does not close");
    says(read(said(file + "#cas")), "has no path \"cas\"");
    says(read(said(folder.resolve("none.svg").toString())), "none.svg");
    says(read(said(folder.toString())), "is a folder");
    says(read(said(" ")), "is no name for a file");
    String loose = svg("", "<path d='" + CASE + "'/>");
    says(read(said(loose)), "does not say how large it is");
    assertThat(read(said(loose, "box", "400 x 300 x 300 mm, 40 kg")).faults()).isEmpty();
    says(
        read(said(svg("width='500mm'", "<path d='M 0 0 L 800 600 L 800 0 L 0 600 Z'/>"))),
        "crosses itself");
    says(read(said(svg("width='5000mm'", "<path d='" + CASE + "'/>"))), "is not 100 to 560 mm");
    says(
        read(said(engine() + "#case", "place", "hub", "drive", "motor")),
        "is of no motor in a hub");
  }

  private static void says(AnswerReader.Reading reading, String words) {
    assertThat(reading.faults()).isNotEmpty();
    assertThat(reading.faults()).extracting(Fault::path).contains("tracing");
    assertThat(reading.faults()).extracting(Fault::line).anyMatch(l -> l.contains(words));
  }
}

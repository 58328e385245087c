package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.gap.LockFindings;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Comfort;
import org.longlow.sketcher.picture.Shipped;

/** {@code longlow place}, on the shipped two-seater with its rider's seat spoiled. */
class PlaceCommandTest {

  @TempDir Path folder;

  private Path save(Layout layout) throws IOException {
    return Files.writeString(folder.resolve("bad.json"), LayoutWriter.toJson(layout));
  }

  private List<String> left() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  /** Seat forward, foot rests back and up, grips low: as far as ties and limits let them go. */
  private static Layout spoiled(Layout layout) {
    Study study = Study.of(layout);
    SeatParts seat = SeatParts.of(layout).get(Occupant.RIDER);
    Map<String, Pin> pins = new HashMap<>();
    for (Part part : seat.parts()) {
      boolean feet = seat.feet().filter(part::equals).isPresent();
      boolean hands = seat.hands().filter(part::equals).isPresent();
      for (String name : part.pins()) {
        Pin pin = layout.pins().get(name);
        if (!pin.nailed()) {
          PointMm p = study.placed().places().pin(name);
          PointMm to =
              p.plus(
                  feet ? new PointMm(-44, 44) : hands ? new PointMm(110, -75) : new PointMm(38, 0));
          pins.put(name, pin.at(Formula.of(to.x(), Unit.MM), Formula.of(to.z(), Unit.MM)));
        }
      }
    }
    return layout.withPins(pins);
  }

  private static Map<String, Verdict> verdicts(Study study) {
    return study.findings().stream()
        .collect(Collectors.toMap(Finding::id, Finding::verdict, (a, b) -> a));
  }

  /** Discomfort of all on the rider's seat. */
  private static double discomfort(Study study) {
    return study.sittings().stream()
        .filter(s -> s.seat().equals(Occupant.RIDER))
        .mapToDouble(PlaceCommandTest::cost)
        .sum();
  }

  private static double cost(Sitting s) {
    return Comfort.cost(s.posture().orElseThrow().angles(), s.body().sex());
  }

  /** What bars and grips meet when they are turned is not sought for: they go where hands want. */
  private static List<String> failingStraightAhead(Study study) {
    return study.findings().stream()
        .filter(f -> f.verdict() == Verdict.FAIL && f.kind() != LockFindings.LOCK)
        .map(Finding::id)
        .toList();
  }

  /** A dozen seconds of processor; {@code SuitingTest} puts a trestle right in every build. */
  @Test
  @Tag("long")
  void aSpoiledHeronIsPutRightForBothOfItsCrew() throws IOException {
    Layout heron = Demos.layout("heron");
    Study shipped = Shipped.study("heron");
    Layout bad = spoiled(heron);
    Study before = Study.of(bad);
    assertThat(before.placed().holds()).isTrue();
    // before: the numbers that make it bad
    assertThat(before.failing()).isGreaterThan(shipped.failing());
    // what needs care as shipped may fail now
    assertThat(before.failing() + before.count(Verdict.CAUTION))
        .isGreaterThan(shipped.failing() + shipped.count(Verdict.CAUTION));
    assertThat(discomfort(before)).isGreaterThan(2);

    Path out = folder.resolve("good.json");
    Ran ran = Ran.of("place", save(bad), "--move", "pan,back,pegs,grips", "--out", out);

    assertThat(ran.err()).isEmpty();
    Study after = Study.of(Loading.layout(out));
    assertThat(ran.code()).isEqualTo(ExitCodes.of(after));
    // after: everybody passes all they pass as shipped, and nothing fails but what failed there
    Map<String, Verdict> now = verdicts(after);
    shipped.findings().stream()
        .filter(f -> f.verdict() == Verdict.PASS)
        .filter(f -> heron.crew().keySet().stream().anyMatch(who -> f.id().contains("." + who)))
        .forEach(
            f ->
                assertThat(now.getOrDefault(f.id(), Verdict.PASS))
                    .as("%s, %s", f.id(), f.text())
                    .isEqualTo(Verdict.PASS));
    assertThat(failingStraightAhead(after)).isEqualTo(failingStraightAhead(shipped));
    assertThat(discomfort(after)).isLessThan(0.02);
    assertThat(ran.out())
        .contains("now: " + before.failing() + " fail")
        .contains("alternative 1: " + after.failing() + " fail")
        .containsPattern("panRear moves \\d+\\.\\d mm")
        .containsPattern("fails -> passes +\\S+\\.hands")
        .contains("try it in cardboard")
        .doesNotContain("NaN");
    // ties hold in what was written, to the solver's tolerance
    assertThat(after.placed().report().maxResidualMm()).isLessThan(1e-6);
  }

  /** The search finds a place that costs the head a verdict; the file's own is better then. */
  @Test
  @Tag("long")
  void whatIsSavedIsNoWorseThanWhatWasThere() throws IOException {
    Layout dunlin = Demos.layout("dunlin");
    Study shipped = Shipped.study("dunlin");
    Path out = folder.resolve("better.json");
    Ran ran = Ran.of("place", save(dunlin), "--move", "back", "--out", out);
    Study saved = Study.of(Loading.layout(out));
    assertThat(saved.failing()).isEqualTo(shipped.failing());
    assertThat(saved.count(Verdict.CAUTION)).isEqualTo(shipped.count(Verdict.CAUTION));
    assertThat(saved.count(Verdict.PASS)).isEqualTo(shipped.count(Verdict.PASS));
    assertThat(ran.out())
        .contains("; no better place was found than the present one")
        .contains("; of worse verdicts than the present place");
  }

  @Test
  void unknownNamesAreRefusedAndNothingIsWritten() throws IOException {
    Path file = save(Demos.layout("heron"));
    Ran ran = Ran.of("place", file, "--move", "pann,exPort", "--out", folder.resolve("x.json"));
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines()).hasSize(2).allMatch(l -> l.startsWith("longlow: --move: "));
    assertThat(ran.err())
        .contains("did you mean pan?", "exPort cannot move", "what can move: ")
        .contains("grips");
    assertThat(left()).containsExactly("bad.json");
  }

  @Test
  void aFolderThatIsNotThereIsRefusedBeforeTheSearch() throws IOException {
    Path file = save(Demos.layout("heron"));
    Ran ran = Ran.of("place", file, "--move", "pan", "--out", folder.resolve("no/x.json"));
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("a folder that exists");
    assertThat(left()).containsExactly("bad.json");
  }

  @Test
  void aContradictionExitsFourAndNothingIsWritten() throws IOException {
    Layout heron = Demos.layout("heron");
    Tie torn =
        new Tie(
            TieKind.DISTANCE,
            SeatParts.of(heron).get(Occupant.RIDER).pan().pins(),
            Optional.of(Formula.parse("123 mm")),
            List.of(),
            "",
            0,
            false,
            "");
    Path file = save(heron.withTie("torn", torn));
    Ran ran = Ran.of("place", file, "--move", "pan", "--out", folder.resolve("x.json"));
    assertThat(ran.code()).isEqualTo(ExitCodes.CONTRADICTION);
    assertThat(ran.out()).contains("contradicts itself", "mend the ties first");
    assertThat(left()).containsExactly("bad.json");
  }

  /** None of this needs to know the machine, let alone to study it: there is none here. */
  @Test
  void whatIsWrongWithTheCrowdIsSaidBeforeTheMachineIsLookedAt() {
    for (List<String> wrong :
        List.of(
            List.of("--people", "0"),
            List.of("--people", "9", "--women", "101"),
            List.of("--people", "9", "--wearing", "cape"),
            List.of("--people", "9", "--without", "luck"),
            List.of("--measured", "nowhere.csv"))) {
      for (String command : List.of("place", "fit")) {
        List<String> args = new ArrayList<>(List.of(command, "nowhere.json"));
        if (command.equals("place")) {
          args.addAll(List.of("--move", "grips"));
        }
        args.addAll(wrong);
        Ran ran = Ran.of(args.toArray());
        assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(ran.err()).startsWith("longlow: " + wrong.get(wrong.size() - 2));
      }
    }
  }

  @Test
  void movesMustBeNamed() throws IOException {
    Ran ran = Ran.of("place", save(Demos.layout("heron")));
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("--move");
  }

  @Test
  void aCrowdIsAskedForWholeOrNotAtAll() throws IOException {
    Path file = Demos.copy("dunlin", folder);
    assertThat(Ran.of("place", file, "--move", "grips", "--women", "30"))
        .satisfies(
            ran -> {
              assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
              assertThat(ran.err()).contains("without --people or --measured", "out --women");
            });
    assertThat(Ran.of("place", file, "--move", "grips", "--wearing", "nothing", "--seed", 2).err())
        .contains("leave out --seed and --wearing");
    assertThat(Ran.of("place", file, "--move", "grips", "--out", file).err())
        .contains("which is the layout itself");
    Files.writeString(folder.resolve("club.csv"), "name,sex,stature,mass\nIda,female,1640,64\n");
    Path out = folder.resolve("roomier.json");
    Ran ran =
        Ran.of(
            "place",
            file,
            "--move",
            "grips",
            "--measured",
            folder.resolve("club.csv"),
            "--without",
            "hands,gap",
            "--out",
            out);
    // whoever fits already needs no other place: a script goes on with the machine as it is
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .contains(
            "1 person measured.",
            "now: of 100 % ",
            "no place was found where more of them fit: all fit now",
            "saved as it is, with nothing moved: " + out);
    assertThat(Loading.layout(out)).isEqualTo(Loading.layout(file));
  }
}

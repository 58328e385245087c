package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.demo.Demos;
import org.longlow.sketcher.picture.Shipped;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Who is drawn, in which stance, at what scale; measured on the sheet that is written. */
class DrawOptionsTest {

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void layout() throws IOException {
    file = Files.writeString(folder.resolve("m.json"), Demos.text("heron"));
  }

  private Path drawn(String... options) {
    Path out = folder.resolve("x.svg");
    List<Object> args = new ArrayList<>(List.of("draw", file, "--out", out));
    args.addAll(List.of(options));
    Ran ran = Ran.of(args.toArray());
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isEqualTo(ExitCodes.FINDING_FAILS);
    return out;
  }

  private static List<Element> paths(Path svg) throws Exception {
    NodeList nodes =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(svg.toFile())
            .getElementsByTagName("path");
    List<Element> out = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      out.add((Element) nodes.item(i));
    }
    return out;
  }

  private static Set<String> people(Path svg) throws Exception {
    Set<String> out = new TreeSet<>();
    for (Element path : paths(svg)) {
      if (path.getAttribute("data-subject").startsWith("person:")) {
        out.add(path.getAttribute("data-subject").substring(7));
      }
    }
    return out;
  }

  private static Set<String> layers(Path svg) throws Exception {
    NodeList groups =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(svg.toFile())
            .getElementsByTagName("g");
    Set<String> ids = new TreeSet<>();
    for (int i = 0; i < groups.getLength(); i++) {
      String id = ((Element) groups.item(i)).getAttribute("id");
      if (!id.startsWith("sheet-")) {
        ids.add(id);
      }
    }
    return ids;
  }

  @Test
  @Tag("long")
  void layersAreDrawnAsNamedOrAllButThose() throws Exception {
    Set<String> all = layers(drawn("--view", "all"));
    assertThat(layers(drawn("--view", "all", "--layers", "wheels,dimensions")))
        .containsExactly(
            "dimensions",
            "front-dimensions",
            "front-wheels",
            "plan-wheels",
            "projection",
            "wheels");
    Set<String> rest = layers(drawn("--view", "all", "--layers", "no-person, no-notes"));
    assertThat(all).containsAll(rest);
    all.removeAll(rest);
    assertThat(all).containsExactly("front-person", "notes", "person", "plan-person", "sight");
  }

  @Test
  void layersThatAreNoneAreRefusedWithAllNames() {
    Path out = folder.resolve("y.svg");
    for (String wrong : List.of("wheel", "wheels,no-frame", "")) {
      Ran ran = Ran.of("draw", file, "--out", out, "--layers", wrong);
      assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
      assertThat(ran.err()).contains("--layers: ");
    }
    assertThat(Ran.of("draw", file, "--out", out, "--layers", "wheel").err())
        .contains("'wheel'")
        .contains("wheels, runs, frame, engine");
  }

  @Test
  void theTitleBlockIsThatOfTheLayout() throws Exception {
    String said =
        """
        {"titleBlock": {"owner": "Lock-up 7", "drawnBy": "Runa", "approvedBy": "Bram",
          "notes": ["Break all edges <&>."],
          "revisions": [{"index": "A", "date": "2026-02-01", "what": "first sight"},
                        {"index": "B", "date": "2026-05-01", "what": "seat lower"}]},
        """;
    file =
        Files.writeString(
            folder.resolve("said.json"), Demos.text("heron").replaceFirst("\\{", said));
    for (String paper : List.of("a4 portrait", "a4", "a3")) {
      List<String> words = words(drawn("--paper", paper));
      assertThat(words)
          .contains("Lock-up 7", "Runa", "Bram", "Break all edges <&>.", "A", "first sight")
          .contains("2026-02-01", "2026-05-01", "seat lower", "what was changed");
      assertThat(words).filteredOn(w -> w.equals("B")).hasSizeGreaterThan(1);
    }
  }

  private static List<String> words(Path svg) throws Exception {
    NodeList nodes =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(svg.toFile())
            .getElementsByTagName("text");
    List<String> out = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      out.add(nodes.item(i).getTextContent());
    }
    return out;
  }

  /** Returns least x, most x, least y, most y of all that is drawn of a part, paper mm. */
  private static double[] box(Path svg, String part) throws Exception {
    double[] box = {1e9, -1e9, 1e9, -1e9};
    for (Element path : paths(svg)) {
      String layer = ((Element) path.getParentNode()).getAttribute("id");
      if (!path.getAttribute("data-subject").equals("part:" + part)
          || layer.contains("dimension")) {
        continue;
      }
      Matcher m = NUMBER.matcher(path.getAttribute("d"));
      for (int i = 0; m.find(); i++) {
        double v = Double.parseDouble(m.group());
        int at = i % 2 == 0 ? 0 : 2;
        box[at] = Math.min(box[at], v);
        box[at + 1] = Math.max(box[at + 1], v);
      }
    }
    return box;
  }

  private static double middle(Path svg, String part) throws Exception {
    double[] box = box(svg, part);
    return (box[0] + box[1]) / 2;
  }

  @Test
  void whoeverIsNamedIsDrawn() throws Exception {
    assertThat(people(drawn())).containsExactly("Runa");
    assertThat(people(drawn("--who", "Bram"))).containsExactly("Bram");
    assertThat(people(drawn("--who", "Bram, Runa"))).containsExactly("Bram", "Runa");
    assertThat(people(drawn("--who", "Bram,Runa as passenger"))).containsExactly("Bram", "Runa");
    assertThat(people(drawn("--stance", "unladen"))).isEmpty();
    assertThat(people(drawn("--who", "Bram,Runa", "--stance", "full bump")))
        .containsExactly("Bram", "Runa");
  }

  @Test
  void theScaleAskedForIsTheScaleOfTheSheet() throws Exception {
    double onItsSprings =
        Shipped.study("heron")
            .standing(Condition.empty(Stance.Kind.UNLADEN))
            .orElseThrow()
            .ground()
            .wheelbaseMm();
    for (int n : List.of(12, 40)) {
      Path svg = drawn("--scale", "1:" + n, "--stance", "unladen");
      double wheelbase = n * (middle(svg, "frontWheel") - middle(svg, "rearWheel"));
      assertThat(wheelbase).as("1:" + n).isCloseTo(onItsSprings, within(0.1));
    }
  }

  @Test
  void theStanceAskedForIsDrawn() throws Exception {
    double pair = clearance(drawn("--who", "Bram,Runa"));
    double bump = clearance(drawn("--stance", "full-bump"));
    double unladen = clearance(drawn("--stance", "unladen"));
    assertThat(bump).isLessThan(pair);
    assertThat(pair).isLessThan(unladen - 10);
  }

  /** How far the side cells before the rear wheel are above the road, mm. */
  private static double clearance(Path svg) throws Exception {
    double[] wheel = box(svg, "rearWheel");
    double scale = 305.9 * 2 / (wheel[3] - wheel[2]);
    return scale * (wheel[3] - box(svg, "cells")[3]);
  }

  @Test
  void aSectionIsDrawnAsFarOpenAsAsked() throws Exception {
    double shut = lidTop(drawn("--stance", "unladen", "--scale", "1:20"));
    double part = lidTop(drawn("--stance", "open, lid at 30 %", "--scale", "1:20"));
    double open = lidTop(drawn("--stance", "boot open", "--scale", "1:20"));
    assertThat(part).isGreaterThan(shut + 1);
    assertThat(open).isGreaterThan(part + 1);
  }

  /** Height of the top of the lid above the bottom of the rear wheel, paper mm. */
  private static double lidTop(Path svg) throws Exception {
    return box(svg, "rearWheel")[3] - box(svg, "lid")[2];
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "--who|Zed|'Zed'|Runa, Bram",
        "--who|Runa,Runa|twice|once",
        "--who|Runa,Bram|passenger seat|sit Runa",
        "--who|Bram,Runa,Zed|'Zed'|Runa, Bram",
        "--stance|flying|'flying'|laden; as drawn; unladen; light; laden, Runa; laden, Bram; laden, Bram and Runa;"
            + " full bump; full droop; parked; open, lid; boot open",
        "--stance|open, lid at 140 %|140|from 0 to 100",
        "--stance|parked at 40 %|'parked at 40 %'|an open one",
        "--scale|1:0|'1:0'|from 1 to 9999",
        "--scale|ten|'ten'|such as 1:10",
        "--scale|1:2|does not fit|take 1:10"
      })
  void whatIsUnknownIsRefusedWithWhatThereIs(
      String option, String value, String says, String allowed) {
    Path out = folder.resolve("x.svg");
    Ran ran = Ran.of("draw", file, "--out", out, option, value);
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains(says, allowed, option);
    assertThat(out).doesNotExist();
    if (value.equals("Zed") || value.equals("flying")) {
      Path page = folder.resolve("x.html");
      Ran report = Ran.of("report", file, "--out", page, option, value);
      assertThat(report.code()).isEqualTo(ExitCodes.BAD_INPUT);
      assertThat(report.err()).contains(says, allowed);
      assertThat(page).doesNotExist();
    }
  }

  @Test
  void aLadenStanceOfOthersIsRefused() {
    Ran ran =
        Ran.of(
            "draw",
            file,
            "--out",
            folder.resolve("x.svg"),
            "--who",
            "Runa",
            "--stance",
            "laden, Bram");
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("'laden, Bram'", "Runa", "--stance laden");
  }

  @Test
  @Tag("long")
  void theReportBeginsWithWhomYouName() throws IOException {
    Path page = folder.resolve("x.html");
    Ran.of("report", file, "--out", page, "--who", "Bram,Runa");
    assertThat(Files.readString(page)).contains("Elevation 1: Bram riding, Runa as passenger");
  }

  @Test
  void viewsAskedForAreOnTheSheetToScale() throws Exception {
    double broad = 725; // the grips, as the layout says
    Path front = drawn("--view", "front", "--scale", "1:12");
    double[] grips = box(front, "grips");
    assertThat(12 * (grips[1] - grips[0])).isCloseTo(broad, within(0.5));
    assertThat(Files.readString(front)).contains("sideStand at ");
    Path plan = drawn("--view", "plan", "--scale", "1:20");
    double[] above = box(plan, "grips");
    assertThat(20 * (above[3] - above[2])).isCloseTo(broad, within(0.5));
    Path three = drawn("--view", "all", "--projection", "third-angle");
    assertThat(Files.readString(three)).contains("Third-angle projection");
  }

  @Test
  void aProjectionOfOneViewIsRefused() throws Exception {
    Path file = Demos.copy("dunlin", folder);
    Path out = folder.resolve("one.svg");
    Ran ran = Ran.of("draw", file, "--out", out, "--projection", "first-angle");
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("leave out --projection");
    assertThat(out).doesNotExist();
  }

  @Test
  void aViewThatThereIsNotIsRefusedWithThoseThereAre() {
    Ran ran = Ran.of("draw", file, "--out", folder.resolve("x.svg"), "--view", "rear");
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("rear").contains("front").contains("plan");
    assertThat(folder.resolve("x.svg")).doesNotExist();
  }

  /** All six poses of the person asked for, nobody else; a wrong name is told who sits. */
  @Test
  @Tag("long")
  void somebodyIsDrawnGettingIn() throws Exception {
    Path strip = drawn("--getting-in", "Bram");
    assertThat(people(strip)).containsExactly("Bram");
    assertThat(Files.readString(strip))
        .contains(
            "1  standing beside",
            "2  stepping over",
            "3  going down",
            "4  sitting down",
            "5  lifting",
            "6  seated");
    Ran ran = Ran.of("draw", file, "--out", folder.resolve("y.svg"), "--getting-in", "Nobody");
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("there are").contains("Bram").contains("Runa as passenger");
  }
}

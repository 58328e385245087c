package org.longlow.sketcher.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.sketcher.picture.Shipped;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;

/**
 * The written sheets, as files: no hatching of a glue strip runs through words of the template, all
 * lines of its block stand on one sheet, and no word is lost between two.
 */
class WordsOffStripsTest {

  private static final Pattern LAYER = Pattern.compile("<g id=\"([^\"]*)\">(.*?)</g>", 32);
  private static final Pattern WORDS = Pattern.compile("<text ([^>]*)>([^<]*)</text>");
  private static final Pattern PATH = Pattern.compile("<path d=\"([^\"]*)\"");

  @Test
  void whatOnceLayOnAStripLiesOffIt() throws IOException {
    look("heron", Set.of("pan", "cells", "cradle", "lid"), Paper.A4);
    look("dunlin", Set.of("bars"), Paper.LETTER);
    look("curlew", Set.of("seatrail", "header"), Paper.A3);
  }

  @Test
  @Tag("long")
  void noTemplateHasWordsOnAStrip() throws IOException {
    for (String machine : Demos.names()) {
      for (Paper paper : List.of(Paper.A4, Paper.LETTER, Paper.A3)) {
        look(machine, Set.of(), paper);
      }
    }
  }

  private static void look(String machine, Set<String> asked, Paper paper) throws IOException {
    Study study = Shipped.study(machine);
    Set<String> parts = new HashSet<>(asked);
    parts.retainAll(study.shapes().keySet());
    TemplateSet set =
        TemplateSet.of(study, parts, TemplateSettings.on(paper), StepWatch.NONE).orElseThrow();
    int strips = 0;
    for (TemplateSet.Template template : set.templates()) {
      String what = machine + " on " + paper.name() + ", " + template.drawing().name();
      Set<String> blockOn = new LinkedHashSet<>();
      Map<String, Integer> shown = new HashMap<>();
      List<String> block = new ArrayList<>();
      for (Page page : template.sheets()) {
        if (page.title().endsWith("map")) {
          continue; // the map of the sheets
        }
        Map<String, String> layers = layers(page);
        List<LineSegment> hatching = lines(layers.getOrDefault("sheet-strips", ""));
        strips += hatching.size();
        layers.forEach(
            (id, text) -> {
              if (id.startsWith("sheet-")) {
                return;
              }
              Matcher m = WORDS.matcher(text);
              while (m.find()) {
                Envelope box = box(m.group(1), unescaped(m.group(2)));
                assertThat(hatching)
                    .as(what + ": '" + m.group(2) + "' on " + page.title())
                    .noneMatch(line -> crosses(line, box));
                shown.merge(unescaped(m.group(2)), 1, Integer::sum);
                if (id.equals("words")) {
                  blockOn.add(page.title());
                  block.add(unescaped(m.group(2)));
                }
              }
            });
      }
      assertThat(blockOn).as(what).hasSize(1);
      for (Layer layer : template.drawing().drawing().layers()) {
        List<String> words =
            layer.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(m -> Lettering.printable(((Mark.Words) m).text()).strip())
                .toList();
        if (layer.id().equals("words")) { // its lines are broken where there is room
          assertThat(String.join(" ", block)).as(what).isEqualTo(String.join(" ", words));
        } else if (layer.id().equals("stations")) {
          // a datum goes where no seam is: its name and its ticks are those of that place
          for (String word : words) {
            String like = word.startsWith("datum ") ? "datum .*" : "-?[0-9]+";
            assertThat(shown.keySet()).as(what).anyMatch(w -> w.equals(word) || w.matches(like));
          }
        } else {
          assertThat(shown.keySet()).as(what).containsAll(words);
        }
      }
    }
    assertThat(strips).as("hatch lines looked at").isGreaterThan(50);
  }

  private static Map<String, String> layers(Page page) throws IOException {
    Map<String, String> layers = new HashMap<>();
    Matcher m = LAYER.matcher(new String(Output.svg(page), StandardCharsets.UTF_8));
    while (m.find()) {
      layers.put(m.group(1), m.group(2));
    }
    return layers;
  }

  /** The straight pieces of the first path, which is the hatching. */
  private static List<LineSegment> lines(String layer) {
    List<LineSegment> out = new ArrayList<>();
    Matcher path = PATH.matcher(layer);
    if (path.find()) {
      for (String run : path.group(1).substring(1).split("M")) {
        String[] ends = run.split("[L ]");
        out.add(
            new LineSegment(
                Double.parseDouble(ends[0]),
                Double.parseDouble(ends[1]),
                Double.parseDouble(ends[2]),
                Double.parseDouble(ends[3])));
      }
    }
    return out;
  }

  /** The box of capitals from the base line up. */
  private static Envelope box(String attributes, String text) {
    assertThat(attributes).doesNotContain("transform");
    double high = number(attributes, "font-size") * 0.688;
    double wide = Lettering.widthMm(text, high);
    double x = number(attributes, "x");
    double y = number(attributes, "y");
    double before =
        attributes.contains("\"middle\"") ? wide / 2 : attributes.contains("\"end\"") ? wide : 0;
    return new Envelope(x - before, x - before + wide, y - high, y);
  }

  private static double number(String attributes, String name) {
    Matcher m = Pattern.compile("(?:^| )" + name + "=\"([^\"]*)\"").matcher(attributes);
    assertThat(m.find()).isTrue();
    return Double.parseDouble(m.group(1));
  }

  /** Whether a point of the line, taken every 0.2 mm, lies in the box. */
  private static boolean crosses(LineSegment line, Envelope box) {
    if (!box.intersects(line.p0, line.p1)) {
      return false;
    }
    int steps = (int) Math.ceil(line.getLength() / 0.2);
    for (int i = 0; i <= steps; i++) {
      if (box.contains(line.pointAlong((double) i / steps))) {
        return true;
      }
    }
    return false;
  }

  private static String unescaped(String text) {
    return text.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&").strip();
  }
}

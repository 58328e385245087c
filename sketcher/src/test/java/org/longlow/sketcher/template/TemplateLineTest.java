package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.longlow.sketcher.picture.Plover;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.write.SvgWriter;

/** Kinds of lines told apart without colour, as they are written. */
class TemplateLineTest {

  private static String svg(NamedDrawing d) throws Exception {
    StringBuilder all = new StringBuilder();
    for (Page page : d.sheets(TemplateSettings.on(Paper.A2))) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      SvgWriter.write(page, Palette.CARD, out);
      all.append(out.toString(StandardCharsets.UTF_8));
    }
    return all.toString();
  }

  /** Width and dashes of lines of a layer. */
  private static Set<String> looks(String svg, String layer) {
    Set<String> looks = new TreeSet<>();
    Matcher group =
        Pattern.compile("<g id=\"" + layer + "\">(.*?)</g>", Pattern.DOTALL).matcher(svg);
    while (group.find()) {
      Matcher path = Pattern.compile("<path ([^>]*)>").matcher(group.group(1));
      while (path.find()) {
        looks.add(
            attribute(path.group(1), "stroke-width")
                + " "
                + attribute(path.group(1), "stroke-dasharray"));
      }
    }
    return looks;
  }

  private static String attribute(String all, String name) {
    Matcher m = Pattern.compile(name + "=\"([^\"]*)\"").matcher(all);
    return m.find() ? m.group(1) : "";
  }

  /** A cover has folds, seams, staples and corners; with the line to cut, five kinds. */
  @Test
  void everyKindOfLineOfACoverLooksAnother() throws Exception {
    NamedDrawing cover =
        Templates.of(Plover.study(), Set.of("pan")).stream()
            .filter(d -> d.fileName().equals("pan-cover"))
            .findFirst()
            .orElseThrow();
    String svg = svg(cover);
    Set<String> inside = looks(svg, "inside");
    assertThat(inside).hasSize(4);
    assertThat(looks(svg, "outline")).hasSize(1).doesNotContainAnyElementsOf(inside);
    assertThat(svg).contains(">fold<", ">seam<", ">staples<", ">corner to cut<");
    // the key shows each as it is drawn
    assertThat(looks(svg, "words")).containsAll(inside);
  }

  @Test
  void foldsMiddlesNeighboursAndBendsAreFourLooks() {
    List<String> looks = new ArrayList<>();
    for (TemplateLine l :
        EnumSet.of(
            TemplateLine.FOLD, TemplateLine.CENTRE, TemplateLine.BESIDE, TemplateLine.BEND)) {
      looks.add(Arrays.toString(l.style().line().dashes(l.style().strokeMm())));
    }
    assertThat(looks).doesNotHaveDuplicates();
  }
}

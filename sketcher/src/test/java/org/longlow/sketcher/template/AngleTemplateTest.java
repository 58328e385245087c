package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.sketcher.template.RailJoints.said;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.shop.CutPlan;
import org.longlow.sketcher.shop.CutPlans;
import org.longlow.sketcher.shop.Cuts;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.write.SvgWriter;

/** Brackets of angle section: one flat piece that, folded by its figures, is what was drawn. */
class AngleTemplateTest {

  /** What a scriber line can tell, mm. */
  private static final double TRUE_TO_MM = 0.05;

  /** Sheet of 3 is folded round 3; its middle length runs at 0.44 of it: worked out by hand. */
  private static final double SET_BACK = 3 + 3;

  private static final double ARC = Math.PI / 2 * (3 + 0.44 * 3);

  /** A plate of 90 by 60 with a leg of 40 along its lower edge. */
  private static Study study(String more, String leg) {
    return RailJoints.study(
        "mm",
        "\"o\": [600, 500]",
        """
        "lug": {"kind": "bracket", "frame": "o", "left": 90, "right": -50, "both": true,
          "material": "steel", %s
          "outline": {"points": [[0, 0], [90, 0], [90, 60], [0, 60]],
            "holes": [{"hole": "round", "at": [45, 40], "diameter": 8.4}]},
          "angle": {"sheet": 3, "holes": [%s]}}
        """
            .formatted(more, leg));
  }

  private static final String HOLE = "{\"hole\": \"round\", \"at\": [20, 22], \"diameter\": 6.6}";

  private static NamedDrawing flat(Study study) {
    List<NamedDrawing> all = Templates.of(study, Set.of("lug"));
    assertThat(all.stream().map(NamedDrawing::fileName)).containsExactly("lug-flat");
    return all.get(0);
  }

  /** Rings of the line to cut as written, y up: least x, least y, greatest of each. */
  private static List<double[]> printed(NamedDrawing d) throws Exception {
    List<Page> pages = d.sheets(TemplateSettings.on(Paper.A4));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(pages.get(0), Palette.CARD, out);
    Matcher path =
        Pattern.compile("<g id=\"outline\">.*?<path d=\"M([^\"]*)\"", Pattern.DOTALL)
            .matcher(out.toString(StandardCharsets.UTF_8));
    assertThat(path.find()).isTrue();
    List<double[]> boxes = new ArrayList<>();
    for (String ring : path.group(1).split("M")) {
      double[] box = {1e9, 1e9, -1e9, -1e9};
      for (String at : ring.replace("Z", "").split("L")) {
        String[] xy = at.trim().split("[ ,]+");
        double x = Double.parseDouble(xy[0]);
        double y = -Double.parseDouble(xy[1]);
        box =
            new double[] {
              Math.min(box[0], x), Math.min(box[1], y), Math.max(box[2], x), Math.max(box[3], y)
            };
      }
      boxes.add(box);
    }
    return boxes;
  }

  /** What is printed is folded again: plate, arc and leg one after the other. */
  @Test
  void thePrintedFlatFoldsToWhatWasDrawn() throws Exception {
    List<double[]> rings = printed(flat(study("", HOLE)));
    assertThat(rings).hasSize(3);
    double[] all = rings.get(0);
    double left = all[0];
    double top = all[3];
    // down from the upper edge: the plate up to the fold, the arc of the fold, the leg
    double plate = 60 - SET_BACK;
    double leg = top - all[1] - plate - ARC;
    assertThat(SET_BACK + leg).isCloseTo(40, within(TRUE_TO_MM));
    assertThat(all[2] - left).isCloseTo(90, within(TRUE_TO_MM));
    double[] high =
        rings.stream().filter(r -> r[2] - r[0] > 7 && r[2] - r[0] < 9).findFirst().get();
    assertThat((high[0] + high[2]) / 2 - left).isCloseTo(45, within(TRUE_TO_MM));
    assertThat(top - (high[1] + high[3]) / 2).isCloseTo(20, within(TRUE_TO_MM));
    double[] low = rings.stream().filter(r -> r[2] - r[0] < 7).findFirst().get();
    assertThat((low[0] + low[2]) / 2 - left).isCloseTo(20, within(TRUE_TO_MM));
    double down = top - (low[1] + low[3]) / 2 - plate - ARC;
    assertThat(SET_BACK + down).isCloseTo(22, within(TRUE_TO_MM));
    assertThat(low[2] - low[0]).isCloseTo(6.6, within(TRUE_TO_MM));
  }

  @Test
  void itSaysHowItIsFoldedAndWhatIsTooNear() {
    String said = said(flat(study("", HOLE)));
    assertThat(said)
        .contains("make 2, the second one folded the other way", "steel 3 mm")
        .contains("its leg is 40 mm long outside, 34.8 mm past the edge")
        .contains("fold 90° away from this face", "bend starts, ends", "Ø 6.6", "Ø 8.4")
        .contains("line is the net outline, nothing added")
        .doesNotContain("TAKE CARE");
    // the fold ends 6 from the heel: 6 and 3.3, less and more
    String near = HOLE.replace("22", "9.2");
    assertThat(said(flat(study("", near)))).contains("5.9 mm between hole 2 and the heel: 6 mm");
    assertThat(said(flat(study("", HOLE.replace("22", "9.4"))))).doesNotContain("the heel:");
    // past the heel, where there is no leg
    assertThat(said(flat(study("", HOLE.replace("22", "-10")))))
        .contains("0 mm between hole 2 and the heel");
    // 1.5 diameters from the edge at 40: 9.9
    assertThat(said(flat(study("", HOLE.replace("22", "30.2"))))).contains("hole 2 and the edge");
    assertThat(said(flat(study("", HOLE.replace("22", "30"))))).doesNotContain("and the edge");
  }

  @Test
  void theLineToCutLiesOutsideOrInsideByItsAllowance() throws Exception {
    for (double mm : new double[] {1.5, -2}) {
      NamedDrawing d = flat(study("\"allowance\": " + mm + ",", HOLE));
      List<double[]> rings = printed(d);
      assertThat(rings.get(0)[2] - rings.get(0)[0]).isCloseTo(90 + 2 * mm, within(TRUE_TO_MM));
      assertThat(rings.get(0)[3] - rings.get(0)[1])
          .isCloseTo(60 - 2 * SET_BACK + ARC + 40 + 2 * mm, within(TRUE_TO_MM));
      assertThat(rings).anyMatch(r -> Math.abs(r[2] - r[0] - 8.4 + 2 * mm) < TRUE_TO_MM);
      assertThat(said(d))
          .contains(
              mm > 0
                  ? "lies 1.5 mm outside the net outline, holes are as much smaller"
                  : "lies 2 mm inside the net outline, holes are as much larger")
          .contains(mm > 0 ? "cut ON the outer line" : "cut ON the inner line")
          .contains("net outline")
          .doesNotContain("LINE STAYS");
    }
  }

  /** Plate less hole, and what its leg has besides: its body is no block, and it is planned. */
  @Test
  void itsBodyAndItsBlankAreThoseOfSheet() {
    Study study = study("", HOLE);
    PartShape lug = study.shapes().get("lug");
    double plate = 90 * 60 - Math.PI * 4.2 * 4.2;
    assertThat(lug.massKg()).isCloseTo(2 * (plate * 3 + 90 * 3 * 37) * 7850e-9, within(1e-4));
    // turned to the left: of the left one the plate is at the right end
    assertThat(lug.prisms().get(0).across().from()).isEqualTo(50);
    assertThat(lug.prisms().get(0).across().to()).isEqualTo(53);
    assertThat(lug.prisms().get(1).across().to()).isEqualTo(90);
    CutPlan plan = CutPlans.of(study, Cuts.of(study)).plans().get(0);
    assertThat(plan).isInstanceOf(CutPlan.Sheets.class);
    assertThat(((CutPlan.Sheets) plan).pieces()).hasSize(2);
  }
}

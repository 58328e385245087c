package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.ElevationPictureTest;
import org.longlow.svg.drawing.Mark;

class WrapTemplatesTest {

  /** A branch that leans 60 degrees onto the middle of a level main rail. */
  private static List<NamedDrawing> templates(double branchY, String meets) {
    String text =
        String.format(
            Locale.ROOT,
            """
            {"longlow": 1, "name": "joint", "title": "Joint",
             "pins": {"a": ["0 mm", "0 mm"], "b": ["1000 mm", "0 mm"],
                      "foot": ["%s mm", "0 mm"], "top": ["%s mm + 200 mm", "346.4101615137755 mm"]},
             "parts": {
              "rearWheel": {"kind": "wheel", "end": "rear", "axle": "a", "radius": "300 mm",
                            "width": "100 mm", "mass": "12 kg", "material": "rubber"},
              "frontWheel": {"kind": "wheel", "end": "front", "axle": "b", "radius": "300 mm",
                             "width": "90 mm", "mass": "11 kg", "material": "rubber"},
              "main": {"kind": "rail", "path": ["a", "b"], "diameter": "44.45 mm", "wall": "2 mm",
                       "bendRadius": "100 mm", "y": "100 mm", "both": true, "material": "steel"},
              "branch": {"kind": "rail", "path": ["foot", "top"], "diameter": "38.1 mm",
                         "wall": "2 mm", "bendRadius": "100 mm", "y": "%.3f mm", "both": true,
                         "material": "steel"}}}
            """,
            meets,
            meets,
            branchY);
    ReadResult read = LayoutReader.read(text, Path.of("."));
    assertThat(read).isInstanceOf(ReadResult.Read.class);
    return Templates.of(Study.of(((ReadResult.Read) read).layout()), Set.of("branch"));
  }

  private static Envelope cut(NamedDrawing d) {
    Mark.Shape outline =
        (Mark.Shape) ElevationPictureTest.layer(d.drawing(), "outline").marks().get(0);
    return outline.geometry().getEnvelopeInternal();
  }

  @Test
  void theWrapHasTheDepthAndLengthOfTheWorkedCope() {
    // worked cope: branch 38.1 x 2 onto 44.45 at 60 degrees, no offset: once round 119.694680 mm,
    // lowest cut 14.2565137830, highest 36.6617420935; steps of 2 degrees miss the lowest by 0.01
    List<NamedDrawing> all = templates(100, "500");
    assertThat(all.stream().map(NamedDrawing::fileName))
        .containsExactly("branch", "branch-cope-foot");
    Envelope box = cut(all.get(1));
    assertThat(box.getWidth()).isCloseTo(119.694680 + Math.PI * 0.1, within(1e-5));
    assertThat(box.getMinY()).isCloseTo(14.2565137830, within(0.01));
    assertThat(box.getMaxY()).isCloseTo(36.6617420935 + 40, within(1e-9));
  }

  @Test
  void anEndThatMeetsNothingOrACornerOrRunsPastHasNoCope() {
    assertThat(templates(100, "0")).hasSize(1);
    assertThat(templates(100, "1200")).hasSize(1);
    assertThat(templates(110, "500")).hasSize(1);
  }

  @Test
  @Tag("long")
  void anOffsetBranchSaysWhichLineLiesOutboard() {
    NamedDrawing cope = templates(102, "500").get(1);
    assertThat(ElevationPictureTest.layer(cope.drawing(), "inside").marks())
        .anyMatch(m -> m instanceof Mark.Words w && w.text().equals("outboard"));
  }
}

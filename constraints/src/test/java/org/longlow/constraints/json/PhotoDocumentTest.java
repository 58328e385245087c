package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.document.Forms;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Photo;

/** What may be said of a photo in a file, and what becomes of it with the rest. */
class PhotoDocumentTest {

  private static List<String> faults(String photo) {
    String text =
        Plank.with(
            "\"photos\": {", "\"photos\": {\n    \"odd\": {" + photo.replace('\'', '"') + "},");
    ReadResult result = LayoutReader.read(text, null);
    return result instanceof ReadResult.Refused refused
        ? refused.faults().stream().map(Fault::path).toList()
        : List.of();
  }

  @Test
  void whatIsNotSaidIsUsual() {
    Layout plank = Plank.layout();
    Photo side = plank.photos().get("side");
    assertThat(side.view()).isEqualTo(Photo.View.SIDE);
    assertThat(side.part()).isEmpty();
    assertThat(side.hidden()).isFalse();
    assertThat(side.locked()).isTrue();
    Photo pipe = plank.photos().get("pipe");
    assertThat(pipe.fade().evaluate(n -> 0)).isEqualTo(0.5);
    assertThat(pipe.turn()).isEmpty();
    assertThat(pipe.corners().get(1).get(0).evaluate(n -> 0)).isEqualTo(399.5);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "'file': 'a.png', 'at': ['0', '0'], 'scale': '1 mm' | ",
        "'file': 'sub/a.v2.png', 'at': ['0', '0'], 'scale': '1 mm' | ",
        "'file': '', 'at': ['0', '0'], 'scale': '1 mm' | $.photos.odd.file",
        "'file': '/etc/a.png', 'at': ['0', '0'], 'scale': '1 mm' | $.photos.odd.file",
        "'file': '../a.png', 'at': ['0', '0'], 'scale': '1 mm' | $.photos.odd.file",
        "'file': 'b/../../a.png', 'at': ['0', '0'], 'scale': '1 mm' | $.photos.odd.file",
        "'file': 'C:a.png', 'at': ['0', '0'], 'scale': '1 mm' | $.photos.odd.file",
        "'file': 'a.png', 'at': ['0', '0'] | $.photos.odd.scale",
        "'file': 'a.png', 'at': ['0', '0'], 'scale': '0 mm' | $.photos.odd.scale",
        "'file': 'a.png', 'at': ['0', '0'], 'scale': '1 mm', 'width': '3 mm' | $.photos.odd.width",
        "'file': 'a.png', 'at': ['0', '0'], 'scale': '1 mm', 'fade': '1' | ",
        "'file': 'a.png', 'at': ['0', '0'], 'scale': '1 mm', 'fade': '1.01' | $.photos.odd.fade",
        "'file': 'a.png', 'at': ['0', '0'], 'scale': '1 mm', 'part': 'nix' | $.photos.odd.part",
      })
  void eachFaultIsToldAtItsField(String photo, String path) {
    assertThat(faults(photo)).isEqualTo(path == null ? List.of() : List.of(path));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // lower left, lower right, upper right, upper left, down positive
        "0,100, 200,100, 200,0, 0,0 | true",
        "0,100, 200,90, 180,10, 20,0 | true",
        "0,0, 200,0, 200,100, 0,100 | false", // upside down
        "0,100, 200,100, 0,0, 200,0 | false", // crossed
        "0,100, 200,100, 40,80, 0,0 | false", // a dent
        "0,100, 100,100, 200,100, 0,0 | false", // three on a line
        "0,100, 0,100, 200,0, 0,0 | false" // two on one spot
      })
  void cornersAreThoseOfARectangleThatACameraCouldSee(String numbers, boolean sound) {
    String[] n = numbers.strip().split(",\\s*");
    StringBuilder corners = new StringBuilder("[");
    for (int i = 0; i < 8; i += 2) {
      corners.append(i == 0 ? "" : ", ");
      corners.append("['").append(n[i]).append("', '").append(n[i + 1]).append("']");
    }
    String photo =
        "'file': 'a.png', 'at': ['0', '0'], 'width': '2 m', 'height': '1 m', 'corners': "
            + corners
            + "]";
    assertThat(faults(photo)).isEqualTo(sound ? List.of() : List.of("$.photos.odd.corners"));
    assertThat(faults(photo.replace("'width': '2 m', ", "")))
        .as("without a width")
        .contains("$.photos.odd.corners");
    assertThat(faults(photo + ", 'scale': '1 mm'"))
        .as("with a scale too")
        .contains("$.photos.odd.scale");
  }

  @Test
  void threeCornersAreTooFew() {
    assertThat(
            faults(
                "'file': 'a.png', 'at': ['0', '0'], 'width': '1 m', 'height': '1 m', 'corners':"
                    + " [['0', '9'], ['9', '9'], ['9', '0']]"))
        .containsExactly("$.photos.odd.corners");
  }

  @Test
  void photoOfAPartGoesWithItAndFollowsItsName() {
    Layout plank = Plank.layout();
    Layout renamed = Entries.renamed(plank, new Entry("parts", "silencer"), "can");
    assertThat(renamed.photos().get("pipe").part()).contains("can");
    Entries.Without without = Entries.without(plank, new Entry("parts", "silencer"));
    assertThat(without.also()).contains(new Entry("photos", "pipe"));
    assertThat(without.layout().photos()).containsOnlyKeys("side");
  }

  @Test
  void measuresReachIntoPhotos() {
    Layout renamed = Entries.renamed(Plank.layout(), new Entry("measures", "tubeSize"), "tube");
    assertThat(renamed.photos().get("pipe").width().orElseThrow().text()).isEqualTo("tube * 8");
  }

  @Test
  void everyFieldIsInTheFormAndTypedThere() {
    Layout plank = Plank.layout();
    Form form = Forms.of(plank, new Entry("photos", "pipe")).orElseThrow();
    assertThat(form.rows())
        .extracting(r -> String.join(" ", r.path().subList(2, r.path().size())))
        .containsExactly(
            "file",
            "view",
            "part",
            "at 0",
            "at 1",
            "turn",
            "scale",
            "corners",
            "corners 0",
            "corners 0 0",
            "corners 0 1",
            "corners 1",
            "corners 1 0",
            "corners 1 1",
            "corners 2",
            "corners 2 0",
            "corners 2 1",
            "corners 3",
            "corners 3 0",
            "corners 3 1",
            "width",
            "height",
            "fade",
            "locked",
            "hidden",
            "note");
    Layout typed = Typing.typed(plank, "13.5", List.of("photos", "pipe", "corners", "0", "0"));
    assertThat(typed.photos().get("pipe").corners().get(0).get(0).text()).isEqualTo("13.5");
    assertThat(LayoutFaults.of(typed)).isEmpty();
    assertThat(Forms.of(plank, new Entry("photos", "side")).orElseThrow().rows())
        .as("corners are not typed one by one")
        .noneMatch(r -> r.input() == Form.Input.MORE);
  }
}

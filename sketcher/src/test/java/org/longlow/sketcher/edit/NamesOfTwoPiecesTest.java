package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.FieldPath;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Said;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.Shipped;

/** Names put together of two pieces, of every kind there is: none bare, none twice the same. */
class NamesOfTwoPiecesTest {

  private static final List<String> BARE = List.of("to", "from", "at", "of", "is", "");

  private static void reads(String name) {
    String[] pieces = name.split(", | \\(|\\)");
    assertThat(pieces).as(name).doesNotHaveDuplicates().noneMatch(BARE::contains);
    assertThat(name).isEqualTo(name.strip());
  }

  @Test
  void eachPinThatIsAskedForIsSaid() {
    int said = 0;
    for (Gallery.Specimen specimen : Gallery.specimens()) {
      Putting putting = Adding.of(specimen.name());
      while (!putting.isPlaced()) {
        if (!putting.next().isEmpty()) {
          said++;
          reads(putting.title() + ", " + putting.next());
        }
        putting = putting.with(PinSpot.at(new PointMm(100 * said, 300)));
      }
    }
    assertThat(said).isGreaterThan(20);
    assertThat(Adding.of("pan").with(PinSpot.at(new PointMm(500, 400))).next())
        .isEqualTo("the front or upper end of the board");
  }

  @Test
  void aFaultSaysWhichPinIsMeant() {
    Layout gallery = Gallery.layout();
    for (Map.Entry<String, Part> part : gallery.parts().entrySet()) {
      for (String key : List.of("from", "to", "at", "pivot", "foot", "axle")) {
        String path = FieldPath.key(FieldPath.key("$.parts", part.getKey()), key);
        String line = FaultWords.line(gallery, new Fault(path, "", "is odd", ""));
        reads(line.substring(0, line.indexOf(": is odd")));
      }
    }
    assertThat(FaultWords.line(gallery, new Fault("$.parts.pan.to", "x", "is no pin", "")))
        .isEqualTo("part pan, the front or upper end of the board = x: is no pin");
  }

  @ParameterizedTest
  @ValueSource(strings = {"heron", "dunlin", "curlew"})
  void partsAndFindingsAreSaidOnce(String machine) {
    Study study = Shipped.study(machine);
    Stream.of(study.layout(), Gallery.layout())
        .flatMap(l -> l.parts().values().stream())
        .forEach(p -> reads(Said.with(p.name(), p.kind())));
    for (Finding f : study.findings()) {
      reads(Said.in(f.subject(), f.kind().word()));
    }
  }
}

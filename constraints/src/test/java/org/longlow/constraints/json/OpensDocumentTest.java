package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Line;
import org.longlow.constraints.layout.Opens;

/** What may be said of how sections open and of lines, and how it is refused. */
class OpensDocumentTest {

  private static final Layout PLANK = Plank.layout();

  @Test
  void whatOpensIsReadAsItIsWritten() {
    Opens canopy = PLANK.sections().get("canopy").opens();
    assertThat(canopy.grip()).contains("lampPin");
    assertThat(canopy.wayOut()).isTrue();
    assertThat(canopy.drive()).isEqualTo("hoist");
    assertThat(canopy.gasSprings().get(0).count()).isEqualTo(2);
    assertThat(canopy.counterweights().get(0).pulley()).contains("headTop");
    assertThat(canopy.catches().get(0).striker()).isEqualTo("boardFront");
    assertThat(PLANK.sections().get("lid").opens()).isEqualTo(Opens.UNSAID);
    Line hose = PLANK.lines().get("front hose");
    assertThat(hose.kind()).isEqualTo(Line.Kind.HOSE);
    assertThat(hose.points()).extracting(Line.Point::pin).contains("frontAxle", "gripPin");
    assertThat(hose.points().get(1).y().text()).isEqualTo("35 mm");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          "stroke": "170 mm"        ~ "stroke": "210 mm"      ~ gasSprings[0].stroke ~ which none has
          "count": 2                ~ "count": 0              ~ gasSprings[0].count  ~ is none
          "section": "lampPin", "f  ~ "section": "headTop", "f ~ gasSprings[0].section ~ is its other end
          "striker": "boardFront"   ~ "striker": "lampPin"    ~ catches[0].striker   ~ the jaw's own pin
          "pulley": "headTop"       ~ "pulley": "lampPin"     ~ counterweights[0].pulley ~ is its other end
          "grip": "lampPin"         ~ "grip": "hinge"         ~ grip                 ~ no hand moves it
          "holds": 0.9              ~ "holds": 1.2            ~ holds                ~ 1
          "drive": "hoist"          ~ "drive": 3              ~ drive                ~ text
          , "gripPin"], "length     ~ , {"pin": "headBottom"}], "length ~ points[2]  ~ the pin before it
          "towards": "lowB"         ~ "towards": "lowC"       ~ duct.towards         ~ where the air leaves
          "out": "lowC", "tow       ~ "tow                    ~ duct.out             ~ is missing
          "diameter": "7 mm", "po   ~ "diameter": "0 mm", "po ~ diameter             ~ 1 mm
          """)
  void whatCannotBeIsRefusedAtItsField(String found, String instead, String path, String says) {
    ReadResult read = LayoutReader.read(Plank.with(found, instead), Path.of("."));
    assertThat(read).as(instead).isInstanceOf(ReadResult.Refused.class);
    List<Fault> faults = ((ReadResult.Refused) read).faults();
    assertThat(faults)
        .anySatisfy(
            f -> {
              assertThat(f.path()).endsWith(path);
              assertThat(f.line()).contains(says);
            });
  }

  /** What is typed on a ticket: one more of each list is sound at once. */
  @Test
  void oneMoreOfEachListCanStand() {
    for (String list : List.of("gasSprings", "counterweights", "catches")) {
      for (String section : List.of("canopy", "lid")) {
        Layout more = Typing.added(PLANK, "", List.of("sections", section, list));
        assertThat(more).as(list).isNotEqualTo(PLANK);
        assertThat(LayoutFaults.of(more)).as(section + " " + list).isEmpty();
      }
    }
    Layout longer = Typing.added(PLANK, "", List.of("lines", "front hose", "points"));
    assertThat(longer.lines().get("front hose").points()).hasSize(4);
    assertThat(LayoutFaults.of(longer)).isEmpty();
  }

  @Test
  void whatNamesAPinFollowsItsName() {
    Layout renamed = Entries.renamed(PLANK, new Entry("pins", "lampPin"), "nosePin");
    assertThat(renamed.sections().get("canopy").opens().catches().get(0).jaw())
        .isEqualTo("nosePin");
    Layout wire = Entries.renamed(PLANK, new Entry("pins", "headBottom"), "neck");
    assertThat(wire.lines().get("front hose").points().get(1).pin()).isEqualTo("neck");
  }
}

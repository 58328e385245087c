package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.json.LayoutFields.Field;
import org.longlow.constraints.layout.Layout;

/** What a file says, field by field, as a reader of the file would copy it out. */
class LayoutFieldsTest {

  private static final Map<Field, String> PLANK = LayoutFields.of(Plank.layout());

  @ParameterizedTest(name = "{0} {1} {2}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          ``       ~ longlow      ~ ``                  ~ 1
          ``       ~ name         ~ ``                  ~ plank
          ``       ~ title        ~ ``                  ~ Plank, a bare test machine
          ``       ~ notes        ~ ``                  ~ Invented; it only has to use every part of the file format once.
          measures ~ wheelbase    ~ is                  ~ 1640 mm
          measures ~ rake         ~ is                  ~ 27 deg
          measures ~ rake         ~ free                ~ true
          measures ~ rake         ~ to                  ~ 30 deg
          measures ~ seatHeight   ~ note                ~ board and foam
          pins     ~ headTop      ~ at                  ~ 1230 mm, 860 mm
          pins     ~ rearAxle     ~ nailed              ~ true
          pins     ~ rearAxle     ~ with                ~ rear-wheel
          parts    ~ engine       ~ kind                ~ engine
          parts    ~ engine       ~ frame along         ~ engineRear
          parts    ~ engine       ~ outline points 1    ~ -150 mm, -120 mm
          parts    ~ engine       ~ outline points 3    ~ 200 mm, 160 mm, smooth
          parts    ~ engine       ~ touches             ~ lowRail, pipe
          parts    ~ silencer     ~ frame               ~ lowA
          parts    ~ lowRail      ~ both                ~ true
          parts    ~ screen       ~ outline points 1    ~ hinge
          parts    ~ screen       ~ outline points 2    ~ headTop, smooth
          parts    ~ screen       ~ outline points 2 left ~ 180 mm
          parts    ~ pan          ~ layers 1 thickness  ~ 25 mm
          parts    ~ pan          ~ layers 1 name       ~ soft
          parts    ~ pan          ~ layers 2 closedCell ~ true
          parts    ~ lowRail      ~ path                ~ lowA, lowB, lowC
          ties     ~ baseline     ~ pins                ~ rearAxle, frontAxle
          limits   ~ kneeRoom     ~ from                ~ 20 mm
          wishes   ~ ease         ~ weight              ~ 2.5
          sections ~ canopy       ~ angle               ~ 55 deg
          stances  ~ laden        ~ stance              ~ laden
          stances  ~ canopy up    ~ section             ~ canopy
          crew     ~ Mara         ~ measured sittingheight ~ 850 mm
          crew     ~ Jon          ~ stature             ~ 5.9 ft
          demands  ~ rules        ~ ``                  ~ us, un-r53
          demands  ~ gap          ~ ``                  ~ 4 mm
          """)
  void saysWhatTheFileSays(String group, String name, String field, String text) {
    assertThat(PLANK.get(new Field(group, name, field))).isEqualTo(text);
  }

  @Test
  void isInTheOrderOfTheFileAndHasWhatIsWrittenAndNoMore() {
    List<Field> pan = PLANK.keySet().stream().filter(f -> f.name().equals("pan")).toList();
    assertThat(pan)
        .extracting(Field::field)
        .containsExactlyInAnyOrder(
            "kind",
            "role",
            "seat",
            "from",
            "to",
            "board",
            "left",
            "right",
            "layers 1 name",
            "layers 1 thickness",
            "layers 1 density",
            "layers 1 ifd25",
            "layers 1 supportFactor",
            "layers 2 name",
            "layers 2 thickness",
            "layers 2 density",
            "layers 2 closedCell",
            "layers 2 wallStress",
            "layers 2 polymerDensity",
            "layers 3 name",
            "layers 3 thickness",
            "layers 3 density",
            "layers 3 cv40",
            "layers 3 supportFactor",
            "layers 4 name",
            "layers 4 thickness",
            "layers 4 density",
            "layers 4 test thickness",
            "layers 4 test presses 1 depth",
            "layers 4 test presses 1 load",
            "layers 4 test presses 2 depth",
            "layers 4 test presses 2 load",
            "layers 4 test presses 3 depth",
            "layers 4 test presses 3 load",
            "layers 5 name",
            "layers 5 thickness",
            "layers 5 density",
            "layers 5 closedCell",
            "layers 5 polymerDensity",
            "layers 5 stress25",
            "brackets",
            "coverGive",
            "price",
            "fasteners 1 what",
            "fasteners 1 count",
            "fasteners 1 price",
            "fasteners 2 what");
    List<String> groups = new ArrayList<>();
    PLANK.keySet().stream().map(Field::group).filter(g -> !groups.contains(g)).forEach(groups::add);
    assertThat(groups)
        .containsExactly(
            "",
            "titleBlock",
            "measures",
            "pins",
            "parts",
            "ties",
            "limits",
            "wishes",
            "sections",
            "stances",
            "crew",
            "demands",
            "photos",
            "dimensions",
            "lines",
            "stock",
            "variants",
            "asBuilt");
    // a silencer is hot as a rule, a nose is not steered
    assertThat(PLANK.get(new Field("parts", "silencer", "hot"))).isNull();
    assertThat(PLANK.get(new Field("parts", "nose", "steered"))).isNull();
    assertThat(PLANK.get(new Field("parts", "silencer", "outline as traced"))).isNull();
  }

  @TempDir Path folder;

  private Map<Field, String> traced(String d) throws IOException {
    Files.writeString(
        folder.resolve("e.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg'><path id='o' d='" + d + "'/></svg>");
    String drawn =
        "{\"points\": [[\"0 mm\", \"0 mm\"], [\"300 mm\", \"0 mm\"], [\"300 mm\", \"100 mm\"],"
            + " [\"0 mm\", \"100 mm\"]]}";
    Layout layout =
        Plank.layout(
            Plank.with(drawn, "{\"svg\": \"e.svg\", \"path\": \"o\", \"scale\": \"1 mm\"}"),
            folder);
    return LayoutFields.of(layout);
  }

  /** Of a traced outline the corners are counted, and others have another check number. */
  @Test
  void tracedOutlinesTellOtherCorners() throws IOException {
    Field field = new Field("parts", "silencer", "outline as traced");
    String four = traced("M0 0h200v80h-200z").get(field);
    assertThat(four).matches("4 corners, check [0-9a-f]{1,4}");
    assertThat(traced("M0 0h200v80h-200z")).containsEntry(field, four);
    assertThat(traced("M0 0h200v81h-200z").get(field)).startsWith("4 corners").isNotEqualTo(four);
    assertThat(traced("M0 0h200v80h-200v-40z").get(field)).startsWith("5 corners");
    assertThat(traced("M0 0h200v80h-200z"))
        .containsEntry(new Field("parts", "silencer", "outline svg"), "e.svg");
  }
}

package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.document.Fault;

/** Each case spoils plank in one place and names the path and the words of the fault. */
class FaultTest {

  @ParameterizedTest(name = "{2} {3}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          "longlow": 1,                 ~ "longlow": 2,                ~ $.longlow            ~ must be 1
          "longlow": 1,                 ~ "longlow": "1",              ~ $.longlow            ~ must be 1
          "longlow": 1,                 ~ ``                           ~ $.longlow            ~ is missing
          "name": "plank",              ~ "name": "  ",                ~ $.name               ~ is empty
          "name": "plank",              ~ "name": 7,                   ~ $.name               ~ must be text
          "title": "Plank               ~ "titel": "Plank              ~ $.titel              ~ did you mean title?
          "wheelbase": "1640 mm"        ~ "wheelbase": true            ~ $.measures.wheelbase ~ is no quantity
          "wheelbase": "1640 mm"        ~ "wheelbase": "1640 furlong"  ~ $.measures.wheelbase ~ furlong, which is no measure, unit
          "wheelbase": "1640 mm"        ~ "wheelbase": "1640 furlong"  ~ $.measures.wheelbase ~ units are mm cm m in ft, deg rad
          "wheelbase": "1640 mm"        ~ "wheelbase": "1640 milimeter" ~ $.measures.wheelbase ~ write mm
          "wheelbase": "1640 mm"        ~ "wheelbase": "64 inches"     ~ $.measures.wheelbase ~ write in
          "wheelbase": "1640 mm"        ~ "wheelbase": "1640 m"        ~ $.measures.wheelbase ~ is beyond 100000 mm
          "wheelbase": "1640 mm"        ~ "wheelbase": "1640 kg"       ~ $.measures.wheelbase ~ $.pins.frontAxle.at[0] is a mass (such as 80 kg), needs a length
          "wheelbase": "1640 mm"        ~ "wheelbase": "1 mm / 0"      ~ $.measures.wheelbase ~ gives no finite number
          "wheelbase": "1640 mm"        ~ "wheelbase": "sqrt(0 - 1)"   ~ $.measures.wheelbase ~ gives no finite number; look for a division by zero, the root of less than zero, or asin or acos beyond 1
          "wheelbase": "1640 mm"        ~ "wheelbase": "NaN"           ~ $.measures.wheelbase ~ uses NaN, which is no measure
          "wheelbase": "1640 mm"        ~ "wheelbase": "Infinity"      ~ $.measures.wheelbase ~ uses Infinity, which is no measure
          "wheelbase": "1640 mm"        ~ "wheelbase": 1e999           ~ $.measures.wheelbase ~ is beyond the range of numbers
          "wheelbase": "1640 mm"        ~ "wheelbase": "1640 mm", "deg": "3 mm" ~ $.measures.deg ~ is named like the unit deg
          "wheelbase": "1640 mm"        ~ "wheelbase": "1640 mm", "hypot": "3 mm" ~ $.measures.hypot ~ is named like something formulas already know
          "wheelbase": "1640 mm"        ~ "wheelbase": "1640 mm", "pi": "3" ~ $.measures.pi   ~ is named like something formulas already know
          "wheelbase": "1640 mm"        ~ "wheelbase": "1640 mm", "a b": "3" ~ $.measures["a b"] ~ is no good name for a measure
          "wheelbase": "1640 mm"        ~ "wheelbase": "1640 mm", "wheelbase": "3 mm" ~ $.measures.wheelbase ~ is written twice
          "boardTop": "460 mm"          ~ "boardTop": "seatHeight - 60 mm" ~ $.measures.seatHeight.is ~ goes round in a circle: seatHeight -> boardTop -> seatHeight
          "boardTop": "460 mm"          ~ "boardTop": "boardTop"       ~ $.measures.boardTop  ~ goes round in a circle: boardTop -> boardTop
          "boardTop": "460 mm"          ~ "boardTop": "wheelbas - 3 mm" ~ $.measures.boardTop ~ did you mean wheelbase?
          "boardTop": "460 mm"          ~ "boardTop": "460 mm +"       ~ $.measures.boardTop  ~ cannot be read
          "from": "24 deg", "to": "30 deg" ~ "from": "34 deg", "to": "30 deg" ~ $.measures.rake.to ~ is less than from, 34 deg
          "from": "24 deg", "to": "30 deg" ~ "from": "24 mm", "to": "30 deg" ~ $.measures.rake.from ~ is a length
          "headTop": ["1230 mm", "860 mm"] ~ "headTop": ["1230 mm"]    ~ $.pins.headTop       ~ must hold two lengths
          "headTop": ["1230 mm", "860 mm"] ~ "headTop": "1230 mm"      ~ $.pins.headTop       ~ must be a place
          "headTop": ["1230 mm", "860 mm"] ~ "headTop": ["1230 deg", "860 mm"] ~ $.pins.headTop[0] ~ is an angle
          "headTop": ["1230 mm", "860 mm"] ~ "headTop": ["1230 mm", null] ~ $.pins.headTop[1] ~ is no quantity
          "with": "front-wheel"         ~ "with": "front-weel"         ~ $.pins.frontAxle.with ~ did you mean front-wheel?
          "kind": "stand"               ~ "kind": "stnad"              ~ $.parts.sideStand.kind ~ did you mean stand?
          "tyre": "110/80-17"           ~ "tire": "110/80-17"          ~ $.parts.frontWheel   ~ neither a tyre size nor a measured radius
          "tyre": "110/80-17"           ~ "tyre": "about so big"       ~ $.parts.frontWheel.tyre ~ 120/70 R17
          "end": "rear"                 ~ "end": "front"               ~ $.parts              ~ has 2 wheels with "end": "front"
          "end": "rear"                 ~ "end": "back"                ~ $.parts.rearWheel.end ~ must be one of front, rear
          "radius": "300 mm"            ~ "radius": "0 mm"             ~ $.parts.rearWheel.radius ~ must be at least 50 mm
          "mass": "16 kg", "material"   ~ "mass": "-16 kg", "material" ~ $.parts.rearWheel.mass ~ must be more than 0
          "pivot": "linkPivot",         ~ ``                           ~ $.parts.fork.pivot   ~ is missing
          "pivot": "linkPivot",         ~ "pivot": "linkPivt",         ~ $.parts.fork.pivot   ~ did you mean linkPivot?
          "type": "leading-link"        ~ "type": "telescopic"         ~ $.parts.fork.pivot   ~ not part of a telescopic fork
          "rate": "14 N/mm"             ~ "rate": "14 kg"              ~ $.parts.fork.rate    ~ needs a spring rate
          "path": ["lowA", "lowB", "lowC"] ~ "path": ["lowA"]          ~ $.parts.lowRail.path ~ has 1 entry, needs at least 2
          "path": ["lowA", "lowB", "lowC"] ~ "path": ["lowA", "lowA", "lowC"] ~ $.parts.lowRail.path[1] ~ same pin as the one before
          "diameter": "tubeSize"        ~ "diameter": "tubeSize - 2 in" ~ $.parts.lowRail.diameter ~ is -19.05 mm, must be at least 1 mm
          "diameter": "tubeSize"        ~ "diameter": "3 mm"           ~ $.parts.lowRail.wall ~ is more than half the diameter
          "material": "steel"           ~ "material": "stele"          ~ $.parts.lowRail.material ~ did you mean steel?
          "material": "steel"           ~ "material": "mixed"          ~ $.parts.lowRail.mass ~ material mixed has no density
          "touches": ["lowRail", "pipe"] ~ "touches": ["lowRial", "pipe"] ~ $.parts.engine.touches[0] ~ did you mean lowRail?
          "frame": "lowA", "outline": {"points": [["0 mm", "0 mm"], ["300 mm", "0 mm"], ["300 mm", "100 mm"], ["0 mm", "100 mm"]]}, ~ "frame": "lowA", ~ $.parts.silencer.outline ~ is missing
          ["300 mm", "0 mm"], ["300 mm", "100 mm"], ["0 mm", "100 mm"] ~ ["300 mm", "100 mm"], ["300 mm", "0 mm"], ["0 mm", "100 mm"] ~ $.parts.silencer.outline.points ~ crosses or touches itself near x 150 mm, z 50 mm
          ["300 mm", "0 mm"], ["300 mm", "100 mm"], ["0 mm", "100 mm"] ~ ["300 mm", "0 mm"] ~ $.parts.silencer.outline.points ~ needs at least 3
          ["300 mm", "0 mm"], ["300 mm", "100 mm"], ["0 mm", "100 mm"] ~ ["300 mm"], ["300 mm", "100 mm"] ~ $.parts.silencer.outline.points[1] ~ is no vertex
          "left": "230 mm", "right": "-120 mm" ~ "left": "230 mm", "right": "-230 mm" ~ $.parts.silencer.right ~ leaves no width
          "left": "230 mm", "right": "-120 mm" ~ "left": "230 mm"      ~ $.parts.silencer.right ~ is missing
          "thickness": "25 mm"          ~ "thickness": "0 mm"          ~ $.parts.pan.layers[0].thickness ~ must be from 0.1 to 1000 mm
          "thickness": "25 mm"          ~ "thickness": "5 m"           ~ $.parts.pan.layers[0].thickness ~ must be from 0.1 to 1000 mm
          "cv40": "4 kPa"               ~ "cv40": "0.2 kPa"            ~ $.parts.pan.layers[2].cv40 ~ must be at least 0.3 kPa
          "thickness": "25 mm"          ~ "thicknes": "25 mm"          ~ $.parts.pan.layers[0].thicknes ~ did you mean thickness?
          "layers": [{"thickness": "30 mm", "density": "50 kg/m^3", "ifd25": "180 N", "supportFactor": 2.2}] ~ "layers": [] ~ $.parts.back.layers ~ needs at least 1
          "wallStress": "8 kPa",        ~ ``                           ~ $.parts.pan.layers[1].wallStress ~ closed-cell foam needs it
          "closedCell": true,           ~ ``                           ~ $.parts.pan.layers[1].ifd25 ~ open-cell foam needs it
          "supportFactor": 2.2          ~ "supportFactor": 9.9         ~ $.parts.back.layers[0] ~ is no such foam
          "from": "panRear", "to": "backTop" ~ "from": "backTop", "to": "backTop" ~ $.parts.back.to ~ is the same pin as from
          "kind": "peg",                ~ "kind": "peg", "to": "lowA", ~ $.parts.pegs.to      ~ is not a known key here
          "colour": "white"             ~ "colour": "green"            ~ $.parts.headlamp.colour ~ must be one of white, amber, red
          "sideStand": {                ~ "rider": {                   ~ $.parts.rider        ~ is the word for whoever sits
          "lean": "11 deg", "mass"      ~ "lever": "lowA", "mass"      ~ $.parts.sideStand.lever ~ is only for a centre stand
          "lean": "11 deg", "mass"      ~ "type": "pair", "lean": "11 deg", "mass" ~ $.parts.sideStand.lean ~ is only for a side stand
          "pins": ["rearAxle", "frontAxle"] ~ "pins": ["rearAxle"]     ~ $.ties.baseline.pins ~ has 1 entry, ahead needs 2
          "is": "wheelbase"}            ~ "is": "rake"}                ~ $.ties.baseline.is   ~ is an angle
          "is": "wheelbase"}            ~ "it": "wheelbase"}           ~ $.ties.baseline.is   ~ is missing, ahead needs it
          "tie": "rake"                 ~ "tie": "parallel"            ~ $.ties.head.is       ~ is not used by parallel
          "is": "1400 mm", "radii"      ~ "is": "-1400 mm", "radii"    ~ $.ties.belt.is       ~ is -1400 mm, a length must not be negative
          "is": "1400 mm", "radii"      ~ "is": "tubeSize - 1 m", "radii" ~ $.ties.belt.is    ~ must not be negative
          "radii": ["40 mm", "90 mm", "20 mm"] ~ "radii": ["40 mm"] ~ $.ties.belt.radii ~ has 1 entry, a belt over these pins needs 3
          "idlers": ["boardRear"]       ~ "idlers": ["crank", "boardRear"] ~ $.ties.belt.idlers ~ fewer than two wheels
          "idlers": ["boardRear"]       ~ "idlers": ["pegPin"]         ~ $.ties.belt.idlers ~ is not a pin of this belt
          "back": ["boardRear"]         ~ "back": ["crank"]            ~ $.ties.belt.back   ~ is not one of its idlers
          "radii": ["40 mm", "90 mm", "20 mm"] ~ "radii": ["40 mm", "0 mm", "20 mm"] ~ $.ties.belt.radii[1] ~ must be at least 0.1 mm
          "edge": 3                     ~ "edge": 4                    ~ $.ties.onEngine.edge ~ has edges 0 to 3
          "part": "engine", "edge"      ~ "part": "engin", "edge"      ~ $.ties.onEngine.part ~ did you mean engine?
          "part": "engine", "edge"      ~ "part": "lowRail", "edge"    ~ $.ties.onEngine.part ~ has no outline
          "parts": ["engine", "rider"]  ~ "parts": ["engine"]          ~ $.limits.kneeRoom.parts ~ gap needs 2
          "parts": ["engine", "rider"]  ~ "parts": ["rider", "rider"]  ~ $.limits.kneeRoom.parts ~ is named twice
          "parts": ["engine", "rider"]  ~ "parts": ["engine", "engine"] ~ $.limits.kneeRoom.parts ~ is named twice
          "from": "20 mm"               ~ "note": ""                   ~ $.limits.kneeRoom    ~ limits nothing
          "measure": "rake"             ~ "measure": "share"           ~ $.limits.steer.measure ~ is not free
          "weight": 2.5                 ~ "weight": 0                  ~ $.wishes.ease.weight ~ must be a number more than 0
          "weight": 2.5                 ~ "is": "3"                    ~ $.wishes.ease.is     ~ is not used by comfort
          "pivot": "hinge", "angle"     ~ "angle"                      ~ $.sections.canopy    ~ needs either a pivot or the four pins
          "frameArms": ["armA", "armB"] ~ "frameArms": ["armA"]        ~ $.sections.lid.frameArms ~ has 1 entry, needs 2
          "section": "canopy"}          ~ "section": "canpoy"}         ~ $.stances["canopy up"].section ~ did you mean canopy?
          "laden": "laden"              ~ "laden": "landen"            ~ $.stances.laden      ~ did you mean laden?
          "laden": "laden"              ~ "laden": "open"              ~ $.stances.laden.section ~ is missing
          "Mara": {"sex"                ~ "Mara ": {"sex"              ~ $.crew["Mara "]      ~ begins or ends with a blank, which nobody sees; take the blank away
          "wheelbase": "1640 mm"        ~ "wheelbase": "1640 mm", " w": "3" ~ $.measures[" w"] ~ begins or ends with a blank
          "stature": "1620 mm"          ~ "stature": "1620 in"         ~ $.crew.Mara.stature  ~ must be from 1200 to 2200 mm
          "mass": "61 kg"               ~ "mass": "0 kg"               ~ $.crew.Mara.mass     ~ must be from 30 to 200 kg
          "sex": "female"               ~ "sex": "woman"               ~ $.crew.Mara.sex      ~ must be one of female, male
          "sittingheight": "850 mm"     ~ "sitingheight": "850 mm"     ~ $.crew.Mara.measured.sitingheight ~ did you mean sittingheight?
          "sittingheight": "850 mm"     ~ "sittingheight": "8500 mm"   ~ $.crew.Mara.measured ~ sittingheight must be
          "seats": ["rider"]            ~ "seats": ["pillion"]         ~ $.crew.Mara.seats[0] ~ is no seat here
          "gap": "4 mm"                 ~ "gab": "4 mm"                ~ $.demands.gab        ~ did you mean gap?
          "gap": "4 mm"                 ~ "gap": "-4 mm"               ~ $.demands.gap        ~ must not be negative
          "lean": "35 deg"              ~ "lean": "90.1 deg"           ~ $.demands.lean       ~ must be from 0 to 90 deg
          "lean": "35 deg"              ~ "lean": 400                  ~ $.demands.lean       ~ must be from 0 to 90 deg
          "lean": "35 deg"              ~ "lock": "400 deg"            ~ $.demands.lock       ~ must be from 0 to 90 deg
          "lean": "35 deg"              ~ "lock": "-1 deg"             ~ $.demands.lock       ~ must be from 0 to 90 deg
          "lean": "35 deg"              ~ "tip": "91 deg"              ~ $.demands.tip        ~ must be from 0 to 90 deg
          "lean": "35 deg"              ~ "frontShareMin": "38"        ~ $.demands.frontShareMin ~ must be from 0 to 1;
          "lean": "35 deg"              ~ "frontShareMin": "0.6"       ~ $.demands.frontShareMin ~ is more than frontShareMax of 0.58
          "lean": "35 deg"              ~ "frontShareMax": "0.3"       ~ $.demands.frontShareMax ~ is less than frontShareMin of 0.38
          "rules": ["us", "un-r53"]     ~ "rules": ["us", "us"]        ~ $.demands.rules[1]   ~ is named twice
          "rules": ["us", "un-r53"]     ~ "rules": ["us", "un-53"]     ~ $.demands.rules[1]   ~ did you mean un-r53?
          """)
  void faultNamesItsPlace(String piece, String spoilt, String path, String words) {
    List<Fault> faults = Plank.faults(Plank.with(piece, spoilt));
    assertThat(faults).extracting(Fault::path).contains(path);
    assertThat(faults)
        .filteredOn(f -> f.path().equals(path))
        .extracting(Fault::line)
        .anySatisfy(line -> assertThat(line).contains(words).doesNotContain("\n"));
  }

  @Test
  void faultReadsAsOneLine() {
    String text = Plank.with("\"thickness\": \"25 mm\"", "\"thickness\": \"0 mm\"");
    assertThat(Plank.faults(text))
        .extracting(Fault::line)
        .containsExactly(
            "$.parts.pan.layers[0].thickness = \"0 mm\": must be from 0.1 to 1000 mm; write"
                + " another value");
  }

  @Test
  void allFaultsComeAtOnceAndInTheSameOrder() {
    String text =
        Plank.with("\"share\": \"0.46\"", "\"share\": \"0.46 +\"")
            .replace("\"depth\": \"50 mm\"", "\"depth\": \"0 mm\"")
            .replace("\"at\": \"pegPin\"", "\"at\": \"pgPin\"")
            .replace("\"sex\": \"male\"", "\"sex\": \"m\"")
            .replace("\"lean\": \"35 deg\"", "\"lean\": \"35 kg\"");
    List<Fault> faults = Plank.faults(text);
    assertThat(faults)
        .extracting(Fault::path)
        .containsExactly(
            "$.measures.share",
            "$.parts.swingarm.depth",
            "$.parts.pegs.at",
            "$.crew.Jon.sex",
            "$.demands.lean");
    assertThat(Plank.faults(text)).isEqualTo(faults);
  }

  @Test
  void oneLostMeasureMakesNoFurtherFaults() {
    assertThat(
            Plank.faults(Plank.with("\"wheelbase\": \"1640 mm\"", "\"wheelbase\": \"1640 mm x\"")))
        .hasSize(1);
  }

  @Test
  void emptyNamesAndListsSayTheSameAsNone() {
    String usual =
        "\"is\": \"wheelbase\", \"radii\": [], \"part\": \"\", \"edge\": 0, \"inside\": false,"
            + " \"note\": \"\"}";
    assertThat(Plank.layout(Plank.with("\"is\": \"wheelbase\"}", usual))).isEqualTo(Plank.layout());
  }

  @Test
  void rangeIsNotHeldAgainstFreeMeasures() {
    assertThat(
            Plank.faults(
                Plank.with(
                    "\"depth\": \"50 mm\"", "\"depth\": \"50 mm - rake * 1000 mm / 1 deg\"")))
        .isEmpty();
  }

  @Test
  void aMeasureThatNothingUsesIsNoted() {
    String text =
        Plank.with("\"boardTop\": \"460 mm\"", "\"boardTop\": \"460 mm\", \"idle\": \"1 mm\"");
    assertThat(LayoutReader.read(text, null))
        .isInstanceOfSatisfying(
            ReadResult.Read.class,
            read -> assertThat(read.notes()).containsExactly("measure idle is used nowhere"));
  }

  @Test
  void morePartsThanCanBeHeldAgainstEachOtherAreRefused() {
    String box =
        ", \"b%d\": {\"kind\": \"box\", \"frame\": \"rear\", \"left\": 5, \"right\": 5,"
            + " \"mass\": 1, \"outline\": {\"points\": [[0, 0], [9, 0], [9, 9]]}}";
    String wheel =
        "{\"kind\": \"wheel\", \"end\": \"%s\", \"axle\": \"%s\", \"radius\": 300, \"width\": 120}";
    String wheels =
        "\"w\": "
            + wheel.formatted("rear", "rear")
            + ", \"v\": "
            + wheel.formatted("front", "front");
    String file =
        "{\"longlow\": 1, \"name\": \"t\", \"pins\": {\"rear\": [0, 300], \"front\": [1500, 300]},"
            + " \"parts\": {%s%s}}";
    for (int many : new int[] {398, 399}) {
      String boxes =
          IntStream.range(0, many).mapToObj(box::formatted).collect(Collectors.joining());
      assertThat(Plank.faults(file.formatted(wheels, boxes)))
          .extracting(Fault::line)
          .filteredOn(line -> line.contains("takes at most 400"))
          .hasSize(many - 398);
    }
  }

  /** A hundred on two seats are 9900 pairs, and filled the memory. */
  @Test
  void morePeopleAndPairsThanCanBeExaminedAreRefusedByTheirCount() {
    assertThat(crewFaults(21, "\"rider\", \"passenger\"")).isEmpty();
    assertThat(crewFaults(22, "\"rider\", \"passenger\""))
        .containsExactly(
            "$.crew: has 22 people to be examined on 44 seats and in 462 pairs, 506 in all, takes"
                + " at most 500; give fewer of them both seats, or ask longlow fit about a crowd");
    assertThat(crewFaults(500, "\"rider\"")).isEmpty();
    assertThat(crewFaults(501, "\"rider\""))
        .containsExactly(
            "$.crew: has 501 people to be examined on 501 seats and in 0 pairs, 501 in all, takes"
                + " at most 500; leave those out who are like others, or ask longlow fit about a"
                + " crowd");
    assertThat(crewFaults(500, "\"passenger\"")).isEmpty();
    assertThat(crewFaults(501, "\"passenger\"")).hasSize(1);
  }

  private static List<String> crewFaults(int people, String seats) {
    String crew =
        IntStream.range(0, people)
            .mapToObj(
                i ->
                    "\"p"
                        + i
                        + "\": {\"sex\": \"male\", \"stature\": 1750, \"mass\": 75, \"seats\": ["
                        + seats
                        + "]}")
            .collect(Collectors.joining(", "));
    return Plank.faults("{\"longlow\": 1, \"name\": \"t\", \"crew\": {" + crew + "}}").stream()
        .map(Fault::line)
        .filter(line -> line.startsWith("$.crew: "))
        .toList();
  }

  @Test
  void noWheelsIsAFaultOfTheParts() {
    assertThat(Plank.faults("{\"longlow\":1,\"name\":\"x\"}"))
        .extracting(Fault::line)
        .containsExactly(
            "$.parts: has 0 wheels with \"end\": \"front\", needs exactly one; add a part of kind"
                + " wheel",
            "$.parts: has 0 wheels with \"end\": \"rear\", needs exactly one; add a part of kind"
                + " wheel");
  }
}

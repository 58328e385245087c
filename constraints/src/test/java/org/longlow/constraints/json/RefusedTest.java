package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.formula.Formula;

/** What is refused is told once, with what to write instead, in the order of the file. */
class RefusedTest {

  /** Each piece of plank spoilt so that one fault comes of it, whole, and none that follows. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          "longlow": 1,        ~ "longlow": "1",      ~ $.longlow = "1": must be 1, the version of the file format; write "longlow": 1
          "longlow": 1,        ~ "longlow": 0.5,      ~ $.longlow = 0.5: must be 1, the version of the file format; write "longlow": 1
          "longlow": 1,        ~ ``                   ~ $.longlow: is missing; add "longlow", the version of the file: 1
          "longlow": 1,        ~ "longlow": 1.5,      ~ $.longlow = 1.5: must be 1, the version of the file format; read it with a newer Longlow
          "closedCell": true   ~ "closedCell": "true" ~ $.parts.pan.layers[1].closedCell = "true": must be true or false; write it without quotes
          "nailed": true       ~ "nailed": 1          ~ $.pins.rearAxle.nailed = 1: must be true or false; write true
          "nailed": true       ~ "nailed": 0          ~ $.pins.rearAxle.nailed = 0: must be true or false; write false
          "nailed": true       ~ "nailed": 2          ~ $.pins.rearAxle.nailed = 2: must be true or false
          "nailed": true       ~ "nailed": null       ~ $.pins.rearAxle.nailed = null: must be true or false
          "edge": 3            ~ "edge": 3.5          ~ $.ties.onEngine.edge = 3.5: must be a whole number from 0 to 2000
          "at": "pegPin"       ~ "at": 7              ~ $.parts.pegs.at = 7: must be the name of a pin; put the name in quotes
          "headTop": ["1230 mm", "860 mm"] ~ "headTop": 7 ~ $.pins.headTop = 7: must be a place; write ["x mm", "z mm"]
          "touches": ["lowRail", "pipe"] ~ "touches": "lowRail" ~ $.parts.engine.touches = "lowRail": must be a list; write [ ... ], even for one
          "points": ["hinge"   ~ "points": [null      ~ $.parts.screen.outline.points[0] = null: is no vertex; write ["x mm", "z mm"], ["x mm", "z mm", "smooth"], a pin or [pin, "smooth"], each with {"left": "80 mm", "right": "60 mm"} last where the body's reach is said
          "points": ["hinge"   ~ "points": [["1 mm", "2 mm", "3 mm"] ~ $.parts.screen.outline.points[0] = [...]: is no vertex; write ["x mm", "z mm"], ["x mm", "z mm", "smooth"], a pin or [pin, "smooth"], each with {"left": "80 mm", "right": "60 mm"} last where the body's reach is said
          "points": ["hinge"   ~ "points": [["1 mm", "2 mm", "smooth", "smooth"] ~ $.parts.screen.outline.points[0] = [...]: is no vertex; write ["x mm", "z mm"], ["x mm", "z mm", "smooth"], a pin or [pin, "smooth"], each with {"left": "80 mm", "right": "60 mm"} last where the body's reach is said
          "canopy up": {"stance": "open", "section": "canopy"} ~ "canopy up": 3 ~ $.stances["canopy up"] = 3: must be one of unladen, light, laden, full-bump, full-droop, parked, open, or an object; write one of these, in quotes, or some of {"stance": ..., "section": ...}
          """)
  void oneFaultIsToldOnce(String piece, String spoilt, String line) {
    String text = Plank.with(piece, spoilt);
    assertThat(Plank.faults(text)).extracting(Fault::line).containsExactly(line);
  }

  /** Of a file of a later kind nothing is known, so nothing else in it is called wrong. */
  @Test
  void aNewerFileIsNotLookedInto() {
    assertThat(Plank.lines(LayoutReader.read("{\"longlow\": 2, \"engines\": []}", null)))
        .isEqualTo(
            "$.longlow = 2: must be 1, the version of the file format; read it with a newer"
                + " Longlow");
    assertThat(Plank.faults("{\"longlow\": 0, \"engines\": []}"))
        .extracting(Fault::path)
        .startsWith("$.longlow")
        .contains("$.name", "$.engines");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          {"longlow": 1, "name": "x", "pins": []}                ~ $.pins = []: must be an object; write { "name": ..., ... }
          {"longlow": 1, "name": "x", "parts": {"a": []}}        ~ $.parts.a = []: must be an object; write { ... } with its keys
          {"longlow": 1, "name": "x", "parts": {"a": {"kind": 7}}} ~ $.parts.a.kind = 7: must be one of wheel,
          {"longlow": 1, "name": "x", "parts": {"a": {}}}        ~ $.parts.a.kind: is missing; add "kind", one of [wheel,
          {"longlow": 1, "name": "x", "parts": {"a": {"kind": "box", "outline": 3}}} ~ $.parts.a.outline = 3: must be an object; write { ... } with its keys
          {"longlow": 1, "name": "x", "crew": {"a": 3}}          ~ $.crew.a = 3: must be an object; write { ... } with its keys
          """)
  void whatIsOfTheWrongShapeIsToldWithTheRightOne(String text, String line) {
    assertThat(Plank.lines(LayoutReader.read(text, null)).lines())
        .anySatisfy(told -> assertThat(told).startsWith(line));
  }

  @Test
  void aFormulaMayBeFiveHundredCharactersLong() {
    assertThat(Formula.MAX_LENGTH).isEqualTo(500);
    for (int length : new int[] {500, 501}) {
      String formula = "1640 mm" + " ".repeat(length - 7 - 7) + "+ 0 mm".indent(1).stripTrailing();
      assertThat(formula).hasSize(length);
      var faults =
          Plank.faults(
              Plank.with("\"wheelbase\": \"1640 mm\"", "\"wheelbase\": \"" + formula + "\""));
      if (length == 500) {
        assertThat(faults).isEmpty();
      } else {
        assertThat(faults)
            .singleElement()
            .satisfies(
                f ->
                    assertThat(f.line())
                        .endsWith("is longer than 500 characters; split it over several measures"));
      }
    }
  }

  /**
   * Shape and meaning are looked at one after the other, and still what is written first is told
   * first: tables among each other, entries of a table, keys of the file itself.
   */
  @Test
  void faultsComeInTheOrderOfTheFile() {
    String text =
        Plank.with("\"share\": \"0.46\"", "\"share\": \"0.46 kg\"") // is used as a share below
            .replace("\"headTop\": [\"1230 mm\", \"860 mm\"]", "\"headTop\": 1")
            .replace("\"width\": \"130 mm\"", "\"width\": \"-130 mm\"")
            .replace("\"depth\": \"50 mm\"", "\"depth\": true")
            .replace("\"lean\": \"11 deg\"", "\"lean\": \"11 mm\"")
            .replace("\"sections\": {", "\"sections\": [], \"sektions\": {")
            .replace("\"stature\": \"5.9 ft\"", "\"stature\": \"59 ft\"")
            .replace("\"demands\": {", "\"demands\": [], \"demand\": {");
    assertThat(Plank.faults(text))
        .extracting(Fault::path)
        .containsSubsequence(
            "$.pins.headTop",
            "$.parts.rearWheel.width",
            "$.parts.swingarm.depth",
            "$.parts.sideStand.lean",
            "$.wishes.share.is",
            "$.sections",
            "$.crew.Jon.stature",
            "$.demands",
            "$.sektions",
            "$.demand");
  }
}

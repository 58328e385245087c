package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/** What ties are held to at first, by hand. */
class WorthTest {

  private static final Layout WREN = Tried.wren();
  private static final List<String> PINS = List.of("lowA", "lowB", "lowC");

  private static Places at(PointMm... places) {
    Map<String, PointMm> pins = new HashMap<>(Drawn.places(WREN).pins());
    for (int i = 0; i < places.length; i++) {
      pins.put(PINS.get(i), places[i]);
    }
    return Drawn.places(WREN).withPins(pins);
  }

  /** The engine's box is 290 by 250 about (860, 380), its first corner at the lower left. */
  @ParameterizedTest
  @CsvSource({
    "900, 250, engine, 0",
    "1060, 380, engine, 1",
    "900, 520, engine, 2",
    "760, 390, engine, 3",
    "760, 390, pan, 0",
    "760, 390, anvil, 0"
  })
  void theEdgeIsTheNearest(double x, double z, String part, int edge) {
    Places now = at(new PointMm(x, z));
    assertThat(Worth.tie(WREN, now, TieKind.ON_EDGE, List.of("lowA"), part).edge()).isEqualTo(edge);
  }

  @Test
  void anOpenOutlineHasNoEdgeFromItsLastToItsFirst() {
    Outline outline = ((Part.Outlined) WREN.parts().get("engine")).outline();
    Outline open = new Outline.Drawn(outline.vertices(), false);
    Layout layout = Change.set(WREN, open, "parts", "engine", "outline");
    Places now = at(new PointMm(775, 390));
    assertThat(Worth.tie(layout, now, TieKind.ON_EDGE, List.of("lowA"), "engine").edge())
        .isEqualTo(2);
  }

  /** Of (0, 0) to (30, 40) it is 0.6 to (18, 24); 25 square off that changes nothing. */
  @Test
  void partWayIsAShareOfTheLine() {
    Places now = at(new PointMm(18 - 20, 24 + 15), new PointMm(0, 0), new PointMm(30, 40));
    assertThat(is(now, TieKind.PART_WAY)).isCloseTo(0.6, within(1e-9));
  }

  /** Nailed pins count where they are written, others where they are now. */
  @Test
  void aPathIsAsLongAsItIsNow() {
    PointMm a = new PointMm(520, 300);
    PointMm b = new PointMm(760, 190);
    PointMm c = new PointMm(1180, 230);
    double turn = Math.atan2(40, 420) - Math.atan2(-110, 240);
    // both straights reach into the bend by 40 tan(turn / 2) less, and go round it by 40 turn
    double long40 = a.distance(b) + b.distance(c) - 80 * Math.tan(turn / 2) + 40 * turn;
    assertThat(is(at(a), TieKind.PATH_LENGTH)).isCloseTo(long40, within(1e-5));
  }

  private static double is(Places now, TieKind kind) {
    return Worth.tie(WREN, now, kind, PINS, "").is().orElseThrow().evaluate(n -> Double.NaN);
  }

  @Test
  void aRoundFigureStaysAsItIs() {
    assertThat(Worth.rounded(250, Dim.LENGTH, 10).text()).isEqualTo("250 mm");
    assertThat(Worth.rounded(250 - 1e-10, Dim.LENGTH, 10).text()).isEqualTo("250 mm");
    assertThat(Worth.rounded(249.9, Dim.LENGTH, 10).text()).isEqualTo("240 mm");
    assertThat(Worth.rounded(-0.1, Dim.LENGTH, 10).text()).isEqualTo("-10 mm");
    assertThat(Worth.rounded(Math.toRadians(31.9), Dim.ANGLE, 1).text()).isEqualTo("31 deg");
  }
}

package org.longlow.constraints.check.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.ride.WhippleModel;
import org.longlow.constraints.machine.ride.WhippleParameters;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;

/**
 * A layout that is the benchmark bicycle: Meijaard, Papadopoulos, Ruina and Schwab, Proc. R. Soc. A
 * 463 (2007) 1955-1982, table 1, with its weave and capsize speeds, 4.29238253634111 and
 * 6.02426201538837 m/s at 9.81 N/kg.
 *
 * <p>Each frame is four blocks, two either way from its centre, that have its moments: of the rear
 * one 9.2, 2.4 and 2.8 kg m², of the front one 0.05892, -0.00756 and 0.00708. Wheels here turn
 * about a diameter with half of what they have about the axle; what those of the benchmark have
 * besides (0.0003 and 0.0005 kg m²) only ever comes added to that of their frame, and is in its
 * blocks.
 */
class SingleTrackTest {

  private static final double RAKE = Math.PI / 10;
  private static final double TRAIL_MM = 80;
  private static final double WHEELBASE_MM = 1020;
  private static final double FRONT_MM = 350;

  private static String block(
      String name, String pin, double kg, double sideMm, double halfMm, boolean steered) {
    double h = sideMm / 2;
    return String.format(
        Locale.ROOT,
        "'%s': {'kind': 'box', 'frame': '%s', 'outline': {'points': [[%f, %f], [%f, %f], [%f, %f],"
            + " [%f, %f]]}, 'left': %f, 'right': %f, 'mass': %f, 'steered': %b},",
        name,
        pin,
        -h,
        -h,
        h,
        -h,
        h,
        h,
        -h,
        h,
        halfMm,
        halfMm,
        kg,
        steered);
  }

  /** A pin, turned about the rear contact with the whole drawing. */
  private static String pin(String name, double x, double z, double turnedRad) {
    double cos = Math.cos(turnedRad);
    double sin = Math.sin(turnedRad);
    return String.format(
        Locale.ROOT, "'%s': [%.12f, %.12f],", name, x * cos - z * sin, x * sin + z * cos);
  }

  private static Layout bicycle() {
    return bicycle(0);
  }

  /** Returns the bicycle as one draws it who begins with a frame that is not level. */
  private static Layout bicycle(double turnedRad) {
    return bicycle(turnedRad, 0, 0, 0, 0, 0);
  }

  /** Returns one with more rake, more trail, its rear frame elsewhere, a heavier front wheel. */
  private static Layout bicycle(
      double turnedRad, double rakeRad, double trailMm, double xMm, double zMm, double kg) {
    double[][] rear = {
      {205.65343015212106, 274.59103499281795}, {-205.65343015212106, -274.59103499281795},
      {0, 342.7554990500138}, {0, -342.7554990500138}
    };
    double[][] front = {
      {47.67948545583659, -79.27937904240279}, {-47.67948545583659, 79.27937904240279},
      {0, 148.0138959421863}, {0, -148.0138959421863}
    };
    StringBuilder pins = new StringBuilder();
    StringBuilder parts = new StringBuilder();
    for (int k = 0; k < 4; k++) {
      pins.append(pin("b" + k, 300 + xMm + rear[k][0], 900 + zMm + rear[k][1], turnedRad));
      parts.append(block("rear" + k, "b" + k, 85 / 4.0, 20, 187.86728732554484, false));
      pins.append(pin("h" + k, 900 + front[k][0], 700 + front[k][1], turnedRad));
      parts.append(block("front" + k, "h" + k, 1, 10, 47.434164902525694, true));
    }
    double ground = WHEELBASE_MM + TRAIL_MM + trailMm;
    double slope = Math.tan(RAKE + rakeRad);
    pins.append(pin("top", ground - 900 * slope, 900, turnedRad));
    pins.append(pin("bottom", ground - 600 * slope, 600, turnedRad));
    pins.append(pin("rearAxle", 0, 300, turnedRad));
    pins.append(pin("frontAxle", WHEELBASE_MM, FRONT_MM, turnedRad));
    String text =
        "{'longlow': 1, 'name': 'bicycle', 'pins': {"
            + pins.substring(0, pins.length() - 1)
            + "}, 'parts': {"
            + parts
            + "'back': {'kind': 'wheel', 'end': 'rear', 'axle': 'rearAxle', 'radius': 300, 'width': 30,"
            + " 'mass': 2, 'spread': '0.12 / (2 * 0.09)'},"
            + "'fore': {'kind': 'wheel', 'end': 'front', 'axle': 'frontAxle', 'radius': 350, 'width': 30,"
            + String.format(Locale.ROOT, " 'mass': %f,", 3 + kg)
            + " 'spread': '0.28 / (3 * 0.1225)'},"
            + "'fork': {'kind': 'front', 'type': 'telescopic', 'top': 'top', 'bottom': 'bottom', 'axle':"
            + " 'frontAxle', 'tube': 30, 'y': 60, 'bump': 0, 'droop': 0}}}";
    ReadResult read = LayoutReader.read(text.replace('\'', '"'), null);
    assertThat(read).as(String.valueOf(read)).isInstanceOf(ReadResult.Read.class);
    return ((ReadResult.Read) read).layout();
  }

  private static WhippleParameters parameters(Layout layout) {
    Study study = Study.of(layout);
    Standing unladen =
        study.standings().stream()
            .filter(s -> s.kind() == Stance.Kind.UNLADEN)
            .findFirst()
            .orElseThrow();
    return SingleTrack.of(unladen, Wheels.of(layout, study.placed().places())).orElseThrow();
  }

  @Test
  void aLayoutThatIsTheBenchmarkHasItsParameters() {
    WhippleParameters p = parameters(bicycle());
    assertThat(p.wheelbaseM()).isCloseTo(1.02, within(1e-9));
    assertThat(p.trailM()).isCloseTo(0.08, within(1e-9));
    assertThat(p.rakeRad()).isCloseTo(RAKE, within(1e-9));
    body(p.rearFrame(), 0.3, -0.9, 85, 9.2003, 2.4, 2.8003);
    body(p.frontFrame(), 0.9, -0.7, 4, 0.05942, -0.00756, 0.00758);
    wheel(p.rearWheel(), 0.3, 2, 0.06, 0.12);
    wheel(p.frontWheel(), 0.35, 3, 0.14, 0.28);
  }

  @Test
  void aDrawingThatIsNotLevelIsTheSameMachine() {
    for (double turned : new double[] {Math.toRadians(4), Math.toRadians(-7)}) {
      WhippleParameters p = parameters(bicycle(turned));
      assertThat(p.trailM()).isCloseTo(0.08, within(1e-9));
      assertThat(p.rakeRad()).isCloseTo(RAKE, within(1e-9));
      // blocks of 20 and 10 mm, whose sides are not turned with the drawing, are square
      body(p.rearFrame(), 0.3, -0.9, 85, 9.2003, 2.4, 2.8003);
      body(p.frontFrame(), 0.9, -0.7, 4, 0.05942, -0.00756, 0.00758);
    }
  }

  private static void body(
      WhippleParameters.Body b, double x, double z, double kg, double xx, double xz, double zz) {
    assertThat(b.xM()).isCloseTo(x, within(1e-7));
    assertThat(b.zM()).isCloseTo(z, within(1e-7));
    assertThat(b.massKg()).isCloseTo(kg, within(1e-7));
    assertThat(b.ixx()).isCloseTo(xx, within(1e-7));
    assertThat(b.ixz()).isCloseTo(xz, within(1e-7));
    assertThat(b.izz()).isCloseTo(zz, within(1e-7));
  }

  private static void wheel(
      WhippleParameters.Wheel w, double radius, double kg, double xx, double yy) {
    assertThat(w.radiusM()).isCloseTo(radius, within(1e-9));
    assertThat(w.massKg()).isCloseTo(kg, within(1e-9));
    assertThat(w.ixx()).isCloseTo(xx, within(1e-9));
    assertThat(w.iyy()).isCloseTo(yy, within(1e-9));
  }

  @Test
  void aLayoutThatIsTheBenchmarkHasItsSpeeds() {
    WhippleModel model = parameters(bicycle()).model();
    // the equations hold speeds squared over gravity, here 9.80665 N/kg
    double scale = Math.sqrt(9.80665 / 9.81);
    assertThat(model.weaveSpeedMs().orElseThrow())
        .isCloseTo(4.29238253634111 * scale, within(1e-7));
    assertThat(model.capsizeSpeedMs().orElseThrow())
        .isCloseTo(6.02426201538837 * scale, within(1e-7));
  }

  /** Each change of the table, against a layout that is drawn so. */
  @Test
  void eachSmallChangeIsThatOfALayoutDrawnSo() {
    WhippleParameters p = parameters(bicycle());
    alike(Balanced.moreRake(p), bicycle(0, Math.toRadians(3), 0, 0, 0, 0));
    alike(Balanced.moreTrail(p), bicycle(0, 0, 30, 0, 0, 0));
    alike(Balanced.shifted(p, 0.05, 0), bicycle(0, 0, 0, 50, 0, 0));
    alike(Balanced.shifted(p, 0, 0.05), bicycle(0, 0, 0, 0, 50, 0));
    alike(Balanced.heavierFront(p), bicycle(0, 0, 0, 0, 0, 3));
    // its rear wheel of 2 kg, 3 kg heavier all over, and nothing else
    WhippleParameters rear = Balanced.heavierRear(p);
    assertThat(rear.rearWheel().massKg()).isCloseTo(5, within(1e-12));
    assertThat(rear.rearWheel().ixx()).isCloseTo(2.5 * p.rearWheel().ixx(), within(1e-12));
    assertThat(rear.rearWheel().iyy()).isCloseTo(2.5 * p.rearWheel().iyy(), within(1e-12));
    assertThat(rear.rearWheel().radiusM()).isEqualTo(p.rearWheel().radiusM());
    assertThat(rear.frontWheel()).isEqualTo(p.frontWheel());
    assertThat(rear.rearFrame()).isEqualTo(p.rearFrame());
  }

  private static void alike(WhippleParameters changed, Layout drawn) {
    WhippleModel model = parameters(drawn).model();
    assertThat(changed.model().weaveSpeedMs().orElseThrow())
        .isCloseTo(model.weaveSpeedMs().orElseThrow(), within(1e-7))
        .isNotCloseTo(parameters(bicycle()).model().weaveSpeedMs().orElseThrow(), within(1e-3));
    assertThat(changed.model().capsizeSpeedMs().orElseThrow())
        .isCloseTo(model.capsizeSpeedMs().orElseThrow(), within(1e-7));
  }
}

package org.longlow.sketcher.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.rider.geom.PointMm;

class HomographyTest {

  /**
   * A pinhole camera put up in space before a plane: the independent account. World axes: x along
   * the plane, z up it, y towards the camera.
   */
  private record Pinhole(double[] eye, double[] right, double[] up, double[] ahead, double focus) {

    static Pinhole random(SplittableRandom random) {
      double[] eye = {
        random.nextDouble(-1500, 3000), random.nextDouble(2500, 5000), random.nextDouble(-500, 2500)
      };
      double[] aim = {random.nextDouble(500, 1500), 0, random.nextDouble(300, 900)};
      double[] ahead = unit(minus(aim, eye));
      double roll = random.nextDouble(-0.2, 0.2);
      double[] level = unit(cross(new double[] {0, 0, 1}, ahead));
      double[] upright = cross(ahead, level);
      double[] right = new double[3];
      double[] up = new double[3];
      for (int i = 0; i < 3; i++) {
        right[i] = Math.cos(roll) * -level[i] + Math.sin(roll) * upright[i];
        up[i] = Math.cos(roll) * upright[i] + Math.sin(roll) * level[i];
      }
      return new Pinhole(eye, right, up, ahead, random.nextDouble(2500, 4500));
    }

    Pixel see(double x, double z) {
      double[] d = minus(new double[] {x, 0, z}, eye);
      double far = dot(d, ahead);
      return new Pixel(2000 + focus * dot(d, right) / far, 1500 - focus * dot(d, up) / far);
    }

    private static double[] minus(double[] a, double[] b) {
      return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    private static double dot(double[] a, double[] b) {
      return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] cross(double[] a, double[] b) {
      return new double[] {
        a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
      };
    }

    private static double[] unit(double[] a) {
      double l = Math.sqrt(dot(a, a));
      return new double[] {a[0] / l, a[1] / l, a[2] / l};
    }
  }

  static LongStream seeds() {
    return LongStream.range(0, 50);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void whatAPinholeCameraSeesIsFoundAgain(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Pinhole camera = Pinhole.random(random);
    double w = random.nextDouble(400, 2500);
    double h = random.nextDouble(300, 1500);
    List<Pixel> corners =
        List.of(camera.see(0, 0), camera.see(w, 0), camera.see(w, h), camera.see(0, h));
    Homography map = Homography.of(corners, w, h);
    for (int i = 0; i < 40; i++) {
      double x = random.nextDouble(-300, 2500);
      double z = random.nextDouble(-100, 1600);
      Pixel seen = camera.see(x, z);
      PointMm found = map.onPlane(seen).orElseThrow();
      assertThat(found.distance(new PointMm(x, z))).isLessThan(1e-4);
      Pixel back = map.onPhoto(found).orElseThrow();
      assertThat(back.distance(seen)).as("there and back").isLessThan(0.05);
    }
  }

  @Test
  void straightOnEachPixelIsOfOneSizeAndZIsUp() {
    Homography map = Homography.straight(0.8);
    assertThat(map.onPlane(new Pixel(100, 50))).contains(new PointMm(80, -40));
    Pixel back = map.onPhoto(new PointMm(80, -40)).orElseThrow();
    assertThat(back.right()).isCloseTo(100, within(1e-9));
    assertThat(back.down()).isCloseTo(50, within(1e-9));
  }

  @Test
  void aboveTheHorizonThereIsNoPlane() {
    // edges that run together at (100, 0): the horizon of a floor, seen level
    List<Pixel> corners =
        List.of(new Pixel(0, 100), new Pixel(200, 100), new Pixel(150, 50), new Pixel(50, 50));
    Homography map = Homography.of(corners, 1000, 1000);
    assertThat(map.onPlane(new Pixel(100, 1))).isPresent();
    assertThat(map.onPlane(new Pixel(100, -1))).isEmpty();
    assertThat(map.onPlane(new Pixel(100, 0))).isEmpty();
    // the camera's own height over the floor is beneath the photo for ever
    assertThat(map.onPhoto(new PointMm(500, -1001))).isEmpty();
    assertThat(map.onPhoto(new PointMm(500, -990))).isPresent();
  }

  @Test
  void cornersLieWhereTheyAreSaidToBe() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 200; i++) {
      List<Pixel> corners = new ArrayList<>();
      double[][] unit = {{0, 400}, {600, 400}, {600, 0}, {0, 0}};
      for (double[] c : unit) {
        corners.add(
            new Pixel(c[0] + random.nextDouble(-90, 90), c[1] + random.nextDouble(-90, 90)));
      }
      Homography map = Homography.of(corners, 1200, 900);
      double[][] plane = {{0, 0}, {1200, 0}, {1200, 900}, {0, 900}};
      for (int k = 0; k < 4; k++) {
        PointMm at = map.onPlane(corners.get(k)).orElseThrow();
        assertThat(at.distance(new PointMm(plane[k][0], plane[k][1]))).isLessThan(1e-6);
      }
    }
  }
}

package org.longlow.sketcher.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.longlow.rider.geom.PointMm;

class FlatPhotoTest {

  private static final int WIDE = 800;
  private static final int HIGH = 600;
  private static final List<Pixel> CORNERS =
      List.of(new Pixel(150, 450), new Pixel(675, 400), new Pixel(650, 165), new Pixel(175, 100));

  private static final PhotoPlace PLACE =
      new PhotoPlace(
          Homography.of(CORNERS, 1200, 600),
          PointMm.ORIGIN,
          new PointMm(1, 0),
          new PointMm(310, -40),
          PointMm.unit(0.2));

  /** What a point of the plane shows: red to the right of a wavy line, blue to its left. */
  private static boolean isRed(PointMm at) {
    return at.x() > 500 + 0.3 * at.z();
  }

  private static PhotoFile seen(Homography camera) {
    int[] argb = new int[WIDE * HIGH];
    for (int y = 0; y < HIGH; y++) {
      for (int x = 0; x < WIDE; x++) {
        Optional<PointMm> at = camera.onPlane(new Pixel(x + 0.5, y + 0.5));
        argb[y * WIDE + x] = at.isEmpty() ? 0xff00ff00 : isRed(at.get()) ? 0xffff0000 : 0xff0000ff;
      }
    }
    return new PhotoFile(new Raster(WIDE, HIGH, argb), 1, WIDE, HIGH, "");
  }

  @Test
  void laidFlatEachPlaceShowsWhatTheCameraSawThere() {
    Homography camera = Homography.of(CORNERS, 1200, 600);
    FlatPhoto flat = FlatPhoto.squared(seen(camera), CORNERS, 1200, 600);
    SplittableRandom random = new SplittableRandom(4);
    int looked = 0;
    for (int i = 0; i < 2000; i++) {
      int right = random.nextInt(flat.raster().width());
      int down = random.nextInt(flat.raster().height());
      PointMm plane =
          new PointMm(
              flat.leftMm() + (right + 0.5) * flat.mmPerPx(),
              flat.topMm() - (down + 0.5) * flat.mmPerPx());
      Optional<Pixel> pixel = camera.onPhoto(plane);
      int argb = flat.raster().at(right, down);
      boolean inside =
          pixel.isPresent()
              && pixel.get().right() > 1
              && pixel.get().right() < WIDE - 1
              && pixel.get().down() > 1
              && pixel.get().down() < HIGH - 1;
      boolean byTheLine = Math.abs(plane.x() - 500 - 0.3 * plane.z()) < 25;
      if (inside && !byTheLine) {
        assertThat(argb).isEqualTo(isRed(plane) ? 0xffff0000 : 0xff0000ff);
        looked++;
      } else if (pixel.isPresent() && (pixel.get().right() < -1 || pixel.get().down() < -1)) {
        assertThat(argb).as("the camera saw nothing there").isZero();
      }
      PointMm machine = flat.inMachine(PLACE, right + 0.5, down + 0.5);
      assertThat(machine.distance(PLACE.ofPlane(plane))).isLessThan(1e-9);
    }
    assertThat(looked).isGreaterThan(800);
  }

  @Test
  void allThatWasSeenNearByIsLaidFlat() {
    Homography camera = Homography.of(CORNERS, 1200, 600);
    FlatPhoto flat = FlatPhoto.squared(seen(camera), CORNERS, 1200, 600);
    double right = flat.leftMm() + flat.raster().width() * flat.mmPerPx();
    double low = flat.topMm() - flat.raster().height() * flat.mmPerPx();
    for (Pixel edge :
        List.of(new Pixel(0, HIGH), new Pixel(WIDE, HIGH), new Pixel(WIDE, 0), new Pixel(0, 0))) {
      PointMm at = camera.onPlane(edge).orElseThrow();
      assertThat(at.x()).isBetween(flat.leftMm() - 1e-6, right + 1e-6);
      assertThat(at.z()).isBetween(low - 1e-6, flat.topMm() + 1e-6);
    }
  }

  @Test
  void aFloorThatRunsToTheHorizonStaysWithinBounds() {
    // the horizon is at half the height of the photo
    List<Pixel> floor =
        List.of(new Pixel(250, 500), new Pixel(550, 500), new Pixel(475, 400), new Pixel(325, 400));
    FlatPhoto flat = FlatPhoto.squared(seen(Homography.of(floor, 900, 900)), floor, 900, 900);
    Raster raster = flat.raster();
    assertThat((long) raster.width() * raster.height()).isLessThan(PhotoFile.KEPT_PX + 50_000L);
    for (int argb : raster.argb()) {
      assertThat(argb).as("nothing from above the horizon").isNotEqualTo(0xff00ff00);
    }
  }

  @Test
  void straightOnAPixelOfTheRasterIsSomeOfTheFile() {
    PhotoFile file = new PhotoFile(new Raster(2, 1, new int[2]), 3, 6, 3, "");
    FlatPhoto flat = FlatPhoto.straight(file);
    PhotoPlace place =
        new PhotoPlace(
            Homography.straight(0.5),
            PointMm.ORIGIN,
            new PointMm(1, 0),
            new PointMm(100, 200),
            new PointMm(1, 0));
    assertThat(flat.inMachine(place, 2, 1)).isEqualTo(new PointMm(103, 198.5));
    assertThat(place.inMachine(new Pixel(6, 3))).contains(new PointMm(103, 198.5));
  }
}

package org.longlow.sketcher.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.rider.geom.PointMm;

/**
 * A photo as it is painted: a picture whose pixels are squares of one size on the photo's own
 * plane, so that a plain turn, shift and scale brings it to the card.
 *
 * @param raster the picture
 * @param leftMm left edge on the plane; for a photo taken straight on, all is in its own pixels
 * @param topMm upper edge likewise
 * @param mmPerPx size of a pixel likewise, &gt; 0
 * @param straight true if it was taken straight on
 */
public record FlatPhoto(
    Raster raster, double leftMm, double topMm, double mmPerPx, boolean straight) {

  /** How far beyond the known rectangle it is laid flat, in widths and heights of that. */
  private static final double BEYOND = 4;

  /** A pixel this much nearer the horizon than the rectangle is stretched beyond use. */
  private static final double HORIZON = 0.12;

  /** Returns a photo that was taken straight on. */
  public static FlatPhoto straight(PhotoFile file) {
    return new FlatPhoto(file.raster(), 0, 0, file.step(), true);
  }

  /**
   * Returns a photo laid flat by what it shows of a known rectangle.
   *
   * @param corners of the rectangle, see {@link Homography#of}
   */
  public static FlatPhoto squared(
      PhotoFile file, List<Pixel> corners, double widthMm, double heightMm) {
    Homography camera = Homography.of(corners, widthMm, heightMm);
    double left = 0;
    double right = widthMm;
    double low = 0;
    double high = heightMm;
    for (Pixel pixel : seen(file, camera, corners)) {
      Optional<PointMm> at = camera.onPlane(pixel);
      if (at.isPresent()) {
        left = Math.min(left, at.get().x());
        right = Math.max(right, at.get().x());
        low = Math.min(low, at.get().z());
        high = Math.max(high, at.get().z());
      }
    }
    left = Math.max(left, -BEYOND * widthMm);
    right = Math.min(right, (1 + BEYOND) * widthMm);
    low = Math.max(low, -BEYOND * heightMm);
    high = Math.min(high, (1 + BEYOND) * heightMm);
    double finest =
        file.step()
            / Math.max(
                Math.max(
                        corners.get(0).distance(corners.get(1)),
                        corners.get(3).distance(corners.get(2)))
                    / widthMm,
                Math.max(
                        corners.get(0).distance(corners.get(3)),
                        corners.get(1).distance(corners.get(2)))
                    / heightMm);
    double wide = right - left;
    double tall = high - low;
    double coarsest =
        Math.max(
            Math.sqrt(wide * tall / PhotoFile.KEPT_PX),
            Math.max(wide, tall) / PhotoFile.MAX_SIDE_PX);
    double mmPerPx = Math.max(finest, coarsest);
    int width = (int) Math.max(1, Math.ceil(wide / mmPerPx));
    int height = (int) Math.max(1, Math.ceil(tall / mmPerPx));
    int[] argb = new int[width * height];
    for (int row = 0; row < height; row++) {
      for (int column = 0; column < width; column++) {
        PointMm at = new PointMm(left + (column + 0.5) * mmPerPx, high - (row + 0.5) * mmPerPx);
        Optional<Pixel> pixel =
            camera.onPhoto(at).filter(p -> camera.nearness(p, corners.get(0)) > HORIZON);
        if (pixel.isPresent()) {
          argb[row * width + column] =
              file.raster()
                  .between(pixel.get().right() / file.step(), pixel.get().down() / file.step());
        }
      }
    }
    return new FlatPhoto(new Raster(width, height, argb), left, high, mmPerPx, false);
  }

  /** Points along the edge of what can be laid flat: the photo up to short of the horizon. */
  private static List<Pixel> seen(PhotoFile file, Homography camera, List<Pixel> corners) {
    double w = file.widthPx();
    double h = file.heightPx();
    Pixel[] edge = {new Pixel(0, h), new Pixel(w, h), new Pixel(w, 0), new Pixel(0, 0)};
    List<Pixel> seen = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Pixel a = edge[i];
      Pixel b = edge[(i + 1) % 4];
      double na = camera.nearness(a, corners.get(0)) - HORIZON;
      double nb = camera.nearness(b, corners.get(0)) - HORIZON;
      if (na >= 0) {
        seen.add(a);
      }
      if (na * nb < 0) {
        double share = na / (na - nb);
        seen.add(
            new Pixel(
                a.right() + (b.right() - a.right()) * share,
                a.down() + (b.down() - a.down()) * share));
      }
    }
    return seen;
  }

  /**
   * Returns where in the machine a place of the raster lies.
   *
   * @param right pixels of the raster
   * @param down pixels of the raster
   */
  public PointMm inMachine(PhotoPlace place, double right, double down) {
    double x = leftMm + right * mmPerPx;
    double y = topMm - down * mmPerPx;
    return straight
        ? place.inMachine(new Pixel(x, -y)).orElseThrow()
        : place.ofPlane(new PointMm(x, y));
  }
}

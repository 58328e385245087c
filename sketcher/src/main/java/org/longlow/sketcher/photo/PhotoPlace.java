package org.longlow.sketcher.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Photo;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/**
 * Where a photo lies in the axes of the drawn machine: its plane is laid flat by a camera map, then
 * turned and shifted.
 *
 * @param camera from pixels to the photo's own plane
 * @param base origin of the axes that the photo lies in: the machine's or its part's
 * @param along x axis of those, a unit vector
 * @param origin of the photo's plane
 * @param axis x axis of the photo's plane, a unit vector
 */
public record PhotoPlace(
    Homography camera, PointMm base, PointMm along, PointMm origin, PointMm axis) {

  private static final Formula NOUGHT = Formula.of(0, Unit.MM);

  /** The origin of an outline and a place on its x axis. */
  private static final Outline AXES =
      new Outline.Drawn(
          List.of(
              new Vertex(NOUGHT, NOUGHT, null, false),
              new Vertex(Formula.of(1, Unit.MM), NOUGHT, null, false)),
          false);

  /** Returns where {@code photo} lies. */
  public static PhotoPlace of(Photo photo, Layout layout, Places places) {
    PointMm base = PointMm.ORIGIN;
    PointMm along = new PointMm(1, 0);
    Part part = photo.part().map(layout.parts()::get).orElse(null);
    if (part instanceof Part.Outlined outlined) {
      List<PointMm> axes = Outlines.vertices(outlined.frame(), AXES, places);
      base = axes.get(0);
      along = axes.get(1).minus(base);
    } else if (part != null && !part.pins().isEmpty()) {
      base = places.pin(part.pins().get(0));
    }
    double x = places.value(photo.x());
    double z = places.value(photo.z());
    PointMm origin = base.plus(along.times(x)).plus(along.left().times(z));
    double turn = photo.turn().map(places::value).orElse(0.0);
    PointMm axis = PointMm.unit(along.angleRad() + turn);
    return new PhotoPlace(camera(photo, places), base, along, origin, axis);
  }

  private static Homography camera(Photo photo, Places places) {
    if (photo.corners().isEmpty()) {
      return Homography.straight(photo.scale().map(places::value).orElse(1.0));
    }
    return Homography.of(
        corners(photo, places),
        places.value(photo.width().orElseThrow()),
        places.value(photo.height().orElseThrow()));
  }

  /** Returns the corners of the rectangle that a photo shows at a slant; none if it shows none. */
  public static List<Pixel> corners(Photo photo, Places places) {
    List<Pixel> corners = new ArrayList<>();
    photo
        .corners()
        .forEach(c -> corners.add(new Pixel(places.value(c.get(0)), places.value(c.get(1)))));
    return corners;
  }

  /** Returns where in the machine a pixel lies; empty at the horizon and above it. */
  public Optional<PointMm> inMachine(Pixel pixel) {
    return camera.onPlane(pixel).map(this::ofPlane);
  }

  /** Returns the pixel at a place of the machine; empty if the camera cannot have seen it. */
  public Optional<Pixel> onPhoto(PointMm place) {
    PointMm d = place.minus(origin);
    return camera.onPhoto(new PointMm(axis.dot(d), axis.cross(d)));
  }

  /** Returns where in the machine a place of the photo's own plane lies. */
  public PointMm ofPlane(PointMm p) {
    return origin.plus(axis.times(p.x())).plus(axis.left().times(p.z()));
  }

  /** Returns a shift of the machine in the axes that the photo lies in. */
  public PointMm inBase(PointMm shift) {
    return new PointMm(along.dot(shift), along.cross(shift));
  }
}

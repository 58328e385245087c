package org.longlow.sketcher.edit;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.ShownQuantity;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Photo;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.words.Names;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.photo.PhotoPlace;
import org.longlow.sketcher.photo.Pixel;

/**
 * Edits of photos to draw over. Each is one step; what was marked on the photo stays where it lay.
 */
public final class PhotoEdits {

  /** The group of the document. */
  public static final String GROUP = "photos";

  private static final int LONGEST_NAME = 40;

  private static final String NOT_A_NAME = "[^\\p{L}\\p{M}\\p{N} _.'()+-]+";

  private PhotoEdits() {}

  public static Entries.Entry entry(String name) {
    return new Entries.Entry(GROUP, name);
  }

  /** Returns a name for a new photo, after its file; no other photo has it. */
  public static String unused(Layout layout, String file) {
    String last = Path.of(file).getFileName().toString().replaceFirst("\\.[A-Za-z]+$", "");
    String plain = last.replaceAll(NOT_A_NAME, "-").replaceFirst("^[^\\p{L}\\p{N}]+", "").strip();
    String base =
        plain.isEmpty() ? "photo" : plain.substring(0, Math.min(plain.length(), LONGEST_NAME));
    String free = base.strip();
    for (int n = 2; layout.photos().containsKey(free); n++) {
      free = base.strip() + " " + n;
    }
    return free;
  }

  /**
   * Returns the edit that puts a photo in, as broad as a box and in its middle, until it is scaled.
   *
   * @param file relative to the folder of the layout
   * @param widthPx of the photo
   * @param heightPx of the photo
   * @param box mm, such as that of the machine
   */
  public static Edit put(String name, String file, int widthPx, int heightPx, Envelope box) {
    double scaleMm = round(box.getWidth() / widthPx, 4);
    Photo photo =
        new Photo(
            file,
            Photo.View.SIDE,
            Optional.empty(),
            length((box.getMinX() + box.getMaxX() - widthPx * scaleMm) / 2),
            length((box.getMinY() + box.getMaxY() + heightPx * scaleMm) / 2),
            Optional.empty(),
            Optional.of(Formula.of(scaleMm, Unit.MM)),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Formula.parse("0.5"),
            false,
            false,
            "");
    return new Edit(
        "put in photo " + name,
        layout -> {
          Map<String, Photo> photos = new LinkedHashMap<>(layout.photos());
          if (photos.putIfAbsent(name, photo) != null) {
            throw new OutOfRange("there is already a photo called " + name);
          }
          return Change.set(layout, photos, GROUP);
        });
  }

  /**
   * Returns the edit that scales a photo by two points of it and what is between them; the first
   * stays where it lies.
   *
   * @param text the length as typed, a quantity or formula
   */
  public static Edit scaled(String name, Places places, Pixel a, Pixel b, String text) {
    return new Edit(
        "scale photo " + name + " by " + text.strip(),
        layout -> {
          Photo photo = photo(layout, name);
          Formula length = size(layout, places, text);
          PhotoPlace place = PhotoPlace.of(photo, layout, places);
          Layout scaled =
              photo.corners().isEmpty()
                  ? ofPixels(layout, name, length, apart(a, b))
                  : ofRectangle(layout, name, photo, places, length, place, a, b);
          return kept(scaled, name, places, a, place.inMachine(a));
        });
  }

  private static double apart(Pixel a, Pixel b) {
    double px = round(a.distance(b), 2);
    if (px < 1) {
      throw new OutOfRange("the two points are on one spot; mark them further apart");
    }
    return px;
  }

  /** The scale keeps the length as it was typed, so a formula goes on to hold. */
  private static Layout ofPixels(Layout layout, String name, Formula length, double px) {
    String pixels = Formula.of(px, Unit.NONE).text();
    Formula scale = Formula.parse(length.bracketed() + " / " + pixels);
    return Change.set(layout, scale, GROUP, name, "scale");
  }

  private static Layout ofRectangle(
      Layout layout,
      String name,
      Photo photo,
      Places places,
      Formula length,
      PhotoPlace place,
      Pixel a,
      Pixel b) {
    apart(a, b);
    double now = onPlane(place, a).distance(onPlane(place, b));
    double times = places.value(length) / now;
    Layout wide =
        Change.set(
            layout,
            length(places.value(photo.width().orElseThrow()) * times),
            GROUP,
            name,
            "width");
    return Change.set(
        wide, length(places.value(photo.height().orElseThrow()) * times), GROUP, name, "height");
  }

  private static PointMm onPlane(PhotoPlace place, Pixel pixel) {
    return place
        .inMachine(pixel)
        .orElseThrow(() -> new OutOfRange("that point is beyond the horizon of the photo"));
  }

  /**
   * Returns the edit that turns a photo so that the line through two points of it is level; the
   * first stays where it lies.
   */
  public static Edit level(String name, Places places, Pixel a, Pixel b) {
    return new Edit(
        "level photo " + name,
        layout -> {
          apart(a, b);
          PhotoPlace place = PhotoPlace.of(photo(layout, name), layout, places);
          double slope = onPlane(place, b).minus(onPlane(place, a)).angleRad();
          // a line has two directions; the shorter turn brings it level
          double off = slope - Math.PI * Math.rint(slope / Math.PI);
          double turn = place.axis().angleRad() - off - place.along().angleRad();
          return kept(turned(layout, name, turn), name, places, a, place.inMachine(a));
        });
  }

  private static Layout turned(Layout layout, String name, double turnRad) {
    double within = Math.IEEEremainder(turnRad, 2 * Math.PI);
    Formula turn = Formula.of(Math.toRadians(round(Math.toDegrees(within), 4)), Unit.DEG);
    return Change.set(layout, turn, GROUP, name, "turn");
  }

  /**
   * Returns the edit that lays a photo flat by a rectangle of known size that it shows at a slant.
   * Its lower edge is level then; its lower left corner stays where it lies.
   *
   * @param corners lower left, lower right, upper right, upper left
   * @param width as typed
   * @param height as typed
   */
  public static Edit squared(
      String name, Places places, List<Pixel> corners, String width, String height) {
    return new Edit(
        "square up photo " + name,
        layout -> {
          Photo photo = photo(layout, name);
          Optional<PointMm> was = PhotoPlace.of(photo, layout, places).inMachine(corners.get(0));
          Photo next =
              new Photo(
                  photo.file(),
                  photo.view(),
                  photo.part(),
                  photo.x(),
                  photo.z(),
                  Optional.empty(),
                  Optional.empty(),
                  corners.stream().map(PhotoEdits::pixels).toList(),
                  Optional.of(size(layout, places, width)),
                  Optional.of(size(layout, places, height)),
                  photo.fade(),
                  photo.locked(),
                  photo.hidden(),
                  photo.note());
          return kept(Change.set(layout, next, GROUP, name), name, places, corners.get(0), was);
        });
  }

  /**
   * Returns the edit that shows a photo as it was taken again, as large as it was along the lower
   * edge of its rectangle; the lower left corner of that stays where it lies.
   */
  public static Edit asTaken(String name, Places places) {
    return new Edit(
        "show photo " + name + " as taken",
        layout -> {
          Photo photo = photo(layout, name);
          if (photo.corners().isEmpty()) {
            throw new OutOfRange("photo " + name + " is shown as it was taken");
          }
          List<Pixel> corners = PhotoPlace.corners(photo, places);
          double px = corners.get(0).distance(corners.get(1));
          double scaleMm = places.value(photo.width().orElseThrow()) / px;
          Optional<PointMm> was = PhotoPlace.of(photo, layout, places).inMachine(corners.get(0));
          Photo next =
              new Photo(
                  photo.file(),
                  photo.view(),
                  photo.part(),
                  photo.x(),
                  photo.z(),
                  photo.turn(),
                  Optional.of(Formula.of(scaleMm, Unit.MM)),
                  List.of(),
                  Optional.empty(),
                  Optional.empty(),
                  photo.fade(),
                  photo.locked(),
                  photo.hidden(),
                  photo.note());
          return kept(Change.set(layout, next, GROUP, name), name, places, corners.get(0), was);
        });
  }

  /** Reads a length; a bare number is one of the units shown. */
  private static Formula size(Layout layout, Places places, String text) {
    Formula typed = Formula.parse(ShownQuantity.typed(text.strip(), Dim.LENGTH, layout.units()));
    for (String name : typed.names()) {
      if (!places.measures().containsKey(name)) {
        throw new OutOfRange(
            "no measure is called "
                + name
                + "; "
                + Names.advice(name, layout.measures().keySet(), "measure"));
      }
    }
    Formula length =
        typed.isBareNumber()
            ? Formula.parse(typed.text().strip() + " mm")
            : typed.as(Dim.LENGTH, n -> Measures.dim(layout, n));
    if (!(places.value(length) > 0)) {
      throw new OutOfRange("a length must be more than 0, such as 1600 mm");
    }
    return length;
  }

  private static List<Formula> pixels(Pixel corner) {
    return List.of(
        Formula.of(round(corner.right(), 2), Unit.NONE),
        Formula.of(round(corner.down(), 2), Unit.NONE));
  }

  /** Returns the edit that shifts a photo, by mm in the axes of the machine. */
  public static Edit moved(String name, Places places, PointMm by) {
    return new Edit(
        "move photo " + name,
        layout -> {
          Photo photo = photo(layout, name);
          PhotoPlace place = PhotoPlace.of(photo, layout, places);
          return shifted(layout, name, photo, places, place.inBase(by));
        });
  }

  /** Returns the edit that shows a photo paler or less so, from 0 to 1. */
  public static Edit faded(String name, double share) {
    Formula fade = Formula.of(round(share, 2), Unit.NONE);
    return new Edit("fade photo " + name, layout -> Change.set(layout, fade, GROUP, name, "fade"));
  }

  /** Returns the edit that locks a photo where it lies, or frees it. */
  public static Edit locked(String name, boolean on) {
    return flag(on ? "lock photo " : "free photo ", name, "locked", on);
  }

  /** Returns the edit that hides a photo, or shows it again. */
  public static Edit hidden(String name, boolean on) {
    return flag(on ? "hide photo " : "show photo ", name, "hidden", on);
  }

  private static Edit flag(String does, String name, String key, boolean on) {
    return new Edit(does + name, layout -> Change.set(layout, on, GROUP, name, key));
  }

  /** Shifts a photo so that one pixel of it lies where it lay. */
  private static Layout kept(
      Layout layout, String name, Places places, Pixel pixel, Optional<PointMm> was) {
    Photo photo = photo(layout, name);
    PhotoPlace place = PhotoPlace.of(photo, layout, places);
    Optional<PointMm> now = place.inMachine(pixel);
    return was.isEmpty() || now.isEmpty()
        ? layout
        : shifted(layout, name, photo, places, place.inBase(was.get().minus(now.get())));
  }

  private static Layout shifted(
      Layout layout, String name, Photo photo, Places places, PointMm by) {
    List<Formula> at = List.of(along(photo.x(), places, by.x()), along(photo.z(), places, by.z()));
    return Change.set(layout, at, GROUP, name, "at");
  }

  /** A place that does not change stays as it was written. */
  private static Formula along(Formula was, Places places, double byMm) {
    return Math.abs(byMm) < 0.0005 ? was : length(places.value(was) + byMm);
  }

  private static Photo photo(Layout layout, String name) {
    Photo photo = layout.photos().get(name);
    if (photo == null) {
      throw new OutOfRange("there is no photo called " + name);
    }
    return photo;
  }

  private static Formula length(double mm) {
    return Formula.of(round(mm, 3), Unit.MM);
  }

  private static double round(double value, int digits) {
    double tens = Math.pow(10, digits);
    return Math.rint(value * tens) / tens;
  }
}

package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.ANGLE;
import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.NUMBER;
import static org.longlow.constraints.document.Type.TEXT;
import static org.longlow.constraints.document.Type.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Photo;
import org.longlow.constraints.words.Quoted;

/** Photos to draw over. */
final class PhotoKinds {

  /** How pale a photo is where nothing is said: lines over it are read and it is still seen. */
  private static final Formula FADE = Formula.of(0.5, Unit.NONE);

  /** Judgement: no photo that is drawn over sees so closely, mm a pixel. */
  private static final double LEAST_PIXEL_MM = 1e-4;

  /** Likewise the smallest rectangle that a photo is squared up by, mm. */
  private static final double LEAST_MM = 1;

  private static final Type<List<List<Formula>>> CORNERS =
      new Type.ListOf<>(new Type.ListOf<>(NUMBER, 2, 2), 0, 4);

  /** What leads out of a folder or is no name everywhere. */
  private static final Pattern ELSEWHERE = Pattern.compile("^/|\\\\|:|(^|/)\\.\\.(/|$)");

  static final Kind<Photo> PHOTO =
      Kind.of(
              "photo",
              "A photo under the drawing, to draw over; nothing is worked out from it. Its pixels"
                  + " are counted from its upper left corner, to the right and down.",
              PhotoKinds::photo)
          .rule(PhotoKinds::filed)
          .rule(PhotoKinds::scaled);

  private PhotoKinds() {}

  private static Photo photo(Source<Photo> s) {
    String file =
        s.need(
            "file",
            TEXT,
            "a PNG or JPEG file",
            Photo::file,
            "A PNG or JPEG file in the folder of the layout file or below.");
    Photo.View view =
        s.or(
            "view",
            words(Photo.View.class),
            Photo.View.SIDE,
            Photo::view,
            "The view in which it lies.");
    Optional<String> part =
        s.may(
            "part",
            Type.ref(Referent.PART),
            Photo::part,
            "The part with which it moves; it lies in the axes of its outline then, or on its"
                + " first pin where it has none. Absent for the axes of the machine.");
    List<Formula> at =
        s.need(
            "at",
            new Type.Place(),
            "where it lies",
            p -> List.of(p.x(), p.z()),
            "Where its upper left corner lies; with corners, the lower left one of those.");
    return new Photo(
        file,
        view,
        part,
        at.get(0),
        at.get(1),
        s.may("turn", ANGLE, Photo::turn, "Turn about that corner, anticlockwise."),
        s.may(
            "scale",
            LENGTH.atLeast(LEAST_PIXEL_MM),
            Photo::scale,
            "How long one pixel is; belongs to a photo without corners."),
        s.or(
            "corners",
            CORNERS,
            List.of(),
            Photo::corners,
            "Four corners of a rectangle seen at a slant, in pixels: lower left, lower right,"
                + " upper right, upper left."),
        s.may(
            "width", LENGTH.atLeast(LEAST_MM), Photo::width, "How wide that rectangle really is."),
        s.may(
            "height",
            LENGTH.atLeast(LEAST_MM),
            Photo::height,
            "How high that rectangle really is."),
        s.or(
            "fade",
            NUMBER.between(0, 1),
            FADE,
            Photo::fade,
            "How pale it is shown: 0 as it is, 1 not at all; 0.5 where absent."),
        s.flag("locked", Photo::locked, "True if pointer and keys leave it where it lies."),
        s.flag("hidden", Photo::hidden, "True if it is not shown."),
        s.note(Photo::note));
  }

  private static void filed(Photo photo, Spot at) {
    if (!at.isSound("file")) {
      return;
    }
    if (photo.file().isBlank()) {
      at.fault("file", "\"\"", "names no file", "name a PNG or JPEG file");
    } else if (ELSEWHERE.matcher(photo.file()).find()) {
      at.fault(
          "file",
          Quoted.cut(photo.file()),
          "lies outside the folder of the layout file",
          "put the photo beside the layout file and write its name only");
    }
  }

  private static void scaled(Photo photo, Spot at) {
    boolean sized = photo.width().isPresent() && photo.height().isPresent();
    boolean some = photo.width().isPresent() || photo.height().isPresent();
    if (!at.isSound("corners")) {
      return;
    }
    if (photo.corners().isEmpty()) {
      if (some) {
        at.fault(
            photo.width().isPresent() ? "width" : "height",
            "",
            "is that of a rectangle without corners",
            "add \"corners\" or take it out");
      } else if (photo.scale().isEmpty() && at.isSound("scale")) {
        at.fault("scale", "", "is missing", "add \"scale\", how long one pixel is");
      }
      return;
    }
    if (photo.scale().isPresent()) {
      at.fault("scale", "", "is told by the corners already", "take it out, or the corners");
    }
    if (photo.corners().size() != 4) {
      at.fault(
          "corners", "[...]", "has " + photo.corners().size() + " corners, needs 4", "mark them");
    } else if (isTwisted(photo, at)) {
      at.fault(
          "corners",
          "[...]",
          "are no rectangle that a camera could see",
          "put them in order: lower left, lower right, upper right, upper left");
    }
    if (!sized && at.isSound("width") && at.isSound("height")) {
      at.fault("corners", "[...]", "need a width and a height", "add both");
    }
  }

  /** A rectangle before a camera stays convex and keeps its sense of turning. */
  private static boolean isTwisted(Photo photo, Spot at) {
    List<double[]> known = new ArrayList<>();
    for (List<Formula> corner : photo.corners()) {
      if (corner.size() != 2) {
        return false;
      }
      Optional<Double> right = at.fixed(corner.get(0));
      Optional<Double> down = at.fixed(corner.get(1));
      if (right.isEmpty() || down.isEmpty()) {
        return false;
      }
      known.add(new double[] {right.get(), down.get()});
    }
    for (int i = 0; i < 4; i++) {
      double[] a = known.get(i);
      double[] b = known.get((i + 1) % 4);
      double[] c = known.get((i + 2) % 4);
      double turn = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
      // down is positive, so anticlockwise as seen is negative; less than half a pixel is none
      if (!(turn < -0.5)) {
        return true;
      }
    }
    return false;
  }
}

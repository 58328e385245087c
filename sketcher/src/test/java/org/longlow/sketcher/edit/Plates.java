package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.rider.geom.PointMm;

/** A layout with a plate and a rail to be edited. */
public final class Plates {

  private Plates() {}

  /**
   * @param axes of the plate, such as "o"
   * @param outline as JSON
   * @param ties as JSON, without the braces
   */
  static Layout of(String axes, String outline, String ties) {
    return read(
        """
        {"longlow": 1, "name": "t",
         "measures": {"wide": "120 mm"},
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
           "o": {"at": [400, 500], "nailed": true}, "p": {"at": [460, 540], "nailed": true}, "q": [450, 480],
           "a": {"at": [300, 700], "nailed": true}, "b": {"at": [700, 700], "nailed": true}, "c": {"at": [900, 800], "nailed": true}},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
           "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
           "rail": {"kind": "rail", "path": ["a", "b", "c"], "diameter": 30, "wall": 2, "bendRadius": 60, "y": 0, "material": "steel"},
           "plate": {"kind": "bracket", "frame": %s, "left": 3, "right": 3, "mass": 1, "outline": %s}},
         "ties": {%s}}
        """
            .formatted(axes, outline, ties));
  }

  static Layout read(String json) {
    ReadResult result = LayoutReader.read(json, null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    return ((ReadResult.Read) result).layout();
  }

  /** A plate through points in mm, its axes at 400, 500. */
  public static Layout points(String points) {
    return of("\"o\"", "{\"points\": [" + points + "]}", "");
  }

  /** The same with a further body, a boss on its left. */
  public static Layout withBoss(String points, String boss) {
    String bodies =
        ", \"bodies\": [{\"name\": \"boss\", \"outline\": {\"points\": ["
            + boss
            + "]}, \"left\": 40, \"right\": -10}]";
    return of("\"o\"", "{\"points\": [" + points + "]}" + bodies, "");
  }

  static Places places(Layout layout) {
    return Placer.place(layout).places();
  }

  static List<Handle> handles(Layout layout) {
    return Handle.of(layout, places(layout), "plate");
  }

  static Geometry area(Layout layout) {
    return Shapes.of(layout.parts().get("plate"), places(layout), false).outline();
  }

  /** Applies an edit that has to be sound: what comes of it is written and read again. */
  static Layout after(Layout layout, Edit edit) {
    Layout after = edit.applied(layout);
    assertThat(read(LayoutWriter.toJson(after))).as(edit.name()).isEqualTo(after);
    return after;
  }

  static PointMm at(double x, double z) {
    return new PointMm(x, z);
  }

  static String point(double x, double z) {
    return String.format(Locale.ROOT, "[\"%.3f mm\", \"%.3f mm\"]", x, z);
  }
}

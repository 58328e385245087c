package org.longlow.sketcher.shop;

import java.nio.file.Path;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;

/** A small machine of which every length is known by hand, with stock and prices. */
final class Shed {

  private static final String TEXT =
      """
      {"longlow": 1, "name": "shed", "title": "Shed", "currency": "crowns",
       "pins": {"rear": {"at": [0, 300], "nailed": true},
                "front": {"at": [1400, 300], "nailed": true},
                "a": {"at": [200, 500], "nailed": true}, "b": {"at": [1200, 500], "nailed": true},
                "c": {"at": [200, 700], "nailed": true}, "d": {"at": [700, 700], "nailed": true},
                "p": {"at": [500, 600], "nailed": true}, "q": {"at": [900, 600], "nailed": true},
                "top": [1150, 800], "bottom": [1230, 640]},
       "parts": {
        "rearWheel": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300,
                      "width": 100, "mass": 12, "price": 80},
        "frontWheel": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300,
                       "width": 90, "mass": 11},
        "fork": {"kind": "front", "type": "telescopic", "top": "top", "bottom": "bottom",
                 "axle": "front", "tube": 36, "y": 90, "bump": 60, "droop": 30, "mass": 10},
        "long": {"kind": "rail", "path": ["a", "b"], "diameter": 25, "wall": 2,
                 "bendRadius": 80, "y": 100, "both": true, "material": "steel",
                 "fasteners": [{"what": "M8 bolt", "count": 4, "price": "0.5"}]},
        "short": {"kind": "rail", "path": ["c", "d"], "diameter": 25, "wall": 2,
                  "bendRadius": 80, "y": 100, "both": true, "material": "steel",
                  "fasteners": [{"what": "M8 bolt", "count": 2, "price": "0.5"},
                                {"what": "=cmd, \\"nut\\""}]},
        "pan": {"kind": "cushion", "role": "pan", "from": "p", "to": "q", "board": 12,
                "left": 150, "right": 150,
                "layers": [{"name": "firm", "thickness": 40, "density": "50 kg/m^3",
                            "ifd25": "180 N", "supportFactor": 2.2}]}},
       "stock": {
        "any tube": {"form": "tube", "length": "6 m", "kerf": 3, "price": 60},
        "yard": {"form": "tube", "material": "steel", "diameter": 25, "wall": 2,
                 "length": 3003, "kerf": 3, "price": 7, "per": "metre"},
        "ply": {"form": "sheet", "material": "plywood", "length": 800, "width": 600,
                "kerf": 2, "price": 20},
        "foam": {"form": "foam", "grade": "firm", "length": 420, "width": 320, "price": 9}}}
      """;

  private Shed() {}

  static String text() {
    return TEXT;
  }

  static Layout layout() {
    return layout("\"pan\":");
  }

  /** Returns it with other words before what is said of its pan. */
  static Layout layout(String pan) {
    ReadResult read = LayoutReader.read(TEXT.replace("\"pan\":", pan), Path.of("."));
    if (read instanceof ReadResult.Refused refused) {
      throw new IllegalStateException(refused.faults().toString());
    }
    return ((ReadResult.Read) read).layout();
  }
}

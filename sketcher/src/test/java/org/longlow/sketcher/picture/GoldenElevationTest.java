package org.longlow.sketcher.picture;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.Study;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.write.SvgWriter;

/** One small machine must look as it did; look at the new picture before you replace the old. */
class GoldenElevationTest {

  private static final String SMALL =
      """
      {"longlow": 1, "name": "wren", "title": "Wren",
       "measures": {"base": "1400 mm"},
       "pins": {"rear": {"at": ["0 mm", "300 mm"], "nailed": true},
                "front": {"at": ["base", "300 mm"], "nailed": true},
                "top": ["1150 mm", "800 mm"], "bottom": ["1230 mm", "640 mm"],
                "a": ["300 mm", "500 mm"], "b": ["700 mm", "450 mm"], "c": ["1150 mm", "720 mm"]},
       "parts": {
        "rearWheel": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": "300 mm",
                      "width": "100 mm", "mass": "12 kg", "material": "rubber"},
        "frontWheel": {"kind": "wheel", "end": "front", "axle": "front", "radius": "300 mm",
                       "width": "90 mm", "mass": "11 kg", "material": "rubber"},
        "fork": {"kind": "front", "type": "telescopic", "top": "top", "bottom": "bottom",
                 "axle": "front", "tube": "36 mm", "y": "90 mm", "bump": "60 mm",
                 "droop": "30 mm", "mass": "10 kg"},
        "rail": {"kind": "rail", "path": ["a", "b", "c"], "diameter": "32 mm", "wall": "2 mm",
                 "bendRadius": "100 mm", "y": "150 mm", "both": true, "material": "steel"}}}
      """;

  private static byte[] svg() throws IOException {
    ReadResult read = LayoutReader.read(SMALL, Path.of("."));
    Study study = Study.of(((ReadResult.Read) read).layout());
    PictureOptions options =
        PictureOptions.PLAIN
            .withStance(Optional.of(Condition.empty(Stance.Kind.UNLADEN)))
            .withDimensions(true)
            .withPins(true);
    Page page = Page.round(ElevationPicture.of(study, options).scaled(0.1), 5);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(page, Palette.CARD, out);
    return out.toByteArray();
  }

  /** Writes the picture anew to the file named. */
  public static void main(String[] args) throws IOException {
    Files.write(Path.of(args[0]), svg());
  }

  @Test
  void theSmallMachineLooksAsItDid() throws Exception {
    try (InputStream golden = GoldenElevationTest.class.getResourceAsStream("wren.svg")) {
      GoldenSvg.same(golden.readAllBytes(), svg());
    }
  }
}

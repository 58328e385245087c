package org.longlow.sketcher.fx;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.edit.Maker;
import org.longlow.sketcher.picture.DimensionedElevation;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.write.PdfInfo;
import org.longlow.svg.write.PdfWriter;

/** What the window takes from the rest of Longlow: shipped machines, and the making of files. */
final class Machines {

  private Machines() {}

  static List<Shipped> shipped() {
    return List.of();
  }

  static Maker maker() {
    return Machines::make;
  }

  private static List<String> make(Study study, Maker.Order order, Maker.Progress progress)
      throws IOException {
    List<String> made = new ArrayList<>();
    Files.createDirectories(order.folder());
    if (order.kinds().contains(Maker.Kind.DRAWING) && progress.step("drawing", 0, 1)) {
      DimensionedElevation.Sheet sheet =
          DimensionedElevation.sheet(study, order.paper(), LocalDate.now().toString());
      PdfWriter.write(
          List.of(sheet.page()),
          Palette.CARD,
          PdfInfo.titled(study.layout().name()),
          order.folder().resolve("elevation.pdf"));
      made.add("elevation.pdf at " + sheet.scale());
    }
    return made;
  }
}

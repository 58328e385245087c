package org.longlow.sketcher.fx;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.sketcher.edit.Maker;
import org.longlow.sketcher.picture.DimensionedElevation;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.write.PdfInfo;
import org.longlow.svg.write.PdfWriter;

/** What the window takes from the rest of Longlow: shipped machines, and the making of files. */
final class Machines {

  private Machines() {}

  /**
   * Returns the shipped machines; one whose outlines are traced gets them in a folder of its own.
   */
  static List<Shipped> shipped() {
    List<Shipped> all = new ArrayList<>();
    for (String name : Demos.names()) {
      all.add(new Shipped(Demos.layout(name), drawings(name)));
    }
    return all;
  }

  private static Optional<Path> drawings(String name) {
    if (Demos.drawings(name).isEmpty()) {
      return Optional.empty();
    }
    try {
      Path folder = Files.createTempDirectory("longlow-" + name);
      Path layout = Demos.copy(name, folder);
      layout.toFile().deleteOnExit();
      Demos.drawings(name).forEach(d -> folder.resolve(d).toFile().deleteOnExit());
      return Optional.of(folder);
    } catch (IOException e) {
      // the machine can be looked at without them, but not changed; the refusal then names the file
      return Optional.empty();
    }
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

package org.longlow.sketcher.fx;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.sketcher.app.Making;
import org.longlow.sketcher.desk.Maker;
import org.longlow.svg.page.TemplateSettings;

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
      // files are deleted in the reverse of this order, so the folder is empty when its turn comes
      folder.toFile().deleteOnExit();
      Demos.copy(name, folder).toFile().deleteOnExit();
      Demos.drawings(name).forEach(d -> folder.resolve(d).toFile().deleteOnExit());
      return Optional.of(folder);
    } catch (IOException e) {
      // the machine can be looked at without them, but not changed; the refusal then names the file
      return Optional.empty();
    }
  }

  /** Returns the making that the commands use too. */
  static Maker maker() {
    return Machines::make;
  }

  private static String kept(Path kept) {
    return "the file that was there is kept as " + kept.getFileName();
  }

  private static List<String> make(Study study, Maker.Order order, Maker.Progress progress)
      throws IOException {
    List<String> made = new ArrayList<>();
    Files.createDirectories(order.folder());
    if (order.kinds().contains(Maker.Kind.DRAWING)) {
      if (!progress.step("the drawing", 0, 1)) {
        return made;
      }
      Path file = order.folder().resolve("elevation.pdf");
      Making.Drawn drawn = Making.drawing(study, file, order.paper(), LocalDate.now().toString());
      drawn.kept().ifPresent(k -> made.add(kept(k)));
      made.add("elevation.pdf, " + drawn.scale() + " on " + order.paper().name());
    }
    if (order.kinds().contains(Maker.Kind.REPORT)) {
      if (!progress.step("the report", 0, 1)) {
        return made;
      }
      Path page = order.folder().resolve("report.html");
      Making.report(study, page).ifPresent(k -> made.add(kept(k)));
      made.add("report.html");
    }
    if (order.kinds().contains(Maker.Kind.TEMPLATES)) {
      Making.TemplatesMade t =
          Making.templates(
              study,
              order.folder().resolve("templates"),
              TemplateSettings.on(order.paper()),
              Set.of(),
              (what, done, of) -> progress.step("template " + what, done, of));
      made.add("templates: " + t.parts() + " on " + t.sheets() + " sheets");
      made.addAll(t.remarks());
    }
    return made;
  }
}

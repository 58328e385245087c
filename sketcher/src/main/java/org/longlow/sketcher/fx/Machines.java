package org.longlow.sketcher.fx;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.demo.Demos;

/** What the window takes from the rest of Longlow: the shipped machines. */
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
}

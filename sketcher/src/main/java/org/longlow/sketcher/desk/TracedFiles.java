package org.longlow.sketcher.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import org.longlow.constraints.disk.WholeFile;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;

/** Drawings and photos that a layout is traced from; they have to go where its file goes. */
public final class TracedFiles {

  private TracedFiles() {}

  /** Returns the files named by {@code layout}, relative to its folder. */
  public static Set<String> of(Layout layout) {
    Set<String> files = new LinkedHashSet<>();
    for (Part part : layout.parts().values()) {
      if (part.edge().orElse(null) instanceof Outline.Traced traced) {
        files.add(traced.file());
      }
    }
    layout.photos().values().forEach(photo -> files.add(photo.file()));
    return files;
  }

  /**
   * Copies what {@code to} does not have yet.
   *
   * @throws IOException if a file cannot be copied
   */
  public static void copy(Layout layout, Path from, Path to) throws IOException {
    for (String name : of(layout)) {
      Path source = from.resolve(name);
      Path target = to.resolve(name).normalize();
      if (target.startsWith(to.normalize()) && Files.exists(source) && !Files.exists(target)) {
        Files.createDirectories(target.getParent());
        WholeFile.write(target, out -> Files.copy(source, out));
      }
    }
  }
}

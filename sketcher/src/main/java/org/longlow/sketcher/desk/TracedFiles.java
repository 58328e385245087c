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
   * @throws IOException if a file cannot be copied, or another one of its name is there, from which
   *     the layout would be read otherwise; nothing is copied then
   */
  public static void copy(Layout layout, Path from, Path to) throws IOException {
    check(layout, from, to);
    copyMissing(layout, from, to);
  }

  /**
   * Looks whether {@link #copy} can be done.
   *
   * @throws IOException where another file of that name is there
   */
  public static void check(Layout layout, Path from, Path to) throws IOException {
    for (String name : of(layout)) {
      Path source = from.resolve(name);
      Path there = to.resolve(name);
      if (Files.isRegularFile(source)
          && Files.exists(there)
          && !Files.isSameFile(source, there)
          && !(Files.isRegularFile(there) && Files.mismatch(source, there) < 0)) {
        throw new IOException(
            "there is another file called "
                + there
                + " than the one that the layout is traced from; rename one of the two");
      }
    }
  }

  /**
   * As {@link #copy}, into a folder that nobody else writes into.
   *
   * @throws IOException if a file cannot be copied
   */
  static void copyMissing(Layout layout, Path from, Path to) throws IOException {
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

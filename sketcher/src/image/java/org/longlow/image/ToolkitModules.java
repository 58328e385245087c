package org.longlow.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * The window toolkit's jars as modules to link, with its native libraries beside those of Java, so
 * that a start unpacks nothing into somebody's home.
 */
final class ToolkitModules {

  private static final String NATIVE = ".*\\.(so|dll|dylib)";

  private ToolkitModules() {}

  /** Whether a jar is of the toolkit; those that hold nothing but their name are of it too. */
  static boolean isToolkit(Path jar) {
    return jar.getFileName().toString().startsWith("javafx-");
  }

  /**
   * Makes linkable modules of those jars that hold one.
   *
   * @param work an empty folder
   * @param linkable where the modules go
   * @return the folders of their classes
   */
  static List<Path> of(List<Path> jars, Path work, Path linkable) throws IOException {
    List<Path> made = new ArrayList<>();
    for (Path jar : jars) {
      try (ZipFile file = new ZipFile(jar.toFile())) {
        if (file.getEntry("module-info.class") == null) {
          continue;
        }
        String name = jar.getFileName().toString().replaceFirst("^javafx-(\\w+)-.*", "javafx.$1");
        Path classes = work.resolve(name);
        Path natives = work.resolve(name + ".natives");
        Files.createDirectories(natives);
        for (ZipEntry entry : file.stream().filter(e -> !e.isDirectory()).toList()) {
          // a jar within the jar is for another toolkit
          if (!entry.getName().startsWith("META-INF/") && !entry.getName().endsWith(".jar")) {
            Path to =
                (entry.getName().matches(NATIVE) ? natives : classes).resolve(entry.getName());
            Files.createDirectories(to.getParent());
            Files.copy(file.getInputStream(entry), to);
          }
        }
        Tool.run(
            "jmod",
            List.of(
                "create",
                "--class-path",
                classes.toString(),
                "--libs",
                natives.toString(),
                linkable.resolve(name + ".jmod").toString()));
        made.add(classes);
      }
    }
    return made;
  }
}

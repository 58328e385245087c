package org.longlow.image;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.stream.Stream;

/** Folders emptied, copied and measured. */
final class Folders {

  private Folders() {}

  /** Makes an empty folder, whatever was there. */
  static Path fresh(Path folder) throws IOException {
    remove(folder);
    return Files.createDirectories(folder);
  }

  static void remove(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes a) throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path dir, IOException e) throws IOException {
            Files.delete(dir);
            return FileVisitResult.CONTINUE;
          }
        });
  }

  /** Returns the files right in a folder whose names end so, in order of their names. */
  static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(f -> f.getFileName().toString().endsWith(ending)).sorted().toList();
    }
  }

  /** Copies the files right in a folder, with their rights. */
  static void copyFiles(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    for (Path file : files(from, "").stream().filter(Files::isRegularFile).toList()) {
      Files.copy(
          file,
          to.resolve(file.getFileName()),
          StandardCopyOption.COPY_ATTRIBUTES,
          StandardCopyOption.REPLACE_EXISTING);
    }
  }

  static long bytes(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).mapToLong(f -> f.toFile().length()).sum();
    }
  }
}

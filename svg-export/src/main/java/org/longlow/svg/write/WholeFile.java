package org.longlow.svg.write;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file so that it is either the old one or the complete new one, never half of it. */
public final class WholeFile {

  /** Something that fills a stream; it need not close it. */
  @FunctionalInterface
  public interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  private WholeFile() {}

  /**
   * Writes beside the target under a temporary name, then moves. Missing folders are made. If
   * writing fails the target is as before and nothing is left beside it.
   */
  public static void write(Path target, Content content) throws IOException {
    Path whole = target.toAbsolutePath();
    Path folder = whole.getParent();
    if (folder == null || Files.isDirectory(whole)) {
      throw new IOException("cannot write " + target + ": it is a folder; give a file name");
    }
    Files.createDirectories(folder);
    Path beside = Files.createTempFile(folder, ".unfinished-", ".tmp");
    try {
      // A fresh stream, not the temporary file's private permissions, decides who may read the
      // result.
      Files.delete(beside);
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(beside))) {
        content.writeTo(out);
      }
      try {
        Files.move(
            beside, whole, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(beside, whole, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(beside);
    }
  }
}

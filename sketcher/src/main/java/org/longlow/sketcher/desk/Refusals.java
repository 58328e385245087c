package org.longlow.sketcher.desk;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.longlow.constraints.disk.Leftovers;
import org.longlow.constraints.words.OneLine;

/** Why something could not be written, in words. */
final class Refusals {

  private Refusals() {}

  static String words(Exception e) {
    if (e instanceof FileSystemException refused && refused.getFile() != null) {
      Path file = Path.of(refused.getFile());
      Path where = Leftovers.isUnfinished(file) ? file.getParent() : file;
      String why = refused.getReason() != null ? refused.getReason() : why(refused, where);
      return OneLine.of(where + ": " + why);
    }
    return OneLine.of(String.valueOf(e.getMessage()));
  }

  private static String why(FileSystemException refused, Path where) {
    if (refused instanceof AccessDeniedException) {
      return "writing is not allowed there";
    }
    if (refused instanceof NoSuchFileException) {
      // some folders, such as those the system makes up, say so of each new file
      return where != null && Files.isDirectory(where)
          ? "no file can be made there"
          : "it is not there";
    }
    return "it refuses";
  }
}

package org.longlow.sketcher.edit;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
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
      String where = String.valueOf(Leftovers.isUnfinished(file) ? file.getParent() : file);
      String why =
          refused.getReason() != null
              ? refused.getReason()
              : refused instanceof AccessDeniedException
                  ? "writing is not allowed there"
                  : refused instanceof NoSuchFileException ? "it is not there" : "it refuses";
      return OneLine.of(where + ": " + why);
    }
    return OneLine.of(String.valueOf(e.getMessage()));
  }
}

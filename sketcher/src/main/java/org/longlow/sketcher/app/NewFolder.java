package org.longlow.sketcher.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder that is made for a set of files, and is taken away again where none comes into it. */
final class NewFolder implements AutoCloseable {

  private final Path folder;

  /** The uppermost folder that was made, or null if all were there. */
  private final Path made;

  private boolean stays;

  private NewFolder(Path folder, Path made) {
    this.folder = folder;
    this.made = made;
  }

  /** Makes a folder, and those that it lies in, unless they are there. */
  static NewFolder at(Path folder) throws IOException {
    Path missing = null;
    for (Path at = folder.toAbsolutePath(); at != null && !Files.exists(at); at = at.getParent()) {
      missing = at;
    }
    Files.createDirectories(folder);
    return new NewFolder(folder, missing);
  }

  /** Says that all is well. */
  void stays() {
    stays = true;
  }

  /** Takes away the folders that were made, unless somebody has put something there meanwhile. */
  @Override
  public void close() {
    if (stays || made == null) {
      return;
    }
    try {
      for (Path at = folder.toAbsolutePath(); at.startsWith(made); at = at.getParent()) {
        Files.deleteIfExists(at);
      }
    } catch (IOException e) {
      // what is in use stays
    }
  }
}

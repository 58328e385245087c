package org.longlow.sketcher.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.longlow.constraints.disk.Beside;
import org.longlow.svg.write.MadeHere;

/** What stands where something is to be written and was made by somebody else. */
public final class Foreign {

  private Foreign() {}

  /**
   * Keeps what {@code file} holds beside it, such as page.replaced.html, unless this program made
   * it or it is empty. Where it is a link, that is beside the file it points to.
   *
   * @return the file kept
   * @throws IOException if it cannot be kept
   */
  public static Optional<Path> keep(Path file) throws IOException {
    boolean somethingElse =
        Files.isRegularFile(file) && Files.size(file) > 0 && !MadeHere.isMarked(file);
    return somethingElse ? Optional.of(Beside.keep(file, "replaced")) : Optional.empty();
  }

  /** Takes away what was kept where nothing was replaced after all. */
  public static void undo(Optional<Path> kept) throws IOException {
    if (kept.isPresent()) {
      Files.deleteIfExists(kept.get());
    }
  }
}

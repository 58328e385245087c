package org.longlow.sketcher.fx;

import java.awt.Desktop;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Executor;

/** Opens folders in the system's own way; the window does not wait for it. */
final class FolderOpener {

  private FolderOpener() {}

  /**
   * Asks the system to show a folder.
   *
   * @param cannot run on the owner's thread if it does not
   */
  static void open(Path folder, Executor owner, Runnable cannot) {
    Thread thread =
        new Thread(
            () -> {
              if (!opened(folder)) {
                owner.execute(cannot);
              }
            },
            "longlow-folder");
    thread.setDaemon(true);
    thread.start();
  }

  private static boolean opened(Path folder) {
    try {
      if (!Desktop.isDesktopSupported() || !Desktop.getDesktop().isSupported(Desktop.Action.OPEN)) {
        return false;
      }
      Desktop.getDesktop().open(folder.toFile());
      return true;
    } catch (IOException | RuntimeException | LinkageError e) {
      // no file manager, no display, or a Java without desktop support: the path is shown then
      return false;
    }
  }
}

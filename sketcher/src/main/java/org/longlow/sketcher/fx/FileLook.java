package org.longlow.sketcher.fx;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.stage.FileChooser;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.LayoutFile;
import org.longlow.sketcher.desk.Session;

/** The system's own window for files, begun where somebody's work lies. */
final class FileLook {

  private FileLook() {}

  /**
   * Returns what asks for a file.
   *
   * @param near a file in whose folder it begins; else that which the program was started in
   */
  static FileChooser near(String title, Optional<Path> near) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(title);
    Path folder =
        near.map(p -> p.toAbsolutePath().getParent())
            .filter(Files::isDirectory)
            .orElse(Path.of(System.getProperty("user.dir")));
    chooser.setInitialDirectory(folder.toFile());
    return chooser;
  }

  /** Returns the file of the machine on the card. */
  static Optional<Path> of(Desk desk) {
    return desk.session().flatMap(Session::file).map(LayoutFile::path);
  }

  /** Returns files that end so, in small letters or in capitals, as cameras write them. */
  static FileChooser.ExtensionFilter ending(String words, List<String> endings) {
    return new FileChooser.ExtensionFilter(
        words,
        endings.stream()
            .flatMap(e -> Stream.of(e, e.toUpperCase(Locale.ROOT)))
            .map(e -> "*" + e)
            .toList());
  }
}

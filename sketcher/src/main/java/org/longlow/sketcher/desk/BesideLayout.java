package org.longlow.sketcher.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.disk.Beside;
import org.longlow.constraints.disk.WholeFile;

/**
 * What a layout is traced from lies in the folder of its file or below. What is elsewhere is copied
 * there once that was agreed to, and never over another file.
 */
final class BesideLayout {

  /** Of notices about files to trace from. */
  static final String TOPIC = "trace";

  /** Said where the layout has no file yet. */
  static final String NEEDS_A_FILE =
      "Save the layout first: what it is traced from lies in the folder of its file.";

  private BesideLayout() {}

  /** Returns where files beside the layout lie; says so if it has no file yet. */
  static Optional<Path> folder(Desk desk) {
    Optional<Path> folder =
        desk.session().flatMap(Session::file).map(f -> f.path().toAbsolutePath().getParent());
    if (folder.isEmpty()) {
      desk.say(Notice.Mood.CARE, TOPIC, NEEDS_A_FILE);
    }
    return folder;
  }

  /** Returns a file as a layout in {@code folder} names it; empty if it lies elsewhere. */
  static Optional<String> within(Path folder, Path file) {
    try {
      Path real = file.toRealPath();
      Path base = folder.toRealPath();
      return real.startsWith(base)
          ? Optional.of(base.relativize(real).toString().replace('\\', '/'))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** What follows once a file is beside the layout. */
  interface Then {
    void with(String name);
  }

  /** Asks whether to copy a file into the folder of the layout, and does so. */
  static void askToCopy(Desk desk, Path file, Path folder, Then then) {
    Notice.Answer copy =
        new Notice.Answer(
            "Copy it",
            () ->
                desk.queue(
                    () -> {
                      try {
                        String name = copy(file, folder);
                        return () -> then.with(name);
                      } catch (IOException e) {
                        return () ->
                            desk.say(
                                Notice.Mood.BAD,
                                TOPIC,
                                file + " could not be copied: " + e.getMessage());
                      }
                    }));
    desk.tell(
        new Notice(
            TOPIC,
            Notice.Mood.CARE,
            file + " lies elsewhere. It is copied into " + folder + ", where the layout is.",
            List.of(copy, new Notice.Answer("Not now", () -> {}))));
  }

  /**
   * Copies a file into a folder under its own name or a free one like it; the same file is not
   * copied twice.
   *
   * @return the name there
   */
  static String copy(Path file, Path folder) throws IOException {
    // a name that means the same on every system
    String plain = file.getFileName().toString().replaceAll("[:\\\\]", "-");
    Path same = folder.resolve(plain);
    if (Files.isRegularFile(same) && Files.mismatch(same, file) < 0) {
      return plain;
    }
    Path free = Beside.free(same);
    WholeFile.replace(free, out -> Files.copy(file, out), old -> true);
    return free.getFileName().toString();
  }
}

package org.longlow.sketcher.desk;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import org.longlow.constraints.disk.WholeFile;

/**
 * What the window keeps from one start to the next, so that it opens as it was left.
 *
 * @param widthPx of the window; 0 if it never was open
 * @param heightPx likewise
 * @param night whether the dark look was on
 * @param inches whether inches were shown last; a first machine begins in them
 * @param recent files that were opened or saved, the last first
 */
public record Habits(
    double widthPx, double heightPx, boolean night, boolean inches, List<Path> recent) {

  /** Nothing is known yet. */
  public static final Habits NONE = new Habits(0, 0, false, false, List.of());

  private static final String NAME = "habits.properties";
  private static final int MOST_RECENT = 8;

  /** No screen is larger; what says so was written by something else, px. */
  private static final double LARGEST_PX = 20_000;

  public Habits {
    recent = List.copyOf(recent);
  }

  public Habits withSize(double width, double height) {
    return new Habits(width, height, night, inches, recent);
  }

  public Habits withLook(boolean dark, boolean inInches) {
    return new Habits(widthPx, heightPx, dark, inInches, recent);
  }

  /** Returns these with a file that was just opened or saved. */
  public Habits with(Path file) {
    List<Path> files = new ArrayList<>(List.of(file));
    recent.stream().filter(f -> !f.equals(file)).limit(MOST_RECENT - 1L).forEach(files::add);
    return new Habits(widthPx, heightPx, night, inches, files);
  }

  /** Reads what was kept; whatever cannot be read is as if it never had been. */
  public static Habits at(Path home) {
    Properties kept = new Properties();
    try (Reader reader = Files.newBufferedReader(home.resolve(NAME), StandardCharsets.UTF_8)) {
      kept.load(reader);
    } catch (IOException | IllegalArgumentException e) {
      return NONE;
    }
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < MOST_RECENT && kept.containsKey("recent." + i); i++) {
      try {
        files.add(Path.of(kept.getProperty("recent." + i)));
      } catch (InvalidPathException e) {
        // written on another system; the next may be good
      }
    }
    return new Habits(
        size(kept.getProperty("width")),
        size(kept.getProperty("height")),
        Boolean.parseBoolean(kept.getProperty("night")),
        Boolean.parseBoolean(kept.getProperty("inches")),
        files);
  }

  private static double size(String text) {
    try {
      double px = text == null ? 0 : Double.parseDouble(text);
      return px > 0 && px < LARGEST_PX ? px : 0;
    } catch (NumberFormatException e) {
      return 0;
    }
  }

  /**
   * Keeps these.
   *
   * @throws IOException if they cannot be written; what was kept before is still there then
   */
  public void keep(Path home) throws IOException {
    Properties kept = new Properties();
    kept.setProperty("width", Double.toString(widthPx));
    kept.setProperty("height", Double.toString(heightPx));
    kept.setProperty("night", Boolean.toString(night));
    kept.setProperty("inches", Boolean.toString(inches));
    for (int i = 0; i < recent.size(); i++) {
      kept.setProperty("recent." + i, recent.get(i).toString());
    }
    Files.createDirectories(home);
    WholeFile.writePrivate(
        home.resolve(NAME),
        out -> {
          var writer = new java.io.OutputStreamWriter(out, StandardCharsets.UTF_8);
          kept.store(writer, "what the window keeps");
          writer.flush();
        });
  }
}

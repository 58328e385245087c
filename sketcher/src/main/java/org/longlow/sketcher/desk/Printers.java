package org.longlow.sketcher.desk;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import org.longlow.constraints.disk.Beside;
import org.longlow.constraints.disk.HeldMark;
import org.longlow.constraints.disk.WholeFile;
import org.longlow.constraints.words.OneLine;
import org.longlow.svg.page.PrintCorrection;

/**
 * The printers that were measured, by name: beside the window's habits, in a file of their own, so
 * that no window that closes writes an older one over what another has just measured.
 *
 * @param byName in the order of their names
 */
public record Printers(Map<String, PrintCorrection> byName) {

  /** Nothing was measured yet. */
  public static final Printers NONE = new Printers(Map.of());

  /** Longest name, characters. */
  public static final int LONGEST_NAME = 60;

  private static final String FILE = "printers.properties";
  private static final String BUSY = "printers.busy";
  private static final Duration PATIENCE = Duration.ofSeconds(10);
  private static final String ACROSS = ".across";
  private static final String ALONG = ".along";

  public Printers {
    byName = Collections.unmodifiableMap(new TreeMap<>(byName));
  }

  /** Returns the folder where the printers of this user are kept, for commands. */
  public static Path homeOfThisUser() {
    return StateFolder.ofThisUser();
  }

  /** Reads what was kept; whatever cannot be read is as if it never had been. */
  public static Printers at(Path home) {
    return in(kept(home).map(Kept::lines).orElseGet(Properties::new));
  }

  /** Returns the file of printers, if there is one that cannot be understood to its end. */
  public static Optional<Path> spoilt(Path home) {
    Path file = home.resolve(FILE);
    boolean whole =
        !Files.exists(file)
            || kept(home)
                .filter(k -> k.whole && in(k.lines).byName.size() * 2 == k.lines.size())
                .isPresent();
    return whole ? Optional.empty() : Optional.of(file);
  }

  private static Optional<Kept> kept(Path home) {
    String text;
    try {
      text = Files.readString(home.resolve(FILE), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return Optional.empty();
    }
    Properties kept = new Properties();
    try {
      kept.load(new StringReader(text));
      return Optional.of(new Kept(kept, true));
    } catch (IOException | IllegalArgumentException e) {
      return Optional.of(new Kept(lineByLine(text), false));
    }
  }

  /** Reads each line by itself: one that nobody can read takes no other with it. */
  private static Properties lineByLine(String text) {
    Properties kept = new Properties();
    for (String line : text.lines().toList()) {
      Properties one = new Properties();
      try {
        one.load(new StringReader(line));
        kept.putAll(one);
      } catch (IOException | IllegalArgumentException e) {
        continue;
      }
    }
    return kept;
  }

  private record Kept(Properties lines, boolean whole) {}

  private static Printers in(Properties kept) {
    Map<String, PrintCorrection> found = new LinkedHashMap<>();
    for (String key : kept.stringPropertyNames()) {
      if (key.endsWith(ACROSS)) {
        String name = key.substring(0, key.length() - ACROSS.length());
        read(name, kept.getProperty(key), kept.getProperty(name + ALONG))
            .ifPresent(c -> found.put(name, c));
      }
    }
    return new Printers(found);
  }

  private static Optional<PrintCorrection> read(String name, String across, String along) {
    try {
      return refusal(name).isPresent() || along == null
          ? Optional.empty()
          : Optional.of(
              new PrintCorrection(name, Double.parseDouble(across), Double.parseDouble(along)));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** Returns why a printer cannot be called so; empty if it can. */
  public static Optional<String> refusal(String name) {
    if (name.isBlank()) {
      return Optional.of("a printer needs a name, such as attic");
    }
    if (!name.equals(name.strip())) {
      return Optional.of("a printer's name begins and ends with no space; leave it out");
    }
    // marks that turn the direction of writing make one name look like another
    return name.length() > LONGEST_NAME || !name.equals(OneLine.of(name))
        ? Optional.of(
            "a printer's name has up to "
                + LONGEST_NAME
                + " characters, on one line, without marks that nobody sees")
        : Optional.empty();
  }

  /** Returns the correction of a printer, if it was measured. */
  public Optional<PrintCorrection> of(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** Returns these with a printer as measured; it takes the place of an older measurement. */
  public Printers with(PrintCorrection measured) {
    Map<String, PrintCorrection> more = new TreeMap<>(byName);
    more.put(measured.printer(), measured);
    return new Printers(more);
  }

  /**
   * Keeps a printer as measured, beside those that are kept already. A file that cannot be
   * understood to its end stays beside, as printers.spoilt.properties.
   *
   * @return all that are kept now
   * @throws IOException if they cannot be written; what was kept before is still there then
   */
  public static Printers keep(Path home, PrintCorrection measured) throws IOException {
    Files.createDirectories(home);
    // two who measure at once take turns, so that neither writes over the other's printer
    try (HeldMark turn = HeldMark.put(home.resolve(BUSY), "printers are written\n", PATIENCE)) {
      Printers all = at(home).with(measured);
      all.write(home);
      turn.remove();
      return all;
    }
  }

  private void write(Path home) throws IOException {
    Properties kept = new Properties();
    byName.forEach(
        (name, c) -> {
          kept.setProperty(name + ACROSS, Double.toString(c.sx()));
          kept.setProperty(name + ALONG, Double.toString(c.sy()));
        });
    Optional<Path> spoilt = spoilt(home);
    if (spoilt.isPresent()) {
      Beside.keep(spoilt.get(), "spoilt");
    }
    WholeFile.writePrivate(
        home.resolve(FILE),
        out -> {
          OutputStreamWriter writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
          kept.store(writer, "printers as measured: what to multiply a print by");
          writer.flush();
        });
  }
}

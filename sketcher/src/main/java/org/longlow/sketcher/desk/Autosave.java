package org.longlow.sketcher.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.longlow.constraints.disk.Beside;
import org.longlow.constraints.disk.Leftovers;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;

/**
 * Copies of unsaved work, beside the file it belongs to, or in a folder of their own for work that
 * has no file yet. They are there only while there is something unsaved, so one that is found on
 * opening was left by a session that ended without its say.
 */
public final class Autosave {

  private static final String KEPT = ".longlow-autosave";

  private static final String ENDING = KEPT + ".json";

  /** Begins the ending of a copy that was found and waits for an answer; a number may follow. */
  private static final String WAITING = ".longlow-found";

  private static final Pattern WAITING_NAME =
      Pattern.compile("(.*)" + Pattern.quote(WAITING) + "(-\\d+)?\\.json");

  /** Of a copy that a session writes; its stamp follows where it is one of a file. */
  private static final Pattern KEPT_NAME =
      Pattern.compile("(.*)" + Pattern.quote(KEPT) + "(-[0-9a-z-]+)?\\.json");

  /** Longest stem of a name; with what is added it stays below 255 bytes, the usual limit. */
  private static final int LONGEST_STEM = 120;

  private final Path homeless;

  /**
   * @param homeless folder for work that has no file yet; made when needed
   */
  public Autosave(Path homeless) {
    this.homeless = homeless.toAbsolutePath();
  }

  /** Returns the autosave that keeps work without a file in the user's own folder for that. */
  public static Autosave atHome() {
    return new Autosave(StateFolder.ofThisUser());
  }

  /** Returns the user's own folder for what lasts from one start to the next. */
  public Path home() {
    return homeless;
  }

  /** Returns where it is marked which files are open. */
  Path claims() {
    return homeless.resolve("open");
  }

  /**
   * Unsaved work that was found.
   *
   * @param copy where it is kept
   * @param layout the work
   * @param at when it was last written
   */
  public record Found(Path copy, Layout layout, Instant at) {}

  /**
   * Unsaved work that was found and cannot be read.
   *
   * @param copy where it is kept
   * @param at when it was last written
   * @param trouble what is wrong with it, on one line
   */
  public record Broken(Path copy, Instant at, String trouble) {}

  /** Returns where unsaved work on a file is kept, but for the stamp of who keeps it. */
  static Path copyOf(Path file) {
    return file.toAbsolutePath().resolveSibling("." + stem(file.getFileName() + "") + ENDING);
  }

  /** As {@link #copyOf(Path)} if nothing can be written beside the file. */
  Path awayFrom(Path file) {
    String where = Digest.of(file.toAbsolutePath().normalize().toString()).substring(0, 16);
    return inOwnFolder(stem(safe(file.getFileName() + "")) + "-" + where);
  }

  /** Returns where unsaved work of a session is kept; no two sessions share it. */
  public Path copyOf(Session session) {
    if (session.file().isPresent()) {
      return stamped(copyOf(session.file().get().path()), session);
    }
    String stem = stem(safe(session.firstName())) + "-" + session.stamp();
    return session.folder().isPresent() ? inOwnFolder(stem) : homeless.resolve(stem + ENDING);
  }

  /** As {@link #copyOf(Session)} if nothing can be written beside its file; empty without one. */
  Optional<Path> awayFrom(Session session) {
    return session.file().map(f -> stamped(awayFrom(f.path()), session));
  }

  /** Drawings of two machines may have one name. */
  private Path inOwnFolder(String stem) {
    return homeless.resolve(stem).resolve(stem + ENDING);
  }

  private static Path stamped(Path copy, Session session) {
    return copy.resolveSibling(stemOf(copy) + KEPT + "-" + session.stamp() + ".json");
  }

  /**
   * Writes a copy, and the traced outlines it needs beside it.
   *
   * @param drawings where those are now
   * @throws IOException if it cannot be written
   */
  public static void write(Layout layout, Path copy, Optional<Path> drawings) throws IOException {
    Path folder = copy.toAbsolutePath().getParent();
    create(folder);
    if (drawings.isPresent()) {
      TracedFiles.copyMissing(layout, drawings.get(), folder);
    }
    LayoutWriter.savePrivate(layout, copy);
  }

  /** Makes a folder that only its owner looks into, where the file system knows owners. */
  private static void create(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder.toAbsolutePath().getParent());
      boolean owners =
          Files.getFileStore(folder.toAbsolutePath().getParent())
              .supportsFileAttributeView("posix");
      if (owners) {
        Files.createDirectories(
            folder,
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
      } else {
        Files.createDirectories(folder);
      }
    }
  }

  /**
   * Puts a copy that somebody else left out of the way of the next one, under a name of its own.
   *
   * @return where it is now
   */
  static Path setAside(Path copy) throws IOException {
    String name = stemOf(copy).replaceFirst("^\\.", "");
    Path aside = copy.resolveSibling(name.replaceFirst("\\.(json|longlow)$", "") + ".unsaved.json");
    Path free = Beside.free(aside);
    Files.move(copy, free);
    return free;
  }

  /** Removes a copy if there is one, and the folder that was made for it alone. */
  public static void remove(Path copy) throws IOException {
    Files.deleteIfExists(copy);
    Path folder = copy.toAbsolutePath().getParent();
    if (stemOf(copy).equals(folder.getFileName() + "")) {
      try (Stream<Path> left = Files.list(folder)) {
        if (left.findAny().isEmpty()) {
          Files.delete(folder);
        }
      }
    }
  }

  /**
   * Returns the unsaved work that belongs to {@code file} and differs from {@code layout}, the
   * latest first.
   */
  public List<Found> beside(Path file, Layout layout) {
    return copies(file)
        .flatMap(c -> read(c).stream())
        .filter(f -> !f.layout().equals(layout))
        .sorted(Comparator.comparing(Found::at).reversed())
        .toList();
  }

  /**
   * Returns the latest unsaved work on a file that lies beside it and says other than the file,
   * which may be gone or spoilt.
   */
  public Optional<Found> unsaved(Path file) {
    Path beside = copyOf(file).getParent();
    Stream<Path> copies = copies(file).filter(c -> beside.equals(c.getParent()));
    if (copies.findAny().isEmpty()) {
      return Optional.empty(); // mostly, and then the file need not be read
    }
    Layout saved = read(file).map(Found::layout).orElse(null);
    return beside(file, saved).stream()
        .filter(f -> beside.equals(f.copy().getParent()))
        .findFirst();
  }

  /** Returns the unsaved work that belongs to {@code file} and cannot be read. */
  public List<Broken> brokenBeside(Path file) {
    return copies(file).flatMap(c -> broken(c).stream()).toList();
  }

  /** Returns the copies there may be of work on a file, and those that wait for an answer. */
  private Stream<Path> copies(Path file) {
    return Stream.of(copyOf(file), awayFrom(file))
        .flatMap(c -> left(c.getParent()).filter(l -> stemOf(l).equals(stemOf(c))));
  }

  /** Returns the copies in a folder, but for those of windows that still live. */
  private Stream<Path> left(Path folder) {
    return list(folder).stream()
        .filter(f -> !stemOf(f).isEmpty() && !FileClaim.isHeld(claims(), f));
  }

  /** Returns what a copy is called after; empty if it is none. */
  private static String stemOf(Path copy) {
    String name = copy.getFileName().toString();
    return Stream.of(WAITING_NAME.matcher(name), KEPT_NAME.matcher(name))
        .filter(Matcher::matches)
        .map(m -> m.group(1))
        .findFirst()
        .orElse("");
  }

  /**
   * Gives work that was found a file of its own, which no session writes, until it is answered.
   *
   * @return the work as it is kept now; as it was where nothing can be moved, as nothing can be
   *     written over there either
   */
  static Found hold(Found found) {
    Path copy = found.copy();
    if (WAITING_NAME.matcher(copy.getFileName().toString()).matches()) {
      return found;
    }
    try {
      Path free = Beside.free(copy.resolveSibling(stemOf(copy) + WAITING + ".json"));
      return new Found(Files.move(copy, free), found.layout(), found.at());
    } catch (IOException e) {
      return found;
    }
  }

  /** Returns unsaved work that is kept away from any file, the latest first. */
  public List<Found> homeless() {
    return kept().stream()
        .flatMap(f -> read(f).stream())
        .sorted(Comparator.comparing(Found::at).reversed())
        .toList();
  }

  /** Returns unsaved work kept away from any file that cannot be read, the latest first. */
  public List<Broken> brokenHomeless() {
    return kept().stream()
        .flatMap(f -> broken(f).stream())
        .sorted(Comparator.comparing(Broken::at).reversed())
        .toList();
  }

  private List<Path> kept() {
    if (!Files.isDirectory(homeless)) {
      return List.of();
    }
    Leftovers.clear(homeless);
    return Stream.concat(Stream.of(homeless), list(homeless).stream().filter(Files::isDirectory))
        .flatMap(this::left)
        .toList();
  }

  private static List<Path> list(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    } catch (IOException | UncheckedIOException e) {
      // An unreadable folder holds nothing that could be offered.
      return List.of();
    }
  }

  private static Optional<Found> read(Path copy) {
    return Files.isRegularFile(copy) && LayoutReader.read(copy) instanceof ReadResult.Read sound
        ? Optional.of(new Found(copy, sound.layout(), at(copy)))
        : Optional.empty();
  }

  private static Optional<Broken> broken(Path copy) {
    return Files.exists(copy) && LayoutReader.read(copy) instanceof ReadResult.Refused refused
        ? Optional.of(new Broken(copy, at(copy), refused.faults().get(0).line()))
        : Optional.empty();
  }

  private static Instant at(Path copy) {
    try {
      return Files.getLastModifiedTime(copy).toInstant();
    } catch (IOException e) {
      return Instant.EPOCH;
    }
  }

  /** A long name is shortened; a digest of it keeps it apart from others. */
  private static String stem(String name) {
    byte[] bytes = name.getBytes(StandardCharsets.UTF_8);
    if (bytes.length <= LONGEST_STEM) {
      return name;
    }
    int end = name.offsetByCodePoints(0, Math.min(20, name.codePointCount(0, name.length())));
    return name.substring(0, end) + "-" + Digest.of(name).substring(0, 16);
  }

  private static String safe(String name) {
    String safe = name.replaceAll("[^A-Za-z0-9_-]", "_");
    return safe.isEmpty() ? "layout" : safe;
  }
}

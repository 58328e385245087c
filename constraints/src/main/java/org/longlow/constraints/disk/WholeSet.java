package org.longlow.constraints.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Puts several files into a folder so that all of them are there or none.
 *
 * <p>Each is written beside its place first, so that a full disk is met before anything is changed.
 * Then what stands in the way goes into a folder of its own, with a list of what is put where
 * nothing was, and the new files are moved into place. If that fails all is put back; where it was
 * killed {@link #mend} puts it back. Whoever calls sees to it that one set at a time is put there.
 */
public final class WholeSet implements AutoCloseable {

  /** Where files wait that are being replaced. */
  public static final String BEFORE = "not-finished-before";

  /** In there, the names of files that are put where nothing was; while it is there, all can be. */
  private static final String LIST = "put-where-nothing-was.txt";

  /** What it is called once all new files are in place and the old ones may go. */
  private static final String DONE = "may-be-deleted.txt";

  private final Path folder;
  private final Path before;
  private final Map<String, Leftovers.Unfinished> files = new LinkedHashMap<>();

  /** Begins a set in a folder that exists. */
  public WholeSet(Path folder) {
    this.folder = folder;
    this.before = folder.resolve(BEFORE);
    Leftovers.clear(folder);
  }

  /**
   * Writes a file of the set beside its place.
   *
   * @throws IOException if it cannot be written, or its place is a folder, a device or protected
   */
  public void add(String name, WholeFile.Content content) throws IOException {
    Path place = folder.resolve(name);
    if (Files.exists(place) && !Files.isRegularFile(place)) {
      throw new FileSystemException(
          place.toString(), null, "it is a folder, a device or a pipe; take it away");
    }
    if (Files.exists(place) && !Files.isWritable(place)) {
      throw new AccessDeniedException(place.toString(), null, "it is write-protected");
    }
    Leftovers.Unfinished beside = Leftovers.begin(folder);
    files.put(name, beside);
    try {
      WholeFile.fill(beside, content);
    } catch (FileSystemException e) {
      throw e;
    } catch (IOException e) {
      throw WholeFile.named(place, e);
    }
    if (Files.exists(place)) {
      Readers.copy(place, beside.path());
    }
  }

  /**
   * Puts all files in place.
   *
   * @param gone files of the folder that go when the new ones are there
   * @param keeping says of a replaced file whether it is kept beside, as {@link Beside#keep} does
   * @return the files kept
   * @throws IOException if that cannot be done; all is as it was then, unless {@link #isHalf}
   */
  public List<Path> put(List<Path> gone, WholeFile.Keeping keeping) throws IOException {
    List<Path> kept = new ArrayList<>();
    try {
      Files.createDirectory(before);
    } catch (FileAlreadyExistsException e) {
      throw new FileSystemException(
          before.toString(),
          null,
          "holds what no run that was stopped left there; move it elsewhere, or give another folder");
    }
    try {
      List<String> fresh = new ArrayList<>();
      for (String name : files.keySet()) {
        Path place = folder.resolve(name);
        if (!Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
          fresh.add(name);
        } else if (keeping.keeps(place)) {
          kept.add(Beside.keep(place, "replaced"));
        }
      }
      byte[] list = String.join("\n", fresh).getBytes(StandardCharsets.UTF_8);
      WholeFile.write(before.resolve(LIST), out -> out.write(list));
      for (Map.Entry<String, Leftovers.Unfinished> e : files.entrySet()) {
        aside(e.getKey());
        WholeFile.move(e.getValue().path(), folder.resolve(e.getKey()));
      }
      for (Path file : gone) {
        aside(file.getFileName().toString());
      }
    } catch (IOException e) {
      try {
        mend(folder, keeping);
        for (Path copy : kept) {
          Files.deleteIfExists(copy);
        }
      } catch (IOException more) {
        e.addSuppressed(more);
      }
      throw e;
    }
    WholeFile.force(folder);
    Files.move(before.resolve(LIST), before.resolve(DONE), StandardCopyOption.ATOMIC_MOVE);
    clear(before);
    return kept;
  }

  private void aside(String name) throws IOException {
    Path place = folder.resolve(name);
    if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
      WholeFile.move(place, before.resolve(name));
    }
  }

  /** Returns whether a set was stopped in {@code folder} while its files were put in place. */
  public static boolean isHalf(Path folder) {
    return Files.exists(folder.resolve(BEFORE).resolve(LIST));
  }

  /**
   * Puts back what was there before a set that was stopped on its way into {@code folder}.
   *
   * @param keeping says of a file that stands there now whether it is somebody's work, to be kept
   * @return whether there was one
   */
  public static boolean mend(Path folder, WholeFile.Keeping keeping) throws IOException {
    Path before = folder.resolve(BEFORE);
    boolean half = isHalf(folder);
    boolean begun = isBegun(before);
    if (half) {
      for (String name : Files.readAllLines(before.resolve(LIST))) {
        Path fresh = within(folder, name);
        if (Files.exists(fresh) && !keeping.keeps(fresh)) {
          Files.delete(fresh);
        }
      }
      for (Path old : list(before)) {
        Path place = folder.resolve(old.getFileName());
        if (old.endsWith(LIST)) {
          continue;
        }
        if (Files.exists(place) && keeping.keeps(place)) {
          Beside.keep(place, "replaced");
        }
        WholeFile.move(old, place);
      }
    }
    if (half || begun || Files.exists(before.resolve(DONE))) {
      clear(before);
    }
    return half || begun;
  }

  /** Whether a set was stopped before its list was whole, so that nothing was moved yet. */
  private static boolean isBegun(Path before) throws IOException {
    return Files.isDirectory(before, LinkOption.NOFOLLOW_LINKS)
        && list(before).stream().allMatch(Leftovers::isUnfinished);
  }

  /** A list that somebody changed names nothing elsewhere. */
  private static Path within(Path folder, String name) throws IOException {
    Path path = folder.resolve(name).normalize();
    if (!folder.normalize().equals(path.getParent())) {
      throw new FileSystemException(
          folder.resolve(BEFORE).resolve(LIST).toString(), null, "names a file elsewhere");
    }
    return path;
  }

  /** What tells that the others may go is the last to go, for this may be stopped too. */
  private static void clear(Path before) throws IOException {
    for (Path file : list(before)) {
      if (!file.endsWith(DONE)) {
        Files.deleteIfExists(file);
      }
    }
    Files.deleteIfExists(before.resolve(DONE));
    Files.deleteIfExists(before);
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.toList();
    }
  }

  /** Takes away what was not put in place. */
  @Override
  public void close() throws IOException {
    for (Leftovers.Unfinished file : files.values()) {
      file.close();
    }
  }
}

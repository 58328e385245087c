package org.longlow.constraints.disk;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;

/**
 * Writes a file so that it is either the old one or the complete new one, never half of it, however
 * many write at once and whenever one of them is killed.
 *
 * <p>The bytes go into a new file of an unpredictable name in the same folder, are forced to the
 * disk and moved into place; then the folder is forced. If writing fails the target is as before
 * and nothing is left beside it. What a killed writer left is taken away by the next one.
 */
public final class WholeFile {

  /** Something that fills a stream; it need not close it. */
  @FunctionalInterface
  public interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /** Tells whether what stands at a place is somebody's work, to be kept when it is replaced. */
  @FunctionalInterface
  public interface Keeping {
    boolean keeps(Path old) throws IOException;
  }

  /** How often a move is tried while a reader holds the target, which only Windows minds. */
  private static final int MOVES = 100;

  private static final long BETWEEN_MOVES_MS = 10;

  /** As many links in a row as Linux follows. */
  private static final int MOST_LINKS = 40;

  private WholeFile() {}

  /**
   * Writes {@code target}. Permissions of a replaced file stay; where it is a link, the link stays
   * and what it points to is replaced.
   *
   * @param target in a folder that exists
   * @throws IOException if it cannot be written, is a folder, a device or a pipe, or is protected
   */
  public static void write(Path target, Content content) throws IOException {
    replace(target, content, old -> false);
  }

  /**
   * As {@link #write}; a replaced file that {@code keeping} says so of is kept beside as {@link
   * Beside#keep} does, once the new one is complete.
   *
   * @return the file kept
   * @throws IOException as {@link #write}, or if it cannot be kept; nothing is kept then
   */
  public static Optional<Path> replace(Path target, Content content, Keeping keeping)
      throws IOException {
    Path whole = behindLinks(target.toAbsolutePath());
    if (Files.isDirectory(whole)) {
      throw new FileSystemException(
          target.toString(), null, "it is a folder; give the name of a file");
    }
    boolean replaces = Files.exists(whole);
    if (replaces && !Files.isRegularFile(whole)) {
      throw new FileSystemException(
          target.toString(), null, "it is a device or a pipe; give the name of a file");
    }
    if (replaces && !Files.isWritable(whole)) {
      throw new AccessDeniedException(target.toString(), null, "it is write-protected");
    }
    return write(whole, content, false, replaces ? Optional.of(keeping) : Optional.empty());
  }

  /**
   * Writes {@code target} so that only its owner can read it, where the file system knows owners.
   * If it is a link, the link itself is replaced.
   *
   * @throws IOException if it cannot be written
   */
  public static void writePrivate(Path target, Content content) throws IOException {
    write(target.toAbsolutePath(), content, true, Optional.empty());
  }

  /** Makes a file that is being written, locked meanwhile, and hands all of it to the disk. */
  static void fill(Leftovers.Unfinished beside, Content content, FileAttribute<?>... at)
      throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            beside.path(),
            Set.of(
                StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS),
            at)) {
      beside.lock(channel);
      OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel));
      content.writeTo(out);
      out.flush();
      channel.force(true);
    }
  }

  /** A full disk is told of a stream, without the file: returns it told of the file. */
  static FileSystemException named(Path file, IOException e) {
    FileSystemException named = new FileSystemException(file.toString(), null, e.getMessage());
    named.initCause(e);
    return named;
  }

  /**
   * @param replaces what to keep, where the old file's readers are to be those of the new one
   */
  private static Optional<Path> write(
      Path whole, Content content, boolean secret, Optional<Keeping> replaces) throws IOException {
    Path folder = whole.getParent();
    Leftovers.clear(folder);
    Optional<Path> kept = Optional.empty();
    try (Leftovers.Unfinished beside = Leftovers.begin(folder)) {
      // the old file's readers come later, when the new one is complete
      boolean owners = Files.getFileStore(folder).supportsFileAttributeView("posix");
      FileAttribute<?>[] at =
          owners && (secret || replaces.isPresent())
              ? new FileAttribute<?>[] {
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
              }
              : new FileAttribute<?>[0];
      fill(beside, content, at);
      if (replaces.isPresent()) {
        Readers.copy(whole, beside.path());
        kept = kept(whole, replaces.get());
      }
      try {
        move(beside.path(), whole);
      } catch (IOException e) {
        if (kept.isPresent()) {
          Files.deleteIfExists(kept.get());
        }
        throw e;
      }
    } catch (FileSystemException e) {
      throw e;
    } catch (IOException e) {
      throw named(whole, e);
    }
    force(folder);
    return kept;
  }

  private static Optional<Path> kept(Path whole, Keeping keeping) throws IOException {
    return keeping.keeps(whole) ? Optional.of(Beside.keep(whole, "replaced")) : Optional.empty();
  }

  private static Path behindLinks(Path target) throws IOException {
    Path path = target;
    for (int i = 0; Files.isSymbolicLink(path); i++) {
      if (i == MOST_LINKS) {
        throw new FileSystemException(target.toString(), null, "its links go round in a circle");
      }
      path = path.resolveSibling(Files.readSymbolicLink(path)).toAbsolutePath();
    }
    return path;
  }

  static void move(Path from, Path to) throws IOException {
    for (int left = MOVES; ; left--) {
      try {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        return;
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        return;
      } catch (AccessDeniedException e) {
        if (left == 0 || !Windows.IS) {
          throw e;
        }
        pause(e);
      }
    }
  }

  private static void pause(IOException why) throws IOException {
    try {
      Thread.sleep(BETWEEN_MOVES_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw why;
    }
  }

  /** Forces the new name to the disk; Windows opens no folders and does it by itself. */
  static void force(Path folder) {
    try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
      names.force(true);
    } catch (IOException e) {
      // the file is written; a file system that cannot promise its name has done what it can
    }
  }
}

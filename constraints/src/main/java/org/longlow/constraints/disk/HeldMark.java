package org.longlow.constraints.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A file that says that work in its folder is not finished. One at a time holds it, whichever
 * program or thread that is; the others wait. It stays where its holder is stopped or killed, until
 * somebody finishes.
 */
public final class HeldMark implements AutoCloseable {

  private static final long BETWEEN_TRIES_MS = 20;

  /**
   * Held by this process. The system drops a process's locks of a file as soon as any of its
   * channels to that file closes, so what is held here is not even opened.
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private final Path file;
  private final FileChannel channel;

  private HeldMark(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Writes {@code words} into {@code file} and holds it, once nobody else does.
   *
   * @param patience how long others are waited for
   * @throws IOException if it cannot be written, or others hold it for longer
   */
  public static HeldMark put(Path file, String words, Duration patience) throws IOException {
    Path real = file.toAbsolutePath().getParent().toRealPath().resolve(file.getFileName());
    long until = System.nanoTime() + patience.toNanos();
    while (true) {
      if (HELD.add(real)) {
        HeldMark mark = null;
        try {
          mark = tried(real, words);
        } finally {
          if (mark == null) {
            HELD.remove(real);
          }
        }
        if (mark != null) {
          return mark;
        }
      }
      if (System.nanoTime() - until > 0) {
        throw new FileSystemException(
            file.toString(),
            null,
            "somebody else is at work in that folder; wait until they are done, or give another");
      }
      pause();
    }
  }

  private static HeldMark tried(Path file, String words) throws IOException {
    Object there = key(file);
    FileChannel channel = open(file, there == null);
    if (channel == null) {
      return null;
    }
    boolean held = false;
    try {
      // a holder who has just finished has deleted what was opened: that is nobody's mark any more
      held = locked(channel) && (there == null ? key(file) != null : there.equals(key(file)));
      if (held) {
        channel.truncate(0);
        ByteBuffer bytes = StandardCharsets.UTF_8.encode(words);
        while (bytes.hasRemaining()) {
          channel.write(bytes);
        }
      }
    } catch (IOException e) {
      held = false;
      if (there == null) {
        Files.deleteIfExists(file); // nothing was begun
      }
      throw new FileSystemException(file.toString(), null, e.getMessage());
    } finally {
      if (!held) {
        channel.close();
      }
    }
    return held ? new HeldMark(file, channel) : null;
  }

  /** Returns what the file system knows the file by, or null where there is none. */
  private static Object key(Path file) throws IOException {
    try {
      Object key =
          Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
              .fileKey();
      return Objects.requireNonNullElse(key, file); // Windows gives no keys
    } catch (NoSuchFileException e) {
      return null;
    }
  }

  private static FileChannel open(Path file, boolean create) throws IOException {
    Set<OpenOption> how =
        create
            ? Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)
            : Set.of(StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
    try {
      return FileChannel.open(file, how);
    } catch (FileAlreadyExistsException | NoSuchFileException e) {
      return null; // somebody else came or went in between
    } catch (AccessDeniedException e) {
      if (Windows.IS) {
        return null; // deleted there, while the one who had it has not let go yet
      }
      throw e;
    }
  }

  private static boolean locked(FileChannel channel) {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException e) {
      return false;
    } catch (IOException e) {
      return true; // not every file system has locks: then nobody can be waited for
    }
  }

  private static void pause() throws IOException {
    try {
      Thread.sleep(BETWEEN_TRIES_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("stopped while waiting for others to finish", e);
    }
  }

  /** Takes the mark away: the work is done. */
  public void remove() throws IOException {
    Files.deleteIfExists(file);
  }

  /** Lets go of the mark; where it was not removed it stays. */
  @Override
  public void close() throws IOException {
    try {
      channel.close();
    } finally {
      HELD.remove(file);
    }
  }
}

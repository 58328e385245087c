package org.longlow.constraints.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Files being written, and those whose writer was killed.
 *
 * <p>The name tells the process, and the file is locked while bytes go in. One is stale when its
 * process is gone and nobody, perhaps on another computer that shares the folder, holds the lock.
 */
public final class Leftovers {

  private static final Pattern NAME = Pattern.compile("\\.longlow-(\\d{1,18})-[0-9a-f-]{36}\\.new");

  private static final String GLOB = ".longlow-*.new";

  /** What this process is writing, by name; none stays when it is told to end. */
  private static final Map<String, Path> MINE = new ConcurrentHashMap<>();

  /** Set once the process was told to end: nothing new is begun then. */
  private static volatile boolean ending;

  /** Who had begun a moment before may make its file a moment after it was looked for. */
  private static final int LOOKS = 5;

  private static final long BETWEEN_LOOKS_MS = 20;

  static {
    Runtime.getRuntime().addShutdownHook(new Thread(Leftovers::drop, "drop unfinished files"));
  }

  private Leftovers() {}

  /** A file that is being written; closing takes it away unless it was moved into place. */
  record Unfinished(Path path) implements AutoCloseable {

    void lock(FileChannel channel) {
      try {
        channel.tryLock();
      } catch (IOException | OverlappingFileLockException e) {
        // not every file system has locks; the process in the name tells then
      }
    }

    @Override
    public void close() throws IOException {
      try {
        Files.deleteIfExists(path);
      } finally {
        MINE.remove(path.getFileName().toString());
      }
    }
  }

  /** Returns a name in {@code folder} that nobody can guess; there is no such file yet. */
  static Unfinished begin(Path folder) {
    long process = ProcessHandle.current().pid();
    Path path = folder.resolve(".longlow-" + process + "-" + UUID.randomUUID() + ".new");
    MINE.put(path.getFileName().toString(), path);
    while (ending) {
      LockSupport.park(); // the process is about to be gone, and so is whoever waits here
    }
    return new Unfinished(path);
  }

  private static void drop() {
    ending = true;
    for (int look = 0; look < LOOKS && !MINE.isEmpty(); look++) {
      for (Path path : MINE.values()) {
        try {
          Files.deleteIfExists(path);
        } catch (IOException e) {
          // the next writer in that folder tries again
        }
      }
      LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(BETWEEN_LOOKS_MS));
    }
  }

  /** Returns whether {@code path} is the passing name of a file that is being written. */
  public static boolean isUnfinished(Path path) {
    return path.getFileName() != null && NAME.matcher(path.getFileName().toString()).matches();
  }

  /** Takes away what killed writers left in {@code folder}; what cannot be looked at stays. */
  public static void clear(Path folder) {
    try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, GLOB)) {
      for (Path path : found) {
        if (isStale(path)) {
          Files.deleteIfExists(path);
        }
      }
    } catch (IOException | DirectoryIteratorException e) {
      // tidying is no reason to refuse what was asked for
    }
  }

  private static boolean isStale(Path path) throws IOException {
    Matcher name = NAME.matcher(path.getFileName().toString());
    if (!name.matches()
        || MINE.containsKey(path.getFileName().toString())
        || !Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)
        || isAlive(Long.parseLong(name.group(1)), path)) {
      return false;
    }
    try (FileChannel channel =
            FileChannel.open(path, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        FileLock lock = channel.tryLock()) {
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  /** A process that began after the file was last written is another one of the same number. */
  private static boolean isAlive(long process, Path path) throws IOException {
    if (process == ProcessHandle.current().pid()) {
      return false; // none of mine, so it is of an earlier one of the same number
    }
    Optional<ProcessHandle> handle = ProcessHandle.of(process);
    if (handle.isEmpty()) {
      return false;
    }
    Instant written = Files.getLastModifiedTime(path, LinkOption.NOFOLLOW_LINKS).toInstant();
    Optional<Instant> began = handle.get().info().startInstant();
    return began.isEmpty() || !began.get().isAfter(written.plusSeconds(2));
  }
}

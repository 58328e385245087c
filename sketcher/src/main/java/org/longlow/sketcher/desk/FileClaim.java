package org.longlow.sketcher.desk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * That a window has a file open, or keeps a copy of its work in it. Held as a lock on a file in a
 * folder of the user's own, so it ends with the window however that ends, and nothing appears
 * beside the user's file.
 */
final class FileClaim implements AutoCloseable {

  /** A claim that nobody made. */
  static final FileClaim NONE = new FileClaim(null, null, true);

  /** A claim of what somebody else has. */
  private static final FileClaim REFUSED = new FileClaim(null, null, false);

  /**
   * Marks locked by this program. They are not opened a second time: some systems let go of all
   * locks on a file when any channel to it is closed.
   */
  private static final Set<Path> OWN = ConcurrentHashMap.newKeySet();

  private final Path mark;
  private final FileChannel channel;
  private final boolean alone;

  private FileClaim(Path mark, FileChannel channel, boolean alone) {
    this.mark = mark;
    this.channel = channel;
    this.alone = alone;
  }

  /** Claims {@code file}; where no locks can be had nobody is thought to have it. */
  static FileClaim of(Path folder, Path file) {
    try {
      Files.createDirectories(folder);
      Path mark = mark(folder, file);
      return OWN.add(mark) ? locked(mark) : REFUSED;
    } catch (IOException e) {
      return NONE;
    }
  }

  private static FileClaim locked(Path mark) throws IOException {
    FileChannel channel = null;
    try {
      channel = FileChannel.open(mark, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (channel.tryLock() != null) {
        FileClaim claim = new FileClaim(mark, channel, true);
        channel = null;
        return claim;
      }
      OWN.remove(mark);
      return REFUSED;
    } catch (IOException e) {
      OWN.remove(mark);
      throw e;
    } finally {
      if (channel != null) {
        channel.close();
      }
    }
  }

  /** Returns whether a window that still lives has claimed {@code file}, be it this one. */
  static boolean isHeld(Path folder, Path file) {
    try {
      if (!Files.exists(mark(folder, file))) {
        return false;
      }
    } catch (IOException e) {
      return false;
    }
    try (FileClaim probe = of(folder, file)) {
      return !probe.isAlone();
    }
  }

  private static Path mark(Path folder, Path file) throws IOException {
    String real = real(file.toAbsolutePath().normalize()).toString();
    return folder.resolve(Digest.of(real).substring(0, 32) + ".open");
  }

  /** Returns where a file really is, or will be once it is there. */
  private static Path real(Path file) throws IOException {
    return Files.exists(file) || file.getParent() == null
        ? file.toRealPath()
        : real(file.getParent()).resolve(file.getFileName());
  }

  /** Returns whether no other window has the file. */
  boolean isAlone() {
    return alone;
  }

  @Override
  public void close() {
    if (channel == null || !OWN.remove(mark)) {
      return;
    }
    try {
      channel.close();
      Files.deleteIfExists(mark);
    } catch (IOException e) {
      // an empty mark that stays claims nothing
    }
  }
}

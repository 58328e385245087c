package org.longlow.sketcher.desk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * That a window has a file open. Held as a lock on a file in a folder of the user's own, so it ends
 * with the window however that ends, and nothing appears beside the user's file.
 */
final class FileClaim implements AutoCloseable {

  /** A claim that nobody made. */
  static final FileClaim NONE = new FileClaim(null, null, true);

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
      Path real = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath().normalize();
      Path mark = folder.resolve(Digest.of(real.toString()).substring(0, 32) + ".open");
      FileChannel channel =
          FileChannel.open(mark, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      boolean mine;
      try {
        mine = channel.tryLock() != null;
      } catch (OverlappingFileLockException e) {
        mine = false;
      }
      return new FileClaim(mark, channel, mine);
    } catch (IOException e) {
      return NONE;
    }
  }

  /** Returns whether no other window has the file. */
  boolean isAlone() {
    return alone;
  }

  @Override
  public void close() {
    if (channel == null) {
      return;
    }
    try {
      channel.close();
      if (alone) {
        Files.deleteIfExists(mark);
      }
    } catch (IOException e) {
      // an empty mark that stays claims nothing
    }
  }
}

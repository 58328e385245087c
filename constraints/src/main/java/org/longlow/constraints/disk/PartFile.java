package org.longlow.constraints.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Lines that a long piece of work has got done, kept beside what it will make, so that a run that
 * was stopped can be gone on with. The first line says what the work is; lines of any other work
 * are put aside, into a file of their own. A line that was cut short when the run was killed is
 * dropped.
 */
public final class PartFile implements AutoCloseable {

  /** Far more than any work leaves. */
  private static final long MOST_BYTES = 1L << 30;

  private final Path path;
  private final FileChannel channel;
  private final List<String> before = new ArrayList<>();
  private Optional<Path> aside = Optional.empty();

  private PartFile(Path path, FileChannel channel) {
    this.path = path;
    this.channel = channel;
  }

  /**
   * Opens the part beside a file, such as people.csv.part.
   *
   * @param whole what the work will make, in a folder that exists
   * @param work one line that says what the work is
   * @throws IOException if it cannot be written, or another run is at it
   */
  public static PartFile beside(Path whole, String work) throws IOException {
    Path path = beside(whole);
    if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)
        && !Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
      throw new FileSystemException(
          path.toString(), null, "it is no plain file; take it away or give another folder");
    }
    FileChannel channel =
        FileChannel.open(
            path,
            Set.of(
                StandardOpenOption.CREATE,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE,
                LinkOption.NOFOLLOW_LINKS));
    PartFile part = new PartFile(path, channel);
    try {
      part.begin(work);
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
    return part;
  }

  private void begin(String work) throws IOException {
    boolean mine;
    try {
      mine = channel.tryLock() != null;
    } catch (OverlappingFileLockException e) {
      mine = false;
    }
    if (!mine) {
      throw new FileSystemException(
          path.toString(), null, "another run is at it; wait for that or give another folder");
    }
    String text = channel.size() > MOST_BYTES ? "" : text();
    String head = work + "\n";
    if (text.startsWith(head)) {
      int whole = text.lastIndexOf('\n') + 1;
      for (String line : text.substring(head.length(), whole).split("\n")) {
        if (!line.isEmpty()) {
          before.add(line);
        }
      }
      channel.truncate(text.substring(0, whole).getBytes(StandardCharsets.UTF_8).length);
      channel.position(channel.size());
    } else {
      // one line says only what work was begun
      if (channel.size() > MOST_BYTES || text.indexOf('\n') < text.length() - 1) {
        aside = Optional.of(putAside());
      }
      channel.truncate(0);
      channel.position(0);
      write(head);
    }
  }

  /** Copies what is there to the first of people.csv.part.1 and so on that is free. */
  private Path putAside() throws IOException {
    for (int k = 1; ; k++) {
      Path free = path.resolveSibling(path.getFileName() + "." + k);
      if (Files.exists(free, LinkOption.NOFOLLOW_LINKS)) {
        continue;
      }
      try (FileChannel copy =
          FileChannel.open(free, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
        for (long at = 0; at < channel.size(); ) {
          at += channel.transferTo(at, channel.size() - at, copy);
        }
      }
      return free;
    }
  }

  private String text() throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate((int) channel.size());
    channel.position(0);
    while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
      continue;
    }
    return new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
  }

  /** Returns the lines that were there already. */
  public List<String> before() {
    return List.copyOf(before);
  }

  /** Returns where the lines of another work were put that lay here. */
  public Optional<Path> aside() {
    return aside;
  }

  /** Adds lines; they are there when this returns, whatever becomes of the run. */
  public synchronized void add(List<String> lines) throws IOException {
    write(String.join("\n", lines) + "\n");
  }

  private void write(String text) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
  }

  /** Takes away the part beside a file: the work is done. */
  public static void drop(Path whole) throws IOException {
    Files.deleteIfExists(beside(whole));
  }

  private static Path beside(Path whole) {
    return whole.resolveSibling(whole.getFileName() + ".part");
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}

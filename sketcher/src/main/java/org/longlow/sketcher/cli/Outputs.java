package org.longlow.sketcher.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.longlow.constraints.disk.Windows;
import org.longlow.constraints.words.Quoted;

/** Looks at what {@code --out} names before any work is done. */
final class Outputs {

  /** Room for Longlow's own endings in the 255 that ext4, NTFS and APFS take (from memory). */
  private static final int LONGEST_NAME_BYTES = 230;

  private Outputs() {}

  /**
   * Lets pass a file that can be written: a new one, or one that is neither a folder nor protected.
   *
   * @throws Refusal otherwise
   */
  static void file(Path out) {
    length(out);
    name(out);
    if (Files.isDirectory(out)) {
      throw new Refusal("--out is " + out + ", which is a folder; give a file name");
    }
    if (Files.exists(out) && !Files.isWritable(out)) {
      throw new Refusal(
          "--out is " + out + ", which is write-protected; give another name or unprotect it");
    }
    Path folder = out.toAbsolutePath().getParent();
    if (folder != null) {
      folder(out, folder);
    }
  }

  /**
   * As {@link #file(Path)}, and not the layout that is read, by whatever name.
   *
   * @throws Refusal otherwise
   */
  static void file(Path out, Path layout) throws IOException {
    file(out);
    if (Files.exists(out) && Files.exists(layout) && Files.isSameFile(out, layout)) {
      throw new Refusal("--out is " + out + ", which is the layout itself; give another name");
    }
  }

  /** Lets pass a folder that exists or can be made, and can be written in. */
  static void folder(Path out) {
    length(out);
    folder(out, out.toAbsolutePath());
  }

  /** Returns whether the name of {@code out} ends so, in whatever case. */
  static boolean ends(Path out, String ending) {
    return out.getFileName() != null
        && out.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  private static void name(Path out) {
    String name = out.getFileName() == null ? "" : out.getFileName().toString();
    if (name.lastIndexOf('.') == 0) {
      throw new Refusal("--out is " + out + ", which is only an ending; write a name before it");
    }
    if (Windows.refuses(name)) {
      throw new Refusal(
          "--out is "
              + out
              + ", a name that Windows has for a device or cannot keep; give another name");
    }
  }

  private static void length(Path out) {
    for (Path name : out) {
      int bytes = name.toString().getBytes(StandardCharsets.UTF_8).length;
      if (bytes > LONGEST_NAME_BYTES) {
        throw new Refusal(
            "--out has a name of "
                + bytes
                + " bytes in it, "
                + Quoted.cut(name.toString())
                + "; disks take up to "
                + LONGEST_NAME_BYTES
                + ": give a shorter one");
      }
    }
  }

  /** Returns what is said of a file that was replaced and kept. */
  static String kept(Path kept) {
    return "the file that was there is kept as " + kept;
  }

  private static void folder(Path out, Path folder) {
    Path there = folder;
    while (there != null && !Files.exists(there)) {
      there = there.getParent();
    }
    if (there == null) {
      return;
    }
    if (!Files.isDirectory(there)) {
      throw new Refusal("--out is " + out + ", but " + there + " is a file; give another folder");
    }
    if (!Files.isWritable(there)) {
      throw new Refusal(
          "--out is " + out + ", but nothing may be written in " + there + "; give another folder");
    }
  }
}

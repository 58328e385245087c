package org.longlow.sketcher.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The seal of files that have no room for one, such as lists for spreadsheets: a file beside them
 * with the SHA-256 digest of each as it was written, in the form that sha256sum checks.
 */
final class ListSums {

  /** What it is called. */
  static final String FILE = "SHA256SUMS";

  private static final Pattern LINES = Pattern.compile("(?:[0-9a-f]{64}  [^\\n/]+\\n)*");

  /** Far more than any list has; a larger file is somebody else's. */
  private static final int MOST_BYTES = 20_000_000;

  private ListSums() {}

  /** Returns the sums of files by name. */
  static byte[] of(Map<String, byte[]> files) {
    return files.entrySet().stream()
        .map(e -> line(e.getValue(), e.getKey()))
        .collect(Collectors.joining())
        .getBytes(StandardCharsets.UTF_8);
  }

  /** Returns whether a file is as it was when the sums beside it were written, or holds sums. */
  static boolean vouch(Path file) throws IOException {
    if (Files.size(file) > MOST_BYTES) {
      return false;
    }
    Path sums = file.resolveSibling(FILE);
    if (!Files.isRegularFile(sums) || Files.size(sums) > MOST_BYTES) {
      return false;
    }
    String said = Files.readString(sums, StandardCharsets.ISO_8859_1);
    return file.endsWith(FILE)
        ? LINES.matcher(said).matches()
        : said.contains(line(Files.readAllBytes(file), file.getFileName().toString()));
  }

  private static String line(byte[] bytes, String name) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(digest) + "  " + name + "\n";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("each Java platform has SHA-256", e);
    }
  }
}

package org.longlow.sketcher.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256, hex. */
final class Digest {

  private Digest() {}

  static String of(String text) {
    return HexFormat.of().formatHex(sha().digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** Returns the digest of a file's bytes, however many. */
  static String of(Path file) throws IOException {
    MessageDigest sha = sha();
    byte[] some = new byte[1 << 16];
    try (InputStream in = Files.newInputStream(file)) {
      for (int n = in.read(some); n >= 0; n = in.read(some)) {
        sha.update(some, 0, n);
      }
    }
    return HexFormat.of().formatHex(sha.digest());
  }

  private static MessageDigest sha() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}

package org.longlow.svg.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A comment in a file by which this program knows that it wrote every byte of it, so that it
 * replaces in silence neither another's file nor one of its own that was changed by hand.
 *
 * <p>The comment holds the SHA-256 digest of all other bytes. In SVG and HTML it is the last line,
 * in a PDF the line before {@code startxref}: there it moves no offset, and the file still ends as
 * ISO 32000 asks.
 */
public final class Seal {

  private static final String SAYS = "Unchanged since Longlow wrote it while the rest has SHA-256 ";

  private static final String PDF = "%PDF-";

  private static final int HEX_DIGITS = 64;

  /** Far more than any drawing has; a larger file is somebody else's. */
  private static final int MOST_BYTES = 100_000_000;

  private Seal() {}

  /** Returns {@code content}, a whole SVG, HTML or PDF file, with its seal. */
  public static byte[] on(byte[] content) {
    String text = text(content);
    boolean pdf = text.startsWith(PDF);
    int at = pdf ? text.lastIndexOf("startxref") : content.length;
    byte[] line = line(pdf, digest(content, at, at)).getBytes(StandardCharsets.ISO_8859_1);
    ByteArrayOutputStream out = new ByteArrayOutputStream(content.length + line.length);
    out.write(content, 0, at);
    out.writeBytes(line);
    out.write(content, at, content.length - at);
    return out.toByteArray();
  }

  /**
   * Returns whether {@code file} has a seal and is as it was when that was set.
   *
   * @throws IOException if it cannot be read
   */
  public static boolean holds(Path file) throws IOException {
    if (Files.size(file) > MOST_BYTES) {
      return false;
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(MOST_BYTES);
    }
    String text = text(bytes);
    boolean pdf = text.startsWith(PDF);
    int from = text.lastIndexOf(head(pdf));
    int to = from + line(pdf, "0".repeat(HEX_DIGITS)).length();
    return from >= 0
        && to <= text.length()
        && text.startsWith(line(pdf, digest(bytes, from, to)), from);
  }

  private static String head(boolean pdf) {
    return (pdf ? "% " : "<!-- ") + SAYS;
  }

  private static String line(boolean pdf, String digest) {
    return head(pdf) + digest + (pdf ? "\n" : " -->\n");
  }

  /** One character a byte, so that places in the text are places in the file. */
  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  /** Of all bytes but those from {@code from} to {@code to}. */
  private static String digest(byte[] bytes, int from, int to) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      digest.update(bytes, 0, from);
      digest.update(bytes, to, bytes.length - to);
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("each Java platform has SHA-256", e);
    }
  }
}

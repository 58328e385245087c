package org.longlow.svg.write;

import java.time.Instant;
import java.util.Objects;

/**
 * What a PDF says about itself.
 *
 * @param title title, may be empty
 * @param author who made it, may be empty
 * @param subject what it is about, may be empty
 * @param created when, or null to leave it out; an input, so that the same input gives the same
 *     bytes
 */
public record PdfInfo(String title, String author, String subject, Instant created) {

  public PdfInfo {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(author, "author");
    Objects.requireNonNull(subject, "subject");
  }

  /** Returns information with only a title. */
  public static PdfInfo titled(String title) {
    return new PdfInfo(title, "", "", null);
  }
}

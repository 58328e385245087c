package org.longlow.rider.seat;

import java.util.Locale;
import org.longlow.rider.words.Words;

/**
 * Something to take care of in how a person sits.
 *
 * @param about what of them or of the seat
 * @param text whole sentences in plain words: what is wrong and, where that is known, what to
 *     change
 */
public record SeatNote(About about, Words text) {

  /** What of the person or the seat. */
  public enum About {
    BUTTOCKS,
    THIGHS,
    BACK,
    HEAD,
    HEAD_REST,
    PAN_FOAM,
    BACK_FOAM;

    /** Returns it in words, such as {@code head rest}. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }
}

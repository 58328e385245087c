package org.longlow.rider.seat;

/**
 * How a cushion holds somebody, fresh and worn, in the words used for it everywhere. Two sinks are
 * told apart: the {@linkplain #LIKELY likely sink}, helped by the foam beside the body, and the
 * {@linkplain #DESIGN design sink} without that help, which decides. Both are uncertain by {@link
 * FoamStack#SINK_BAND}, so neither is the most that can happen.
 *
 * @param fresh with foam as bought
 * @param worn with the same foam worn
 */
public record Support(Hold fresh, Hold worn) {

  /** What the sink with the help of the foam beside the body is called. */
  public static final String LIKELY = "likely sink";

  /** What the sink without that help is called. */
  public static final String DESIGN = "design sink";

  /** Says what the design sink is. */
  public static final String DESIGN_MEANING =
      "The design sink leaves out the help of the foam beside the body; it decides how a cushion"
          + " holds.";

  /** What a cushion does, best first. */
  public enum Hold {
    /** The base has room, over a bump too. */
    HOLDS("holds", ""),
    /** The base has room at rest only. */
    BUMP("holds at rest, bottoms over a bump of 1 g", "use firmer or thicker foam"),
    /** The top layer does nothing more, the rest holds. */
    TOPPER(
        "topper spent: the top layer does nothing more, while the rest holds",
        "a firmer or thicker top layer would help"),
    /** The top layer does nothing more, and the rest holds at rest only. */
    TOPPER_BUMP(
        "topper spent: the top layer does nothing more, and the rest bottoms over a bump of 1 g",
        "use firmer or thicker foam"),
    /** So little of the foam still works that the board is felt. */
    BOTTOMS(
        "bottoms: so little of the foam still gives that the board is felt",
        "use firmer or thicker foam");

    private final String words;
    private final String remedy;

    Hold(String words, String remedy) {
      this.words = words;
      this.remedy = remedy;
    }

    /** Returns what it does, in words. */
    public String words() {
      return words;
    }

    static Hold of(Compression.Verdict verdict, boolean holdsBump) {
      return switch (verdict) {
        case BOTTOMS -> BOTTOMS;
        case TOPPER_SPENT -> holdsBump ? TOPPER : TOPPER_BUMP;
        case SOUND -> holdsBump ? HOLDS : BUMP;
      };
    }
  }

  /** Returns what a loaded cushion does. */
  public static Support of(CushionLoad load) {
    return new Support(
        Hold.of(load.verdict(), load.holdsBump()),
        Hold.of(load.worn().verdict(), load.worn().holdsBump()));
  }

  /** Whether it holds now and when it is worn. */
  public boolean lasts() {
    return worn == Hold.HOLDS;
  }

  /** Whether it bottoms as new. */
  public boolean bottoms() {
    return fresh == Hold.BOTTOMS;
  }

  /** Returns what it does and for how long, in words without a full stop. */
  public String words() {
    return fresh != Hold.HOLDS
        ? fresh.words
        : lasts() ? "holds, also when the foam is worn" : "holds while the foam is new";
  }

  /** Returns the words with what to do about it. */
  public String advice() {
    return fresh.remedy.isEmpty() ? words() : words() + "; " + fresh.remedy;
  }
}

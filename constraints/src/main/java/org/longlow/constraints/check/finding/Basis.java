package org.longlow.constraints.check.finding;

import org.longlow.constraints.law.Known;
import org.longlow.rider.words.Words;

/**
 * What a figure or its limit rests on.
 *
 * @param kind what sort of ground it is
 * @param known how well it is known
 * @param words where it comes from, in words
 * @param decides false for what is only told beside the verdict, which does not hang on it
 */
public record Basis(Kind kind, Known known, Words words, boolean decides) {

  /** One that the verdict hangs on. */
  public Basis(Kind kind, Known known, Words words) {
    this(kind, known, words, true);
  }

  /** Sorts of ground, best first. */
  public enum Kind {
    /** Calculated from what the layout says; geometry and statics. */
    MODEL,
    /** What the layout itself asks. */
    OWN_DEMAND,
    /** A published text, with its section. */
    PUBLISHED,
    /** What builders commonly do; nobody published it. */
    PRACTICE,
    /** What seems right to those who wrote this. */
    JUDGEMENT
  }

  /** Whether a verdict rests on it that nobody has checked: what rests on it may not pass. */
  public boolean decidesFromMemory() {
    return decides && known == Known.FROM_MEMORY;
  }

  /** Returns the same as one that nobody could look up again. */
  public Basis fromMemory() {
    return new Basis(kind, Known.FROM_MEMORY, words, decides);
  }

  /** Returns the same as a side remark: the verdict would be the same without it. */
  public Basis aside() {
    return new Basis(kind, known, words, false);
  }

  public static Basis model(String words) {
    return model(Words.read(words));
  }

  public static Basis model(Words words) {
    return new Basis(Kind.MODEL, Known.CHECKED, words);
  }

  public static Basis published(Known known, String words) {
    return new Basis(Kind.PUBLISHED, known, Words.read(words));
  }

  public static Basis practice(String words) {
    return practice(Words.read(words));
  }

  public static Basis practice(Words words) {
    return new Basis(Kind.PRACTICE, Known.CHECKED, words);
  }

  public static Basis judgement(String words) {
    return judgement(Words.read(words));
  }

  public static Basis judgement(Words words) {
    return new Basis(Kind.JUDGEMENT, Known.CHECKED, words);
  }

  public static Basis ownDemand(String words) {
    return new Basis(Kind.OWN_DEMAND, Known.CHECKED, Words.read(words));
  }
}

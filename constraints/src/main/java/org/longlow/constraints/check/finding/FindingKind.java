package org.longlow.constraints.check.finding;

/**
 * A kind of finding: something that can be found out about a machine. Whoever makes such findings
 * has the kind as a constant; each is its own, also where two share a word.
 */
public final class FindingKind {

  /** What the figures of findings rest on. */
  public enum Rests {
    /** On the drawing and the people alone. */
    ON_DRAWING,
    /** On the masses of the parts as well. */
    ON_MASSES,
    /** On those too, and it is told of the machine once for everybody who rides it. */
    ON_EACH_LOAD,
    /** On a text that is known from memory only. */
    ON_MEMORY,
    /** On nothing: it says what is not looked at here. */
    ON_NOTHING
  }

  private final String word;
  private final FindingGroup group;
  private final Rests rests;
  private final boolean leads;

  /**
   * @param word begins the names of such findings
   * @param group what it belongs to, and so the caution that goes with it
   */
  public FindingKind(String word, FindingGroup group, Rests rests) {
    this(word, group, rests, false);
  }

  private FindingKind(String word, FindingGroup group, Rests rests, boolean leads) {
    this.word = word;
    this.group = group;
    this.rests = rests;
    this.leads = leads;
  }

  /** Returns a kind that says what to do next: unless it passes it comes before all others. */
  public static FindingKind leading(String word, FindingGroup group, Rests rests) {
    return new FindingKind(word, group, rests, true);
  }

  /** Returns the word that begins the names of such findings. */
  public String word() {
    return word;
  }

  /** Returns what it belongs to, and so the caution that goes with it. */
  public FindingGroup group() {
    return group;
  }

  /** Whether its figures rest on the masses of the parts. */
  public boolean weighed() {
    return rests == Rests.ON_MASSES || rests == Rests.ON_EACH_LOAD;
  }

  /** Whether it is said of the machine once for everybody who rides it. */
  public boolean toldForEach() {
    return rests == Rests.ON_EACH_LOAD;
  }

  /** Whether it says how far a text is met that nobody could read again. */
  public boolean fromMemory() {
    return rests == Rests.ON_MEMORY;
  }

  /** Whether it says only that something is not looked at here. */
  public boolean notCovered() {
    return rests == Rests.ON_NOTHING;
  }

  /** Whether it says what to do next and so comes before all others. */
  boolean leads() {
    return leads;
  }

  @Override
  public String toString() {
    return word;
  }
}

package org.longlow.constraints.words;

/**
 * Is told how far a longer piece of work is; nothing hangs on what it does. Called from several
 * threads.
 */
@FunctionalInterface
public interface Progress {

  /** Tells nobody. */
  Progress NONE = (what, done, of) -> {};

  /**
   * @param what what is going on, in a few words
   * @param done how many parts of it are done
   * @param of how many there are
   */
  void at(String what, int done, int of);
}

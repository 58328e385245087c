package org.longlow.constraints.shape;

import java.util.function.Function;

/**
 * Results of a pure function of one thing that never changes, kept by which thing it is and not by
 * what it is worth, so that asking costs nothing however large it is. Bounded, as a {@link Memo}
 * is, and for any number of threads.
 */
public final class ByThing<K, V> {

  private final Memo<It<K>, V> memo;

  /** A thing, equal to itself alone. */
  private record It<K>(K thing) {

    @Override
    public boolean equals(Object other) {
      return other instanceof It<?> it && it.thing == thing;
    }

    @Override
    public int hashCode() {
      return System.identityHashCode(thing);
    }
  }

  /**
   * @param size results kept for sure; at most twice as many are held
   */
  public ByThing(int size, Function<K, V> function) {
    memo = new Memo<>(size, it -> function.apply(it.thing));
  }

  /** Returns the function's value at {@code thing}. */
  public V of(K thing) {
    return memo.of(new It<>(thing));
  }
}

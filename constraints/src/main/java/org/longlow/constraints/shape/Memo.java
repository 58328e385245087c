package org.longlow.constraints.shape;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Results of a pure function, kept by value: from one edit to the next most outlines stay as they
 * are. Bounded; what was not asked for lately is forgotten. For any number of threads.
 */
public final class Memo<K, V> {

  private final int size;
  private final Function<K, V> function;
  private volatile Map<K, V> lately = new ConcurrentHashMap<>();
  private volatile Map<K, V> before = Map.of();

  /**
   * Makes an empty memo.
   *
   * @param size results kept for sure; at most twice as many are held
   */
  public Memo(int size, Function<K, V> function) {
    this.size = size;
    this.function = function;
  }

  /** Makes an empty memo of what {@link #of(Object, Supplier)} works out. */
  public Memo(int size) {
    this(
        size,
        key -> {
          throw new IllegalStateException("say how it is worked out");
        });
  }

  /** Returns the function's value at {@code key}. */
  public V of(K key) {
    return of(key, () -> function.apply(key));
  }

  /**
   * Returns what is kept for {@code key}, or works it out by what else is at hand.
   *
   * @param work gives what follows from the key alone
   */
  public V of(K key, Supplier<V> work) {
    Map<K, V> now = lately;
    V value = now.get(key);
    if (value == null) {
      value = before.get(key);
      if (value == null) {
        value = work.get();
      }
      if (now.size() >= size) {
        before = now;
        now = new ConcurrentHashMap<>();
        lately = now;
      }
      now.put(key, value);
    }
    return value;
  }
}

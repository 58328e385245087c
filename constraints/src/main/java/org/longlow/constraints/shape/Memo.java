package org.longlow.constraints.shape;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

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

  /** Returns the function's value at {@code key}. */
  public V of(K key) {
    Map<K, V> now = lately;
    V value = now.get(key);
    if (value == null) {
      value = before.get(key);
      if (value == null) {
        value = function.apply(key);
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

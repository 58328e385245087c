package org.longlow.constraints.shape;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.function.BiFunction;

/**
 * Results of a pure function of a thing and of places, kept while the pins and measures that it
 * read stay where they are: from one edit to the next most do. Whoever asks gets the same object
 * again, and so knows that nothing of it has changed. Bounded, for any number of threads.
 *
 * @param <K> never changes; told apart by which one it is
 */
public final class ByPlaces<K, V> {

  private final int each;
  private final BiFunction<K, Places, V> function;
  private final ByThing<K, Deque<Known<V>>> known;

  private record Known<V>(Reads reads, V value) {}

  /**
   * @param things of so many results are kept for sure, of at most twice as many
   * @param each so many of each, those asked for last
   * @param function reads single pins and measures, and keeps no hold of the places it is given
   */
  public ByPlaces(int things, int each, BiFunction<K, Places, V> function) {
    this.each = each;
    this.function = function;
    known = new ByThing<>(things, thing -> new ArrayDeque<>());
  }

  /** Returns the function's value for a thing at {@code places}. */
  public V of(K thing, Places places) {
    Deque<Known<V>> results = known.of(thing);
    synchronized (results) {
      Known<V> result = taken(results, places);
      if (result != null) {
        results.addFirst(result);
        return result.value;
      }
    }
    Reads reads = new Reads(places);
    V value = function.apply(thing, reads.places());
    reads.end();
    synchronized (results) {
      results.addFirst(new Known<>(reads, value));
      if (results.size() > each) {
        results.removeLast();
      }
    }
    return value;
  }

  private static <V> Known<V> taken(Deque<Known<V>> results, Places places) {
    for (Iterator<Known<V>> all = results.iterator(); all.hasNext(); ) {
      Known<V> one = all.next();
      if (one.reads.holdAt(places)) {
        all.remove();
        return one;
      }
    }
    return null;
  }
}

package org.longlow.constraints.shape;

import java.util.AbstractMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.longlow.rider.geom.PointMm;

/**
 * Which pins and measures something read, and what they were: it comes out the same again wherever
 * these are the same to the bit.
 */
final class Reads {

  private final Noted<PointMm> pins;
  private final Noted<Double> measures;

  Reads(Places places) {
    pins = new Noted<>(places.pins());
    measures = new Noted<>(places.measures());
  }

  /** Returns the same places, where whatever is read is noted. */
  Places places() {
    return new Places(pins, measures);
  }

  /** Lets go of the places; nothing more can be read. */
  void end() {
    pins.all = null;
    measures.all = null;
  }

  /** Returns whether all that was read is the same elsewhere. */
  boolean holdAt(Places places) {
    return pins.holdIn(places.pins()) && measures.holdIn(places.measures());
  }

  /** A map that notes what is asked of it. */
  private static final class Noted<V> extends AbstractMap<String, V> {

    private Map<String, V> all;
    private final Map<String, V> read = new HashMap<>(8);

    Noted(Map<String, V> all) {
      this.all = all;
    }

    @Override
    public V get(Object name) {
      V value = all.get(name);
      read.put((String) name, value);
      return value;
    }

    @Override
    public Set<Entry<String, V>> entrySet() {
      throw new UnsupportedOperationException("what is kept by places reads them one by one");
    }

    boolean holdIn(Map<String, V> others) {
      for (Map.Entry<String, V> known : read.entrySet()) {
        V value = known.getValue();
        V other = others.get(known.getKey());
        if (value != other && (value == null || !value.equals(other))) {
          return false;
        }
      }
      return true;
    }
  }
}

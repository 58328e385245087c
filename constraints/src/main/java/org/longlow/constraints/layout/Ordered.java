package org.longlow.constraints.layout;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Maps that keep their order. */
final class Ordered {

  private Ordered() {}

  /** Returns an unmodifiable copy that keeps its order. */
  static <K, V> Map<K, V> copy(Map<K, V> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }
}

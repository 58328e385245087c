package org.longlow.sketcher.desk;

import java.util.ArrayList;
import java.util.List;

/** The notices shown now, one for each topic, in the order they came. */
final class Notices {

  private final List<Notice> list = new ArrayList<>();

  List<Notice> all() {
    return List.copyOf(list);
  }

  /** Shows a notice in place of the last one of its topic. */
  void put(Notice notice) {
    drop(notice.topic());
    list.add(notice);
  }

  void drop(String topic) {
    list.removeIf(n -> n.topic().equals(topic));
  }

  /** Drops what was said only in passing. */
  void dropSaid() {
    list.removeIf(n -> n.mood() == Notice.Mood.SAID);
  }

  void clear() {
    list.clear();
  }
}

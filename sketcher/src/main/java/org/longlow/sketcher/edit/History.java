package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Layout;

/**
 * The layouts of a session in their order, and which of them is now.
 *
 * <p>Layouts are kept whole. They share what did not change, so a step costs little, and going back
 * gives the very object that was there before.
 */
public final class History {

  private final List<Layout> layouts = new ArrayList<>();
  private final List<String> names = new ArrayList<>();
  private int now;

  public History(Layout first) {
    layouts.add(first);
  }

  public Layout layout() {
    return layouts.get(now);
  }

  /** Adds a step after now; what could have been redone is dropped. */
  public void add(String name, Layout layout) {
    layouts.subList(now + 1, layouts.size()).clear();
    names.subList(now, names.size()).clear();
    layouts.add(layout);
    names.add(name);
    now++;
  }

  /** Returns whether {@code layout} itself, not its like, is now or was before now. */
  public boolean isBehind(Layout layout) {
    return layouts.subList(0, now + 1).stream().anyMatch(l -> l == layout);
  }

  public boolean back() {
    if (now == 0) {
      return false;
    }
    now--;
    return true;
  }

  public boolean forward() {
    if (now == names.size()) {
      return false;
    }
    now++;
    return true;
  }

  public Optional<String> backName() {
    return now == 0 ? Optional.empty() : Optional.of(names.get(now - 1));
  }

  public Optional<String> forwardName() {
    return now == names.size() ? Optional.empty() : Optional.of(names.get(now));
  }
}

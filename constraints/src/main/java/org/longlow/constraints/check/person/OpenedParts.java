package org.longlow.constraints.check.person;

import java.util.LinkedHashMap;
import java.util.Map;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Sections;
import org.longlow.rider.geom.OutOfRange;

/** Parts of sections where they are held open: the same objects while they move alike. */
public final class OpenedParts {

  private static final Memo<Key, PartShape> KNOWN =
      new Memo<>(256, key -> key.shut.moved(key.motion.at(key.opening)));

  private record Key(SectionMotion motion, double opening, PartShape shut) {

    @Override
    public boolean equals(Object other) {
      return other instanceof Key k
          && k.shut == shut
          && k.opening == opening
          && k.motion.equals(motion);
    }

    @Override
    public int hashCode() {
      return System.identityHashCode(shut);
    }
  }

  private OpenedParts() {}

  /** Returns the parts of all sections where they are held open. */
  public static Map<String, PartShape> all(
      Layout layout, Places places, Map<String, PartShape> shut) {
    Map<String, PartShape> opened = new LinkedHashMap<>();
    layout.sections().values().forEach(section -> opened.putAll(of(section, places, shut)));
    return opened;
  }

  /**
   * Returns the parts of a section where it is held open; none where it cannot open, which is said
   * of the section itself.
   *
   * @param shut every part with the section shut
   */
  static Map<String, PartShape> of(Section section, Places places, Map<String, PartShape> shut) {
    SectionMotion motion;
    try {
      motion = Sections.motion(section, places);
    } catch (OutOfRange e) {
      return Map.of();
    }
    double to = section.opens().holds().map(places::value).orElse(1.0);
    Map<String, PartShape> opened = new LinkedHashMap<>();
    for (String part : section.parts()) {
      PartShape shape = shut.get(part);
      if (shape != null) {
        opened.put(part, KNOWN.of(new Key(motion, to, shape)));
      }
    }
    return opened;
  }
}

package org.longlow.constraints.json;

import java.util.List;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.layout.Layout;

/** What reading a layout file gives: the layout, or everything that is wrong with the file. */
public sealed interface ReadResult {

  /**
   * A sound file.
   *
   * @param layout what it says
   * @param notes remarks that do not stop it, such as a measure that nothing uses
   */
  record Read(Layout layout, List<String> notes) implements ReadResult {
    public Read {
      notes = List.copyOf(notes);
    }
  }

  /**
   * A file with faults.
   *
   * @param faults all of them, in the order of the file's groups; never empty
   */
  record Refused(List<Fault> faults) implements ReadResult {
    public Refused {
      if (faults.isEmpty()) {
        throw new IllegalArgumentException("a refused file needs at least one fault");
      }
      faults = List.copyOf(faults);
    }
  }
}

package org.longlow.sketcher.cli;

import java.nio.file.Path;
import org.longlow.constraints.json.Fault;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;

/** Reads layout files for commands. */
final class Loading {

  private Loading() {}

  /**
   * Returns the layout in {@code file}.
   *
   * @throws Refusal with one line a fault if the file is not a sound layout
   */
  static Layout layout(Path file) {
    ReadResult result = LayoutReader.read(file);
    if (result instanceof ReadResult.Refused refused) {
      throw new Refusal(
          refused.faults().stream().map(Fault::line).map(l -> file + ": " + l).toList());
    }
    return ((ReadResult.Read) result).layout();
  }
}

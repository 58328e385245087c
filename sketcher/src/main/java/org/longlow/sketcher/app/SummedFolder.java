package org.longlow.sketcher.app;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.disk.HeldMark;
import org.longlow.constraints.disk.WholeSet;

/** Puts a set of files and their sums into a folder: whole or not at all. */
final class SummedFolder {

  /** Far longer than any set takes. */
  private static final Duration PATIENCE = Duration.ofMinutes(1);

  /** Finds what an earlier run left that this one has no more. */
  interface Left {
    List<Path> in(Path folder) throws IOException;
  }

  private SummedFolder() {}

  /**
   * Puts files into {@code folder}. What is there of an earlier run is replaced; what somebody
   * changed is kept beside.
   *
   * @param files by name, their sums among them
   * @param left what is to go
   * @param unfinished what the folder says while they are on their way
   * @return what is to be said of the folder
   * @throws InTheWay.NotAgreed if something is there that may not be replaced; all is as it was
   */
  static List<String> write(
      Path folder,
      Map<String, byte[]> files,
      Left left,
      String unfinished,
      InTheWay.Consent consent)
      throws IOException {
    List<String> remarks = new ArrayList<>();
    try (NewFolder made = NewFolder.at(folder);
        HeldMark mark =
            HeldMark.put(folder.resolve(SheetFolder.UNFINISHED), unfinished, PATIENCE)) {
      boolean half = true;
      WholeSet.mend(folder, Output::isSomebodysWork);
      try (WholeSet set = new WholeSet(folder)) {
        List<Path> gone = left.in(folder);
        List<Path> places = new ArrayList<>(gone);
        files.keySet().forEach(name -> places.add(folder.resolve(name)));
        consent.ask(places);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
          set.add(file.getKey(), out -> out.write(file.getValue()));
        }
        set.put(gone, Output::isSomebodysWork)
            .forEach(k -> remarks.add("the file that was there is kept as " + k.getFileName()));
        half = false;
      } finally {
        if (!half || !WholeSet.isHalf(folder)) {
          mark.remove();
        }
      }
      made.stays();
    }
    return remarks;
  }
}

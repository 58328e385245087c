package org.longlow.sketcher.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.longlow.constraints.layout.Layout;

/**
 * Unsaved work that was found beside the file on the board. Until it is taken up or thrown away it
 * stays on the disk in a file that nothing else writes, whatever is done to the board meanwhile.
 * Belongs to the desk's thread.
 */
final class FoundWork {

  private static final String FOUND = "found";

  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMM, HH:mm", Locale.ROOT).withZone(ZoneId.systemDefault());

  private final Surface desk;
  private final Keeper keeper;
  private final List<Autosave.Found> waiting = new ArrayList<>();

  FoundWork(Surface desk, Keeper keeper) {
    this.desk = desk;
    this.keeper = keeper;
  }

  /**
   * What earlier sessions left of their work on a file.
   *
   * @param sound what can be taken up, the latest first, each in a file of its own
   * @param broken sentences on what cannot be read
   */
  record Left(List<Autosave.Found> sound, List<String> broken) {

    /** Looks beside a file and puts what is there where nothing writes over it. */
    static Left beside(Path file, Layout layout, Autosave autosave) {
      return new Left(
          held(autosave.beside(file, layout)),
          autosave.brokenBeside(file).stream().map(Left::aside).toList());
    }

    /** Of copies that say the same, as a kill can leave them, one is enough. */
    private static List<Autosave.Found> held(List<Autosave.Found> all) {
      List<Autosave.Found> held = new ArrayList<>();
      for (Autosave.Found one : all) {
        if (held.stream().noneMatch(h -> h.layout().equals(one.layout()))) {
          held.add(Autosave.hold(one));
        } else {
          try {
            Autosave.remove(one.copy());
          } catch (IOException e) {
            // then it is there twice, and nothing is lost
          }
        }
      }
      return held;
    }

    private static String aside(Autosave.Broken broken) {
      Path kept = broken.copy();
      try {
        kept = Autosave.setAside(kept);
      } catch (IOException e) {
        // where nothing can be moved nothing can be written over either
      }
      return "Unsaved work of this file was found and cannot be read: "
          + broken.trouble()
          + ". It is kept as "
          + kept
          + ".";
    }
  }

  /** Looks what earlier sessions left, now that no copy of this window counts as theirs. */
  void look(Path file, Layout layout) {
    Session mine = desk.session().orElseThrow();
    desk.queue(
        () -> {
          Left left = Left.beside(file, layout, keeper.autosave());
          return () -> {
            if (desk.isAt(mine)) {
              begin(left);
            }
          };
        });
  }

  /** Offers what was left. */
  private void begin(Left left) {
    waiting.addAll(left.sound());
    offer();
    if (!left.broken().isEmpty()) {
      desk.say(Notice.Mood.CARE, "broken", String.join("\n", left.broken()));
    }
  }

  /** Forgets what waits, as another machine comes on the board; on the disk it stays. */
  void clear() {
    waiting.clear();
  }

  /** Returns where the work is kept that was not answered yet. */
  List<Path> copies() {
    return waiting.stream().map(Autosave.Found::copy).toList();
  }

  /** Returns where what waits is kept, as part of a sentence. */
  String places() {
    return copies().stream().map(Path::toString).collect(Collectors.joining(" and "));
  }

  private void offer() {
    if (waiting.isEmpty()) {
      return;
    }
    Autosave.Found found = waiting.get(0);
    desk.tell(
        new Notice(
            FOUND,
            Notice.Mood.CARE,
            "Work that was not saved was found beside this file, last changed "
                + WHEN.format(found.at())
                + (waiting.size() > 1 ? " (the first of " + waiting.size() + ")" : "")
                + ". Until you answer it stays as "
                + found.copy()
                + ".",
            List.of(
                new Notice.Answer("Take it up again", () -> takeUp(found)),
                new Notice.Answer("Throw it away", () -> answered(found, () -> remove(found))))));
  }

  private void takeUp(Autosave.Found found) {
    Session session = desk.session().orElseThrow();
    session.put("take up unsaved work", found.layout());
    answered(found, desk::changed);
    removeOnceKept(found);
  }

  /** Removes a copy whose work is on the board, once it is on the disk elsewhere. */
  void removeOnceKept(Autosave.Found found) {
    keeper.keep(
        desk.session().orElseThrow(),
        kept -> {
          if (kept.copy().isPresent() || kept.trouble().isEmpty()) {
            remove(found);
          }
        });
  }

  private void remove(Autosave.Found found) {
    keeper.remove(found.copy(), () -> {});
  }

  private void answered(Autosave.Found found, Runnable then) {
    waiting.remove(found);
    then.run();
    offer();
  }
}

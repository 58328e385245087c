package org.longlow.sketcher.edit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.longlow.constraints.layout.Layout;

/** Keeps copies of unsaved work, and looks after files, on a thread of its own, in order. */
final class Keeper {

  private final LatestWins thread = new LatestWins("longlow-keeper");
  private final Executor owner;
  private final Autosave autosave;

  Keeper(Executor owner, Autosave autosave) {
    this.owner = owner;
    this.autosave = autosave;
  }

  Autosave autosave() {
    return autosave;
  }

  /**
   * Brings the copy of a session up to date: written while there is something unsaved, else
   * removed.
   *
   * @param wrong told on the owner's thread why it cannot be written
   */
  void keep(Session session, Consumer<String> wrong) {
    Layout now = session.layout();
    boolean unsaved = session.isChanged();
    Path copy = autosave.copyOf(session);
    Optional<Path> drawings = session.folder();
    thread.queue(
        () -> {
          try {
            if (unsaved) {
              Autosave.write(now, copy, drawings);
            } else {
              Autosave.remove(copy);
            }
          } catch (IOException e) {
            owner.execute(() -> wrong.accept(e.getMessage()));
          }
        });
  }

  /** Removes a copy that is no longer needed; {@code after} runs on the owner's thread then. */
  void remove(Path copy, Runnable after) {
    thread.queue(
        () -> {
          try {
            Autosave.remove(copy);
            owner.execute(after);
          } catch (IOException e) {
            // it is offered once more at the next opening, and can be thrown away there
          }
        });
  }

  /**
   * Looks whether a file was changed by somebody else.
   *
   * @param changed told on the owner's thread if so, with whether the file is still there
   */
  void look(LayoutFile file, Consumer<Boolean> changed) {
    thread.queue(
        () -> {
          if (file.changedOnDisk()) {
            boolean there = file.exists();
            owner.execute(() -> changed.accept(there));
          }
        });
  }

  void close() {
    thread.close();
  }
}

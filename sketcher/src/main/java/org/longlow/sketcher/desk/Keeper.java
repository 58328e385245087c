package org.longlow.sketcher.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import org.longlow.constraints.layout.Layout;

/** Keeps copies of unsaved work, and looks after files, on a thread of its own, in order. */
final class Keeper {

  /** Longest that parting waits for the disk. */
  private static final long PATIENCE_S = 10;

  /**
   * Where unsaved work is kept.
   *
   * @param copy empty if there is nothing unsaved, or if it could not be kept
   * @param beside whether that is beside the file, or where work without a file belongs
   * @param trouble why it could not be kept, or not beside the file; empty if all went well
   */
  record Kept(Optional<Path> copy, boolean beside, String trouble) {

    static final Kept NOTHING = new Kept(Optional.empty(), true, "");
  }

  private final LatestWins thread = new LatestWins("longlow-keeper");
  private final Executor owner;
  private final Autosave autosave;

  /** Copies written here, each marked as that of a window that lives. */
  private final Map<Path, FileClaim> mine = new HashMap<>();

  private boolean closed;

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
   * @param kept told on the owner's thread where it is
   */
  void keep(Session session, Consumer<Kept> kept) {
    Work work = work(session);
    thread.queue(
        () -> {
          Kept now = kept(work);
          owner.execute(() -> kept.accept(now));
        });
  }

  /** As {@link #keep}, and waits for the answer. */
  Kept keepNow(Session session) {
    Work work = work(session);
    CompletableFuture<Kept> answer = new CompletableFuture<>();
    thread.queue(() -> answer.complete(kept(work)));
    try {
      return answer.get(PATIENCE_S, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return new Kept(Optional.empty(), false, "it was interrupted");
    } catch (ExecutionException | TimeoutException e) {
      return new Kept(Optional.empty(), false, "the disk does not answer");
    }
  }

  private record Work(
      Layout layout, boolean unsaved, Path copy, Optional<Path> away, Optional<Path> drawings) {}

  private Work work(Session session) {
    return new Work(
        session.layout(),
        session.isChanged(),
        autosave.copyOf(session),
        autosave.awayFrom(session),
        session.folder());
  }

  private Kept kept(Work work) {
    try {
      if (!work.unsaved()) {
        removeMine(work.copy());
        if (work.away().isPresent()) {
          removeMine(work.away().get());
        }
        return Kept.NOTHING;
      }
      write(work, work.copy());
      return new Kept(Optional.of(work.copy()), true, "");
    } catch (IOException | RuntimeException e) {
      String why = Refusals.words(e);
      if (work.away().isEmpty() || !work.unsaved()) {
        return new Kept(Optional.empty(), false, why);
      }
      try {
        write(work, work.away().get());
        return new Kept(work.away(), false, why);
      } catch (IOException | RuntimeException again) {
        return new Kept(Optional.empty(), false, why + "; " + Refusals.words(again));
      }
    }
  }

  private void write(Work work, Path copy) throws IOException {
    mine.computeIfAbsent(copy, c -> FileClaim.of(autosave.claims(), c));
    Autosave.write(work.layout(), copy, work.drawings());
  }

  private void removeMine(Path copy) throws IOException {
    FileClaim claim = mine.get(copy);
    if (claim != null) {
      Autosave.remove(copy);
      mine.remove(copy);
      claim.close();
    }
  }

  /** Goes from a session: what it leaves behind is offered to whoever looks from now on. */
  void letGo() {
    if (closed) {
      return; // nothing is claimed any more, and nobody would answer
    }
    CompletableFuture<Void> done = new CompletableFuture<>();
    thread.queue(
        () -> {
          unclaim();
          done.complete(null);
        });
    try {
      done.get(PATIENCE_S, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException | TimeoutException e) {
      // the disk does not answer: it is offered later
    }
  }

  private void unclaim() {
    mine.values().forEach(FileClaim::close);
    mine.clear();
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

  /** Removes copies that this window wrote and no longer needs. */
  void removeMine(List<Path> copies) {
    thread.queue(
        () -> {
          for (Path copy : copies) {
            try {
              removeMine(copy);
            } catch (IOException e) {
              // as above
            }
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

  /** Ends when all that was asked for is on the disk. */
  void close() {
    closed = true;
    thread.queue(this::unclaim);
    thread.close();
    try {
      thread.awaitEnd(PATIENCE_S);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}

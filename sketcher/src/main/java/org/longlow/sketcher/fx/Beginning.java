package org.longlow.sketcher.fx;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import javafx.application.Platform;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.desk.Autosave;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.picture.ElevationPicture;
import org.longlow.sketcher.picture.PictureOptions;

/**
 * What needs no toolkit, begun while that is still starting: the file that was asked for is read,
 * studied and drawn. With no file the shipped machines are read, and one of them is drawn, so that
 * whatever is opened next finds its classes loaded.
 */
final class Beginning {

  private final UntilUp owner = new UntilUp();
  private final Desk desk;
  private final Supplier<List<Shipped>> shipped;

  /** Until the window is there, the desk belongs to whoever brings it something, one at a time. */
  private static final class UntilUp implements Executor {
    private boolean up;

    @Override
    public synchronized void execute(Runnable task) {
      if (up) {
        Platform.runLater(task);
      } else {
        task.run();
      }
    }

    synchronized void isUp() {
      up = true;
    }
  }

  /**
   * @param file a layout file to open
   */
  Beginning(Optional<Path> file, Autosave autosave) {
    desk = new Desk(owner, autosave);
    if (file.isPresent()) {
      run(() -> desk.files().open(file.get()));
      shipped = Machines::shipped;
    } else {
      CompletableFuture<List<Shipped>> read = CompletableFuture.supplyAsync(Machines::shipped);
      read.thenAcceptAsync(Beginning::warm);
      shipped = read::join;
    }
  }

  /** Returns the desk, which until {@link #shown} is to be asked by {@link #run} alone. */
  Desk desk() {
    return desk;
  }

  /** Does something with the desk while nobody else does. */
  void run(Runnable task) {
    owner.execute(task);
  }

  private static void warm(List<Shipped> machines) {
    if (!machines.isEmpty()) {
      ElevationPicture.of(Study.of(machines.get(0).layout()), PictureOptions.PLAIN);
    }
  }

  /**
   * Makes the window; from now on the desk belongs to the interface thread, which calls this.
   *
   * @param show makes it of the desk and the shipped machines
   */
  Window shown(BiFunction<Desk, Supplier<List<Shipped>>, Window> show) {
    owner.isUp();
    Window window = show.apply(desk, shipped);
    desk.forgetTrouble(); // tells the window what is there already
    return window;
  }
}

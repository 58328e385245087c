package org.longlow.sketcher.fx;

import java.nio.IntBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.longlow.constraints.layout.Photo;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Notice;
import org.longlow.sketcher.desk.Session;
import org.longlow.sketcher.photo.FlatPhoto;
import org.longlow.sketcher.photo.PhotoFile;
import org.longlow.sketcher.photo.PhotoPlace;
import org.longlow.sketcher.photo.Pixel;
import org.longlow.sketcher.photo.Raster;
import org.longlow.sketcher.photo.UnreadPhoto;

/**
 * The photos under the drawing. Each is read and laid flat once, aside; until then nothing of it is
 * seen. One that cannot be shown is told of in a notice, and the drawing goes on without it.
 */
final class PhotoLayer {

  /** What decides how a photo looks on its own plane. */
  private record Key(Path folder, String file, List<Pixel> corners, double wide, double high) {}

  /** A photo that is ready to be painted; no image where it could not be read. */
  private record Ready(FlatPhoto flat, Image image) {}

  private static final Ready COMING = new Ready(null, null);

  private final Desk desk;
  private final Runnable repaint;
  private final Map<Key, Ready> ready = new HashMap<>();

  /** Names of photos of which a notice was shown. */
  private final Set<String> told = new HashSet<>();

  private final ExecutorService reader =
      Executors.newSingleThreadExecutor(
          job -> {
            Thread thread = new Thread(job, "photos");
            thread.setDaemon(true);
            return thread;
          });

  /**
   * @param repaint is run when a photo has become ready
   */
  PhotoLayer(Desk desk, Runnable repaint) {
    this.desk = desk;
    this.repaint = repaint;
  }

  /** Returns whether anything is seen under the drawing, so that parts are to be seen through. */
  boolean shows(BoardState shown) {
    return shown.layout().photos().values().stream()
        .anyMatch(photo -> !photo.hidden() && image(photo, shown).isPresent());
  }

  private Optional<Ready> image(Photo photo, BoardState shown) {
    return Optional.ofNullable(ready.get(key(photo, shown.places()))).filter(r -> r.image != null);
  }

  private Key key(Photo photo, Places places) {
    boolean square = !photo.corners().isEmpty();
    return new Key(
        desk.session().flatMap(Session::folder).orElse(null),
        photo.file(),
        PhotoPlace.corners(photo, places),
        square ? photo.width().map(places::value).orElse(1.0) : 0,
        square ? photo.height().map(places::value).orElse(1.0) : 0);
  }

  /** Returns all photos that are not hidden, and has those read that are not yet. */
  List<Ink> inks(BoardState shown, ViewFrame frame) {
    List<Ink> inks = new ArrayList<>();
    Set<Key> wanted = new HashSet<>();
    shown
        .layout()
        .photos()
        .forEach(
            (name, photo) -> {
              Key key = key(photo, shown.places());
              wanted.add(key);
              Ready now = photo.hidden() ? COMING : ready.get(key);
              if (now == null) {
                ready.put(key, COMING);
                read(name, photo, key);
              } else if (now.image() != null) {
                inks.add(ink(photo, now, shown, frame));
              }
            });
    ready.keySet().retainAll(wanted);
    Set<String> gone = new HashSet<>(told);
    gone.removeAll(shown.layout().photos().keySet());
    told.removeAll(gone);
    // later: what is painted now tells nobody anything
    gone.forEach(name -> Platform.runLater(() -> desk.dropNotice(topic(name))));
    return inks;
  }

  private static Ink ink(Photo photo, Ready now, BoardState shown, ViewFrame frame) {
    PhotoPlace place = PhotoPlace.of(photo, shown.layout(), shown.places());
    FlatPhoto flat = now.flat();
    double w = flat.raster().width();
    double h = flat.raster().height();
    PointMm o = onScreen(flat.inMachine(place, 0, 0), shown, frame);
    PointMm r = onScreen(flat.inMachine(place, w, 0), shown, frame).minus(o).times(1 / w);
    PointMm d = onScreen(flat.inMachine(place, 0, h), shown, frame).minus(o).times(1 / h);
    return new PhotoInk(now.image(), 1 - shown.places().value(photo.fade()), o, r, d);
  }

  /** A place of the drawn machine, px from the left and from the top. */
  private static PointMm onScreen(PointMm machine, BoardState shown, ViewFrame frame) {
    PointMm road = shown.ground().toRoad(machine);
    return new PointMm(frame.screenX(road.x()), frame.screenY(road.z()));
  }

  private void read(String name, Photo photo, Key key) {
    reader.execute(
        () -> {
          try {
            PhotoFile file = PhotoFile.read(key.folder(), key.file());
            FlatPhoto flat =
                key.corners().isEmpty()
                    ? FlatPhoto.straight(file)
                    : FlatPhoto.squared(file, key.corners(), key.wide(), key.high());
            Ready done = new Ready(flat, image(flat.raster()));
            Platform.runLater(() -> arrived(name, photo, key, done, file.amiss()));
          } catch (UnreadPhoto e) {
            Platform.runLater(() -> arrived(name, photo, key, COMING, e.getMessage()));
          }
        });
  }

  private static Image image(Raster raster) {
    return new WritableImage(
        new PixelBuffer<>(
            raster.width(),
            raster.height(),
            IntBuffer.wrap(raster.argb()),
            PixelFormat.getIntArgbPreInstance()));
  }

  private void arrived(String name, Photo photo, Key key, Ready done, String fault) {
    if (!ready.containsKey(key)) {
      return;
    }
    ready.put(key, done);
    if (fault.isEmpty()) {
      if (told.remove(name)) {
        desk.dropNotice(topic(name));
      }
    } else {
      told.add(name);
      Notice.Answer again = new Notice.Answer("Look again", () -> lookAgain(key));
      desk.tell(
          new Notice(
              topic(name),
              Notice.Mood.CARE,
              PhotoFile.said(name, photo, fault) + ".",
              List.of(again)));
    }
    repaint.run();
  }

  private static String topic(String photo) {
    return "photo-" + photo.replaceAll("[^A-Za-z0-9]+", "-");
  }

  private void lookAgain(Key key) {
    ready.remove(key);
    repaint.run();
  }

  /** Returns the uppermost photo at a place on the screen, by name; hidden ones are not there. */
  Optional<String> at(double px, double py, BoardState shown, ViewFrame frame) {
    PointMm machine = shown.ground().toFrame(frame.point(px, py));
    List<String> names = new ArrayList<>(shown.layout().photos().keySet());
    for (int i = names.size() - 1; i >= 0; i--) {
      Photo photo = shown.layout().photos().get(names.get(i));
      Optional<Ready> now = image(photo, shown).filter(r -> !photo.hidden());
      if (now.isPresent() && covers(photo, now.get(), shown, machine)) {
        return Optional.of(names.get(i));
      }
    }
    return Optional.empty();
  }

  private static boolean covers(Photo photo, Ready now, BoardState shown, PointMm machine) {
    PhotoPlace place = PhotoPlace.of(photo, shown.layout(), shown.places());
    FlatPhoto flat = now.flat();
    PointMm o = flat.inMachine(place, 0, 0);
    PointMm wide = flat.inMachine(place, flat.raster().width(), 0).minus(o);
    PointMm down = flat.inMachine(place, 0, flat.raster().height()).minus(o);
    PointMm d = machine.minus(o);
    double along = d.dot(wide) / wide.dot(wide);
    double under = d.dot(down) / down.dot(down);
    return along >= 0 && along <= 1 && under >= 0 && under <= 1;
  }
}

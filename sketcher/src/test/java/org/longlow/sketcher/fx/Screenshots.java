package org.longlow.sketcher.fx;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.ButtonBase;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.transform.Transform;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Autosave;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Selection;
import org.longlow.sketcher.desk.Wren;
import org.longlow.sketcher.edit.PhotoEdits;
import org.longlow.sketcher.edit.Subjects;
import org.longlow.sketcher.edit.Target;
import org.longlow.sketcher.photo.Homography;
import org.longlow.sketcher.photo.Pixel;

/**
 * Makes the window's pictures for the README, without a display:
 *
 * <pre>mvn -q -pl sketcher -am test-compile
 * java -cp ... org.longlow.sketcher.fx.Screenshots FOLDER</pre>
 */
public final class Screenshots {

  private static final String BROKEN =
      """
      {"longlow": 1, "name": "broken", "measures": {"wheelbase": "1640 kg + 2 mm", "rake": "27 dge"},
       "pins": {"rearAxle": ["0 mm"]},
       "parts": {"lump": {"kind": "block", "frame": "nowhere", "outline": {"points": []}}}}
      """;

  private Screenshots() {}

  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args.length > 0 ? args[0] : "target/window");
    Files.createDirectories(folder);
    System.setProperty("glass.platform", "Monocle");
    System.setProperty("monocle.platform", "Headless");
    System.setProperty("prism.order", "sw");
    System.setProperty("headless.geometry", "2560x1440-32");
    Platform.setImplicitExit(false);
    Platform.startup(() -> {});
    Layout layout = machine();
    for (boolean large : new boolean[] {false, true}) {
      String size = large ? "-2560" : "-1280";
      double w = large ? 2560 : 1280;
      double h = large ? 1440 : 800;
      Path home = Files.createTempDirectory("longlow-pictures");
      AtomicReference<Window> made = new AtomicReference<>();
      AtomicReference<Stage> stage = new AtomicReference<>();
      onFx(
          () -> {
            stage.set(new Stage());
            Desk desk = new Desk(Platform::runLater, new Autosave(home));
            Window window = new Window(desk, Machines::shipped);
            made.set(window);
            stage.get().setScene(new Scene(window, w, h));
            stage.get().show();
            return null;
          });
      Window window = made.get();
      Desk desk = window.desk();
      shot(window, folder.resolve("start" + size + ".png"));
      act(desk, d -> d.files().openCopy(layout, Optional.empty()));
      shot(window, folder.resolve("card" + size + ".png"));
      act(desk, d -> d.choose("part:pan"));
      shot(window, folder.resolve("part" + size + ".png"));
      act(desk, d -> d.choose("section:" + layout.sections().keySet().iterator().next()));
      shot(window, folder.resolve("section" + size + ".png"));
      act(desk, d -> d.choose(Subjects.DEMANDS));
      shot(window, folder.resolve("demands" + size + ".png"));
      act(desk, d -> d.chooseFinding(d.shown().get().findings().get(0).id()));
      act(desk, d -> d.mending().ask(d.finding()));
      act(
          desk,
          d -> d.mending().show(d.mending().mends().flatMap(m -> m.offers().stream().findFirst())));
      shot(window, folder.resolve("mend" + size + ".png"));
      act(desk, d -> d.mending().show(Optional.empty()));
      act(desk, d -> d.chooseFinding(""));
      act(desk, d -> d.choose(Subjects.DEMANDS));
      press(window, "find");
      shot(window, folder.resolve("find" + size + ".png"));
      act(desk, d -> d.choose("part:pan"));
      act(
          desk,
          d -> {
            String id = d.shown().get().findings().get(0).id();
            d.chooseFinding(id);
          });
      shot(window, folder.resolve("finding" + size + ".png"));
      // the finder, the finding and its list are put away
      for (int i = 0; i < 3; i++) {
        act(desk, d -> window.fireEvent(key(KeyCode.ESCAPE)));
      }
      onFx(
          () -> {
            window.use(Look.NIGHT);
            return null;
          });
      act(desk, d -> d.choose("pin:backTop"));
      act(desk, d -> d.drags().hover("backTop"));
      shot(window, folder.resolve("night" + size + ".png"));
      act(desk, d -> d.look(o -> o.withStance(Optional.of(Condition.open("lid")))));
      act(desk, d -> d.type(new Target.OfTie("backSlope"), "recline + 20 deg + backLength"));
      shot(window, folder.resolve("refused" + size + ".png"));
      act(desk, d -> d.look(o -> o.withStance(Optional.empty())));
      press(window, "add");
      shot(window, folder.resolve("gallery" + size + ".png"));
      press(window, "add-silencer");
      act(desk, d -> window.board().fireEvent(key(KeyCode.LEFT)));
      act(desk, d -> window.board().fireEvent(key(KeyCode.LEFT)));
      shot(window, folder.resolve("placing" + size + ".png"));
      act(desk, d -> window.board().fireEvent(key(KeyCode.ESCAPE)));
      act(desk, d -> d.select(new Selection(List.of("part:pan", "part:back", "pin:backTop"))));
      shot(window, folder.resolve("several" + size + ".png"));
      act(desk, d -> d.choose("part:engine"));
      press(window, "points");
      act(desk, d -> window.board().fireEvent(key(KeyCode.N)));
      act(desk, d -> window.board().fireEvent(key(KeyCode.N)));
      shot(window, folder.resolve("points" + size + ".png"));
      act(desk, d -> window.board().fireEvent(key(KeyCode.ENTER)));
      act(desk, d -> d.choose(""));
      press(window, "keys");
      shot(window, folder.resolve("keys" + size + ".png"));
      press(window, "make");
      shot(window, folder.resolve("make" + size + ".png"));
      press(window, "paper-away");
      act(
          desk,
          d -> {
            d.choose("");
            d.look(o -> o.withDimensions(true));
            d.ghost(List.copyOf(layout.crew().keySet()).get(1), true);
            window.use(Look.DAY);
          });
      shot(window, folder.resolve("dimensions" + size + ".png"));
      photo(window, layout, home, folder.resolve("photo" + size + ".png"));
      Path broken = Files.writeString(home.resolve("broken.json"), BROKEN);
      act(desk, Desk::leave);
      act(desk, d -> d.files().open(broken));
      shot(window, folder.resolve("faults" + size + ".png"));
      onFx(
          () -> {
            stage.get().hide();
            desk.close();
            return null;
          });
    }
    Platform.exit();
  }

  /** A wall of tiles seen at a slant, under the machine and squared up. */
  private static void photo(Window window, Layout layout, Path home, Path file) throws Exception {
    List<Pixel> corners =
        List.of(
            new Pixel(300, 900), new Pixel(1350, 800), new Pixel(1300, 330), new Pixel(350, 200));
    Homography camera = Homography.of(corners, 1200, 600);
    BufferedImage wall = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < wall.getHeight(); y++) {
      for (int x = 0; x < wall.getWidth(); x++) {
        PointMm at = camera.onPlane(new Pixel(x + 0.5, y + 0.5)).orElse(PointMm.ORIGIN);
        boolean dark = (Math.round(at.x() / 100) + Math.round(at.z() / 100)) % 2 == 0;
        wall.setRGB(x, y, dark ? 0x806048 : 0xe8d8c0);
      }
    }
    ImageIO.write(wall, "png", home.resolve("wall.png").toFile());
    Path saved = home.resolve("traced.json");
    LayoutWriter.save(
        PhotoEdits.put("wall", "wall.png", 1600, 1200, new Envelope(-400, 1900, 0, 1200))
            .applied(layout),
        saved);
    act(window.desk(), d -> d.files().open(saved));
    act(
        window.desk(),
        d ->
            d.edit(
                PhotoEdits.squared("wall", d.shown().get().places(), corners, "1200 mm", "600 mm"),
                new Target.OfEntry(PhotoEdits.entry("wall")),
                ""));
    act(window.desk(), d -> d.choose("photo:wall"));
    for (int i = 0; i < 200 && onFx(() -> window.board().photoAt(700, 400)).isEmpty(); i++) {
      Thread.sleep(20);
    }
    shot(window, file);
  }

  private static Layout machine() {
    return Machines.shipped().isEmpty() ? Wren.layout() : Machines.shipped().get(0).layout();
  }

  private static KeyEvent key(KeyCode code) {
    return new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false);
  }

  private static void press(Window window, String id) throws Exception {
    act(window.desk(), d -> ((ButtonBase) Hands.called(window, id).get()).fire());
  }

  private static void act(Desk desk, Consumer<Desk> action) throws Exception {
    onFx(
        () -> {
          action.accept(desk);
          return null;
        });
    for (int i = 0; i < 2000 && !onFx(desk::isIdle); i++) {
      Thread.sleep(5);
    }
  }

  private static void shot(Window window, Path file) throws Exception {
    // two pulses: one lays out what the last answer changed, one paints it
    for (int i = 0; i < 3; i++) {
      act(window.desk(), d -> {});
      Thread.sleep(60);
    }
    WritableImage image =
        onFx(
            () -> {
              SnapshotParameters p = new SnapshotParameters();
              p.setTransform(Transform.scale(1, 1));
              return window.snapshot(p, null);
            });
    write(image, file);
    System.out.println(file);
  }

  private static <T> T onFx(Supplier<T> job) throws Exception {
    AtomicReference<T> result = new AtomicReference<>();
    AtomicReference<RuntimeException> wrong = new AtomicReference<>();
    CountDownLatch done = new CountDownLatch(1);
    Platform.runLater(
        () -> {
          try {
            result.set(job.get());
          } catch (RuntimeException e) {
            wrong.set(e);
          } finally {
            done.countDown();
          }
        });
    if (!done.await(60, TimeUnit.SECONDS)) {
      throw new IllegalStateException("the interface thread did not answer");
    }
    if (wrong.get() != null) {
      throw wrong.get();
    }
    return result.get();
  }

  /** Writes a PNG (W3C Portable Network Graphics, truecolour, no filter). */
  private static void write(WritableImage image, Path file) throws IOException {
    int w = (int) image.getWidth();
    int h = (int) image.getHeight();
    int[] argb = new int[w * h];
    image.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), argb, 0, w);
    byte[] raw = new byte[h * (3 * w + 1)];
    for (int y = 0, at = 0; y < h; y++) {
      at++;
      for (int x = 0; x < w; x++) {
        int p = argb[y * w + x];
        raw[at++] = (byte) (p >> 16);
        raw[at++] = (byte) (p >> 8);
        raw[at++] = (byte) p;
      }
    }
    Deflater deflater = new Deflater(9);
    deflater.setInput(raw);
    deflater.finish();
    byte[] packed = new byte[raw.length + 1024];
    int length = deflater.deflate(packed);
    deflater.end();
    ByteBuffer header = ByteBuffer.allocate(13).putInt(w).putInt(h);
    header.put(new byte[] {8, 2, 0, 0, 0});
    try (var out = Files.newOutputStream(file)) {
      out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
      chunk(out, "IHDR", header.array(), 13);
      chunk(out, "IDAT", packed, length);
      chunk(out, "IEND", new byte[0], 0);
    }
  }

  private static void chunk(java.io.OutputStream out, String name, byte[] data, int length)
      throws IOException {
    byte[] type = name.getBytes(java.nio.charset.StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(type);
    crc.update(data, 0, length);
    out.write(ByteBuffer.allocate(4).putInt(length).array());
    out.write(type);
    out.write(data, 0, length);
    out.write(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
  }
}

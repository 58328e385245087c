package org.longlow.sketcher.photo;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;
import org.longlow.constraints.disk.NamedFile;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Photo;

/**
 * A PNG or JPEG file as a picture. What it is, its content says, not its name; how large it is, is
 * looked at before anything is unpacked, and a large one is taken in steps of several pixels.
 *
 * @param raster the picture, upright
 * @param step how many pixels of the file one of the raster stands for, each way
 * @param widthPx of the file, upright
 * @param heightPx of the file, upright
 * @param amiss what is amiss though it can be shown, or empty
 */
public record PhotoFile(Raster raster, int step, int widthPx, int heightPx, String amiss) {

  /** Largest side, pixels. */
  public static final int MAX_SIDE_PX = 20_000;

  /** Most pixels of a file: cameras of today have up to 60 million. */
  public static final long MAX_PX = 64_000_000;

  /** Most pixels that are kept. */
  static final int KEPT_PX = 4_000_000;

  private static final NamedFile.Sort SORT =
      new NamedFile.Sort("photo", "a", 80_000_000, "save it smaller");

  /** The segment that tells how the camera was held begins among these. */
  private static final int HEAD_BYTES = 1 << 17;

  private static final String AGAIN = "save it again as PNG or JPEG";

  /**
   * Reads a photo.
   *
   * @param folder of the layout file, or null
   * @param name relative to it
   */
  public static PhotoFile read(Path folder, String name) throws UnreadPhoto {
    return with(found(folder, name), PhotoFile::whole);
  }

  /**
   * How large a photo is, upright.
   *
   * @param widthPx pixels
   * @param heightPx pixels
   */
  public record Size(int widthPx, int heightPx) {
    private Size upright(int orientation) {
      return Orientation.lies(orientation) ? new Size(heightPx, widthPx) : this;
    }
  }

  /** Returns how large a photo is, wherever it lies; its content is not unpacked for that. */
  public static Size size(Path file) throws UnreadPhoto {
    return with(file, (reader, head) -> size(reader).upright(Orientation.of(head)));
  }

  /**
   * Returns why photos of a layout cannot be shown, a line for each such; their contents are not
   * unpacked for that.
   *
   * @param folder of the layout file, or null
   */
  public static List<String> notices(Layout layout, Path folder) {
    List<String> lines = new ArrayList<>();
    for (var entry : layout.photos().entrySet()) {
      fault(entry.getValue(), folder)
          .ifPresent(f -> lines.add(said(entry.getKey(), entry.getValue(), f)));
    }
    return lines;
  }

  private static Optional<String> fault(Photo photo, Path folder) {
    try {
      with(found(folder, photo.file()), (reader, head) -> size(reader));
      return Optional.empty();
    } catch (UnreadPhoto e) {
      return Optional.of(e.getMessage());
    }
  }

  /** Returns a sentence on a photo that cannot be shown, or not all of it. */
  public static String said(String name, Photo photo, String fault) {
    return "photo " + name + " is not all shown: " + photo.file() + " " + fault;
  }

  private static Path found(Path folder, String name) throws UnreadPhoto {
    NamedFile file = NamedFile.in(folder, name, SORT);
    if (file.path() == null) {
      throw new UnreadPhoto(file.fault(), file.remedy());
    }
    return file.path();
  }

  /** Something done with an open file. */
  private interface Work<T> {
    T with(ImageReader reader, byte[] head) throws IOException, UnreadPhoto;
  }

  private static <T> T with(Path file, Work<T> work) throws UnreadPhoto {
    try (InputStream in = Files.newInputStream(file);
        ImageInputStream stream = new FileImageInputStream(file.toFile())) {
      byte[] head = in.readNBytes(HEAD_BYTES);
      ImageReader reader = reader(stream);
      try {
        reader.setInput(stream, true, true);
        return work.with(reader, head);
      } finally {
        reader.dispose();
      }
    } catch (IOException e) {
      throw new UnreadPhoto("cannot be read", "look at the file, or " + AGAIN);
    } catch (RuntimeException e) {
      // the readers of the platform throw any of them at files that are not what they seem
      throw new UnreadPhoto("is damaged", AGAIN);
    }
  }

  private static ImageReader reader(ImageInputStream stream) throws IOException, UnreadPhoto {
    for (Iterator<ImageReader> all = ImageIO.getImageReaders(stream); all.hasNext(); ) {
      ImageReader reader = all.next();
      String format = reader.getFormatName().toLowerCase(Locale.ROOT);
      if (format.equals("png") || format.equals("jpeg")) {
        return reader;
      }
      reader.dispose();
    }
    throw new UnreadPhoto("is no PNG or JPEG file", AGAIN);
  }

  private static Size size(ImageReader reader) throws IOException, UnreadPhoto {
    int width = reader.getWidth(0);
    int height = reader.getHeight(0);
    if (width > MAX_SIDE_PX || height > MAX_SIDE_PX || (long) width * height > MAX_PX) {
      throw new UnreadPhoto(
          "has " + width + " x " + height + " pixels",
          "save it with at most " + MAX_PX / 1_000_000 + " million, " + MAX_SIDE_PX + " a side");
    }
    return new Size(width, height);
  }

  private static PhotoFile whole(ImageReader reader, byte[] head) throws IOException, UnreadPhoto {
    Size size = size(reader);
    double pixels = (double) size.widthPx() * size.heightPx();
    int step = (int) Math.ceil(Math.sqrt(pixels / KEPT_PX));
    ImageReadParam every = reader.getDefaultReadParam();
    every.setSourceSubsampling(step, step, step / 2, step / 2);
    boolean[] warned = {false};
    reader.addIIOReadWarningListener((source, words) -> warned[0] = true);
    int orientation = Orientation.of(head);
    Size upright = size.upright(orientation);
    return new PhotoFile(
        Orientation.upright(Raster.of(reader.read(0, every)), orientation),
        step,
        upright.widthPx(),
        upright.heightPx(),
        warned[0] ? "is cut short or damaged; " + AGAIN : "");
  }
}

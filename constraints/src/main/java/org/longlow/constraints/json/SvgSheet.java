package org.longlow.constraints.json;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;
import org.apache.batik.parser.ParseException;
import org.longlow.constraints.disk.NamedFile;
import org.longlow.constraints.words.Quoted;
import org.longlow.rider.geom.PointMm;

/**
 * What there is to trace in an SVG file: its paths, and how long its unit is where it says so.
 *
 * @param paths in the order of the file
 * @param unitMm mm for each user unit; empty where the file does not say its size
 * @param fault why it cannot be read, or empty
 */
public record SvgSheet(List<Outlined> paths, Optional<Double> unitMm, String fault) {

  /** Most paths listed: more cannot be chosen from by eye. */
  public static final int MOST_PATHS = 200;

  /** A CSS pixel, which is what a length without a unit means: 1/96 in (SVG 1.1, 7.10). */
  private static final double PX_MM = 25.4 / 96;

  private static final Map<String, Double> UNITS_MM =
      Map.of(
          "", PX_MM, "px", PX_MM, "mm", 1.0, "cm", 10.0, "in", 25.4, "pt", 25.4 / 72, "pc",
          25.4 / 6);

  private static final Pattern LENGTH =
      Pattern.compile("\\s*(\\d*\\.?\\d+(?:[eE][-+]?\\d+)?)\\s*([a-z]*)\\s*");

  /** A minus before anything but noughts. */
  private static final Pattern BELOW_NOUGHT =
      Pattern.compile("\\s*-\\s*[\\d.]*[1-9].*", Pattern.DOTALL);

  /** More is another shape, not width and height rounded by a drawing program. */
  private static final double MOST_STRETCH = 1.001;

  /** Curves are shown by chords within this share of the size of their path. */
  private static final double FLATNESS_SHARE = 0.002;

  /**
   * A path.
   *
   * @param id by which it is named; empty for the first path of a file
   * @param points in user units, y up
   * @param closed whether it closes
   * @param fault why it cannot be an outline, or empty
   */
  public record Outlined(String id, List<PointMm> points, boolean closed, String fault) {

    /** Returns how wide it is, in user units. */
    public double width() {
      double least = points.stream().mapToDouble(PointMm::x).min().orElse(0);
      return points.stream().mapToDouble(PointMm::x).max().orElse(0) - least;
    }
  }

  private static SvgSheet fault(String words) {
    return new SvgSheet(List.of(), Optional.empty(), words);
  }

  /** Reads what there is to trace in {@code file}, wherever it lies. */
  public static SvgSheet read(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    NamedFile named = NamedFile.in(folder, file.getFileName().toString(), SvgTrace.SORT);
    if (named.path() == null) {
      return fault(named.fault() + "; " + named.remedy());
    }
    try (InputStream in = Files.newInputStream(named.path())) {
      return read(in);
    } catch (XMLStreamException e) {
      return fault("is not well-formed XML; save it again as plain SVG");
    } catch (ParseException e) {
      return fault("has a transform that cannot be read; save it as plain SVG");
    } catch (IOException e) {
      return fault("cannot be read; look at its permissions");
    }
  }

  private static SvgSheet read(InputStream in) throws XMLStreamException {
    List<Outlined> paths = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    SvgPaths.Root root =
        SvgPaths.walk(
            in,
            AffineTransform.getScaleInstance(1, -1),
            (id, d, to) -> {
              String own = id == null ? "" : id;
              boolean reached = own.isEmpty() ? paths.isEmpty() : ids.add(own);
              paths.add(outlined(own, d, to, reached));
              return paths.size() < MOST_PATHS;
            });
    Optional<String> negative = root == null ? Optional.empty() : negative(root);
    if (negative.isPresent()) {
      return fault(negative.get());
    }
    return paths.isEmpty()
        ? fault("has no path; turn its shapes into paths in the drawing program")
        : new SvgSheet(paths, root == null ? Optional.empty() : unit(root), "");
  }

  /**
   * Returns what is wrong with a size below nought (SVG 1.1, 7.2 and 7.7); the other side alone
   * would give another size than was meant.
   */
  private static Optional<String> negative(SvgPaths.Root root) {
    String[] box = viewBox(root);
    if (box.length == 4 && (isNegative(box[2]) || isNegative(box[3]))) {
      return Optional.of(negative("viewBox", root.viewBox(), "whose sizes"));
    }
    if (isNegative(root.width())) {
      return Optional.of(negative("width", root.width(), "which"));
    }
    return isNegative(root.height())
        ? Optional.of(negative("height", root.height(), "which"))
        : Optional.empty();
  }

  private static boolean isNegative(String size) {
    return size != null && BELOW_NOUGHT.matcher(size).matches();
  }

  private static String negative(String name, String said, String what) {
    return String.format(
        "says its %s is %s, %s must not be negative; write how large the sheet really is",
        name, Quoted.cut(said.strip()), what);
  }

  private static Outlined outlined(String id, String d, AffineTransform to, boolean reached) {
    SvgTrace fine =
        SvgTrace.trace(
            d,
            to,
            box -> Math.max(1e-6, FLATNESS_SHARE * Math.max(box.getWidth(), box.getHeight())));
    String fault =
        fine.fault() != null
            ? fine.fault() + "; " + fine.remedy()
            : reached ? "" : "cannot be named; give it an id of its own in the drawing program";
    return new Outlined(id, points(fine), fine.closed(), fault);
  }

  private static List<PointMm> points(SvgTrace trace) {
    return trace.vertices().stream()
        .map(v -> new PointMm(v.x().evaluate(n -> 0), v.z().evaluate(n -> 0)))
        .toList();
  }

  /**
   * The whole of the viewBox is fitted into width and height (SVG 1.1, 7.8: meet), or covers them
   * (slice). Where it is stretched to another shape (none) no one length is that of its unit.
   */
  private static Optional<Double> unit(SvgPaths.Root root) {
    Optional<Double> width = lengthMm(root.width());
    Optional<Double> height = lengthMm(root.height());
    String[] box = viewBox(root);
    if (box.length != 4) {
      return width.isPresent() || height.isPresent() ? Optional.of(PX_MM) : Optional.empty();
    }
    Optional<Double> across = share(width, box[2]);
    Optional<Double> down = share(height, box[3]);
    if (across.isEmpty() || down.isEmpty()) {
      return across.or(() -> down);
    }
    double least = Math.min(across.get(), down.get());
    double most = Math.max(across.get(), down.get());
    String fitted = root.fitted() == null ? "" : root.fitted().strip();
    if (fitted.startsWith("none") && most > least * MOST_STRETCH) {
      return Optional.empty();
    }
    return Optional.of(fitted.endsWith("slice") ? most : least);
  }

  private static String[] viewBox(SvgPaths.Root root) {
    return root.viewBox() == null ? new String[0] : root.viewBox().strip().split("[\\s,]+");
  }

  private static Optional<Double> share(Optional<Double> mm, String units) {
    return mm.flatMap(
        m -> number(units).filter(u -> u > 0).map(u -> m / u).filter(Double::isFinite));
  }

  private static Optional<Double> number(String text) {
    try {
      return Optional.of(Double.valueOf(text));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private static Optional<Double> lengthMm(String text) {
    Matcher length = LENGTH.matcher(text == null ? "" : text);
    return length.matches() && UNITS_MM.containsKey(length.group(2))
        ? number(length.group(1)).map(n -> n * UNITS_MM.get(length.group(2)))
        : Optional.empty();
  }
}

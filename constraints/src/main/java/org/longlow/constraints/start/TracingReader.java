package org.longlow.constraints.start;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.longlow.constraints.json.SvgSheet;
import org.longlow.constraints.start.Answers.Box;
import org.longlow.constraints.words.Names;
import org.longlow.constraints.words.Quoted;

/** Reads the outline of a drive from an SVG file. */
final class TracingReader {

  /** So far what was traced may be from as high as the box says, as a share of that. */
  private static final double AGREES = 0.02;

  private final BiConsumer<String, String> fault;

  /**
   * @param fault takes what is wrong and what to do
   */
  TracingReader(BiConsumer<String, String> fault) {
    this.fault = fault;
  }

  /**
   * Returns the outline.
   *
   * @param text a file, and after a # the id of a path of it, as its question says
   * @param box how large it is, if that was said
   */
  Optional<Tracing> read(String text, Optional<Box> box) {
    int mark = text.lastIndexOf('#');
    boolean named = mark > 0 && !isFile(text);
    Optional<Path> file = path(named ? text.substring(0, mark) : text);
    if (file.isEmpty()) {
      fault.accept("is no name for a file", "name an SVG file");
      return Optional.empty();
    }
    SvgSheet sheet = SvgSheet.read(file.get());
    if (!Files.exists(file.get())) {
      fault.accept("does not exist", "look at its name and folder");
      return Optional.empty();
    }
    if (!sheet.fault().isEmpty()) {
      fault.accept(sheet.fault(), "");
      return Optional.empty();
    }
    return outlined(sheet, named ? text.substring(mark + 1).strip() : "")
        .flatMap(outline -> scaled(outline, sheet.unitMm(), box));
  }

  private static boolean isFile(String text) {
    return path(text).filter(Files::isRegularFile).isPresent();
  }

  private static Optional<Path> path(String text) {
    try {
      Path path = Path.of(text.strip());
      return Optional.of(path).filter(p -> !p.toString().isEmpty() && p.getFileName() != null);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private Optional<SvgSheet.Outlined> outlined(SvgSheet sheet, String id) {
    Optional<SvgSheet.Outlined> found =
        sheet.paths().stream().filter(p -> id.isEmpty() || p.id().equals(id)).findFirst();
    if (found.isEmpty()) {
      List<String> ids = sheet.paths().stream().map(SvgSheet.Outlined::id).toList();
      fault.accept("has no path " + Quoted.of(id), Names.advice(id, ids, "path"));
    } else if (!found.get().fault().isEmpty()) {
      fault.accept(found.get().fault(), "");
    } else if (!found.get().closed()) {
      fault.accept("is a line that does not close", "close the path, or name another after a #");
    } else if (!Tracing.of(found.get().points(), 1).isSound()) {
      fault.accept("crosses itself, or encloses nothing", "draw one edge all round");
    } else {
      return found;
    }
    return Optional.empty();
  }

  private Optional<Tracing> scaled(
      SvgSheet.Outlined outline, Optional<Double> unitMm, Optional<Box> box) {
    Optional<Double> scale = box.map(b -> b.lengthMm() / outline.width()).or(() -> unitMm);
    if (scale.isEmpty()) {
      fault.accept(
          "does not say how large it is", "give its box, such as 390 x 310 x 320 mm, 48 kg");
      return Optional.empty();
    }
    Tracing tracing = Tracing.of(outline.points(), scale.get());
    if (box.isPresent() && Math.abs(tracing.heightMm() / box.get().heightMm() - 1) > AGREES) {
      fault.accept(
          String.format(
              Locale.ROOT,
              "is %.0f mm high where it is %.0f mm long, and the box %.0f mm",
              tracing.heightMm(),
              tracing.lengthMm(),
              box.get().heightMm()),
          "measure again, or draw the outline anew");
      return Optional.empty();
    }
    return Optional.of(tracing);
  }
}

package org.longlow.sketcher.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.longlow.constraints.disk.HeldMark;
import org.longlow.svg.page.Page;
import org.longlow.svg.write.Seal;

/**
 * A folder while a set of template sheets is made in it; nobody else makes one there meanwhile, so
 * that no set is mixed of two layouts.
 */
final class SheetFolder implements AutoCloseable {

  /** Stands in the folder until all sheets are in it. */
  static final String UNFINISHED = "not-finished.txt";

  private static final String UNFINISHED_WORDS =
      "These templates are not complete: making them goes on, or was stopped. Sheets may be missing\n"
          + "or of an older layout. Make them again before you cut.\nBegun ";

  /** Far longer than any set takes. */
  private static final Duration PATIENCE = Duration.ofMinutes(1);

  /** A sheet's file: template and paper, then its number in SVG, then how often it was kept. */
  private static final Pattern SHEET =
      Pattern.compile(
          "(.+-(?:a[0-4]|letter|legal|tabloid|[0-9.]+x[0-9.]+(?: in)?))(?:-\\d{2,})?"
              + "(?:\\.replaced(?:-\\d+)?)?\\.(?:svg|pdf)");

  private final Path folder;
  private final String paper;
  private final HeldMark mark;
  private final Set<String> written = new HashSet<>();
  private final List<String> remarks = new ArrayList<>();

  private SheetFolder(Path folder, String paper, HeldMark mark) {
    this.folder = folder;
    this.paper = paper;
    this.mark = mark;
  }

  /**
   * Begins a set on paper called {@code paper}, once whoever makes one there has ended.
   *
   * @throws IOException if nothing can be written there
   */
  static SheetFolder begin(Path folder, String paper) throws IOException {
    Files.createDirectories(folder);
    String words = UNFINISHED_WORDS + Instant.now().truncatedTo(ChronoUnit.SECONDS) + ".\n";
    return new SheetFolder(
        folder,
        paper.toLowerCase(Locale.ROOT),
        HeldMark.put(folder.resolve(UNFINISHED), words, PATIENCE));
  }

  /** Writes a template: all its sheets as one PDF, and each as SVG. */
  void write(String template, String title, List<Page> sheets) throws IOException {
    String stem = stem(template);
    kept(Output.pdf(sheets, title, place(stem + ".pdf")));
    for (int i = 0; i < sheets.size(); i++) {
      kept(Output.svg(sheets.get(i), place(sheet(stem, i + 1))));
    }
    takeAwayBeyond(stem, sheets.size());
  }

  private String stem(String template) {
    return template + "-" + paper;
  }

  private static String sheet(String stem, int number) {
    return String.format(Locale.ROOT, "%s-%02d.svg", stem, number);
  }

  private Path place(String name) {
    written.add(name);
    return folder.resolve(name);
  }

  private void kept(Optional<Path> file) {
    file.ifPresent(k -> remarks.add("the file that was there is kept as " + k));
  }

  /**
   * Takes away sheets left from a run that needed more; they would be glued on by mistake. One that
   * was changed by hand stays.
   */
  private void takeAwayBeyond(String stem, int sheets) throws IOException {
    for (int next = sheets + 1; ; next++) {
      Path left = folder.resolve(sheet(stem, next));
      if (!Files.isRegularFile(left) || !Seal.holds(left)) {
        return;
      }
      Files.delete(left);
      remarks.add("taken away, because this template needs fewer sheets now: " + left);
    }
  }

  /**
   * Ends the set, which is whole now.
   *
   * @param all the templates that the layout has, whether made this time or not
   * @return what is to be said of the folder, one sentence each
   */
  List<String> finish(List<String> all) throws IOException {
    mark.remove();
    Set<String> stems = new HashSet<>();
    all.forEach(template -> stems.add(stem(template)));
    Map<String, Integer> strangers = new TreeMap<>();
    int earlier = 0;
    for (String name : names()) {
      Matcher m = SHEET.matcher(name);
      if (!m.matches() || written.contains(name)) {
        continue;
      }
      if (stems.contains(m.group(1)) && isUntouched(name, m.group(1))) {
        earlier++;
      } else {
        strangers.merge(m.group(1), 1, Integer::sum);
      }
    }
    if (earlier > 0) {
      remarks.add(
          earlier
              + " files of other templates there are of an earlier run and show the layout as it was"
              + " then");
    }
    if (!strangers.isEmpty()) {
      remarks.add(
          "not of this set, so do not cut from them: "
              + String.join(", ", strangers.entrySet().stream().map(SheetFolder::counted).toList())
              + "; delete them, or choose an empty folder");
    }
    return List.copyOf(remarks);
  }

  /** Whether nothing of that template was written this time. */
  private boolean isUntouched(String name, String stem) {
    return !name.contains(".replaced") && !written.contains(stem + ".pdf");
  }

  private static String counted(Map.Entry<String, Integer> stem) {
    return stem.getKey() + " (" + stem.getValue() + (stem.getValue() == 1 ? " file)" : " files)");
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  /** Lets others in; where the set was not finished its mark stays. */
  @Override
  public void close() throws IOException {
    mark.close();
  }
}

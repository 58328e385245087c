package org.longlow.sketcher.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.longlow.constraints.disk.HeldMark;
import org.longlow.constraints.disk.WholeSet;
import org.longlow.constraints.words.Counted;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.write.Seal;

/**
 * A set of template sheets on its way into a folder. It is made elsewhere and put there whole, and
 * nobody else puts one there meanwhile, so that no set is half there or mixed of two layouts.
 */
final class SheetFolder implements AutoCloseable {

  /** Stands in the folder until all sheets are in it. */
  static final String UNFINISHED = "not-finished.txt";

  private static final String UNFINISHED_WORDS =
      "These templates are not complete: making them goes on, or was stopped. Sheets may be missing\n"
          + "or of an older layout. Make them again before you cut: whatever was there before is put back\n"
          + "first. Till then what was replaced already lies in the folder "
          + WholeSet.BEFORE
          + ".\nBegun ";

  /** Far longer than any set takes. */
  private static final Duration PATIENCE = Duration.ofMinutes(1);

  /** A sheet's file: template and paper, then its number in SVG, then how often it was kept. */
  private static final Pattern SHEET =
      Pattern.compile(
          "(.+-(?:a[0-4]|letter|legal|tabloid|roll-[0-9.]+|[0-9.]+x[0-9.]+(?: in)?))(?:-\\d{2,})?"
              + "(?:\\.replaced(?:-\\d+)?)?\\.(?:svg|pdf)");

  private final Path folder;
  private final Paper paper;
  private final Path stage;
  private final Set<String> written = new LinkedHashSet<>();
  private final Map<String, Integer> sheets = new LinkedHashMap<>();
  private final List<String> remarks = new ArrayList<>();

  private SheetFolder(Path folder, Paper paper, Path stage) {
    this.folder = folder;
    this.paper = paper;
    this.stage = stage;
  }

  /**
   * Begins a set. Nothing of it is in the folder before it is finished.
   *
   * @throws IOException if there is no room to make it in
   */
  static SheetFolder begin(Path folder, Paper paper) throws IOException {
    return new SheetFolder(folder, paper, Files.createTempDirectory("longlow-sheets"));
  }

  /**
   * Returns what makes a template, in any order and on any thread: all its sheets as one PDF, then
   * each as SVG. They end with an {@link UncheckedIOException} if there is no room.
   */
  List<Supplier<Path>> make(String template, String title, List<Page> pages) {
    List<String> names = names(template, paper, pages.size());
    written.addAll(names);
    sheets.put(template, pages.size());
    List<Supplier<Path>> files = new ArrayList<>();
    files.add(() -> staged(names.get(0), () -> Output.pdf(pages, title)));
    for (int i = 0; i < pages.size(); i++) {
      Page page = pages.get(i);
      String name = names.get(i + 1);
      files.add(() -> staged(name, () -> Output.svg(page)));
    }
    return files;
  }

  /** What fills a file. */
  @FunctionalInterface
  private interface Filling {
    byte[] bytes() throws IOException;
  }

  private Path staged(String name, Filling filling) {
    try {
      return Files.write(stage.resolve(name), filling.bytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns the names of a template's files: the PDF, then each sheet. */
  static List<String> names(String template, Paper paper, int sheets) {
    String stem = stem(template, paper);
    List<String> names = new ArrayList<>(List.of(stem + ".pdf"));
    for (int i = 1; i <= sheets; i++) {
      names.add(sheet(stem, i));
    }
    return names;
  }

  private static String stem(String template, Paper paper) {
    return template + "-" + paper.name().toLowerCase(Locale.ROOT);
  }

  private static String sheet(String stem, int number) {
    return String.format(Locale.ROOT, "%s-%02d.svg", stem, number);
  }

  /**
   * Puts the set, which is whole now, into the folder, once whoever puts one there has ended.
   *
   * @param all the templates that the layout has, whether made this time or not
   * @return what is to be said of the folder, one sentence each
   * @throws InTheWay.NotAgreed if something is there that may not be replaced; all is as it was
   *     then
   * @throws IOException if it cannot be put there, such as on a full disk; all is as it was then
   */
  List<String> finish(List<String> all, InTheWay.Consent consent) throws IOException {
    try (NewFolder made = NewFolder.at(folder)) {
      put(consent);
      made.stays();
    }
    look(all);
    return List.copyOf(remarks);
  }

  private void put(InTheWay.Consent consent) throws IOException {
    Path unfinished = folder.resolve(UNFINISHED);
    boolean leftUnfinished = Files.exists(unfinished);
    String words = UNFINISHED_WORDS + Instant.now().truncatedTo(ChronoUnit.SECONDS) + ".\n";
    try (HeldMark mark = HeldMark.put(unfinished, words, PATIENCE)) {
      boolean mended = WholeSet.mend(folder, Output::isSomebodysWork);
      if (mended) {
        remarks.add("a set that was stopped on its way into this folder was taken out again first");
      }
      boolean done = false;
      try (WholeSet set = new WholeSet(folder)) {
        List<Path> beyond = new ArrayList<>();
        for (Map.Entry<String, Integer> e : sheets.entrySet()) {
          beyond.addAll(beyond(folder, e.getKey(), paper, e.getValue()));
        }
        List<Path> places = new ArrayList<>(beyond);
        written.forEach(name -> places.add(folder.resolve(name)));
        consent.ask(places);
        for (String name : written) {
          set.add(name, out -> Files.copy(stage.resolve(name), out));
        }
        set.put(beyond, Output::isSomebodysWork)
            .forEach(k -> remarks.add("the file that was there is kept as " + k));
        beyond.forEach(
            left ->
                remarks.add("taken away, because this template needs fewer sheets now: " + left));
        done = true;
      } finally {
        if (done || !WholeSet.isHalf(folder) && (mended || !leftUnfinished)) {
          mark.remove();
        }
      }
    }
  }

  /**
   * Returns sheets of a template left from a run that needed more; they would be glued on by
   * mistake. One that was changed by hand stays.
   */
  static List<Path> beyond(Path folder, String template, Paper paper, int sheets)
      throws IOException {
    List<Path> beyond = new ArrayList<>();
    for (int next = sheets + 1; ; next++) {
      Path left = folder.resolve(sheet(stem(template, paper), next));
      if (!Files.isRegularFile(left) || !Seal.holds(left)) {
        return beyond;
      }
      beyond.add(left);
    }
  }

  /** Looks for sheets that somebody might take for some of this set. */
  private void look(List<String> all) throws IOException {
    Set<String> stems = new HashSet<>();
    all.forEach(template -> stems.add(stem(template, paper)));
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
          Counted.of(earlier, "file")
              + Counted.either(
                  earlier,
                  " of another template there is of an earlier run and shows",
                  " of other templates there are of an earlier run and show")
              + " the layout as it was then");
    }
    if (!strangers.isEmpty()) {
      remarks.add(
          "not of this set, so do not cut from them: "
              + String.join(", ", strangers.entrySet().stream().map(SheetFolder::counted).toList())
              + "; delete them, or choose an empty folder");
    }
  }

  /** Whether nothing of that template was written this time. */
  private boolean isUntouched(String name, String stem) {
    return !name.contains(".replaced") && !written.contains(stem + ".pdf");
  }

  private static String counted(Map.Entry<String, Integer> stem) {
    return stem.getKey() + " (" + Counted.of(stem.getValue(), "file") + ")";
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  /** Takes away what it was made in. */
  @Override
  public void close() throws IOException {
    for (String name : written) {
      Files.deleteIfExists(stage.resolve(name));
    }
    Files.deleteIfExists(stage);
  }
}

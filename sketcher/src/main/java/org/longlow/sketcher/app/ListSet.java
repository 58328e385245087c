package org.longlow.sketcher.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.layout.Layout;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.shop.Shop;
import org.longlow.sketcher.shop.ShopTable;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.write.Seal;

/**
 * Lists, cutting plans and the page for weighing, as they go into a folder: whole or not at all.
 *
 * @param shop what is listed
 * @param plans the pages of the cutting plans
 * @param weighing the pages to fill in at two scales
 */
public record ListSet(Shop shop, List<Page> plans, List<Page> weighing) {

  static final String PLANS = "cutting-plans";
  static final String WEIGHING = "weighing";

  /** Narrower paper has no room for the figures of a row, mm. */
  private static final double LEAST_SIDE_MM = 200;

  private static final String UNFINISHED_WORDS =
      "These lists are not complete: making them goes on, or was stopped. Make them again before"
          + " you buy.\n";

  public ListSet {
    plans = List.copyOf(plans);
    weighing = List.copyOf(weighing);
  }

  /** Returns why a paper does not serve, if it does not. */
  public static Optional<String> refusal(Paper paper) {
    double side = Math.min(paper.widthMm(), paper.heightMm());
    return paper.roll()
        ? Optional.of("a roll is for templates; lists take sheets such as a4 or letter")
        : side < LEAST_SIDE_MM
            ? Optional.of(
                "lists need paper at least "
                    + (int) LEAST_SIDE_MM
                    + " mm wide, such as a4 or letter")
            : Optional.empty();
  }

  /** Works them out for a paper. */
  public static ListSet of(Shop shop, Paper paper) {
    return new ListSet(shop, shop.planPages(paper), shop.weighingPages(paper));
  }

  /** Returns all pages. */
  public List<Page> pages() {
    List<Page> all = new ArrayList<>(plans);
    all.addAll(weighing);
    return all;
  }

  /** Returns the names of its files. */
  public List<String> names() {
    List<String> names = new ArrayList<>();
    shop.tables().forEach(t -> names.add(csv(t)));
    names.addAll(names(PLANS, plans.size()));
    names.addAll(names(WEIGHING, weighing.size()));
    names.add(ListSums.FILE);
    return names;
  }

  private static String csv(ShopTable table) {
    return table.name() + ".csv";
  }

  /** A PDF of all pages, and each as SVG. */
  private static List<String> names(String stem, int pages) {
    List<String> names = new ArrayList<>();
    if (pages > 0) {
      names.add(stem + ".pdf");
    }
    for (int i = 1; i <= pages; i++) {
      names.add(svg(stem, i));
    }
    return names;
  }

  private static String svg(String stem, int number) {
    return String.format(Locale.ROOT, "%s-%02d.svg", stem, number);
  }

  private Map<String, byte[]> csv() {
    Layout layout = shop.study().layout();
    Units units = layout.units();
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (ShopTable table : shop.tables()) {
      files.put(csv(table), table.csv(units, layout.currency()).getBytes(StandardCharsets.UTF_8));
    }
    return files;
  }

  /**
   * Puts them into {@code folder}. What is there of an earlier run is replaced; what somebody
   * changed is kept beside.
   *
   * @param progress told before each page
   * @return what is to be said of the folder; empty if it was stopped, and all is as it was
   * @throws InTheWay.NotAgreed if something is there that may not be replaced; all is as it was
   */
  public Optional<List<String>> write(Path folder, InTheWay.Consent consent, StepWatch progress)
      throws IOException {
    Map<String, byte[]> files = csv();
    files.put(ListSums.FILE, ListSums.of(files));
    int[] done = {0};
    if (!pages(files, PLANS, plans, progress, done)
        || !pages(files, WEIGHING, weighing, progress, done)) {
      return Optional.empty();
    }
    return Optional.of(SummedFolder.write(folder, files, this::beyond, UNFINISHED_WORDS, consent));
  }

  private boolean pages(
      Map<String, byte[]> files, String stem, List<Page> pages, StepWatch progress, int[] done)
      throws IOException {
    if (pages.isEmpty()) {
      return true;
    }
    files.put(stem + ".pdf", Output.pdf(pages, pages.get(0).title()));
    for (int i = 0; i < pages.size(); i++) {
      if (!progress.step(stem.replace('-', ' '), done[0]++, pages().size())) {
        return false;
      }
      files.put(svg(stem, i + 1), Output.svg(pages.get(i)));
    }
    return true;
  }

  /** Returns pages left from a run that had more, unless somebody changed them. */
  private List<Path> beyond(Path folder) throws IOException {
    List<Path> beyond = new ArrayList<>();
    for (Map.Entry<String, List<Page>> e : Map.of(PLANS, plans, WEIGHING, weighing).entrySet()) {
      for (int next = e.getValue().size() + 1; ; next++) {
        Path left = folder.resolve(svg(e.getKey(), next));
        if (!Files.isRegularFile(left) || !Seal.holds(left)) {
          break;
        }
        beyond.add(left);
      }
      Path pdf = folder.resolve(e.getKey() + ".pdf");
      if (e.getValue().isEmpty() && Files.isRegularFile(pdf) && Seal.holds(pdf)) {
        beyond.add(pdf);
      }
    }
    return beyond;
  }
}

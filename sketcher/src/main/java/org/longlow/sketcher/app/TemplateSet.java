package org.longlow.sketcher.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.template.NamedDrawing;
import org.longlow.sketcher.template.TemplateSizes;
import org.longlow.sketcher.template.Templates;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.SharedSheets;
import org.longlow.svg.page.TemplateSettings;

/**
 * Templates with their sheets as they are to be printed. What shows them and what writes them take
 * the same pages.
 *
 * @param layout name of the layout
 * @param settings paper and printer
 * @param templates in the order of the layout, each on sheets of its own, their file names not told
 *     apart yet
 * @param plain templates left out because figures say all that a saw needs
 * @param bundles what is printed: templates of several sheets, and sheets that small ones share
 * @param stems file names of all that the layout has, whether in this set or not
 */
public record TemplateSet(
    String layout,
    TemplateSettings settings,
    List<Template> templates,
    List<NamedDrawing> plain,
    List<Bundle> bundles,
    List<String> stems) {

  /** What sheets are called that several parts share. */
  static final String SHARED = "Small parts";

  private static final String SHARED_STEM = "small-parts";

  /** A template with its sheets, of which there is at least one. */
  public record Template(NamedDrawing drawing, List<Page> sheets) {
    public Template {
      sheets = List.copyOf(sheets);
    }
  }

  /**
   * Sheets that go into one file.
   *
   * @param stem its name, without paper and ending
   * @param name for people
   * @param pieces what is on them
   */
  public record Bundle(String stem, String name, List<NamedDrawing> pieces, List<Page> sheets) {
    public Bundle {
      pieces = List.copyOf(pieces);
      sheets = List.copyOf(sheets);
    }

    /** Returns whether several templates share its sheets. */
    public boolean isShared() {
      return pieces.size() > 1;
    }
  }

  public TemplateSet {
    templates = List.copyOf(templates);
    plain = List.copyOf(plain);
    bundles = List.copyOf(bundles);
    stems = List.copyOf(stems);
  }

  /**
   * Returns the templates of the parts called {@code parts}, or for none of all that get one but
   * for plain pieces; empty if {@code watch} stopped it.
   *
   * @throws org.longlow.rider.geom.OutOfRange if they need far too many sheets
   */
  public static Optional<TemplateSet> of(
      Study study, Set<String> parts, TemplateSettings settings, StepWatch watch) {
    TemplateSizes.check(study, parts, settings);
    List<NamedDrawing> all = Templates.drawn(study, parts);
    List<NamedDrawing> drawings =
        parts.isEmpty() ? all.stream().filter(d -> d.plain().isEmpty()).toList() : all;
    List<NamedDrawing> plain =
        parts.isEmpty() ? all.stream().filter(d -> d.plain().isPresent()).toList() : List.of();
    List<Template> templates = new ArrayList<>();
    List<Supplier<Template>> pieces = new ArrayList<>();
    drawings.forEach(d -> pieces.add(() -> new Template(d, d.sheets(settings))));
    try (Together<Template> drawn = new Together<>(pieces)) {
      for (NamedDrawing drawing : drawings) {
        if (!watch.step("draws " + drawing.name(), templates.size(), drawings.size())) {
          return Optional.empty();
        }
        templates.add(drawn.take(templates.size()));
      }
    }
    List<String> stems =
        new ArrayList<>(stems(parts.isEmpty() ? all : Templates.drawn(study, Set.of())));
    stems.add(SHARED_STEM);
    return Optional.of(of(study.layout().name(), settings, templates, plain, stems));
  }

  /**
   * Returns one drawing on sheets of its own, such as the whole machine at full size.
   *
   * @param drawing that no refusal meets
   */
  public static TemplateSet of(Study study, NamedDrawing drawing, TemplateSettings settings) {
    Template alone = new Template(drawing, drawing.sheets(settings));
    return of(
        study.layout().name(), settings, List.of(alone), List.of(), List.of(drawing.fileName()));
  }

  static TemplateSet of(
      String layout,
      TemplateSettings settings,
      List<Template> templates,
      List<NamedDrawing> plain,
      List<String> stems) {
    return new TemplateSet(layout, settings, templates, plain, bundled(templates, settings), stems);
  }

  /** Lays those that need one sheet beside each other. */
  private static List<Bundle> bundled(List<Template> templates, TemplateSettings settings) {
    List<Template> small = templates.stream().filter(t -> t.sheets().size() == 1).toList();
    SharedSheets.Shared shared =
        SharedSheets.of(
            SHARED,
            small.stream().map(t -> t.drawing().laid()).toList(),
            small.isEmpty() ? settings : settings.withLengths(small.get(0).drawing().lengths()));
    Set<Template> beside = Collections.newSetFromMap(new IdentityHashMap<>());
    shared.pieces().forEach(sheet -> sheet.forEach(i -> beside.add(small.get(i))));
    List<String> stems = stems(templates.stream().map(Template::drawing).toList());
    List<Bundle> out = new ArrayList<>();
    for (int i = 0; i < templates.size(); i++) {
      Template t = templates.get(i);
      if (!beside.contains(t)) {
        out.add(new Bundle(stems.get(i), t.drawing().name(), List.of(t.drawing()), t.sheets()));
      }
    }
    if (!beside.isEmpty()) {
      String stem = stems.contains(SHARED_STEM) ? SHARED_STEM + "-together" : SHARED_STEM;
      List<NamedDrawing> pieces =
          small.stream().filter(beside::contains).map(Template::drawing).toList();
      out.add(new Bundle(stem, SHARED, pieces, shared.pages()));
    }
    return out;
  }

  /**
   * Returns the templates of these parts alone, as if no others had been asked for; of plain pieces
   * none.
   */
  public TemplateSet only(Set<String> parts) {
    return of(
        layout,
        settings,
        templates.stream().filter(t -> parts.contains(t.drawing().part())).toList(),
        plain.stream().filter(d -> parts.contains(d.part())).toList(),
        stems);
  }

  /** Returns all sheets in their order. */
  public List<Page> pages() {
    return bundles.stream().flatMap(b -> b.sheets().stream()).toList();
  }

  /** Returns what paper each part takes, in the order of the layout. */
  public Map<String, PartPaper> paperOfParts() {
    Map<String, PartPaper> paper = new LinkedHashMap<>();
    templates.forEach(t -> paper.put(t.drawing().part(), PartPaper.NONE));
    for (Bundle b : bundles) {
      for (NamedDrawing d : b.pieces()) {
        PartPaper more =
            b.isShared() ? new PartPaper(0, 1, 0) : new PartPaper(b.sheets().size(), 0, 0);
        paper.merge(d.part(), more, PartPaper::plus);
      }
    }
    plain.forEach(d -> paper.merge(d.part(), new PartPaper(0, 0, 1), PartPaper::plus));
    return paper;
  }

  private static List<String> stems(List<NamedDrawing> drawings) {
    return Templates.named(drawings).stream().map(NamedDrawing::fileName).toList();
  }

  /** Returns the files that putting this set into a folder writes or takes away. */
  List<Path> files(Path folder) throws IOException {
    List<Path> files = new ArrayList<>();
    for (Bundle b : bundles) {
      int sheets = b.sheets().size();
      SheetFolder.names(b.stem(), settings.paper(), sheets)
          .forEach(name -> files.add(folder.resolve(name)));
      files.addAll(SheetFolder.beyond(folder, b.stem(), settings.paper(), sheets));
    }
    return files;
  }
}

package org.longlow.sketcher.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.template.NamedDrawing;
import org.longlow.sketcher.template.TemplateSizes;
import org.longlow.sketcher.template.Templates;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.TemplateSettings;

/**
 * Templates with their sheets as they are to be printed. What shows them and what writes them take
 * the same pages.
 *
 * @param layout name of the layout
 * @param settings paper and printer
 * @param templates in the order of the layout, their file names not told apart yet
 * @param stems file names of all templates that the layout has, whether in this set or not
 */
public record TemplateSet(
    String layout, TemplateSettings settings, List<Template> templates, List<String> stems) {

  /** A template with its sheets, of which there is at least one. */
  public record Template(NamedDrawing drawing, List<Page> sheets) {
    public Template {
      sheets = List.copyOf(sheets);
    }
  }

  public TemplateSet {
    templates = List.copyOf(templates);
    stems = List.copyOf(stems);
  }

  /**
   * Returns the templates of the parts called {@code parts}, or for none of all that get one; empty
   * if {@code watch} stopped it.
   *
   * @throws org.longlow.rider.geom.OutOfRange if they need far too many sheets
   */
  public static Optional<TemplateSet> of(
      Study study, Set<String> parts, TemplateSettings settings, StepWatch watch) {
    TemplateSizes.check(study, parts, settings);
    List<NamedDrawing> drawings = Templates.drawn(study, parts);
    List<Template> templates = new ArrayList<>();
    for (NamedDrawing drawing : drawings) {
      if (!watch.step("draws " + drawing.name(), templates.size(), drawings.size())) {
        return Optional.empty();
      }
      templates.add(new Template(drawing, drawing.sheets(settings)));
    }
    List<NamedDrawing> all = parts.isEmpty() ? drawings : Templates.drawn(study, Set.of());
    return Optional.of(new TemplateSet(study.layout().name(), settings, templates, names(all)));
  }

  /** Returns the templates of these parts alone, as if no others had been asked for. */
  public TemplateSet only(Set<String> parts) {
    return new TemplateSet(
        layout,
        settings,
        templates.stream().filter(t -> parts.contains(t.drawing().part())).toList(),
        stems);
  }

  /** Returns all sheets in their order. */
  public List<Page> pages() {
    return templates.stream().flatMap(t -> t.sheets().stream()).toList();
  }

  /** Returns how many sheets each part needs, in the order of the layout. */
  public Map<String, Integer> sheetsOfParts() {
    Map<String, Integer> sheets = new LinkedHashMap<>();
    templates.forEach(t -> sheets.merge(t.drawing().part(), t.sheets().size(), Integer::sum));
    return sheets;
  }

  /** Returns the file name of each template, without an ending. */
  List<String> names() {
    return names(templates.stream().map(Template::drawing).toList());
  }

  private static List<String> names(List<NamedDrawing> drawings) {
    return Templates.named(drawings).stream().map(NamedDrawing::fileName).toList();
  }

  /** Returns the files that putting this set into a folder writes or takes away. */
  List<Path> files(Path folder) throws IOException {
    List<Path> files = new ArrayList<>();
    List<String> names = names();
    for (int i = 0; i < names.size(); i++) {
      int sheets = templates.get(i).sheets().size();
      SheetFolder.names(names.get(i), settings.paper(), sheets)
          .forEach(name -> files.add(folder.resolve(name)));
      files.addAll(SheetFolder.beyond(folder, names.get(i), settings.paper(), sheets));
    }
    return files;
  }
}

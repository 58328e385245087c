package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.Traits.Make;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Allowance;
import org.longlow.constraints.shape.AngleFlat;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shells;
import org.longlow.constraints.shape.Skin;
import org.longlow.constraints.shape.Unrolled;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.Scene;
import org.longlow.sketcher.picture.Scenes;
import org.longlow.svg.page.SheetLengths;

/**
 * Full-size templates: the solved outline of each part with what a maker needs written on it.
 *
 * <p>Drawings stay in the axes of the drawn machine, so that the stations on two templates are the
 * same stations on the machine; boards in plan and formers have their own.
 */
public final class Templates {

  private Templates() {}

  /** Returns whether a part gets a template unless it is asked for by name: what a shop makes. */
  public static boolean made(Part part) {
    return isCut(part) || LinkTemplates.has(part);
  }

  private static boolean isCut(Part part) {
    return part.traits().make() != Make.BOUGHT;
  }

  /** Returns whether a part gets a template where these are asked for, all for an empty set. */
  static boolean wanted(PartShape shape, Set<String> parts) {
    boolean asked = parts.isEmpty() ? isCut(shape.part()) : parts.contains(shape.part().name());
    return asked && !shape.outline().isEmpty();
  }

  /**
   * Returns the templates of some parts of a study, in the order of the layout, their file names
   * not told apart yet; a cushion has one from the side, one for each board and one for each layer,
   * a bent tube one more, a rail one for each end that is cut to a line, a cowl or solid one more
   * for each former; of a front with links leg and link.
   *
   * @param parts names; empty takes every part that a shop makes
   * @throws IllegalArgumentException if a name is no part of the layout
   */
  public static List<NamedDrawing> drawn(Study study, Set<String> parts) {
    Map<String, Map<String, Scene.Sunk>> pressed = new LinkedHashMap<>();
    for (Sitting sitting : study.sittings()) {
      Scenes.sunk(sitting)
          .forEach(
              (cushion, sunk) ->
                  pressed
                      .computeIfAbsent(cushion, c -> new LinkedHashMap<>())
                      .put(sitting.person(), sunk));
    }
    return drawn(
        study.shapes(),
        study.placed().places(),
        new TemplateFigures(study.layout().units()),
        pressed,
        parts);
  }

  /**
   * Returns the templates of some parts of a study, as {@link #drawn}, their file names told apart.
   *
   * @throws IllegalArgumentException if a name is no part of the layout
   */
  public static List<NamedDrawing> of(Study study, Set<String> parts) {
    return named(drawn(study, parts));
  }

  /** Returns the same templates, each file name used once: a number is added to later ones. */
  public static List<NamedDrawing> named(List<NamedDrawing> all) {
    Set<String> used = new HashSet<>();
    List<NamedDrawing> out = new ArrayList<>();
    for (NamedDrawing d : all) {
      String name = d.fileName();
      for (int n = 2; !used.add(name); n++) {
        name = d.fileName() + "-" + n;
      }
      out.add(d.called(name));
    }
    return List.copyOf(out);
  }

  /**
   * Returns the templates of some parts.
   *
   * @param parts names; empty takes every part that a shop makes
   * @param pressed how far layers give: cushion, then person
   * @throws IllegalArgumentException if a name is no part of the layout
   */
  static List<NamedDrawing> of(
      Map<String, PartShape> shapes,
      Places places,
      TemplateFigures figures,
      Map<String, Map<String, Scene.Sunk>> pressed,
      Set<String> parts) {
    return named(drawn(shapes, places, figures, pressed, parts));
  }

  private static List<NamedDrawing> drawn(
      Map<String, PartShape> shapes,
      Places places,
      TemplateFigures figures,
      Map<String, Map<String, Scene.Sunk>> pressed,
      Set<String> parts) {
    for (String name : parts) {
      if (!shapes.containsKey(name)) {
        throw new IllegalArgumentException(
            "no part is called '"
                + name
                + "'; the layout has "
                + String.join(", ", shapes.keySet()));
      }
    }
    List<NamedDrawing> out = new ArrayList<>();
    for (PartShape shape : shapes.values()) {
      String name = shape.part().name();
      Optional<String> cowl = LampAperture.cowl(shape.part(), shapes);
      if (parts.contains(name) || parts.isEmpty() && cowl.isPresent()) {
        LampAperture.of(shape.part(), cowl.orElse(""), places, figures).ifPresent(out::add);
      }
      if (!wanted(shape, parts)) {
        if (parts.isEmpty()) {
          out.addAll(LinkTemplates.of(shape.part(), places, figures));
        }
        continue;
      }
      if (shape.part() instanceof CushionPart cushion) {
        CushionTemplates c =
            new CushionTemplates(
                cushion, shape, places, figures, pressed.getOrDefault(name, Map.of()));
        out.add(c.side());
        out.addAll(new BoardTemplates(cushion, shape, places, figures).of(shapes));
        for (int i = 0; i < cushion.layers().size(); i++) {
          out.add(c.layer(i));
        }
      } else if (shape.part() instanceof TubePart tube && !tube.bought()) {
        out.addAll(TubeTemplates.of(tube, shape, shapes, places, figures));
      } else if (AngleFlat.of(shape.part(), places).isPresent()) {
        AngleFlat flat = AngleFlat.of(shape.part(), places).get();
        out.add(AngleTemplate.of(flat, shape, places, figures));
      } else {
        out.add(plain(shape, places, figures));
        out.addAll(PatternTemplates.of(shape, places, figures));
        out.addAll(FormerTemplates.of(shape, places, figures));
        out.addAll(LinkTemplates.of(shape.part(), places, figures));
      }
    }
    SheetLengths lengths = figures.sheets();
    return out.stream().map(d -> d.withLengths(lengths)).toList();
  }

  private static NamedDrawing plain(PartShape shape, Places places, TemplateFigures figures) {
    Part part = shape.part();
    boolean strip = part instanceof ShellPart shell && !shell.outline().closed();
    Geometry net = cut(shape, places);
    Allowance allowance = strip ? Allowance.NONE : Allowance.of(part, places);
    TemplateSheet sheet =
        new TemplateSheet(
            part.name(), TemplateWords.titled(part), allowance.cut(net), "up", "forward");
    CutWords.mark(allowance, sheet, net);
    sheet.datum(DatumLine.of(shape, figures));
    HoleMarks.add(sheet, part, places, figures);
    HoleMarks.pins(sheet, shape, places);
    List<String> lines = new ArrayList<>();
    Optional<Unrolled> unrolled = Unrolled.of(part, places);
    if (part instanceof ShellPart shell) {
      lines.addAll(BreadthWords.shell(shell, unrolled.orElseThrow(), places, figures));
      lines.add(
          "sheet "
              + figures.mm(places.value(shell.thickness()))
              + (shell.outline().closed()
                  ? "; net outline is the outside of the sheet"
                  : "; its line is the middle of the sheet"));
      if (!strip) {
        lines.add(CutWords.line(allowance, figures));
      }
    } else {
      lines.add(TemplateWords.makeLine(shape));
      if (part instanceof Part.Flat flat) {
        lines.addAll(BreadthWords.solid(flat, unrolled, places, figures));
      }
      if (Skin.of(part, places).filter(k -> k.thicknessMm() == 0).isPresent()
          && !unrolled.orElseThrow().patterns().isEmpty()) {
        lines.addAll(TemplateWords.wrapped(BreadthWords.NO_THICKNESS));
      }
      lines.addAll(CentreLengths.lines(part, places, figures));
      BreadthWords.even(shape, figures).ifPresent(lines::add);
      lines.add(CutWords.line(allowance, figures));
    }
    lines.addAll(HoleMarks.lines(part, places, figures));
    lines.addAll(FormerTemplates.lines(part, places, figures));
    lines.add(TemplateWords.massLine(shape, figures));
    lines.addAll(CutWords.side(allowance, figures));
    return sheet.with(TemplateWords.fileName(part.name()), part.name(), lines, List.of());
  }

  /** The line to cut: of a cowl with holes its side, which may have one over the edge strip. */
  private static Geometry cut(PartShape shape, Places places) {
    return shape.part() instanceof ShellPart shell && !shell.outline().holes().isEmpty()
        ? Shells.side(shell, places).orElse(shape.outline())
        : shape.outline();
  }
}

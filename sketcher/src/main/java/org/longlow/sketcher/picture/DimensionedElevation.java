package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.TitleEntries;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;
import org.longlow.svg.page.SheetSpace;
import org.longlow.svg.page.TitleBlock;

/** The elevation for the wall: dimensions in tiers, axle loads as notes, on a framed sheet. */
public final class DimensionedElevation {

  /** Said where some dimensions are left off. */
  static final String LARGER = "Main dimensions only; larger paper shows them all.";

  private static final double NOTE_LINE_MM = 4.4;
  private static final double AIR_MM = 5;

  /** Lines of the layout's own notes are no wider, paper mm. */
  private static final double NOTE_WIDE_MM = 120;

  /** Longest title of ISO 7200, characters; a longer one is split at its first comma. */
  private static final int TITLE_LENGTH = 25;

  private DimensionedElevation() {}

  /**
   * Returns the dimensioned elevation at real size, lettered for showing at the scale of the
   * options.
   */
  public static Drawing of(Study study, PictureOptions options) {
    return of(
        Scenes.of(study, options),
        options.denominator(),
        Detail.FULL,
        LayerChoice.ALL,
        UnaryOperator.identity());
  }

  /**
   * A framed sheet.
   *
   * @param page the sheet
   * @param scale the scale of the picture on it
   * @param ink with what it is printed; what is on the page is for that
   */
  public record Sheet(Page page, Scale scale, SheetInk ink) {
    Sheet(Page page, Scale scale) {
      this(page, scale, SheetInk.COLOUR);
    }

    /** Returns a sheet with some of its layers. */
    public Sheet with(LayerChoice layers) {
      return new Sheet(layers.on(page), scale, ink);
    }

    /** Returns a sheet in colour as it is printed in {@code next}. */
    public Sheet in(SheetInk next) {
      return new Sheet(next.on(page), scale, next);
    }
  }

  static TitleBlock title(Study study, String date) {
    String whole = Scenes.title(study.layout());
    int comma = whole.indexOf(", ");
    boolean split = whole.length() > TITLE_LENGTH && comma > 0;
    TitleEntries said = study.layout().titleBlock();
    return TitleBlock.of(split ? whole.substring(0, comma) : whole, study.layout().name(), date)
        .withPeople(said.owner(), said.drawnBy(), said.approvedBy())
        .withRevisions(
            said.revisions().stream()
                .map(r -> new TitleBlock.Revision(r.index(), r.date(), r.what()))
                .toList())
        .withUnits(study.layout().units().word())
        .withSupplement(split ? whole.substring(comma + 2) : "");
  }

  /** Returns what is to go on a sheet, for refusals. */
  static String machine(Scene scene) {
    Envelope box = MachineInk.bounds(scene);
    return Words.of(
            "the machine of ",
            Words.bare(box.getWidth(), FigureSort.WHOLE_LENGTH),
            " x ",
            Words.figure(box.getHeight(), FigureSort.WHOLE_LENGTH))
        .in(scene.layout().units());
  }

  /**
   * Returns the dimensioned elevation at real size, lettered for 1:{@code denominator}.
   *
   * @param denominator N of the scale it will be shown at
   * @param layers what will be left of it
   * @param marked adds what stands under its notes
   */
  static Drawing of(
      Scene scene,
      double denominator,
      Detail detail,
      LayerChoice layers,
      UnaryOperator<Drawing> marked) {
    Drawing drawing = marked.apply(bare(scene, denominator, detail, layers));
    return drawing.plus(notes(lines(scene, detail), drawing, denominator));
  }

  /** Returns the elevation with its dimensions, which break at what is left, without notes. */
  static Drawing bare(Scene scene, double denominator, Detail detail, LayerChoice layers) {
    PictureOptions plain = PictureOptions.PLAIN.withDenominator(denominator);
    Drawing machine = ElevationPicture.of(scene, plain);
    return machine.plus(DimensionInk.layer(scene, layers.on(machine), denominator, detail));
  }

  /** Returns what is said of a picture, a line each. */
  static List<String> lines(Scene scene, Detail detail) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Lengths in "
            + scene.layout().units().lengths()
            + ", angles in degrees"
            + (scene.stance().isEmpty() ? ", as drawn." : ", stance: " + scene.stance() + "."));
    PressedWords.said(scene)
        .ifPresent(set -> lines.add("Cut by what is set, as drawn: " + set + "."));
    scene.people().stream()
        .flatMap(m -> m.body().measures().doubt(m.name()).stream())
        .distinct()
        .forEach(doubt -> lines.add("Rough, as " + doubt + "."));
    boolean aboard = scene.people().isEmpty() || scene.laden();
    scene
        .load()
        .ifPresent(
            load -> {
              AxleLoads a = load.axles();
              lines.add(
                  Words.format(
                          "%s %s: front %s (%.1f %%), rear %s; centre of mass %s forward, %s up.",
                          Words.figure(load.total().massKg(), FigureSort.WHOLE_MASS),
                          aboard ? "in all" : "without people",
                          Words.figure(a.frontN(), FigureSort.FORCE),
                          100 * a.frontShare(),
                          Words.figure(a.rearN(), FigureSort.FORCE),
                          Words.bare(a.total().at().x(), FigureSort.WHOLE_LENGTH),
                          Words.bare(a.total().at().z(), FigureSort.WHOLE_LENGTH))
                      .in(scene.layout().units()));
            });
    if (!scene.sunk().isEmpty()) {
      lines.add("Sink of foam is good to ±20 %.");
    }
    if (detail != Detail.FULL) {
      lines.add(LARGER);
    }
    for (String note : scene.layout().titleBlock().notes()) {
      lines.addAll(wrapped(note));
    }
    lines.add("A sketch, not a certificate: local codes and licensed inspection decide.");
    return lines;
  }

  /** Returns lines written above a picture, from its left edge. */
  static Layer notes(List<String> lines, Drawing drawing, double n) {
    return notes(lines, 1, drawing, n);
  }

  /** As {@link #notes(List, Drawing, double)}, in columns beside each other. */
  static Layer notes(List<String> lines, int columns, Drawing drawing, double n) {
    Envelope box = drawing.boundsMm();
    int high = (lines.size() + columns - 1) / columns;
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      marks.add(
          new Mark.Words(
              "notes",
              lines.get(i),
              box.getMinX() + i / high * (NOTE_WIDE_MM + AIR_MM) * n,
              box.getMaxY() + (AIR_MM + (high - 1 - i % high) * NOTE_LINE_MM) * n,
              Canvas.SMALL_MM,
              0,
              Anchor.START,
              Tone.PENCIL));
    }
    return new Layer(PictureLayer.NOTES.id(), PictureLayer.NOTES.title(), marks);
  }

  /** Returns how many columns of notes a picture has room for. */
  static int columns(Paper paper) {
    double wide = SheetSpace.pictureSpace(paper.landscape()).getWidth();
    return Math.max(1, (int) ((wide + AIR_MM) / (NOTE_WIDE_MM + AIR_MM)));
  }

  /** Returns a line broken where a column of notes ends. */
  static List<String> wrapped(String line) {
    return Lettering.wrapped(Lettering.printable(line), Canvas.SMALL_MM, NOTE_WIDE_MM);
  }
}

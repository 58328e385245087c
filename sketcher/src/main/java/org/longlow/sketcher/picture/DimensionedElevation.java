package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.rider.words.Words;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Frame;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;
import org.longlow.svg.page.SheetSpace;
import org.longlow.svg.page.TitleBlock;

/** The elevation for the wall: dimensions in tiers, axle loads as notes, on a framed sheet. */
public final class DimensionedElevation {

  private static final double NOTE_LINE_MM = 4.4;
  private static final double AIR_MM = 5;

  /** Longest title of ISO 7200, characters; a longer one is split at its first comma. */
  private static final int TITLE_LENGTH = 25;

  /**
   * How much larger the picture must come out for the lesser dimensions to be left off; more than
   * the step from 1:10 to 1:20, less than that from 1:20 to 1:50.
   */
  private static final double WORTH_IT = 2.2;

  private DimensionedElevation() {}

  /**
   * Returns the dimensioned elevation at real size, lettered for showing at the scale of the
   * options.
   */
  public static Drawing of(Study study, PictureOptions options) {
    return of(Scenes.of(study, options), options.denominator());
  }

  /**
   * A framed sheet.
   *
   * @param page the sheet
   * @param scale the scale of the picture on it
   */
  public record Sheet(Page page, Scale scale) {}

  /**
   * Returns the dimensioned elevation on a framed sheet at the largest preferred scale (ISO 5455)
   * that fits, the paper turned whichever way gives the larger one; the scale of the options is not
   * used.
   *
   * @param date date of issue for the title block, such as 2026-11-25; may be empty
   * @throws OutOfRange if it fits at no scale
   */
  public static Sheet sheet(Study study, PictureOptions options, Paper paper, String date) {
    Scene scene = Scenes.of(study, options);
    TitleBlock title = title(study, date);
    Optional<Sheet> full = largest(scene, paper, title, true, 0);
    double larger = full.map(s -> WORTH_IT * s.scale().factor()).orElse(0.0);
    Optional<Sheet> main = largest(scene, paper, title, false, larger);
    return main.or(() -> full)
        .orElseThrow(
            () ->
                new OutOfRange(
                    machine(scene)
                        + " fits on "
                        + paper.name()
                        + " at no scale; take larger paper"));
  }

  /**
   * Returns the dimensioned elevation on a framed sheet at a given scale; the scale of the options
   * is not used.
   *
   * @param date date of issue for the title block, such as 2026-11-25; may be empty
   * @throws OutOfRange if it does not fit; the message names a scale that does
   */
  public static Sheet sheet(
      Study study, PictureOptions options, Paper paper, Scale scale, String date) {
    Scene scene = Scenes.of(study, options);
    TitleBlock title = title(study, date);
    return at(scene, paper, title, true, scale)
        .or(() -> at(scene, paper, title, false, scale))
        .orElseThrow(
            () ->
                new OutOfRange(
                    machine(scene)
                        + " does not fit on "
                        + paper.name()
                        + " at "
                        + scale
                        + "; take "
                        + sheet(study, options, paper, date).scale()
                        + " or larger paper"));
  }

  private static TitleBlock title(Study study, String date) {
    String whole = Scenes.title(study.layout());
    int comma = whole.indexOf(", ");
    boolean split = whole.length() > TITLE_LENGTH && comma > 0;
    return TitleBlock.of(split ? whole.substring(0, comma) : whole, study.layout().name(), date)
        .withUnits(study.layout().units().word())
        .withSupplement(split ? whole.substring(comma + 2) : "");
  }

  private static String machine(Scene scene) {
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
   */
  static Drawing of(Scene scene, double denominator) {
    return of(scene, denominator, true);
  }

  private static Drawing of(Scene scene, double denominator, boolean full) {
    PictureOptions plain = PictureOptions.PLAIN.withDenominator(denominator);
    Drawing machine = ElevationPicture.of(scene, plain);
    Drawing drawing = machine.plus(DimensionInk.layer(scene, machine, denominator, full));
    return drawing.plus(notes(scene, drawing, denominator, full));
  }

  /** Returns the sheet at the largest scale that fits and is larger than {@code above}, if any. */
  private static Optional<Sheet> largest(
      Scene scene, Paper paper, TitleBlock title, boolean full, double above) {
    return Scale.PREFERRED.stream()
        .filter(scale -> scale.paper() <= scale.real() && scale.factor() > above)
        .flatMap(scale -> at(scene, paper, title, full, scale).stream())
        .findFirst();
  }

  /** Returns the sheet at a scale, the paper turned so that it fits; empty if it does not. */
  private static Optional<Sheet> at(
      Scene scene, Paper paper, TitleBlock title, boolean full, Scale scale) {
    Envelope machine = MachineInk.bounds(scene);
    for (Paper turned : List.of(paper.landscape(), paper.portrait())) {
      if (!SheetSpace.serves(turned)) {
        continue;
      }
      Envelope space = SheetSpace.pictureSpace(turned);
      if (!fits(machine, space, scale.factor())) {
        continue;
      }
      Drawing drawing = of(scene, scale.denominator(), full);
      if (fits(drawing.scaled(scale.factor()).paperBoundsMm(), space, 1)) {
        return Optional.of(new Sheet(Frame.sheet(turned, title, drawing, scale), scale));
      }
    }
    return Optional.empty();
  }

  private static boolean fits(Envelope box, Envelope space, double factor) {
    return box.getWidth() * factor <= space.getWidth()
        && box.getHeight() * factor <= space.getHeight();
  }

  /** Returns what is written above the picture, from its left edge. */
  private static Layer notes(Scene scene, Drawing drawing, double n, boolean full) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Lengths in "
            + (scene.layout().units() == Units.IN ? "inches" : "mm")
            + ", angles in degrees"
            + (scene.stance().isEmpty() ? ", as drawn." : ", stance: " + scene.stance() + "."));
    PressedWords.said(scene)
        .ifPresent(set -> lines.add("Cut by what is set, as drawn: " + set + "."));
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
    if (!full) {
      lines.add("Main dimensions only; larger paper shows them all.");
    }
    lines.add("A sketch, not a certificate: local codes and licensed inspection decide.");
    Envelope box = drawing.boundsMm();
    double y = box.getMaxY() + AIR_MM * n;
    List<Mark> marks = new ArrayList<>();
    for (int i = lines.size() - 1; i >= 0; i--) {
      marks.add(
          new Mark.Words(
              "notes",
              lines.get(i),
              box.getMinX(),
              y,
              Canvas.SMALL_MM,
              0,
              Anchor.START,
              Tone.PENCIL));
      y += NOTE_LINE_MM * n;
    }
    return new Layer(PictureLayer.NOTES.id(), PictureLayer.NOTES.title(), marks);
  }
}

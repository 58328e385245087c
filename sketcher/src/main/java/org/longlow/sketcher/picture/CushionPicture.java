package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.seat.Compression;
import org.longlow.rider.seat.CushionLoad;
import org.longlow.rider.seat.FoamStack;
import org.longlow.rider.seat.Support;
import org.longlow.rider.words.FigureSort;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Hatch;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * A cut through a cushion, its heights to scale: free at the left with its layers named, and beside
 * it pressed as deep as under each person, at the design sink, with what they find there.
 *
 * <p>The face of the board of the first row is at y = 0 and the free stack begins at x = 0. More
 * people than fit side by side go into rows below.
 */
public final class CushionPicture {

  /** Room for the names of layers and of rows, left of the free stack, paper mm. */
  public static final double NAMES_MM = 40;

  /** How wide the free stack is, paper mm. */
  public static final double FREE_MM = 13;

  /** How it is read; what follows is a unit of length. */
  public static final String TO_SCALE =
      "Heights are to scale; beside each layer is how far it gives at the design sink, ";

  private static final double LEAST_SLOT_MM = 16.8;
  private static final double MOST_SLOT_MM = 34;
  private static final double AIR_MM = 3;
  private static final double STRIP_SHARE = 0.36;
  private static final double LETTERS_MM = 2.3;
  private static final double SMALL_MM = 1.9;
  private static final double SMALLEST_MM = 1.4;
  private static final double LINE_MM = 4.1;
  private static final double HEAD_MM = 9.5;

  private static final List<String> ROWS =
      List.of(Support.DESIGN, Support.LIKELY, "leaves", "most, evened across", "mean pressure");

  private final CushionStack stack;
  private final int picked;
  private final Canvas canvas;
  private final double n;
  private final double slotMm;
  private double board;

  private CushionPicture(CushionStack stack, double slotMm, double denominator, int picked) {
    this.stack = stack;
    this.slotMm = slotMm;
    this.picked = picked;
    canvas = new Canvas(denominator);
    n = denominator;
  }

  /**
   * Draws a cushion.
   *
   * @param widthMm how wide it may come out, paper mm; at least one person is shown beside the
   *     stack
   * @param denominator N of the scale 1:N of its heights
   * @param picked a layer that is marked, from 0 at the top; -1 for none
   */
  public static Drawing of(CushionStack stack, double widthMm, double denominator, int picked) {
    return of(stack, widthMm, denominator, picked, true);
  }

  /**
   * Draws a cushion whose figures are explained beside it.
   *
   * @param widthMm how wide it may come out, paper mm
   * @param denominator N of the scale 1:N of its heights
   */
  public static Drawing unexplained(CushionStack stack, double widthMm, double denominator) {
    return of(stack, widthMm, denominator, -1, false);
  }

  private static Drawing of(
      CushionStack stack, double widthMm, double denominator, int picked, boolean explained) {
    double room = widthMm - NAMES_MM - FREE_MM - AIR_MM;
    int fit = Math.max(1, (int) Math.floor(room / LEAST_SLOT_MM));
    int side = Math.max(1, Math.min(fit, stack.loads().size()));
    double slot = Math.max(LEAST_SLOT_MM, Math.min(MOST_SLOT_MM, room / side));
    CushionPicture picture = new CushionPicture(stack, slot, denominator, picked);
    for (int i = 0; i == 0 || i < stack.loads().size(); i += side) {
      picture.row(stack.loads().subList(i, Math.min(stack.loads().size(), i + side)));
    }
    picture.notes(widthMm, explained);
    return picture.canvas.drawing(stack.cushion());
  }

  private double paper(double mm) {
    return n * mm;
  }

  /** One row of people beside the free stack; the next begins below it. */
  private void row(List<CushionStack.Load> loads) {
    List<Double> free = stack.layers().stream().map(CushionStack.Layer::thicknessMm).toList();
    strip(0, paper(FREE_MM), free, true);
    double lowest = names();
    double first = board + stack.foamMm();
    double x = paper(FREE_MM + AIR_MM);
    for (CushionStack.Load load : loads) {
      head(load, x, first);
      double wide = paper(STRIP_SHARE * slotMm);
      lowest = Math.min(lowest, pressed(load, x, wide));
      x += paper(slotMm);
    }
    double y = lowest - paper(LINE_MM + 0.6);
    if (!loads.isEmpty()) {
      for (int r = 0; r < ROWS.size(); r++) {
        words(ROWS.get(r), -paper(AIR_MM / 2), y, LETTERS_MM, Anchor.END, Tone.PENCIL);
        x = paper(FREE_MM + AIR_MM);
        for (CushionStack.Load load : loads) {
          String said = said(load, r);
          words(said, x, y, LETTERS_MM, Anchor.START, Tone.INK);
          x += paper(slotMm);
        }
        y -= paper(LINE_MM);
      }
    }
    board = y - paper(HEAD_MM + LINE_MM) - stack.foamMm();
  }

  /** What stands in a row of the table under somebody; a dash where they rest on nothing. */
  private String said(CushionStack.Load load, int row) {
    return load.carried()
        .map(
            c ->
                switch (row) {
                  case 0 -> stack.says(c.safeSinkMm());
                  case 1 -> stack.says(c.sinkMm());
                  case 2 -> stack.says(c.remainingMm());
                  case 3 -> stack.units().says(c.peakKPa(), FigureSort.PRESSURE);
                  default -> stack.units().says(c.meanKPa(), FigureSort.PRESSURE);
                })
        .orElse("-");
  }

  /** Draws board and layers of such heights one on the other. */
  private void strip(double x, double wide, List<Double> heights, boolean named) {
    PictureLayer seat = PictureLayer.SEAT;
    canvas.body(
        seat,
        "board",
        Planar.rectangle(x, board - stack.boardMm(), x + wide, board),
        Tone.WOOD,
        0.75,
        Canvas.edge(Tone.INK));
    double low = board;
    for (int i = heights.size() - 1; i >= 0; i--) {
      CushionStack.Layer layer = stack.layers().get(i);
      boolean firm = layer.closedCell() || i == heights.size() - 1 && heights.size() > 1;
      double high = low + Math.max(heights.get(i), paper(0.15));
      var body = Planar.rectangle(x, low, x + wide, high);
      boolean marked = named && i == picked;
      canvas.body(
          seat,
          "layer:" + i,
          body,
          firm ? Tone.FOAM_FIRM : Tone.FOAM_SOFT,
          0.9,
          marked ? Style.line(Tone.CHOSEN, 0.7) : Canvas.fine(Tone.INK));
      Style dots = Canvas.hair(Tone.PENCIL).withLine(LineType.DASHED);
      double step = paper(layer.closedCell() ? 0.8 : 1.6);
      canvas.shape(seat, "layer:" + i, Hatch.lines(body, step, Math.PI / 4), dots);
      if (layer.closedCell()) {
        canvas.shape(seat, "layer:" + i, Hatch.lines(body, step, -Math.PI / 4), dots);
      }
      low = high;
    }
  }

  /** Names the layers and the board; returns how low the names reach. */
  private double names() {
    List<Double> wanted = new ArrayList<>();
    for (int i = 0; i < stack.layers().size(); i++) {
      wanted.add(board + stack.undersideMm(i) + stack.layers().get(i).thicknessMm() / 2);
    }
    wanted.add(board - stack.boardMm() / 2);
    List<Double> at = spread(wanted, paper(2 * LETTERS_MM + 2.4));
    double right = -paper(4);
    for (int i = 0; i < at.size(); i++) {
      boolean wood = i == stack.layers().size();
      CushionStack.Layer layer = wood ? null : stack.layers().get(i);
      double y = at.get(i);
      Tone tone = i == picked ? Tone.CHOSEN : Tone.INK;
      String thick = stack.says(wood ? stack.boardMm() : layer.thicknessMm());
      double room = NAMES_MM - 5 - Lettering.widthMm(thick, LETTERS_MM) - 1.5;
      String name = wood ? "board" : (i + 1) + " " + layer.name();
      double up = wood ? -paper(LETTERS_MM / 2) : paper(0.4);
      words(thick, right, y + up, LETTERS_MM, Anchor.END, tone);
      words(
          Lettering.fitted(name, LETTERS_MM, room),
          -paper(NAMES_MM),
          y + up,
          LETTERS_MM,
          Anchor.START,
          tone);
      if (!wood) {
        double below = y - paper(SMALL_MM + 0.7);
        figures(layer.figures(), -paper(NAMES_MM), below);
      }
      canvas.line(
          PictureLayer.AXES,
          "",
          Canvas.hair(Tone.PENCIL),
          new PointMm(-paper(3.4), y),
          new PointMm(-paper(0.6), wanted.get(i)));
    }
    return Math.min(at.get(at.size() - 1) - paper(LETTERS_MM / 2), board - stack.boardMm());
  }

  /**
   * Figures are written smaller rather than cut: those in inches and pounds are the longer ones.
   */
  private void figures(String figures, double x, double y) {
    double room = NAMES_MM - 5;
    double whole = SMALL_MM * (room - 0.01) / Lettering.widthMm(figures, SMALL_MM);
    double high = Math.max(SMALLEST_MM, Math.min(SMALL_MM, whole));
    words(Lettering.fitted(figures, high, room), x, y, high, Anchor.START, Tone.PENCIL);
  }

  private void head(CushionStack.Load load, double x, double top) {
    Tone tone = FindingInk.tone(load.verdict());
    double y = top + paper(2.4);
    double upper = y + paper(LINE_MM);
    canvas.shape(
        PictureLayer.FINDINGS,
        "",
        FindingInk.sign(load.verdict(), new PointMm(x + paper(1.2), upper + paper(1)), paper(0.75)),
        Style.line(tone, 0.4).withFill(Tone.PAPER, 1));
    String who = Lettering.fitted(load.who(), LETTERS_MM, slotMm - 4.4);
    words(who, x + paper(3.4), upper, LETTERS_MM, Anchor.START, Tone.INK);
    String says = load.verdict().says();
    words(says, x, y, fitting(says, slotMm - 1), Anchor.START, tone);
  }

  /** Returns the height of letters at which a text is no wider, paper mm. */
  private static double fitting(String text, double widestMm) {
    double fit = SMALL_MM * widestMm / Lettering.widthMm(text, SMALL_MM);
    return Math.max(SMALLEST_MM, Math.min(SMALL_MM, fit));
  }

  /** Draws the stack pressed under somebody; returns how low the figures beside it reach. */
  private double pressed(CushionStack.Load load, double x, double wide) {
    Optional<CushionLoad> carried = load.carried();
    List<Double> heights = new ArrayList<>();
    List<Double> wanted = new ArrayList<>();
    double low = board;
    for (int i = stack.layers().size() - 1; i >= 0; i--) {
      int layer = i;
      double sink = carried.map(c -> c.layers().layers().get(layer).sinkMm()).orElse(0.0);
      double height = stack.layers().get(i).thicknessMm() - sink;
      heights.add(0, height);
      wanted.add(0, low + height / 2);
      low += height;
    }
    strip(x, wide, heights, false);
    if (carried.isEmpty()) {
      return board - stack.boardMm();
    }
    canvas.shape(
        PictureLayer.SEAT,
        "",
        Planar.rectangle(x, board, x + wide, board + stack.foamMm()),
        Canvas.hair(Tone.PENCIL).withLine(LineType.DASHED));
    List<Compression.Layer> layers = carried.get().layers().layers();
    boolean used = layers.stream().anyMatch(l -> l.verdict() != Compression.LayerVerdict.SOUND);
    List<Double> at = spread(wanted, paper(used ? 2 * SMALL_MM + 1.6 : LETTERS_MM + 0.9));
    for (int i = 0; i < at.size(); i++) {
      Compression.LayerVerdict verdict = layers.get(i).verdict();
      boolean sound = verdict == Compression.LayerVerdict.SOUND;
      double y = at.get(i) - paper(sound ? LETTERS_MM / 2 : 0.1);
      double left = x + wide + paper(1);
      double room = (1 - STRIP_SHARE) * slotMm - 1.8;
      String arrow = slotMm < 20 ? "" : "\u2193 ";
      String sink = arrow + stack.units().bare(layers.get(i).sinkMm(), FigureSort.LENGTH);
      words(sink, left, y, sound ? LETTERS_MM : SMALL_MM, Anchor.START, Tone.INK);
      if (!sound) {
        Tone tone = verdict == Compression.LayerVerdict.SPENT ? Tone.BAD : Tone.CARE;
        double below = y - paper(SMALL_MM + 0.6);
        words(verdict.words(), left, below, fitting(verdict.words(), room), Anchor.START, tone);
      }
    }
    return Math.min(board - stack.boardMm(), at.get(at.size() - 1) - paper(LETTERS_MM));
  }

  /** What each of them finds, and how far all this can be trusted. */
  private void notes(double widthMm, boolean explained) {
    double y = board + paper(HEAD_MM) + stack.foamMm();
    Map<String, List<String>> alike = new LinkedHashMap<>();
    stack
        .loads()
        .forEach(l -> alike.computeIfAbsent(l.says(), says -> new ArrayList<>()).add(l.who()));
    List<String> notes = new ArrayList<>();
    alike.forEach((says, who) -> notes.add(String.join(", ", who) + ": " + says + "."));
    if (stack.loads().isEmpty()) {
      notes.add("Nobody of the crew sits on this seat.");
    }
    if (explained) {
      notes.add(
          TO_SCALE
              + stack.units().word()
              + ". "
              + Support.DESIGN_MEANING
              + " "
              + FoamStack.SINK_CAUTION);
    }
    for (String note : notes) {
      for (String line : Lettering.wrapped(note, LETTERS_MM, widthMm - 2)) {
        words(line, -paper(NAMES_MM), y, LETTERS_MM, Anchor.START, Tone.PENCIL);
        y -= paper(LINE_MM - 0.4);
      }
      y -= paper(0.6);
    }
  }

  private void words(String text, double x, double y, double height, Anchor anchor, Tone tone) {
    canvas.words(PictureLayer.NAMES, "", text, new PointMm(x, y), height, anchor, tone);
  }

  /**
   * Moves heights that go down a list apart until each is at least so far below the one before, as
   * little as that takes in all: neighbours that are too close share their middle.
   */
  static List<Double> spread(List<Double> wanted, double gap) {
    List<double[]> blocks = new ArrayList<>(); // sum of what they would be without gaps, how many
    for (int i = 0; i < wanted.size(); i++) {
      double[] block = {wanted.get(i) + i * gap, 1};
      while (!blocks.isEmpty()) {
        double[] last = blocks.get(blocks.size() - 1);
        if (last[0] / last[1] >= block[0] / block[1]) {
          break;
        }
        block = new double[] {last[0] + block[0], last[1] + block[1]};
        blocks.remove(blocks.size() - 1);
      }
      blocks.add(block);
    }
    List<Double> out = new ArrayList<>();
    for (double[] block : blocks) {
      for (int k = 0; k < block[1]; k++) {
        out.add(block[0] / block[1] - out.size() * gap);
      }
    }
    return out;
  }
}

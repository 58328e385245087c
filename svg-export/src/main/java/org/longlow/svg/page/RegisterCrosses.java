package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** The crosses in the corners of the overlap by which sheets are laid on each other. */
final class RegisterCrosses {

  /** Half a cross, as a share of the overlap. */
  static final double ARM = 0.42;

  static final double THIN_MM = 0.18;

  private static final double PARTNERS_MM = 2;

  /** Words may come out a fifth wider in a font other than the intended one. */
  static final double FONT_RESERVE = 1.2;

  /** From one place that is tried for words along an edge to the next, mm. */
  static final double SLIDE_MM = 5;

  /** Farther from their cross words would not be taken for its own, mm; judgement. */
  private static final double FARTHEST_MM = 40;

  private final TemplatePlan plan;
  private final TemplatePlan.Sheet sheet;
  private final double w;
  private final double h;
  private final double o;
  private final List<Node> nodes;
  private final List<Mark.Words> meets = new ArrayList<>();

  /**
   * @param room of the whole sheet, of which crosses take some
   */
  RegisterCrosses(TemplatePlan plan, TemplatePlan.Sheet sheet, FreeRoom room) {
    this.plan = plan;
    this.sheet = sheet;
    this.w = plan.width();
    this.h = plan.height();
    this.o = plan.settings().overlapMm();
    this.nodes = nodes();
    nodes.forEach(n -> room.take(Planar.disc(n.x, n.y, ARM * o).getEnvelopeInternal()));
  }

  /** Says beside each cross which sheets meet there, where there is room for it. */
  void nameIn(FreeRoom room) {
    nodes.forEach(n -> meets(n, o, room).ifPresent(meets::add));
  }

  /**
   * A corner of the sheet that at least one other sheet shows too.
   *
   * @param inwards x from the cross into the sheet: 1 or -1
   * @param up y from the cross into the sheet
   */
  private record Node(String subject, double x, double y, int inwards, int up, String meets) {}

  private List<Node> nodes() {
    List<Node> out = new ArrayList<>();
    for (int down = 0; down <= 1; down++) {
      for (int along = 0; along <= 1; along++) {
        int column = sheet.column() + along;
        int row = sheet.row() + down;
        List<String> partners = partners(row, column);
        if (!partners.isEmpty()) {
          out.add(
              new Node(
                  "register:" + column + ":" + row,
                  along == 0 ? o / 2 : w - o / 2,
                  down == 0 ? h - o / 2 : o / 2,
                  along == 0 ? 1 : -1,
                  down == 0 ? -1 : 1,
                  "meets " + String.join(", ", partners)));
        }
      }
    }
    return out;
  }

  /**
   * Takes room for the words of a cross beside it along either edge; empty where lines run there,
   * for the map tells the same.
   */
  private static Optional<Mark.Words> meets(Node n, double o, FreeRoom room) {
    for (double off = o / 2 + 1; off < o / 2 + FARTHEST_MM; off += SLIDE_MM) {
      for (boolean upright : new boolean[] {false, true}) {
        boolean ahead = (upright ? n.up : n.inwards) > 0;
        Mark.Words words =
            new Mark.Words(
                "",
                n.meets,
                upright ? n.x : n.x + off * n.inwards,
                upright ? n.y + off * n.up : n.y,
                PARTNERS_MM,
                upright ? 90 : 0,
                ahead ? Anchor.CENTRE_START : Anchor.CENTRE_END,
                Tone.INK);
        Envelope box = box(words);
        if (!room.isTaken(box) && room.covered(box) == 0) {
          room.take(box);
          return Optional.of(words);
        }
      }
    }
    return Optional.empty();
  }

  /** The box of words as wide as another font may make them. */
  private static Envelope box(Mark.Words words) {
    Envelope box = words.boxMm();
    double more = words.widthMm() * (FONT_RESERVE - 1);
    if (words.rotationDeg() == 0) {
      box.expandBy(more, 0);
    } else {
      box.expandBy(0, more);
    }
    return box;
  }

  /** Returns patches of paper for crosses and their words; they lie under the drawing. */
  List<Mark> backing() {
    List<Mark> out = new ArrayList<>();
    Style paper = Style.area(Tone.PAPER, 1);
    nodes.forEach(n -> out.add(new Mark.Shape("", Planar.disc(n.x, n.y, 0.3 * o), paper)));
    meets.forEach(m -> out.add(new Mark.Shape("", Planar.rectangle(box(m)), paper)));
    return out;
  }

  /**
   * Returns the register crosses. A cross belongs to a node of the grid and carries it in its
   * subject ({@code register:COLUMN:ROW}, counted from the left and from the top); the words beside
   * it name the other sheets that show it.
   */
  List<Mark> marks() {
    List<Mark> out = new ArrayList<>();
    Style thin = Style.line(Tone.INK, THIN_MM);
    double arm = ARM * o;
    for (Node n : nodes) {
      out.add(
          new Mark.Shape(
              n.subject,
              Planar.FACTORY.createMultiLineString(
                  new LineString[] {
                    Planar.line(n.x - arm, n.y, n.x + arm, n.y),
                    Planar.line(n.x, n.y - arm, n.x, n.y + arm)
                  }),
              thin));
      out.add(new Mark.Shape("", Planar.arc(n.x, n.y, 0.2 * o, 0, 2 * Math.PI), thin));
    }
    out.addAll(meets);
    return out;
  }

  /** Returns the names of the other used sheets round a node. */
  private List<String> partners(int row, int column) {
    List<String> out = new ArrayList<>();
    for (int r = row - 1; r <= row; r++) {
      for (int c = column - 1; c <= column; c++) {
        if (plan.isUsed(r, c) && !(r == sheet.row() && c == sheet.column())) {
          out.add(Tiling.label(r, c));
        }
      }
    }
    return out;
  }
}

package org.longlow.sketcher.shop;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Stock.Form;
import org.longlow.constraints.machine.shop.BarPlan;
import org.longlow.constraints.machine.shop.SheetPlan;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Pictures of cutting plans, to scale, with figures. */
final class PlanBlocks {

  /** Scales of plans, 1 to one of these, then times ten. */
  private static final double[] STEPS = {1, 1.5, 2, 2.5, 3, 4, 5, 6, 7.5};

  /** How high a bar is drawn: lengths are to scale, this is not. */
  private static final double BAR_HIGH_MM = 7;

  /** Most of a page's height that a sheet of few pieces takes: three with their words fill it. */
  private static final double FEW_SHARE = 0.25;

  /** The same of a sheet of many pieces. */
  private static final double MANY_SHARE = 0.42;

  private static final int MANY = 8;

  private final CutPlan plan;
  private final SizeWords sizes;
  private final double widthMm;
  private final double heightMm;

  private PlanBlocks(CutPlan plan, SizeWords sizes, double widthMm, double heightMm) {
    this.plan = plan;
    this.sizes = sizes;
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  /** Returns a block for each bar or sheet, what they are said above the first. */
  static List<PageBlock> of(CutPlan plan, SizeWords sizes, double widthMm, double heightMm) {
    PlanBlocks blocks = new PlanBlocks(plan, sizes, widthMm, heightMm);
    List<PageBlock> out =
        plan instanceof CutPlan.Bars bars
            ? blocks.bars(bars)
            : blocks.sheets((CutPlan.Sheets) plan);
    if (!out.isEmpty()) {
      return out;
    }
    PageBlock.Pen pen = blocks.pen(0, 1);
    return List.of(pen.done());
  }

  /** Returns N of the scale 1:N at which a length has room. */
  static double scale(double mm, double roomMm) {
    for (double ten = 1; ; ten *= 10) {
      for (double step : STEPS) {
        if (mm / (step * ten) <= roomMm) {
          return step * ten;
        }
      }
    }
  }

  private PageBlock.Pen pen(int number, double n) {
    PageBlock.Pen pen = new PageBlock.Pen(plan.wanted().words(sizes), widthMm);
    if (number == 0) {
      pen.lines(plan.wanted().words(sizes), PageBlock.HEAD_MM, Tone.INK);
      pen.lines(PlanWords.of(plan, sizes) + " Scale 1:" + figure(n) + ".", 2.5, Tone.PENCIL);
      pen.down(1.5);
    }
    return pen;
  }

  private static String figure(double n) {
    return n == Math.rint(n) ? Long.toString((long) n) : Double.toString(n);
  }

  private List<PageBlock> bars(CutPlan.Bars bars) {
    List<PageBlock> out = new ArrayList<>();
    double n = scale(bars.stock().longMm(), widthMm);
    for (BarPlan.Bar bar : bars.plan().bars()) {
      PageBlock.Pen pen = pen(out.size(), n);
      pen.down(BAR_HIGH_MM);
      double y = pen.y();
      double from = 0;
      List<String> legend = new ArrayList<>();
      for (int piece : bar.pieces()) {
        CutPlan.Length length = bars.pieces().get(piece);
        double mm = length.lengthMm() + bars.stock().extraMm();
        pen.box(
            "cut:" + length.part(),
            from / n,
            y,
            mm / n,
            BAR_HIGH_MM,
            Style.narrow(Tone.INK).withFill(tone(), 0.3));
        String number = Integer.toString(legend.size() + 1);
        String said = length.part() + " " + sizes.bareMm(mm);
        double mid = y + BAR_HIGH_MM / 2;
        pen.first(from / n, mid, mm / n, BAR_HIGH_MM, number + ": " + said, number);
        legend.add(number + ": " + said);
        from += mm + bars.stock().kerfMm();
      }
      pen.box("stock", 0, y, bars.stock().longMm() / n, BAR_HIGH_MM, Style.wide(Tone.INK));
      pen.down(1.5);
      pen.lines(
          "Bar "
              + (out.size() + 1)
              + ", from the left: "
              + String.join("; ", legend)
              + ". Left over: "
              + sizes.mm(bar.leftMm())
              + ".",
          PageBlock.TEXT_MM,
          Tone.INK);
      out.add(out.isEmpty() ? pen.done() : pen.done().following());
    }
    return out;
  }

  private List<PageBlock> sheets(CutPlan.Sheets sheets) {
    List<PageBlock> out = new ArrayList<>();
    Bought stock = sheets.stock();
    boolean many = sheets.plan().sheets().stream().anyMatch(s -> s.laid().size() >= MANY);
    double high = heightMm * (many ? MANY_SHARE : FEW_SHARE);
    double n = Math.max(scale(stock.longMm(), widthMm), scale(stock.wideMm(), high));
    for (SheetPlan.Sheet sheet : sheets.plan().sheets()) {
      PageBlock.Pen pen = pen(out.size(), n);
      pen.down(stock.wideMm() / n);
      double y = pen.y();
      List<String> legend = new ArrayList<>();
      for (SheetPlan.Laid laid : sheet.laid()) {
        legend.add(piece(pen, sheets, laid, y, n, legend.size() + 1));
      }
      pen.box("stock", 0, y, stock.longMm() / n, stock.wideMm() / n, Style.wide(Tone.INK));
      if (stock.grained()) {
        grain(pen, stock, y, n);
      }
      pen.down(1.5);
      pen.lines(
          "Sheet " + (out.size() + 1) + ": " + String.join("; ", legend) + ".",
          PageBlock.TEXT_MM,
          Tone.INK);
      out.add(out.isEmpty() ? pen.done() : pen.done().following());
    }
    return out;
  }

  private String piece(
      PageBlock.Pen pen,
      CutPlan.Sheets sheets,
      SheetPlan.Laid laid,
      double y,
      double n,
      int number) {
    CutPlan.Area piece = sheets.pieces().get(laid.piece());
    double w = (laid.turned() ? piece.wideMm() : piece.longMm()) / n;
    double h = (laid.turned() ? piece.longMm() : piece.wideMm()) / n;
    double x = laid.alongMm() / n;
    double low = y + laid.acrossMm() / n;
    boolean drawn = piece.outline().isPresent();
    pen.box(
        "cut:" + piece.part(),
        x,
        low,
        w,
        h,
        drawn ? Style.narrow(Tone.INK) : Style.narrow(Tone.INK).withFill(tone(), 0.3));
    piece
        .outline()
        .ifPresent(
            o ->
                pen.mark(
                    new Mark.Shape(
                        "edge:" + piece.part(),
                        laid(o, laid, piece, sheets.stock().extraMm(), n, x, low),
                        Style.narrow(Tone.PENCIL).withFill(tone(), 0.3))));
    String size = sizes.bareMm(piece.longMm()) + " × " + sizes.bareMm(piece.wideMm());
    String said = number + ": " + piece.part() + " " + size;
    pen.first(x, low + h / 2, w, h, said, number + ": " + size, Integer.toString(number));
    return said + (laid.turned() ? ", turned" : "");
  }

  /** An outline in the place of its piece. */
  private static Geometry laid(
      Geometry outline,
      SheetPlan.Laid laid,
      CutPlan.Area piece,
      double extraMm,
      double n,
      double x,
      double y) {
    Envelope box = outline.getEnvelopeInternal();
    AffineTransformation t =
        AffineTransformation.translationInstance(extraMm - box.getMinX(), extraMm - box.getMinY());
    if (laid.turned()) {
      t.rotate(Math.PI / 2).translate(piece.wideMm(), 0);
    }
    return t.scale(1 / n, 1 / n).translate(x, y).transform(outline);
  }

  /** An arrow along the grain, outside the sheet's lower edge. */
  private static void grain(PageBlock.Pen pen, Bought stock, double y, double n) {
    double to = Math.min(30, stock.longMm() / n);
    double low = y - 2.5;
    pen.mark(
        new Mark.Shape(
            "grain",
            Planar.FACTORY.createMultiLineString(
                new LineString[] {
                  Planar.line(0, low, to, low),
                  Planar.line(1.5, low + 0.8, 0, low, 1.5, low - 0.8),
                  Planar.line(to - 1.5, low + 0.8, to, low, to - 1.5, low - 0.8)
                }),
            Style.narrow(Tone.INK)));
    pen.mark(Mark.Words.level("grain", to + 2, low, 2.5, Anchor.CENTRE_START, Tone.INK));
    pen.down(4.5);
  }

  private Tone tone() {
    if (plan.wanted().form() == Form.FOAM) {
      return Tone.FOAM_SOFT;
    }
    Material of = plan.wanted().of();
    return switch (of) {
      case PLYWOOD -> Tone.WOOD;
      case ALUMINIUM -> Tone.ALUMINIUM;
      case ABS, POLYCARBONATE -> Tone.PLASTIC;
      case LAMINATE -> Tone.COWL;
      default -> Tone.STEEL;
    };
  }
}

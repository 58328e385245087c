package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * A drawing sheet for the wall: frame, centring marks and grid reference after ISO 5457:1999, title
 * block after ISO 7200:2004 (both partly from memory, see the constants).
 *
 * <p>The drawing is in real millimetres and is placed at a scale; its lettering and strokes keep
 * their paper size. Build its dimensions with {@link org.longlow.svg.drawing.Dimensions#at} and
 * {@link Scale#denominator} of the same scale.
 */
public final class Frame {

  /**
   * Distance of the grid reference border from the frame, mm, and length of a field (from memory).
   */
  private static final double GRID_BORDER_MM = 5;

  private static final double FIELD_MM = 50;
  private static final double GRID_LINE_MM = 0.35;
  private static final double GRID_LETTER_MM = 3.5;
  private static final double CENTRING_MM = 10;

  /** Row letters: no I and no O. */
  private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

  private Frame() {}

  /**
   * Returns a sheet with a drawing in the middle of its picture space.
   *
   * @param drawing real mm, y up
   * @throws IllegalArgumentException if the shapes do not fit at this scale
   */
  public static Page sheet(Paper paper, TitleBlock title, Drawing drawing, Scale scale) {
    Envelope space = RevisionTable.pictureSpace(paper, title);
    Drawing onPaper = drawing.scaled(scale.factor());
    Envelope box = onPaper.paperBoundsMm();
    if (box.isNull()) {
      throw new IllegalArgumentException(
          "drawing '" + drawing.title() + "' has nothing to put on the sheet");
    }
    Envelope shapes = onPaper.boundsMm();
    if (shapes.getWidth() > space.getWidth() || shapes.getHeight() > space.getHeight()) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "drawing '%s' needs %.0f x %.0f mm at %s, the sheet has %.0f x %.0f mm; take scale %s"
                  + " or larger paper",
              drawing.title(),
              shapes.getWidth(),
              shapes.getHeight(),
              scale,
              space.getWidth(),
              space.getHeight(),
              Scale.fitting(drawing.boundsMm(), paper)));
    }
    Affine place =
        Affine.scale(scale.factor(), scale.factor())
            .then(
                Affine.move(space.centre().x - box.centre().x, space.centre().y - box.centre().y));
    Envelope frame = SheetSpace.drawingSpace(paper);
    List<Mark> block = TitleBlockMarks.at(title, scale, paper, frame.getMaxX(), frame.getMinY());
    List<Mark> revisions = RevisionTable.at(paper, title);
    Drawing beside =
        onPaper
            .moved(space.centre().x - box.centre().x, space.centre().y - box.centre().y)
            .plus(new Layer("sheet-title", "", block))
            .plus(new Layer("sheet-revisions", "", revisions));
    List<Layer> sheet =
        List.of(
            new Layer("sheet-frame", "Frame", frame(paper)),
            new Layer("sheet-grid", "Grid reference", grid(paper)),
            new Layer("sheet-title", "Title block", block),
            new Layer("sheet-revisions", "Revisions", revisions),
            new Layer("sheet-check", "Scale bar", checkBar(paper, title.isInInches(), beside)));
    return new Page(
        title.title(),
        paper,
        List.of(
            new Page.Piece(drawing, place, null),
            new Page.Piece(new Drawing("", sheet), Affine.IDENTITY, null)));
  }

  private static List<Mark> frame(Paper paper) {
    Envelope f = SheetSpace.drawingSpace(paper);
    double cx = paper.widthMm() / 2;
    double cy = paper.heightMm() / 2;
    double out = GRID_BORDER_MM;
    double in = CENTRING_MM - GRID_BORDER_MM;
    // Where the title block spans the middle, the lower mark stops at the frame.
    boolean clear = f.getMaxX() - SheetSpace.TITLE_WIDTH_MM > cx;
    return List.of(
        new Mark.Shape("", Planar.rectangle(f), Style.line(Tone.INK, SheetSpace.FRAME_LINE_MM)),
        new Mark.Shape(
            "",
            Planar.FACTORY.createMultiLineString(
                new LineString[] {
                  Planar.line(f.getMinX() - out, cy, f.getMinX() + in, cy),
                  Planar.line(f.getMaxX() + out, cy, f.getMaxX() - in, cy),
                  Planar.line(cx, f.getMinY() - out, cx, f.getMinY() + (clear ? in : 0)),
                  Planar.line(cx, f.getMaxY() + out, cx, f.getMaxY() - in)
                }),
            Style.line(Tone.INK, SheetSpace.FRAME_LINE_MM)));
  }

  /**
   * Returns how many fields of the grid reference lie on a side, given the length of the drawing
   * space along it.
   */
  static int fields(double lengthMm) {
    return 2 * Math.max(1, (int) Math.round(lengthMm / 2 / FIELD_MM));
  }

  private static List<Mark> grid(Paper paper) {
    Envelope f = SheetSpace.drawingSpace(paper);
    Envelope g = new Envelope(f);
    g.expandBy(GRID_BORDER_MM);
    // The smallest sheet carries its references at the top and at the right only.
    boolean small = Math.max(paper.widthMm(), paper.heightMm()) < 300;
    List<Mark> out = new ArrayList<>();
    out.add(new Mark.Shape("", Planar.rectangle(g), Style.line(Tone.INK, GRID_LINE_MM)));
    List<LineString> ticks = new ArrayList<>();
    double b = GRID_BORDER_MM / 2;
    double[] xs = divisions(f.getMinX(), f.getMaxX(), paper.widthMm() / 2);
    for (int i = 0; i < xs.length - 1; i++) {
      String number = Integer.toString(i + 1);
      double mid = (xs[i] + xs[i + 1]) / 2;
      reference(out, number, mid, f.getMaxY() + b);
      if (!small) {
        reference(out, number, mid, f.getMinY() - b);
      }
      if (i > 0) {
        ticks.add(Planar.line(xs[i], f.getMaxY(), xs[i], g.getMaxY()));
        if (!small) {
          ticks.add(Planar.line(xs[i], f.getMinY(), xs[i], g.getMinY()));
        }
      }
    }
    double[] ys = divisions(f.getMinY(), f.getMaxY(), paper.heightMm() / 2);
    for (int i = 0; i < ys.length - 1; i++) {
      String letter = letter(ys.length - 2 - i);
      double mid = (ys[i] + ys[i + 1]) / 2;
      reference(out, letter, f.getMaxX() + b, mid);
      if (!small) {
        reference(out, letter, f.getMinX() - b, mid);
      }
      if (i > 0) {
        ticks.add(Planar.line(f.getMaxX(), ys[i], g.getMaxX(), ys[i]));
        if (!small) {
          ticks.add(Planar.line(f.getMinX(), ys[i], g.getMinX(), ys[i]));
        }
      }
    }
    out.add(
        new Mark.Shape(
            "",
            Planar.FACTORY.createMultiLineString(ticks.toArray(new LineString[0])),
            Style.line(Tone.INK, GRID_LINE_MM)));
    return out;
  }

  /**
   * Returns the ends of the fields: 50 mm each from the centring mark, what is left over at the
   * corners.
   */
  private static double[] divisions(double from, double to, double centre) {
    int n = fields(to - from);
    double[] out = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      out[i] = centre + (i - n / 2) * FIELD_MM;
    }
    out[0] = from;
    out[n] = to;
    return out;
  }

  private static String letter(int row) {
    int n = LETTERS.length();
    String last = String.valueOf(LETTERS.charAt(row % n));
    return row < n ? last : letter(row / n - 1) + last;
  }

  private static void reference(List<Mark> out, String text, double x, double y) {
    out.add(Mark.Words.level(text, x, y, GRID_LETTER_MM, Anchor.CENTRE, Tone.INK));
  }

  /**
   * A bar by which a print of the sheet can be measured: at the lower left, where there is room
   * beside the title block, else where nothing is drawn; none only where there is no such place.
   *
   * @param drawn all else on the sheet, page mm
   */
  private static List<Mark> checkBar(Paper paper, boolean inches, Drawing drawn) {
    Envelope f = SheetSpace.drawingSpace(paper);
    if (SheetSpace.hasCheckBar(paper)) {
      return ScaleBar.across(f.getMinX() + 2, f.getMinY() + 3, ScaleBar.MEASURE, inches);
    }
    Envelope region = new Envelope(f);
    region.expandBy(-2);
    FreeRoom room = new FreeRoom(drawn, region);
    Envelope across =
        room.take(ScaleBar.BLOCK_LONG_MM, ScaleBar.BLOCK_SHORT_MM, 0, 0, FreeRoom.STEP_MM, true);
    if (across != null) {
      return ScaleBar.across(across.getMinX(), across.getMinY(), ScaleBar.MEASURE, inches);
    }
    Envelope up =
        room.take(ScaleBar.BLOCK_SHORT_MM, ScaleBar.BLOCK_LONG_MM, 0, 0, FreeRoom.STEP_MM, true);
    return up == null
        ? List.of()
        : ScaleBar.along(up.getMinX(), up.getMinY(), ScaleBar.MEASURE, inches);
  }
}

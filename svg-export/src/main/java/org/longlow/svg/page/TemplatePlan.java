package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Drawing;

/**
 * Which sheets a template needs and where they lie.
 *
 * <p>"Sheet millimetres" have their origin at the lower left corner of the tile. They are what a
 * ruler shows on a true print; the print correction stands between them and page millimetres.
 */
record TemplatePlan(
    String part, Drawing drawing, TemplateSettings settings, Tiling tiling, boolean[][] used) {

  /**
   * A sheet in row {@code row} and column {@code column}, the {@code number}th used one, from 1.
   */
  record Sheet(int row, int column, int number) {
    String label() {
      return Tiling.label(row, column);
    }
  }

  static TemplatePlan of(String part, LaidOut laid, TemplateSettings settings) {
    if (settings.paper().roll()) {
      return fewest(
          fixed(part, laid, box -> RollPieces.upright(box, settings)),
          fixed(part, laid, box -> RollPieces.turned(box, settings)));
    }
    TemplatePlan asGiven = fixed(part, laid, box -> fed(settings));
    if (!settings.mayTurn()) {
      return asGiven;
    }
    Paper turned = settings.paper().turned();
    return fewest(asGiven, fixed(part, laid, box -> fed(settings.withPaper(turned, false))));
  }

  /** Returns the second only where it takes less paper. */
  private static TemplatePlan fewest(TemplatePlan one, TemplatePlan other) {
    int more = other.sheets().size() - one.sheets().size();
    return more < 0 || more == 0 && other.paperMm2() < one.paperMm2() ? other : one;
  }

  private double paperMm2() {
    return settings.paper().widthMm() * settings.paper().heightMm();
  }

  /** Returns the settings with the correction as it falls on the sheet: turned where that is. */
  private static TemplateSettings fed(TemplateSettings s) {
    return s.paper().isLandscape() ? s.withCorrection(s.correction().turned()) : s;
  }

  private static TemplatePlan fixed(
      String part, LaidOut laid, Function<Envelope, TemplateSettings> settings) {
    Drawing drawing = laid.on(box -> tiling(box, settings.apply(box)));
    TemplateSettings s = settings.apply(drawing.boundsMm());
    Tiling tiling = tiling(drawing.boundsMm(), s);
    return new TemplatePlan(part, drawing, s, tiling, tiling.used(drawing));
  }

  /**
   * Returns the tiling, without a look at which of its sheets are needed.
   *
   * @throws IllegalArgumentException if it has more than {@link Tiling#MOST_TILES}
   */
  static Tiling tiling(Envelope box, TemplateSettings s) {
    return new Tiling(box, usableWidthMm(s), usableHeightMm(s), s.overlapMm());
  }

  static Optional<String> refusal(Envelope box, TemplateSettings s) {
    return Tiling.refusal(box, usableWidthMm(s), usableHeightMm(s), s.overlapMm());
  }

  private static double usableWidthMm(TemplateSettings s) {
    return (s.paper().widthMm() - 2 * s.marginMm()) / s.correction().sx();
  }

  private static double usableHeightMm(TemplateSettings s) {
    return (s.paper().heightMm() - 2 * s.marginMm()) / s.correction().sy();
  }

  double width() {
    return tiling.usableWidthMm();
  }

  double height() {
    return tiling.usableHeightMm();
  }

  /** Returns the placement from sheet to page millimetres. */
  Affine toPage() {
    return Affine.scale(settings.correction().sx(), settings.correction().sy())
        .then(Affine.move(settings.marginMm(), settings.marginMm()));
  }

  /** Returns the placement from page to sheet millimetres. */
  Affine toSheet() {
    double m = settings.marginMm();
    PrintCorrection c = settings.correction();
    return Affine.move(-m, -m).then(Affine.scale(1 / c.sx(), 1 / c.sy()));
  }

  /** Returns the placement from drawing to page millimetres for a sheet. */
  Affine drawingToPage(Sheet sheet) {
    Envelope tile = tiling.tile(sheet.row(), sheet.column());
    return Affine.move(-tile.getMinX(), -tile.getMinY()).then(toPage());
  }

  /** Returns the printable rectangle in page millimetres. */
  Envelope printable() {
    return toPage().of(new Envelope(0, width(), 0, height()));
  }

  /**
   * Returns the part of a sheet that no other lies on, in page millimetres: without its glue
   * strips.
   */
  Envelope open(Sheet sheet) {
    double o = settings.overlapMm();
    return toPage()
        .of(
            new Envelope(
                0,
                width() - (isUsed(sheet.row(), sheet.column() + 1) ? o : 0),
                isUsed(sheet.row() + 1, sheet.column()) ? o : 0,
                height()));
  }

  boolean isUsed(int row, int column) {
    return row >= 0
        && row < used.length
        && column >= 0
        && column < used[row].length
        && used[row][column];
  }

  /** Returns the used sheets, row by row. */
  List<Sheet> sheets() {
    List<Sheet> out = new ArrayList<>();
    for (int r = 0; r < used.length; r++) {
      for (int c = 0; c < used[r].length; c++) {
        if (used[r][c]) {
          out.add(new Sheet(r, c, out.size() + 1));
        }
      }
    }
    return out;
  }
}

package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.svg.drawing.Drawing;

/**
 * Which sheets a template needs and where they lie.
 *
 * <p>"Sheet millimetres" have their origin at the lower left corner of the tile. They are what a
 * ruler shows on a true print; the print correction stands between them and page millimetres.
 */
record TemplatePlan(
    String part,
    Drawing drawing,
    double turnRad,
    TemplateSettings settings,
    Tiling tiling,
    boolean[][] used) {

  /** Lines of this layer of a drawing run on where there is paper anyway. */
  private static final String NEEDS_NO_PAPER = "stations";

  /** Where a drawing may lie on its sheets: shares of the room to spare left of it and above. */
  private static final double[][] SHIFTS = {
    {0, 0}, {1, 1}, {0, 1}, {1, 0}, {0.5, 0}, {0, 0.5}, {0.5, 1}, {1, 0.5}
  };

  /** From a drawing that was shifted to the end of its sheets, mm. */
  private static final double AIR_MM = 5;

  /**
   * A sheet in row {@code row} and column {@code column}, the {@code number}th used one, from 1.
   */
  record Sheet(int row, int column, int number) {
    String label() {
      return Tiling.label(row, column);
    }
  }

  static TemplatePlan of(String part, LaidOut laid, TemplateSettings settings) {
    List<Function<Envelope, TemplateSettings>> lies = lies(settings);
    Geometry ink = laid.ink().orElse(null);
    if (ink == null) {
      return lies.stream()
          .map(way -> fixed(part, laid, 0, way, box -> tiling(box, way.apply(box))))
          .reduce(TemplatePlan::fewest)
          .orElseThrow();
    }
    TemplatePlan best = null;
    for (Candidate c : candidates(ink, lies)) {
      LaidOut turned = laid.turned(c.way().turnRad());
      List<Function<Envelope, Tiling>> grids = new ArrayList<>();
      if (c.way().sheets() > 1 && !settings.paper().roll()) {
        c.way().tilings().forEach(tiling -> grids.add(tiling::over));
      }
      grids.add(box -> tiling(box, c.lies().apply(box))); // with its words in the middle
      for (Function<Envelope, Tiling> grid : grids) {
        if (best == null || best.sheets().size() > c.way().sheets()) {
          TemplatePlan plan = fixed(part, turned, c.way().turnRad(), c.lies(), grid);
          best = best == null ? plan : fewest(best, plan);
        }
      }
    }
    return best;
  }

  /** A way to lie on sheets that lie some way. */
  private record Candidate(
      LeastPaper.Way way, Function<Envelope, TemplateSettings> lies, double paperMm2) {}

  /** Returns how sheets may lie: as given, and turned by a quarter. */
  private static List<Function<Envelope, TemplateSettings>> lies(TemplateSettings settings) {
    if (settings.paper().roll()) {
      return List.of(
          box -> RollPieces.upright(box, settings), box -> RollPieces.turned(box, settings));
    }
    TemplateSettings asGiven = fed(settings);
    if (!settings.mayTurn()) {
      return List.of(box -> asGiven);
    }
    TemplateSettings turned = fed(settings.withPaper(settings.paper().turned(), false));
    return List.of(box -> asGiven, box -> turned);
  }

  /** Returns the best ways to lie as it is, and the best of all if that needs less paper. */
  private static List<Candidate> candidates(
      Geometry ink, List<Function<Envelope, TemplateSettings>> lies) {
    List<Candidate> out = new ArrayList<>();
    for (double turn : LeastPaper.turns(ink)) {
      Envelope box = LeastPaper.turned(ink, turn).getEnvelopeInternal();
      for (Function<Envelope, TemplateSettings> way : lies) {
        TemplateSettings s = way.apply(box);
        if (refusal(box, s).isPresent() && out.size() > 0) {
          continue;
        }
        LeastPaper.Way best = LeastPaper.best(ink, turn, s);
        out.add(new Candidate(best, way, best.sheets() * s.paper().areaMm2()));
      }
      if (out.stream().anyMatch(c -> c.way().sheets() == 1)) {
        break;
      }
    }
    Comparator<Candidate> less =
        Comparator.comparingInt((Candidate c) -> c.way().sheets())
            .thenComparingDouble(Candidate::paperMm2);
    // Words may have room on sheets that lie one way, and need one more if they lie the other.
    List<Candidate> worth = new ArrayList<>();
    for (Function<Envelope, TemplateSettings> way : lies) {
      out.stream()
          .filter(c -> c.lies() == way && c.way().turnRad() == 0)
          .min(less)
          .ifPresent(worth::add);
    }
    worth.sort(less);
    Candidate least = out.stream().min(less).orElseThrow();
    if (!worth.contains(least)) {
      worth.add(least);
    }
    return worth;
  }

  /** Returns the second only where it takes less paper. */
  private static TemplatePlan fewest(TemplatePlan one, TemplatePlan other) {
    int more = other.sheets().size() - one.sheets().size();
    return more < 0 || more == 0 && other.paperMm2() < one.paperMm2() ? other : one;
  }

  /**
   * Returns the same sheets with the drawing elsewhere on them, as far as they have room to spare:
   * to be asked one by one. They may turn out to be more.
   */
  List<Supplier<TemplatePlan>> shifted(LaidOut laid) {
    if (settings.paper().roll()) {
      return List.of();
    }
    LaidOut turned = laid.turned(turnRad);
    Envelope box =
        turned.ink().map(Geometry::getEnvelopeInternal).orElseGet(() -> drawing.boundsMm());
    double spareX = Tiling.spare(box.getWidth(), width(), settings.overlapMm());
    double spareY = Tiling.spare(box.getHeight(), height(), settings.overlapMm());
    List<Supplier<TemplatePlan>> all = new ArrayList<>();
    for (double[] share : SHIFTS) {
      Tiling grid =
          new Tiling(
              box,
              width(),
              height(),
              settings.overlapMm(),
              box.getMinX() - within(share[0], spareX),
              box.getMaxY() + within(share[1], spareY));
      all.add(() -> fixed(part, turned, turnRad, b -> settings, grid::over));
    }
    return all;
  }

  /** A share of some room, a little off both ends where it is large enough for that. */
  private static double within(double share, double room) {
    double air = Math.min(AIR_MM, room / 2);
    return Math.max(air, Math.min(room - air, share * room));
  }

  private double paperMm2() {
    return settings.paper().areaMm2();
  }

  /** Returns the settings with the correction as it falls on the sheet: turned where that is. */
  static TemplateSettings fed(TemplateSettings s) {
    return s.paper().isLandscape() ? s.withCorrection(s.correction().turned()) : s;
  }

  private static TemplatePlan fixed(
      String part,
      LaidOut laid,
      double turnRad,
      Function<Envelope, TemplateSettings> settings,
      Function<Envelope, Tiling> grid) {
    Drawing drawing = laid.on(grid);
    Drawing needing =
        new Drawing(
            "", drawing.layers().stream().filter(l -> !l.id().equals(NEEDS_NO_PAPER)).toList());
    Tiling tiling = grid.apply(needing.boundsMm());
    return new TemplatePlan(
        part, drawing, turnRad, settings.apply(needing.boundsMm()), tiling, tiling.used(needing));
  }

  /**
   * Returns the tiling, without a look at which of its sheets are needed.
   *
   * @throws IllegalArgumentException if it has more than {@link Tiling#MOST_TILES}
   */
  static Tiling tiling(Envelope box, TemplateSettings s) {
    return UsableSheet.tiling(box, s);
  }

  static Optional<String> refusal(Envelope box, TemplateSettings s) {
    return Tiling.refusal(box, UsableSheet.wideMm(s), UsableSheet.highMm(s), s.overlapMm());
  }

  double width() {
    return tiling.usableWidthMm();
  }

  double height() {
    return tiling.usableHeightMm();
  }

  /** Returns the placement from sheet to page millimetres. */
  Affine toPage() {
    return toPage(settings);
  }

  static Affine toPage(TemplateSettings s) {
    return Affine.scale(s.correction().sx(), s.correction().sy())
        .then(Affine.move(s.marginMm(), s.marginMm()));
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

package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.Labels;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Tiling;

/** Finds places for words on a template: on sheets it needs anyway, off lines, words and seams. */
final class WordPlaces {

  /** From one place that is tried for the block to the next. */
  private static final double PACE_MM = 12;

  private static final double AIR_MM = 8;

  /** Words farther from their place would not be taken for its own, mm; judgement. */
  private static final double FARTHEST_MM = 30;

  private final Geometry outline;
  private final PreparedGeometry prepared;
  private final PreparedGeometry edge;
  private final List<PreparedGeometry> inside;
  private final List<Envelope> taken;
  private final Function<Envelope, Tiling> sheets;
  private final Tiling tiling;
  private final boolean[][] used;

  /**
   * @param outline the line to cut, as it lies
   * @param inside other lines
   * @param drills crosses
   * @param taken where something stands already; places that are found are added
   * @param ink what needs paper
   * @param sheets tells how a drawing with these bounds is divided
   */
  WordPlaces(
      Geometry outline,
      List<Mark> inside,
      List<Mark> drills,
      List<Envelope> taken,
      Geometry ink,
      Function<Envelope, Tiling> sheets) {
    this.outline = outline;
    this.prepared = PreparedGeometryFactory.prepare(outline);
    this.edge = PreparedGeometryFactory.prepare(outline.getBoundary());
    this.inside =
        inside.stream()
            .filter(Mark.Shape.class::isInstance)
            .map(m -> PreparedGeometryFactory.prepare(((Mark.Shape) m).geometry()))
            .toList();
    this.taken = taken;
    this.sheets = sheets;
    this.tiling = sheets.apply(ink.getEnvelopeInternal());
    this.used =
        tiling.used(
            Drawing.of(
                "",
                new Layer(
                    "outline", "", List.of(new Mark.Shape("", outline, Style.wide(Tone.INK)))),
                new Layer("inside", "", inside),
                new Layer("drills", "", drills)));
  }

  /** Returns whether words are on a sheet that is needed anyway. */
  boolean isOnPaper(Mark.Words w) {
    return tiling.isOn(w.x(), w.y(), used);
  }

  /** Returns whether a box lies on no line, no words and no seam of a sheet that is needed. */
  boolean isFree(Envelope box) {
    return tiling.isClear(box, used) && onNothing(box);
  }

  /** Returns whether a box lies on no words and no seam of a sheet that is needed. */
  boolean isClear(Envelope box) {
    return tiling.isClear(box, used) && Labels.free(box, taken);
  }

  /** Takes places for what stands there. */
  void take(List<Envelope> boxes) {
    taken.addAll(boxes);
  }

  /** A place for words: which way, how far, and by which of their points. */
  private record Spot(double rad, double farMm, Anchor anchor) {}

  /** First the eight that are read best at each distance, then all round. */
  private static final List<Spot> SPOTS = spots();

  private static List<Spot> spots() {
    List<Spot> out = new ArrayList<>();
    for (double far = 0; far < FARTHEST_MM; far += 4) {
      for (int k = 0; k < 8; k++) {
        double a = turn(k, 8);
        out.add(
            new Spot(
                a,
                far,
                Math.abs(Math.cos(a)) < 0.1
                    ? Anchor.CENTRE
                    : Math.cos(a) > 0 ? Anchor.CENTRE_START : Anchor.CENTRE_END));
      }
    }
    for (double far = 0; far < FARTHEST_MM; far += 2) {
      for (int k = 0; k < 16; k++) {
        for (Anchor anchor : List.of(Anchor.CENTRE_START, Anchor.CENTRE_END, Anchor.CENTRE)) {
          out.add(new Spot(turn(k, 16), far, anchor));
        }
      }
    }
    return List.copyOf(out);
  }

  /** Ahead, then to either side in turn until behind. */
  private static double turn(int k, int of) {
    return (k % 2 == 0 ? 1 : -1) * ((k + 1) / 2) * 2 * Math.PI / of;
  }

  /** Returns words that stand beside the first of some places where they can, and takes it. */
  Mark.Words beside(
      String of, String text, List<PointMm> places, double clearMm, double size, Tone tone) {
    Mark.Words first = null;
    boolean onPaper = false;
    for (PointMm at : places) {
      for (Spot spot : SPOTS) {
        double c = Math.cos(spot.rad());
        double s = Math.sin(spot.rad());
        double far = clearMm + spot.farMm();
        double up = Math.abs(s) > 0.1 ? Math.signum(s) * size : 0;
        Mark.Words w =
            new Mark.Words(
                of, text, at.x() + far * c, at.z() + far * s + up, size, 0, spot.anchor(), tone);
        Envelope box = Labels.box(w, 1);
        if (isFree(box)) {
          taken.add(box);
          return w;
        }
        if (first == null || !onPaper && tiling.isClear(box, used)) {
          first = w;
          onPaper = tiling.isClear(box, used);
        }
      }
    }
    taken.add(Labels.box(first, 1));
    return first;
  }

  private boolean onNothing(Envelope box) {
    Geometry area = outline.getFactory().toGeometry(box);
    return clear(box) && !edge.intersects(area);
  }

  /**
   * Returns where the block of words goes: on the piece, else beside it, else on any sheet that is
   * needed anyway, if anywhere.
   */
  Optional<PointMm> room(List<Mark> marks) {
    Envelope block = alone(marks).paperBoundsMm();
    Envelope box = outline.getEnvelopeInternal();
    PointMm on = search(box, block);
    if (on != null) {
      return Optional.of(on);
    }
    Envelope all = new Envelope();
    for (int r = 0; r < used.length; r++) {
      for (int c = 0; c < used[r].length; c++) {
        if (used[r][c]) {
          all.expandToInclude(tiling.tile(r, c));
        }
      }
    }
    return Optional.ofNullable(nearest(all, block, box));
  }

  private static Drawing alone(List<Mark> marks) {
    return Drawing.of("", new Layer("words", "Words", marks));
  }

  private PointMm search(Envelope box, Envelope block) {
    for (double z = box.getMaxY() - 4; z + block.getMinY() > box.getMinY(); z -= PACE_MM) {
      for (double x = box.getMinX() + 4; x + block.getMaxX() < box.getMaxX(); x += PACE_MM) {
        Envelope spot = at(block, x, z);
        spot.expandBy(2);
        if (tiling.isClear(spot, used) && free(spot, true)) {
          return new PointMm(x, z);
        }
      }
    }
    return null;
  }

  /** Of all places within a box the one that makes the piece with its words least large. */
  private PointMm nearest(Envelope box, Envelope block, Envelope piece) {
    PointMm best = null;
    double least = Double.POSITIVE_INFINITY;
    double pace = PACE_MM / 2;
    for (double z = box.getMaxY() - 2; z + block.getMinY() > box.getMinY(); z -= pace) {
      for (double x = box.getMinX() + 2; x + block.getMaxX() < box.getMaxX(); x += pace) {
        Envelope spot = at(block, x, z);
        Envelope both = new Envelope(piece);
        both.expandToInclude(spot);
        spot.expandBy(2);
        if (both.getArea() < least && tiling.isClear(spot, used) && free(spot, false)) {
          least = both.getArea();
          best = new PointMm(x, z);
        }
      }
    }
    return best;
  }

  /**
   * Returns a place for the block below everything, where it lies on one sheet.
   *
   * @param bounds of everything else
   */
  PointMm below(List<Mark> marks, Envelope bounds) {
    Drawing words = alone(marks);
    Envelope block = words.paperBoundsMm();
    Envelope box = outline.getEnvelopeInternal();
    double top = bounds.getMinY() - AIR_MM;
    double last = Math.max(box.getMinX(), box.getMaxX() - block.getMaxX());
    for (double down = 0; down < tiling.usableHeightMm(); down += PACE_MM / 2) {
      for (double x = box.getMinX(); x <= last; x += PACE_MM / 2) {
        Envelope spot = at(block, x, top - down);
        Envelope all = new Envelope(bounds);
        all.expandToInclude(at(words.boundsMm(), x, top - down));
        if (sheets.apply(all).isClear(spot)) {
          return new PointMm(x, top - down);
        }
      }
    }
    return new PointMm(box.getMinX(), top);
  }

  private static Envelope at(Envelope block, double x, double z) {
    return new Envelope(
        x + block.getMinX(), x + block.getMaxX(), z + block.getMinY(), z + block.getMaxY());
  }

  private boolean free(Envelope spot, boolean onPiece) {
    Geometry area = outline.getFactory().toGeometry(spot);
    if (!clear(spot)) {
      return false;
    }
    return onPiece ? prepared.contains(area) : !edge.intersects(area);
  }

  private boolean clear(Envelope spot) {
    if (!Labels.free(spot, taken)) {
      return false;
    }
    Geometry area = outline.getFactory().toGeometry(spot);
    return inside.stream().noneMatch(line -> line.intersects(area));
  }
}

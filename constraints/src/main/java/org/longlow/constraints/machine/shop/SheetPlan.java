package org.longlow.constraints.machine.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.longlow.constraints.machine.Values;

/**
 * Where rectangles lie on sheets, so that a saw that cuts from edge to edge can part them.
 *
 * <p>Each piece goes into a corner of a free rectangle, which is cut in two beside it; what goes
 * first, into which of them, and which way the cut runs is tried in a few ways and the plan with
 * fewest sheets is taken, of these the one that leaves most of its last sheet. That is a heuristic:
 * beside it stands what no plan goes below, by area and by pieces of which no two lie on one sheet.
 * As with bars, pieces larger by a kerf fill a sheet larger by a kerf.
 *
 * @param longMm of a sheet, along its grain, mm
 * @param wideMm of a sheet, mm
 * @param kerfMm what a cut takes away, mm
 * @param sheets what lies on each
 * @param tooLarge pieces that are larger than a sheet
 * @param leastSheets no plan for the others needs fewer
 */
public record SheetPlan(
    double longMm,
    double wideMm,
    double kerfMm,
    List<Sheet> sheets,
    List<Integer> tooLarge,
    int leastSheets) {

  /** From so many pieces on one way is tried only. */
  private static final int MANY = 400;

  /** Lengths nearer than this are the same, mm. */
  private static final double SAME_MM = 1e-6;

  public SheetPlan {
    sheets = List.copyOf(sheets);
    tooLarge = List.copyOf(tooLarge);
  }

  /**
   * A piece.
   *
   * @param longMm along its grain, if it has one, mm
   * @param wideMm mm
   * @param mayTurn whether it may lie across the sheet
   */
  public record Piece(double longMm, double wideMm, boolean mayTurn) {
    public Piece {
      Values.positive("length of a piece mm", longMm);
      Values.positive("width of a piece mm", wideMm);
    }

    private double area() {
      return longMm * wideMm;
    }
  }

  /**
   * Where a piece lies.
   *
   * @param piece its number in the list given, from 0
   * @param alongMm its lower left corner, along the sheet, mm
   * @param acrossMm likewise, across the sheet, mm
   * @param turned whether its length lies across the sheet
   */
  public record Laid(int piece, double alongMm, double acrossMm, boolean turned) {}

  /** One sheet. */
  public record Sheet(List<Laid> laid) {
    public Sheet {
      laid = List.copyOf(laid);
    }
  }

  /** Which piece is laid first. */
  private static final List<Comparator<Piece>> ORDERS =
      List.of(
          Comparator.comparingDouble(p -> -p.area()),
          Comparator.comparingDouble(p -> -Math.max(p.longMm, p.wideMm)),
          Comparator.comparingDouble(p -> -Math.min(p.longMm, p.wideMm)),
          Comparator.comparingDouble(p -> -(p.longMm + p.wideMm)));

  /** How a free rectangle is cut beside a piece. */
  private enum Split {
    /** So that the larger rest is as large as can be. */
    LARGEST_REST,
    ALONG,
    ACROSS
  }

  /** A free rectangle of a sheet. */
  private record Free(int sheet, double x, double y, double w, double h) {}

  /**
   * Returns a plan.
   *
   * @param longMm of a sheet, along its grain, mm, more than 0
   * @param wideMm of a sheet, mm, more than 0
   * @param kerfMm what a cut takes away, mm, 0 or more
   */
  public static SheetPlan of(List<Piece> pieces, double longMm, double wideMm, double kerfMm) {
    Values.positive("sheet length mm", longMm);
    Values.positive("sheet width mm", wideMm);
    Values.notNegative("kerf mm", kerfMm);
    double w = longMm + kerfMm;
    double h = wideMm + kerfMm;
    List<Piece> larger =
        pieces.stream()
            .map(p -> new Piece(p.longMm + kerfMm, p.wideMm + kerfMm, p.mayTurn))
            .toList();
    List<Integer> fitting =
        IntStream.range(0, pieces.size())
            .filter(i -> fits(larger.get(i), w, h, false) || fits(larger.get(i), w, h, true))
            .boxed()
            .toList();
    Set<Integer> fit = new HashSet<>(fitting);
    List<Integer> tooLarge =
        IntStream.range(0, pieces.size()).boxed().filter(i -> !fit.contains(i)).toList();
    Laying best = null;
    for (Comparator<Piece> order : ORDERS) {
      List<Integer> first =
          fitting.stream().sorted(Comparator.comparing(larger::get, order)).toList();
      for (Split split : Split.values()) {
        Laying laying = new Laying(larger, w, h, split);
        first.forEach(laying::lay);
        if (best == null || laying.isBetter(best)) {
          best = laying;
        }
        if (fitting.size() > MANY) {
          break;
        }
      }
      if (fitting.size() > MANY) {
        break;
      }
    }
    List<Sheet> sheets = best == null ? List.of() : best.sheets.stream().map(Sheet::new).toList();
    return new SheetPlan(longMm, wideMm, kerfMm, sheets, tooLarge, least(fitting, larger, w, h));
  }

  private static boolean fits(Piece p, double w, double h, boolean turned) {
    return (!turned || p.mayTurn)
        && (turned ? p.wideMm : p.longMm) <= w + SAME_MM
        && (turned ? p.longMm : p.wideMm) <= h + SAME_MM;
  }

  private static int least(List<Integer> fitting, List<Piece> larger, double w, double h) {
    double area = fitting.stream().mapToDouble(i -> larger.get(i).area()).sum();
    // two that are longer than half and wider than half, however they lie, share no sheet
    long alone =
        fitting.stream()
            .map(larger::get)
            .filter(
                p -> {
                  boolean lies = fits(p, w, h, false);
                  boolean turns = fits(p, w, h, true);
                  double x = Math.min(lies ? p.longMm : p.wideMm, turns ? p.wideMm : p.longMm);
                  double y = Math.min(lies ? p.wideMm : p.longMm, turns ? p.longMm : p.wideMm);
                  return x > w / 2 + SAME_MM && y > h / 2 + SAME_MM;
                })
            .count();
    return (int) Math.max(alone, Math.ceil(area / (w * h) - 1e-9));
  }

  /** Pieces being laid in one of the ways. */
  private static final class Laying {
    private final List<Piece> pieces;
    private final double w;
    private final double h;
    private final Split split;
    private final List<List<Laid>> sheets = new ArrayList<>();
    private final List<Free> free = new ArrayList<>();

    Laying(List<Piece> pieces, double w, double h, Split split) {
      this.pieces = pieces;
      this.w = w;
      this.h = h;
      this.split = split;
    }

    /** Lays a piece where it leaves least beside it on the first sheet that has room. */
    void lay(int number) {
      Piece p = pieces.get(number);
      Free best = null;
      boolean turned = false;
      double least = Double.POSITIVE_INFINITY;
      for (Free f : free) {
        if (best != null && f.sheet > best.sheet) {
          break;
        }
        for (boolean turn : new boolean[] {false, true}) {
          double beside =
              Math.min(f.w - (turn ? p.wideMm : p.longMm), f.h - (turn ? p.longMm : p.wideMm));
          if (fits(p, f.w, f.h, turn) && beside < least - SAME_MM) {
            best = f;
            turned = turn;
            least = beside;
          }
        }
      }
      if (best == null) {
        best = new Free(sheets.size(), 0, 0, w, h);
        turned = !fits(p, w, h, false);
        sheets.add(new ArrayList<>());
      }
      free.remove(best);
      sheets.get(best.sheet).add(new Laid(number, best.x, best.y, turned));
      cut(best, turned ? p.wideMm : p.longMm, turned ? p.longMm : p.wideMm);
      free.sort(Comparator.comparingInt(Free::sheet));
    }

    private void cut(Free f, double pw, double ph) {
      double right = f.w - pw;
      double above = f.h - ph;
      boolean along =
          switch (split) {
            case ALONG -> true;
            case ACROSS -> false;
            case LARGEST_REST ->
                Math.max(f.w * above, right * ph) >= Math.max(pw * above, right * f.h);
          };
      add(new Free(f.sheet, f.x + pw, f.y, right, along ? ph : f.h));
      add(new Free(f.sheet, f.x, f.y + ph, along ? f.w : pw, above));
    }

    private void add(Free f) {
      if (f.w > SAME_MM && f.h > SAME_MM) {
        free.add(f);
      }
    }

    /** The largest free rectangle of the last sheet. */
    private double rest() {
      return free.stream()
          .filter(f -> f.sheet == sheets.size() - 1)
          .mapToDouble(f -> f.w * f.h)
          .max()
          .orElse(0);
    }

    boolean isBetter(Laying other) {
      return sheets.size() != other.sheets.size()
          ? sheets.size() < other.sheets.size()
          : rest() > other.rest() + SAME_MM;
    }
  }
}

package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Opening;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.rider.geom.PointMm;

/**
 * Cowls and screens as sheet: a strip along the drawn edge over the whole width, and, unless it is
 * open, two sides. What lies inside a cowl touches nothing as long as it stays off both.
 */
public final class Shells {

  private static final Memo<Bent, Sheet> SHEETS = new Memo<>(128, Shells::sheet);

  private Shells() {}

  /** A sheet as drawn: its edge, thickness in mm, whether it closes on itself, and its holes. */
  private record Bent(
      List<PointMm> edge, double thicknessMm, boolean closed, List<Opening> holes) {}

  /** Its strip, the area within or null, and both together. */
  private record Sheet(Geometry strip, Geometry area, Geometry both) {}

  private static Sheet sheet(Bent bent) {
    if (!bent.closed() && bent.edge().size() <= 2) {
      Geometry strip = Curves.strip(bent.edge(), bent.thicknessMm());
      return new Sheet(strip, null, strip);
    }
    Geometry area = Curves.polygon(bent.edge());
    Geometry strip =
        bent.closed()
            ? area.difference(area.buffer(-bent.thicknessMm()))
            : Curves.strip(bent.edge(), bent.thicknessMm());
    Geometry sides = Holes.cutFrom(area, bent.holes());
    return new Sheet(strip, sides, sides.union(strip));
  }

  /**
   * What a shell is cut from; the sides lie outside the edge strip, which fits between them.
   *
   * @param strips how many edge strips, one for each breadth
   * @param stripLengthMm length of a strip along the middle of the sheet
   * @param stripWidthsMm width of each, across the machine
   * @param sides how many sides, as many for the left as for the right; 0 where it is open
   * @param side the outline of a side; empty where it is open
   * @param thicknessMm of the sheet
   */
  public record Pieces(
      int strips,
      double stripLengthMm,
      List<Double> stripWidthsMm,
      int sides,
      Optional<Geometry> side,
      double thicknessMm) {

    public Pieces {
      stripWidthsMm = List.copyOf(stripWidthsMm);
    }

    /** Returns the volume of them all, mm³. */
    double volumeMm3() {
      double width = stripWidthsMm.stream().mapToDouble(Double::doubleValue).sum();
      double ofSides = side.map(Geometry::getArea).orElse(0.0) * sides;
      return (stripLengthMm * width + ofSides) * thicknessMm;
    }
  }

  /** Returns what {@code shell} is cut from. */
  public static Pieces pieces(ShellPart shell, Places places) {
    return pieces(shell, sheet(shell, places), places);
  }

  private static Pieces pieces(ShellPart shell, Sheet sheet, Places places) {
    double t = places.value(shell.thickness());
    List<Double> widths = new ArrayList<>();
    int sides = 0;
    for (Interval i : Spreads.of(shell.base(), places)) {
      boolean closed = sided(shell, sheet, i, t);
      sides += closed ? 2 : 0;
      widths.add(closed ? i.length() - 2 * t : i.length());
    }
    return new Pieces(
        widths.size(),
        sheet.strip().getArea() / t,
        widths,
        sides,
        Optional.ofNullable(sides > 0 ? sheet.area() : null),
        t);
  }

  private static boolean sided(ShellPart shell, Sheet sheet, Interval across, double t) {
    return !shell.open() && sheet.area() != null && across.length() > 2 * t;
  }

  /** Its holes go through the sides, not through the strip that is bent round them. */
  private static Sheet sheet(ShellPart shell, Places places) {
    List<PointMm> edge = Outlines.points(shell.frame(), shell.outline(), places);
    double t = places.value(shell.thickness());
    List<Opening> holes =
        Holes.of(shell.frame(), shell.outline(), places).stream()
            .map(Holes.Placed::opening)
            .toList();
    return SHEETS.of(new Bent(List.copyOf(edge), t, shell.outline().closed(), holes));
  }

  static PartShape of(ShellPart shell, Places places) {
    double t = places.value(shell.thickness());
    List<Interval> across = Spreads.of(shell.base(), places);
    Sheet sheet = sheet(shell, places);
    Geometry strip = sheet.strip();
    Geometry area = sheet.area();
    List<Prism> prisms = new ArrayList<>();
    for (Interval i : across) {
      prisms.add(new Prism(strip, i));
      if (sided(shell, sheet, i, t)) {
        prisms.add(new Prism(area, new Interval(i.to() - t, i.to())));
        prisms.add(new Prism(area, new Interval(i.from(), i.from() + t)));
      }
    }
    Geometry outline = !shell.open() && area != null ? sheet.both() : strip;
    if (!shell.breadth().isEven(shell.outline()) && shell.base().spread().isPresent()) {
      return shaped(shell, outline, places);
    }
    return new PartShape(
        shell,
        outline,
        prisms,
        Filled.mass(shell, pieces(shell, sheet, places).volumeMm3(), places),
        Filled.centre(outline),
        Spreads.middle(across));
  }

  /** A sheet whose breadth varies. */
  private static PartShape shaped(ShellPart shell, Geometry outline, Places places) {
    Shaped shaped =
        Shaped.sheet(
            shell.frame(),
            shell.outline(),
            shell.base().spread().get(),
            shell.breadth(),
            places.value(shell.thickness()),
            !shell.open(),
            places);
    return new PartShape(
        shell,
        outline,
        shaped.prisms(),
        Filled.mass(shell, shaped.bulk().volume(), places),
        shaped.centre(),
        shaped.centreYMm(),
        Optional.of(shaped.bulk()));
  }
}

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

  /** Strip and area together, which an open shell does not ask for. */
  private static final ByThing<Sheet, Geometry> BOTH =
      new ByThing<>(128, sheet -> sheet.area.union(sheet.strip));

  private Shells() {}

  /** A sheet as drawn: its edge, thickness in mm, whether it closes on itself, and its holes. */
  private record Bent(
      List<PointMm> edge, double thicknessMm, boolean closed, List<Opening> holes) {}

  /** Its strip, and the area within or null. */
  private record Sheet(Geometry strip, Geometry area) {}

  private static Sheet sheet(Bent bent) {
    if (!bent.closed() && bent.edge().size() <= 2) {
      Geometry strip = Curves.strip(bent.edge(), bent.thicknessMm());
      return new Sheet(strip, null);
    }
    Geometry area = Curves.polygon(bent.edge());
    Geometry strip =
        bent.closed()
            ? area.difference(area.buffer(-bent.thicknessMm()))
            : Curves.strip(bent.edge(), bent.thicknessMm());
    return new Sheet(strip, Holes.cutFrom(area, bent.holes()));
  }

  /**
   * Returns the outline of a side of {@code shell} in the elevation, which lies outside the edge
   * strip, or of a panel; empty where it is open.
   */
  public static Optional<Geometry> side(ShellPart shell, Places places) {
    return Skin.of(shell, places)
        .filter(s -> s.sided() || s.panel())
        .map(s -> sheet(shell, places).area());
  }

  /** Returns the volume of all its pieces where it is as broad everywhere, mm³. */
  static double volumeMm3(ShellPart shell, Places places) {
    double t = places.value(shell.thickness());
    Sheet sheet = sheet(shell, places);
    double volume = 0;
    boolean sided = isSided(shell, places);
    boolean panel = isPanel(shell, places);
    for (Interval i : Spreads.of(shell.base(), places)) {
      volume +=
          panel
              ? t * sheet.area().getArea()
              : sheet.strip().getArea() * (i.length() - (sided ? 2 * t : 0))
                  + (sided ? 2 * t * sheet.area().getArea() : 0);
    }
    return volume;
  }

  private static boolean isSided(ShellPart shell, Places places) {
    return Skin.of(shell, places).filter(Skin::sided).isPresent();
  }

  private static boolean isPanel(ShellPart shell, Places places) {
    return Skin.of(shell, places).filter(Skin::panel).isPresent();
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
    boolean sided = isSided(shell, places);
    boolean panel = isPanel(shell, places);
    List<Prism> prisms = new ArrayList<>();
    for (Interval i : across) {
      prisms.add(new Prism(panel ? area : strip, i));
      if (sided) {
        prisms.add(new Prism(area, new Interval(i.to() - t, i.to())));
        prisms.add(new Prism(area, new Interval(i.from(), i.from() + t)));
      }
    }
    Geometry outline = !shell.open() && area != null ? BOTH.of(sheet) : strip;
    if (!shell.breadth().isEven(shell.outline()) && shell.base().spread().isPresent()) {
      return shaped(shell, outline, places);
    }
    return new PartShape(
        shell,
        outline,
        prisms,
        FillMass.mass(shell, volumeMm3(shell, places), places),
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
            isSided(shell, places),
            places);
    return new PartShape(
        shell,
        outline,
        shaped.prisms(),
        FillMass.mass(shell, shaped.bulk().volume(), places),
        shaped.centre(),
        shaped.centreYMm(),
        Optional.of(shaped.bulk()));
  }
}

package org.longlow.constraints.shape;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.SolidPart;

/**
 * A part that is made of sheet: a cowl or screen, and a tank or silencer of one body.
 *
 * @param part drawn by its outer face; by the middle of its sheet where its line does not close
 * @param thicknessMm of the sheet; 0 where nothing says it
 * @param sided whether it has sides besides what runs along its edge
 * @param folded whether its corners are folded; other sheet is laid up or joined there
 * @param panel whether it is one flat sheet, cut to its outline
 */
public record Skin(
    Part.Outlined part, double thicknessMm, boolean sided, boolean folded, boolean panel) {

  /**
   * What is no wider than so many times its sheet has less room within than sheet around it, and is
   * made as one; judgement.
   */
  private static final double PANEL_SHEETS = 4;

  private static final Set<Material> FOLDED =
      EnumSet.of(
          Material.STEEL,
          Material.STAINLESS,
          Material.ALUMINIUM,
          Material.TITANIUM,
          Material.ABS,
          Material.POLYCARBONATE);

  private static final Set<SolidPart.Kind> OF_SHEET =
      EnumSet.of(SolidPart.Kind.TANK, SolidPart.Kind.SILENCER);

  /** Returns the sheet of a part; empty for one that is not made of sheet. */
  public static Optional<Skin> of(Part part, Places places) {
    if (part.base().spread().isEmpty()) {
      return Optional.empty();
    }
    if (part instanceof ShellPart shell) {
      double t = places.value(shell.thickness());
      boolean panel = isPanel(shell, t, places);
      boolean sided = !shell.open() && hasArea(shell) && !panel && !isThin(shell, t, places);
      return Optional.of(new Skin(shell, t, sided, folded(shell), panel));
    }
    if (part instanceof SolidPart solid
        && OF_SHEET.contains(solid.type())
        && solid.bodies().isEmpty()
        && solid.outline().closed()) {
      double t = solid.formers().skin().map(places::value).orElse(0.0);
      return Optional.of(new Skin(solid, t, true, folded(solid), false));
    }
    return Optional.empty();
  }

  /** Returns whether it is as broad everywhere. */
  public boolean even() {
    return part.breadth().isEven(part.outline());
  }

  /** Returns how many bodies there are of it. */
  public int bodies() {
    return part.paired() ? 2 : 1;
  }

  /** Returns its body, as finely as it is cut. */
  Loft loft(Places places) {
    return Shaped.loft(
        part.frame(),
        part.outline(),
        part.base().spread().orElseThrow(),
        part.breadth(),
        Fineness.SHOP,
        places);
  }

  private static boolean folded(Part part) {
    return Material.named(part.base().material()).filter(FOLDED::contains).isPresent();
  }

  /** Returns whether the line of a shell has an area, closed by its chord where it is open. */
  static boolean hasArea(ShellPart shell) {
    return shell.outline().closed() || shell.outline().count() > 2;
  }

  private static boolean isPanel(ShellPart shell, double thicknessMm, Places places) {
    return !shell.open()
        && shell.outline().closed()
        && isWithin(PANEL_SHEETS, shell, thicknessMm, places);
  }

  /** Returns whether two sides of a shell would be all of it. */
  private static boolean isThin(ShellPart shell, double thicknessMm, Places places) {
    return isWithin(2, shell, thicknessMm, places);
  }

  private static boolean isWithin(
      double sheets, ShellPart shell, double thicknessMm, Places places) {
    return shell.breadth().isEven(shell.outline())
        && Spreads.one(shell.base().spread().orElseThrow(), places).length()
            <= sheets * thicknessMm;
  }
}

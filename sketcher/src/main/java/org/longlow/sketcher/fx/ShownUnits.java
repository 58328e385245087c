package org.longlow.sketcher.fx;

import java.util.List;
import javafx.scene.input.KeyEvent;
import org.longlow.constraints.document.Change;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.Target;

/** The units in which the layout on the card is shown; the layout itself keeps them. */
final class ShownUnits {

  private ShownUnits() {}

  /** Returns them; mm where there is no layout. */
  static Units of(Desk desk) {
    return desk.shown().map(BoardState::units).orElse(Units.MM);
  }

  /** Shows inches where mm were shown, and the other way round; a step that can be taken back. */
  static void change(Desk desk) {
    if (desk.shown().isEmpty()) {
      return;
    }
    Units other = of(desk) == Units.MM ? Units.IN : Units.MM;
    desk.edit(
        new Edit(
            "show " + (other == Units.IN ? "inches" : "millimetres"),
            layout -> Change.set(layout, other, "units")),
        new Target.OfField(List.of("units"), "units"),
        other.word());
  }

  /**
   * Returns how far an arrow key moves, mm: a step, with Shift a large one, with Alt a fine one.
   */
  static double stepMm(KeyEvent e, Units units) {
    return stepMm(units, e.isShiftDown(), e.isAltDown());
  }

  /** As {@link #stepMm(KeyEvent, Units)}. */
  static double stepMm(Units units, boolean large, boolean fine) {
    if (units == Units.IN) {
      return Units.INCH_MM * (large ? 0.5 : fine ? 0.01 : 1.0 / 16);
    }
    return large ? 10 : fine ? 0.1 : 1;
  }
}

package org.longlow.constraints.stand;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.shape.Places;

/**
 * How hard the machine slows down where it is asked to brake: as hard as that, and no harder than
 * its tyres hold and its rear wheel stays on the road.
 *
 * @param g in that of gravity, &gt;= 0
 * @param mostG how hard it can at most, in that of gravity, &gt;= 0
 * @param most what keeps it from braking as hard as asked, in words; empty where nothing does
 */
public record Braking(double g, double mostG, String most) {

  /** Returns that of the machine as it stands. */
  public static Braking of(Layout layout, Standing at) {
    return of(layout, at.places(), Optional.ofNullable(at.load()).map(Load::axles));
  }

  /**
   * Returns that of the machine with somebody aboard and as few others as may be; where it does not
   * stand on both wheels with them, tyres alone limit it.
   */
  public static Braking under(
      Layout layout, Places places, Occupant who, List<Standing> standings) {
    return Standing.carrying(who, standings)
        .map(s -> of(layout, s))
        .orElseGet(() -> of(layout, places, Optional.empty()));
  }

  private static Braking of(Layout layout, Places places, Optional<AxleLoads> axles) {
    double asked = places.value(layout.demands().limit(Demands.Key.BRAKING));
    double grip = places.value(layout.demands().limit(Demands.Key.GRIP));
    double lift =
        axles
            .filter(a -> a.frontN() > 0 && a.rearN() > 0)
            .map(AxleLoads::brakeLiftG)
            .orElse(Double.POSITIVE_INFINITY);
    double most = Math.max(0, Math.min(grip, lift));
    return asked <= most
        ? new Braking(Math.max(0, asked), most, "")
        : new Braking(most, most, lift < grip ? "the rear wheel lifts" : "both tyres slide");
  }

  /** Returns what follows where it brakes less hard than asked, such as {@code , where …,}. */
  public String where() {
    return most.isEmpty() ? "" : ", where " + most + ",";
  }
}

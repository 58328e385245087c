package org.longlow.constraints.figure;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.machine.chassis.MassPoint;

/** The figure {@code axle-loads}: common centre, wheel loads and lift limits. */
public final class AxleLoadsFigure {

  /**
   * A mass.
   *
   * @param massKg &gt;= 0
   * @param xMm forward of the rear contact
   * @param zMm height
   */
  public record Mass(Double massKg, Double xMm, Double zMm) {}

  /**
   * Input.
   *
   * @param wheelbaseMm &gt; 0
   * @param masses at least one, together above 0 kg
   */
  public record Input(Double wheelbaseMm, List<Mass> masses) {}

  /**
   * Output.
   *
   * @param frontShare fraction of 1
   * @param brakeLiftG braking at which the rear wheel lifts; null if the centre is not above the
   *     road
   * @param driveLiftG acceleration at which the front wheel lifts; null likewise
   */
  public record Output(
      double massKg,
      double cgXMm,
      double cgZMm,
      double frontN,
      double rearN,
      double frontShare,
      Double brakeLiftG,
      Double driveLiftG) {}

  private AxleLoadsFigure() {}

  public static Output answer(Input input) {
    Needs.input(input);
    Needs needs = new Needs();
    double wheelbase = needs.positive("wheelbaseMm", input.wheelbaseMm());
    List<MassPoint> masses = new ArrayList<>();
    if (needs.there("masses", input.masses(), "a list of objects with massKg, xMm, zMm")) {
      double total = 0;
      for (int i = 0; i < input.masses().size(); i++) {
        String name = "masses[" + i + "]";
        Mass mass = input.masses().get(i);
        if (!needs.there(name, mass, "an object with massKg, xMm, zMm")) {
          continue;
        }
        double kg = needs.notNegative(name + ".massKg", mass.massKg());
        double x = needs.finite(name + ".xMm", mass.xMm());
        double z = needs.finite(name + ".zMm", mass.zMm());
        total += kg;
        if (!Double.isNaN(kg + x + z)) {
          masses.add(new MassPoint(kg, x, z));
        }
      }
      if (total == 0) {
        needs.add(new FigureFault("masses", "0 kg in all", "masses that add up to more than 0 kg"));
      }
    }
    needs.settle();
    AxleLoads loads = AxleLoads.of(wheelbase, masses);
    return new Output(
        loads.total().massKg(),
        loads.total().at().x(),
        loads.total().at().z(),
        loads.frontN(),
        loads.rearN(),
        loads.frontShare(),
        finiteOrNull(loads.brakeLiftG()),
        finiteOrNull(loads.driveLiftG()));
  }

  private static Double finiteOrNull(double value) {
    return Double.isFinite(value) ? value : null;
  }
}

package org.longlow.constraints.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.longlow.constraints.machine.ride.WhippleModel;
import org.longlow.constraints.machine.ride.WhippleParameters;
import org.longlow.rider.geom.OutOfRange;

/**
 * The figure {@code stability}: matrices, eigenvalues and stable speeds of the linear bicycle
 * model.
 *
 * <p>Component names are the published symbols (Meijaard et al. 2007), SI units, z down: heights
 * enter negative, {@code lambda} is in rad.
 */
public final class StabilityFigure {

  /** Gravity when none is given, N/kg: the value of the published benchmark. */
  public static final double DEFAULT_GRAVITY = 9.81;

  /**
   * Input.
   *
   * @param g gravity, N/kg; 9.81 if not given
   * @param I_Byy not used by the linear equations; may be left out
   * @param I_Hyy not used by the linear equations; may be left out
   * @param speedsMs speeds for eigenvalues, each &gt;= 0; none if not given
   */
  public record Input(
      Double w,
      Double c,
      Double lambda,
      Double g,
      Double r_R,
      Double m_R,
      Double I_Rxx,
      Double I_Ryy,
      Double x_B,
      Double z_B,
      Double m_B,
      Double I_Bxx,
      Double I_Bxz,
      Double I_Byy,
      Double I_Bzz,
      Double x_H,
      Double z_H,
      Double m_H,
      Double I_Hxx,
      Double I_Hxz,
      Double I_Hyy,
      Double I_Hzz,
      Double r_F,
      Double m_F,
      Double I_Fxx,
      Double I_Fyy,
      List<Double> speedsMs) {}

  /** A root, 1/s. */
  public record Root(double re, double im) {}

  /** The four roots at a speed, largest real part first. */
  public record Roots(double speedMs, List<Root> values) {}

  /**
   * Output; matrices row by row.
   *
   * @param weaveSpeedMs where a growing weave settles; null if nowhere
   * @param capsizeSpeedMs above it the machine slowly falls over; null if there is none
   */
  public record Output(
      List<List<Double>> M,
      List<List<Double>> C1,
      List<List<Double>> K0,
      List<List<Double>> K2,
      Double weaveSpeedMs,
      Double capsizeSpeedMs,
      List<Roots> eigenvalues) {}

  private StabilityFigure() {}

  public static Output answer(Input input) {
    Needs.input(input);
    Needs needs = new Needs();
    WhippleParameters parameters = parameters(needs, input);
    List<Double> speeds = new ArrayList<>();
    if (input.speedsMs() != null) {
      for (int i = 0; i < input.speedsMs().size(); i++) {
        speeds.add(needs.notNegative("speedsMs[" + i + "]", input.speedsMs().get(i)));
      }
    }
    needs.settle();
    WhippleModel model;
    List<Roots> roots;
    try {
      WhippleModel made = parameters.model();
      roots = speeds.stream().map(v -> roots(made, v)).toList();
      model = made;
    } catch (OutOfRange | ArithmeticException e) {
      needs.add(new FigureFault("masses and inertias", "not those of a machine", e.getMessage()));
      throw new FigureFaults(needs.faults());
    }
    return new Output(
        model.m(),
        model.c1(),
        model.k0(),
        model.k2(),
        orNull(model.weaveSpeedMs()),
        orNull(model.capsizeSpeedMs()),
        roots);
  }

  private static Roots roots(WhippleModel model, double speedMs) {
    return new Roots(
        speedMs, model.eigenvalues(speedMs).stream().map(e -> new Root(e.re(), e.im())).toList());
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? value.getAsDouble() : null;
  }

  /** Returns null if anything is wrong; the faults are then in {@code needs}. */
  private static WhippleParameters parameters(Needs needs, Input in) {
    int before = needs.faults().size();
    double w = needs.positive("w", in.w());
    double c = needs.finite("c", in.c());
    double lambda = needs.within("lambda", in.lambda(), -1.48, 1.48);
    double g = in.g() == null ? DEFAULT_GRAVITY : needs.positive("g", in.g());
    double[] rear = {
      needs.positive("r_R", in.r_R()),
      needs.notNegative("m_R", in.m_R()),
      needs.notNegative("I_Rxx", in.I_Rxx()),
      needs.notNegative("I_Ryy", in.I_Ryy())
    };
    double[] b = {
      needs.finite("x_B", in.x_B()),
      needs.finite("z_B", in.z_B()),
      needs.notNegative("m_B", in.m_B()),
      needs.notNegative("I_Bxx", in.I_Bxx()),
      needs.finite("I_Bxz", in.I_Bxz()),
      needs.notNegative("I_Bzz", in.I_Bzz())
    };
    double[] h = {
      needs.finite("x_H", in.x_H()),
      needs.finite("z_H", in.z_H()),
      needs.notNegative("m_H", in.m_H()),
      needs.notNegative("I_Hxx", in.I_Hxx()),
      needs.finite("I_Hxz", in.I_Hxz()),
      needs.notNegative("I_Hzz", in.I_Hzz())
    };
    double[] front = {
      needs.positive("r_F", in.r_F()),
      needs.notNegative("m_F", in.m_F()),
      needs.notNegative("I_Fxx", in.I_Fxx()),
      needs.notNegative("I_Fyy", in.I_Fyy())
    };
    if (needs.faults().size() > before) {
      return null;
    }
    return new WhippleParameters(w, c, lambda, g, wheel(rear), body(b), body(h), wheel(front));
  }

  private static WhippleParameters.Wheel wheel(double[] v) {
    return new WhippleParameters.Wheel(v[0], v[1], v[2], v[3]);
  }

  private static WhippleParameters.Body body(double[] v) {
    return new WhippleParameters.Body(v[0], v[1], v[2], v[3], v[4], v[5]);
  }
}

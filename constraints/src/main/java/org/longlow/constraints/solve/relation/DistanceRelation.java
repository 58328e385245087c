package org.longlow.constraints.solve.relation;

import java.util.List;
import org.longlow.constraints.solve.problem.Link;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;

/**
 * Distance between two points less a length: the commonest relation, so written out for plain pins.
 */
final class DistanceRelation implements Link {
  private final Pt first;
  private final Pt second;
  private final double length;
  private final int ax;
  private final int az;
  private final int bx;
  private final int bz;
  private final int[] variables;

  private DistanceRelation(Pt first, Pt second, double length, int[] variables) {
    this.first = first;
    this.second = second;
    this.length = length;
    this.variables = variables;
    ax = variables[0];
    az = variables[1];
    bx = variables[2];
    bz = variables[3];
  }

  /**
   * The plain form where all four coordinates are distinct variables and the length is constant, or
   * the general one.
   */
  static Link of(Pt first, Pt second, Quantity length) {
    if (first.x() instanceof Quantity.Variable ax
        && first.z() instanceof Quantity.Variable az
        && second.x() instanceof Quantity.Variable bx
        && second.z() instanceof Quantity.Variable bz
        && length instanceof Quantity.Constant constant) {
      int[] variables = {ax.index(), az.index(), bx.index(), bz.index()};
      if (java.util.Arrays.stream(variables).distinct().count() == 4) {
        return new DistanceRelation(first, second, constant.value(), variables);
      }
    }
    boolean none = length instanceof Quantity.Constant constant && constant.value() == 0;
    return new General(
        first,
        second,
        none,
        LocalRelation.of(DistanceRelation::distanceLess, first, second, length));
  }

  private static double distanceLess(double[] u, double[] du) {
    double dx = u[2] - u[0];
    double dz = u[3] - u[1];
    double d = Math.sqrt(dx * dx + dz * dz);
    if (du != null) {
      double cx = d > 0 ? dx / d : 0;
      double cz = d > 0 ? dz / d : 0;
      du[0] = -cx;
      du[1] = -cz;
      du[2] = cx;
      du[3] = cz;
      du[4] = -1;
    }
    return d - u[4];
  }

  @Override
  public Pt first() {
    return first;
  }

  @Override
  public Pt second() {
    return second;
  }

  @Override
  public int[] variables() {
    return variables;
  }

  @Override
  public List<Relation> parts() {
    return length == 0 ? List.of(LocalRelation.coincide(first, second)) : List.of(this);
  }

  @Override
  public double evaluate(double[] x, double[] gradient) {
    double dx = x[bx] - x[ax];
    double dz = x[bz] - x[az];
    double d = Math.sqrt(dx * dx + dz * dz);
    if (gradient != null) {
      double cx = d > 0 ? dx / d : 0;
      double cz = d > 0 ? dz / d : 0;
      gradient[0] = -cx;
      gradient[1] = -cz;
      gradient[2] = cx;
      gradient[3] = cz;
    }
    return d - length;
  }

  private record General(Pt first, Pt second, boolean none, Relation relation) implements Link {
    @Override
    public List<Relation> parts() {
      return none ? List.of(LocalRelation.coincide(first, second)) : List.of(this);
    }

    @Override
    public int[] variables() {
      return relation.variables();
    }

    @Override
    public double evaluate(double[] x, double[] gradient) {
      return relation.evaluate(x, gradient);
    }
  }
}

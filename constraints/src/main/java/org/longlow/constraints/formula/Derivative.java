package org.longlow.constraints.formula;

import java.util.List;

/** Derivatives of expressions, as expressions. */
public final class Derivative {

  private Derivative() {}

  /** Returns the derivative with respect to the measure {@code name}, lightly simplified. */
  public static Expr of(Expr expr, String name) {
    if (expr instanceof Expr.Num) {
      return Expr.ZERO;
    }
    if (expr instanceof Expr.Name n) {
      return n.name().equals(name) ? Expr.ONE : Expr.ZERO;
    }
    if (expr instanceof Expr.Op op) {
      Expr a = op.left();
      Expr b = op.right();
      Expr da = of(a, name);
      Expr db = of(b, name);
      return switch (op.sign()) {
        case '+', '-' -> Expr.of(op.sign(), da, db);
        case '*' -> Expr.of('+', Expr.of('*', da, b), Expr.of('*', a, db));
        case '/' ->
            Expr.of(
                '/', Expr.of('-', Expr.of('*', da, b), Expr.of('*', a, db)), Expr.of('*', b, b));
        default ->
            Expr.of(
                '*',
                Expr.of('*', b, Expr.of('^', a, Expr.of('-', b, Expr.ONE))),
                da); // exponents are constants
      };
    }
    Expr.Call call = (Expr.Call) expr;
    Expr sum = Expr.ZERO;
    for (int i = 0; i < call.arguments().size(); i++) {
      Expr inner = of(call.arguments().get(i), name);
      if (inner != Expr.ZERO) {
        sum = Expr.of('+', sum, Expr.of('*', partial(call, i), inner));
      }
    }
    return sum;
  }

  /** Returns the partial derivative with respect to argument {@code i}. */
  private static Expr partial(Expr.Call self, int i) {
    List<Expr> a = self.arguments();
    Expr u = a.get(0);
    return switch (self.function()) {
      case SIN -> new Expr.Call(MathFunction.COS, a);
      case COS -> Expr.of('*', number(-1), new Expr.Call(MathFunction.SIN, a));
      case TAN -> Expr.of('+', Expr.ONE, Expr.of('*', self, self));
      case ASIN -> Expr.of('/', Expr.ONE, root(Expr.of('-', Expr.ONE, Expr.of('*', u, u))));
      case ACOS -> Expr.of('/', number(-1), root(Expr.of('-', Expr.ONE, Expr.of('*', u, u))));
      case ATAN -> Expr.of('/', Expr.ONE, Expr.of('+', Expr.ONE, Expr.of('*', u, u)));
      case ATAN2 -> {
        Expr v = a.get(1);
        Expr r2 = Expr.of('+', Expr.of('*', u, u), Expr.of('*', v, v));
        yield i == 0 ? Expr.of('/', v, r2) : Expr.of('/', Expr.of('*', number(-1), u), r2);
      }
      case SQRT -> Expr.of('/', number(0.5), self);
      case ABS -> Expr.of('/', u, self);
      case HYPOT -> Expr.of('/', a.get(i), self);
      case MIN, MAX -> {
        // 1 where this argument is the one taken, else 0: (1 ± (u − v)/|u − v|)/2
        Expr mine = a.get(i);
        Expr other = a.get(1 - i);
        Expr gap = Expr.of('-', mine, other);
        Expr sign = Expr.of('/', gap, new Expr.Call(MathFunction.ABS, List.of(gap)));
        Expr half = Expr.of('*', number(self.function() == MathFunction.MAX ? 0.5 : -0.5), sign);
        yield Expr.of('+', number(0.5), half);
      }
    };
  }

  private static Expr number(double value) {
    return new Expr.Num(value, Dim.NUMBER);
  }

  private static Expr root(Expr of) {
    return new Expr.Call(MathFunction.SQRT, List.of(of));
  }
}

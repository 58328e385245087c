package org.longlow.constraints.formula;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** An expression in internal units over named measures; immutable. */
public sealed interface Expr {

  /** A constant. */
  record Num(double value, Dim dim) implements Expr {}

  /** A named measure. */
  record Name(String name) implements Expr {}

  /** Sum, difference, product, quotient or power. */
  record Op(char sign, Expr left, Expr right) implements Expr {}

  /** A function of one or more arguments. */
  record Call(MathFunction function, List<Expr> arguments) implements Expr {
    public Call {
      arguments = List.copyOf(arguments);
    }
  }

  /** Largest power that a quantity with a unit can be raised to. */
  int MOST_POWER = 9;

  Num ZERO = new Num(0, Dim.NUMBER);
  Num ONE = new Num(1, Dim.NUMBER);

  /** Returns the value, in internal units, given the value of each named measure. */
  default double evaluate(ToDoubleFunction<String> values) {
    if (this instanceof Num n) {
      return n.value();
    }
    if (this instanceof Name n) {
      return values.applyAsDouble(n.name());
    }
    if (this instanceof Op op) {
      double a = op.left().evaluate(values);
      double b = op.right().evaluate(values);
      return switch (op.sign()) {
        case '+' -> a + b;
        case '-' -> a - b;
        case '*' -> a * b;
        case '/' -> a / b;
        default -> Math.pow(a, b);
      };
    }
    Call call = (Call) this;
    double[] args = new double[call.arguments().size()];
    for (int i = 0; i < args.length; i++) {
      args[i] = call.arguments().get(i).evaluate(values);
    }
    return call.function().apply(args);
  }

  /** Adds the names of all measures used here to {@code into}. */
  default void collectNames(Set<String> into) {
    if (this instanceof Name n) {
      into.add(n.name());
    } else if (this instanceof Op op) {
      op.left().collectNames(into);
      op.right().collectNames(into);
    } else if (this instanceof Call call) {
      call.arguments().forEach(a -> a.collectNames(into));
    }
  }

  /**
   * Returns the dimension.
   *
   * @param dims the dimension of each named measure
   * @throws FormulaException where dimensions do not fit together
   */
  default Dim dim(Function<String, Dim> dims) {
    if (this instanceof Num n) {
      return n.dim();
    }
    if (this instanceof Name n) {
      return dims.apply(n.name());
    }
    if (this instanceof Op op) {
      return opDim(op, op.left().dim(dims), op.right().dim(dims));
    }
    Call call = (Call) this;
    return call.function().dim(call.arguments().stream().map(a -> a.dim(dims)).toList());
  }

  private static Dim opDim(Op op, Dim a, Dim b) {
    switch (op.sign()) {
      case '*':
        return a.times(b);
      case '/':
        return a.equals(b) ? Dim.NUMBER : a.over(b);
      case '^':
        if (a.equals(Dim.NUMBER) && b.equals(Dim.NUMBER)) {
          return Dim.NUMBER;
        }
        if (op.right() instanceof Num n
            && n.dim().equals(Dim.NUMBER)
            && n.value() == Math.rint(n.value())
            && Math.abs(n.value()) <= MOST_POWER) {
          return a.power((int) n.value());
        }
        throw new FormulaException(
            "a quantity with a unit can only be raised to a whole number up to " + MOST_POWER);
      default:
        if (!a.equals(b)) {
          throw new FormulaException(
              "cannot "
                  + (op.sign() == '+' ? "add " : "subtract ")
                  + b.words()
                  + " and "
                  + a.words());
        }
        return a;
    }
  }

  /** Returns this expression with each name replaced by {@code replace} where that is not null. */
  default Expr replaced(Function<String, Expr> replace) {
    if (this instanceof Name n) {
      Expr other = replace.apply(n.name());
      return other == null ? this : other;
    }
    if (this instanceof Op op) {
      return of(op.sign(), op.left().replaced(replace), op.right().replaced(replace));
    }
    if (this instanceof Call call) {
      List<Expr> args = call.arguments().stream().map(a -> a.replaced(replace)).toList();
      Call made = new Call(call.function(), args);
      return args.stream().allMatch(Num.class::isInstance)
          ? new Num(made.evaluate(n -> Double.NaN), Dim.NUMBER)
          : made;
    }
    return this;
  }

  /** Returns {@code left sign right}, folded where both are constants or one is neutral. */
  static Expr of(char sign, Expr left, Expr right) {
    if (left instanceof Num && right instanceof Num) {
      double value = new Op(sign, left, right).evaluate(n -> Double.NaN);
      return value == 0 ? ZERO : new Num(value, Dim.NUMBER);
    }
    boolean leftZero = left instanceof Num l && l.value() == 0;
    boolean rightZero = right instanceof Num r && r.value() == 0;
    boolean rightOne = right instanceof Num r1 && r1.value() == 1;
    boolean leftOne = left instanceof Num l1 && l1.value() == 1;
    return switch (sign) {
      case '+' -> leftZero ? right : rightZero ? left : new Op(sign, left, right);
      case '-' -> rightZero ? left : new Op(sign, left, right);
      case '*' ->
          leftZero || rightZero
              ? ZERO
              : leftOne ? right : rightOne ? left : new Op(sign, left, right);
      case '/' -> leftZero ? ZERO : rightOne ? left : new Op(sign, left, right);
      default -> rightOne ? left : new Op(sign, left, right);
    };
  }
}

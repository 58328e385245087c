package org.longlow.constraints.formula;

import com.ezylang.evalex.Expression;
import com.ezylang.evalex.parser.ASTNode;
import com.ezylang.evalex.parser.ParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.longlow.constraints.words.DecimalComma;

/**
 * A quantity or formula as the user wrote it, with the expression it means.
 *
 * @param text the user's text, kept as written
 * @param expr its meaning in internal units (mm, rad, kg, N)
 */
public record Formula(String text, Expr expr) {

  private static final Pattern PLAIN =
      Pattern.compile(
          "\\s*([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)"
              + "\\s*([A-Za-z]*(?:/[a-z]+(?:\\^\\d)?)?)\\s*");

  /** A measure alone; like {@link #PLAIN} it needs no parser. */
  private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9_]*");

  /** A whole number and a fraction, as on a tape measure: 63 1/2 in. */
  private static final Pattern TAPE =
      Pattern.compile("\\s*([-+]?)(\\d{1,6})\\s+(\\d{1,3})/(\\d{1,3})\\s*([A-Za-z]+)\\s*");

  /** Feet and inches, as people give their height: 5 ft 9 in, 5 ft 9 1/2 in. */
  private static final Pattern FEET =
      Pattern.compile(
          "\\s*([-+]?)(\\d{1,6})\\s*ft\\s+(\\d{1,3}(?:\\.\\d*)?)(?:\\s+(\\d{1,3})/(\\d{1,3}))?\\s*in\\s*");

  /** Names that stand for a constant. */
  public static final Set<String> RESERVED = Set.of("PI", "pi");

  /** Longest formula accepted; longer text is a mistake, and a bound keeps parsing quick. */
  public static final int MAX_LENGTH = 500;

  /** Returns what is wrong with a text that a user typed; empty if it is a formula. */
  public static Optional<String> fault(String text) {
    try {
      parse(text);
      return Optional.empty();
    } catch (FormulaException e) {
      return Optional.of(e.getMessage());
    }
  }

  /**
   * Reads a quantity or formula.
   *
   * @throws FormulaException if the text is not one; the message says what is wrong and what helps
   */
  public static Formula parse(String text) {
    if (text.length() > MAX_LENGTH) {
      throw new FormulaException("is longer than " + MAX_LENGTH + " characters; split it up");
    }
    Matcher plain = PLAIN.matcher(text);
    if (plain.matches()) {
      String unit = plain.group(2);
      double number = finite(Double.parseDouble(plain.group(1)), text);
      if (unit.isEmpty()) {
        return new Formula(text, new Expr.Num(number, Dim.NUMBER));
      }
      if (Unit.written(unit).isPresent()) {
        Unit u = Unit.written(unit).get();
        return new Formula(text, new Expr.Num(finite(number * u.factor(), text), u.dim()));
      }
    }
    Matcher tape = TAPE.matcher(text);
    if (tape.matches() && Unit.named(tape.group(5)).isPresent()) {
      Unit u = Unit.named(tape.group(5)).get();
      double size =
          Integer.parseInt(tape.group(2))
              + Double.parseDouble(tape.group(3)) / Integer.parseInt(tape.group(4));
      double signed = tape.group(1).equals("-") ? -size : size;
      return new Formula(text, new Expr.Num(finite(signed * u.factor(), text), u.dim()));
    }
    Matcher feet = FEET.matcher(text);
    if (feet.matches()) {
      double part =
          feet.group(4) == null
              ? 0
              : Double.parseDouble(feet.group(4)) / Integer.parseInt(feet.group(5));
      double inches =
          12.0 * Integer.parseInt(feet.group(2)) + Double.parseDouble(feet.group(3)) + part;
      double signed = feet.group(1).equals("-") ? -inches : inches;
      return new Formula(text, new Expr.Num(finite(signed * Unit.INCH.factor(), text), Dim.LENGTH));
    }
    if (TyreWord.isOne(text)) {
      return new Formula(text, new Expr.Name(text));
    }
    if (NAME.matcher(text).matches() && !RESERVED.contains(text) && Unit.named(text).isEmpty()) {
      return new Formula(text, new Expr.Name(text));
    }
    if (text.isBlank()) {
      throw new FormulaException("is empty; write a quantity such as 1600 mm");
    }
    try {
      String read = TyreWord.joined(Unit.speedsAsWords(text));
      return new Formula(
          text, convert(new Expression(read, Grammar.CONFIGURATION).getAbstractSyntaxTree()));
    } catch (ParseException e) {
      String why =
          e.getMessage()
              .toLowerCase(Locale.ROOT)
              .replace("brace", "bracket")
              .replace("too many operands", "two values side by side without + - * or /");
      Optional<String> comma = DecimalComma.advice(text);
      if (comma.isPresent()) {
        throw new FormulaException("cannot be read; " + comma.get());
      }
      throw new FormulaException(
          "cannot be read ("
              + why
              + (why.contains("undefined function") ? "; allowed are " + functionNames() : "")
              + (why.contains("undefined operator") ? "; allowed are + - * / ^ ( )" : "")
              + "); write a quantity such as 1600 mm or a formula such as seatHeight + 60 mm");
    }
  }

  /** Returns the formula that writes {@code internal} in {@code unit}, to 1e-6 of it. */
  public static Formula of(double internal, Unit unit) {
    double shown = Math.rint(unit.fromInternal(internal) * 1e6) / 1e6;
    String digits =
        shown == Math.rint(shown) && Math.abs(shown) < 1e15
            ? String.valueOf((long) shown)
            : String.valueOf(shown);
    return parse(unit == Unit.NONE ? digits : digits + " " + unit.symbol());
  }

  private static Expr convert(ASTNode node) {
    String value = node.getToken().getValue();
    List<ASTNode> children = node.getParameters();
    switch (node.getToken().getType()) {
      case NUMBER_LITERAL:
        return new Expr.Num(finite(number(value), value), Dim.NUMBER);
      case VARIABLE_OR_CONSTANT:
        if (RESERVED.contains(value)) {
          return new Expr.Num(Math.PI, Dim.NUMBER);
        }
        return Unit.named(value)
            .<Expr>map(u -> new Expr.Num(u.factor(), u.dim()))
            .orElseGet(() -> new Expr.Name(TyreWord.parted(value)));
      case PREFIX_OPERATOR:
        if (value.equals("-")) {
          return infix('*', new Expr.Num(-1, Dim.NUMBER), convert(children.get(0)));
        }
        if (value.equals("+")) {
          return convert(children.get(0));
        }
        throw new FormulaException("uses " + value + "; allowed are + - * / ^ ( )");
      case INFIX_OPERATOR:
        if (value.length() == 1 && "+-*/^".contains(value)) {
          return infix(value.charAt(0), convert(children.get(0)), convert(children.get(1)));
        }
        throw new FormulaException("uses " + value + "; allowed are + - * / ^ ( )");
      case FUNCTION:
        return call(value, children);
      default:
        throw new FormulaException(
            "holds " + value + "; allowed are numbers, units, measures and + - * / ^ ( )");
    }
  }

  private static Expr infix(char sign, Expr left, Expr right) {
    if (sign == '^' && !(right instanceof Expr.Num)) {
      throw new FormulaException("has a power that is not a plain number");
    }
    if (left instanceof Expr.Num a && right instanceof Expr.Num b) {
      // folds "60 mm" into one constant with its dimension, so that the tree stays small
      Expr.Op op = new Expr.Op(sign, a, b);
      Dim dim = op.dim(n -> Dim.NUMBER);
      return new Expr.Num(finite(op.evaluate(n -> 0), sign + ""), dim);
    }
    return new Expr.Op(sign, left, right);
  }

  private static Expr call(String value, List<ASTNode> children) {
    MathFunction function =
        MathFunction.named(value)
            .orElseThrow(
                () -> new FormulaException("calls " + value + "; allowed are " + functionNames()));
    if (children.size() != function.arity()) {
      throw new FormulaException(
          "calls " + value + " with " + children.size() + " values, needs " + function.arity());
    }
    List<Expr> arguments = new ArrayList<>();
    for (ASTNode child : children) {
      arguments.add(convert(child));
    }
    return new Expr.Call(function, arguments);
  }

  private static String functionNames() {
    StringBuilder names = new StringBuilder();
    for (MathFunction f : MathFunction.values()) {
      names.append(names.length() == 0 ? "" : ", ").append(f.name().toLowerCase(Locale.ROOT));
    }
    return names.toString();
  }

  private static double number(String value) {
    try {
      return Double.parseDouble(value);
    } catch (NumberFormatException e) {
      throw new FormulaException("holds the number " + value + ", which cannot be read");
    }
  }

  private static double finite(double value, String text) {
    if (!Double.isFinite(value)) {
      throw new FormulaException("gives no finite number at " + text);
    }
    return value;
  }

  /** Returns text of the same worth in brackets, as it can stand within another formula. */
  public String bracketed() {
    Matcher tape = TAPE.matcher(text);
    if (tape.matches()) {
      return "(%s(%s + %s/%s) * 1 %s)"
          .formatted(tape.group(1), tape.group(2), tape.group(3), tape.group(4), tape.group(5));
    }
    Matcher feet = FEET.matcher(text);
    if (feet.matches()) {
      String part = feet.group(4) == null ? "" : " + " + feet.group(4) + "/" + feet.group(5);
      return "(%s(%s ft + (%s%s) * 1 in))"
          .formatted(feet.group(1), feet.group(2), feet.group(3), part);
    }
    return "(" + text + ")";
  }

  /** Returns the names of the measures this formula uses, sorted. */
  public Set<String> names() {
    Set<String> names = new TreeSet<>();
    expr.collectNames(names);
    return names;
  }

  /** Returns whether the formula is a bare number without a unit. */
  public boolean isBareNumber() {
    return expr instanceof Expr.Num n && n.dim().equals(Dim.NUMBER);
  }

  /**
   * Returns this formula read as a quantity of {@code dim}: a bare number takes the unit of the
   * edge (mm, deg, kg, N).
   *
   * @throws FormulaException if its dimension is another one
   */
  public Formula as(Dim dim, Function<String, Dim> dims) {
    Dim own = expr.dim(dims);
    if (own.equals(dim)) {
      return this;
    }
    if (isBareNumber()) {
      return new Formula(
          text, new Expr.Num(((Expr.Num) expr).value() * Unit.of(dim).factor(), dim));
    }
    throw new FormulaException("is " + own.words() + ", needs " + dim.words());
  }

  public double evaluate(ToDoubleFunction<String> values) {
    return expr.evaluate(values);
  }
}

package org.longlow.constraints.formula;

import com.ezylang.evalex.Expression;
import com.ezylang.evalex.config.ExpressionConfiguration;
import com.ezylang.evalex.config.FunctionDictionaryIfc;
import com.ezylang.evalex.config.MapBasedOperatorDictionary;
import com.ezylang.evalex.config.OperatorDictionaryIfc;
import com.ezylang.evalex.data.EvaluationValue;
import com.ezylang.evalex.functions.AbstractFunction;
import com.ezylang.evalex.functions.FunctionIfc;
import com.ezylang.evalex.functions.FunctionParameter;
import com.ezylang.evalex.operators.OperatorIfc;
import com.ezylang.evalex.operators.arithmetic.InfixDivisionOperator;
import com.ezylang.evalex.operators.arithmetic.InfixMinusOperator;
import com.ezylang.evalex.operators.arithmetic.InfixMultiplicationOperator;
import com.ezylang.evalex.operators.arithmetic.InfixPlusOperator;
import com.ezylang.evalex.operators.arithmetic.InfixPowerOfOperator;
import com.ezylang.evalex.operators.arithmetic.PrefixMinusOperator;
import com.ezylang.evalex.operators.arithmetic.PrefixPlusOperator;
import com.ezylang.evalex.parser.Token;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What the parser knows: five operators, two signs and our functions, which it never evaluates. */
final class Grammar implements FunctionDictionaryIfc {

  /** Made on first use, because plain quantities and names need no parser. */
  static final ExpressionConfiguration CONFIGURATION =
      ExpressionConfiguration.builder()
          .operatorDictionary(operators())
          .functionDictionary(new Grammar())
          .arraysAllowed(false)
          .structuresAllowed(false)
          .defaultConstants(Map.of())
          .dateTimeFormatters(List.of())
          .zoneId(ZoneOffset.UTC)
          .locale(Locale.ROOT)
          // so that -3^2 is -9 and 2 mm^2 is two square millimetres, as on paper
          .powerOfPrecedence(OperatorIfc.OPERATOR_PRECEDENCE_POWER_HIGHER)
          .build();

  private static final FunctionIfc CALLED = new Called();

  private Grammar() {}

  private static OperatorDictionaryIfc operators() {
    // the dictionary tells prefix from infix by the operator's own annotation
    MapBasedOperatorDictionary operators = new MapBasedOperatorDictionary();
    operators.addOperator("+", new PrefixPlusOperator());
    operators.addOperator("-", new PrefixMinusOperator());
    operators.addOperator("+", new InfixPlusOperator());
    operators.addOperator("-", new InfixMinusOperator());
    operators.addOperator("*", new InfixMultiplicationOperator());
    operators.addOperator("/", new InfixDivisionOperator());
    operators.addOperator("^", new InfixPowerOfOperator());
    return operators;
  }

  @Override
  public FunctionIfc getFunction(String name) {
    return MathFunction.named(name).isPresent() ? CALLED : null;
  }

  @Override
  public void addFunction(String name, FunctionIfc function) {
    throw new UnsupportedOperationException("the functions are those of MathFunction");
  }

  @FunctionParameter(name = "value", isVarArg = true)
  private static final class Called extends AbstractFunction {
    @Override
    public EvaluationValue evaluate(Expression expression, Token token, EvaluationValue... values) {
      throw new UnsupportedOperationException("formulas are evaluated by Expr");
    }
  }
}

package org.longlow.constraints.formula;

import com.ezylang.evalex.Expression;
import com.ezylang.evalex.config.FunctionDictionaryIfc;
import com.ezylang.evalex.data.EvaluationValue;
import com.ezylang.evalex.functions.AbstractFunction;
import com.ezylang.evalex.functions.FunctionIfc;
import com.ezylang.evalex.functions.FunctionParameter;
import com.ezylang.evalex.parser.Token;

/** Tells the parser which words are functions; it never evaluates them. */
final class FunctionWords implements FunctionDictionaryIfc {

  private static final FunctionIfc CALLED = new Called();

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

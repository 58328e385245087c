package org.longlow.constraints.formula;

/** A formula that cannot be read or whose units do not fit; the message is for the user. */
public final class FormulaException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public FormulaException(String message) {
    super(message);
  }
}

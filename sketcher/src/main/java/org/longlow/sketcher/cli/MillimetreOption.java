package org.longlow.sketcher.cli;

import org.longlow.constraints.words.DecimalComma;
import org.longlow.sketcher.app.RuleLength;
import picocli.CommandLine;

/** Reads a length off a rule for options. */
final class MillimetreOption implements CommandLine.ITypeConverter<Double> {
  @Override
  public Double convert(String value) {
    return RuleLength.mm(value)
        .orElseThrow(
            () ->
                new CommandLine.TypeConversionException(
                    "'"
                        + value
                        + "' is no number of millimetres; "
                        + DecimalComma.advice(value).orElse("write one such as 99.6, or 7.86 in")));
  }
}

package org.longlow.sketcher.cli;

import org.longlow.constraints.words.DecimalComma;
import picocli.CommandLine;

/** Reads a length in mm for options: 99.6, or 99.6 mm. */
final class MillimetreOption implements CommandLine.ITypeConverter<Double> {
  @Override
  public Double convert(String value) {
    String number = value.strip();
    if (number.endsWith("mm")) {
      number = number.substring(0, number.length() - 2).strip();
    }
    try {
      return Double.valueOf(number);
    } catch (NumberFormatException e) {
      throw new CommandLine.TypeConversionException(
          "'"
              + value
              + "' is no number of millimetres; "
              + DecimalComma.advice(value).orElse("write one such as 99.6"));
    }
  }
}

package org.longlow.sketcher.cli;

import org.longlow.constraints.words.DecimalComma;
import org.longlow.rider.words.Units;
import picocli.CommandLine;

/** Reads a length in mm for options: 99.6, 99.6 mm or, off an inch rule, 7.86 in. */
final class MillimetreOption implements CommandLine.ITypeConverter<Double> {
  @Override
  public Double convert(String value) {
    String number = value.strip();
    boolean inches = number.endsWith("in");
    if (inches || number.endsWith("mm")) {
      number = number.substring(0, number.length() - 2).strip();
    }
    try {
      return Double.parseDouble(number) * (inches ? Units.INCH_MM : 1);
    } catch (NumberFormatException e) {
      throw new CommandLine.TypeConversionException(
          "'"
              + value
              + "' is no number of millimetres; "
              + DecimalComma.advice(value).orElse("write one such as 99.6, or 7.86 in"));
    }
  }
}

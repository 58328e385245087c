package org.longlow.sketcher.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine;

/** Reads a date for options. */
final class DateOption implements CommandLine.ITypeConverter<LocalDate> {
  @Override
  public LocalDate convert(String value) {
    try {
      return LocalDate.parse(value);
    } catch (DateTimeParseException e) {
      throw new CommandLine.TypeConversionException(
          "'" + value + "' is no date; write it like 2026-01-31");
    }
  }
}

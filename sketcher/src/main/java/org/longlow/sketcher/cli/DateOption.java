package org.longlow.sketcher.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine;

/** Reads a date for options. */
final class DateOption implements CommandLine.ITypeConverter<LocalDate> {
  @Override
  public LocalDate convert(String value) {
    try {
      LocalDate date = LocalDate.parse(value);
      if (date.getYear() < 1000 || date.getYear() > 9999) {
        throw new DateTimeParseException("a year of four digits", value, 0);
      }
      return date;
    } catch (DateTimeParseException e) {
      throw new CommandLine.TypeConversionException(
          "'" + value + "' is no date; write it like 2026-01-31");
    }
  }
}

package org.longlow.sketcher.cli;

import org.longlow.svg.page.Paper;
import picocli.CommandLine;

/** Reads paper names and sizes for options. */
final class PaperOption implements CommandLine.ITypeConverter<Paper> {
  @Override
  public Paper convert(String value) {
    try {
      return Paper.parse(value);
    } catch (IllegalArgumentException e) {
      throw new CommandLine.TypeConversionException(e.getMessage());
    }
  }
}

package org.longlow.sketcher.cli;

import org.longlow.constraints.words.DecimalComma;
import org.longlow.svg.page.Paper;
import picocli.CommandLine;

/** Reads paper names and sizes for options. */
final class PaperOption implements CommandLine.ITypeConverter<Paper> {
  @Override
  public Paper convert(String value) {
    return Paper.read(value)
        .orElseThrow(
            () ->
                new CommandLine.TypeConversionException(
                    "paper '"
                        + value
                        + "' is not known; "
                        + DecimalComma.advice(value).map(a -> a + "; ").orElse("")
                        + Paper.ALLOWED));
  }
}

package org.longlow.sketcher.cli;

import org.longlow.sketcher.picture.SheetInk;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads with what a drawing is printed, such as {@code black}. */
final class InkOption implements ITypeConverter<SheetInk> {

  @Override
  public SheetInk convert(String text) {
    return SheetInk.of(text)
        .orElseThrow(
            () -> new TypeConversionException("'" + text + "' is no ink; write colour or black"));
  }
}

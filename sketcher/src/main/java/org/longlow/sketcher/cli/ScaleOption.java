package org.longlow.sketcher.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.longlow.svg.page.Scale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a scale such as {@code 1:10}. */
final class ScaleOption implements ITypeConverter<Scale> {

  private static final Pattern ONE_TO = Pattern.compile("1:([1-9]\\d{0,3})");

  @Override
  public Scale convert(String text) {
    Matcher m = ONE_TO.matcher(text);
    if (!m.matches()) {
      throw new TypeConversionException(
          "'" + text + "' is no scale; write 1:N with N from 1 to 9999, such as 1:10");
    }
    return Scale.oneTo(Integer.parseInt(m.group(1)));
  }
}

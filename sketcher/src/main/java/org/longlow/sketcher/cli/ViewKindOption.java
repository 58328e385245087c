package org.longlow.sketcher.cli;

import org.longlow.sketcher.picture.Views;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads which view is meant, such as {@code front}. */
final class ViewKindOption implements ITypeConverter<Views.Kind> {

  @Override
  public Views.Kind convert(String text) {
    return switch (text) {
      case "side" -> Views.Kind.SIDE;
      case "front" -> Views.Kind.FRONT;
      case "plan" -> Views.Kind.PLAN;
      case "all" -> Views.Kind.ALL;
      default ->
          throw new TypeConversionException(
              "'" + text + "' is no view; write side, front, plan or all");
    };
  }
}

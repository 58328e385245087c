package org.longlow.sketcher.cli;

import org.longlow.sketcher.picture.Views;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads how views lie about the elevation. */
final class ProjectionOption implements ITypeConverter<Views.Projection> {

  @Override
  public Views.Projection convert(String text) {
    return switch (text) {
      case "first-angle" -> Views.Projection.FIRST_ANGLE;
      case "third-angle" -> Views.Projection.THIRD_ANGLE;
      default ->
          throw new TypeConversionException(
              "'" + text + "' is no projection; write first-angle or third-angle");
    };
  }
}

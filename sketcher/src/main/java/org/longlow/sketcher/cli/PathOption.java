package org.longlow.sketcher.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine;

/** Reads names of files and folders: an empty one would mean the folder one is in. */
final class PathOption implements CommandLine.ITypeConverter<Path> {
  @Override
  public Path convert(String value) {
    if (value.isBlank()) {
      throw new CommandLine.TypeConversionException(
          "it is empty; give the name of a file or folder");
    }
    try {
      return Path.of(value);
    } catch (InvalidPathException e) {
      throw new CommandLine.TypeConversionException(
          "'" + value + "' is no name of a file here: " + e.getReason());
    }
  }
}

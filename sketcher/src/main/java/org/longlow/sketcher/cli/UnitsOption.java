package org.longlow.sketcher.cli;

import org.longlow.constraints.layout.Layout;
import org.longlow.rider.words.Units;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** In which units figures are said; JSON stays in mm, kg and N. */
final class UnitsOption {

  @Option(
      names = "--units",
      paramLabel = "mm|in",
      converter = Word.class,
      description = "mm, or in for inches and pounds; as the layout says unless said.")
  private Units units;

  /** Returns the units asked for, or else these. */
  Units or(Units usual) {
    return units == null ? usual : units;
  }

  /** Returns the layout, to be shown in the units asked for. */
  Layout on(Layout layout) {
    return units == null ? layout : layout.withUnits(units);
  }

  /** Returns the units asked for, or else those of the layout. */
  Units of(Layout layout) {
    return on(layout).units();
  }

  /** Reads the word. */
  static final class Word implements ITypeConverter<Units> {
    @Override
    public Units convert(String value) {
      for (Units units : Units.values()) {
        if (units.word().equals(value.strip())) {
          return units;
        }
      }
      throw new TypeConversionException("'" + value + "' is neither mm nor in");
    }
  }
}

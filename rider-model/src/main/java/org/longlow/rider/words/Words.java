package org.longlow.rider.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Text for people, with its figures kept as figures until it is read in some units. */
public sealed interface Words {

  /** No text. */
  Words NONE = new Text("");

  /** Returns the text with its figures in these units. */
  String in(Units units);

  /** Returns text that is the same in all units. */
  static Words of(String text) {
    return new Text(text);
  }

  /**
   * Returns a text of Longlow's own, such as the source of a limit, whose figures are written out
   * in mm or mm2; nothing that a user wrote is read so.
   */
  static Words read(String own) {
    return new Own(own);
  }

  /**
   * Returns a quantity or formula as files write it, such as {@code seatHeight + 60 mm}; it stays
   * as it is but for the units of its figures.
   */
  static Words written(String formula) {
    return new Written(formula);
  }

  /** Returns pieces one after the other: texts, {@code Words}, whole numbers. */
  static Words of(Object... pieces) {
    return new Pieces(List.of(pieces));
  }

  /**
   * Returns a pattern of {@link String#format} with its values; a value that is {@code Words}
   * stands where {@code %s} is.
   */
  static Words format(String pattern, Object... values) {
    return new Filled(pattern, List.of(values));
  }

  /** Returns a figure, rounded to what is nearest. */
  static Words figure(double value, FigureSort shown) {
    return new Figure(value, shown, Units.Rounding.NEAREST, 0);
  }

  /** Returns a figure without its unit, for the first of several that share one. */
  static Words bare(double value, FigureSort shown) {
    return new Bare(value, shown, 0);
  }

  /** Returns a length, mm, of which no less will do than is said. */
  static Words atLeast(double mm) {
    return new Figure(mm, FigureSort.LENGTH, Units.Rounding.AWAY, 0);
  }

  /** Returns a length, mm, of which no more will do than is said. */
  static Words atMost(double mm) {
    return new Figure(mm, FigureSort.LENGTH, Units.Rounding.TOWARDS, 0);
  }

  /** Returns all with {@code between} between them. */
  static Words join(String between, Collection<? extends Words> all) {
    return new Joined(between, List.copyOf(all));
  }

  /**
   * Returns words that are found once somebody reads them, and then kept; for what takes long and
   * is read of few of many findings.
   *
   * @param found gives them; follows from nothing that changes, for any thread
   */
  static Words later(Supplier<Words> found) {
    return new Later(found);
  }

  /**
   * Returns the same text with the figures that are one of these values said with so many decimals
   * more.
   */
  default Words finer(Set<Double> values, int more) {
    return this;
  }

  /** Returns how it says a figure that is this value, each time that it does. */
  default List<String> saying(double value, Units units) {
    return List.of();
  }

  private static List<String> saying(Collection<?> pieces, double value, Units units) {
    return pieces.stream()
        .filter(Words.class::isInstance)
        .flatMap(p -> ((Words) p).saying(value, units).stream())
        .toList();
  }

  private static Object finer(Object piece, Set<Double> values, int more) {
    return piece instanceof Words words ? words.finer(values, more) : piece;
  }

  private static Object read(Object piece, Units units) {
    return piece instanceof Words words ? words.in(units) : piece;
  }

  /** Text that is the same in all units. */
  record Text(String text) implements Words {
    @Override
    public String in(Units units) {
      return text;
    }

    @Override
    public String toString() {
      return text;
    }
  }

  /** A text of Longlow's own with figures written out in mm or mm2. */
  record Own(String text) implements Words {

    private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
    private static final Pattern FIGURES =
        Pattern.compile(NUMBER + "(?:( to | and | or |, )" + NUMBER + ")? (mm2?)\\b");

    @Override
    public String in(Units units) {
      return units == Units.MM
          ? text
          : FIGURES
              .matcher(text)
              .replaceAll(
                  m -> {
                    FigureSort shown =
                        m.group(4).equals("mm") ? FigureSort.LENGTH : FigureSort.AREA;
                    String last = m.group(3) == null ? m.group(1) : m.group(3);
                    String said = units.says(Double.parseDouble(last), shown);
                    return m.group(3) == null
                        ? said
                        : units.bare(Double.parseDouble(m.group(1)), shown) + m.group(2) + said;
                  });
    }

    @Override
    public String toString() {
      return text;
    }
  }

  /** A quantity or formula as it was written. */
  record Written(String text) implements Words {
    @Override
    public String in(Units units) {
      return WrittenFigures.in(units, text);
    }

    @Override
    public String toString() {
      return text;
    }
  }

  /**
   * A figure.
   *
   * @param value in the unit of {@code shown} that is used inside
   * @param more decimals than usual
   */
  record Figure(double value, FigureSort shown, Units.Rounding rounding, int more)
      implements Words {
    @Override
    public String in(Units units) {
      return more > 0 ? units.finer(value, shown, more) : units.says(value, shown, rounding);
    }

    @Override
    public List<String> saying(double one, Units units) {
      return one == value ? List.of(in(units)) : List.of();
    }

    @Override
    public Words finer(Set<Double> values, int digits) {
      return values.contains(value) ? new Figure(value, shown, rounding, digits) : this;
    }

    @Override
    public String toString() {
      return in(Units.MM);
    }
  }

  /** A figure without its unit. */
  record Bare(double value, FigureSort shown, int more) implements Words {
    @Override
    public String in(Units units) {
      if (more == 0) {
        return units.bare(value, shown);
      }
      String said = units.finer(value, shown, more);
      return said.substring(0, said.length() - units.sign(shown).length());
    }

    @Override
    public List<String> saying(double one, Units units) {
      return one == value ? List.of(in(units)) : List.of();
    }

    @Override
    public Words finer(Set<Double> values, int digits) {
      return values.contains(value) ? new Bare(value, shown, digits) : this;
    }

    @Override
    public String toString() {
      return in(Units.MM);
    }
  }

  /** Pieces one after the other. */
  record Pieces(List<Object> pieces) implements Words {
    @Override
    public String in(Units units) {
      StringBuilder text = new StringBuilder();
      pieces.forEach(p -> text.append(read(p, units)));
      return text.toString();
    }

    @Override
    public List<String> saying(double value, Units units) {
      return Words.saying(pieces, value, units);
    }

    @Override
    public Words finer(Set<Double> values, int more) {
      return new Pieces(pieces.stream().map(p -> Words.finer(p, values, more)).toList());
    }

    @Override
    public String toString() {
      return in(Units.MM);
    }
  }

  /** A number of a pattern without a unit, such as {@code %.2f}. */
  record Decimal(double value, int digits) implements Words {
    @Override
    public String in(Units units) {
      return String.format(Locale.ROOT, "%." + digits + "f", value);
    }

    @Override
    public List<String> saying(double one, Units units) {
      return one == value ? List.of(in(units)) : List.of();
    }

    @Override
    public Words finer(Set<Double> values, int more) {
      return values.contains(value) ? new Decimal(value, digits + more) : this;
    }
  }

  /** A pattern with values. */
  record Filled(String pattern, List<Object> values) implements Words {

    private static final Pattern PLACE = Pattern.compile("%(?:%|\\.(\\d)f|[a-z])");

    /** The same with each bare number as words, so that it too can be said finer. */
    private Filled withDecimals() {
      List<Object> all = new ArrayList<>(values);
      int[] at = {0};
      String words =
          PLACE
              .matcher(pattern)
              .replaceAll(
                  m -> {
                    if (m.group().equals("%%")) {
                      return "%%";
                    }
                    int i = at[0]++;
                    if (m.group(1) == null || !(all.get(i) instanceof Double value)) {
                      return m.group();
                    }
                    all.set(i, new Decimal(value, Integer.parseInt(m.group(1))));
                    return "%s";
                  });
      return new Filled(words, all);
    }

    @Override
    public String in(Units units) {
      return String.format(
          Locale.ROOT, pattern, values.stream().map(v -> read(v, units)).toArray());
    }

    @Override
    public List<String> saying(double value, Units units) {
      return Words.saying(withDecimals().values, value, units);
    }

    @Override
    public Words finer(Set<Double> figures, int more) {
      Filled all = withDecimals();
      return new Filled(
          all.pattern, all.values.stream().map(v -> Words.finer(v, figures, more)).toList());
    }

    @Override
    public String toString() {
      return in(Units.MM);
    }
  }

  /** Words that nobody has read so far, or that were found since. */
  final class Later implements Words {

    /** Null once they are found. */
    private Supplier<Words> found;

    private Words words;

    private Later(Supplier<Words> found) {
      this.found = found;
    }

    private synchronized Words words() {
      if (found != null) {
        words = found.get();
        found = null;
      }
      return words;
    }

    @Override
    public String in(Units units) {
      return words().in(units);
    }

    @Override
    public List<String> saying(double value, Units units) {
      return words().saying(value, units);
    }

    @Override
    public Words finer(Set<Double> values, int more) {
      return words().finer(values, more);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Later later && later.words().equals(words());
    }

    @Override
    public int hashCode() {
      return words().hashCode();
    }

    @Override
    public String toString() {
      return words().toString();
    }
  }

  /** Words with something between each two. */
  record Joined(String between, List<Words> all) implements Words {
    @Override
    public String in(Units units) {
      return all.stream().map(w -> w.in(units)).collect(Collectors.joining(between));
    }

    @Override
    public List<String> saying(double value, Units units) {
      return Words.saying(all, value, units);
    }

    @Override
    public Words finer(Set<Double> values, int more) {
      return new Joined(between, all.stream().map(w -> w.finer(values, more)).toList());
    }

    @Override
    public String toString() {
      return in(Units.MM);
    }
  }
}

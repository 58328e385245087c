package org.longlow.sketcher.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.longlow.rider.words.Decimals;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/**
 * A list for the shop. What people read and what a spreadsheet reads come from the same cells.
 *
 * @param name of its file, without ending
 * @param title for people
 * @param columns what its cells are
 * @param rows each with a cell for each column
 */
public record ShopTable(String name, String title, List<Column> columns, List<List<Cell>> rows) {

  private static final double SQUARE_FOOT_MM2 = 304.8 * 304.8;

  /** What a column holds. */
  public enum Sort {
    WORDS,
    COUNT,
    LENGTH,
    AREA,
    MASS,
    MONEY
  }

  /** A column. */
  public record Column(String heading, Sort sort) {
    static Column words(String heading) {
      return new Column(heading, Sort.WORDS);
    }

    static Column count(String heading) {
      return new Column(heading, Sort.COUNT);
    }

    static Column length(String heading) {
      return new Column(heading, Sort.LENGTH);
    }

    static Column area(String heading) {
      return new Column(heading, Sort.AREA);
    }

    static Column mass(String heading) {
      return new Column(heading, Sort.MASS);
    }

    static Column money(String heading) {
      return new Column(heading, Sort.MONEY);
    }
  }

  /**
   * A cell.
   *
   * @param words of a column of words; else empty
   * @param figure mm, mm², kg, money or a count; NaN where it is not known
   */
  public record Cell(String words, double figure) {
    private boolean isEmpty() {
      return words.isEmpty() && Double.isNaN(figure);
    }

    static Cell of(String words) {
      return new Cell(words, Double.NaN);
    }

    static Cell of(double figure) {
      return new Cell("", figure);
    }
  }

  /** The cell of what is not known or does not apply. */
  static final Cell NONE = Cell.of("");

  public ShopTable {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<Cell> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            name + " has a row of " + row.size() + " cells for " + columns.size() + " columns");
      }
    }
  }

  /** Returns it without columns that say nothing; rows stay. */
  public ShopTable withoutEmpty() {
    List<Integer> kept =
        IntStream.range(0, columns.size())
            .filter(i -> rows.stream().anyMatch(r -> !r.get(i).isEmpty()))
            .boxed()
            .toList();
    return new ShopTable(
        name,
        title,
        kept.stream().map(columns::get).toList(),
        rows.stream().map(r -> kept.stream().map(r::get).toList()).toList());
  }

  /** Returns the headings as people read them. */
  public List<String> headings(String currency) {
    return columns.stream()
        .map(
            c ->
                c.sort == Sort.MONEY && !currency.isEmpty()
                    ? c.heading + ", " + currency
                    : c.heading)
        .toList();
  }

  /** Returns a row as people read it; what is not known is empty. */
  public List<String> said(List<Cell> row, Units units) {
    SizeWords sizes = new SizeWords(units);
    List<String> out = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      double figure = row.get(i).figure();
      Sort sort = columns.get(i).sort();
      out.add(
          sort == Sort.WORDS
              ? row.get(i).words()
              : Double.isNaN(figure)
                  ? ""
                  : switch (sort) {
                    case WORDS -> "";
                    case COUNT -> Decimals.upTo(0, figure);
                    case LENGTH -> sizes.mm(figure);
                    case AREA -> sizes.sheet(figure);
                    case MASS -> sizes.kg(figure);
                    case MONEY -> money(figure);
                  });
    }
    return out;
  }

  /** Returns an amount of money with its hundredths. */
  public static String money(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  /** Returns it as a file for spreadsheets (RFC 4180), units in the header. */
  public String csv(Units units, String currency) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(columns.stream().map(c -> Csv.words(head(c, units, currency))).toList());
    for (List<Cell> row : rows) {
      List<String> line = new ArrayList<>();
      for (int i = 0; i < columns.size(); i++) {
        Sort sort = columns.get(i).sort();
        Cell cell = row.get(i);
        line.add(sort == Sort.WORDS ? Csv.words(cell.words()) : number(cell, sort, units));
      }
      lines.add(line);
    }
    return Csv.of(lines);
  }

  private static String head(Column c, Units units, String currency) {
    boolean mm = units == Units.MM;
    String unit =
        switch (c.sort) {
          case WORDS, COUNT -> "";
          case LENGTH -> mm ? "mm" : "in";
          case AREA -> mm ? "m2" : "ft2";
          case MASS -> mm ? "kg" : "lb";
          case MONEY -> currency;
        };
    return unit.isEmpty() ? c.heading : c.heading + " (" + unit + ")";
  }

  private static String number(Cell cell, Sort sort, Units units) {
    double figure = cell.figure();
    if (Double.isNaN(figure)) {
      return "";
    }
    boolean mm = units == Units.MM;
    return switch (sort) {
      case WORDS -> "";
      case COUNT -> Decimals.upTo(0, figure);
      case LENGTH -> mm ? Decimals.upTo(2, figure) : Decimals.upTo(3, figure / Units.INCH_MM);
      case AREA -> mm ? Decimals.upTo(4, figure / 1e6) : Decimals.upTo(3, figure / SQUARE_FOOT_MM2);
      case MASS -> Decimals.upTo(3, figure * units.factor(FigureSort.MASS));
      case MONEY -> money(figure);
    };
  }
}

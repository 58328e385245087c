package org.longlow.constraints.fit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.FormulaException;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.words.Names;
import org.longlow.constraints.words.Quoted;
import org.longlow.rider.body.Anthropometry;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.OutOfRange;

/**
 * Reads people who were measured from a table of comma-separated values: a row of headings, then a
 * row for each. Columns in any order: {@code sex} (female or male), {@code stature}, {@code mass},
 * if wanted {@code name} and measurements by their survey names. A heading may end in a unit
 * ({@code stature in}) for its bare numbers; without they are mm and kg. Semicolons and tabs may
 * stand instead of commas.
 */
public final class CrowdTable {

  /** As many faults are told at most. */
  private static final int TOLD = 30;

  private static final String NAME = "name";
  private static final String SEX = "sex";
  private static final String STATURE = "stature";
  private static final String MASS = "mass";

  /**
   * What came of it.
   *
   * @param crowd who they are; empty where there are faults
   * @param faults one line each: where, which value, what is allowed
   */
  public record Read(Optional<MeasuredCrowd> crowd, List<String> faults) {}

  /** A column of figures. */
  private record Column(String name, Dim dim, Optional<Unit> unit) {}

  private final List<String> faults = new ArrayList<>();
  private final List<MeasuredCrowd.Someone> people = new ArrayList<>();
  private final Set<String> named = new HashSet<>();
  private int more;

  private CrowdTable() {}

  /** Returns the people of a table, or all that is wrong with it. */
  public static Read of(String text) {
    CrowdTable table = new CrowdTable();
    table.read(text.startsWith("\ufeff") ? text.substring(1) : text);
    if (table.more > 0) {
      table.faults.add("and " + table.more + " more faults");
    }
    return table.faults.isEmpty()
        ? new Read(Optional.of(new MeasuredCrowd(table.people)), List.of())
        : new Read(Optional.empty(), List.copyOf(table.faults));
  }

  private void fault(String line) {
    if (faults.size() < TOLD) {
      faults.add(line);
    } else {
      more++;
    }
  }

  private void read(String text) {
    String[] lines = text.split("\\R", -1);
    if (lines[0].isBlank()) {
      fault("line 1 is empty; write headings there, such as name,sex,stature,mass");
      return;
    }
    char mark = mark(lines[0]);
    List<Column> columns = headings(cells(lines[0], mark));
    if (!faults.isEmpty()) {
      return;
    }
    for (int i = 1; i < lines.length; i++) {
      if (lines[i].isBlank()) {
        continue;
      }
      String where = "line " + (i + 1);
      StringBuilder row = new StringBuilder(lines[i]);
      boolean open = isOpen(lines[i]);
      while (open && i + 1 < lines.length) {
        i++;
        // what stands on two lines is a name, which is told on one
        row.append(' ').append(lines[i]);
        open ^= isOpen(lines[i]);
      }
      if (open) {
        fault(where + ": a cell begins with \" and does not end with one; add it");
        return;
      }
      if (people.size() == SampledCrowd.MOST) {
        fault(where + ": more than " + SampledCrowd.MOST + " people; split the table");
        return;
      }
      row(where, cells(row.toString(), mark), columns);
    }
    if (people.isEmpty() && faults.isEmpty()) {
      fault("there are headings and nobody under them; write a line for each person");
    }
  }

  private static char mark(String headings) {
    return headings.indexOf('\t') >= 0 ? '\t' : headings.indexOf(';') >= 0 ? ';' : ',';
  }

  private List<Column> headings(List<String> cells) {
    List<Column> columns = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    Set<String> known = new HashSet<>(Anthropometry.survey().measures(Sex.FEMALE).keySet());
    known.retainAll(Anthropometry.survey().measures(Sex.MALE).keySet());
    known.remove("weightkg");
    known.addAll(List.of(NAME, SEX, STATURE, MASS));
    for (String cell : cells) {
      String[] words = cell.strip().split("\\s+", 2);
      String name = words[0].toLowerCase(Locale.ROOT);
      Dim dim = name.equals(MASS) ? Dim.MASS : Dim.LENGTH;
      Optional<Unit> unit = words.length < 2 ? Optional.empty() : Unit.named(words[1]);
      if (!known.contains(name)) {
        fault(
            "line 1: "
                + Quoted.cut(cell)
                + " is not a known column; "
                + Names.nearest(name, known)
                    .map(near -> "did you mean " + near + "?")
                    .orElse("use name, sex, stature, mass or a measurement of the survey"));
      } else if (!seen.add(name)) {
        fault("line 1: " + name + " is there twice; take one out");
      } else if (words.length > 1 && unit.filter(u -> u.dim().equals(dim)).isEmpty()) {
        fault(
            "line 1: "
                + Quoted.cut(words[1])
                + " is no unit of "
                + name
                + "; use "
                + (name.equals(MASS) ? "kg or lb" : "mm, cm or in"));
      }
      columns.add(new Column(name, dim, unit));
    }
    for (String must : List.of(SEX, STATURE, MASS)) {
      if (!seen.contains(must)) {
        fault("line 1: there is no column " + must + "; sex, stature and mass must be there");
      }
    }
    return columns;
  }

  private void row(String where, List<String> cells, List<Column> columns) {
    if (cells.size() != columns.size()) {
      fault(
          where
              + " has "
              + cells.size()
              + " values for "
              + columns.size()
              + " columns; a cell with a comma in it goes in \"quotes\"");
      return;
    }
    String name = String.valueOf(people.size() + 1);
    Optional<Sex> sex = Optional.empty();
    Map<String, Double> values = new LinkedHashMap<>();
    boolean whole = true;
    for (int k = 0; k < cells.size(); k++) {
      Column column = columns.get(k);
      String cell = cells.get(k).strip();
      switch (column.name()) {
        case NAME -> name = cell.isEmpty() ? name : cell;
        case SEX -> {
          sex = sex(cell);
          if (sex.isEmpty()) {
            fault(where + ": sex is " + Quoted.cut(cell) + "; use female or male");
            whole = false;
          }
        }
        default -> {
          boolean must = column.name().equals(STATURE) || column.name().equals(MASS);
          if (!cell.isEmpty() || must) {
            Optional<Double> value = value(where, cell, column);
            value.ifPresent(v -> values.put(column.name(), v));
            whole &= value.isPresent();
          }
        }
      }
    }
    if (whole) {
      someone(where, name, sex.orElseThrow(), values);
    }
  }

  private void someone(String where, String name, Sex sex, Map<String, Double> values) {
    double stature = values.remove(STATURE);
    double mass = values.remove(MASS);
    try {
      BodyMeasures.of(sex, stature, mass, values); // refuses what no body has
      if (!named.add(name)) {
        fault(
            where + ": somebody is called " + Quoted.cut(name) + " already; names tell them apart");
      }
      people.add(new MeasuredCrowd.Someone(name, sex, stature, mass, values));
    } catch (OutOfRange e) {
      for (String line : e.getMessage().split("\n")) {
        fault(where + ": " + line);
      }
    }
  }

  private static Optional<Sex> sex(String cell) {
    return switch (cell.toLowerCase(Locale.ROOT)) {
      case "female", "woman", "f", "w" -> Optional.of(Sex.FEMALE);
      case "male", "man", "m" -> Optional.of(Sex.MALE);
      default -> Optional.empty();
    };
  }

  private Optional<Double> value(String where, String cell, Column column) {
    try {
      Formula formula = Formula.parse(cell);
      if (!formula.names().isEmpty()) {
        throw new FormulaException("is no number");
      }
      double value =
          formula.isBareNumber() && column.unit().isPresent()
              ? formula.evaluate(n -> Double.NaN) * column.unit().get().factor()
              : formula.as(column.dim(), n -> Dim.NUMBER).evaluate(n -> Double.NaN);
      return Optional.of(value);
    } catch (FormulaException e) {
      fault(
          where
              + ": "
              + column.name()
              + " is "
              + Quoted.cut(cell)
              + "; write a number of "
              + (column.name().equals(MASS) ? "kg" : "mm")
              + ", or one with its unit");
      return Optional.empty();
    }
  }

  /** Whether an odd number of quotes leaves a cell open, or closes one that was. */
  private static boolean isOpen(String line) {
    return line.chars().filter(c -> c == '"').count() % 2 == 1;
  }

  /** Splits a row; in quotes a mark is a letter like others, and two quotes are one. */
  private static List<String> cells(String line, char mark) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (quoted && c == '"' && i + 1 < line.length() && line.charAt(i + 1) == '"') {
        cell.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (c == mark && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return cells;
  }
}

package org.longlow.constraints.law;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.words.Names;

/** Every row of every body of rules, from {@code rules.txt}, which explains its columns. */
public final class LawTables {

  private static final String FILE = "rules.txt";
  private static final int COLUMNS = 11;

  /** Columns in which an empty cell repeats the one above: all but what is asked and how much. */
  private static final Set<Integer> REPEATED = Set.of(0, 1, 2, 7, 8, 9, 10);

  /** Begins a line that names a body of rules: its short name, then its name for reports. */
  private static final String SET = "rules:";

  private static final List<RuleSet> SETS = sets(text());
  private static final List<Row> ROWS = rows(text());

  private LawTables() {}

  /** Returns all rows, set by set. */
  public static List<Row> rows() {
    return ROWS;
  }

  /** Returns all bodies of rules, as the file names them. */
  public static List<RuleSet> sets() {
    return SETS;
  }

  private static List<RuleSet> sets(String text) {
    return text.lines()
        .filter(l -> l.startsWith(SET))
        .map(l -> l.substring(SET.length()).split("\\|"))
        .map(words -> new RuleSet(words[0].strip(), words[1].strip()))
        .toList();
  }

  private static String text() {
    try (InputStream in = LawTables.class.getResourceAsStream(FILE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Row> rows(String text) {
    List<Row> rows = new ArrayList<>();
    String[] above = new String[COLUMNS];
    for (String line :
        text.lines().filter(l -> !l.startsWith("#") && !l.startsWith(SET)).toList()) {
      String[] cells =
          Arrays.stream(line.split("\\|", -1)).map(String::strip).toArray(String[]::new);
      String[] full = Arrays.copyOf(cells, COLUMNS);
      for (int i = 0; i < COLUMNS; i++) {
        full[i] = i >= cells.length ? "" : cells[i];
        if (full[i].isEmpty() && REPEATED.contains(i)) {
          full[i] = above[i];
        }
      }
      LawSource source = new LawSource(full[8], full[9], full[10], word(Known.class, full[7]));
      if (full[3].equals("also")) {
        rows.add(also(rows.remove(rows.size() - 1), source));
      } else {
        rows.add(row(full, source));
      }
      above = full;
    }
    return List.copyOf(rows);
  }

  private static Row row(String[] cells, LawSource source) {
    Asked asked = word(Asked.class, cells[3]);
    boolean lamp = !cells[1].equals("-");
    boolean colour = asked == Asked.COLOUR;
    boolean other = asked.about() == Asked.Subject.SPACING && !cells[6].isEmpty();
    Set<LampPart.Colour> colours = EnumSet.noneOf(LampPart.Colour.class);
    if (colour) {
      Arrays.stream(cells[6].split(" "))
          .map(c -> word(LampPart.Colour.class, c))
          .forEach(colours::add);
    }
    return new Row(
        SETS.stream().filter(r -> r.id().equals(cells[0])).findFirst().orElseThrow(),
        lamp ? Optional.of(word(LampPart.Kind.class, cells[1])) : Optional.empty(),
        lamp ? word(Row.Zone.class, cells[2]) : Row.Zone.ANYWHERE,
        asked,
        cells[4].isEmpty() ? Double.NEGATIVE_INFINITY : Double.parseDouble(cells[4]),
        cells[5].isEmpty() ? Double.POSITIVE_INFINITY : Double.parseDouble(cells[5]),
        Collections.unmodifiableSet(colours),
        other ? Optional.of(word(LampPart.Kind.class, cells[6])) : Optional.empty(),
        colour || other ? "" : cells[6],
        List.of(source));
  }

  private static Row also(Row row, LawSource source) {
    List<LawSource> both = new ArrayList<>(row.sources());
    both.add(source);
    return new Row(
        row.rules(),
        row.lamp(),
        row.zone(),
        row.asked(),
        row.least(),
        row.most(),
        row.colours(),
        row.other(),
        row.text(),
        List.copyOf(both));
  }

  private static <E extends Enum<E>> E word(Class<E> type, String word) {
    return Arrays.stream(type.getEnumConstants())
        .filter(e -> Names.word(e).equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(FILE + ": " + word + " is no " + type));
  }
}

package org.longlow.constraints.seat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.FoamTrial;

/** The table of foam grades, from {@code foam-grades.txt}, which explains its columns. */
public final class FoamGrades {

  private static final String FILE = "foam-grades.txt";

  /** As thick as a layer begins, until it is said. */
  private static final String THICKNESS = "30 mm";

  private static final List<FoamGrade> ALL = read();

  private FoamGrades() {}

  /** Returns all grades: polyurethane, softest first, then other foams, closed cells last. */
  public static List<FoamGrade> all() {
    return ALL;
  }

  /** Returns the grade whose figures a layer has, if there is one. */
  public static Optional<FoamGrade> of(FoamSpec layer) {
    return ALL.stream().filter(g -> g.isOf(layer)).findFirst();
  }

  /** Returns a grade with open or closed cells to begin with. */
  public static FoamGrade first(boolean closedCell) {
    String name = closedCell ? "closed cells PE 45" : "medium HR";
    return ALL.stream().filter(g -> g.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<FoamGrade> read() {
    try (InputStream in = FoamGrades.class.getResourceAsStream(FILE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(FoamGrades::grade)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static FoamGrade grade(String line) {
    String[] c = Arrays.stream(line.split("\\|", -1)).map(String::strip).toArray(String[]::new);
    boolean graded = c[1].equals("graded");
    FoamSpec foam =
        new FoamSpec(
            c[0],
            Formula.parse(THICKNESS),
            Formula.parse(c[2] + " kg/m^3"),
            maybe(c[3], " N"),
            maybe(c[4], ""),
            graded || c[1].equals("closed"),
            graded ? Optional.empty() : maybe(c[5], " kPa"),
            maybe(c[6], " kg/m^3"),
            Optional.empty(),
            graded ? maybe(c[5], " kPa") : Optional.empty(),
            FoamTrial.NONE);
    return new FoamGrade(c[0], foam, c[7], FoamGrade.Status.named(c[8]), c[9]);
  }

  private static Optional<Formula> maybe(String cell, String unit) {
    return cell.equals("-") ? Optional.empty() : Optional.of(Formula.parse(cell + unit));
  }
}

package org.longlow.sketcher.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.picture.DimensionedElevation;
import org.longlow.sketcher.picture.OverlayPicture;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;

/** Two states of a machine over each other on a sheet, with what changed in words. */
public final class ComparisonSheet {

  /** Lines of each kind; more would leave no room for the machine. */
  private static final int VERDICTS = 6;

  private static final int CAME = 6;
  private static final int SAID = 4;

  private ComparisonSheet() {}

  /**
   * Writes it to {@code file}, SVG or PDF by its ending.
   *
   * @param names what the two are called, such as {@code as planned} and {@code as built}
   * @param scale the largest preferred one that fits unless given
   * @throws org.longlow.rider.geom.OutOfRange if it does not fit on the paper
   */
  public static Making.Drawn write(
      Study before,
      Study after,
      List<String> names,
      Comparison comparison,
      Optional<Scale> scale,
      Path file,
      Paper paper,
      String date)
      throws IOException {
    List<String> lines = lines(names, comparison, after.layout().units());
    DimensionedElevation.Sheet sheet =
        OverlayPicture.sheet(before, after, lines, scale, paper, date);
    return Making.drawing(after, sheet, file, InTheWay.Consent.GIVEN);
  }

  /** Returns what is written on it: which is which, then what changed, weightiest first. */
  static List<String> lines(List<String> names, Comparison comparison, Units units) {
    List<String> lines = new ArrayList<>();
    lines.add("Light: " + names.get(0) + ". Dark: " + names.get(1) + ". Both as drawn.");
    List<String> verdicts =
        comparison.verdicts().stream()
            .sorted(Comparator.comparing(ComparisonSheet::rank))
            .map(v -> v.line(units))
            .toList();
    add(lines, verdicts, VERDICTS, "findings");
    List<Difference> came = new ArrayList<>(comparison.came());
    // where pins and parts went is what the picture shows
    came.removeIf(d -> d.kind().equals("pin") || d.what().equals("moves or changes"));
    came.removeIf(d -> d.before().equals(d.after()));
    came.sort(Comparator.comparing(d -> !d.kind().equals("load")));
    add(lines, came.stream().map(ComparisonSheet::line).toList(), CAME, "figures");
    add(lines, comparison.said().stream().map(ComparisonSheet::line).toList(), SAID, "fields");
    if (comparison.isEmpty()) {
      lines.add("Nothing changed.");
    }
    return lines;
  }

  /** What fails now, then what failed, then the rest. */
  private static int rank(Comparison.Verdicts v) {
    return fails(v.after()) ? 0 : fails(v.before()) ? 1 : 2;
  }

  private static boolean fails(Finding finding) {
    return finding != null && finding.verdict() == Verdict.FAIL;
  }

  private static String line(Difference d) {
    return (d.kind() + " " + d.name() + (d.what().isEmpty() ? "" : ", " + d.what()))
        + ": "
        + d.before()
        + " -> "
        + d.after();
  }

  private static void add(List<String> lines, List<String> all, int most, String what) {
    all.stream().limit(most).forEach(lines::add);
    if (all.size() > most) {
      lines.add("... and " + (all.size() - most) + " more " + what + " that the comparison lists.");
    }
  }
}

package org.longlow.constraints.check.road;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** Whole machines under other demands, and what is found of them in one stance. */
final class OfStudy {

  private OfStudy() {}

  static List<Standing> standings(Study study, Stance.Kind... kinds) {
    return study.standings().stream().filter(s -> List.of(kinds).contains(s.kind())).toList();
  }

  /** Of several findings by one name in different stances, the one of this. */
  static Finding finding(Study study, String id, Standing s) {
    return study.findings().stream()
        .filter(f -> f.id().equals(id))
        .filter(f -> f.stance().equals(Optional.of(s.condition())))
        .findFirst()
        .orElseThrow();
  }

  static String people(Standing s) {
    return s.condition().people().isEmpty() ? "unladen" : s.condition().people();
  }

  static String tenths(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  static Study asking(String name, String demand, double value, String unit) {
    return TestMachine.named(name)
        .with("demands", demand, "'" + value + (unit.isEmpty() ? "" : " " + unit) + "'")
        .study();
  }

  static Finding only(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }
}

package org.longlow.constraints.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.Verdict;

/**
 * What was found of one person, as one line of a run that may be gone on with. Their measures are
 * not in it: they come from the crowd again, to the last digit.
 */
public final class JudgedLine {

  private static final String FIELD = "\t";
  private static final String IN_FIELD = "\u001f";

  private JudgedLine() {}

  /** Writes one of a crowd. */
  public static String of(Judged person) {
    return String.join(
        FIELD,
        String.valueOf(person.index()),
        person.verdict().name(),
        reasons(person.fails()),
        reasons(person.cares()),
        ".");
  }

  private static String reasons(List<Reason> reasons) {
    List<String> words = new ArrayList<>();
    reasons.forEach(r -> words.addAll(List.of(plain(r.key()), plain(r.words()))));
    return String.join(IN_FIELD, words);
  }

  /** A name may hold anything; what parts lines and fields is not kept in it. */
  private static String plain(String text) {
    return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029]", " ");
  }

  /** Reads one of a crowd; empty where a line makes no sense. */
  public static Optional<Judged> read(String line, Crowd crowd) {
    String[] cells = line.split(FIELD, -1);
    try {
      int index = Integer.parseInt(cells[0]);
      if (cells.length != 5 || !cells[4].equals(".") || index < 0 || index >= crowd.size()) {
        return Optional.empty();
      }
      return Optional.of(
          Judged.of(
              index,
              crowd.name(index),
              crowd.person(index),
              Verdict.valueOf(cells[1]),
              reasons(cells[2]),
              reasons(cells[3])));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static List<Reason> reasons(String cell) {
    List<Reason> reasons = new ArrayList<>();
    if (!cell.isEmpty()) {
      String[] words = cell.split(IN_FIELD, -1);
      for (int i = 0; i + 1 < words.length; i += 2) {
        reasons.add(new Reason(words[i], words[i + 1]));
      }
    }
    return reasons;
  }
}

package org.longlow.constraints.mend;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.words.Words;

/**
 * One quantity that the layout writes out.
 *
 * @param kind how a change of it is said
 * @param name of what it belongs to
 * @param label which quantity of that, for {@link Kind#FIELD}
 * @param path where it stands
 * @param written what it is now
 */
record WrittenDial(
    Kind kind, String name, String label, List<String> path, Formula written, Grid grid)
    implements Dial {

  /** How a change is said. */
  enum Kind {
    /** The value of a measure. */
    MEASURE,
    /** A field of a part. */
    FIELD,
    /** What a tie holds its pins to. */
    TIE,
    /** A free measure, held where it is put. */
    HELD,
    /** The smallest value of a free measure. */
    FROM,
    /** The largest value of a free measure. */
    TO,
    /** What is asked of the machine. */
    DEMAND
  }

  @Override
  public String thing() {
    return path.get(0) + " " + path.get(1);
  }

  @Override
  public Optional<Rewrite> turned(int steps) {
    String text = grid.plus(written, steps);
    return Optional.of(
        kind == Kind.HELD
            ? new Rewrite(Map.of(path, text, List.of("measures", name, "free"), "false"))
            : new Rewrite(Map.of(path, text)));
  }

  @Override
  public Words says(int steps, Places before, Places after) {
    Words by = Words.written(grid.says(grid.internal(Math.abs(steps))));
    Words to = Words.written(grid.plus(written, steps));
    boolean more = steps > 0;
    return switch (kind) {
      case MEASURE -> Words.of((more ? "raise " : "lower ") + name + " by ", by, " to ", to);
      case FIELD ->
          Words.of("make " + label + " of " + name + " ", by, more ? " more: " : " less: ", to);
      case TIE -> Words.of("make tie " + name + " ", by, more ? " more: " : " less: ", to);
      case HELD -> Words.of("hold " + name + " at ", to);
      case FROM ->
          more
              ? Words.of("keep " + name + " at ", to, " or more")
              : Words.of("let " + name + " go down to ", to);
      case TO ->
          more
              ? Words.of("let " + name + " go up to ", to)
              : Words.of("keep " + name + " at ", to, " or less");
      case DEMAND -> Words.of("ask for ", by, (more ? " more " : " less ") + name + ": ", to);
    };
  }
}

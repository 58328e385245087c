package org.longlow.constraints.document;

import java.util.regex.Pattern;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.MathFunction;
import org.longlow.constraints.formula.Unit;

/** What the user may call things. */
public final class EntryNames {

  /** None ends with a blank, which nobody sees beside the same name without it. */
  public static final Pattern NAME =
      Pattern.compile(
          "[\\p{L}\\p{N}](?:[\\p{L}\\p{M}\\p{N} _.'()+-]{0,58}[\\p{L}\\p{M}\\p{N}_.'()+-])?");

  public static final Pattern MEASURE_NAME = Pattern.compile("[A-Za-z][A-Za-z0-9_]{0,59}");

  private EntryNames() {}

  static void check(Type.Group<?> group, String name, String path, Faults faults) {
    if (!name.isBlank() && !name.equals(name.strip())) {
      faults.structure(
          path, "", "begins or ends with a blank, which nobody sees", "take the blank away");
      return;
    }
    boolean measure = group.naming() == Naming.MEASURE_NAMES;
    if (!(measure ? MEASURE_NAME : NAME).matcher(name).matches()) {
      faults.structure(
          path,
          "",
          "is no good name for a " + group.what(),
          measure
              ? "use up to 60 of A-Z a-z 0-9 _ without spaces, a letter first, so formulas can use"
                  + " it"
              : "use up to 60 letters, digits, spaces and _ . ' ( ) + -, a letter or digit first");
    } else if (measure && Unit.named(name).isPresent()) {
      faults.meaning(path, "", "is named like the unit " + name, "choose another name");
    } else if (measure
        && (MathFunction.named(name).isPresent()
            || Formula.RESERVED.contains(name)
            || name.equals(Type.Vertices.SMOOTH))) {
      faults.meaning(
          path, "", "is named like something formulas already know", "choose another name");
    }
  }
}

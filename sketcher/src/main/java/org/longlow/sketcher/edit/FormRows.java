package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.document.Form.Input;
import org.longlow.constraints.formula.Dim;

/**
 * The rows of a form that are filled in on the bench. Vertices of its outline are left out: they
 * are drawn, not typed.
 */
final class FormRows {

  private static final String VERTICES = "points";

  private FormRows() {}

  /**
   * A field on the bench.
   *
   * @param label with the item of a list that it is in, such as {@code layer 1 thickness}
   * @param usual what stands in where it is left out; may be empty
   * @param drops true if it is an item of a list that can be dropped
   * @param dim what it measures, where only one thing may
   */
  record Said(
      Target target,
      String label,
      String text,
      String help,
      Input input,
      List<String> choices,
      String usual,
      boolean drops,
      Optional<Dim> dim) {

    /** Returns whether it is a quantity that is said. */
    boolean isQuantity() {
      return input == Input.QUANTITY && !text.isEmpty();
    }
  }

  static List<Said> of(Form form) {
    List<Said> all = new ArrayList<>();
    Map<List<String>, String> items = new HashMap<>();
    for (Form.Row row : form.rows()) {
      if (isDrawn(row.path())) {
        continue;
      }
      boolean numbered =
          row.input() == Input.HEADING
              && (row.item() || Character.isDigit(row.path().get(row.path().size() - 1).charAt(0)));
      String prefix = prefix(row.path(), items);
      boolean profile = row.path().get(row.path().size() - 1).equals("profile");
      if (numbered || row.input() == Input.HEADING && profile) {
        items.put(row.path(), row.label() + " ");
      }
      if (row.input() == Input.MORE) {
        all.add(said(row, "another " + prefix + row.label()));
      } else if (row.input() != Input.HEADING || numbered && row.item()) {
        all.add(said(row, prefix + row.label()));
      }
    }
    return all;
  }

  /** The items of lists that a row is in, the outermost first. */
  private static String prefix(List<String> path, Map<List<String>, String> items) {
    StringBuilder prefix = new StringBuilder();
    for (int i = 1; i < path.size(); i++) {
      prefix.append(items.getOrDefault(path.subList(0, i), ""));
    }
    return prefix.toString();
  }

  /**
   * Vertices of a part's own outline and of holes are drawn; those of further bodies are typed, and
   * so are the points of a drawn side.
   */
  private static boolean isDrawn(List<String> path) {
    int points = path.indexOf(VERTICES);
    int edge = path.indexOf("outline");
    return edge >= 0 && points > edge && (path.indexOf("bodies") < 0 || path.contains("holes"));
  }

  private static Said said(Form.Row row, String label) {
    List<String> path = row.path();
    Target target =
        path.get(0).equals("parts") && path.size() > 2
            ? new Target.OfPart(path.get(1), path.subList(2, path.size()), label)
            : new Target.OfField(path, label);
    return new Said(
        target,
        label,
        row.text(),
        row.help(),
        row.input(),
        row.choices(),
        row.usual(),
        row.item(),
        row.dim());
  }
}

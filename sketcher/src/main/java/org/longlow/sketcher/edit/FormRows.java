package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.document.Form.Input;

/**
 * The rows of a form that are filled in on the bench. Vertices of outlines are left out: they are
 * drawn, not typed.
 */
final class FormRows {

  private static final String VERTICES = "points";

  private FormRows() {}

  /**
   * A field on the bench.
   *
   * @param label with the item of a list that it is in, such as {@code layer 1 thickness}
   */
  record Said(
      Target target, String label, String text, String help, Input input, List<String> choices) {

    /** Returns whether it is a quantity that is said. */
    boolean isQuantity() {
      return input == Input.QUANTITY && !text.isEmpty();
    }

    Bench.Row row() {
      return new Bench.Row(target, label, text, "", help, false, false, input, choices);
    }
  }

  static List<Said> of(Form form) {
    List<Said> all = new ArrayList<>();
    List<String> item = List.of();
    String prefix = "";
    for (Form.Row row : form.rows()) {
      if (!row.path().subList(0, Math.min(item.size(), row.path().size())).equals(item)) {
        item = List.of();
        prefix = "";
      }
      if (row.input() == Input.HEADING) {
        if (Character.isDigit(row.path().get(row.path().size() - 1).charAt(0))) {
          item = row.path();
          prefix = row.label() + " ";
        }
      } else if (row.input() != Input.MORE && !row.path().contains(VERTICES)) {
        String label = prefix + row.label();
        Target target =
            row.path().get(0).equals("parts")
                ? new Target.OfPart(
                    row.path().get(1), row.path().subList(2, row.path().size()), label)
                : new Target.OfField(row.path(), label);
        all.add(new Said(target, label, row.text(), row.help(), row.input(), row.choices()));
      }
    }
    return all;
  }
}

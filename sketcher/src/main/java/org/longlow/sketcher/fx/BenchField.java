package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import org.longlow.constraints.document.Form;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Bench;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;

/** One quantity on the bench: its name, a field for value or formula, what it is worth. */
final class BenchField extends VBox {

  /** Left free behind the last letter, px. */
  private static final double CARET_PX = 4;

  /** A choice with more characters than this wants more room than a plain field has. */
  private static final int LONGEST_CHOICE = 12;

  private final Desk desk;
  private final Target target;
  private final TextField field = new TextField();
  private final Label worth = Bits.label("", "bench-worth");
  private final Label trouble = Bits.wrapped("", "trouble");
  private final LoosenLine loosen;
  private final Optional<FreeLine> range;
  private CheckBox free;
  private CheckBox yes;
  private ComboBox<String> choice;
  private Choosing choosing;
  private final boolean broad;
  private final HBox line = Bits.line();
  private String written = "";
  private String measured = "";
  private Font measuredIn;
  private double writtenPx;
  private boolean refused;

  BenchField(Desk desk, Bench.Row row) {
    this.desk = desk;
    this.target = row.target();
    loosen = new LoosenLine(desk);
    range = freed(row).map(measure -> new FreeLine(desk, measure));
    // what has more than its field wants a line of its own
    broad =
        row.measure()
            || row.drops()
            || target instanceof Target.OfTie
            || row.choices().stream().anyMatch(c -> c.length() > LONGEST_CHOICE);
    setAlignment(Pos.BOTTOM_LEFT);
    getStyleClass().add("bench-row");
    Label name = Bits.wrapped(row.label(), "bench-label");
    name.setMaxWidth(Double.MAX_VALUE);
    name.setLabelFor(field);
    if (!row.note().isEmpty()) {
      Bits.told(name, row.note());
      Bits.told(field, row.note());
    }
    Called.by(field, "field-" + idOf(target));
    field.setAccessibleText(row.label() + (row.note().isEmpty() ? "" : ", " + row.note()));
    field.setPrefColumnCount(8);
    HBox.setHgrow(field, Priority.ALWAYS);
    HBox.setHgrow(name, Priority.ALWAYS);
    worth.setMinWidth(USE_PREF_SIZE);
    HBox head = Bits.line(name, worth);
    boolean typed = !(target instanceof Target.OfTie) || !row.text().isEmpty();
    if (typed) {
      line.getChildren().add(input(row));
    } else {
      Label said = Bits.wrapped(row.note(), "bench-note");
      HBox.setHgrow(said, Priority.ALWAYS);
      said.setMaxWidth(Double.MAX_VALUE);
      line.getChildren().add(said);
    }
    if (row.measure()) {
      free = new CheckBox("free");
      Called.by(free, "free-" + target.name());
      free.setAccessibleText("let the solver find " + row.label());
      Bits.told(free, "let the solver find it");
      free.setMinWidth(USE_PREF_SIZE);
      free.setOnAction(e -> free());
      line.getChildren().add(free);
    }
    if (target instanceof Target.OfTie tie) {
      Button letGo =
          Bits.words(
              "untie-" + tie.tie(),
              "let go",
              "let go of tie " + tie.tie(),
              () -> desk.edit(Edits.untie(tie.tie()), target, ""));
      line.getChildren().add(letGo);
    }
    if (row.drops()) {
      line.getChildren()
          .add(
              Bits.words(
                  "drop-" + idOf(target),
                  "drop",
                  "drop " + row.label(),
                  () -> desk.edit(Edits.drop(target), target, "")));
    }
    Called.by(trouble, "trouble-" + idOf(target));
    getChildren().addAll(head, line, OnceSeen.of(trouble), loosen);
    range.ifPresent(getChildren()::add);
    if (row.input() == Form.Input.QUANTITY) {
      NameHelp.on(field, desk);
    }
    field.setOnAction(e -> commit());
    field.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            refused = false;
            field.setText(written);
            desk.forgetTrouble();
            e.consume();
          }
        });
    field
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (!is && !refused) {
                commit();
              }
            });
    field.textProperty().addListener((o, was, is) -> refused = refused && !field.isFocused());
  }

  private static String idOf(Target target) {
    return target.name().replaceAll("[^A-Za-z0-9]+", "-");
  }

  /** The control by which it is filled in; the field is for whatever is typed. */
  private Control input(Bench.Row row) {
    switch (row.input()) {
      case MORE:
        return more(row);
      case HEADING:
        // an item of a list: its own fields follow
        return Bits.label("");
      case SWITCH:
        yes = new CheckBox("yes");
        Called.by(yes, Called.of(field));
        yes.setAccessibleText(field.getAccessibleText());
        Bits.told(yes, row.note().isEmpty() ? row.label() : row.note());
        yes.setOnAction(e -> tick());
        return yes;
      case CHOICE:
        choose(Called.of(field), field.getAccessibleText(), row.usual(), row);
        Bits.told(choice, row.note());
        choosing = new Choosing(choice, chosen -> desk.type(target, chosen));
        return choice;
      default:
        return field;
    }
  }

  /**
   * Sets how wide it is.
   *
   * @param tile px of a plain field
   * @param line px of the whole ticket inside
   */
  void setWide(double tile, double line) {
    boolean said = target instanceof Target.OfTie || trouble.isVisible();
    double wide = broad ? 1.5 * tile + TicketSize.GAP_PX / 2 : tile;
    // a formula that is cut says nothing: it takes as many fields as it needs
    for (double least = leastPx(); wide < least; ) {
      wide += tile + TicketSize.GAP_PX;
    }
    setPrefWidth(said ? line : Math.min(line, wide));
  }

  /** Returns how wide it must be for what is written to be seen whole; 0 if nothing is typed. */
  private double leastPx() {
    if (!line.getChildren().contains(field) || written.isEmpty()) {
      return 0;
    }
    if (!written.equals(measured) || !field.getFont().equals(measuredIn)) {
      measured = written;
      measuredIn = field.getFont();
      Text text = new Text(written);
      text.setFont(measuredIn);
      writtenPx = text.getLayoutBounds().getWidth();
    }
    double edges = field.getInsets().getLeft() + field.getInsets().getRight() + CARET_PX;
    double beside =
        line.getChildren().stream()
            .filter(n -> n != field)
            .mapToDouble(n -> n.prefWidth(-1) + line.getSpacing())
            .sum();
    return writtenPx + edges + beside;
  }

  /** A list that takes more: of what can be picked, or one like the last. */
  private Control more(Bench.Row row) {
    if (row.choices().isEmpty()) {
      return Bits.words(
          "more-" + idOf(target),
          "add",
          "add " + row.label(),
          () -> desk.edit(Edits.more(target, ""), target, ""));
    }
    choose("more-" + idOf(target), "add " + row.label(), "add\u2026", row);
    choosing =
        new Choosing(choice, chosen -> desk.edit(Edits.more(target, chosen), target, chosen));
    return choice;
  }

  private void choose(String called, String spoken, String prompt, Bench.Row row) {
    choice = new ComboBox<>();
    Called.by(choice, called);
    choice.setAccessibleText(spoken);
    choice.getItems().setAll(row.choices());
    choice.setPromptText(prompt);
    choice.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(choice, Priority.ALWAYS);
  }

  /** The measure that is let free here, if this is a measure or says whether one is free. */
  private static Optional<String> freed(Bench.Row row) {
    List<String> path = row.target().path();
    boolean says = path.size() == 3 && path.get(0).equals("measures") && path.get(2).equals("free");
    return says || row.measure() ? Optional.of(path.get(1)) : Optional.empty();
  }

  private void tick() {
    boolean wanted = yes.isSelected();
    if (wanted && range.isPresent() && range.get().asks()) {
      yes.setSelected(false);
    } else {
      desk.type(target, Boolean.toString(wanted));
    }
  }

  /** What has no range is let free only when it is known within which. */
  private void free() {
    boolean wanted = free.isSelected();
    if (wanted && range.get().asks()) {
      free.setSelected(false);
    } else {
      desk.edit(Edits.free(target.name(), wanted), target, "");
    }
  }

  private void commit() {
    String text = field.getText().strip();
    if (!text.equals(written)) {
      desk.type(target, text);
    } else if (isRefused()) {
      desk.forgetTrouble(); // it says again what it said before
    }
  }

  private boolean isRefused() {
    return desk.trouble().map(t -> t.target().equals(target)).orElse(false);
  }

  /** Shows the row as it is now; what is being typed is left alone. */
  void show(Bench.Row row) {
    boolean mine = isRefused();
    trouble.setVisible(mine);
    trouble.setManaged(mine);
    trouble.setText(mine ? desk.trouble().get().refused().words() : "");
    loosen.show(mine ? desk.trouble() : Optional.empty());
    field.setPromptText(row.usual());
    field.pseudoClassStateChanged(WRONG, mine);
    worth.setText(row.value().equals(row.text()) ? "" : row.value());
    if (free != null) {
      free.setSelected(row.free());
    }
    range.ifPresent(r -> r.show(row.free() || row.text().equals("true")));
    if (row.input() == Form.Input.MORE || row.input() == Form.Input.HEADING) {
      if (choice != null && !choice.getItems().equals(row.choices())) {
        choice.getItems().setAll(row.choices());
      }
      return;
    }
    if (row.input() == Form.Input.SWITCH || row.input() == Form.Input.CHOICE) {
      written = row.text();
      if (yes != null) {
        yes.setSelected(row.text().equals("true"));
      }
      if (choosing != null) {
        choosing.show(row.text());
      }
      return;
    }
    boolean typing = field.isFocused() && !field.getText().strip().equals(written);
    if (!row.text().equals(written)) {
      boolean untouched = field.getText().strip().equals(written);
      written = row.text();
      if (untouched || !field.isFocused() && !mine || field.getText().isEmpty()) {
        field.setText(written);
      }
    } else if (!typing && !mine && !field.getText().equals(written)) {
      field.setText(written);
    }
    if (mine) {
      refused = true;
    }
  }

  /** Whether it has the keyboard and holds what is not taken, or was refused. */
  boolean isTyping() {
    return field.isFocused() && (refused || !field.getText().strip().equals(written));
  }

  Target target() {
    return target;
  }

  void focusField() {
    if (field.getParent() != null) {
      field.requestFocus();
      field.selectAll();
      return;
    }
    // whatever it is filled in by comes first, and where it is only told what is done with it
    line.getChildren().stream()
        .filter(Node::isFocusTraversable)
        .findFirst()
        .ifPresent(Node::requestFocus);
  }

  private static final javafx.css.PseudoClass WRONG =
      javafx.css.PseudoClass.getPseudoClass("wrong");
}

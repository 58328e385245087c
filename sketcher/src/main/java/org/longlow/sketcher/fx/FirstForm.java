package org.longlow.sketcher.fx;

import java.io.File;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.util.StringConverter;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.start.Question;
import org.longlow.sketcher.desk.Desk;

/** The questions of a first machine; whatever is left open Longlow chooses. */
final class FirstForm extends VBox {

  /** Said where an answer is left to Longlow. */
  private static final String OPEN = "as it comes";

  private final Desk desk;
  private final Map<Question, TextField> typed = new EnumMap<>(Question.class);
  private final Map<Question, ComboBox<String>> picked = new EnumMap<>(Question.class);
  private final Map<Question, Label> troubles = new EnumMap<>(Question.class);
  private final Label trouble = Bits.wrapped("", "trouble");
  private final Button make;
  private final Button wheels;
  private List<Fault> told = List.of();

  FirstForm(Desk desk) {
    super(8);
    this.desk = desk;
    Called.by(this, "first");
    FlowPane tiles = new FlowPane(12, 6);
    tiles.setRowValignment(VPos.TOP);
    for (Question question : Question.values()) {
      tiles.getChildren().add(tile(question));
    }
    make =
        Bits.words("first-make", "Make it", "make a first machine from these answers", this::make);
    wheels =
        Bits.words(
            "first-wheels",
            "Only two wheels",
            "begin with two wheels on the ground and nothing else;"
                + " wheelbase, tyres, law and who rides as answered",
            () -> ask(desk.first()::wheels));
    show(trouble, "");
    getChildren()
        .addAll(
            Bits.wrapped(
                "Answer what you know; the rest is chosen for you and can be changed afterwards.",
                "start-line"),
            tiles,
            trouble,
            Bits.line(make, wheels));
    desk.watch(this::refresh);
  }

  private VBox tile(Question question) {
    Label name = Bits.label(question.label(), "bench-label");
    Control input = question.form().contains("|") ? choice(question) : field(question);
    Called.by(input, "first-" + question.word());
    input.setAccessibleText(question.label() + ": " + question.help());
    input.setMaxWidth(Double.MAX_VALUE);
    Bits.told(input, question.help());
    name.setLabelFor(input);
    Label wrong = Bits.wrapped("", "trouble");
    Called.by(wrong, "trouble-first-" + question.word());
    show(wrong, "");
    troubles.put(question, wrong);
    VBox tile = new VBox(2, name, question == Question.TRACING ? looked(input) : input, wrong);
    tile.getStyleClass().add("first-tile");
    return tile;
  }

  /** A field for a file, with what looks for one. */
  private HBox looked(Control field) {
    HBox.setHgrow(field, Priority.ALWAYS);
    Button look = Bits.words("first-look", "Look\u2026", "look for an SVG file", this::look);
    look.setMinWidth(Region.USE_PREF_SIZE);
    return new HBox(4, field, look);
  }

  private void look() {
    FileChooser chooser = FileLook.near("Trace from", Optional.empty());
    chooser.getExtensionFilters().add(FileLook.ending("SVG drawings", List.of(".svg")));
    File chosen = chooser.showOpenDialog(getScene().getWindow());
    if (chosen != null) {
      typed.get(Question.TRACING).setText(chosen.getPath());
    }
  }

  private Control field(Question question) {
    TextField field = new TextField();
    field.setPromptText(example(question));
    field.setOnAction(e -> make());
    typed.put(question, field);
    return field;
  }

  private static String example(Question question) {
    return switch (question) {
      case RIDER -> "man 1770 mm, 84 kg";
      case SECOND -> "woman 5 %";
      case WHEELBASE -> "it follows; such as 1700 mm";
      case FRONT_TYRE -> "110/80-16";
      case REAR_TYRE -> "140/70-16";
      case RECLINE -> "30 deg";
      case BOX -> "390 x 310 x 320 mm, 48 kg";
      case TRACING -> "engine.svg";
      case LAW -> "us, un-r53, uk";
      default -> question.form();
    };
  }

  private Control choice(Question question) {
    ComboBox<String> choice = new ComboBox<>();
    choice.getItems().add(OPEN);
    choice.getItems().addAll(question.form().split("\\|"));
    choice.setValue(OPEN);
    choice.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(String answer) {
            return explained(question, answer);
          }

          @Override
          public String fromString(String words) {
            return words;
          }
        });
    picked.put(question, choice);
    return choice;
  }

  /** An answer with what its help says of it in brackets, as in before (under the knees). */
  private static String explained(Question question, String answer) {
    Matcher said = Pattern.compile(answer + " \\([^)]*\\)").matcher(question.help());
    return said.find() ? said.group() : answer;
  }

  private void make() {
    ask(desk.first()::make);
  }

  private void ask(Consumer<Map<Question, String>> maker) {
    if (desk.first().isMaking()) {
      return;
    }
    Map<Question, String> answers = new EnumMap<>(Question.class);
    typed.forEach(
        (question, field) -> {
          if (!field.getText().isBlank()) {
            answers.put(question, field.getText());
          }
        });
    picked.forEach(
        (question, choice) -> {
          if (!OPEN.equals(choice.getValue())) {
            answers.put(question, choice.getValue());
          }
        });
    maker.accept(answers);
  }

  private void refresh() {
    make.setDisable(desk.first().isMaking());
    wheels.setDisable(desk.first().isMaking());
    make.setText(desk.first().isMaking() ? "Making it\u2026" : "Make it");
    if (desk.first().faults() == told) {
      return;
    }
    told = desk.first().faults();
    List<Fault> others = new ArrayList<>(told);
    troubles.forEach(
        (question, label) -> {
          List<Fault> mine = told.stream().filter(f -> f.path().equals(question.word())).toList();
          others.removeAll(mine);
          show(label, mine.stream().map(FirstForm::says).collect(Collectors.joining("\n")));
        });
    show(trouble, others.stream().map(Fault::line).collect(Collectors.joining("\n")));
    if (!told.isEmpty()) {
      // the page is switched on again with this very news
      Platform.runLater(this::focusRefused);
    }
  }

  /** The keyboard goes to the first answer that is refused. */
  private void focusRefused() {
    for (Question question : Question.values()) {
      if (troubles.get(question).isVisible()) {
        Control input = typed.containsKey(question) ? typed.get(question) : picked.get(question);
        input.requestFocus();
        if (input instanceof TextField field) {
          field.selectAll();
        }
        return;
      }
    }
    make.requestFocus();
  }

  private static String says(Fault fault) {
    return fault.message() + (fault.remedy().isEmpty() ? "" : "; " + fault.remedy());
  }

  private static void show(Label label, String text) {
    label.setText(text);
    label.setVisible(!text.isEmpty());
    label.setManaged(!text.isEmpty());
  }
}

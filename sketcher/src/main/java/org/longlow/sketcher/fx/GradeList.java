package org.longlow.sketcher.fx;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.seat.FoamGrade;
import org.longlow.constraints.seat.FoamGrades;
import org.longlow.rider.words.Units;

/** The table of foam grades. The arrows show what a grade would do; Enter or a click takes it. */
final class GradeList extends VBox {

  private final Consumer<Optional<FoamGrade>> show;
  private final Consumer<FoamGrade> take;
  private final ListView<FoamGrade> list = new ListView<>();
  private final Label source = Bits.wrapped("", "finding-detail");
  private Units units = Units.MM;
  private boolean setting;

  /**
   * @param show shows what a grade would do, or with none what is there
   * @param take makes the layer picked of it
   */
  GradeList(Consumer<Optional<FoamGrade>> show, Consumer<FoamGrade> take) {
    super(4);
    this.show = show;
    this.take = take;
    Called.by(list, "cushion-grades");
    list.getStyleClass().add("cushion-grades");
    list.setAccessibleText("grades of foam; Enter makes the layer picked of one");
    list.getItems().setAll(FoamGrades.all());
    list.setCellFactory(l -> new Row());
    list.setPrefHeight(150);
    VBox.setVgrow(list, Priority.ALWAYS);
    Called.by(source, "cushion-source");
    list.getSelectionModel().selectedItemProperty().addListener((o, was, is) -> looked(is));
    list.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ENTER && list.getSelectionModel().getSelectedItem() != null) {
            take.accept(list.getSelectionModel().getSelectedItem());
            e.consume();
          }
        });
    list.focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (!is) {
                show.accept(Optional.empty());
              }
            });
    getChildren().addAll(list, source);
  }

  private void looked(FoamGrade grade) {
    source.setText(
        grade == null
            ? "None of these grades: its figures were typed. A data sheet comes before any grade."
            : grade.name() + ", " + grade.status().words() + ": " + grade.source() + ".");
    if (!setting && grade != null && list.isFocused()) {
      show.accept(Optional.of(grade));
    }
  }

  /** Marks the grade that a layer is of, unless somebody is choosing. */
  void mark(FoamSpec layer, Units in) {
    if (units != in) {
      units = in;
      list.refresh();
    }
    if (list.isFocused()) {
      return;
    }
    setting = true;
    Optional<FoamGrade> grade = FoamGrades.of(layer);
    grade.ifPresentOrElse(
        g -> {
          if (g != list.getSelectionModel().getSelectedItem()) {
            list.getSelectionModel().select(g);
            list.scrollTo(Math.max(0, FoamGrades.all().indexOf(g) - 1));
          }
        },
        () -> list.getSelectionModel().clearSelection());
    looked(grade.orElse(null));
    setting = false;
  }

  private final class Row extends ListCell<FoamGrade> {
    private final Label name = Bits.label("", "finding-subject");
    private final Label figures = Bits.label("", "finding-text");
    private final Label use = Bits.label("", "finding-detail");
    private final Label status = Bits.label("", "finding-detail");
    private final VBox box;

    Row() {
      getStyleClass().add("found");
      name.setMinWidth(USE_PREF_SIZE);
      figures.setMinWidth(USE_PREF_SIZE);
      HBox upper = new HBox(10, name, Bits.gap(), figures);
      HBox lower = new HBox(10, use, Bits.gap(), status);
      status.setMinWidth(USE_PREF_SIZE);
      box = new VBox(upper, lower);
      box.setMaxWidth(Double.MAX_VALUE);
      setPrefWidth(0);
      setOnMouseClicked(
          e -> {
            if (!isEmpty()) {
              take.accept(getItem());
            }
          });
    }

    @Override
    protected void updateItem(FoamGrade grade, boolean empty) {
      super.updateItem(grade, empty);
      setText(null);
      setGraphic(empty ? null : box);
      if (!empty) {
        name.setText(grade.name());
        figures.setText(grade.figures(units));
        use.setText(grade.use());
        status.setText(grade.status().words());
        setAccessibleText(
            grade.name() + ", " + grade.figures(units) + ", " + grade.status().words());
      }
    }
  }
}

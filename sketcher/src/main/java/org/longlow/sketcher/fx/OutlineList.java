package org.longlow.sketcher.fx;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import org.longlow.constraints.document.ShownQuantity;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.FormulaException;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.json.SvgSheet;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.words.Names;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.OutlineIntake;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.OutlineEdits;

/** The paths of an SVG file with their pictures: one is picked, scaled, and given to a part. */
final class OutlineList extends VBox {

  private static final double PICTURE_WIDE_PX = 92;
  private static final double PICTURE_HIGH_PX = 62;
  private static final String NEW = "a new ";

  private final Desk desk;
  private final Board board;
  private final Runnable close;
  private final OutlineIntake intake;
  private final FlowPane pictures = new FlowPane(5, 5);
  private final ToggleGroup group = new ToggleGroup();
  private final TextField unit = new TextField();
  private final TextField wide = new TextField();
  private final ComboBox<String> whom = new ComboBox<>();
  private final Label trouble = Bits.wrapped("", "trouble");
  private Path file;

  OutlineList(Desk desk, Board board, Runnable close) {
    super(7);
    this.desk = desk;
    this.board = board;
    this.close = close;
    intake = new OutlineIntake(desk);
    Called.by(this, "outline-list");
    ScrollPane scroll = new ScrollPane(pictures);
    scroll.setFitToWidth(true);
    scroll.setPrefViewportHeight(2.4 * PICTURE_HIGH_PX);
    scroll.getStyleClass().add("slip-scroll");
    scroll.setFocusTraversable(false);
    Called.by(unit, "outline-unit");
    unit.setPrefColumnCount(9);
    unit.setAccessibleText("how long one unit of the file is");
    Called.by(wide, "outline-wide");
    wide.setPrefColumnCount(9);
    wide.setPromptText("as the file says");
    wide.setAccessibleText("or how wide the outline really is");
    Called.by(whom, "outline-part");
    whom.setAccessibleText("which part gets the outline");
    Called.by(trouble, "trouble-outline");
    wide.setOnAction(e -> give());
    getChildren()
        .addAll(
            scroll,
            Bits.line(Bits.label("one unit of the file is", "bench-label"), unit),
            Bits.line(Bits.label("or the outline is this wide", "bench-label"), wide),
            Bits.line(
                Bits.label("for", "bench-label"),
                whom,
                Bits.words("outline-give", "Take it", "take this outline", this::give)),
            trouble,
            Bits.wrapped(
                "The upper left corner of the file's sheet comes to the pin that the part's outline"
                    + " is drawn from. What is changed in the file changes here.",
                "bench-label"));
    away();
  }

  /** Has nothing to show. */
  void away() {
    file = null;
    show(false);
  }

  private void show(boolean on) {
    setVisible(on);
    setManaged(on);
  }

  /** Lists the paths of a file. */
  void list(Path svg) {
    intake.look(svg, sheet -> show(svg, sheet));
  }

  private void show(Path svg, SvgSheet sheet) {
    file = svg;
    say("");
    pictures.getChildren().clear();
    group.getToggles().clear();
    for (int i = 0; i < sheet.paths().size(); i++) {
      pictures.getChildren().add(picture(sheet.paths().get(i), i));
    }
    group.getToggles().stream()
        .filter(t -> !((ToggleButton) t).isDisabled())
        .findFirst()
        .ifPresent(group::selectToggle);
    unit.setText(sheet.unitMm().map(mm -> Formula.of(mm, Unit.MM).text()).orElse(""));
    unit.setPromptText(sheet.unitMm().isPresent() ? "" : "such as 1 mm");
    wide.clear();
    whom.getItems().setAll(takers());
    String chosen = desk.options().chosen();
    String picked = chosen.startsWith("part:") ? chosen.substring("part:".length()) : "";
    whom.setValue(whom.getItems().contains(picked) ? picked : NEW + Names.word(SolidPart.Kind.BOX));
    show(true);
    group.getToggles().stream().findFirst().ifPresent(t -> ((ToggleButton) t).requestFocus());
  }

  private List<String> takers() {
    List<String> all = new ArrayList<>();
    desk.shown()
        .ifPresent(
            s ->
                s.layout().parts().values().stream()
                    .filter(Part.Outlined.class::isInstance)
                    .forEach(p -> all.add(p.name())));
    for (SolidPart.Kind kind : SolidPart.Kind.values()) {
      all.add(NEW + Names.word(kind));
    }
    return all;
  }

  private ToggleButton picture(SvgSheet.Outlined path, int index) {
    ToggleButton button =
        Bits.verbatim(new ToggleButton(path.id().isEmpty() ? "no id" : path.id()));
    button.setWrapText(true);
    Called.by(button, "outline-path-" + index);
    button.getStyleClass().add("seat");
    button.setContentDisplay(javafx.scene.control.ContentDisplay.TOP);
    button.setGraphic(drawn(path));
    button.setUserData(path);
    button.setMaxWidth(PICTURE_WIDE_PX + 24);
    button.setAccessibleText("path " + button.getText());
    button.setToggleGroup(group);
    Bits.told(button, "take this path");
    if (!path.fault().isEmpty()) {
      button.setDisable(true);
      button.setText(button.getText() + ": " + path.fault());
      button.setAccessibleText(button.getText());
    }
    return button;
  }

  private static Canvas drawn(SvgSheet.Outlined path) {
    Canvas canvas = new Canvas(PICTURE_WIDE_PX, PICTURE_HIGH_PX);
    if (path.points().isEmpty()) {
      return canvas;
    }
    double left = path.points().stream().mapToDouble(PointMm::x).min().orElse(0);
    double low = path.points().stream().mapToDouble(PointMm::z).min().orElse(0);
    double high = path.points().stream().mapToDouble(PointMm::z).max().orElse(0);
    double scale =
        Math.min(
            (PICTURE_WIDE_PX - 6) / Math.max(1e-9, path.width()),
            (PICTURE_HIGH_PX - 6) / Math.max(1e-9, high - low));
    int n = path.points().size();
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = 3 + (path.points().get(i).x() - left) * scale;
      y[i] = PICTURE_HIGH_PX - 3 - (path.points().get(i).z() - low) * scale;
    }
    GraphicsContext gc = canvas.getGraphicsContext2D();
    // between light and dark, so that it is seen on either card
    gc.setStroke(Color.gray(0.5));
    gc.setLineWidth(1.5);
    if (path.closed()) {
      gc.strokePolygon(x, y, n);
    } else {
      gc.strokePolyline(x, y, n);
    }
    return canvas;
  }

  private void say(String words) {
    trouble.setText(words);
    trouble.setVisible(!words.isEmpty());
    trouble.setManaged(!words.isEmpty());
  }

  private void give() {
    if (group.getSelectedToggle() == null || file == null || desk.shown().isEmpty()) {
      say("Pick a path first.");
      return;
    }
    if (wide.getText().isBlank() && unit.getText().isBlank()) {
      say("The file does not say how long its unit is: type it, or how wide the outline is.");
      return;
    }
    SvgSheet.Outlined path = (SvgSheet.Outlined) group.getSelectedToggle().getUserData();
    String scale;
    try {
      scale =
          wide.getText().isBlank()
              ? unit.getText()
              : OutlineEdits.scaleOf(
                  ShownQuantity.typed(wide.getText().strip(), Dim.LENGTH, ShownUnits.of(desk)),
                  path.width());
      Formula.parse(scale.strip());
    } catch (FormulaException e) {
      say("It " + e.getMessage());
      return;
    } catch (OutOfRange e) {
      say(e.getMessage());
      return;
    }
    Layout layout = desk.shown().get().layout();
    Optional<SolidPart.Kind> fresh =
        List.of(SolidPart.Kind.values()).stream()
            .filter(k -> whom.getValue().equals(NEW + Names.word(k)))
            .findFirst();
    String part = fresh.map(k -> OutlineEdits.unused(layout, k)).orElse(whom.getValue());
    PointMm middle = board.inMachine(board.getWidth() / 2, board.getHeight() / 2);
    Function<String, Edit> edit =
        name -> {
          OutlineEdits.Source source = new OutlineEdits.Source(name, path.id(), scale);
          return fresh
              .map(kind -> OutlineEdits.added(kind, part, source, middle))
              .orElseGet(() -> OutlineEdits.traced(part, source));
        };
    Path from = file;
    close.run();
    intake.take(from, part, edit);
  }
}

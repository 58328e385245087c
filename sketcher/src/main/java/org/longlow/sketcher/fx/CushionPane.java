package org.longlow.sketcher.fx;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.FoamGrade;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Bench;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.LayerEdits;
import org.longlow.sketcher.edit.Target;
import org.longlow.sketcher.edit.Trouble;
import org.longlow.sketcher.picture.CushionStack;

/**
 * What lies on the cushion bench: the cut through a cushion under each person, what can be done to
 * the layer picked, its data sheet, and the grades it could be of.
 */
final class CushionPane extends VBox implements CushionCanvas.Doing {

  /** Share of the height that the cut itself may take. */
  private static final double CUT_SHARE = 0.3;

  private static final double LEAST_TILE_PX = 84;
  private static final double MOST_TILE_PX = 150;
  private static final String STEPS = "; Shift a large step, Alt a fine one";

  private final Desk desk;
  private final Label head = Bits.label("");
  private final StillWorking working;
  private final CushionCanvas drawing = new CushionCanvas(this::pick, this);
  private final FlowPane doing = new FlowPane(5, 5);
  private final FlowPane fields = new FlowPane(TicketSize.GAP_PX, 2);
  private final CheckBox closed = new CheckBox("closed cells");
  private final Label trouble = Bits.wrapped("", "trouble");
  private final GradeList grades = new GradeList(this::showGrade, this::takeGrade);
  private final Map<Target, BenchField> tiles = new LinkedHashMap<>();
  private final Map<String, Button> buttons = new LinkedHashMap<>();
  private Look look = Look.DAY;
  private String cushion = "";
  private int picked;
  private double seenPx;
  private Trouble inView;
  private OptionalDouble asked = OptionalDouble.empty();
  private boolean showsGrade;
  private String held = "";

  CushionPane(Desk desk) {
    super(6);
    this.desk = desk;
    working = new StillWorking(desk, this, this::refresh);
    Called.by(this, "cushion-bench");
    getStyleClass().add("bench-inner");
    VBox.setVgrow(grades, Priority.ALWAYS);
    button("add", "Add", "add one like it below, Insert", this::add);
    button("out", "Take out", "take this layer out, Delete", this::takeOut);
    button("up", "Up", "swap with the layer above, Page Up", () -> move(-1));
    button("down", "Down", "swap with the layer below, Page Down", () -> move(1));
    button("thinner", "Thinner", "a step thinner, Left" + STEPS, () -> thicker(-step()));
    button("thicker", "Thicker", "a step thicker, Right" + STEPS, () -> thicker(step()));
    Called.by(closed, "cushion-closed");
    Bits.told(closed, "closed cells give hardly at all at seat pressures; they have other figures");
    closed.setOnAction(
        e -> edit(LayerEdits.cells(cushion, picked, closed.isSelected()), "closedCell"));
    doing.getChildren().add(closed);
    Called.by(trouble, "cushion-trouble");
    getChildren()
        .addAll(drawing, doing, new CushionTips(desk, this::cushion), trouble, fields, grades);
    fields.widthProperty().addListener((o, was, is) -> Platform.runLater(this::refresh));
  }

  private double step() {
    return ShownUnits.stepMm(ShownUnits.of(desk), false, false);
  }

  private void button(String id, String words, String tip, Runnable action) {
    Button button = Bits.told(Bits.words("cushion-" + id, words, words + ": " + tip, action), tip);
    buttons.put(id, button);
    doing.getChildren().add(button);
  }

  /** Returns the label that says which cushion is on the bench. */
  Label head() {
    return head;
  }

  String cushion() {
    return cushion;
  }

  CushionCanvas drawing() {
    return drawing;
  }

  int picked() {
    return picked;
  }

  void use(Look next) {
    look = next;
    refresh();
  }

  /** How much of it is seen at a time, px; the cut is a share of that. */
  void seen(double highPx) {
    seenPx = highPx;
    refresh();
  }

  /** Lays a cushion on the bench, its top layer picked, the keyboard in the drawing. */
  void lay(String name) {
    cushion = name;
    picked = 0;
    held = "";
    refresh();
    applyCss(); // what is scrolled is in the scene only then
    drawing.requestFocus();
  }

  /** Whether something is typed into the data sheet that is not taken yet. */
  boolean isTyping() {
    return tiles.values().stream().anyMatch(BenchField::isTyping);
  }

  /** Lets go of what is only shown; returns whether there was anything. */
  boolean letGo() {
    boolean was = drawing.isDragging() || showsGrade;
    if (was) {
      drawing.drop();
      asked = OptionalDouble.empty();
      showsGrade = false;
      desk.dropPreview();
    }
    return was;
  }

  private Optional<CushionPart> part(Layout layout) {
    return Optional.ofNullable(layout.parts().get(cushion))
        .filter(CushionPart.class::isInstance)
        .map(CushionPart.class::cast);
  }

  /** Returns the layer picked as it is in the layout, not as it is shown. */
  private Optional<FoamSpec> layer() {
    return desk.session()
        .flatMap(s -> part(s.layout()))
        .filter(p -> picked < p.layers().size())
        .map(p -> p.layers().get(picked));
  }

  private Target target(String field) {
    List<String> within =
        field.isEmpty() ? List.of("layers") : List.of("layers", Integer.toString(picked), field);
    Target target =
        new Target.OfPart(
            cushion, within, field.isEmpty() ? "layers" : "layer " + (picked + 1) + " " + field);
    // the one of its field, which marks what is refused
    return tiles.keySet().stream()
        .filter(t -> t.path().equals(target.path()))
        .findFirst()
        .orElse(target);
  }

  private void edit(Edit edit, String field) {
    held = "";
    desk.edit(edit, target(field), "");
  }

  private void pick(int layer) {
    if (layer != picked) {
      letGoOfGrade();
      picked = layer;
      held = "";
      refresh();
    }
  }

  // --- what is done to the layer picked ---

  @Override
  public void dragged(int layer, double mm) {
    double most = Math.max(LayerEdits.THINNEST_MM, mm);
    if (asked.isPresent() && asked.getAsDouble() == most) {
      return;
    }
    try {
      desk.preview(LayerEdits.thick(cushion, layer, most, ShownUnits.of(desk)));
      asked = OptionalDouble.of(most);
    } catch (OutOfRange e) {
      held = e.getMessage();
      refresh();
    }
  }

  @Override
  public void dropped() {
    OptionalDouble mm = asked;
    asked = OptionalDouble.empty();
    if (mm.isPresent()) {
      Edit edit = LayerEdits.thick(cushion, picked, mm.getAsDouble(), ShownUnits.of(desk));
      desk.settle(edit, target("thickness"));
    }
    refresh();
  }

  @Override
  public void thicker(double mm) {
    edit(LayerEdits.thicker(cushion, picked, mm), "thickness");
  }

  @Override
  public void add() {
    layer()
        .ifPresent(
            foam -> {
              edit(LayerEdits.add(cushion, picked + 1, foam), "");
            });
  }

  @Override
  public void takeOut() {
    edit(LayerEdits.takeOut(cushion, picked), "");
  }

  @Override
  public void move(int by) {
    int to = picked + by;
    int count = desk.session().flatMap(s -> part(s.layout())).map(p -> p.layers().size()).orElse(0);
    if (to >= 0 && to < count) {
      edit(LayerEdits.swap(cushion, picked, to), "");
      picked = to;
    }
  }

  @Override
  public void type() {
    tiles.values().stream().findFirst().ifPresent(BenchField::focusField);
  }

  private void showGrade(Optional<FoamGrade> grade) {
    if (grade.isPresent() && layer().isPresent()) {
      showsGrade = true;
      desk.preview(LayerEdits.grade(cushion, picked, grade.get()));
    } else if (grade.isEmpty()) {
      letGoOfGrade();
    }
  }

  private void letGoOfGrade() {
    if (showsGrade) {
      showsGrade = false;
      desk.dropPreview();
    }
  }

  private void takeGrade(FoamGrade grade) {
    showsGrade = false;
    desk.settle(LayerEdits.grade(cushion, picked, grade), target(""));
  }

  // --- what is shown ---

  /** Shows the cushion as it is now; returns whether it is still there. */
  boolean refresh() {
    BoardState shown = desk.shown().orElse(null);
    head.setText("cushion bench, " + cushion + (working.look() ? ", " + StillWorking.WORDS : ""));
    if (shown != null && shown.working() && part(shown.layout()).isPresent()) {
      return true; // what is found of it comes in a moment
    }
    Optional<CushionStack> stack =
        shown == null ? Optional.empty() : CushionStack.of(shown.study(), cushion);
    if (stack.isEmpty()) {
      return false;
    }
    picked = Math.min(picked, stack.get().layers().size() - 1);
    drawing.setAccessibleText(spoken(stack.get()));
    drawing.show(stack.get(), picked, look, CUT_SHARE * Math.max(300, seenPx));
    layer().ifPresent(foam -> grades.mark(foam, ShownUnits.of(desk)));
    fill(shown);
    int last = stack.get().layers().size() - 1;
    buttons.get("up").setDisable(picked == 0);
    buttons.get("down").setDisable(picked == last);
    buttons.get("out").setDisable(last == 0);
    return true;
  }

  /** The data sheet of the layer picked, field by field. */
  private void fill(BoardState shown) {
    FoamSpec foam = part(shown.layout()).orElseThrow().layers().get(picked);
    closed.setSelected(foam.closedCell());
    List<Bench.Row> rows = LayerSheet.rows(shown, cushion, picked, foam);
    List<Target> wanted = rows.stream().map(Bench.Row::target).toList();
    if (!wanted.equals(List.copyOf(tiles.keySet()))) {
      tiles.clear();
      rows.forEach(r -> tiles.put(r.target(), new BenchField(desk, r)));
      fields.getChildren().setAll(tiles.values());
    }
    double tile = (fields.getWidth() - 4 * TicketSize.GAP_PX) / 5 - 1;
    double larger = TextSize.of(this);
    double wide =
        Math.max(LEAST_TILE_PX * larger, Math.min(MOST_TILE_PX * larger, Math.floor(tile)));
    rows.forEach(
        r -> {
          tiles.get(r.target()).show(r);
          tiles.get(r.target()).setWide(wide, 2 * wide + TicketSize.GAP_PX);
        });
    BenchField wrong = desk.trouble().map(t -> tiles.get(t.target())).orElse(null);
    if (wrong != null && desk.trouble().get() != inView) {
      Reveal.later(wrong);
    }
    inView = desk.trouble().orElse(null);
    String said =
        desk.trouble()
            .filter(t -> t.target() instanceof Target.OfPart p && p.part().equals(cushion))
            .filter(t -> !tiles.containsKey(t.target()))
            .map(Trouble::refused)
            .map(r -> r.words())
            .orElse(held);
    trouble.setText(said);
    trouble.setVisible(!said.isEmpty());
    trouble.setManaged(!said.isEmpty());
  }

  private String spoken(CushionStack stack) {
    CushionStack.Layer layer = stack.layers().get(picked);
    StringBuilder said =
        new StringBuilder(
            "layer %d of %d, %s, %s"
                .formatted(
                    picked + 1,
                    stack.layers().size(),
                    layer.name(),
                    stack.says(layer.thicknessMm())));
    stack
        .loads()
        .forEach(l -> said.append("; ").append(l.who()).append(' ').append(l.verdict().says()));
    return said.toString();
  }
}

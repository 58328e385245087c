package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Pin;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Bench;
import org.longlow.sketcher.edit.BenchPlaces;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.OnBench;
import org.longlow.sketcher.edit.Target;
import org.longlow.sketcher.edit.Trouble;

/** The strip at the left: what is picked, with every quantity open to be typed over. */
final class BenchPane extends VBox {

  /** While something moves its figures are rewritten no oftener; nobody reads faster. */
  private static final long LIVE_PAUSE_NS = 80_000_000;

  private final Desk desk;
  private final Label head = Bits.label("");
  private final Label note = Bits.wrapped("", "bench-note");
  private final Label freedom = Bits.wrapped("", "bench-freedom");
  private final Label drawn = Bits.wrapped("", "bench-note");
  private String toldOf = "";
  private Layout toldIn;
  private String told = "";
  private final CheckBox nailed = new CheckBox("nailed in place");
  private final Label elsewhere = Bits.wrapped("", "trouble");
  private final VBox groups = new VBox(2);
  private final VBox inner = new VBox(6);
  private final Scrolled scroll = new Scrolled(inner);
  private final TieMaker tieMaker;
  private final EntryLine entry;
  private final SeveralLine several;
  private final Map<Target, BenchField> fields = new LinkedHashMap<>();
  private final List<FlowPane> rows = new ArrayList<>();
  private List<String> shape = List.of();
  private int columns = 2;
  private Trouble inView;
  private Bench kept;
  private long filledAt;

  BenchPane(Desk desk) {
    this.desk = desk;
    Called.by(this, "bench");
    getStyleClass().add("bench");
    tieMaker = new TieMaker(desk);
    entry = new EntryLine(desk);
    Called.by(drawn, "told-as-drawn");
    Called.by(elsewhere, "trouble-elsewhere");
    Called.by(nailed, "nailed");
    Bits.told(nailed, "the solver leaves it where it is, key K");
    nailed.setOnAction(
        e ->
            pin()
                .ifPresent(
                    p ->
                        desk.edit(
                            Edits.nail(p, nailed.isSelected()), new Target.OfPin(p, true), "")));
    several = new SeveralLine(desk);
    inner
        .getChildren()
        .addAll(
            OnceSeen.of(entry),
            OnceSeen.of(several),
            note,
            elsewhere,
            freedom,
            drawn,
            nailed,
            groups,
            OnceSeen.of(tieMaker));
    inner.getStyleClass().add("bench-inner");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().add(scroll);
    desk.watch(this::refresh);
    sceneProperty().addListener(o -> refresh());
  }

  /** Lays tools of one kind of thing under its name; they show themselves where they belong. */
  void lay(Node tools) {
    inner.getChildren().add(inner.getChildren().indexOf(note) + 1, OnceSeen.of(tools));
  }

  /** Returns the label that says what is on the bench. */
  Label head() {
    return head;
  }

  /** Says how the pin can move: in full once that was looked up, in short until then. */
  private String words(String name, Pin pin, BoardState shown) {
    desk.drags()
        .freedom()
        .filter(f -> f.pin().equals(name))
        .ifPresent(
            f -> {
              toldOf = name;
              toldIn = shown.layout();
              told = f.words();
            });
    if (name.equals(toldOf) && shown.layout() == toldIn) {
      return told;
    }
    if (pin.nailed()) {
      return name + " is nailed in place";
    }
    return shown.movable().contains(name) ? name + " can move" : name + " is held by its ties";
  }

  private java.util.Optional<String> pin() {
    String chosen = desk.options().chosen();
    return chosen.startsWith("pin:")
        ? java.util.Optional.of(chosen.substring(4))
        : java.util.Optional.empty();
  }

  /** Whether what is picked was just added and is still being worked in. */
  boolean isAwaited() {
    String chosen = desk.options().chosen();
    return !chosen.isEmpty()
        && !desk.isIdle()
        && desk.shown().map(s -> OnBench.isWhole(s.layout(), chosen)).orElse(false);
  }

  private void refresh() {
    BoardState shown = desk.shown().orElse(null);
    if (shown == null || getScene() == null || isAwaited()) {
      return;
    }
    boolean same = kept != null && kept.subject().equals(desk.options().chosen());
    if (shown.live()
        && same
        && desk.trouble().isEmpty()
        && inView == null
        && System.nanoTime() - filledAt < LIVE_PAUSE_NS) {
      return; // with the end of a drag comes what is not live
    }
    filledAt = System.nanoTime();
    Bench bench =
        OnBench.of(shown.layout(), shown.study().placed().places(), desk.options().chosen());
    bench = kept == null ? bench : BenchPlaces.keep(kept, bench);
    kept = bench;
    entry.show(bench, shown.layout());
    several.refresh();
    head.setText(bench.title() + (bench.kind().equals(bench.title()) ? "" : ", " + bench.kind()));
    note.setText(bench.note());
    show(note, !bench.note().isEmpty());
    boolean isPin = bench.subject().startsWith("pin:");
    show(nailed, isPin);
    show(freedom, false);
    show(drawn, isPin && shown.standing().isPresent());
    shown
        .standing()
        .ifPresent(
            s ->
                drawn.setText(
                    "its place is told as drawn; the card and its rules show the machine "
                        + s.condition().says()));
    if (isPin) {
      Pin pin = shown.layout().pins().get(bench.title());
      nailed.setSelected(pin.nailed());
      freedom.setText(words(bench.title(), pin, shown));
      show(freedom, true); // always there, so that no field moves when the pointer leaves the pin
    }
    tieMaker.show(isPin ? bench.title() : "", shown);
    List<String> wanted = shape(bench);
    if (!wanted.equals(shape)) {
      boolean alike = !shape.isEmpty() && shape.get(0).equals(wanted.get(0));
      Target typed = alike ? withKeyboard() : null;
      int place = new ArrayList<>(fields.keySet()).indexOf(typed);
      shape = wanted;
      rebuild(bench);
      if (!alike) {
        scroll.setVvalue(0); // another thing is read from its name down
      }
      if (typed != null) {
        giveKeyboard(typed, place);
      }
    }
    boolean other =
        desk.trouble().isPresent()
            && !fields.containsKey(desk.trouble().get().target())
            && !tieMaker.isAbout(desk.trouble().get().target())
            && !entry.isAbout(desk.trouble().get().target());
    show(elsewhere, other);
    if (other) {
      Trouble t = desk.trouble().get();
      elsewhere.setText(t.target().name() + ": " + t.refused().words());
    }
    bench.groups().forEach(g -> g.rows().forEach(r -> fields.get(r.target()).show(r)));
    setColumns(columns);
    bringIntoView(desk.trouble().orElse(null));
  }

  /** What was refused is seen, wherever on a long ticket it stands. */
  private void bringIntoView(Trouble trouble) {
    BenchField field = trouble == null ? null : fields.get(trouble.target());
    boolean known = trouble == inView;
    inView = trouble;
    if (field != null && !known) {
      Reveal.later(field);
    }
  }

  /** Returns how wide it is with so many plain fields side by side, px. */
  double width(int columns) {
    return TicketSize.width(columns, TextSize.of(this));
  }

  /** Returns how much of its height lies below its first row of fields, px; 0 if it has none. */
  double belowFirstFields(double width) {
    if (rows.isEmpty() || fields.isEmpty()) {
      return 0;
    }
    double wide = width - inner.getInsets().getLeft() - inner.getInsets().getRight();
    double below = inner.getInsets().getBottom() + groups.prefHeight(wide);
    below -= groups.getChildren().get(0).prefHeight(wide);
    below -= fields.values().iterator().next().prefHeight(-1) + groups.getSpacing();
    for (Node later :
        inner
            .getChildren()
            .subList(inner.getChildren().indexOf(groups) + 1, inner.getChildren().size())) {
      below += later.isManaged() ? inner.getSpacing() + later.prefHeight(wide) : 0;
    }
    return below;
  }

  private double line(int columns) {
    return columns * tile() + (columns - 1) * TicketSize.GAP_PX;
  }

  private double tile() {
    return TicketSize.TILE_PX * TextSize.of(this);
  }

  /** Lays the fields out in so many columns. */
  void setColumns(int n) {
    columns = n;
    rows.forEach(r -> r.setPrefWrapLength(line(n) + 1));
    fields.values().forEach(f -> f.setWide(tile(), line(n)));
  }

  private static void show(javafx.scene.Node node, boolean on) {
    node.setVisible(on);
    node.setManaged(on);
  }

  /** What decides which fields there are; values alone do not. */
  private static List<String> shape(Bench bench) {
    List<String> shape = new ArrayList<>(List.of(bench.subject()));
    bench
        .groups()
        .forEach(
            g -> {
              shape.add(g.heading());
              g.rows().forEach(r -> shape.add(r.target() + r.label() + r.note()));
            });
    return shape;
  }

  private void rebuild(Bench bench) {
    fields.clear();
    rows.clear();
    groups.getChildren().clear();
    for (Bench.Group group : bench.groups()) {
      FlowPane tiles = new FlowPane(TicketSize.GAP_PX, 2);
      tiles.setRowValignment(VPos.BOTTOM);
      for (Bench.Row row : group.rows()) {
        BenchField field = new BenchField(desk, row);
        fields.put(row.target(), field);
        tiles.getChildren().add(field);
      }
      rows.add(tiles);
      groups.getChildren().addAll(Bits.label(group.heading(), "bench-heading"), tiles);
    }
  }

  /** What the field with the keyboard is about; null if it is elsewhere. */
  private Target withKeyboard() {
    Node at = getScene() == null ? null : getScene().getFocusOwner();
    while (at != null && !(at instanceof BenchField)) {
      at = at.getParent();
    }
    return at instanceof BenchField field && fields.get(field.target()) == field
        ? field.target()
        : null;
  }

  /** Puts the keyboard back where it was, or into what stands there now. */
  private void giveKeyboard(Target target, int place) {
    List<BenchField> all = List.copyOf(fields.values());
    if (fields.containsKey(target)) {
      fields.get(target).focusField();
    } else if (!all.isEmpty()) {
      all.get(Math.min(place, all.size() - 1)).focusField();
    }
  }

  /** Puts the keyboard into the first field. */
  void focusFirst() {
    fields.values().stream().findFirst().ifPresent(BenchField::focusField);
  }
}

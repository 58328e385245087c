package org.longlow.sketcher.fx;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Gathered;
import org.longlow.constraints.check.finding.SaidFigures;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.FindingInSight;

/** The slip of findings beside the card, worst first; the one picked is opened out. */
final class FindingSlip extends VBox {

  /** While something moves the slip is rewritten no oftener; nobody reads faster. */
  private static final long LIVE_PAUSE_NS = 80_000_000;

  /** So much of a row is its first lines, px. */
  private static final double HEAD_PX = 48;

  /** Rows turn out higher once they are laid out; the list is scrolled again at most so often. */
  private static final int TRIES = 3;

  /** So much of the list is seen whatever lies under it, px. */
  private static final double LEAST_LIST_PX = 90;

  private final Desk desk;
  private final Label count = Bits.label("");
  private final ListView<Finding> list = new ListView<>();
  private final MendPane mend;
  private final ChartPane chart;
  private final StillWorking working;

  /** What else is like a finding, by its id, where something is. */
  private Map<String, String> others = Map.of();

  private List<Finding> findings = List.of();
  private Map<String, Integer> numbers = Map.of();
  private BoardState numbered;
  private Units units = Units.MM;
  private boolean filling;
  private long filledAt;

  private final FindingInSight sight = new FindingInSight();

  /** Index of the finding whose first line is kept in sight; -1 for none. */
  private int seen = -1;

  /** Whether an offer is shown, or was until the answer that comes next. */
  private boolean trying;

  FindingSlip(Desk desk) {
    this.desk = desk;
    mend = new MendPane(desk);
    chart = new ChartPane(desk);
    working = new StillWorking(desk, list, this::count);
    Called.by(this, "findings");
    getStyleClass().add("finding-slip");
    Called.by(list, "findings");
    list.setAccessibleText("Findings, worst first");
    list.setCellFactory(l -> new Cell());
    list.setFocusTraversable(true);
    list.addEventFilter(KeyEvent.KEY_PRESSED, this::pickFirst);
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (o, was, is) -> {
              if (!filling && is != null && !is.id().equals(desk.finding())) {
                desk.chooseFinding(is.id());
              }
            });
    list.heightProperty().addListener((o, was, is) -> keepSeen());
    list.setMinHeight(LEAST_LIST_PX);
    VBox.setVgrow(list, Priority.ALWAYS);
    Label caution =
        Bits.wrapped(
            "A sketch, not a certificate: local rules and a licensed inspection decide.",
            "slip-caution");
    Scrolled under = new Scrolled(new VBox(chart, mend, caution));
    getChildren().addAll(list, under);
    desk.watch(this::refresh);
  }

  private void refresh() {
    picking(picked());
    working.look();
    count();
    boolean live = desk.shown().map(s -> s.live() || s.working()).orElse(false);
    trying = desk.mending().tried().isPresent() || trying && live;
    if (trying) {
      return; // what is tried is seen on the card; the list stays under the pointer
    }
    List<Finding> now = desk.shown().map(BoardState::findings).orElse(List.of());
    if (live && (System.nanoTime() - filledAt < LIVE_PAUSE_NS || !isSeen())) {
      return; // with the end of a drag comes what is not live
    }
    renumber();
    int picked = index(now, desk.finding());
    Units shown = ShownUnits.of(desk);
    if (!now.equals(findings) || shown != units) {
      filledAt = System.nanoTime();
      findings = now;
      units = shown;
      filling = true;
      others = Gathered.others(now);
      list.getItems().setAll(now);
      filling = false;
      count();
    }
    boolean other = list.getSelectionModel().getSelectedIndex() != picked;
    if (other) {
      filling = true;
      if (picked < 0) {
        list.getSelectionModel().clearSelection();
      } else {
        list.getSelectionModel().select(picked);
      }
      filling = false;
    }
    int wanted = sight.index(now, desk.finding(), live);
    if (other || wanted >= 0 && wanted != seen) {
      seen = wanted;
      keepSeen();
    }
  }

  private void picking(Optional<Finding> picked) {
    chart.refresh(picked);
    mend.refresh(picked);
  }

  private void count() {
    count.setText(working.isSaid() ? StillWorking.WORDS : summary(findings));
  }

  /** What was picked is drawn with its mark only after it was picked: then its sign gets it too. */
  private void renumber() {
    BoardState shown = desk.shown().orElse(null);
    if (shown == null || shown == numbered) {
      return;
    }
    numbered = shown;
    Map<String, Integer> now = new HashMap<>(shown.options().findings());
    now.keySet().removeIf(id -> !shown.isMarked(id));
    if (!now.equals(numbers)) {
      numbers = now;
      list.refresh();
    }
  }

  /**
   * A row grows as it opens, and the list gives way to offers: the first line of the finding that
   * is read stays seen, and Down goes on from there.
   */
  private void keepSeen() {
    Platform.runLater(
        () -> {
          if (seen < 0 || seen >= list.getItems().size()) {
            return;
          }
          list.applyCss();
          list.layout();
          for (int i = 0; i < TRIES && !isHeadSeen(seen); i++) {
            list.scrollTo(seen);
            list.layout();
          }
          if (seen != list.getSelectionModel().getSelectedIndex()) {
            list.getFocusModel().focus(seen);
          }
        });
  }

  private boolean isHeadSeen(int index) {
    for (Node node : list.lookupAll(".finding")) {
      if (node instanceof Cell cell && cell.isVisible() && cell.getIndex() == index) {
        double top = list.sceneToLocal(cell.localToScene(0, 0)).getY();
        double least = Math.min(cell.getHeight(), HEAD_PX * TextSize.of(this));
        return top >= -0.5 && top + least <= list.getHeight();
      }
    }
    return false;
  }

  private boolean isSeen() {
    for (Node node = this; node != null; node = node.getParent()) {
      if (!node.isVisible()) {
        return false;
      }
    }
    return true;
  }

  /** Letters have another size now, and signs with them. */
  void grow() {
    list.refresh();
  }

  /** Returns the label that counts them. */
  Label head() {
    return count;
  }

  /** Puts the keyboard into the list; none is opened out before one is picked. */
  void focusList() {
    list.requestFocus();
    if (list.getSelectionModel().isEmpty()) {
      look(0);
    }
  }

  /** Rows are as high as their words only once they are laid out: until then it may go too far. */
  private void look(int i) {
    list.getFocusModel().focus(i);
    list.scrollTo(i);
    seen = i;
    keepSeen();
  }

  /** While none is picked, an arrow or Enter picks the one that was come to. */
  private void pickFirst(KeyEvent e) {
    boolean meant =
        switch (e.getCode()) {
          case UP, DOWN, ENTER, SPACE -> !e.isShortcutDown();
          default -> false;
        };
    if (meant && list.getSelectionModel().isEmpty() && !list.getItems().isEmpty()) {
      list.getSelectionModel().select(Math.max(0, list.getFocusModel().getFocusedIndex()));
      e.consume();
    }
  }

  /** Looks for what mends the finding picked, and puts the keyboard on the first offer. */
  void mend() {
    mend.begin();
  }

  /** The finding picked, as it is told of the machine shown. */
  private Optional<Finding> picked() {
    String id = desk.finding();
    return id.isEmpty()
        ? Optional.empty()
        : desk.shown().map(BoardState::findings).orElse(List.of()).stream()
            .filter(f -> f.id().equals(id))
            .findFirst();
  }

  /** Comes to the first finding of a verdict, which the keyboard takes next. */
  void showFirst(Verdict verdict) {
    for (int i = 0; i < list.getItems().size(); i++) {
      Finding f = list.getItems().get(i);
      if (f.verdict() == verdict && !WorstFirst.leads(f)) {
        look(i);
        return;
      }
    }
  }

  private static int index(List<Finding> all, String id) {
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).id().equals(id)) {
        return i;
      }
    }
    return -1;
  }

  private static String summary(List<Finding> all) {
    return Stream.of(Verdict.FAIL, Verdict.CAUTION, Verdict.PASS)
        .map(v -> v.says(count(all, v)))
        .collect(Collectors.joining(", "));
  }

  private static long count(List<Finding> all, Verdict verdict) {
    return all.stream().filter(f -> f.verdict() == verdict).count();
  }

  /** Returns the sign, with the number that the finding has on the card. */
  private Node sign(Finding f) {
    boolean marked = numbers.containsKey(f.id());
    // it grows with the number on it
    double larger = TextSize.of(this);
    Node shape = Bits.sign(f.verdict(), marked);
    shape.setScaleX(larger);
    shape.setScaleY(larger);
    StackPane sign = new StackPane(shape);
    sign.setMinSize(18 * larger, 18 * larger);
    sign.setAlignment(Pos.CENTER);
    if (marked) {
      sign.getChildren()
          .add(
              Bits.label(
                  Integer.toString(numbers.get(f.id())),
                  "sign-number",
                  "sign-number-" + f.verdict().word()));
    }
    return sign;
  }

  /** One finding; opened out where it is picked. */
  private final class Cell extends ListCell<Finding> {
    private final HBox head = new HBox(8);

    {
      head.setAlignment(Pos.TOP_LEFT);
    }

    private final VBox box = new VBox(3);

    Cell() {
      setPrefWidth(0);
      getStyleClass().add("finding");
      box.setFillWidth(true);
      selectedProperty().addListener((o, was, is) -> fill(getItem()));
      setAccessibleRole(AccessibleRole.LIST_ITEM);
    }

    @Override
    protected void updateItem(Finding item, boolean empty) {
      super.updateItem(item, empty);
      fill(empty ? null : item);
    }

    private String text(Finding f, Units units) {
      return f.text(units) + others.getOrDefault(f.id(), "");
    }

    private void fill(Finding f) {
      if (f == null) {
        setGraphic(null);
        setAccessibleText(null);
        return;
      }
      Units units = ShownUnits.of(desk);
      Label subject = Bits.wrapped(f.subject(), "finding-subject");
      SaidFigures said = f.said(units);
      Label figure = Bits.label(f.figure(units), "finding-figure");
      figure.setMinWidth(USE_PREF_SIZE);
      HBox.setHgrow(subject, Priority.ALWAYS);
      subject.setMaxWidth(Double.MAX_VALUE);
      head.getChildren().setAll(sign(f), subject);
      if (!Double.isNaN(f.value())) {
        head.getChildren().add(figure);
      }
      box.getChildren().setAll(head, Bits.wrapped(text(f, units), "finding-text"));
      if (isSelected()) {
        if (!Double.isNaN(f.limit())) {
          box.getChildren()
              .add(
                  Bits.wrapped(
                      "limit "
                          + said.limit()
                          + ", "
                          + (f.margin() < 0
                              ? "short by " + said.margin().replaceFirst("^-", "")
                              : "room " + said.margin()),
                      "finding-detail"));
        }
        box.getChildren()
            .add(
                Bits.wrapped(
                    f.stance().map(s -> "worst " + s.says()).orElse("in every stance"),
                    "finding-detail"));
        if (!f.source(units).isEmpty()) {
          box.getChildren().add(Bits.wrapped("source: " + f.source(units), "finding-detail"));
        }
        if (!f.group().caution().isEmpty()) {
          box.getChildren().add(Bits.wrapped("caution: " + f.group().caution(), "finding-detail"));
        }
        if (f.where().isEmpty()) {
          box.getChildren()
              .add(
                  Bits.wrapped(
                      "about the machine as a whole, not one place of it", "finding-detail"));
        }
      }
      setGraphic(box);
      setAccessibleText(
          f.subject() + " " + f.verdict().says() + ", " + said.value() + ". " + text(f, units));
    }
  }
}

package org.longlow.sketcher.fx;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.app.Making;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.PaperChoice;
import org.longlow.sketcher.desk.PaperChoice.Kind;
import org.longlow.sketcher.desk.PaperWork;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.SheetInk;
import org.longlow.sketcher.picture.View;
import org.longlow.sketcher.picture.Views;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Scale;

/**
 * Paper from the window: what is wanted at the left, the sheets as they will be printed at the
 * right, turned through by keys.
 */
final class PaperPane extends HBox {

  private static final String UNCORRECTED = "uncorrected";
  private static final String LARGEST = "largest that fits";

  private final Desk desk;
  private final PaperWork work;
  private final Map<Kind, ToggleButton> kinds = new EnumMap<>(Kind.class);
  private final PaperParts parts;
  private final PaperScene scene;
  private final PaperPrinter measuring;
  private final PaperMaking making;
  private final ComboBox<String> paper = typed("paper-size", "paper of the sheets");
  private final ComboBox<String> wall = typed("paper-wall", "paper of the drawing");
  private final ComboBox<String> printer = new ComboBox<>();
  private final ComboBox<String> views = new ComboBox<>();
  private final ComboBox<String> scale = new ComboBox<>();
  private final ComboBox<String> ink = new ComboBox<>();
  private final ComboBox<String> format = new ComboBox<>();
  private final Node paperLine;
  private final Node printerLine;
  private final Node wallLine;
  private final Label words = Bits.wrapped("", "bench-note");
  private final Button before;
  private final Button next;
  private final Label turned = Bits.label("", "crew-figure");
  private final SheetView sheet = new SheetView();
  private Study begun;
  private boolean showing;

  PaperPane(Desk desk, Executor owner, Runnable close) {
    super(12);
    this.desk = desk;
    this.work = new PaperWork(owner, desk.autosave().home(), this::refresh);
    parts = new PaperParts(work);
    scene = new PaperScene(work);
    measuring = new PaperPrinter(work);
    making = new PaperMaking(work, owner);
    Called.by(this, "paper-slip");
    getStyleClass().addAll("slip", "over", "paper-slip");
    PaperWork.papers().forEach(paper.getItems()::add);
    PaperWork.papers().stream().filter(p -> !p.startsWith("roll")).forEach(wall.getItems()::add);
    paper.setOnAction(e -> chosen(() -> work.choose(c -> c.withPaper(text(paper)))));
    wall.setOnAction(e -> chosen(() -> work.choose(c -> c.withWall(text(wall)))));
    Called.by(printer, "paper-for");
    printer.getStyleClass().add("paper-choice");
    printer.setAccessibleText("printer that is corrected for");
    printer.setOnAction(e -> chosen(() -> work.choose(c -> c.withPrinter(printerName()))));
    Called.by(views, "paper-views");
    views.setAccessibleText("views on the drawing");
    Views.all().forEach(v -> views.getItems().add(v.words()));
    views.setOnAction(e -> chosen(() -> work.choose(c -> c.withViews(views()))));
    Called.by(scale, "paper-scale");
    scale.setAccessibleText("scale of the drawing");
    scale.getItems().add(LARGEST);
    Scale.PREFERRED.stream()
        .filter(s -> s.paper() == 1)
        .forEach(s -> scale.getItems().add(s.toString()));
    scale.setOnAction(e -> chosen(() -> work.choose(c -> c.withScale(scale()))));
    Called.by(ink, "paper-ink");
    ink.setAccessibleText("ink of the drawing");
    Arrays.stream(SheetInk.values()).forEach(i -> ink.getItems().add(i.word()));
    ink.setOnAction(
        e -> chosen(() -> SheetInk.of(text(ink)).ifPresent(i -> work.choose(c -> c.withInk(i)))));
    Called.by(format, "paper-format");
    format.setAccessibleText("kind of file");
    format.getItems().addAll("PDF", "SVG");
    format.setOnAction(
        e -> chosen(() -> work.choose(c -> c.withSvg("SVG".equals(format.getValue())))));
    paperLine = Bits.line(Bits.label("paper", "bench-label"), paper);
    printerLine = Bits.line(Bits.label("printer", "bench-label"), printer);
    wallLine =
        new VBox(
            6,
            Bits.line(Bits.label("views", "bench-label"), views),
            Bits.line(Bits.label("paper", "bench-label"), wall, format),
            Bits.line(Bits.label("scale", "bench-label"), scale),
            Bits.line(Bits.label("ink", "bench-label"), ink));
    before = Bits.words("paper-before", "Before", "sheet before", () -> work.turn(-1));
    next = Bits.words("paper-next", "Next", "next sheet", () -> work.turn(1));
    Called.by(words, "paper-words");
    Called.by(turned, "paper-turned");
    getChildren().addAll(choices(close), sheets());
    // before a field takes them for itself
    addEventFilter(KeyEvent.KEY_PRESSED, this::turn);
    sheet.addEventHandler(KeyEvent.KEY_PRESSED, this::turnOnSheet);
    desk.watch(this::follow);
  }

  private Node choices(Runnable close) {
    ToggleGroup group = new ToggleGroup();
    HBox row = new HBox();
    for (Kind kind : Kind.values()) {
      ToggleButton button = new ToggleButton(kind.word());
      Called.by(button, "paper-" + kind.word());
      button.getStyleClass().add("step");
      button.setToggleGroup(group);
      button.setMinWidth(USE_PREF_SIZE);
      button.setOnAction(
          e -> {
            button.setSelected(true);
            work.choose(c -> c.withKind(kind));
          });
      kinds.put(kind, button);
      row.getChildren().add(button);
    }
    VBox left =
        new VBox(
            8,
            Bits.line(
                Bits.label("PAPER", "slip-title"),
                Bits.gap(),
                Bits.words("paper-away", "Put away", "put this slip away", close)),
            row,
            parts,
            wallLine,
            scene,
            paperLine,
            printerLine,
            measuring,
            words,
            making);
    // large letters make it longer than a small window is high
    ScrollPane scroll = new ScrollPane(left);
    scroll.setFitToWidth(true);
    scroll.setFitToHeight(true);
    scroll.setFocusTraversable(false);
    scroll.getStyleClass().add("paper-choices");
    return scroll;
  }

  private Node sheets() {
    VBox.setVgrow(sheet, Priority.ALWAYS);
    HBox line = new HBox(8, Bits.keyed(before, "Page Up"), turned, Bits.keyed(next, "Page Down"));
    line.setAlignment(Pos.CENTER);
    VBox right = new VBox(6, sheet, line);
    HBox.setHgrow(right, Priority.ALWAYS);
    right.setMinWidth(0);
    return right;
  }

  private static ComboBox<String> typed(String id, String spoken) {
    ComboBox<String> box = new ComboBox<>();
    Called.by(box, id);
    box.setEditable(true);
    box.setAccessibleText(spoken);
    box.getStyleClass().add("paper-choice");
    return box;
  }

  private void chosen(Runnable change) {
    if (!showing) {
      change.run();
    }
  }

  private static String text(ComboBox<String> box) {
    return box.getValue() == null ? "" : box.getValue();
  }

  private String printerName() {
    return UNCORRECTED.equals(text(printer)) ? "" : text(printer);
  }

  private Views views() {
    return Views.all().stream()
        .filter(v -> v.words().equals(text(views)))
        .findFirst()
        .orElse(Views.SIDE);
  }

  private Optional<Scale> scale() {
    return text(scale).startsWith("1:")
        ? Optional.of(Scale.oneTo(Integer.parseInt(text(scale).substring(2))))
        : Optional.empty();
  }

  /**
   * Begins with what is on the card: parts picked there are ticked, its people and stance drawn.
   */
  void begin() {
    desk.shown().ifPresent(shown -> begin(shown, true));
    desk.session()
        .ifPresent(
            s -> making.offer(PaperWork.folder(s, Path.of(System.getProperty("user.home")))));
    if (work.choice().kind() == Kind.TEMPLATES) {
      parts.begin();
    } else {
      kinds.get(work.choice().kind()).requestFocus();
    }
  }

  private void begin(BoardState shown, boolean fromCard) {
    begun = shown.study();
    scene.begin(begun);
    work.begin(begun, c -> fromCard ? asOnTheCard(shown, c) : c);
  }

  private PaperChoice asOnTheCard(BoardState shown, PaperChoice c) {
    List<String> known = Making.partsWithTemplates(shown.study());
    List<String> picked = desk.selection().parts().stream().filter(known::contains).toList();
    Set<String> before = c.ticked().stream().filter(known::contains).collect(Collectors.toSet());
    Set<String> ticked =
        !picked.isEmpty() ? Set.copyOf(picked) : before.isEmpty() ? Set.copyOf(known) : before;
    PictureOptions options = shown.options();
    View view = View.shown(shown.study(), options);
    PaperChoice stance =
        options.asDrawn()
            ? c.withAsDrawn()
            : c.withStance(options.stance().filter(s -> s.kind() != Stance.Kind.LADEN));
    return stance
        .withViews(Views.onTheCard(options.aspect(), c.views()))
        .withTicked(ticked)
        .withSeated(view.seated())
        .withOpening(view.opening());
  }

  /** What is on the card was changed meanwhile: the sheets are worked out anew. */
  private void follow() {
    if (isVisible() && desk.isIdle()) {
      desk.shown()
          .filter(s -> !s.live() && s.study() != begun)
          .ifPresent(s -> begin(s, begun == null));
    }
  }

  /** Returns whether Escape has something to end here before the slip itself. */
  boolean giveUp() {
    return making.giveUp();
  }

  private void turn(KeyEvent e) {
    boolean next = e.getCode() == KeyCode.PAGE_DOWN;
    if (!e.isShortcutDown() && (next || e.getCode() == KeyCode.PAGE_UP)) {
      work.turn(next ? 1 : -1);
      e.consume();
    }
  }

  private void turnOnSheet(KeyEvent e) {
    switch (e.getCode()) {
      case RIGHT -> work.turn(1);
      case LEFT -> work.turn(-1);
      case HOME -> work.turn(-work.pages().size());
      case END -> work.turn(work.pages().size());
      default -> {
        return;
      }
    }
    e.consume();
  }

  private void refresh() {
    if (making == null) {
      return; // still being put together
    }
    PaperChoice c = work.choice();
    Kind kind = c.kind();
    boolean pictured = kind == Kind.DRAWING || kind == Kind.REPORT;
    kinds.get(kind).setSelected(true);
    shown(parts, kind == Kind.TEMPLATES);
    shown(wallLine, kind == Kind.DRAWING);
    shown(scene, pictured);
    shown(paperLine, !pictured);
    shown(printerLine, !pictured && kind != Kind.LISTS);
    shown(measuring, kind == Kind.PRINTER);
    showing = true;
    paper.setValue(c.paper());
    wall.setValue(c.wall());
    views.setValue(c.views().words());
    ink.setValue(c.ink().word());
    format.setValue(c.svg() ? "SVG" : "PDF");
    scale.setValue(c.scale().map(Scale::toString).orElse(LARGEST));
    List<String> printers = new ArrayList<>(List.of(UNCORRECTED));
    printers.addAll(work.printers().byName().keySet());
    if (!printer.getItems().equals(printers)) {
      printer.getItems().setAll(printers);
    }
    printer.setValue(c.printer().isEmpty() ? UNCORRECTED : c.printer());
    showing = false;
    parts.refresh();
    scene.refresh();
    measuring.refresh();
    making.refresh();
    words.setText(work.words());
    List<Page> pages = work.pages();
    Page now = pages.isEmpty() ? null : pages.get(work.at());
    String said = now == null ? "" : (work.at() + 1) + " of " + pages.size();
    turned.setText(now == null ? "" : "sheet " + said);
    before.setVisible(pages.size() > 1);
    next.setVisible(pages.size() > 1);
    // the last sheet stays until the next is there, or it would flicker at each tick
    if (now != null || !work.isWorking()) {
      sheet.show(now, now == null ? "no sheet" : "sheet " + said + ": " + now.title());
    }
  }

  private static void shown(Node node, boolean on) {
    node.setVisible(on);
    node.setManaged(on);
  }
}

package org.longlow.sketcher.fx;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.desk.AskedToPart;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Habits;
import org.longlow.sketcher.desk.LayoutFile;
import org.longlow.sketcher.desk.Session;
import org.longlow.sketcher.desk.SlideWork;
import org.longlow.svg.drawing.Dimensions;

/** What is in the window: start page or bench, card, findings and crew. */
final class Window extends StackPane {

  private final Desk desk;
  private final Board board;
  private final TopStrip top;
  private final BoardHands hands;
  private final OutlineTools outlines;
  private final MeasureTools measures;
  private final CushionBench cushions;
  private final CrowdPane crowd;
  private final Card card;
  private final StartPage start;
  private final PaperPane paper;
  private final KeysPane keysPane;
  private final GuidePane guidePane;
  private final FindPane findPane;
  private final TracePane tracePane;
  private final Adds adds;
  private final GalleryPane gallery;
  private final Slips slips;
  private final Held held = new Held(this);
  private final BorderPane work = new BorderPane();
  private final ToggleButton dimensions = Bits.toggle("dimensions", "dimensions", "D");
  private final ToggleButton inches = Bits.toggle("inches", "inches", "U");
  private final ToggleButton night = Bits.toggle("night", "night", "L");
  private final AspectSteps aspects;
  private final StanceSteps stances;
  private final OverSteps overs;
  private final Label scale = Bits.label("", "scale");
  private final NoticeStrip notices;
  private final AskedToPart parts;
  private final TextSize text = new TextSize(this, this::textChanged);
  private Look look = Look.DAY;
  private Habits habits;

  /**
   * @param shipped machines that come with it, read when they are to be seen
   */
  Window(Desk desk, Supplier<List<Shipped>> shipped) {
    this.desk = desk;
    Executor owner = Platform::runLater;
    board = new Board(desk);
    hands = new BoardHands(board, desk);
    BenchPane bench = new BenchPane(desk);
    bench.lay(new PhotoTools(desk, board, hands));
    card = new Card(desk, board, bench, new FindingSlip(desk));
    card.lay(new HandBar(hands));
    KindPane kinds = new KindPane(board, this::over);
    outlines = new OutlineTools(desk, board, hands, card::setAside, kinds);
    bench.lay(outlines);
    measures = new MeasureTools(desk, board, hands, card::setAside);
    cushions = new CushionBench(desk, card);
    bench.lay(cushions);
    habits = Habits.at(desk.autosave().home());
    stances = new StanceSteps(desk);
    overs = new OverSteps(desk);
    aspects = new AspectSteps(desk, hands::takeNothing);
    start = new StartPage(desk, shipped, () -> habits.recent());
    paper = new PaperPane(desk, owner, () -> over(null));
    crowd = new CrowdPane(desk, owner, () -> over(null));
    guidePane = new GuidePane(() -> over(null));
    keysPane = new KeysPane(this::guide, () -> over(null));
    findPane = new FindPane(desk, board, this::deeds, () -> over(null));
    tracePane = new TracePane(desk, board, this::trace, () -> over(null), this::save);
    adds = new Adds(desk, board, () -> hands, () -> over(null), card::setAside);
    gallery = new GalleryPane(desk, adds, this::draw);
    top =
        new TopStrip(
            desk,
            new TopStrip.Doing(
                this::leave, this::make, this::keys, this::find, this::openGallery, this::trace));
    parts = new AskedToPart(desk, top::save);
    getStyleClass().add("window");
    notices = new NoticeStrip(desk);
    StackPane middle = new StackPane(card, notices);
    middle.getStyleClass().add("middle");
    middle.setAlignment(Pos.TOP_RIGHT);
    for (Node slip : List.of(keysPane, guidePane, findPane, tracePane, crowd)) {
      StackPane.setMargin(slip, Tags.HIDDEN_BY);
    }
    StackPane.setAlignment(gallery, Pos.TOP_LEFT);
    slips =
        new Slips(middle, paper, keysPane, guidePane, findPane, tracePane, gallery, kinds, crowd);
    StackPane.setAlignment(notices, Pos.BOTTOM_LEFT);
    work.setTop(top);
    work.setCenter(middle);
    work.setBottom(bottom());
    getChildren().addAll(OnceSeen.of(work), OnceSeen.of(start));
    new KeptKeyboard(this, desk, board);
    new HeldKeys(this);
    new WindowKeys(this, desk, board, hands, text, this::everywhere, closers(), slips::areShown);
    board.heightProperty().addListener(o -> notices.keepClear(board));
    desk.watch(this::refresh);
    text.use(habits.textPercent());
    use(habits.night() ? Look.NIGHT : Look.DAY);
    refresh();
  }

  Habits habits() {
    return habits;
  }

  /** Keeps how it looks and how large it is for the next start. */
  void keepHabits() {
    Habits now = habits.withLook(look.night(), inches.isSelected()).withText(text.percent());
    keep(getWidth() > 0 ? now.withSize(getWidth(), getHeight()) : now);
  }

  private void keep(Habits now) {
    habits = now;
    try {
      now.keep(desk.autosave().home());
    } catch (IOException e) {
      // it opens as it did the last time then; nothing of anybody's work is in them
    }
  }

  private Node bottom() {
    dimensions.setOnAction(e -> toggleDimensions());
    inches.setOnAction(e -> ShownUnits.change(desk));
    night.setOnAction(e -> turnNight());
    VBox views =
        new VBox(
            6,
            Bits.line(dimensions, inches, night, aspects),
            Bits.line(
                scale,
                Bits.keyed(
                    Bits.words("fit", "Fit", "fit the machine into the drawing", board::fit), "F"),
                Bits.keyed(
                    Bits.words("measure", "Measure", "measure", () -> measures.begin()), "G")));
    views.setAlignment(Pos.CENTER_LEFT);
    views.setMinWidth(USE_PREF_SIZE);
    Strip bottom = new Strip(22, new CrewRow(desk), stances, views);
    bottom.getStyleClass().add("bottom");
    return bottom;
  }

  Board board() {
    return board;
  }

  /** Returns how large letters are. */
  TextSize textSize() {
    return text;
  }

  private void textChanged() {
    use(look);
    aspects.refresh();
    if (getScene() != null) {
      keepHabits();
    }
  }

  Desk desk() {
    return desk;
  }

  BoardHands hands() {
    return hands;
  }

  void use(Look next) {
    look = next;
    setStyle(next.rootStyle());
    night.setSelected(next.night());
    card.use(next);
    cushions.use(next);
    gallery.use(next);
    notices.keepClear(board);
  }

  private void toggleDimensions() {
    desk.look(o -> o.withDimensions(!o.dimensions()));
  }

  private void turnNight() {
    use(look.other());
    keepHabits();
  }

  private void make() {
    overMachine(paper, paper::begin);
  }

  private void keys() {
    keysPane.show(deeds());
    over(keysPane);
  }

  private void guide() {
    over(guidePane);
    guidePane.begin();
  }

  private void openGallery() {
    overMachine(gallery, gallery::begin);
  }

  private void draw() {
    over(null);
    outlines.draw();
  }

  private void find() {
    overMachine(findPane, findPane::begin);
  }

  private void crowd() {
    overMachine(crowd, crowd::begin);
  }

  private void trace() {
    overMachine(tracePane, tracePane::begin);
  }

  private void save() {
    // what is being typed belongs to what is saved
    board.requestFocus();
    top.save();
  }

  /** Returns all that can be done, for the list of keys and for who looks for words. */
  List<Deed> deeds() {
    List<Deed> all = new ArrayList<>(everywhere());
    all.addAll(new Handling(desk).deeds());
    all.addAll(adds.deeds());
    all.addAll(text.deeds());
    return all;
  }

  /** Returns what can be done from anywhere in the window; their keys are read from here. */
  private List<Deed> everywhere() {
    return Stream.of(
            ownDeeds(),
            aspects.deeds(),
            outlines.deeds(),
            measures.deeds(),
            cushions.deeds(),
            overs.deeds())
        .flatMap(List::stream)
        .toList();
  }

  private List<Deed> ownDeeds() {
    return List.of(
        new Deed("add something", "A", this::openGallery),
        new Deed("find anything by words", "Ctrl F, /", this::find),
        new Deed("save", "Ctrl S", this::save),
        new Deed("save under a name", "Ctrl Shift S", top::askName),
        new Deed("take back", "Ctrl Z", desk::undo),
        new Deed("do again", "Ctrl Y, Ctrl Shift Z", desk::redo),
        new Deed("trace from a photo or an SVG file", "I", () -> Platform.runLater(this::trace)),
        new Deed("paper: templates, drawing, report, printer", "Ctrl M", this::make),
        crowd.deed(() -> Platform.runLater(this::crowd)),
        new Deed("back to the list of machines", "Ctrl O", this::leave),
        new Deed("to the first field of what is picked", "Ctrl 1", card::openTicket),
        new Deed("to the drawing", "Ctrl 2", board::requestFocus),
        new Deed("to the list of findings", "Ctrl 3", card::openList),
        new Deed("mend the finding picked", "M", card::mend),
        new Deed("next stance", "]", () -> StanceSteps.step(desk, 1)),
        new Deed("stance before", "[", () -> StanceSteps.step(desk, -1)),
        new Deed("move the wheels along their travel", "W", () -> slide(SlideWork.Kind.TRAVEL)),
        new Deed("lean it to see what touches", "V", () -> slide(SlideWork.Kind.LEAN)),
        new Deed("turn the steering from lock to lock", "R", () -> slide(SlideWork.Kind.STEER)),
        new Deed("seat the next person", ".", () -> CrewRow.step(desk, 1)),
        new Deed("seat the person before", ",", () -> CrewRow.step(desk, -1)),
        new Deed("dimensions on and off", "D", this::toggleDimensions),
        new Deed("show inches or millimetres", "U", () -> ShownUnits.change(desk)),
        new Deed("night or day", "L", this::turnNight),
        new Deed("fit the machine into the drawing", "F", board::fit),
        new Deed("guide: how to do each thing", "", this::guide),
        new Deed("list of keys", "F1", this::keys));
  }

  /** Returns what Escape closes or puts back, one at a time; each tells whether there was any. */
  private List<BooleanSupplier> closers() {
    return List.of(
        held::putBack,
        this::closesSlip,
        hands::putDown,
        this::closesSlide,
        overs::close,
        card::closeOne,
        notices::closeOne);
  }

  /** Shows a slip over the card, if there is a machine on it. */
  private void overMachine(Node slip, Runnable begin) {
    if (desk.shown().isPresent()) {
      over(slip);
      begin.run();
      slips.layOut();
    }
  }

  /** Shows one slip over the card, or none. */
  private void over(Node slip) {
    slips.show(slip);
    if (slip == null && desk.session().isPresent()) {
      board.requestFocus();
    }
  }

  private void refresh() {
    boolean working = desk.session().isPresent();
    desk.session()
        .flatMap(Session::file)
        .map(LayoutFile::path)
        .filter(f -> habits.recent().isEmpty() || !habits.recent().get(0).equals(f))
        .ifPresent(f -> keep(habits.with(f)));
    if (start.isVisible() == working || work.isVisible() != working) {
      work.setVisible(working);
      start.setVisible(!working);
      if (working) {
        over(null);
        board.requestFocus();
      } else {
        start.begin();
      }
    }
    work.getBottom().setDisable(desk.isBeginning());
    dimensions.setSelected(desk.options().dimensions());
    // with nothing on the card they stay those that were shown last
    desk.shown().ifPresent(now -> inches.setSelected(now.units() == Units.IN));
    if (board.inches() != inches.isSelected()) {
      board.setInches(inches.isSelected());
      keepHabits();
    }
    scale.setText("1 : " + Dimensions.figure(board.frame().denominator()));
  }

  private boolean closesSlip() {
    boolean shown = slips.areShown();
    if (shown && !(paper.isVisible() && paper.giveUp())) {
      over(null);
    }
    return shown;
  }

  private boolean closesSlide() {
    boolean closed = desk.slides().close();
    if (closed) {
      board.requestFocus();
    }
    return closed;
  }

  private void slide(SlideWork.Kind kind) {
    if (desk.shown().isPresent()) {
      // who was asked from keeps the keyboard until it has closed
      Platform.runLater(() -> stances.slides().toggle(kind));
    }
  }

  /**
   * Returns whether to close: with unsaved work, typed just now too, it stays once, and says so;
   * asked again it goes if the work is kept, to be offered at the next opening.
   */
  boolean mayClose(Runnable close) {
    KeptKeyboard.commit(getScene(), board);
    return parts.may("close", "Close", close);
  }

  /** Back to the list of machines, asked about in the same way. */
  private void leave() {
    if (parts.may("leave", "Leave", desk::leave)) {
      desk.leave();
    }
  }
}

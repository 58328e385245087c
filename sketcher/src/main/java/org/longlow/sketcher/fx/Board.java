package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import org.locationtech.jts.geom.Envelope;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Session;
import org.longlow.sketcher.picture.Aspect;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Tone;

/** The card with the elevation on it. Shows what the desk has; {@link BoardHands} moves it. */
final class Board extends Region {

  private static final double MARGIN_PX = 34;

  /** How far beside a line the pointer still takes it, px. */
  private static final double REACH_PX = 5;

  /** A machine just fitted in may be fitted anew so often, for its names move with its scale. */
  private static final int REFITS = 3;

  /** Words beside the pointer keep so far from the edges, px. */
  private static final double LABEL_EDGE_PX = 4;

  /** The picture is drawn anew when the scale is off by more than this share. */
  private static final double SCALE_SLACK = 0.02;

  private final Desk desk;
  private final CardSheet sheet;
  private final Tiles glass = new Tiles(false);
  private Look look = Look.DAY;
  private double windowLetters = 1;
  private DrawingPainter painter = new DrawingPainter(look.palette());
  private Overlay overlay = new Overlay(painter);
  private ViewFrame frame = new ViewFrame(0.4, 60, 600);
  private boolean fitted = true;
  private double fittedAt;
  private int refits;
  private boolean inches;
  private Drawing painted;
  private Session painting;
  private boolean dimensioned;
  private Aspect aspect = Aspect.SIDE;
  private PointMm pointer;
  private String hint = "";
  private Hand hand;
  private boolean working;
  private Runnable afterPaint = () -> {};
  private Runnable onView = () -> {};
  private BooleanSupplier roomForTicket = () -> true;
  private double upperMarginPx;
  private double rightMarginPx;
  private Supplier<List<Spots.Box>> slips = List::of;

  Board(Desk desk) {
    this.desk = desk;
    sheet = new CardSheet(desk, this::paintSheet);
    Called.by(this, "board");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    getStyleClass().add("board");
    getChildren().addAll(sheet.node(), glass);
    setPickOnBounds(true);
    setMinSize(120, 120);
    Rectangle clip = new Rectangle();
    clip.widthProperty().bind(widthProperty());
    clip.heightProperty().bind(heightProperty());
    setClip(clip);
    desk.watch(this::refresh);
    focusedProperty().addListener((o, was, is) -> paintGlass());
  }

  /**
   * @param letters how much larger than usual letters of the window are
   */
  void use(Look next, double letters) {
    look = next;
    windowLetters = letters;
    takeLetters();
    if (desk.session().isPresent()) {
      askScale();
    }
    refresh();
  }

  private void takeLetters() {
    painter = new DrawingPainter(look.palette(), letters());
    overlay = new Overlay(painter);
    painted = null;
  }

  /** Returns how much larger than usual letters and rules on the card are. */
  double letters() {
    return CardLetters.of(windowLetters, getHeight());
  }

  /** Called on the interface thread after the sheet was painted anew. */
  void afterPaint(Runnable action) {
    afterPaint = action;
  }

  /** Returns how many tiles of the sheet have been painted so far. */
  int tilesPainted() {
    return sheet.painted();
  }

  /** Asked when the machine is fitted in: whether a ticket may need the room beside it. */
  void leavesRoom(BooleanSupplier forTicket) {
    roomForTicket = forTicket;
  }

  /** Called when the card is seen from elsewhere. */
  void onView(Runnable action) {
    onView = action;
  }

  /** Slips that lie over the card, px; nothing that is to be read is written under them. */
  void slips(Supplier<List<Spots.Box>> over) {
    slips = over;
  }

  /** What lies along the upper and the right edge; the machine is fitted in beside it, px. */
  void setMargins(double upperPx, double rightPx) {
    if (upperPx != upperMarginPx || rightPx != rightMarginPx) {
      upperMarginPx = upperPx;
      rightMarginPx = rightPx;
      if (fitted) {
        fit();
      }
    }
  }

  ViewFrame frame() {
    return frame;
  }

  void setFrame(ViewFrame next) {
    fitted = false;
    show(desk.shown().map(s -> Fitting.inSight(s.drawing(), next, seen())).orElse(next));
  }

  private void show(ViewFrame next) {
    frame = next;
    askScale();
    paintSheet();
    paintGlass();
    onView.run();
  }

  void fit() {
    fitted = true;
    refits = REFITS;
    desk.shown().ifPresent(s -> show(fitting(s)));
  }

  private ViewFrame fitting(BoardState shown) {
    fittedAt = shown.options().denominator();
    boolean ticket = roomForTicket.getAsBoolean();
    return Fitting.of(shown.drawing(), seen(), MARGIN_PX, letters(), windowLetters, ticket);
  }

  /** Whether the machine is shown as it is fitted in, not as somebody moved it. */
  boolean isFitted() {
    return fitted;
  }

  boolean inches() {
    return inches;
  }

  void setInches(boolean on) {
    inches = on;
    paintSheet();
    paintGlass();
    onView.run();
  }

  /**
   * Which hand is over the card, and so draws over it.
   *
   * @param works whether it has something in hand; the machine keeps its place then
   */
  void setHand(Hand next, boolean works) {
    hand = next;
    working = works;
    paintGlass();
  }

  /** Draws anew what lies over the card. */
  void paintGlass() {
    if (sheet.wide() > 0) {
      paintOverCard();
    }
  }

  /** Returns a place on the screen in the axes of the drawn machine. */
  PointMm inMachine(double px, double py) {
    PointMm at = frame.point(px, py);
    return desk.shown().map(s -> s.ground().toFrame(at)).orElse(at);
  }

  /** Returns where on the screen a place in the axes of the drawn machine is. */
  PointMm onScreen(PointMm mm) {
    return onScreen(mm, 0);
  }

  /** As {@link #onScreen(PointMm)}, so far to the left, mm. */
  private PointMm onScreen(PointMm mm, double yMm) {
    PointMm at = desk.shown().map(s -> s.eye().page(mm, yMm)).orElse(mm);
    return new PointMm(frame.screenX(at.x()), frame.screenY(at.z()));
  }

  /** Moves the card so that a thing is seen, if it has a place and is out of sight. */
  void centre(String subject) {
    Spots.Box box = desk.shown().map(s -> boxOf(s, subject)).orElse(null);
    if (box == null) {
      return;
    }
    Spots.Box seen = seen();
    if (box.shared(seen) < 0.999 * box.width() * box.height()) {
      setFrame(frame.panned(seen.centreX() - box.centreX(), seen.centreY() - box.centreY()));
    }
  }

  /** Returns the card without rules and what lies along its edges, px. */
  Spots.Box seen() {
    double rule = Rule.widthPx(letters());
    double wide = getWidth() - rule - rightMarginPx;
    return new Spots.Box(rule, upperMarginPx, wide, getHeight() - rule - upperMarginPx);
  }

  /** Returns where a thing is on the screen, px, or null if it has no place there. */
  Spots.Box boxOf(BoardState shown, String subject) {
    return Picker.box(shown, frame, subject).orElse(null);
  }

  /** Names what is under the pointer; empty for nothing. */
  void setHint(String subject) {
    hint = subject;
  }

  void setPointer(PointMm px) {
    pointer = px;
    paintGlass();
  }

  /** Returns the pin within reach of a place on the screen. */
  Optional<String> pinAt(double px, double py) {
    return desk.shown()
        .flatMap(s -> Picker.pins(s, frame, new PointMm(px, py)).stream().findFirst());
  }

  /** Returns all that a click at a place could mean, from the top down: pins, parts, photos. */
  List<String> allAt(double px, double py) {
    List<String> all = new ArrayList<>();
    desk.shown().ifPresent(s -> all.addAll(Picker.all(s, frame, new PointMm(px, py), REACH_PX)));
    photoAt(px, py).ifPresent(all::add);
    return all;
  }

  /** Returns what is drawn at a place on the screen, such as {@code part:tank}. */
  Optional<String> subjectAt(double px, double py) {
    return desk.shown()
        .flatMap(s -> Picker.at(s.drawing(), frame.point(px, py), REACH_PX / frame.pxPerMm()));
  }

  /** Returns the photo that lies at a place on the screen, such as {@code photo:side}. */
  Optional<String> photoAt(double px, double py) {
    return desk.shown()
        .flatMap(s -> sheet.photos().at(px, py, s, frame))
        .map(name -> "photo:" + name);
  }

  /** Returns the box round the machine on the drawing, mm. */
  Optional<Envelope> machineBox() {
    return desk.shown().map(s -> Fitting.machine(s.drawing()));
  }

  @Override
  protected void layoutChildren() {
    double w = Math.floor(getWidth());
    double h = Math.floor(getHeight());
    if (w != sheet.wide() || h != sheet.high()) {
      sheet.take(w, h);
      glass.take(w, h);
      refits = REFITS;
      if (painter.letters() != letters()) {
        takeLetters();
      }
      if (fitted && desk.shown().isPresent()) {
        frame = fitting(desk.shown().get());
        askScale();
        Platform.runLater(onView);
      }
      paintSheet();
      paintGlass();
    }
  }

  private void refresh() {
    Optional<BoardState> shown = desk.shown();
    Session session = desk.session().orElse(null);
    boolean begun = shown.isPresent() && session != painting && getWidth() > 0;
    if (begun) {
      painting = session;
      fitted = true;
    }
    boolean other =
        shown
            .map(s -> s.options().dimensions() != dimensioned || s.options().aspect() != aspect)
            .orElse(false);
    // drawn for this scale its names stand elsewhere
    boolean redrawn = shown.map(s -> s.options().denominator() != fittedAt).orElse(false);
    boolean cut = shown.map(s -> s.drawing() != painted && cutsOff(s)).orElse(false);
    fitted |= shown.map(s -> s.options().aspect() != aspect).orElse(false);
    if (begun || fitted && !working && (other || cut || redrawn && refits > 0)) {
      refits = begun || other || cut ? REFITS : refits - 1;
      dimensioned = shown.get().options().dimensions();
      aspect = shown.get().options().aspect();
      frame = fitting(shown.get());
      askScale();
    }
    if (shown.map(BoardState::drawing).orElse(null) != painted) {
      paintSheet();
    }
    paintGlass();
    shown.ifPresent(
        s ->
            setAccessibleText(
                "Drawing board: "
                    + s.layout().name()
                    + ", "
                    + s.standing().map(st -> st.condition().says()).orElse("as drawn")
                    + ", "
                    + s.options().aspect().says()
                    + ". N steps through pins, arrows move the one picked."));
  }

  /** Somebody else, another stance or what was added may reach out of what was fitted in. */
  private boolean cutsOff(BoardState shown) {
    boolean still = !shown.live() && shown.options().moved().isEmpty();
    return still && Fitting.cutsOff(shown.drawing(), frame, seen());
  }

  private void askScale() {
    // larger letters need the room that they had on a smaller machine
    double wanted = frame.denominator() * letters();
    double has = desk.options().denominator();
    if (Math.abs(wanted / has - 1) > SCALE_SLACK) {
      desk.look(o -> o.withDenominator(wanted));
    }
  }

  private void paintSheet() {
    if (sheet.wide() > 0) {
      sheet.paint(painter, frame, inches, seen());
      painted = desk.shown().map(BoardState::drawing).orElse(painted);
      afterPaint.run();
    }
  }

  private void paintOverCard() {
    double w = glass.wide();
    double h = glass.high();
    Pen pen = overlay.pen();
    if (desk.shown().isPresent()) {
      overlay.keepIn(seen().grown(-LABEL_EDGE_PX), slips.get());
      overlay.paint(desk, desk.shown().get(), frame, pointer, hint);
      SlideInk.paint(overlay, m -> onScreen(m.where().orElseThrow(), m.yMm()), desk.slides());
      if (hand != null) {
        hand.paint(overlay);
      }
    } else if (desk.isBeginning()) {
      overlay.say("Working out the machine\u2026", w, h);
    }
    if (isFocused()) {
      pen.setStroke(painter.colour(Tone.CHOSEN));
      pen.setLineWidth(2);
      pen.setLineDashes();
      for (double far : new double[] {0, 1}) {
        pen.strokeLine(1, 1 + far * (h - 2), w - 1, 1 + far * (h - 2));
        pen.strokeLine(1 + far * (w - 2), 1, 1 + far * (w - 2), h - 1);
      }
    }
    glass.paint(pen.taken());
  }
}

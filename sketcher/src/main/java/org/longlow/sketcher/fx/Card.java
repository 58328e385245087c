package org.longlow.sketcher.fx;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Session;
import org.longlow.sketcher.edit.Trouble;
import org.longlow.sketcher.picture.Aspect;

/**
 * The card with everything that lies on it: tags of findings on strings along its upper edge, the
 * ticket of what is picked beside its place, and the list of findings when it is asked for.
 */
final class Card extends Pane {

  private static final double MARGIN_PX = 10;
  private static final double LIST_PX = 306;

  /** Share of the card that a slip laid beside the machine takes, within bounds. */
  private static final double BESIDE_SHARE = 0.47;

  private static final double LEAST_BESIDE_PX = 440;

  /** So much of the card is the machine's, beside the list of findings and a ticket. */
  private static final double LEAST_MACHINE_SHARE = 0.3;

  private static final double MOST_BESIDE_PX = 820;

  private final Desk desk;
  private final Board board;
  private final BenchPane bench;
  private final FindingSlip findings;
  private final Tags tags;
  private final Ticket ticket;
  private final Ticket list;
  private final AwaitedView awaited;
  private final Tiles strings = new Tiles(false);
  private Look look = Look.DAY;
  private final TicketSpot spot;
  private final SlippedAway slipped;
  private boolean ticketAway;
  private String askedFor;
  private boolean aside;
  private Ticket beside;
  private HandBar bar;
  private BooleanSupplier escapeBeside;
  private Runnable closeBeside;
  private Trouble told;
  private Session seen;
  private Session awaitedFor;

  Card(Desk desk, Board board, BenchPane bench, FindingSlip findings) {
    this.desk = desk;
    this.board = board;
    this.bench = bench;
    this.findings = findings;
    tags = new Tags(desk, board, this::open);
    ticket = new Ticket("bench", bench.head(), bench, this::requestLayout, this::putTicketAway);
    list = new Ticket("findings", findings.head(), findings, this::requestLayout, this::closeList);
    spot = new TicketSpot(ticket, bench, board, tags);
    slipped = new SlippedAway(ticket);
    addEventFilter(MouseEvent.MOUSE_MOVED, slipped::pointed);
    addEventFilter(ScrollEvent.SCROLL, slipped::scrolled);
    awaited = new AwaitedView(desk);
    getStyleClass().add("card");
    getChildren().addAll(board, strings, tags, OnceSeen.of(list), OnceSeen.of(ticket), awaited);
    board.setMargins(tags.heightPx(), 0);
    board.onView(this::requestLayout);
    // where somebody laid it, or put it away, it needs none beside the machine
    board.leavesRoom(
        () ->
            desk.options().aspect() == Aspect.SIDE
                && !ticketAway
                && !ticket.isLaid()
                && hasRoomForTicket());
    board.slips(this::slips);
    desk.watch(this::refresh);
  }

  void use(Look next) {
    look = next;
    board.use(next, TextSize.of(this));
    tags.grow();
    findings.grow();
    showList(list.isVisible());
    requestLayout();
  }

  /** Lays along the upper edge what the hand that works can do. */
  void lay(HandBar what) {
    bar = what;
    getChildren().add(what);
  }

  /** Opens the list of findings at the first of a verdict. */
  private void open(Verdict verdict) {
    openList();
    findings.showFirst(verdict);
  }

  /**
   * Lays a slip into a strip at the right edge, in place of the list of findings; the machine is
   * fitted in beside it.
   *
   * @param escape what Escape does to it; false if the key is for what has the keyboard
   * @param close puts it away, by {@link #takeBeside} in the end
   */
  void layBeside(Ticket slip, BooleanSupplier escape, Runnable close) {
    if (beside != slip) {
      getChildren().remove(beside);
      getChildren().add(slip);
    }
    beside = slip;
    escapeBeside = escape;
    closeBeside = close;
    list.setVisible(false);
    refresh();
    fitBeside();
  }

  /** Takes it away again. */
  void takeBeside() {
    getChildren().remove(beside);
    beside = null;
    refresh();
    fitBeside();
    board.requestFocus();
  }

  /** What lies along the right edge takes its strip from the card. */
  private void fitBeside() {
    board.setMargins(tags.heightPx(), stripPx());
    requestLayout();
  }

  private double stripPx() {
    return beside != null
        ? beside.isLaid() ? 0 : besidePx() + MARGIN_PX
        : list.isVisible() && !list.isLaid() ? listPx() + MARGIN_PX : 0;
  }

  private double besidePx() {
    double larger = TextSize.of(this);
    double most = Math.min(MOST_BESIDE_PX * larger, Math.max(LEAST_BESIDE_PX, 0.6 * getWidth()));
    return Spots.within(BESIDE_SHARE * larger * getWidth(), LEAST_BESIDE_PX, most);
  }

  /** Opens the list of findings and puts the keyboard into it. */
  void openList() {
    if (beside != null) {
      closeBeside.run();
    }
    showList(true);
    findings.focusList();
  }

  /** Looks for what mends the finding picked. */
  void mend() {
    if (!desk.finding().isEmpty()) {
      showList(true);
      findings.mend();
    }
  }

  /** The finding read in it is put down first, or the card's next look would open it again. */
  private void closeList() {
    desk.chooseFinding("");
    showList(false);
    board.requestFocus();
  }

  /** Puts the keyboard into the first field of what is picked. */
  void openTicket() {
    ticketAway = false;
    askedFor = desk.options().chosen();
    refresh();
    bench.focusFirst();
  }

  /** Takes the ticket off the card while a hand puts something there. */
  void setAside(boolean on) {
    aside = on;
    refresh();
  }

  private void putTicketAway() {
    ticketAway = true;
    board.requestFocus();
    refresh();
  }

  /** Closes what lies over the card; returns whether anything did. */
  boolean closeOne() {
    if (beside != null) {
      return escapeBeside.getAsBoolean();
    }
    if (list.isVisible()) {
      closeList();
      return true;
    }
    return false;
  }

  private void refresh() {
    String chosen = desk.options().chosen();
    Trouble trouble = desk.trouble().orElse(null);
    askedFor = chosen.equals(askedFor) ? askedFor : null;
    if (spot.isNew(chosen) || trouble != null && trouble != told) {
      ticketAway = false;
    }
    told = trouble;
    for (Region over : List.of(tags, ticket, list)) {
      over.setDisable(desk.isBeginning());
    }
    // findings that are picked on a tag are read in the list
    if (!desk.finding().isEmpty()
        && desk.shown().isPresent()
        && !list.isVisible()
        && beside == null) {
      showList(true);
    }
    showTicket();
    requestLayout();
  }

  /**
   * The whole machine is not filled in while its findings are read, it is moved along a slider or
   * seen from ahead or above, where it has no room beside it, and nothing is where list and ticket
   * would leave nothing of the machine to be seen, unless somebody asks.
   */
  private void showTicket() {
    boolean wanted =
        hasRoomForTicket()
                && (!desk.options().chosen().isEmpty()
                    || !list.isVisible()
                        && desk.slides().open().isEmpty()
                        && desk.options().aspect() == Aspect.SIDE)
            || askedFor != null
            || desk.trouble().isPresent();
    // what is just added comes with its own fields, not with those of what was picked before
    boolean awaits = !ticket.isVisible() && bench.isAwaited();
    ticket.setVisible(isSeen() && wanted && !awaits && !ticketAway && !aside && beside == null);
  }

  /**
   * A machine is seen first; what is written about it is laid beside it with the next picture, once
   * the marks of its findings have their places.
   */
  private boolean isSeen() {
    Session session = desk.shown().isPresent() ? desk.session().orElse(null) : null;
    Scene scene = getScene();
    if (session == null || session == seen) {
      return session != null;
    }
    if (scene == null || session == awaitedFor || desk.shown().get().working()) {
      return false;
    }
    awaitedFor = session;
    scene.addPostLayoutPulseListener(
        new Runnable() {
          @Override
          public void run() {
            scene.removePostLayoutPulseListener(this);
            Platform.runLater(
                () -> {
                  seen = session;
                  refresh();
                });
          }
        });
    return false;
  }

  private boolean hasRoomForTicket() {
    if (!list.isVisible() || list.isLaid()) {
      return true;
    }
    double both = stripPx() + TicketSize.leastWidePx(TextSize.of(this));
    return getWidth() - both >= LEAST_MACHINE_SHARE * getWidth();
  }

  /** The list takes its strip from the card: the machine is fitted in beside it. */
  private void showList(boolean on) {
    list.setVisible(on);
    showTicket();
    fitBeside();
  }

  @Override
  protected void layoutChildren() {
    double w = getWidth();
    double h = getHeight();
    board.resizeRelocate(0, 0, w, h);
    tags.resizeRelocate(0, 0, w, tags.heightPx());
    tags.layout();
    double top = tags.heightPx() + MARGIN_PX;
    double bottom = h - rulePx() - MARGIN_PX;
    double high = Math.max(80, bottom - top);
    if (bar.isVisible()) {
      double left = rulePx() + MARGIN_PX;
      double wide = Math.min(bar.prefWidth(-1), w - left - MARGIN_PX);
      bar.resizeRelocate(left, top, wide, bar.prefHeight(wide));
    }
    if (list.isVisible()) {
      layList(w, top, high);
    }
    if (ticket.isVisible() && !bench.isAwaited()) {
      layTicket(w, top, high);
    }
    if (beside != null) {
      layBeside(w, top, high);
    }
    awaited.autosize();
    awaited.relocate((w - awaited.getWidth()) / 2, top);
    strings.take(w, h);
    Spots.Box read = ticket.isVisible() ? box(ticket) : null;
    strings.paint(StringInk.of(desk, board, tags, look.palette(), read, slips()));
  }

  private double rulePx() {
    return Rule.widthPx(board.letters());
  }

  /** The list grows with its letters, but leaves the machine half of the card. */
  private double listPx() {
    return Math.max(LIST_PX, Math.min(LIST_PX * TextSize.of(this), getWidth() / 2));
  }

  private void layList(double w, double top, double high) {
    double wide = listPx();
    double x = list.isLaid() ? list.getLayoutX() : w - wide - MARGIN_PX;
    double y = list.isLaid() ? list.getLayoutY() : top;
    list.resizeRelocate(
        Spots.within(x, 0, w - wide),
        Spots.within(y, 0, top + high - 80),
        wide,
        Math.min(high, top + high - y));
  }

  private void layBeside(double w, double top, double high) {
    double wide = besidePx();
    double x = beside.isLaid() ? beside.getLayoutX() : w - wide - MARGIN_PX;
    double y = beside.isLaid() ? beside.getLayoutY() : top;
    beside.resizeRelocate(
        Spots.within(x, 0, w - wide), Spots.within(y, 0, top + high - 120), wide, high);
    board.setMargins(tags.heightPx(), stripPx());
  }

  private void layTicket(double w, double top, double high) {
    double left = rulePx() + MARGIN_PX;
    double right = (list.isVisible() ? list.getLayoutX() : w) - MARGIN_PX;
    Spots.Box room = new Spots.Box(left, top, Math.max(0, right - left), high);
    slipped.around(() -> spot.lay(desk.shown().orElse(null), desk.options().chosen(), room, w));
  }

  /** Returns what lies over the card and is seen, px. */
  private List<Spots.Box> slips() {
    return Stream.of(list, ticket, beside, bar)
        .filter(slip -> slip != null && slip.isVisible())
        .map(Card::box)
        .toList();
  }

  private static Spots.Box box(Region slip) {
    return new Spots.Box(slip.getLayoutX(), slip.getLayoutY(), slip.getWidth(), slip.getHeight());
  }
}

package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Shown;
import org.longlow.sketcher.edit.Trouble;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Tone;

/**
 * The card with everything that lies on it: tags of findings on strings along its upper edge, the
 * ticket of what is picked beside its place, and the list of findings when it is asked for.
 */
final class Card extends Pane {

  private static final double MARGIN_PX = 10;
  private static final int MOST_COLUMNS = 5;
  private static final double LIST_PX = 306;

  /** A ticket is at most this share of the card high; the rest scrolls. */
  private static final double TICKET_SHARE = 0.66;

  private final Desk desk;
  private final Board board;
  private final BenchPane bench;
  private final FindingSlip findings;
  private final Tags tags;
  private final Ticket ticket;
  private final Ticket list;
  private final Canvas strings = new Canvas();
  private Look look = Look.DAY;
  private String placedFor;
  private int columns = 2;
  private boolean ticketAway;
  private boolean aside;
  private Trouble told;

  Card(Desk desk, Board board, BenchPane bench, FindingSlip findings) {
    this.desk = desk;
    this.board = board;
    this.bench = bench;
    this.findings = findings;
    tags = new Tags(desk, board, this::open);
    ticket = new Ticket("bench", bench.head(), bench, this::requestLayout, this::putTicketAway);
    list = new Ticket("findings", findings.head(), findings, this::requestLayout, this::closeList);
    strings.setMouseTransparent(true);
    list.setVisible(false);
    getStyleClass().add("card");
    getChildren().addAll(board, strings, tags, list, ticket);
    board.setMargins(Tags.HEIGHT_PX, 0);
    board.onView(this::requestLayout);
    desk.watch(this::refresh);
  }

  void use(Look next) {
    look = next;
    board.use(next);
    requestLayout();
  }

  /** Opens the list of findings at the first of a verdict. */
  private void open(Verdict verdict) {
    openList();
    findings.showFirst(verdict);
  }

  /** Opens the list of findings and puts the keyboard into it. */
  void openList() {
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

  private void closeList() {
    showList(false);
    board.requestFocus();
  }

  /** Puts the keyboard into the first field of what is picked. */
  void openTicket() {
    ticketAway = false;
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
    if (list.isVisible()) {
      closeList();
      return true;
    }
    return false;
  }

  private void refresh() {
    String chosen = desk.options().chosen();
    Trouble trouble = desk.trouble().orElse(null);
    if (!chosen.equals(placedFor) || trouble != null && trouble != told) {
      ticketAway = false;
    }
    told = trouble;
    ticket.setVisible(desk.shown().isPresent() && !ticketAway && !aside);
    for (Region over : List.of(tags, ticket, list)) {
      over.setDisable(desk.isBeginning());
    }
    // findings that are picked on a tag are read in the list
    if (!desk.finding().isEmpty() && desk.shown().isPresent() && !list.isVisible()) {
      showList(true);
    }
    requestLayout();
  }

  /** The list takes its strip from the card: the machine is fitted in beside it. */
  private void showList(boolean on) {
    list.setVisible(on);
    board.setMargins(Tags.HEIGHT_PX, on && !list.isLaid() ? LIST_PX + MARGIN_PX : 0);
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    double w = getWidth();
    double h = getHeight();
    board.resizeRelocate(0, 0, w, h);
    tags.resizeRelocate(0, 0, w, Tags.HEIGHT_PX);
    tags.layout();
    double top = Tags.HEIGHT_PX + MARGIN_PX;
    double bottom = h - Rule.WIDTH_PX - MARGIN_PX;
    double high = Math.max(80, bottom - top);
    if (list.isVisible()) {
      layList(w, top, high);
    }
    if (ticket.isVisible()) {
      layTicket(w, top, high);
    }
    strings.setWidth(w);
    strings.setHeight(h);
    paintStrings();
  }

  private void layList(double w, double top, double high) {
    double x = list.isLaid() ? list.getLayoutX() : w - LIST_PX - MARGIN_PX;
    double y = list.isLaid() ? list.getLayoutY() : top;
    list.resizeRelocate(
        within(x, 0, w - LIST_PX),
        within(y, 0, top + high - 80),
        LIST_PX,
        Math.min(high, top + high - y));
  }

  private void layTicket(double w, double top, double high) {
    Shown shown = desk.shown().orElse(null);
    String chosen = desk.options().chosen();
    Spots.Box picked = shown == null ? null : board.boxOf(shown, chosen);
    double left = Rule.WIDTH_PX + MARGIN_PX;
    double right = (list.isVisible() ? list.getLayoutX() : w) - MARGIN_PX;
    if (shown != null && !ticket.isLaid() && !mayStay(chosen, picked, right, top + high)) {
      Spots.Box room = new Spots.Box(left, top, Math.max(0, right - left), high);
      Spots.Box at = Spots.slip(room, shapes(right, high), picked, busy(shown));
      columns = columns(at.width());
      ticket.relocate(Math.round(at.x()), Math.round(at.y()));
      placedFor = chosen;
    }
    bench.setColumns(columns);
    double wide = width(columns);
    double x = within(ticket.getLayoutX(), 0, w - wide);
    double y = within(ticket.getLayoutY(), 0, top + high - 60);
    ticket.resizeRelocate(x, y, wide, Math.min(tall(columns, high), top + high - y));
  }

  /** It stays where it is while the same thing is picked, unless it has come to hide it. */
  private boolean mayStay(String chosen, Spots.Box picked, double w, double bottom) {
    Spots.Box at =
        new Spots.Box(
            ticket.getLayoutX(), ticket.getLayoutY(), ticket.getWidth(), ticket.getHeight());
    return chosen.equals(placedFor)
        && at.height() > 0
        && at.right() <= w
        && at.y() + Math.min(at.height(), 60) <= bottom
        && (picked == null || at.shared(picked) == 0);
  }

  private List<Spots.Size> shapes(double w, double high) {
    List<Spots.Size> shapes = new ArrayList<>();
    for (int n = 2; n <= MOST_COLUMNS; n++) {
      if (n == 2 || width(n) <= w / 2) {
        bench.setColumns(n);
        shapes.add(new Spots.Size(width(n), tall(n, high)));
      }
    }
    return shapes;
  }

  private static double width(int columns) {
    return BenchPane.width(columns) + 2;
  }

  private static int columns(double width) {
    int n = 2;
    while (n < MOST_COLUMNS && width(n) < width) {
      n++;
    }
    return n;
  }

  /** The more columns a ticket has, the lower it is: all its shapes are about as large. */
  private double tall(int columns, double high) {
    double most = Math.max(120, TICKET_SHARE * high * 2 / columns);
    return Math.min(Math.ceil(ticket.prefHeight(width(columns))), most);
  }

  private static double within(double v, double from, double to) {
    return Math.max(from, Math.min(Math.max(from, to), v));
  }

  /** Returns what is better not hidden: parts and people, each by its box. */
  private List<Spots.Box> busy(Shown shown) {
    List<Spots.Box> boxes = new ArrayList<>();
    if (shown != null) {
      for (Layer layer : shown.drawing().layers()) {
        for (Mark mark : layer.marks()) {
          if (mark instanceof Mark.Shape shape
              && shape.style().fill() != null
              && (shape.subject().startsWith("part:") || shape.subject().startsWith("person:"))) {
            boxes.add(board.onScreen(shape.geometry().getEnvelopeInternal()));
          }
        }
      }
    }
    return boxes;
  }

  private void paintStrings() {
    GraphicsContext gc = strings.getGraphicsContext2D();
    gc.clearRect(0, 0, strings.getWidth(), strings.getHeight());
    for (Tags.Cord cord : tags.strings()) {
      gc.setStroke(
          DrawingPainter.colour(look.palette().of(cord.picked() ? Tone.CHOSEN : Tone.BAD)));
      gc.setLineWidth(cord.picked() ? 1.8 : 0.9);
      gc.strokePolyline(
          cord.line().stream().mapToDouble(PointMm::x).toArray(),
          cord.line().stream().mapToDouble(PointMm::z).toArray(),
          cord.line().size());
    }
    Shown shown = desk.shown().orElse(null);
    if (shown != null && ticket.isVisible()) {
      Spots.Box picked = board.boxOf(shown, desk.options().chosen());
      if (picked != null) {
        gc.setStroke(DrawingPainter.colour(look.palette().of(Tone.CHOSEN)));
        gc.setLineWidth(1.2);
        Region t = ticket;
        double x = within(picked.centreX(), t.getLayoutX(), t.getLayoutX() + t.getWidth());
        double y = within(picked.centreY(), t.getLayoutY(), t.getLayoutY() + t.getHeight());
        gc.strokeLine(x, y, picked.centreX(), picked.centreY());
      }
    }
  }
}

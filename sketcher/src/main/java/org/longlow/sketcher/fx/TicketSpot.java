package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import org.longlow.sketcher.desk.BoardState;

/**
 * Where the ticket of what is picked lies on the card, and in which shape: off what is picked, over
 * as little of the machine and its people as can be, and no taller than is worth what it hides.
 */
final class TicketSpot {

  private static final int MOST_COLUMNS = 5;

  /** A ticket of two columns is at most this share of the card high; the rest scrolls. */
  private static final double TICKET_SHARE = 0.66;

  /** Shares of that height that are tried where a whole ticket would hide too much. */
  private static final double[] LOWER = {1, 0.8, 0.6, 0.45};

  /** Where it is kept it is at least this share of that height, if it has so much to show. */
  private static final double LEAST_KEPT = 0.6;

  /** A part of a ticket that is not seen is so much worse than as much of the card. */
  private static final double LOST_WEIGHT = 1.5;

  /** As above while nothing is picked, so that nobody has asked for the ticket. */
  private static final double UNASKED_WEIGHT = 0.5;

  /** Of shapes that hide as much, the one that shows more is a little better. */
  private static final double UNSEEN_WEIGHT = 0.001;

  /** Its head is seen wherever it is laid, px. */
  private static final double HEAD_PX = 60;

  private final Ticket ticket;
  private final BenchPane bench;
  private final Board board;
  private final Tags tags;
  private String placedFor;
  private int columns = 2;
  private double most = Double.POSITIVE_INFINITY;
  private double placedLetters;
  private ViewFrame placedIn;
  private double measuredWide;
  private double measuredHigh;

  TicketSpot(Ticket ticket, BenchPane bench, Board board, Tags tags) {
    this.ticket = ticket;
    this.bench = bench;
    this.board = board;
    this.tags = tags;
  }

  /** Whether it lies where it does for something else. */
  boolean isNew(String chosen) {
    return !chosen.equals(placedFor);
  }

  /**
   * Lays the ticket.
   *
   * @param shown what is on the card, or null
   * @param chosen what is picked there
   * @param room where it may lie
   * @param width of the whole card, px
   */
  void lay(BoardState shown, String chosen, Spots.Box room, double width) {
    Spots.Box picked = shown == null ? null : board.boxOf(shown, chosen);
    if (shown != null && !ticket.isLaid() && !mayStay(chosen, picked, room)) {
      place(chosen, picked, room, Clear.of(shown, board.frame(), board.letters()));
    }
    if (ticket.isNeedsLayout()) {
      bench.setColumns(columns); // what is typed may want more room now
    }
    double wide = width(columns);
    double x = Spots.within(ticket.getLayoutX(), 0, width - wide);
    double y = Spots.within(ticket.getLayoutY(), 0, room.bottom() - HEAD_PX);
    double tall = Math.min(height(wide), most);
    ticket.resizeRelocate(x, y, wide, Math.min(tall, room.bottom() - y));
  }

  /**
   * How high it would be: asked again only where something on it has changed, for it takes long.
   */
  private double height(double wide) {
    if (ticket.isNeedsLayout() || wide != measuredWide) {
      measuredWide = wide;
      measuredHigh = Math.ceil(ticket.prefHeight(wide));
    }
    return measuredHigh;
  }

  private void place(String chosen, Spots.Box picked, Spots.Box room, List<Spots.Busy> busy) {
    if (!stays(chosen, picked, room, busy)) {
      double lost = picked == null ? UNASKED_WEIGHT : LOST_WEIGHT;
      Spots.Box tight = Spots.slip(room, shapes(room, lost), picked, busy);
      columns = columns(tight.width());
      bench.setColumns(columns);
      double all = Math.ceil(ticket.prefHeight(width(columns)));
      Spots.Box at = Spots.grown(tight, all, room, picked, busy);
      most = at.height();
      ticket.relocate(Math.round(at.x()), Math.round(at.y()));
      placedFor = chosen;
      placedLetters = TextSize.of(ticket);
      placedIn = board.frame();
    }
  }

  /** It stays where it is while the same thing is picked, unless it has come to hide more. */
  private boolean mayStay(String chosen, Spots.Box picked, Spots.Box room) {
    Spots.Box at =
        new Spots.Box(
            ticket.getLayoutX(), ticket.getLayoutY(), ticket.getWidth(), ticket.getHeight());
    return chosen.equals(placedFor)
        && at.height() > 0
        && at.right() <= room.right()
        && at.y() + Math.min(at.height(), HEAD_PX) <= room.bottom()
        && (picked == null || at.shared(picked) == 0)
        && placedLetters == TextSize.of(ticket)
        && (board.frame().equals(placedIn)
            || !board.isFitted() && tags.heads().stream().allMatch(head -> at.shared(head) == 0));
  }

  /**
   * For something else it keeps its place and its columns, and is as high as the new thing wants,
   * unless it hides that or too little of it would be seen.
   */
  private boolean stays(String chosen, Spots.Box picked, Spots.Box room, List<Spots.Busy> busy) {
    if (placedFor == null
        || picked == null
        || !isNew(chosen)
        || placedLetters != TextSize.of(ticket)) {
      return false;
    }
    bench.setColumns(columns);
    double all = Math.ceil(ticket.prefHeight(width(columns)));
    double least = tall(columns, room.height(), LEAST_KEPT);
    double low = Math.min(all, least);
    Spots.Box tight = new Spots.Box(ticket.getLayoutX(), ticket.getLayoutY(), width(columns), low);
    Spots.Box at = Spots.grown(tight, all, room, picked, busy);
    Spots.Box was = new Spots.Box(tight.x(), tight.y(), ticket.getWidth(), ticket.getHeight());
    if (busy.stream().anyMatch(b -> tight.shared(b.box()) > was.shared(b.box()) + 1)
        || tight.right() > room.right()
        || tight.bottom() > room.bottom()
        || tight.y() < room.y()
        || at.shared(picked) > 0) {
      return false;
    }
    most = at.bottom() - tight.y(); // it grows downwards only
    placedFor = chosen;
    placedIn = board.frame();
    return true;
  }

  private List<Spots.Size> shapes(Spots.Box room, double lost) {
    List<Spots.Size> shapes = new ArrayList<>();
    double before = Double.POSITIVE_INFINITY;
    for (int n = 2; n <= MOST_COLUMNS; n++) {
      if (n == 2 || width(n) <= room.width()) {
        bench.setColumns(n);
        double all = ticket.prefHeight(width(n));
        if (all >= before) {
          continue; // it is only wider
        }
        before = all;
        double whole = tall(n, room.height(), 1);
        for (double share : LOWER) {
          double tall = tall(n, room.height(), share);
          double worse = lost * (whole - tall) + UNSEEN_WEIGHT * (all - tall);
          shapes.add(new Spots.Size(width(n), tall, width(n) * worse));
        }
      }
    }
    return shapes;
  }

  private double width(int n) {
    return bench.width(n) + 2;
  }

  private int columns(double width) {
    int n = 2;
    while (n < MOST_COLUMNS && width(n) < width) {
      n++;
    }
    return n;
  }

  /**
   * The more columns a ticket has, and the larger its letters are, the lower it is: all its shapes
   * are about as large, and leave the machine to be seen. Its first fields are seen in all of them.
   */
  private double tall(int n, double high, double share) {
    double larger = TextSize.of(ticket);
    double all = Math.ceil(ticket.prefHeight(width(n)));
    double most = share * TICKET_SHARE * high * 2 / n / Math.max(1, larger);
    double fields = all - bench.belowFirstFields(bench.width(n));
    double least = Math.min(Math.max(TicketSize.LEAST_HIGH_PX * larger, fields), high);
    return Math.min(all, Math.max(least, most));
  }
}

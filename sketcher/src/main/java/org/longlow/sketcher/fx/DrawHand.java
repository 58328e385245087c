package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.NewPart;
import org.longlow.sketcher.edit.NewTube;
import org.longlow.sketcher.edit.PinSpot;
import org.longlow.sketcher.edit.PointSnap;
import org.longlow.sketcher.edit.PointWords;
import org.longlow.sketcher.edit.Putting;
import org.longlow.sketcher.edit.Snapping;
import org.longlow.sketcher.edit.Target;
import org.longlow.sketcher.edit.TypedLength;
import org.longlow.sketcher.picture.PartPicture;
import org.longlow.svg.drawing.Drawing;

/** The hand that draws a new part's outline, or the path of a tube, point by point. */
final class DrawHand implements Hand {

  private static final double CLOSE_PX = 10;

  /** As opaque is a tube on its way. */
  private static final double GHOST_OPACITY = 0.65;

  private final Board board;
  private final Desk desk;
  private final Consumer<String> done;
  private final Runnable away;
  private final Kinds kinds;
  private final List<PointMm> points = new ArrayList<>();
  private final List<PinSpot> spots = new ArrayList<>();
  private String kind;
  private PointSnap next;
  private TypedLength typed = TypedLength.NOTHING;

  /** Whether what was drawn is being tried. */
  private boolean tried;

  private boolean down;

  /** The list of kinds beside the pen. */
  interface Kinds {
    void open(DrawHand pen);

    void close();
  }

  /**
   * @param kind what is drawn unless another kind is picked
   * @param done is told the name of what was drawn
   * @param away is run once it is put down
   */
  DrawHand(Board board, Desk desk, String kind, Kinds kinds, Consumer<String> done, Runnable away) {
    this.board = board;
    this.desk = desk;
    this.kind = kind;
    this.kinds = kinds;
    this.done = done;
    this.away = away;
    desk.drags().hover("");
    board.setHint("");
  }

  List<PointMm> points() {
    return List.copyOf(points);
  }

  /** Returns what is drawn. */
  String kind() {
    return kind;
  }

  /** Goes on as another kind; the points stay. */
  void use(String other) {
    kind = other;
    board.paintGlass();
  }

  @Override
  public void moved(MouseEvent e) {
    BoardState shown = desk.shown().orElse(null);
    if (shown == null) {
      return;
    }
    PointMm pointer = board.inMachine(e.getX(), e.getY());
    Map<String, PointMm> pins = shown.study().placed().places().pins();
    Snapping scale =
        Snapping.at(
            board.frame().pxPerMm(), shown.layout(), shown.study().placed().places(), Map.of());
    PointMm last = points.isEmpty() ? pointer : points.get(points.size() - 1);
    PointMm gone = pointer.minus(last);
    PointSnap.Along along =
        !e.isShiftDown() || points.isEmpty()
            ? PointSnap.Along.ANY
            : Math.abs(gone.x()) > Math.abs(gone.z()) ? PointSnap.Along.X : PointSnap.Along.Z;
    boolean freely = e.isAltDown();
    next =
        PointSnap.of(
            pointer,
            last,
            along,
            pins,
            points,
            freely ? 0 : scale.reachMm(),
            freely ? 0 : scale.gridMm());
    board.setPointer(Hand.px(e));
  }

  @Override
  public void released(MouseEvent e, boolean click) {
    if (click && next != null && !tried) {
      kinds.close();
      put(Hand.px(e));
    }
  }

  private void put(PointMm px) {
    desk.forgetTrouble();
    if (!isTube() && points.size() > 2 && board.onScreen(points.get(0)).distance(px) <= CLOSE_PX) {
      finish();
      return;
    }
    PointMm at = to();
    if (points.isEmpty() || at.distance(points.get(points.size() - 1)) > 0) {
      points.add(at);
      boolean there = !next.pin().isEmpty() && at.equals(next.at());
      spots.add(new PinSpot(at, there ? Optional.of(next.pin()) : Optional.empty()));
    }
    typed = TypedLength.NOTHING;
    board.paintGlass();
  }

  private PointMm to() {
    return points.isEmpty() || typed.mm(ShownUnits.of(desk)).isEmpty()
        ? next.at()
        : PointSnap.exactly(
            points.get(points.size() - 1), next.at(), typed.mm(ShownUnits.of(desk)).get());
  }

  /** Ends the line; one that is refused keeps its points, to be drawn otherwise. */
  private void finish() {
    String name = NewPart.name(desk.session().orElseThrow().layout(), kind);
    String field = isTube() ? "path" : "outline";
    tried = true;
    desk.edit(
        isTube()
            ? NewTube.of(kind, name, List.copyOf(spots))
            : NewPart.of(kind, name, List.copyOf(points)),
        new Target.OfPart(name, List.of(field), field),
        "");
    desk.inTurn(
        () -> {
          tried = false;
          if (!down && desk.trouble().isEmpty()) {
            done.accept(name);
          }
        });
  }

  private boolean isTube() {
    return NewTube.kinds().contains(kind);
  }

  private int fewest() {
    return isTube() ? NewTube.FEWEST : NewPart.FEWEST;
  }

  @Override
  public boolean wants(KeyEvent e) {
    return switch (e.getCode()) {
      case K, BACK_SPACE -> true;
      case PERIOD, COMMA -> !typed.isEmpty();
      default -> false;
    };
  }

  @Override
  public boolean key(KeyEvent e) {
    String sign = Keys.sign(e);
    if (!sign.isEmpty() && !points.isEmpty() && !(typed.isEmpty() && sign.equals("."))) {
      typed = typed.with(sign);
      board.paintGlass();
      return true;
    }
    switch (e.getCode()) {
      case K -> kinds.open(this);
      case BACK_SPACE -> back();
      case ENTER -> enter();
      default -> {
        return false;
      }
    }
    board.paintGlass();
    return true;
  }

  @Override
  public List<Deed> deeds() {
    return List.of(
        new Deed("another kind", "K", () -> kinds.open(this)),
        new Deed("one back", "Backspace", () -> does(this::back)),
        new Deed("Finish", "Enter", () -> does(this::enter)));
  }

  private void does(Runnable run) {
    run.run();
    board.paintGlass();
  }

  @Override
  public String ends() {
    return "Give up";
  }

  private void back() {
    desk.forgetTrouble();
    if (!typed.isEmpty()) {
      typed = typed.back();
    } else if (!points.isEmpty()) {
      points.remove(points.size() - 1);
      spots.remove(spots.size() - 1);
    }
  }

  private void enter() {
    if (tried) {
      return;
    }
    if (!typed.isEmpty() && next != null) {
      put(board.onScreen(to()));
    } else if (points.size() >= fewest()) {
      finish();
    }
  }

  @Override
  public void putDown() {
    down = true;
    kinds.close();
    board.setPointer(null);
    away.run();
  }

  @Override
  public void paint(Overlay glass) {
    if (desk.shown().isEmpty()) {
      return;
    }
    HandlesInk ink = new HandlesInk(glass, board);
    List<PointMm> line = new ArrayList<>(points);
    if (next != null) {
      line.add(to());
      List<String> words = new ArrayList<>();
      String place = PointWords.place(to(), ShownUnits.of(desk));
      words.add(place + desk.shown().get().drawnSaid());
      if (!points.isEmpty()) {
        words.add(PointWords.edge(points.get(points.size() - 1), to(), ShownUnits.of(desk)));
      }
      if (!next.words().isEmpty()) {
        words.add(next.words());
      }
      if (!typed.isEmpty()) {
        words.add("typed: " + typed.text() + " " + ShownUnits.of(desk).word());
      }
      glass.label(words, board.onScreen(to()), true);
    }
    if (line.size() > 1 && isTube()) {
      tube(line).ifPresent(d -> glass.drawing(d, GHOST_OPACITY));
    }
    if (line.size() > 1) {
      ink.line(line, false);
    }
    points.forEach(ink::point);
    ink.says(says());
  }

  /** The tube as it would lie, bent by its radius. */
  private Optional<Drawing> tube(List<PointMm> line) {
    BoardState shown = desk.shown().orElseThrow();
    List<PointMm> path = new ArrayList<>(line);
    int last = path.size() - 1;
    if (path.get(last).distance(path.get(last - 1)) == 0) {
      path.remove(last); // the pointer rests on the last point
    }
    if (path.size() < NewTube.FEWEST) {
      return Optional.empty();
    }
    Putting.Ghost ghost = NewTube.ghost(kind, path);
    double n = board.frame().denominator();
    return Optional.of(
        PartPicture.of(shown.layout(), ghost.part(), ghost.places(), shown.ground(), n));
  }

  @Override
  public String says() {
    String how = ", with Shift straight, with Alt freely";
    String edge = "\nType a length to set an edge. ";
    String refused = desk.trouble().map(t -> t.refused().words() + "\n").orElse("");
    return isTube()
        ? refused
            + "A new "
            + kind
            + ": click its one end, its bends and its other end"
            + how
            + "."
            + edge
            + "Bends take their radius from its ticket."
        : refused
            + "A new "
            + kind
            + ": click its points in order"
            + how
            + "."
            + edge
            + "Click the first when done.";
  }
}

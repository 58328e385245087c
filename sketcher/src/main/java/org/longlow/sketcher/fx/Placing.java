package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.longlow.constraints.layout.Layout;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Notice;
import org.longlow.sketcher.edit.Hang;
import org.longlow.sketcher.edit.Putting;
import org.longlow.sketcher.edit.Snapping;
import org.longlow.sketcher.edit.Subjects;
import org.longlow.sketcher.edit.Target;
import org.longlow.sketcher.picture.PartPicture;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Tone;

/**
 * The hand that puts something on the machine: a ghost of it follows the pointer or the arrow keys,
 * a click or Enter gives its pins their places.
 */
final class Placing implements Hand {

  private static final double GHOST_OPACITY = 0.65;

  /** How far from the pointer something to hang on may be, px. */
  private static final double NEAR_PX = 14;

  /** As many of those as can be told by one key each. */
  private static final int MOST_OFFERED = 9;

  private final Board board;
  private final Desk desk;
  private final Runnable done;
  private final Consumer<Boolean> aside;
  private Putting putting;
  private Snapping.Snap snap;

  /** Where pointer or arrows went, which may be beside what {@link #snap} was drawn to. */
  private PointMm aimed;

  private List<Hang> offered = List.of(Hang.FRAME);
  private boolean nothingThere;

  /**
   * @param done is run once it is placed
   * @param aside is told false once nothing is placed any more
   */
  Placing(Board board, Desk desk, Putting putting, Runnable done, Consumer<Boolean> aside) {
    this.board = board;
    this.desk = desk;
    this.putting = putting;
    this.done = done;
    this.aside = aside;
    desk.drags().hover("");
    board.setHint("");
    pointAt(board.inMachine(board.getWidth() / 2, board.getHeight() / 2), false);
  }

  private void pointAt(PointMm place, boolean exactly) {
    aimed = place;
    snap = exactly ? Snapping.exact(place) : snapping().of(place);
    nothingThere = false;
    offered = Hang.offered(shown().layout(), near(place));
    offered = offered.subList(0, Math.min(MOST_OFFERED, offered.size()));
    board.setPointer(board.onScreen(snap.at()));
  }

  private BoardState shown() {
    return desk.shown().orElseThrow();
  }

  private Snapping snapping() {
    return Snapping.at(board.frame().pxPerMm(), shown().layout(), shown().places(), outlines());
  }

  private Map<String, Geometry> outlines() {
    Map<String, Geometry> outlines = new LinkedHashMap<>();
    shown().shapes().forEach((name, shape) -> outlines.put(name, shape.outline()));
    return outlines;
  }

  /** Parts at a place, the nearest to its middle first. */
  private List<String> near(PointMm place) {
    Point point = new GeometryFactory().createPoint(new Coordinate(place.x(), place.z()));
    double reach = NEAR_PX / board.frame().pxPerMm();
    Map<String, Geometry> outlines = outlines();
    return outlines.keySet().stream()
        .filter(name -> outlines.get(name).isWithinDistance(point, reach))
        .sorted(
            (a, b) ->
                Double.compare(
                    outlines.get(a).getCentroid().distance(point),
                    outlines.get(b).getCentroid().distance(point)))
        .toList();
  }

  @Override
  public void moved(MouseEvent e) {
    if (desk.shown().isPresent()) {
      pointAt(board.inMachine(e.getX(), e.getY()), e.isAltDown());
    }
  }

  @Override
  public void released(MouseEvent e, boolean click) {
    if (click) {
      place(e.isShiftDown());
    }
  }

  /** Hangs it on what is under the pointer, with each click more on the next there. */
  @Override
  public void otherClick(MouseEvent e) {
    if (desk.shown().isPresent()) {
      hangOnNext();
    }
  }

  private void hangOnNext() {
    nothingThere = offered.size() == 1;
    hang((offered.indexOf(putting.hang()) + 1) % offered.size());
  }

  /**
   * Gives the next pin its place.
   *
   * @param rest whether those after it keep to it as they are drawn
   */
  private void place(boolean rest) {
    putting = putting.with(snap.spot());
    if (putting.isPlaced() || rest) {
      finish();
    } else {
      pointAt(snap.at(), false);
    }
  }

  private void finish() {
    Layout layout = desk.session().orElseThrow().layout();
    String subject = putting.subjectIn(layout);
    String said = putting.said(layout);
    desk.edit(putting.edit(), new Target.OfEntry(Subjects.entry(subject).orElseThrow()), "");
    if (!said.isEmpty()) {
      String text = putting.title() + " " + said + ", for the rider has one; its field seat tells.";
      desk.inTurn(
          () -> {
            if (desk.trouble().isEmpty()) {
              desk.say(Notice.Mood.SAID, "edit", text);
            }
          });
    }
    // before the ticket is laid back, or it would show for a moment what was picked before
    desk.choose(subject);
    done.run();
  }

  @Override
  public void putDown() {
    aside.accept(false);
    board.setPointer(null);
  }

  @Override
  public boolean key(KeyEvent e) {
    if (desk.shown().isEmpty()) {
      return false;
    }
    switch (e.getCode()) {
      case LEFT -> step(e, -1, 0);
      case RIGHT -> step(e, 1, 0);
      case UP -> step(e, 0, 1);
      case DOWN -> step(e, 0, -1);
      case ENTER -> place(e.isShiftDown());
      case BACK_SPACE -> {
        putting = putting.back();
        board.paintGlass();
      }
      case H -> hangOnNext();
      case DIGIT1, DIGIT2, DIGIT3, DIGIT4, DIGIT5, DIGIT6, DIGIT7, DIGIT8, DIGIT9 ->
          hang(e.getCode().ordinal() - KeyCode.DIGIT1.ordinal());
      default -> {
        return false;
      }
    }
    return true;
  }

  @Override
  public String ends() {
    return "Give up";
  }

  private void hang(int i) {
    if (i < offered.size()) {
      putting = putting.on(offered.get(i));
      board.paintGlass();
    }
  }

  /** By the grid, with Shift ten times as far, with Alt by a plain step of an arrow key, freely. */
  private void step(KeyEvent e, int right, int up) {
    double grid = snapping().gridMm();
    double step =
        e.isShiftDown()
            ? 10 * grid
            : e.isAltDown() ? ShownUnits.stepMm(shown().units(), false, false) : grid;
    // from where it was aimed at, or what it was drawn to would hold the ghost back
    PointMm from = e.isAltDown() ? snap.at() : aimed;
    pointAt(from.plus(new PointMm(right * step, up * step)), e.isAltDown());
  }

  @Override
  public void paint(Overlay glass) {
    if (desk.shown().isEmpty()) {
      return;
    }
    BoardState shown = shown();
    double n = board.frame().denominator();
    Envelope ghosts = new Envelope();
    for (Putting.Ghost ghost : putting.ghosts(snap.at())) {
      Drawing drawing =
          PartPicture.of(shown.layout(), ghost.part(), ghost.places(), shown.ground(), n);
      glass.drawing(drawing, GHOST_OPACITY);
      ghosts.expandToInclude(PartPicture.body(drawing));
    }
    PointMm px = board.onScreen(snap.at());
    Pen gc = glass.pen();
    gc.setStroke(glass.colour(Tone.CHOSEN));
    gc.setLineWidth(1.5);
    gc.strokeLine(px.x() - 12, px.z(), px.x() + 12, px.z());
    gc.strokeLine(px.x(), px.z() - 12, px.x(), px.z() + 12);
    glass.label(words(), glass.labelBox(words(), px, ghosts), true);
  }

  List<String> words() {
    List<String> words = new ArrayList<>();
    String next = putting.next();
    words.add(next.isEmpty() ? putting.title() : putting.title() + ", " + next);
    String said = putting.said(shown().layout());
    if (!said.isEmpty()) {
      words.add(said + ": the rider has one");
    }
    words.add(snap.words(shown().units()) + shown().drawnSaid());
    words.add("hangs on " + putting.hang().words());
    if (nothingThere) {
      words.add("nothing here to hang it on: point at a part, then H");
    }
    if (offered.size() > 1) {
      for (int i = 0; i < offered.size(); i++) {
        if (!offered.get(i).equals(putting.hang())) {
          words.add("  " + (i + 1) + "  " + offered.get(i).words());
        }
      }
    }
    words.addAll(List.of(says().split("\n")));
    return words;
  }

  @Override
  public String says() {
    boolean rest = !putting.next().isEmpty();
    return "click or Enter; "
        + (rest ? "with Shift the rest as drawn; " : "")
        + (offered.size() > 1
            ? "right click, number or H hangs it on something;\n"
            : "H over a part hangs it on that;\n")
        + "Alt puts it freely; Esc drops it";
  }
}

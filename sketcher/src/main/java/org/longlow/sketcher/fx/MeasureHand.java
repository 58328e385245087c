package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Cursor;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.stand.Measured;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Notice;
import org.longlow.sketcher.edit.Addable;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.Keeping;
import org.longlow.sketcher.edit.MeasureSpot;
import org.longlow.sketcher.edit.MeasureView;
import org.longlow.sketcher.edit.Measuring;
import org.longlow.sketcher.edit.Subjects;
import org.longlow.sketcher.edit.Target;
import org.longlow.svg.drawing.Tone;

/**
 * The hand that measures: two things pointed at tell how far apart they are, a third with Shift the
 * angle at the second.
 */
final class MeasureHand implements Hand {

  /** What to do next is said as long as the pointer is about as near to what it picked, px. */
  private static final double BESIDE_PX = 60;

  private static final double LINE_PX = 1.5;

  private final Board board;
  private final Desk desk;
  private final Runnable done;
  private final Runnable away;
  private Measuring measuring = Measuring.NOTHING;
  private MeasureSpot over;
  private boolean third;
  private int picked;
  private boolean asked;

  /**
   * @param done ends it
   * @param away is run once it is put down
   */
  MeasureHand(Board board, Desk desk, Runnable done, Runnable away) {
    this.board = board;
    this.desk = desk;
    this.done = done;
    this.away = away;
    desk.drags().hover("");
    board.setHint("");
  }

  /** Returns the machine as it is measured on. */
  private MeasureView view() {
    BoardState shown = desk.shown().orElseThrow();
    Map<String, Geometry> outlines = new LinkedHashMap<>();
    shown.shapes().forEach((name, shape) -> outlines.put(name, shape.outline()));
    return new MeasureView(
        shown.layout(), shown.study().placed().places(), shown.places(), outlines, shown.ground());
  }

  /** What is measured, with what the pointer is over where that would be its next. */
  private Measuring seen(MeasureView view) {
    Measuring now = measuring.in(view);
    boolean next = now.spots().size() == 1 || now.spots().size() == 2 && third;
    return over != null && next ? now.with(over, third) : now;
  }

  private void pointAt(PointMm place, boolean exactly) {
    over = view().at(place, board.frame().pxPerMm(), exactly);
    board.setPointer(board.onScreen(over.at()));
  }

  // --- pointer

  @Override
  public void moved(MouseEvent e) {
    if (desk.shown().isPresent()) {
      third = e.isShiftDown();
      board.setCursor(Cursor.CROSSHAIR);
      pointAt(board.inMachine(e.getX(), e.getY()), e.isAltDown());
    }
  }

  @Override
  public void released(MouseEvent e, boolean click) {
    if (click && over != null) {
      take(e.isShiftDown());
    }
  }

  @Override
  public void left() {
    over = null;
    board.setPointer(null);
  }

  @Override
  public void putDown() {
    board.setPointer(null);
    away.run();
  }

  private void take(boolean angle) {
    measuring = measuring.in(view()).with(over, angle);
    third = false;
    picked = 0;
    asked = false;
    board.paintGlass();
  }

  // --- keys

  @Override
  public boolean key(KeyEvent e) {
    if (desk.shown().isEmpty()) {
      return false;
    }
    switch (e.getCode()) {
      case N -> step(e.isShiftDown() ? -1 : 1);
      case LEFT -> push(e, -1, 0);
      case RIGHT -> push(e, 1, 0);
      case UP -> push(e, 0, 1);
      case DOWN -> push(e, 0, -1);
      case ENTER -> {
        if (over != null) {
          take(e.isShiftDown());
        }
      }
      case BACK_SPACE -> back();
      case DIGIT1, DIGIT2, DIGIT3, DIGIT4 -> pick(e.getCode().ordinal() - KeyCode.DIGIT1.ordinal());
      case K -> keep();
      case T -> tie();
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
        new Deed("keep as a dimension", "K", () -> does(this::keep)),
        new Deed("tie", "T", () -> does(this::tie)),
        new Deed("one back", "Backspace", () -> does(this::back)));
  }

  private void does(Runnable run) {
    if (desk.shown().isPresent()) {
      run.run();
      board.paintGlass();
    }
  }

  private void back() {
    measuring = measuring.back();
    asked = false;
  }

  private void step(int by) {
    MeasureView view = view();
    List<String> pins = List.copyOf(view.layout().pins().keySet());
    if (!pins.isEmpty()) {
      String now = over == null ? "" : over.end().map(end -> end.pin()).orElse("");
      int at = pins.indexOf(now);
      int next = at < 0 ? (by > 0 ? 0 : pins.size() - 1) : Math.floorMod(at + by, pins.size());
      over = view.pin(pins.get(next));
      board.setPointer(board.onScreen(over.at()));
    }
  }

  /** By a step of an arrow key; what is near takes the pointer, with Alt nothing does. */
  private void push(KeyEvent e, int right, int up) {
    double mm = ShownUnits.stepMm(e, ShownUnits.of(desk));
    PointMm from =
        over == null ? board.inMachine(board.getWidth() / 2, board.getHeight() / 2) : over.at();
    // it would be held where it is
    over = MeasureSpot.bare(from.plus(new PointMm(right * mm, up * mm)));
    board.setPointer(board.onScreen(over.at()));
  }

  private void pick(int i) {
    if (i < measuring.in(view()).readings(view()).size()) {
      picked = i;
      asked = false;
    }
  }

  private Optional<Measuring.Reading> reading(MeasureView view) {
    List<Measuring.Reading> all = measuring.in(view).readings(view);
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(all.get(Math.min(picked, all.size() - 1)));
  }

  /** Keeps what is measured; where a pin has to be nailed for it that is asked first. */
  private void keep() {
    MeasureView view = view();
    Optional<Measuring.Reading> reading = reading(view);
    if (reading.isEmpty()) {
      return;
    }
    Measuring now = measuring.in(view);
    if (!now.without(reading.get()).isEmpty() && !asked) {
      asked = true;
      return;
    }
    try {
      Edit edit = Keeping.dimension(now, reading.get(), view);
      String name = Keeping.name(desk.session().orElseThrow().layout(), reading.get());
      finish(edit, Subjects.of(new Entry("dimensions", name)));
    } catch (OutOfRange refused) {
      desk.say(Notice.Mood.SAID, "measure", sentence(refused.getMessage()));
    }
  }

  private void tie() {
    MeasureView view = view();
    Optional<Measuring.Reading> reading = reading(view);
    if (reading.isEmpty()) {
      return;
    }
    Optional<Edit> edit = Keeping.tie(measuring.in(view), reading.get(), view);
    if (edit.isEmpty()) {
      desk.say(Notice.Mood.SAID, "measure", "A tie holds pins; this runs between other things.");
      return;
    }
    Addable tie = new Addable("ties", "", "", p -> edit.get());
    tie.subject(desk.session().orElseThrow().layout(), edit.get())
        .ifPresent(subject -> finish(edit.get(), subject));
  }

  private void finish(Edit edit, String subject) {
    desk.edit(edit, new Target.OfEntry(Subjects.entry(subject).orElseThrow()), "");
    done.run();
    desk.choose(subject);
  }

  private static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1) + ".";
  }

  // --- what is seen

  /** Returns what is told beside the pointer. */
  List<String> told() {
    MeasureView view = view();
    Measuring seen = seen(view);
    return words(seen, seen.readings(view));
  }

  @Override
  public void paint(Overlay glass) {
    if (desk.shown().isEmpty()) {
      return;
    }
    MeasureView view = view();
    Measuring seen = seen(view);
    List<Measuring.Reading> readings = seen.readings(view);
    Pen gc = glass.pen();
    gc.setStroke(glass.colour(Tone.CHOSEN));
    gc.setLineWidth(LINE_PX);
    seen.spots().forEach(spot -> ring(gc, board.onScreen(spot.at())));
    if (!readings.isEmpty()) {
      line(gc, readings.get(Math.min(picked, readings.size() - 1)).measured());
    }
    if (over != null) {
      cross(gc, board.onScreen(over.at()));
    }
    MeasureSpot last = seen.spots().isEmpty() ? over : seen.spots().get(seen.spots().size() - 1);
    if (last != null) {
      glass.label(words(seen, readings), board.onScreen(last.at()), true);
    }
  }

  private void line(Pen gc, Measured m) {
    PointMm from = onScreen(m.from());
    PointMm to = onScreen(m.to());
    PointMm middle = m.at().map(this::onScreen).orElse(to);
    gc.strokeLine(from.x(), from.z(), middle.x(), middle.z());
    gc.strokeLine(middle.x(), middle.z(), to.x(), to.z());
    if (m.at().isEmpty()) {
      gc.setLineWidth(1);
      gc.setLineDashes(3, 4);
      gc.strokeLine(from.x(), from.z(), to.x(), from.z());
      gc.strokeLine(to.x(), from.z(), to.x(), to.z());
      gc.setLineDashes();
      gc.setLineWidth(LINE_PX);
    }
  }

  /** Returns where a place of the road's axes is. */
  private PointMm onScreen(PointMm road) {
    return new PointMm(board.frame().screenX(road.x()), board.frame().screenY(road.z()));
  }

  private static void ring(Pen gc, PointMm px) {
    gc.strokeOval(px.x() - 6, px.z() - 6, 12, 12);
  }

  private static void cross(Pen gc, PointMm px) {
    gc.strokeLine(px.x() - 12, px.z(), px.x() + 12, px.z());
    gc.strokeLine(px.x(), px.z() - 12, px.x(), px.z() + 12);
  }

  private List<String> words(Measuring seen, List<Measuring.Reading> readings) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      boolean chosen = i == Math.min(picked, readings.size() - 1);
      String number = chosen || !measuring.isDone() ? "" : (i + 1) + "  ";
      words.add(number + readings.get(i).words(view().layout().units()));
    }
    boolean measured = measuring.isDone() && seen.spots().size() == measuring.spots().size();
    if (over != null && !measured && !over.words().isEmpty()) {
      words.add(over.words());
    }
    if (measured && asked) {
      Set<String> without = seen.without(readings.get(Math.min(picked, readings.size() - 1)));
      words.add("It ends at " + String.join(" and ", without) + ", where no pin is.");
      words.add("K again nails one there and keeps it.");
    } else if (!measured || isBeside(seen.spots().get(seen.spots().size() - 1))) {
      // elsewhere the figures stay alone and hide less
      words.addAll(List.of(says().split("\n")));
    }
    return words;
  }

  private boolean isBeside(MeasureSpot spot) {
    return over == null || onBoard(over).distance(onBoard(spot)) < BESIDE_PX;
  }

  private PointMm onBoard(MeasureSpot spot) {
    return board.onScreen(spot.at());
  }

  @Override
  public String says() {
    return switch (measuring.spots().size()) {
      case 0 -> "click or Enter: measure from here; N next pin, Alt freely, Esc ends";
      case 1 -> "click or Enter: measure to here; Alt freely, Esc ends";
      case 2 ->
          "K keeps it as a dimension, T ties it, a number takes another"
              + "\nShift click: the angle to a third; click: the next; Esc ends";
      default -> "K keeps it as a dimension, T ties it; click: the next; Esc ends";
    };
  }
}

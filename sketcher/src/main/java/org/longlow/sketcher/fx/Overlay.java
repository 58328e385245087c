package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.geometry.VPos;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.words.Said;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.DragNow;
import org.longlow.sketcher.edit.PinFreedom;
import org.longlow.sketcher.edit.Things;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * What the pointer brings out on top of the drawing: pins, where they can go, what goes with them,
 * the finding picked, and words beside the pointer.
 */
final class Overlay {

  private static final double WAY_PX = 34;
  private static final double FOLLOWER_PX = 18;
  private static final double PIN_PX = 3.2;
  private static final double LABEL_MM = 8.5;
  private static final double LINE_PX = 16;

  /** So far from the pointer words begin, px. */
  private static final double ACROSS_PX = 22;

  private static final double DOWN_PX = 20;

  /** What words never lie over if there is any other place, however far away. */
  private static final double NEVER = 1000;

  private final DrawingPainter painter;
  private final Pen gc;
  private ViewFrame frame;
  private BoardState shown;
  private Spots.Box room = new Spots.Box(0, 0, 0, 0);
  private List<Spots.Box> over = List.of();

  Overlay(DrawingPainter painter) {
    this.painter = painter;
    gc = new Pen(painter);
  }

  /** What is written beside a place is seen in {@code room}, where nothing lies over it. */
  void keepIn(Spots.Box seen, List<Spots.Box> slips) {
    room = seen;
    over = slips;
  }

  void paint(Desk desk, BoardState now, ViewFrame view, PointMm pointerPx, String hint) {
    frame = view;
    shown = now;
    String chosen = now.options().chosen();
    String held = desk.drags().drag().map(DragNow::pin).orElse("");
    List<String> about = Things.pins(now.layout(), chosen);
    // what was just added may be picked before it is drawn
    List<String> more = desk.selection().in(now.layout()).pins();
    Map<String, Pin> pins = now.fromSide() ? now.layout().pins() : Map.of();
    for (Map.Entry<String, Pin> e : pins.entrySet()) {
      boolean picked = about.contains(e.getKey()) || more.contains(e.getKey());
      pin(e.getKey(), e.getValue(), picked, e.getKey().equals(held));
    }
    finding(desk.finding());
    desk.drags().freedom().filter(f -> held.isEmpty() && now.fromSide()).ifPresent(this::freedom);
    List<String> words = words(desk, hint);
    if (!words.isEmpty() && pointerPx != null) {
      label(words, pointerPx, desk.drags().drag().isPresent());
    }
  }

  /** Returns what to draw with; places on the screen. */
  Pen pen() {
    return gc;
  }

  Color colour(Tone tone) {
    return painter.colour(tone);
  }

  /** Paints a drawing over the card as if one could see through it. */
  void drawing(Drawing drawing, double opacity) {
    for (Layer layer : drawing.layers()) {
      layer.marks().forEach(m -> gc.add(MarkInk.of(painter, m, frame, 1, opacity)));
    }
  }

  /** Draws the outer edge of something that is picked as well. */
  void pickedToo(Geometry edge) {
    Style dashed = Style.line(Tone.CHOSEN, 0.5).withLine(LineType.DASHED);
    gc.add(MarkInk.of(painter, new Mark.Shape("", edge, dashed), frame, 1, 1));
  }

  /** Writes words in the middle of an empty board. */
  void say(String words, double wide, double high) {
    gc.setLetters(painter.font(11), TextAlignment.CENTER, VPos.CENTER);
    gc.setFill(painter.colour(Tone.INK));
    gc.fillText(words, wide / 2, high / 2);
  }

  private List<String> words(Desk desk, String hint) {
    List<String> words = new ArrayList<>();
    desk.drags()
        .drag()
        .ifPresent(
            d -> {
              words.addAll(d.words());
              if (!d.stops().isEmpty()) {
                words.add("stopped by limit " + String.join(", ", d.stops()));
              }
            });
    if (words.isEmpty() && desk.drags().drag().isEmpty()) {
      desk.drags().freedom().ifPresent(f -> words.addAll(wrapped(f.words())));
    }
    if (words.isEmpty() && desk.drags().drag().isEmpty() && !hint.isEmpty()) {
      String name = hint.substring(hint.indexOf(':') + 1);
      Part part = shown.layout().parts().get(name);
      words.add(part == null ? name : Said.with(name, part.what()));
    }
    return words;
  }

  private static List<String> wrapped(String words) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words.split(" ")) {
      if (line.length() + word.length() > 44) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  private void pin(String name, Pin pin, boolean chosen, boolean held) {
    PointMm at = shown.onDrawing(name);
    double x = frame.screenX(at.x());
    double y = frame.screenY(at.z());
    boolean moves = shown.movable().contains(name);
    if (pin.nailed()) {
      nailHead(x, y, PIN_PX);
    } else {
      gc.setFill(painter.colour(moves ? Tone.PAPER : Tone.PENCIL));
      gc.setStroke(painter.colour(moves ? Tone.INK : Tone.PENCIL));
      gc.setLineWidth(moves ? 2 : 1);
      double r = moves ? PIN_PX + 1.3 : PIN_PX - 1.2;
      gc.fillOval(x - r, y - r, 2 * r, 2 * r);
      gc.strokeOval(x - r, y - r, 2 * r, 2 * r);
    }
    if (chosen || held) {
      gc.setStroke(painter.colour(Tone.CHOSEN));
      gc.setLineWidth(2);
      gc.strokeOval(x - 9, y - 9, 18, 18);
    }
  }

  private void finding(String id) {
    if (!shown.isMarked(id)) {
      return;
    }
    for (Finding f : shown.findings()) {
      if (f.id().equals(id) && f.where().isPresent()) {
        PointMm at = shown.onDrawing(f);
        double x = frame.screenX(at.x());
        double y = frame.screenY(at.z());
        gc.setStroke(painter.colour(Tone.CHOSEN));
        gc.setLineWidth(2);
        gc.strokeOval(x - 16, y - 16, 32, 32);
        for (int i = 0; i < 4; i++) {
          double a = Math.PI / 4 + i * Math.PI / 2;
          gc.strokeLine(
              x + 16 * Math.cos(a),
              y + 16 * Math.sin(a),
              x + 26 * Math.cos(a),
              y + 26 * Math.sin(a));
        }
      }
    }
  }

  private void freedom(PinFreedom f) {
    if (!shown.layout().pins().containsKey(f.pin())) {
      return;
    }
    PointMm at = shown.onDrawing(f.pin());
    double x = frame.screenX(at.x());
    double y = frame.screenY(at.z());
    gc.setStroke(painter.colour(Tone.CHOSEN));
    gc.setLineWidth(1.5);
    gc.strokeOval(x - 7, y - 7, 14, 14);
    f.followers().forEach(this::follower);
    for (PointMm way : f.ways()) {
      arrow(x, y, turned(way), 9, WAY_PX, 2.2, painter.colour(Tone.CHOSEN));
    }
    if (f.kind() == PinFreedom.Kind.HELD || f.kind() == PinFreedom.Kind.NAILED) {
      nailHead(x, y, PIN_PX + 2);
    }
  }

  /** The head of a nail as seen from above: what cannot move. */
  private void nailHead(double x, double y, double r) {
    gc.setFill(painter.colour(Tone.INK));
    gc.fillOval(x - r, y - r, 2 * r, 2 * r);
    gc.setStroke(painter.colour(Tone.PAPER));
    gc.setLineWidth(1.2);
    double half = 0.55 * r;
    gc.strokeLine(x - half, y - half, x + half, y + half);
    gc.strokeLine(x - half, y + half, x + half, y - half);
  }

  private void follower(String name, PointMm move) {
    if (shown.layout().pins().containsKey(name)) {
      PointMm at = shown.onDrawing(name);
      PointMm d = turned(move);
      double length = Math.min(1.6, d.length());
      arrow(
          frame.screenX(at.x()),
          frame.screenY(at.z()),
          d.times(1 / d.length()),
          5,
          5 + FOLLOWER_PX * length,
          1.2,
          painter.colour(Tone.PENCIL));
    }
  }

  /** Turns a direction of the frame into one of the road that is drawn level. */
  private PointMm turned(PointMm way) {
    PointMm along = shown.ground().along();
    return new PointMm(along.dot(way), along.cross(way));
  }

  private void arrow(
      double x, double y, PointMm way, double from, double to, double wide, Color colour) {
    double tx = x + way.x() * to;
    double ty = y - way.z() * to;
    gc.setStroke(colour);
    gc.setFill(colour);
    gc.setLineWidth(wide);
    gc.strokeLine(x + way.x() * from, y - way.z() * from, tx, ty);
    double h = 3 + 2.2 * wide;
    double nx = way.z();
    double ny = way.x();
    double bx = tx - way.x() * h;
    double by = ty + way.z() * h;
    gc.fillPolygon(
        new double[] {tx + way.x() * 2, bx + nx * h * 0.5, bx - nx * h * 0.5},
        new double[] {ty - way.z() * 2, by + ny * h * 0.5, by - ny * h * 0.5},
        3);
  }

  /** Writes words on a scrap of card beside the pointer, inside of the board. */
  void label(List<String> lines, PointMm at, boolean dragging) {
    label(lines, labelBox(lines, at), dragging);
  }

  /**
   * Returns where several labels are written, each near the place it is about: over as little of
   * the machine and its people as can be, and none over another.
   *
   * @param places what each is about, px
   * @param taken what none of them lies over
   */
  List<Spots.Box> labelBoxes(
      List<List<String>> labels, List<Spots.Box> places, List<Spots.Box> taken) {
    List<Spots.Busy> busy = new ArrayList<>(Clear.of(shown, frame, painter.letters()));
    Stream.concat(over.stream(), taken.stream())
        .forEach(box -> busy.add(new Spots.Busy(box, NEVER)));
    List<Spots.Box> laid = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      Spots.Size size = size(labels.get(i));
      Spots.Box box = Spots.slip(room, List.of(size), places.get(i), busy);
      laid.add(box);
      busy.add(new Spots.Busy(box, NEVER));
    }
    return laid;
  }

  /** Returns where words beside a place are written. */
  Spots.Box labelBox(List<String> lines, PointMm at) {
    return labelBox(lines, at, new Envelope());
  }

  /**
   * As {@link #labelBox(List, PointMm)}.
   *
   * @param off what they are about and do not lie over if there is room elsewhere, mm
   */
  Spots.Box labelBox(List<String> lines, PointMm at, Envelope off) {
    List<Spots.Box> all = new ArrayList<>(over);
    if (!off.isNull()) {
      all.add(frame.onScreen(off));
    }
    return Spots.beside(at, size(lines), ACROSS_PX, DOWN_PX, room, all);
  }

  /** Returns whether a line written to the right of a place is seen whole. */
  boolean fitsBeside(String line, PointMm at) {
    return at.x() + ACROSS_PX + size(List.of(line)).width() <= room.right();
  }

  private Spots.Size size(List<String> lines) {
    Font font = painter.font(LABEL_MM);
    double wide = 0;
    for (String line : lines) {
      wide = Math.max(wide, painter.extents(line, font).getWidth());
    }
    return new Spots.Size(wide + 16, labelHighPx(lines.size(), painter.letters()));
  }

  /** Returns how high a label of so many lines is, px, with letters so much larger than usual. */
  static double labelHighPx(int lines, double letters) {
    return LINE_PX * letters * lines + 9;
  }

  /** Writes words on a scrap of card that lies there. */
  void label(List<String> lines, Spots.Box box, boolean dragging) {
    double x = box.x();
    double y = box.y();
    gc.setLetters(painter.font(LABEL_MM), TextAlignment.LEFT, VPos.BASELINE);
    gc.setFill(painter.colour(Tone.PAPER));
    gc.fillRect(x, y, box.width(), box.height());
    gc.setStroke(painter.colour(dragging ? Tone.CHOSEN : Tone.PENCIL));
    gc.setLineWidth(1);
    gc.strokeRect(
        Math.round(x) + 0.5,
        Math.round(y) + 0.5,
        Math.round(box.width()),
        Math.round(box.height()));
    gc.setFill(painter.colour(Tone.INK));
    for (int i = 0; i < lines.size(); i++) {
      gc.fillText(lines.get(i), x + 8, y + 1 + LINE_PX * painter.letters() * (i + 1));
    }
  }
}

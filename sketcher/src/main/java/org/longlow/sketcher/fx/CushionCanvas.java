package org.longlow.sketcher.fx;

import java.util.function.IntConsumer;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import org.locationtech.jts.geom.Envelope;
import org.longlow.sketcher.picture.CushionPicture;
import org.longlow.sketcher.picture.CushionStack;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Tone;

/** The cut through a cushion on the screen: layers are picked, and their edges dragged. */
final class CushionCanvas extends Region {

  /** Scales 1:N that the cut may have; the largest that leaves room for the rest is taken. */
  private static final double[] SCALES = {
    0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 7.5, 10, 15, 20, 50, 100
  };

  private static final double MARGIN_PX = 8;

  /** How near to an edge still takes it, px. */
  private static final double REACH_PX = 5;

  /** What is done to the layer picked. */
  interface Doing {
    /** While an edge is dragged: the layer is to be so thick. */
    void dragged(int layer, double mm);

    /** The edge is let go of. */
    void dropped();

    /** By keys: the layer picked is made thicker by so much. */
    void thicker(double mm);

    void add();

    void takeOut();

    /** Moves the layer picked one up (-1) or down (1). */
    void move(int by);

    void type();
  }

  private final Doing doing;
  private final IntConsumer pick;
  private final Canvas canvas = new Canvas();
  private CushionStack stack;
  private Look look = Look.DAY;
  private int picked;
  private double roomPx;
  private ViewFrame frame;

  /** N of the scale 1:N that the cut has. */
  private double shownAt = 1;

  private int held = -1;
  private double heldMm;
  private double grabMm;

  CushionCanvas(IntConsumer pick, Doing doing) {
    this.pick = pick;
    this.doing = doing;
    Called.by(this, "cushion-drawing");
    getStyleClass().add("cushion-drawing");
    setFocusTraversable(true);
    getChildren().add(canvas);
    canvas.setMouseTransparent(true);
    setOnMouseMoved(e -> setCursor(edgeAt(e) < 0 ? Cursor.DEFAULT : Cursor.V_RESIZE));
    setOnMousePressed(this::pressed);
    setOnMouseDragged(this::dragged);
    setOnMouseReleased(e -> letGo());
    setOnKeyPressed(this::key);
    widthProperty().addListener((o, was, is) -> draw());
  }

  /**
   * Shows a cushion.
   *
   * @param layer the layer picked
   * @param highPx how high the cut itself may be
   */
  void show(CushionStack next, int layer, Look palette, double highPx) {
    stack = next;
    picked = layer;
    look = palette;
    roomPx = highPx;
    draw();
  }

  boolean isDragging() {
    return held >= 0;
  }

  /** Lets go without a word of it. */
  void drop() {
    held = -1;
    draw();
  }

  private void draw() {
    if (stack == null || getWidth() < 50) {
      return;
    }
    double letters = TextSize.of(this);
    double pxPerPaperMm = ViewFrame.PX_PER_PAPER_MM * letters;
    double n = isDragging() ? shownAt : scale(roomPx / pxPerPaperMm);
    shownAt = n;
    double widthMm = (getWidth() - 2 * MARGIN_PX) / pxPerPaperMm;
    Drawing drawing = CushionPicture.of(stack, widthMm, n, picked);
    Envelope box = drawing.scaled(1 / n).paperBoundsMm();
    double high = box.getHeight() * pxPerPaperMm + 2 * MARGIN_PX;
    if (!isDragging()) {
      // held still under a hand that drags
      frame =
          new ViewFrame(
              pxPerPaperMm / n,
              MARGIN_PX + CushionPicture.NAMES_MM * pxPerPaperMm,
              MARGIN_PX + box.getMaxY() * pxPerPaperMm);
      setMinHeight(Math.ceil(high));
      setPrefHeight(Math.ceil(high));
    }
    canvas.setWidth(getWidth());
    canvas.setHeight(Math.max(getHeight(), high));
    DrawingPainter painter = new DrawingPainter(look.palette(), letters);
    GraphicsContext gc = canvas.getGraphicsContext2D();
    gc.setFill(painter.colour(Tone.PAPER));
    gc.fillRect(0, 0, canvas.getWidth(), canvas.getHeight());
    painter.paint(gc, drawing, frame, canvas.getWidth(), canvas.getHeight(), 1);
  }

  private double scale(double roomMm) {
    for (double n : SCALES) {
      if ((stack.foamMm() + stack.boardMm()) / n <= roomMm) {
        return n;
      }
    }
    return SCALES[SCALES.length - 1];
  }

  /** Returns how high above the board the pointer is, mm. */
  private double heightMm(MouseEvent e) {
    return frame.point(e.getX(), e.getY()).z();
  }

  private boolean isOnFreeStack(MouseEvent e) {
    double x = frame.point(e.getX(), e.getY()).x() / shownAt;
    return x > -CushionPicture.NAMES_MM && x < CushionPicture.FREE_MM + 1;
  }

  /** Returns the layer whose upper edge is under the pointer; -1 for none. */
  private int edgeAt(MouseEvent e) {
    if (stack == null || frame == null || !isOnFreeStack(e)) {
      return -1;
    }
    int nearest = -1;
    double least = REACH_PX / frame.pxPerMm();
    for (int i = 0; i < stack.layers().size(); i++) {
      double off = Math.abs(topMm(i) - heightMm(e));
      if (off < least) {
        least = off;
        nearest = i;
      }
    }
    return nearest;
  }

  private double topMm(int layer) {
    return stack.undersideMm(layer) + stack.layers().get(layer).thicknessMm();
  }

  /** Returns where the upper edge of a layer of the free stack is, px from the left and the top. */
  javafx.geometry.Point2D edge(int layer) {
    double x = CushionPicture.FREE_MM / 2 * shownAt;
    return new javafx.geometry.Point2D(frame.screenX(x), frame.screenY(topMm(layer)));
  }

  private void pressed(MouseEvent e) {
    requestFocus();
    if (e.getButton() != MouseButton.PRIMARY || stack == null) {
      return;
    }
    int edge = edgeAt(e);
    if (edge >= 0) {
      held = edge;
      heldMm = stack.layers().get(edge).thicknessMm();
      grabMm = heightMm(e);
      pick.accept(edge);
    } else {
      for (int i = 0; i < stack.layers().size(); i++) {
        if (heightMm(e) > stack.undersideMm(i) && heightMm(e) < topMm(i)) {
          pick.accept(i);
        }
      }
    }
    e.consume();
  }

  /** The edges below stay where they are, so the edge that is held follows the pointer. */
  private void dragged(MouseEvent e) {
    if (isDragging()) {
      double mm = heldMm + heightMm(e) - grabMm;
      double step = ShownUnits.stepMm(stack.units(), false, e.isAltDown());
      doing.dragged(held, Math.rint(mm / step) * step);
      e.consume();
    }
  }

  private void letGo() {
    if (isDragging()) {
      held = -1;
      doing.dropped();
    }
  }

  private void key(KeyEvent e) {
    if (stack == null || e.isShortcutDown()) {
      return;
    }
    double step = ShownUnits.stepMm(e, stack.units());
    KeyCode code = e.getCode();
    switch (code) {
      case UP -> pick.accept(Math.max(0, picked - 1));
      case DOWN -> pick.accept(Math.min(stack.layers().size() - 1, picked + 1));
      case RIGHT -> doing.thicker(step);
      case LEFT -> doing.thicker(-step);
      case PAGE_UP -> doing.move(-1);
      case PAGE_DOWN -> doing.move(1);
      case INSERT -> doing.add();
      case DELETE, BACK_SPACE -> doing.takeOut();
      case ENTER -> doing.type();
      default -> {
        return;
      }
    }
    e.consume();
  }

  @Override
  protected void layoutChildren() {
    canvas.relocate(0, 0);
  }
}

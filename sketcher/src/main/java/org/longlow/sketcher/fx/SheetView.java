package org.longlow.sketcher.fx;

import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Page;

/**
 * A sheet as it is printed, whole or nearer; in the colours of paper by night too. Lines and
 * letters are as large on the sheet as they will be.
 */
final class SheetView extends Region {

  private static final double AIR_PX = 10;
  private static final double STEP = 1.25;
  private static final double NEAREST = 12;

  private final Canvas canvas = new Canvas();
  private final DrawingPainter painter = new DrawingPainter(Palette.CARD);
  private Page page;
  private Drawing drawing;
  private double nearer = 1;
  private double offX;
  private double offY;
  private double heldX;
  private double heldY;

  SheetView() {
    Called.by(this, "paper-sheet");
    getStyleClass().add("sheet-view");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    canvas.setMouseTransparent(true);
    getChildren().add(canvas);
    setOnScroll(e -> zoom(e.getDeltaY() > 0 ? STEP : 1 / STEP));
    setOnMousePressed(this::hold);
    setOnMouseDragged(this::drag);
    setOnKeyPressed(this::key);
    focusedProperty().addListener((o, was, is) -> paint());
  }

  /** Shows a sheet, or none for null. */
  void show(Page next, String words) {
    setAccessibleText(words);
    if (next != page) {
      page = next;
      drawing = next == null ? null : new Drawing(next.title(), next.layers());
      paint();
    }
  }

  private void hold(MouseEvent e) {
    requestFocus();
    heldX = e.getX() - offX;
    heldY = e.getY() - offY;
  }

  private void drag(MouseEvent e) {
    if (nearer > 1) {
      offX = e.getX() - heldX;
      offY = e.getY() - heldY;
      paint();
    }
  }

  private void zoom(double by) {
    double next = Math.max(1, Math.min(NEAREST, nearer * by));
    offX *= next / nearer;
    offY *= next / nearer;
    nearer = next;
    if (nearer == 1) {
      offX = 0;
      offY = 0;
    }
    paint();
  }

  private void key(KeyEvent e) {
    switch (e.getCode()) {
      case PLUS, ADD, EQUALS -> zoom(STEP);
      case MINUS, SUBTRACT -> zoom(1 / STEP);
      default -> {
        return;
      }
    }
    e.consume();
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    paint();
  }

  /** How the sheet lies: its lower left corner, and pixels for each of its millimetres. */
  private ViewFrame lies() {
    double w = canvas.getWidth();
    double h = canvas.getHeight();
    double wide = page.paper().widthMm();
    double high = page.paper().heightMm();
    double px = nearer * Math.min((w - 2 * AIR_PX) / wide, (h - 2 * AIR_PX) / high);
    return new ViewFrame(px, (w - px * wide) / 2 + offX, (h + px * high) / 2 + offY);
  }

  private void paint() {
    double w = canvas.getWidth();
    double h = canvas.getHeight();
    GraphicsContext gc = canvas.getGraphicsContext2D();
    gc.clearRect(0, 0, w, h);
    if (page == null || w <= 2 * AIR_PX || h <= 2 * AIR_PX) {
      return;
    }
    ViewFrame lies = lies();
    double wide = lies.pxPerMm() * page.paper().widthMm();
    double high = lies.pxPerMm() * page.paper().heightMm();
    gc.setFill(painter.colour(Tone.PAPER));
    gc.fillRect(lies.originX(), lies.originY() - high, wide, high);
    // the painter draws strokes and letters at their size on paper; the whole sheet is made smaller
    double smaller = lies.pxPerMm() / ViewFrame.PX_PER_PAPER_MM;
    gc.save();
    gc.translate(lies.originX(), lies.originY() - high);
    gc.scale(smaller, smaller);
    double down = high / smaller;
    ViewFrame full = new ViewFrame(ViewFrame.PX_PER_PAPER_MM, 0, down);
    painter.paint(gc, drawing, full, wide / smaller, down, 1);
    gc.restore();
    gc.setStroke(painter.colour(isFocused() ? Tone.CHOSEN : Tone.PENCIL));
    gc.setLineWidth(isFocused() ? 2 : 1);
    gc.setLineDashes((double[]) null);
    gc.strokeRect(lies.originX(), lies.originY() - high, wide, high);
  }

  /** Returns where a place of the sheet is, px from the upper left corner of this. */
  Point2D onScreen(double xMm, double yMm) {
    ViewFrame lies = lies();
    return new Point2D(lies.screenX(xMm), lies.screenY(yMm));
  }
}

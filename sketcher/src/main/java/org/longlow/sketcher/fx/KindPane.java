package org.longlow.sketcher.fx;

import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.longlow.sketcher.edit.DrawnKind;

/**
 * The kinds of parts that can be drawn, beside the pen: typed for by their first letters, clicked,
 * or gone through by arrows. The one picked is drawn at once; Enter or a click closes the list.
 */
final class KindPane extends VBox implements DrawHand.Kinds {

  private static final double WIDE_PX = 190;
  private static final double HIGH_PX = 300;

  /** Lines that the pen says what to do in, along the lower edge; they stay seen. */
  private static final int SAID_LINES = 2;

  /** So far from the pen it begins, px. */
  private static final double BESIDE_PX = 28;

  private final Board board;
  private final Consumer<Node> over;
  private final TextField words = new TextField();
  private final ListView<String> list = new ListView<>();
  private DrawHand pen;
  private double penX = Double.NaN;
  private double penY;

  /**
   * @param over lays a slip over the card, or with null none
   */
  KindPane(Board board, Consumer<Node> over) {
    super(6);
    this.board = board;
    this.over = over;
    Called.by(this, "kind-slip");
    getStyleClass().addAll("slip", "over");
    Called.by(words, "kind-words");
    words.setPromptText("what to draw, such as rail");
    words.setAccessibleText("first letters of what to draw");
    words.textProperty().addListener((o, was, is) -> fill(null));
    words.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    Called.by(list, "kind-list");
    list.getStyleClass().add("kinds");
    list.setAccessibleText("what can be drawn");
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null && pen != null) {
                pen.use(is);
              }
            });
    list.setOnMouseClicked(e -> close());
    board.addEventFilter(
        MouseEvent.MOUSE_MOVED,
        e -> {
          penX = e.getX();
          penY = e.getY();
        });
    list.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    VBox.setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(words, list);
  }

  /** Opens beside the pen, with the keyboard in the words. */
  @Override
  public void open(DrawHand next) {
    pen = null; // what is listed anew is picked by nobody
    words.clear();
    fill(next.kind());
    pen = next;
    double wide = WIDE_PX * TextSize.of(board);
    setPrefSize(wide, HIGH_PX);
    setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
    double x = Double.isNaN(penX) ? board.getWidth() / 2 : penX + BESIDE_PX;
    double y = Double.isNaN(penX) ? board.getHeight() / 2 : penY + BESIDE_PX;
    StackPane.setAlignment(this, Pos.TOP_LEFT);
    StackPane.setMargin(
        this,
        new Insets(
            Spots.within(y, 0, HandlesInk.sayingTopPx(board, SAID_LINES) - HIGH_PX),
            0,
            0,
            Spots.within(x, 0, board.getWidth() - wide)));
    over.accept(this);
    // at once, for what is typed next is meant for it
    words.requestFocus();
  }

  @Override
  public void close() {
    if (isVisible()) {
      over.accept(null);
    }
  }

  private void fill(String kind) {
    list.getItems().setAll(DrawnKind.matching(words.getText()));
    pick(Math.max(0, list.getItems().indexOf(kind)));
  }

  private void key(KeyEvent e) {
    int now = list.getSelectionModel().getSelectedIndex();
    switch (e.getCode()) {
      case DOWN -> pick(now + 1);
      case UP -> pick(now - 1);
      case ENTER -> close();
      default -> {
        return;
      }
    }
    e.consume();
  }

  private void pick(int i) {
    if (i >= 0 && i < list.getItems().size()) {
      list.getSelectionModel().select(i);
      list.scrollTo(Math.max(0, i - 3));
    }
  }
}

package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.text.Text;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;

/**
 * The row of tags along the upper edge of the card: what the machine lacks to be ridden comes
 * first; each finding that fails hangs on a string over the place where it applies; what needs care
 * and what passes hangs in two bundles at the end.
 */
final class Tags extends Pane {

  /** A tag with its edges, px. */
  private static final double TAG_HIGH_PX = 24;

  /** Sign and edges of a tag, px. */
  private static final double ROUND_WORDS_PX = 36;

  private static final double TAG_PX = 240;
  private static final double GAP_PX = 8;
  private static final double TOP_PX = 8;

  /** What lies so far from the edges of the card hides whole tags: none looks out beside it. */
  static final Insets HIDDEN_BY = new Insets(TOP_PX - 2, GAP_PX - 2, 14, 0);

  /** While something moves the tags are rewritten no oftener; nobody reads faster. */
  private static final long LIVE_PAUSE_NS = 80_000_000;

  private final Desk desk;
  private final Board board;
  private final Consumer<Verdict> open;
  private final List<Tag> tags = new ArrayList<>();
  private final Button fails = bundle(Verdict.FAIL);
  private final Button cares = bundle(Verdict.CAUTION);
  private final Button passes = bundle(Verdict.PASS);
  private final Label still = Bits.label(StillWorking.WORDS, "still-working");
  private final StillWorking working;
  private List<Finding> tagged = List.of();
  private List<Finding> all = List.of();
  private long filledAt;

  /**
   * @param open opens the list of findings at the first of a verdict
   */
  Tags(Desk desk, Board board, Consumer<Verdict> open) {
    this.desk = desk;
    this.board = board;
    this.open = open;
    Called.by(this, "tags");
    setPickOnBounds(false);
    getStyleClass().add("tags");
    still.setMouseTransparent(true);
    getChildren().addAll(fails, cares, passes, still);
    working = new StillWorking(desk, this, this::requestLayout);
    desk.watch(this::refresh);
  }

  private Button bundle(Verdict verdict) {
    Button button = Bits.words("bundle-" + verdict.word(), "", "", () -> open.accept(verdict));
    button.setGraphic(Bits.sign(verdict, false));
    button.getStyleClass().add("bundle");
    return button;
  }

  /** Returns how high the row is. */
  double heightPx() {
    return TOP_PX + TAG_HIGH_PX * TextSize.of(this) + GAP_PX;
  }

  private double tagPx() {
    return Math.min(TAG_PX * TextSize.of(this), getWidth() / 2);
  }

  /** Where the row begins, clear of the rule. */
  private double leftPx() {
    return Rule.widthPx(board.letters()) + GAP_PX;
  }

  /** Letters have another size now. */
  void grow() {
    requestLayout();
  }

  private void refresh() {
    if (working.isSaid() != working.look()) {
      requestLayout();
    }
    BoardState shown = desk.shown().orElse(null);
    List<Finding> now = shown == null ? List.of() : shown.findings();
    if (shown != null && shown.live() && System.nanoTime() - filledAt < LIVE_PAUSE_NS) {
      return;
    }
    if (!now.equals(all)) {
      filledAt = System.nanoTime();
      all = now;
      tagged =
          now.stream().filter(f -> WorstFirst.leads(f) || f.verdict() == Verdict.FAIL).toList();
      say(fails, Verdict.FAIL);
      say(cares, Verdict.CAUTION);
      say(passes, Verdict.PASS);
    }
    requestLayout();
  }

  private void say(Button bundle, Verdict verdict) {
    long count = all.stream().filter(f -> f.verdict() == verdict).count();
    bundle.setText(verdict.says(count));
    bundle.setAccessibleText(verdict.says(count) + ": show them");
    Bits.told(bundle, verdict.says(count) + ": show them, keys Ctrl 3");
  }

  @Override
  protected void layoutChildren() {
    double right = getWidth() - GAP_PX;
    boolean none = all.isEmpty();
    for (Button bundle : List.of(passes, cares)) {
      bundle.setVisible(!none);
      right = none ? right : place(bundle, right);
    }
    still.setVisible(working.isSaid());
    still.autosize();
    still.relocate(getWidth() - GAP_PX - still.getWidth(), none ? TOP_PX : underPx());
    double tagPx = tagPx();
    int room = (int) ((right - leftPx()) / (tagPx + GAP_PX));
    boolean tooMany = tagged.size() > room;
    fails.setVisible(tooMany);
    if (tooMany) {
      right = place(fails, right);
      room = (int) ((right - leftPx()) / (tagPx + GAP_PX));
    }
    hang(tagged.subList(0, Math.min(tagged.size(), Math.max(0, room))), right);
  }

  /** Where a line stands under the row. */
  private double underPx() {
    return TOP_PX + TAG_HIGH_PX * TextSize.of(this) + 1;
  }

  /** Returns whether they are of the machine as it was before, and it is said. */
  boolean isStillWorking() {
    return working.isSaid();
  }

  private static double place(Button bundle, double right) {
    double w = bundle.prefWidth(-1);
    bundle.resizeRelocate(right - w, TOP_PX, w, bundle.prefHeight(-1));
    return right - w - GAP_PX;
  }

  private void hang(List<Finding> few, double right) {
    BoardState shown = desk.shown().orElse(null);
    List<Hung> hung = new ArrayList<>();
    for (Finding f : few) {
      PointMm at = shown == null || !shown.isMarked(f.id()) ? null : onScreen(shown, f);
      hung.add(new Hung(f, at));
    }
    // in the order of their places no string crosses another
    hung.sort(Comparator.comparingDouble(h -> h.x(right)));
    double[] widths = new double[hung.size()];
    double[] wanted = new double[hung.size()];
    for (int i = 0; i < widths.length; i++) {
      widths[i] = tagPx();
      wanted[i] = hung.get(i).x(right) - tagPx() / 2;
    }
    double[] left = Spots.row(wanted, widths, leftPx(), right, GAP_PX);
    while (tags.size() < hung.size()) {
      Tag tag = new Tag();
      tags.add(tag);
      getChildren().add(tag);
    }
    for (int i = 0; i < tags.size(); i++) {
      Tag tag = tags.get(i);
      tag.setVisible(i < hung.size());
      if (i < hung.size()) {
        tag.show(hung.get(i), desk);
        tag.resizeRelocate(left[i], TOP_PX, widths[i], tag.prefHeight(widths[i]));
      }
    }
  }

  private PointMm onScreen(BoardState shown, Finding f) {
    PointMm at = shown.onDrawing(f);
    return new PointMm(board.frame().screenX(at.x()), board.frame().screenY(at.z()));
  }

  /** Returns the strings that hang down now, px of this pane; over nobody's head. */
  List<Cord> strings() {
    List<Spots.Box> heads = heads();
    List<Spots.Box> words =
        desk.shown()
            .map(s -> Fitting.words(s.drawing(), board.frame(), board.letters()))
            .orElse(List.of());
    List<Cord> strings = new ArrayList<>();
    for (Tag tag : tags) {
      if (tag.isVisible() && tag.at != null) {
        Spots.Box box =
            new Spots.Box(tag.getLayoutX(), tag.getLayoutY(), tag.getWidth(), tag.getHeight());
        strings.add(new Cord(Strings.of(box, tag.at, heads, words), tag.id.equals(desk.finding())));
      }
    }
    return strings;
  }

  /** Returns the squares round the heads on the card, px of this pane. */
  List<Spots.Box> heads() {
    return desk.shown().map(s -> Clear.heads(s, board.frame())).orElse(List.of());
  }

  /**
   * A string from a tag to its place.
   *
   * @param line where it runs
   * @param picked whether the finding is the one picked
   */
  record Cord(List<PointMm> line, boolean picked) {}

  private record Hung(Finding finding, PointMm at) {

    /** Over what place it would hang best, px; what has none at an end, first what leads. */
    double x(double right) {
      return WorstFirst.leads(finding) ? 0 : at == null ? right : at.x();
    }
  }

  /** One finding, on its string. */
  private final class Tag extends Button {
    private String id = "";
    private PointMm at;

    Tag() {
      Bits.verbatim(this);
      getStyleClass().addAll("words", "tag");
      setContentDisplay(ContentDisplay.LEFT);
      setOnAction(e -> desk.chooseFinding(id));
    }

    void show(Hung hung, Desk desk) {
      Finding f = hung.finding();
      at = hung.at();
      Units units = ShownUnits.of(desk);
      String words = fitting(f.subject(), figure(f, units));
      if (!f.id().equals(id) || !words.equals(getText())) {
        id = f.id();
        setText(words);
        setGraphic(Bits.sign(f.verdict(), false));
        Bits.told(this, f.subject() + ": " + f.text(units));
        setAccessibleText(f.subject() + " " + f.verdict().says() + ": " + f.text(units));
      }
      pseudoClassStateChanged(
          javafx.css.PseudoClass.getPseudoClass("picked"), f.id().equals(desk.finding()));
    }

    /** As much of the name as there is room for; the figure is always seen. */
    private String fitting(String name, String figure) {
      double room = tagPx() - ROUND_WORDS_PX * TextSize.of(this);
      Text measured = new Text();
      measured.setFont(getFont());
      for (int n = name.length(); n > 0; n--) {
        String words =
            (n == name.length() ? name : name.substring(0, n).strip() + "\u2026") + figure;
        measured.setText(words);
        if (measured.getLayoutBounds().getWidth() <= room) {
          return words;
        }
      }
      return figure.strip();
    }

    private static String figure(Finding f, Units units) {
      return Double.isNaN(f.value()) ? "" : "  " + f.figure(units);
    }
  }
}

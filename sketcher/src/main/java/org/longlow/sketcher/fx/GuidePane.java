package org.longlow.sketcher.fx;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.longlow.sketcher.guide.Guide;
import org.longlow.sketcher.guide.GuideBlock;
import org.longlow.sketcher.guide.GuideRun;

/** The guide, page by page, as a slip over the drawing. */
final class GuidePane extends VBox {

  private static final PseudoClass LARGE = PseudoClass.getPseudoClass("large");

  private final VBox blocks = new VBox(8);
  private final ScrollPane scroll = Bits.pages("guide-scroll", "the guide", blocks);
  private final Map<String, Node> headings = new HashMap<>();
  private String file = Guide.INDEX;

  /**
   * @param close puts the pane away
   */
  GuidePane(Runnable close) {
    super(6);
    Called.by(this, "guide-slip");
    getStyleClass().addAll("slip", "over", "guide-slip");
    blocks.getStyleClass().add("guide-blocks");
    getChildren()
        .addAll(
            Bits.label("GUIDE", "slip-title"),
            Bits.line(
                Bits.words("guide-contents", "Contents", "all chapters", () -> show(Guide.INDEX)),
                Bits.words("guide-away", "Put away", "put the guide away", close)),
            scroll);
  }

  /** Goes on where somebody read last, from the contents at first. */
  void begin() {
    if (blocks.getChildren().isEmpty()) {
      show(file);
    }
    // later, or the key that asked for it would be taken by it
    Platform.runLater(scroll::requestFocus);
  }

  /** Returns the page that is shown. */
  String file() {
    return file;
  }

  private void show(String next) {
    file = next;
    headings.clear();
    pseudoClassStateChanged(LARGE, false);
    blocks.getChildren().clear();
    for (GuideBlock block : Guide.page(next)) {
      blocks.getChildren().add(node(block));
    }
    scroll.setVvalue(0);
    scroll.requestFocus();
  }

  private Node node(GuideBlock block) {
    if (block instanceof GuideBlock.Heading heading) {
      TextFlow line = flow("guide-heading-" + Math.min(heading.level(), 2), heading.words());
      headings.put("#" + heading.words().toLowerCase(Locale.ROOT).replace(' ', '-'), line);
      return line;
    }
    if (block instanceof GuideBlock.Item item) {
      return flow("guide-item", item.sign() + " " + item.words());
    }
    if (block instanceof GuideBlock.Code code) {
      Label box = Bits.wrapped(String.join("\n", code.lines()), "guide-code");
      box.setMaxWidth(Double.MAX_VALUE);
      return box;
    }
    if (block instanceof GuideBlock.Picture picture) {
      return picture(picture);
    }
    if (block instanceof GuideBlock.Row row) {
      return flow(row.head() ? "guide-head" : "guide-row", String.join(" · ", row.cells()));
    }
    return flow("guide-paragraph", ((GuideBlock.Paragraph) block).words());
  }

  /** A picture is read at a glance here, and in full by a click or Enter, which widens the slip. */
  private Node picture(GuideBlock.Picture block) {
    GuidePicture picture = new GuidePicture(block.file());
    Called.by(picture, "guide-" + block.file());
    picture.setAccessibleRole(AccessibleRole.TOGGLE_BUTTON);
    picture.setAccessibleText(block.words() + "; larger or smaller by Enter");
    picture.setOnMouseClicked(e -> enlarge(picture));
    picture.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ENTER) {
            enlarge(picture);
            e.consume();
          }
        });
    return picture;
  }

  private void enlarge(Node picture) {
    pseudoClassStateChanged(LARGE, !getPseudoClassStates().contains(LARGE));
    picture.requestFocus();
    Reveal.later(picture);
  }

  private TextFlow flow(String style, String words) {
    List<Node> runs = GuideRun.of(words).stream().map(this::run).toList();
    TextFlow flow = new TextFlow(runs.toArray(Node[]::new));
    flow.getStyleClass().add(style);
    return flow;
  }

  private Node run(GuideRun span) {
    if (span.look() == GuideRun.Look.LINK) {
      Hyperlink link = new Hyperlink(span.words());
      Called.by(link, "guide-to-" + span.to());
      link.setOnAction(e -> go(span.to()));
      return Bits.told(link, "go to " + span.words());
    }
    Text text = new Text(span.words());
    text.getStyleClass()
        .addAll("guide-words", "guide-" + span.look().name().toLowerCase(Locale.ROOT));
    return text;
  }

  private void go(String to) {
    if (!to.startsWith("#")) {
      show(to);
    } else if (headings.containsKey(to)) {
      Reveal.later(headings.get(to));
    }
  }
}

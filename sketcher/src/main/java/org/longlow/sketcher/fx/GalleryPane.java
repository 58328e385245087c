package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Addable;
import org.longlow.sketcher.edit.Adding;
import org.longlow.sketcher.edit.Gallery;
import org.longlow.sketcher.edit.LampSet;
import org.longlow.sketcher.edit.PuttingOne;
import org.longlow.sketcher.picture.PartPicture;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Tone;

/** The drawer with one of everything that can be added, to be taken out and put on the card. */
final class GalleryPane extends VBox {

  private static final double PICTURE_WIDE_PX = 84;
  private static final double PICTURE_HIGH_PX = 58;
  private static final double MARGIN_PX = 4;

  private final Adds adds;
  private final Runnable draw;
  private final Desk desk;
  private final TextField words = new TextField();
  private final VBox shelves = new VBox(8);
  private final Map<Gallery.Specimen, Button> tiles = new LinkedHashMap<>();
  private final List<Item> items = new ArrayList<>();
  private Look look = Look.DAY;

  /**
   * @param draw draws a part of one's own
   */
  GalleryPane(Desk desk, Adds adds, Runnable draw) {
    super(6);
    this.draw = draw;
    this.desk = desk;
    this.adds = adds;
    Called.by(this, "gallery-slip");
    getStyleClass().addAll("slip", "over", "gallery");
    setMinSize(0, 0);
    Called.by(words, "gallery-words");
    words.setPromptText("what to add, such as rail or tail lamp");
    words.setAccessibleText("words to look for what to add");
    words.textProperty().addListener((o, was, is) -> sift());
    words.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ENTER) {
            first().ifPresent(Button::fire);
            e.consume();
          }
        });
    shelves.getStyleClass().add("bench-inner");
    ScrollPane scroll = new ScrollPane(shelves);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("slip-scroll");
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(words, scroll);
  }

  void use(Look next) {
    look = next;
    tiles.clear();
    if (isVisible()) {
      fill();
    }
  }

  /** Opens with the keyboard in the words to look for. */
  void begin() {
    words.clear();
    fill();
    // at once, for what is typed next is meant for it
    words.requestFocus();
  }

  /** Something in the drawer, and whether it is meant by what was typed. */
  private record Item(Button button, Predicate<String> meant) {}

  /** Returns what Enter takes: what is called just so, else the first that is meant. */
  private Optional<Button> first() {
    String typed = words.getText().strip();
    return items.stream()
        .filter(i -> i.meant().test(typed))
        .map(Item::button)
        .min(Comparator.comparing(b -> !b.getText().equalsIgnoreCase(typed)));
  }

  /** Lays everything into the drawer that the machine can have. */
  private void fill() {
    items.clear();
    shelves.getChildren().clear();
    shelf(
        "together",
        List.of(new Item(seat(), GalleryPane::isOfASeat), new Item(lamps(), LampSet::matches)));
    shelf("of your own", List.of(new Item(drawn(), GalleryPane::isDrawn)));
    shelf(
        "parts",
        Gallery.specimens().stream()
            .map(s -> new Item(tiles.computeIfAbsent(s, this::tile), s::matches))
            .toList());
    shelf(
        "places",
        Stream.of(PuttingOne.PIN)
            .map(
                one ->
                    new Item(
                        word(one.title(), "", () -> adds.put(one)),
                        typed -> one.title().startsWith(typed.strip().toLowerCase(Locale.ROOT))))
            .toList());
    Map<String, List<Item>> groups = new LinkedHashMap<>();
    for (Addable addable : Addable.of(desk.session().orElseThrow().layout())) {
      groups
          .computeIfAbsent(addable.group(), g -> new ArrayList<>())
          .add(
              new Item(
                  word(addable.title(), addable.help(), () -> adds.add(addable)),
                  addable::matches));
    }
    groups.forEach(this::shelf);
    sift();
  }

  /** What somebody types who wants to sit. */
  private static boolean isOfASeat(String typed) {
    return Stream.of("seat", "pan", "cushion", "pillion", "passenger")
        .anyMatch(word -> word.startsWith(typed.strip().toLowerCase(Locale.ROOT)));
  }

  /** What somebody types who finds nothing like it in the drawer. */
  private static boolean isDrawn(String typed) {
    return Stream.of("draw", "outline", "own", "shape")
        .anyMatch(word -> word.startsWith(typed.strip().toLowerCase(Locale.ROOT)));
  }

  private void shelf(String heading, List<Item> things) {
    FlowPane flow = new FlowPane(6, 6);
    flow.prefWrapLengthProperty().bind(shelves.widthProperty().subtract(24));
    flow.setMinWidth(0);
    things.forEach(i -> flow.getChildren().add(i.button()));
    shelves.getChildren().add(new VBox(6, Bits.label(heading, "bench-heading"), flow));
    items.addAll(things);
  }

  /** Leaves in sight what was typed for. */
  private void sift() {
    items.forEach(i -> show(i.button(), i.meant().test(words.getText())));
    for (Node shelf : shelves.getChildren()) {
      FlowPane flow = (FlowPane) ((VBox) shelf).getChildren().get(1);
      show(shelf, flow.getChildren().stream().anyMatch(Node::isManaged));
    }
  }

  private static void show(Node node, boolean on) {
    node.setVisible(on);
    node.setManaged(on);
  }

  private Button seat() {
    return word(
        PuttingOne.SEAT.title(),
        "pan, back and foot pegs at once, for whoever has none yet",
        () -> adds.put(PuttingOne.SEAT));
  }

  private Button drawn() {
    return Bits.keyed(
        word("draw it point by point", "its outline, or the path of a tube", draw), "P");
  }

  private Button lamps() {
    return Bits.told(
        word(LampSet.TITLE, "", adds::addLamps),
        "Adds each that is lacking under the rules in force, where it has room.");
  }

  private Button word(String title, String help, Runnable action) {
    Button button =
        Bits.words("add-" + title.replaceAll("[^A-Za-z0-9]+", "-"), title, "add " + title, action);
    return help.isEmpty() ? button : Bits.told(button, help);
  }

  private Button tile(Gallery.Specimen specimen) {
    Button tile =
        Bits.words(
            "add-" + specimen.name(),
            specimen.title(),
            "add " + specimen.title(),
            () -> adds.put(Adding.of(specimen.name())));
    tile.setGraphic(picture(specimen));
    tile.setContentDisplay(ContentDisplay.TOP);
    tile.getStyleClass().add("tile");
    return Bits.told(tile, specimen.kind() + ": " + specimen.help());
  }

  /** The part as the card would show it, as large as it fits. */
  private Canvas picture(Gallery.Specimen specimen) {
    Canvas canvas = new Canvas(PICTURE_WIDE_PX, PICTURE_HIGH_PX);
    Ground level = new Ground(PointMm.ORIGIN, new PointMm(1, 0));
    Layout gallery = Gallery.layout();
    Drawing rough = PartPicture.of(gallery, specimen.part(), Gallery.places(), level, 10);
    Envelope box = PartPicture.body(rough);
    ViewFrame frame = ViewFrame.fitting(box, PICTURE_WIDE_PX, PICTURE_HIGH_PX, MARGIN_PX);
    Drawing drawing =
        PartPicture.of(gallery, specimen.part(), Gallery.places(), level, frame.denominator());
    DrawingPainter painter = new DrawingPainter(look.palette());
    GraphicsContext gc = canvas.getGraphicsContext2D();
    gc.setFill(painter.colour(Tone.PAPER));
    gc.fillRect(0, 0, PICTURE_WIDE_PX, PICTURE_HIGH_PX);
    painter.paint(gc, drawing, frame, PICTURE_WIDE_PX, PICTURE_HIGH_PX, 1);
    return canvas;
  }
}

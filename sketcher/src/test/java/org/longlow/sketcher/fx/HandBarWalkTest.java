package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.stage.FileChooser;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Plates;
import org.longlow.svg.drawing.Mark;

/** What has a key can be done by the pointer alone, and what is clicked stays where it was. */
@Windowed
class HandBarWalkTest extends Walk {

  private static Layout plate() {
    return Plates.points("[0, 0], [210, 0], [190, 150], [20, 120]");
  }

  private Class<?> hand() {
    return Hands.onFx(() -> hands.window().hands().hand().getClass());
  }

  private Part.Outlined outlined() {
    return (Part.Outlined) hands.layout().parts().get("plate");
  }

  @Test
  @Tag("long")
  void pointsHolesAndMeasuresByThePointerAlone() throws Exception {
    begin(plate());
    pick("part:plate");
    hands.click("points");
    assertThat(hand()).isEqualTo(OutlineHand.class);
    Node board = Hands.onFx(() -> hands.window().board());

    // the plate stands at 400, 500: the hole goes where the card is clicked, not where the button
    // is
    hands.click("hand-round-hole");
    assertThat(outlined().outline().holes()).isEmpty();
    assertThat(focused()).as("keys go on working on the card").isEqualTo(board);
    Point2D there = hands.at(500, 560);
    hands.clickAt(there);
    assertThat(outlined().outline().holes()).hasSize(1);
    hands.clickAt(hands.at(450, 560));
    assertThat(outlined().outline().holes()).as("one click, one hole").hasSize(1);

    hands.clickAt(hands.at(400, 500));
    hands.click("hand-smooth-or-corner");
    assertThat(outlined().outline().vertices().get(0).smooth()).isTrue();
    hands.click("hand-add-a-point");
    assertThat(outlined().outline().vertices()).hasSize(5);
    hands.click("hand-take-out");
    assertThat(outlined().outline().vertices()).hasSize(4);
    hands.click("hand-Done");
    assertThat(hand()).isEqualTo(Picking.class);
    assertThat(hands.find("hand-bar").map(Node::isVisible)).contains(false);

    hands.click("measure");
    hands.clickAt(hands.at(400, 500)).clickAt(hands.at(610, 500));
    hands.click("hand-keep-as-a-dimension");
    assertThat(hands.layout().dimensions()).hasSize(1);

    // drawn from the drawer, given up and finished
    int parts = hands.layout().parts().size();
    hands.click("add").click("add-draw-it-point-by-point");
    assertThat(hand()).isEqualTo(DrawHand.class);
    hands.clickAt(hands.at(700, 900)).click("hand-Give-up");
    assertThat(hand()).isEqualTo(Picking.class);
    hands.click("add").click("add-draw-it-point-by-point");
    for (PointMm p : List.of(new PointMm(700, 900), new PointMm(800, 900), new PointMm(760, 980))) {
      hands.clickAt(hands.at(p.x(), p.z()));
    }
    hands.click("hand-Finish");
    assertThat(hands.layout().parts()).hasSize(parts + 1);

    // undone by clicks on one spot, whatever the steps are called
    int steps = 0;
    Point2D undo = Hands.onFx(() -> Hands.middle(hands.find("undo").orElseThrow()));
    Layout began = plate();
    while (!hands.layout().equals(began) && steps < 20) {
      hands.clickAt(undo);
      steps++;
    }
    assertThat(hands.layout().equals(began)).as("nothing was done again").isTrue();
    assertThat(steps).isEqualTo(6);
  }

  @Test
  void theMachineKeepsItsPlaceWhileANameIsAskedFor() throws Exception {
    begin(plate());
    ViewFrame before = Hands.onFx(() -> hands.window().board().frame());
    hands.press(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.S);
    assertThat(hands.find("save-path").map(Node::isFocused)).contains(true);
    assertThat(Hands.onFx(() -> hands.window().board().frame())).isEqualTo(before);
    Path file = folder.resolve("mine.json");
    hands.typeInto("save-path", file.toString());
    assertThat(file).exists();
    assertThat(Hands.onFx(() -> hands.window().board().frame())).isEqualTo(before);

    // and it is looked for in the folder where it lies
    Hands.onFx(
        () -> {
          FileChooser chooser = FileLook.near("Open", FileLook.of(hands.desk()));
          assertThat(chooser.getInitialDirectory()).isEqualTo(folder.toFile());
          assertThat(FileLook.near("Open", Optional.of(folder.resolve("no/such"))))
              .extracting(FileChooser::getInitialDirectory)
              .isEqualTo(Path.of(System.getProperty("user.dir")).toFile());
          assertThat(FileLook.ending("photos", List.of(".jpg")).getExtensions())
              .containsExactly("*.jpg", "*.JPG");
          return null;
        });
  }

  @Test
  void aNameThatAnEdgeCutsIsMovedAside() throws Exception {
    begin(plate());
    ViewFrame frame = Hands.onFx(() -> hands.window().board().frame());
    Mark.Words words =
        hands.shown().drawing().layers().stream()
            .flatMap(l -> l.marks().stream())
            .filter(Mark.Words.class::isInstance)
            .map(Mark.Words.class::cast)
            .filter(w -> w.subject().equals("part:plate"))
            .findFirst()
            .orElseThrow();
    double x = frame.screenX(words.x());
    double y = frame.screenY(words.y());
    // an edge through its middle, on either side, and well clear of it
    Spots.Box right = new Spots.Box(x, y - 100, 400, 200);
    Spots.Box left = new Spots.Box(x - 400, y - 100, 400, 200);
    double half = frame.screenX(Fitting.inSight(words, frame, 1, right).x()) - x;
    assertThat(half).isGreaterThan(8);
    assertThat(frame.screenX(Fitting.inSight(words, frame, 1, left).x()) - x)
        .isCloseTo(-half, within(1e-6));
    assertThat(Fitting.inSight(words, frame, 1, new Spots.Box(0, 0, 3000, 3000))).isSameAs(words);
    assertThat(Fitting.inSight(words, frame, 1, new Spots.Box(x + 200, y - 100, 400, 200)))
        .as("what is out of sight stays there")
        .isSameAs(words);
  }

  /** Rows had no heights when it was opened the first time, and it went past all that failed. */
  @Test
  void theListOpensAtTheFirstOfWhatWasClicked() throws Exception {
    begin(plate());
    hands.click("bundle-caution");
    List<Finding> all = hands.shown().findings();
    int first = 0;
    while (all.get(first).verdict() != Verdict.CAUTION || WorstFirst.leads(all.get(first))) {
      first++;
    }
    FindingSlip slip = hands.node("findings", FindingSlip.class);
    ListView<?> list = Hands.onFx(() -> (ListView<?>) slip.lookup(".list-view"));
    Finding wanted = all.get(first);
    Bounds row =
        Hands.onFx(
            () ->
                list.lookupAll(".finding").stream()
                    .filter(n -> n instanceof ListCell<?> c && c.getItem() == wanted)
                    .map(n -> list.sceneToLocal(n.localToScene(n.getBoundsInLocal())))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("not in sight: " + wanted)));
    assertThat(row.getMinY()).isBetween(-1.0, list.getHeight() - 40);
  }

  @Test
  void choicesSayWhatTheyMean() throws Exception {
    openOn();
    ComboBox<?> place = hands.node("first-place", ComboBox.class);
    hands.choose("first-place", "under (the seat)");
    assertThat(place.getValue()).isEqualTo("under");
  }
}

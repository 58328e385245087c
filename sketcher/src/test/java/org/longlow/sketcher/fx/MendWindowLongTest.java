package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.geometry.Point2D;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.mend.Offer;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Mends;
import org.longlow.sketcher.desk.Wren;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;

/** A finding is mended by pointer and by keys. */
@Tag("long")
@Windowed
class MendWindowLongTest extends Walk {

  private static final String KNEE = "gap.engine.Mara";

  @BeforeEach
  void open() throws Exception {
    begin(Wren.layout());
    Hands.onFx(
        () -> {
          hands.desk().chooseFinding(KNEE);
          return null;
        });
    hands.settle();
  }

  private Optional<Mends> mends() {
    return Hands.onFx(() -> hands.desk().mending().mends());
  }

  private List<Offer> offers() {
    hands.until(
        "all offers", () -> hands.desk().mending().mends().filter(m -> !m.looking()).isPresent());
    hands.settle();
    return mends().orElseThrow().offers();
  }

  private static boolean fails(BoardState shown) {
    return shown.study().findings().stream()
        .anyMatch(f -> f.id().equals(KNEE) && f.verdict() == Verdict.FAIL);
  }

  @Test
  void anOfferIsShownUnderThePointerAndTakenByAClick() {
    Layout before = hands.layout();
    assertThat(fails(hands.shown())).isTrue();
    hands.click("mend");
    List<Offer> offers = offers();
    assertThat(offers).isNotEmpty();
    for (int i = 0; i < offers.size(); i++) {
      assertThat(hands.node("offer-" + i, Button.class).getText()).isEqualTo(offers.get(i).says());
    }
    assertThat(hands.node("mend-state", Label.class).getText()).contains("tried on the whole");

    Button first = hands.node("offer-0", Button.class);
    hands.moveTo(Hands.onFx(() -> Hands.middle(first)));
    assertThat(hands.shown().live()).isTrue();
    assertThat(fails(hands.shown())).as("what is shown is mended").isFalse();
    assertThat(hands.layout()).as("not a step yet").isSameAs(before);
    hands.moveTo(new Point2D(400, 500));
    assertThat(hands.shown().live()).isFalse();
    assertThat(fails(hands.shown())).as("the machine as it is").isTrue();

    hands.click("offer-0");
    assertThat(hands.layout()).isNotSameAs(before);
    assertThat(hands.shown().live()).isFalse();
    assertThat(fails(hands.shown())).isFalse();
    assertThat(Hands.onFx(() -> hands.desk().session().get().undoName()))
        .contains(offers.get(0).change());
    assertThat(mends()).as("of another layout").isEmpty();
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.layout()).isSameAs(before);
    assertThat(fails(hands.shown())).isTrue();
  }

  @Test
  void keysDoTheSameAndANewerEditEndsTheSearch() {
    Layout before = hands.layout();
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.M);
    List<Offer> offers = offers();
    assertThat(hands.node("offer-0", Button.class).isFocused()).isTrue();
    hands.until("the offer is shown", () -> hands.desk().shown().get().live());
    hands.press(KeyCode.ENTER);
    assertThat(Hands.onFx(() -> hands.desk().session().get().undoName()))
        .contains(offers.get(0).change());
    assertThat(fails(hands.shown())).isFalse();
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.layout()).isSameAs(before);

    Hands.onFx(
        () -> {
          hands.desk().mending().ask(KNEE);
          Target wheelbase = new Target.OfMeasure("wheelbase");
          hands.desk().edit(Edits.set(wheelbase, "1641 mm"), wheelbase, "1641 mm");
          return null;
        });
    hands.settle();
    assertThat(hands.layout()).isNotSameAs(before);
    assertThat(mends()).isEmpty();
    assertThat(hands.node("mend", Button.class).isVisible()).isTrue();
  }

  private ListView<?> list() {
    return hands.window().getScene().getRoot().lookupAll(".list-view").stream()
        .filter(n -> "findings".equals(Called.of(n)))
        .map(n -> (ListView<?>) n)
        .findFirst()
        .orElseThrow();
  }

  /** The rows of the list that are seen in part, from the top. */
  private List<ListCell<?>> rows() {
    return Hands.onFx(
        () ->
            list().lookupAll(".finding").stream()
                .map(n -> (ListCell<?>) n)
                .filter(c -> c.isVisible() && c.getItem() != null)
                .filter(c -> top(c) + c.getHeight() > 0)
                .filter(c -> top(c) < list().getHeight())
                .sorted(Comparator.comparingInt(ListCell::getIndex))
                .collect(Collectors.toList()));
  }

  /** How far below the top of the list a row begins, px. */
  private static double top(ListCell<?> row) {
    ListView<?> list = row.getListView();
    return list.sceneToLocal(row.localToScene(0, 0)).getY();
  }

  private boolean isHeadSeen(ListCell<?> row) {
    return Hands.onFx(() -> top(row) > -1 && top(row) + 20 < list().getHeight());
  }

  /** The row of what is opened out. */
  private ListCell<?> opened() {
    return rows().stream().filter(ListCell::isSelected).findFirst().orElseThrow();
  }

  @Test
  void aRowThatIsOpenedKeepsItsFirstLineInSight() {
    for (int i = 0; i < 3; i++) {
      ListCell<?> low = rows().stream().filter(this::isHeadSeen).reduce((a, b) -> b).orElseThrow();
      Object finding = low.getItem();
      hands.clickAt(Hands.onFx(() -> low.localToScreen(40, 8)));
      hands.settle();
      assertThat(opened().getItem()).isSameAs(finding);
      assertThat(isHeadSeen(opened())).as("row %d", opened().getIndex()).isTrue();
    }
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.M);
    offers();
    assertThat(isHeadSeen(opened())).as("above the offers").isTrue();
  }

  @Test
  void whatIsMendedGoesDownTheListAlone() {
    hands.click("mend");
    assertThat(offers()).isNotEmpty();
    assertThat(isHeadSeen(opened())).as("offers take room").isTrue();
    int before = opened().getIndex();
    hands.click("offer-0");
    hands.settle();
    assertThat(fails(hands.shown())).isFalse();
    assertThat(rows().get(0).getIndex()).as("what fails next").isLessThanOrEqualTo(before);
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(rows()).as("fails again").anyMatch(ListCell::isSelected);
  }
}

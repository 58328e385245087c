package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Layout;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Several;
import org.longlow.sketcher.edit.Target;

/** Edits are tried meanwhile: what comes back late neither undoes nor lands on anything else. */
class StaleEditTest {

  @TempDir private Path folder;
  private DeskHands hands;

  @BeforeEach
  void open() throws Exception {
    hands = new DeskHands(folder.resolve("state"));
    hands.open(Wren.file(folder));
  }

  @AfterEach
  void end() {
    hands.desk().close();
  }

  private String is(String measure) {
    return hands.session().layout().measures().get(measure).is().text();
  }

  @Test
  void editsThatWereTriedOnTheSameLayoutBothStay() throws Exception {
    hands.desk().type(new Target.OfMeasure("rake"), "28 deg");
    hands.desk().type(new Target.OfMeasure("backLength"), "515 mm");
    hands.until(() -> is("backLength").equals("515 mm"));
    assertThat(is("rake")).isEqualTo("28 deg");
    hands.desk().undo();
    assertThat(is("backLength")).isNotEqualTo("515 mm");
    assertThat(is("rake")).as("they are two steps").isEqualTo("28 deg");
  }

  @Test
  void whatWasDoneMeanwhileIsNotUndone() throws Exception {
    hands.desk().type(new Target.OfMeasure("rake"), "28 deg");
    hands.session().apply(Edits.set(new Target.OfMeasure("backLength"), "515 mm"));
    hands.until(() -> is("rake").equals("28 deg"));
    assertThat(is("backLength")).isEqualTo("515 mm");
  }

  private PointMm pegPin() {
    return hands.desk().shown().orElseThrow().places().pin("pegPin");
  }

  /** Whoever types and then presses on a pin commits what is typed by the same press. */
  @Test
  void aPinTakenWhileAnEditIsTriedIsThatOfTheEdit() throws Exception {
    hands.until(() -> hands.desk().shown().isPresent());
    PointMm before = pegPin();
    hands.desk().type(new Target.OfMeasure("rake"), "28 deg");
    // 330 + 820 mm ahead; the pan goes 10 mm forward and takes the peg along
    hands.desk().edit(panPlace("340 mm"), new Target.OfMeasure("rake"), "");
    assertThat(hands.desk().drags().grab("pegPin")).isTrue();
    hands.desk().drags().moveTo(before.plus(new PointMm(5, 0)));
    hands.desk().drags().letGo();
    assertThat(hands.desk().drags().grab("backTop")).as("one at a time").isFalse();
    hands.until(() -> hands.session().undoName().filter("move pegPin"::equals).isPresent());
    assertThat(is("rake")).isEqualTo("28 deg");
    assertThat(pegPin().x()).as("5 mm from where the edit put it").isCloseTo(1165, within(1e-3));
    assertThat(is("pegReach")).isEqualTo("825 mm");
    // and where the hand moves on only once it holds
    PointMm second = pegPin();
    hands.desk().edit(panPlace("350 mm"), new Target.OfMeasure("rake"), "");
    hands.desk().drags().grab("pegPin");
    hands.until(() -> !hands.desk().isBehind());
    hands.desk().drags().moveTo(second.plus(new PointMm(5, 0)));
    hands.desk().drags().letGo();
    hands.until(() -> is("pegReach").equals("830 mm"));
    assertThat(pegPin().x()).isCloseTo(1180, within(1e-3));
  }

  private static Edit panPlace(String is) {
    return new Edit(
        "pan to " + is, layout -> Change.set(layout, Formula.parse(is), "ties", "panPlace", "is"));
  }

  /** The other way round: the edit comes while the pin is held. */
  @Test
  void anEditMadeWhileAPinIsHeldStays() throws Exception {
    hands.until(() -> hands.desk().shown().isPresent());
    hands.desk().drags().grab("pegPin");
    hands.desk().type(new Target.OfMeasure("rake"), "28 deg");
    hands.desk().edit(panPlace("340 mm"), new Target.OfMeasure("rake"), "");
    hands.desk().drags().moveTo(pegPin().plus(new PointMm(5, 0)));
    hands.until(() -> is("rake").equals("28 deg") && !hands.desk().isBehind());
    hands.desk().drags().letGo();
    hands.until(() -> hands.session().undoName().filter("move pegPin"::equals).isPresent());
    assertThat(is("rake")).isEqualTo("28 deg");
    assertThat(hands.session().layout().ties().get("panPlace").is().orElseThrow().text())
        .isEqualTo("340 mm");
    assertThat(pegPin().x()).as("where it was dragged").isCloseTo(1155, within(1e-3));
  }

  @Test
  void whatWasOnlyShownIsNoPartOfADrag() throws Exception {
    hands.until(() -> hands.desk().shown().isPresent());
    String before = is("rake");
    hands.desk().preview(Edits.set(new Target.OfMeasure("rake"), "30 deg"));
    hands.until(() -> hands.desk().shown().orElseThrow().live());
    hands.desk().dropPreview();
    hands.desk().drags().grab("pegPin");
    hands.desk().drags().moveTo(pegPin().plus(new PointMm(5, 0)));
    hands.desk().drags().letGo();
    hands.until(() -> hands.session().undoName().isPresent());
    assertThat(is("rake")).isEqualTo(before);
    // and steps by keys while it is still shown
    hands.desk().preview(Edits.set(new Target.OfMeasure("rake"), "30 deg"));
    hands.until(() -> hands.desk().shown().orElseThrow().live());
    hands.desk().drags().nudge("pegPin", new PointMm(2, 0));
    hands.until(() -> is("pegReach").equals("827 mm"));
    assertThat(is("rake")).isEqualTo(before);
  }

  /** A pin put 5 mm farther takes its free reach along, which a file of it alone would hold. */
  @Test
  void whatIsShownBeforehandIsWhatItIsAsAStep() throws Exception {
    hands.until(() -> hands.desk().shown().isPresent());
    Edit further = Several.move(List.of("pegPin"), new PointMm(5, 0));
    hands.desk().preview(further);
    hands.until(() -> hands.desk().shown().orElseThrow().live());
    assertThat(pegPin().x()).isCloseTo(1155, within(1e-3));
    hands.desk().settle(further, new Target.OfPin("pegPin", true));
    hands.until(() -> hands.session().undoName().isPresent());
    assertThat(pegPin().x()).isCloseTo(1155, within(1e-3));
  }

  /** 378 mm ahead by its ties; before the edit it is written 728 mm, boardTop + 40 mm. */
  @Test
  void aDragThatEndsWhereItBeganChangesNothing() throws Exception {
    hands.desk().type(new Target.OfMeasure("panLength"), "380 mm");
    hands.until(() -> is("panLength").equals("380 mm"));
    Layout before = hands.session().layout();
    assertThat(before.pins().get("panFront").x().text()).isEqualTo("708 mm");
    hands.desk().drags().grab("backTop");
    hands.desk().drags().moveTo(hands.desk().shown().orElseThrow().places().pin("backTop"));
    hands.desk().drags().letGo();
    hands.until(() -> true);
    assertThat(hands.session().layout()).isSameAs(before);
    hands.desk().drags().nudge("pegPin", new PointMm(2, 0));
    hands.until(() -> hands.session().layout() != before);
    assertThat(hands.session().layout().pins().get("panFront"))
        .isEqualTo(before.pins().get("panFront"));
  }

  @Test
  void whatIsAskedWhileADragSettlesIsOfTheMovedPin() throws Exception {
    hands.until(() -> hands.desk().shown().isPresent());
    hands.desk().drags().grab("pegPin");
    hands.desk().drags().moveTo(pegPin().plus(new PointMm(5, 0)));
    hands.desk().drags().letGo();
    assertThat(hands.desk().files().save()).isTrue();
    hands.until(() -> hands.notice("saved").isPresent());
    assertThat(hands.session().isChanged()).isFalse();
    Path file = hands.session().file().orElseThrow().path();
    assertThat(Files.readString(file)).contains("\"825 mm\"");
    hands.desk().drags().grab("pegPin");
    hands.desk().drags().moveTo(pegPin().plus(new PointMm(5, 0)));
    hands.desk().drags().letGo();
    hands.desk().undo();
    hands.until(() -> !hands.desk().isBehind());
    assertThat(is("pegReach")).isEqualTo("825 mm");
    assertThat(hands.session().redoName()).contains("move pegPin");
  }

  @Test
  void anEditDoesNotLandOnAnotherMachine() throws Exception {
    String before = is("rake");
    Session first = hands.session();
    hands.desk().type(new Target.OfMeasure("rake"), "28 deg");
    hands.desk().files().openCopy(Wren.layout(), Optional.empty());
    hands.until(() -> hands.session() != first);
    assertThat(is("rake")).isEqualTo(before);
    assertThat(first.isChanged()).isFalse();
  }

  @Test
  void undoAskedForMeanwhileIsOfTheEditThatIsBeingTried() throws Exception {
    String before = is("rake");
    hands.set("backLength", "515 mm");
    hands.desk().type(new Target.OfMeasure("rake"), "28 deg");
    assertThat(hands.desk().isBehind()).isTrue();
    hands.desk().undo();
    hands.until(() -> !hands.desk().isBehind());
    assertThat(is("rake")).isEqualTo(before);
    assertThat(is("backLength")).as("the step before").isEqualTo("515 mm");
    hands.desk().redo();
    assertThat(is("rake")).as("at once, with nothing under way").isEqualTo("28 deg");
  }

  @Test
  void whatIsSavedMeanwhileHasTheEditThatIsBeingTried() throws Exception {
    hands.desk().type(new Target.OfMeasure("rake"), "28 deg");
    assertThat(hands.desk().files().save()).isTrue();
    hands.until(() -> hands.notice("saved").isPresent());
    Path file = hands.session().file().orElseThrow().path();
    assertThat(Files.readString(file)).contains("\"28 deg\"");
    assertThat(hands.session().isChanged()).isFalse();
  }

  @Test
  void whatIsAskedMeanwhileKeepsItsOrderAndIsNotForAnotherMachine() throws Exception {
    List<String> done = new ArrayList<>();
    hands.desk().type(new Target.OfMeasure("rake"), "28 deg");
    hands.desk().inTurn(() -> done.add("first " + is("rake")));
    hands.desk().inTurn(() -> done.add("second"));
    assertThat(done).isEmpty();
    hands.until(() -> done.size() == 2);
    assertThat(done).containsExactly("first 28 deg", "second");
    hands.desk().type(new Target.OfMeasure("rake"), "27 deg");
    hands.desk().inTurn(() -> done.add("third"));
    hands.desk().files().openCopy(Wren.layout(), Optional.empty());
    hands.until(() -> !hands.desk().isBehind());
    assertThat(done).hasSize(2);
  }

  @Test
  void aRefusedEditHoldsNothingUp() throws Exception {
    hands.desk().type(new Target.OfMeasure("rake"), "28 kg");
    hands.desk().undo();
    hands.until(() -> hands.desk().trouble().isPresent());
    assertThat(hands.desk().isBehind()).isFalse();
  }

  @Test
  void whatIsAskedOfAMachineWaitsUntilItIsSeen() throws Exception {
    List<String> done = new ArrayList<>();
    hands.desk().files().openCopy(Wren.layout(), Optional.empty());
    assertThat(hands.desk().isBeginning()).isTrue();
    hands.desk().onceSeen(() -> done.add("seen " + hands.desk().shown().isPresent()));
    assertThat(done).isEmpty();
    hands.until(() -> !hands.desk().isBeginning());
    assertThat(done).containsExactly("seen true");
  }
}

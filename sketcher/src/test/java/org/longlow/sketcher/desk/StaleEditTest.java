package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.sketcher.edit.Edits;
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

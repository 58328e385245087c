package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Standing;

/** When a finding or a slider is closed, the machine is seen again as it was before. */
class SeenBeforeTest {

  @TempDir Path folder;

  private DeskHands hands;

  private void settle() throws InterruptedException {
    hands.until(() -> true);
  }

  private void open() throws Exception {
    hands = new DeskHands(folder.resolve("home"));
    hands.open(Wren.file(folder));
    hands.until(() -> hands.desk().shown().isPresent());
  }

  private void asDrawn() throws InterruptedException {
    hands.desk().look(o -> hands.desk().shown().get().in(Optional.empty(), o));
    settle();
    assertThat(stance()).isEmpty();
  }

  private Optional<Stance.Kind> stance() {
    return hands.desk().shown().get().standing().map(Standing::kind);
  }

  private void read(String id) throws InterruptedException {
    hands.desk().chooseFinding(id);
    settle();
  }

  /** One that is seen in a stance. */
  private String somewhere() {
    return hands.desk().shown().get().findings().stream()
        .filter(f -> f.stance().isPresent() && f.where().isPresent())
        .filter(f -> f.stance().get().kind() != Stance.Kind.LADEN)
        .findFirst()
        .map(Finding::id)
        .orElseThrow();
  }

  @Test
  void aFindingThatIsPutDownLeavesTheMachineAsItWasSeen() throws Exception {
    open();
    String id = somewhere();
    Optional<Stance.Kind> laden = stance();
    assertThat(laden).isPresent();
    read(id);
    Optional<Stance.Kind> worst = stance();
    assertThat(worst).isNotEqualTo(laden);
    read("");
    assertThat(stance()).as("as before").isEqualTo(laden);
    asDrawn();
    read(id);
    assertThat(stance()).isEqualTo(worst);
    read("");
    assertThat(stance()).as("as drawn again").isEmpty();
    read("");
    assertThat(stance()).isEmpty();
    read(id);
    hands.desk().look(o -> hands.desk().shown().get().stepped(1, o));
    settle();
    Optional<Stance.Kind> chosen = stance();
    read("");
    assertThat(stance()).as("chosen meanwhile").isEqualTo(chosen).isPresent();
    hands.desk().close();
  }

  @Test
  void aFindingReadWhileASliderIsOpenComesBackWithTheLastOfBoth() throws Exception {
    open();
    String id = somewhere();
    for (boolean sliderFirst : new boolean[] {true, false}) {
      asDrawn();
      hands.desk().slides().open(SlideWork.Kind.TRAVEL);
      settle();
      assertThat(stance()).isPresent();
      read(id);
      if (sliderFirst) {
        hands.desk().slides().close();
        settle();
        assertThat(stance()).as("the finding is read").isPresent();
        read("");
      } else {
        read("");
        assertThat(stance()).as("the slider is open").isPresent();
        hands.desk().slides().close();
        settle();
      }
      assertThat(stance()).isEmpty();
    }
    hands.desk().close();
  }
}

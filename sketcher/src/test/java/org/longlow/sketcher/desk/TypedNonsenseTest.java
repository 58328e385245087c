package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.edit.Target;

/** What is typed and is no quantity is refused in words; nothing breaks and nothing changes. */
class TypedNonsenseTest {

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"", "28 +", "twenty", "28 dgr", "1e999 deg"})
  void noQuantityIsRefusedInWords(String typed) throws Exception {
    DeskHands hands = new DeskHands(folder.resolve("state"));
    hands.open(Wren.file(folder));
    Layout before = hands.session().layout();
    hands.desk().type(new Target.OfMeasure("rake"), typed);
    hands.until(() -> hands.desk().trouble().isPresent());
    assertThat(hands.desk().trouble().get().refused().words()).startsWith("It ");
    assertThat(hands.session().layout()).isEqualTo(before);
    hands.desk().close();
  }

  @Test
  void whatIsNoLongerThereIsRefusedInWords() throws Exception {
    DeskHands hands = new DeskHands(folder.resolve("state"));
    hands.open(Wren.file(folder));
    hands.desk().type(new Target.OfMeasure("gone"), "28 deg");
    hands.until(() -> hands.desk().trouble().isPresent());
    assertThat(hands.desk().trouble().get().refused().words()).contains("gone");
    hands.desk().close();
  }
}

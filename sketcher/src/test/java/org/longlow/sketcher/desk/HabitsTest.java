package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the window keeps from one start to the next. */
class HabitsTest {

  @TempDir Path home;

  @Test
  void whatIsKeptComesBack() throws Exception {
    Habits habits =
        Habits.NONE
            .withSize(1600, 900)
            .withLook(true, true)
            .withText(125)
            .with(home.resolve("eine \u00fcble Datei = 1.json"))
            .with(home.resolve("b.json"));
    habits.keep(home.resolve("state"));
    assertThat(Habits.at(home.resolve("state"))).isEqualTo(habits);
  }

  @Test
  void nothingKeptOrRubbishIsAsIfItNeverHadBeen() throws Exception {
    assertThat(Habits.at(home)).isEqualTo(Habits.NONE);
    Path file = home.resolve("habits.properties");
    Files.writeString(file, "width=\\u00zz");
    assertThat(Habits.at(home)).isEqualTo(Habits.NONE);
    Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, 0});
    assertThat(Habits.at(home)).isEqualTo(Habits.NONE);
    Files.writeString(file, "width=1e9\nheight=-4\nnight=perhaps\ntext=201\nrecent.0=a\\u0000b\n");
    assertThat(Habits.at(home)).isEqualTo(Habits.NONE);
  }

  @Test
  void lettersAreFrom80To200PerCent() throws Exception {
    Path file = home.resolve("habits.properties");
    for (String bad : new String[] {"79", "201", "1e2", "", "-100"}) {
      Files.writeString(file, "text=" + bad + "\n");
      assertThat(Habits.at(home).textPercent()).as(bad).isEqualTo(100);
    }
    for (int good : new int[] {80, 200}) {
      Files.writeString(file, "text=" + good + "\n");
      assertThat(Habits.at(home).textPercent()).isEqualTo(good);
    }
  }

  @Test
  void aFileIsListedOnceTheLastFirstAndFewAreKept() {
    Habits habits = Habits.NONE;
    for (int i = 0; i < 12; i++) {
      habits = habits.with(home.resolve("m" + i + ".json"));
    }
    habits = habits.with(home.resolve("m9.json"));
    assertThat(habits.recent())
        .hasSize(8)
        .doesNotHaveDuplicates()
        .startsWith(home.resolve("m9.json"), home.resolve("m11.json"));
  }
}

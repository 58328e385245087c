package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.svg.page.PrintCorrection;

/** Printers are kept by name. */
class PrintersTest {

  @TempDir Path home;

  @Test
  void eachIsKeptBesideTheOthersAndTheLastMeasurementCounts() throws Exception {
    PrintCorrection attic = new PrintCorrection("attic, 2\u00e8me = A4: #1", 1.0041, 0.99823);
    Printers.keep(home.resolve("state"), attic);
    Printers.keep(home.resolve("state"), new PrintCorrection("work", 1, 1));
    Printers.keep(home.resolve("state"), new PrintCorrection("work", 0.97, 1.01));
    Printers kept = Printers.at(home.resolve("state"));
    assertThat(kept.byName().keySet()).containsExactly(attic.printer(), "work");
    assertThat(kept.of(attic.printer())).contains(attic);
    assertThat(kept.of("work")).contains(new PrintCorrection("work", 0.97, 1.01));
    assertThat(kept.of("Work")).isEmpty();
  }

  @Test
  void habitsAndPrintersLeaveEachOtherAlone() throws Exception {
    Printers.keep(home, new PrintCorrection("work", 0.97, 1.01));
    Habits.NONE.withSize(900, 700).keep(home);
    assertThat(Printers.at(home).byName()).hasSize(1);
    assertThat(Habits.at(home).widthPx()).isEqualTo(900);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "x.across=1.06\nx.along=1\n",
        "x.across=1\n",
        "x.across=one\nx.along=1\n",
        "x.across=NaN\nx.along=1\n",
        ".across=1\n.along=1\n",
        "x\\ny.across=1\nx\\ny.along=1\n",
        "x.across=\\u00zz"
      })
  void whatNobodyCanHaveMeasuredIsLeftOut(String text) throws Exception {
    Files.writeString(home.resolve("printers.properties"), text + "");
    assertThat(Printers.at(home)).isEqualTo(Printers.NONE);
  }

  @Test
  void aLineThatCannotBeReadTakesNoOtherPrinterWithIt() throws Exception {
    String text = "a.across=1.01\na.along=1\nb.across=\\u00zz\nb.along=1\nc.across=1\nc.along=1\n";
    Path file = Files.writeString(home.resolve("printers.properties"), text);
    assertThat(Printers.at(home).byName().keySet()).containsExactly("a", "c");
    assertThat(Printers.spoilt(home)).contains(file);
    Printers.keep(home, new PrintCorrection("b", 0.99, 1));
    assertThat(Printers.at(home).byName().keySet()).containsExactly("a", "b", "c");
    assertThat(home.resolve("printers.spoilt.properties")).hasContent(text);
  }

  @Test
  void aNameWithASpaceAtItsEndIsNotCalledMissing() {
    assertThat(Printers.refusal("attic ").orElseThrow()).contains("ends with no space");
    assertThat(Printers.refusal(" ").orElseThrow()).contains("needs a name");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"att\u202eic", "att\u2066ic", "att\u200bic", "att\u2028ic", "att\u0007ic"})
  void aNameWithMarksThatNobodySeesIsRefused(String name) {
    assertThat(Printers.refusal(name).orElseThrow()).contains("without marks that nobody sees");
    assertThat(Printers.refusal("Dachböden 2")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"a.across=1\na.along=1\nb.across=\\u00zz\n", "a.across=1\na.along=1\nb.along=1\n"})
  void aSpoiltFileStaysBesideWhenAnotherPrinterIsKept(String text) throws Exception {
    Path file = Files.writeString(home.resolve("printers.properties"), text);
    assertThat(Printers.spoilt(home)).contains(file);
    Printers.keep(home, new PrintCorrection("work", 0.97, 1.01));
    assertThat(home.resolve("printers.spoilt.properties")).hasContent(text);
    assertThat(Printers.spoilt(home)).isEmpty();
    Printers.keep(home, new PrintCorrection("attic", 1, 1));
    assertThat(home.resolve("printers.spoilt-2.properties")).doesNotExist();
  }

  @Test
  void whoMeasureAtOnceLoseNoPrinter() throws Exception {
    List<Callable<Printers>> all = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      PrintCorrection one = new PrintCorrection("p" + i, 1 + i / 1000.0, 1);
      all.add(() -> Printers.keep(home, one));
    }
    ExecutorService pool = Executors.newFixedThreadPool(4);
    try {
      for (Future<Printers> kept : pool.invokeAll(all)) {
        kept.get();
      }
    } finally {
      pool.shutdown();
    }
    for (int i = 0; i < 12; i++) {
      assertThat(Printers.at(home).of("p" + i)).isPresent();
    }
    assertThat(home).isDirectoryNotContaining("glob:**printers.busy");
  }
}

package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.app.PartPaper;
import org.longlow.sketcher.app.Ready;
import org.longlow.sketcher.desk.PaperChoice.Kind;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Scale;

/** Choosing paper without a window. */
class PaperWorkTest {

  private static final Study STUDY = Study.of(Wren.layout());

  @TempDir Path home;

  private final LinkedBlockingQueue<Runnable> owner = new LinkedBlockingQueue<>();
  private PaperWork work;

  private PaperWork begun() throws InterruptedException {
    work = new PaperWork(owner::add, home, () -> {});
    work.begin(STUDY, c -> c);
    return settled();
  }

  private PaperWork settled() throws InterruptedException {
    while (work.isWorking()) {
      Runnable next = owner.poll(20, TimeUnit.SECONDS);
      assertThat(next).as("news").isNotNull();
      next.run();
    }
    return work;
  }

  private String said() {
    StringBuilder all = new StringBuilder();
    for (Page page : work.pages()) {
      page.layers().stream()
          .flatMap(l -> l.marks().stream())
          .filter(Mark.Words.class::isInstance)
          .forEach(m -> all.append(((Mark.Words) m).text()).append('\n'));
    }
    return all.toString();
  }

  @Test
  void sheetsAreCountedForEachPartAndForThoseTicked() throws Exception {
    begun();
    assertThat(work.pages()).isEmpty();
    assertThat(work.words()).isEqualTo("Tick a part.");
    Map<String, Integer> own = new LinkedHashMap<>();
    work.parts()
        .forEach(
            (part, paper) -> {
              PartPaper p = paper.orElseThrow();
              assertThat(p.words()).as(part).isNotEmpty();
              if (p.sheets() > 0 && p.shared() == 0 && p.figures() == 0) {
                own.put(part, p.sheets());
              }
            });
    List<String> parts = List.copyOf(own.keySet());
    assertThat(parts).hasSizeGreaterThan(1);
    work.choose(c -> c.ticking(parts.subList(0, 2), true));
    settled();
    assertThat(work.pages()).hasSize(own.get(parts.get(0)) + own.get(parts.get(1)));
    work.choose(c -> c.ticking(List.of(parts.get(0)), false));
    settled();
    assertThat(work.pages()).hasSize(own.get(parts.get(1)));
  }

  @Test
  void aPlainPieceIsOnPaperWhereItIsTickedAlone() throws Exception {
    begun();
    String plain =
        work.parts().entrySet().stream()
            .filter(e -> e.getValue().orElseThrow().words().equals("figures"))
            .map(Map.Entry::getKey)
            .findFirst()
            .orElseThrow();
    work.choose(c -> c.withTicked(work.parts().keySet()));
    settled();
    assertThat(work.words()).contains("by figures in the report's cut list");
    work.choose(c -> c.withTicked(Set.of(plain)));
    settled();
    assertThat(work.pages()).isNotEmpty();
    assertThat(work.words()).doesNotContain("figures");
  }

  /** Nobody can choose so; it stands for whatever goes wrong unforeseen. */
  @Test
  void anyFailureEndsTheWaiting() throws Exception {
    begun();
    work.choose(c -> c.withKind(Kind.DRAWING).withViews(null));
    settled();
    assertThat(work.words()).startsWith("That could not be worked out: ");
    assertThat(work.ready()).isEmpty();
  }

  @Test
  void turningStopsAtBothEnds() throws Exception {
    begun();
    work.choose(c -> c.withTicked(work.parts().keySet()));
    settled();
    int all = work.pages().size();
    work.turn(-1);
    assertThat(work.at()).isZero();
    work.turn(2);
    assertThat(work.at()).isEqualTo(2);
    work.turn(all);
    assertThat(work.at()).isEqualTo(all - 1);
    work.choose(c -> c.withTicked(Set.of(work.parts().keySet().iterator().next())));
    settled();
    assertThat(work.at()).isLessThan(work.pages().size());
    work.choose(c -> c.withTicked(Set.of()));
    settled();
    assertThat(work.at()).isZero();
  }

  @Test
  void aPrinterIsMeasuredKeptAndSaidOnEverySheet() throws Exception {
    begun();
    work.choose(c -> c.withKind(Kind.PRINTER));
    settled();
    assertThat(said()).contains("Calibration page").contains("no print correction");
    assertThat(work.measure(" ", "199", "201"))
        .hasValueSatisfying(w -> assertThat(w).contains("name"));
    assertThat(work.measure("attic", "x", "201"))
        .hasValueSatisfying(w -> assertThat(w).contains("across"));
    assertThat(work.measure("attic", "199", "185"))
        .hasValueSatisfying(w -> assertThat(w).contains("along").contains("fit to page"));
    assertThat(Printers.at(home)).isEqualTo(Printers.NONE);
    assertThat(work.measure("attic", "199,2 mm", "100.2")).isEmpty();
    settled();
    assertThat(Printers.at(home).of("attic").orElseThrow().sx()).isEqualTo(200 / 199.2);
    assertThat(said()).contains("Corrected for attic: 1.004 across, 0.998 along");
    assertThat(work.measure("attic", "7.86 in", "99,8")).isEmpty();
    settled();
    assertThat(Printers.at(home).of("attic").orElseThrow().sx())
        .isCloseTo(200 / (7.86 * 25.4), within(1e-12));
    assertThat(work.measure("attic", "199,2 mm", "100.2")).isEmpty();
    settled();
    work.choose(c -> c.withKind(Kind.TEMPLATES).withTicked(work.parts().keySet()));
    settled();
    assertThat(work.words()).contains("Corrected for attic");
    for (Page page : work.pages()) {
      assertThat(page.layers().stream().flatMap(l -> l.marks().stream()))
          .as(page.title())
          .anyMatch(m -> m instanceof Mark.Words w && w.text().contains("from attic"));
    }
    PaperWork later = new PaperWork(owner::add, home, () -> {});
    assertThat(later.printers().byName()).containsOnlyKeys("attic");
  }

  @Test
  void theDrawingShowsWhoAndHowAndAtWhichScale() throws Exception {
    begun();
    String second = STUDY.layout().crew().keySet().stream().skip(1).findFirst().orElseThrow();
    work.choose(c -> c.withKind(Kind.DRAWING).seating(Occupant.RIDER, second));
    settled();
    assertThat(work.words()).contains(second + " riding");
    Scale fits = ((Ready.Drawing) work.ready().orElseThrow()).sheet().scale();
    work.choose(c -> c.withScale(Optional.of(Scale.oneTo(2 * fits.real()))));
    settled();
    assertThat(work.words()).contains("1:" + 2 * fits.real());
    work.choose(c -> c.withScale(Optional.of(Scale.oneTo(1))));
    settled();
    assertThat(work.ready()).isEmpty();
    assertThat(work.words()).contains("does not fit").contains(fits.toString());
    Condition unladen =
        STUDY.standings().stream()
            .map(Standing::condition)
            .filter(c -> c.kind() == Stance.Kind.UNLADEN)
            .findFirst()
            .orElseThrow();
    work.choose(
        c ->
            c.withScale(Optional.empty())
                .withStance(Optional.of(unladen))
                .seating(Occupant.RIDER, ""));
    settled();
    assertThat(work.words()).contains("unladen").doesNotContain("riding");
    assertThat(said()).contains("stance: unladen");
    work.choose(c -> c.withWall("roll 610"));
    settled();
    assertThat(work.words()).contains(" on roll-610 cut to ");
  }

  @Test
  void paperThatDoesNotServeIsSaidInWords() throws Exception {
    begun();
    work.choose(c -> c.withTicked(work.parts().keySet()).withPaper("a9"));
    settled();
    assertThat(work.ready()).isEmpty();
    assertThat(work.words()).contains("paper 'a9' is not known");
    work.choose(c -> c.withPaper("100x100"));
    settled();
    assertThat(work.words()).contains("too small");
    work.choose(c -> c.withPaper("roll 610"));
    settled();
    assertThat(work.words()).contains(" of roll-610;");
  }

  @Test
  void onlyTheLastChoiceIsShown() throws Exception {
    begun();
    work.choose(c -> c.withTicked(work.parts().keySet()));
    work.choose(c -> c.withPaper("a3"));
    work.choose(c -> c.withPaper("a0"));
    settled();
    assertThat(work.words()).contains("of A0");
    assertThat(work.pages()).allMatch(p -> p.paper().name().equals("A0"));
  }

  @Test
  void paperNobodyChoseIsWhatIsUsualWithTheUnits() {
    PaperChoice inches = PaperChoice.FIRST.withUsualPaper(Units.MM, Units.IN);
    assertThat(inches.paper()).isEqualTo("Letter");
    assertThat(inches.wall()).isEqualTo("Tabloid");
    assertThat(inches.withUsualPaper(Units.IN, Units.MM)).isEqualTo(PaperChoice.FIRST);
    assertThat(inches.withPaper("A4").withUsualPaper(Units.IN, Units.IN).paper())
        .as("what was chosen stays")
        .isEqualTo("A4");
    assertThat(inches.withPaper("roll 24 in").withUsualPaper(Units.IN, Units.MM).paper())
        .isEqualTo("roll 24 in");
  }

  @Test
  void papersGoBesideTheFileOrIntoAFolderOfTheUsers() throws IOException {
    Path own = home.resolve("Longlow").resolve("wren");
    Session shipped = Session.withoutFile(Wren.layout());
    assertThat(PaperWork.folder(shipped, home)).isEqualTo(own);
    Session traced = Session.withoutFile(Wren.layout(), home.resolve("outlines"));
    assertThat(PaperWork.folder(traced, home)).as("not beside its outlines").isEqualTo(own);
    Path shop = Files.createDirectories(home.resolve("shop"));
    shipped.saveAs(shop.resolve("mine.json"));
    assertThat(PaperWork.folder(shipped, home)).isEqualTo(shop.resolve("wren-made"));
  }
}

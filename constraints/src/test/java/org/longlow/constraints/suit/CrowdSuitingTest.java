package org.longlow.constraints.suit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.fit.BodyJudge;
import org.longlow.constraints.fit.Crowd;
import org.longlow.constraints.fit.CrowdRun;
import org.longlow.constraints.fit.FitMachine;
import org.longlow.constraints.fit.FitReport;
import org.longlow.constraints.fit.Judged;
import org.longlow.constraints.fit.MeasuredCrowd;
import org.longlow.constraints.fit.SampledCrowd;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.constraints.words.Progress;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Population;
import org.longlow.rider.body.Sex;

class CrowdSuitingTest {

  private static final Gear GEAR = Gear.riding(true, true, false);
  private static final Study RUNABOUT = TestMachine.asFiled("runabout");
  private static final CrowdSettings SMALL = new CrowdSettings(16, 2, 80, 40, 20, 16, 2);
  private static final Crowd CROWD =
      new SampledCrowd(Population.soldiers(1, 0.5), SampledCrowd.From.SOLDIERS, 16);

  private static final CrowdReport GRIPS = of(CROWD, 2, SMALL, Set.of());

  private static CrowdReport of(
      Crowd crowd, int threads, CrowdSettings settings, Set<String> without) {
    return CrowdSuiting.of(
            RUNABOUT,
            List.of("grips"),
            new CrowdSuiting.People(crowd, GEAR, without, threads),
            settings,
            Progress.NONE)
        .orElseThrow();
  }

  /** The crowd on a layout as if it came from a file. */
  private static FitReport anew(Layout layout) {
    FitMachine machine = FitMachine.of(Placer.place(layout)).orElseThrow();
    return new CrowdRun(
            new BodyJudge(machine.checks(), GEAR, Set.of()), CROWD, 1, Progress.NONE, () -> false)
        .run()
        .orElseThrow();
  }

  private static List<Boolean> whoFits(FitReport report) {
    return report.people().stream().map(Judged::fits).toList();
  }

  @Test
  void moreFitWhereItSaysByFitItself() {
    CrowdReport report = GRIPS;
    assertThat(whoFits(report.now())).isEqualTo(whoFits(anew(RUNABOUT.layout())));
    assertThat(report.places()).isNotEmpty();
    for (CrowdReport.Place place : report.places()) {
      Layout layout = place.alternative().layout();
      Placed solved = Placer.place(layout);
      // ties and limits of the layout hold there, and it is where the file will have it
      assertThat(solved.holds()).isTrue();
      assertThat(place.alternative().moves())
          .allSatisfy(
              m -> assertThat(solved.places().pin(m.pin()).distance(m.to())).isLessThan(1e-6));
      assertThat(whoFits(place.fit())).isEqualTo(whoFits(anew(layout)));
      assertThat(place.fit().fitting().count()).isGreaterThan(report.now().fitting().count());
      // what comes of it, counted person by person
      long gained = report.takenIn(place) - report.lost(place);
      assertThat(gained).isEqualTo(place.fit().fitting().count() - report.now().fitting().count());
      for (CrowdReport.Trade trade : report.trades(place)) {
        assertThat(trade.before()).isEqualTo(stopped(report.now(), trade));
        assertThat(trade.after()).isEqualTo(stopped(place.fit(), trade));
      }
      assertThat(report.trades(place))
          .isSortedAccordingTo(
              (a, b) -> Math.abs(b.after() - b.before()) - Math.abs(a.after() - a.before()));
    }
    assertThat(report.places())
        .isSortedAccordingTo(
            (a, b) ->
                a.breaksTheMachine() == b.breaksTheMachine()
                    ? b.fit().fitting().count() - a.fit().fitting().count()
                    : Boolean.compare(a.breaksTheMachine(), b.breaksTheMachine()));
  }

  private static long stopped(FitReport report, CrowdReport.Trade trade) {
    return report.people().stream().filter(p -> p.fails().contains(trade.reason())).count();
  }

  @Test
  void anyNumberOfThreadsFindsTheSamePlaces() {
    assertThat(pins(of(CROWD, 1, SMALL, Set.of()))).isEqualTo(pins(GRIPS));
  }

  private static List<Places> pins(CrowdReport report) {
    return report.places().stream().map(p -> p.alternative().study().placed().places()).toList();
  }

  @Test
  void nothingIsMovedIntoWhatItMayNotTouch() {
    for (CrowdReport.Place place : GRIPS.places()) {
      assertThat(place.alternative().changes())
          .noneMatch(
              c ->
                  c.after() == Verdict.FAIL
                      && c.finding().kind().word().equals("gap")
                      && c.finding().who().isEmpty());
    }
  }

  /** All that could stop them here does not count, so no place is better than the present one. */
  @Test
  void whereEverybodyFitsNothingIsOffered() {
    CrowdReport report = of(CROWD, 2, SMALL, BodyJudge.KINDS);
    assertThat(report.now().fitting().count()).isEqualTo(CROWD.size());
    assertThat(report.places()).isEmpty();
  }

  @Test
  void aSearchThatMayLookNoFartherSaysSo() {
    CrowdReport report = of(CROWD, 2, new CrowdSettings(6, 1, 80, 40, 20, 2, 1), Set.of());
    assertThat(report.decided()).isFalse();
    assertThat(report.sample()).isEqualTo(6);
  }

  @Test
  void nobodyAndUnknownNamesEndClearly() {
    CrowdSuiting.People nobody =
        new CrowdSuiting.People(new MeasuredCrowd(List.of()), GEAR, Set.of(), 1);
    assertThat(CrowdSuiting.of(RUNABOUT, List.of("grips"), nobody, SMALL, Progress.NONE)).isEmpty();
    CrowdSuiting.People one =
        new CrowdSuiting.People(
            new MeasuredCrowd(
                List.of(new MeasuredCrowd.Someone("Ida", Sex.FEMALE, 1640, 64, Map.of()))),
            GEAR,
            Set.of(),
            1);
    assertThat(
            CrowdSuiting.of(RUNABOUT, List.of("grips"), one, SMALL, Progress.NONE)
                .orElseThrow()
                .now()
                .people())
        .hasSize(1);
    assertThatThrownBy(() -> CrowdSuiting.of(RUNABOUT, List.of("grop"), one, SMALL, Progress.NONE))
        .isInstanceOf(UnknownNames.class)
        .hasMessageContaining("grop");
  }
}

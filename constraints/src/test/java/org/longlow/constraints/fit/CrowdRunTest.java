package org.longlow.constraints.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;
import org.longlow.constraints.words.Progress;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Population;
import org.longlow.rider.body.Sex;
import org.longlow.rider.words.Units;

class CrowdRunTest {

  private static final int PEOPLE = 120;

  private static BodyJudge judge() {
    return new BodyJudge(
        FitMachine.of(TestMachine.asFiled("runabout").placed()).orElseThrow().checks(),
        Gear.riding(true, true, false),
        Set.of());
  }

  private static SampledCrowd crowd(int size) {
    return new SampledCrowd(Population.usAdults(11, 0.5), SampledCrowd.From.ADULTS, size);
  }

  private static CrowdRun run(Crowd crowd, int threads) {
    return new CrowdRun(judge(), crowd, threads, Progress.NONE, () -> false);
  }

  private static List<String> lines(FitReport report) {
    return report.people().stream()
        .map(
            p ->
                p.index()
                    + " "
                    + p.verdict()
                    + p.fails()
                    + p.cares()
                    + p.sex()
                    + Arrays.toString(p.traits()))
        .toList();
  }

  @Test
  void anyNumberOfThreadsGivesTheSameAnswer() {
    List<String> one = lines(run(crowd(PEOPLE), 1).run().orElseThrow());
    assertThat(one).hasSize(PEOPLE);
    assertThat(lines(run(crowd(PEOPLE), 2).run().orElseThrow())).isEqualTo(one);
    assertThat(lines(run(crowd(PEOPLE), 8).run().orElseThrow())).isEqualTo(one);
  }

  @Test
  void whoIsJudgedAlreadyIsNotJudgedAgain() {
    Map<Integer, Judged> known = new HashMap<>();
    FitReport whole =
        run(crowd(PEOPLE), 2)
            .run(Map.of(), fresh -> fresh.forEach(p -> known.put(p.index(), p)))
            .orElseThrow();
    assertThat(known).hasSize(PEOPLE);
    known.keySet().removeIf(i -> i % 7 == 3);
    List<Integer> again = Collections.synchronizedList(new ArrayList<>());
    FitReport rest =
        run(crowd(PEOPLE), 2)
            .run(known, fresh -> fresh.forEach(p -> again.add(p.index())))
            .orElseThrow();
    assertThat(again).allMatch(i -> i % 7 == 3).hasSize(PEOPLE - known.size());
    assertThat(lines(rest)).isEqualTo(lines(whole));
  }

  @Test
  void givenUpItEndsSoonWithoutAnAnswer() {
    AtomicInteger asked = new AtomicInteger();
    CrowdRun run =
        new CrowdRun(judge(), crowd(100_000), 2, Progress.NONE, () -> asked.incrementAndGet() > 3);
    assertThat(run.run()).isEmpty();
    assertThat(asked.get()).isLessThan(10);
  }

  @Test
  void whatGoesWrongOnAThreadIsTold() {
    Crowd spoilt =
        new Crowd() {
          @Override
          public int size() {
            return 300;
          }

          @Override
          public BodyMeasures person(int index) {
            if (index == 170) {
              throw new IllegalStateException("person 170 is gone");
            }
            return BodyMeasures.of(Sex.MALE, 1750, 80);
          }

          @Override
          public String name(int index) {
            return "";
          }

          @Override
          public List<PercentilePerson> anchors() {
            return List.of();
          }

          @Override
          public String says() {
            return "";
          }
        };
    assertThatThrownBy(() -> run(spoilt, 2).run()).hasMessage("person 170 is gone");
  }

  @Test
  void nobodyAndOnePersonAndAllAlike() {
    FitReport nobody = run(crowd(0), 2).run().orElseThrow();
    assertThat(nobody.people()).isEmpty();
    assertThat(nobody.fitting().words().in(Units.MM)).isEqualTo("nobody asked");
    assertThat(nobody.stopping()).isEmpty();
    assertThat(nobody.failing()).isEmpty();
    FitReport one = run(crowd(1), 2).run().orElseThrow();
    assertThat(one.people()).hasSize(1);
    assertThat(one.failing()).isEmpty();
    Population.Norm same = new Population.Norm(1950, 0, Math.log(120), 0, 0);
    SampledCrowd alike =
        new SampledCrowd(new Population(1, 0, same, same), SampledCrowd.From.ADULTS, 20);
    FitReport twenty = run(alike, 2).run().orElseThrow();
    assertThat(twenty.people()).allMatch(p -> Math.abs(p.of(BodyTrait.STATURE) - 1950) < 1e-9);
    // stature and mass set nobody apart where they are all the same
    assertThat(twenty.stopping())
        .flatExtracting(FitReport.Stopping::who)
        .noneMatch(t -> t.trait() == BodyTrait.STATURE || t.trait() == BodyTrait.MASS);
    assertThatThrownBy(() -> crowd(-1)).hasMessageContaining("0 to 100000 people, got -1");
  }

  @Test
  void sharesAddUp() {
    FitReport report = run(crowd(PEOPLE), 2).run().orElseThrow();
    int sum =
        report.share(Verdict.PASS).count()
            + report.share(Verdict.CAUTION).count()
            + report.share(Verdict.FAIL).count();
    assertThat(sum).isEqualTo(PEOPLE);
    assertThat(report.fitting().count()).isEqualTo(PEOPLE - report.share(Verdict.FAIL).count());
    assertThat(report.fitting(Sex.MALE).of() + report.fitting(Sex.FEMALE).of()).isEqualTo(PEOPLE);
    assertThat(report.stopping()).isNotEmpty();
    for (FitReport.Stopping s : report.stopping()) {
      assertThat(s.all().count())
          .isEqualTo(
              (int)
                  report.people().stream()
                      .filter(p -> p.fails().stream().anyMatch(r -> r.equals(s.reason())))
                      .count());
      assertThat(s.alone().count()).isLessThanOrEqualTo(s.all().count());
    }
    assertThat(report.stopping().stream().map(s -> s.all().count()))
        .isSortedAccordingTo(Collections.reverseOrder());
    assertThat(report.outside().count())
        .isEqualTo(
            (int)
                IntStream.range(0, PEOPLE)
                    .filter(i -> !crowd(PEOPLE).person(i).notes().isEmpty())
                    .count());
  }

  /** Its definition: the shares from which what was seen lies 1.96 standard errors away. */
  @ParameterizedTest
  @CsvSource({"0, 10", "10, 10", "1, 10", "5, 10", "421, 1000", "9999, 10000", "0, 1", "1, 1"})
  void theIntervalIsWilsons(int count, int of) {
    Share share = new Share(count, of);
    double seen = (double) count / of;
    assertThat(share.low()).isCloseTo(count == 0 ? 0 : edge(seen, of, 0, seen), within(1e-9));
    assertThat(share.high()).isCloseTo(count == of ? 1 : edge(seen, of, 1, seen), within(1e-9));
    assertThat(share.low()).isLessThanOrEqualTo(seen);
    assertThat(share.high()).isGreaterThanOrEqualTo(seen);
  }

  private static double edge(double seen, int of, double outside, double inside) {
    double out = outside;
    double in = inside;
    for (int k = 0; k < 200; k++) {
      double p = (out + in) / 2;
      if (Math.abs(seen - p) > 1.959963984540054 * Math.sqrt(p * (1 - p) / of)) {
        out = p;
      } else {
        in = p;
      }
    }
    return in;
  }

  @Test
  void whatSetsPeopleApartIsToldByMeansAndSpread() {
    // by hand: 1600 and 1620 beside 1800 and 1820; spread within both sqrt((200 + 200) / 2)
    List<Judged> small = List.of(person(1600), person(1620));
    List<Judged> tall = List.of(person(1800), person(1820));
    Telling stature =
        Telling.of(small, tall).stream()
            .filter(t -> t.trait() == BodyTrait.STATURE)
            .findFirst()
            .orElseThrow();
    assertThat(stature.apart()).isCloseTo(-200 / Math.sqrt(200), within(1e-9));
    assertThat(stature.words().in(Units.MM)).isEqualTo("short (1610 mm, others 1810 mm)");
    assertThat(stature.words().in(Units.IN)).contains("in").doesNotContain("mm");
    assertThat(Telling.of(tall, small))
        .anyMatch(t -> t.words().in(Units.MM).equals("tall (1810 mm, others 1610 mm)"));
    assertThat(Telling.of(small, small)).isEmpty();
    assertThat(Telling.of(small, tall)).hasSizeLessThanOrEqualTo(3);
  }

  private static Judged person(double statureMm) {
    return Judged.of(
        0, "", BodyMeasures.of(Sex.MALE, statureMm, 80), Verdict.PASS, List.of(), List.of());
  }
}

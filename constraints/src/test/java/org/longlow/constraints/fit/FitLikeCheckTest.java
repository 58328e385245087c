package org.longlow.constraints.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.BodyChecks;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.Checks;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.constraints.words.Progress;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Population;
import org.longlow.rider.geom.PointMm;

/**
 * Whoever is judged in a crowd is judged as by all checks with them alone aboard: the other route
 * writes them into the crew as a file would and goes through every check there is.
 */
class FitLikeCheckTest {

  private static final int PEOPLE = 12;

  /** What is said to be left out: full lock past limbs, sections, law, poses of getting in. */
  private static final Set<String> LEFT_OUT = Set.of("lock", "open", "law", "getting-in");

  /** What is told of the machine while it carries somebody. */
  private static final Set<String> UNDER = Set.of("load", "lift", "sag", "clearance", "tyre-load");

  @ParameterizedTest
  @ValueSource(strings = {"tourer", "runabout"})
  void aVerdictInACrowdIsThatOfEveryCheck(String machine) {
    Study study = TestMachine.asFiled(machine);
    BodyJudge judge =
        new BodyJudge(
            FitMachine.of(study.placed()).orElseThrow().checks(),
            Gear.riding(true, true, false),
            Set.of());
    SampledCrowd crowd =
        new SampledCrowd(Population.usAdults(3, 0.5), SampledCrowd.From.ADULTS, PEOPLE);
    Set<Set<String>> failed = new HashSet<>();
    for (int i = 0; i < PEOPLE; i++) {
      Judged judged = judge.judge(crowd, i);
      Map<String, Verdict> whole = whole(study, crowd.person(i));
      assertThat(keys(judged.fails()))
          .as("fails, person %d", i)
          .isEqualTo(with(whole, Verdict.FAIL));
      assertThat(keys(judged.cares()))
          .as("needs care, person %d", i)
          .isEqualTo(with(whole, Verdict.CAUTION));
      failed.add(keys(judged.fails()));
    }
    // a crowd of which everybody fails for the same would show nothing
    assertThat(failed).hasSizeGreaterThan(3);
  }

  private static Set<String> keys(List<Reason> reasons) {
    Set<String> keys = new TreeSet<>();
    reasons.forEach(r -> keys.add(r.key()));
    return keys;
  }

  private static Set<String> with(Map<String, Verdict> whole, Verdict verdict) {
    Set<String> keys = new TreeSet<>();
    whole.forEach(
        (key, v) -> {
          if (v == verdict) {
            keys.add(key);
          }
        });
    return keys;
  }

  /**
   * All that is found with somebody alone aboard, of what concerns them, by name without theirs.
   */
  static Map<String, Verdict> whole(Study study, BodyMeasures measures) {
    Places places = study.placed().places();
    Sitting sitting =
        Seats.sit(
            "somebody",
            Seats.body(person(measures), places),
            SeatParts.of(study.layout()).get(Occupant.RIDER),
            places);
    Wheels wheels = Wheels.of(study.layout(), places);
    List<Standing> standings =
        new Stances(wheels, study.shapes()).all(Study.riders(List.of(sitting)));
    Map<String, Verdict> found = new LinkedHashMap<>();
    for (Finding f :
        Checks.all(
            study.placed(), study.shapes(), List.of(sitting), wheels, standings, Progress.NONE)) {
      boolean theirs = f.who().isPresent() && !LEFT_OUT.contains(f.kind().word());
      boolean under =
          UNDER.contains(f.kind().word())
              && (Double.isFinite(f.limit()) || !f.kind().word().equals("tyre-load"))
              && f.stance().filter(c -> under(c, sitting.occupant())).isPresent();
      if (theirs || under) {
        found.merge(
            f.id().replace(".somebody", ""),
            f.verdict(),
            (a, b) -> a == Verdict.FAIL || b == Verdict.PASS ? a : b);
      }
    }
    return found;
  }

  /** A tyre that carries some of the crowd and not the others. */
  @Test
  void whoIsTooHeavyForATyreFails() {
    Study study =
        TestMachine.tourer()
            .part("frontWheel", "tyre", "'110/80-16 55S'")
            .part("rearWheel", "tyre", "'150/60 R17 46S'")
            .study();
    BodyJudge judge =
        new BodyJudge(
            FitMachine.of(study.placed()).orElseThrow().checks(),
            Gear.riding(true, true, false),
            Set.of());
    SampledCrowd crowd =
        new SampledCrowd(Population.usAdults(3, 0.5), SampledCrowd.From.ADULTS, PEOPLE);
    Set<Boolean> both = new HashSet<>();
    for (int i = 0; i < PEOPLE; i++) {
      boolean over = keys(judge.judge(crowd, i).fails()).contains("tyre-load.rearWheel");
      assertThat(over)
          .as("person %d", i)
          .isEqualTo(whole(study, crowd.person(i)).get("tyre-load.rearWheel") == Verdict.FAIL);
      both.add(over);
    }
    assertThat(both).hasSize(2);
  }

  /** Who sits under a low edge behind a high post is told both, and each alone. */
  @Test
  void whatStandsAndWhatHangsBeforeTheRoadAreTwoReasons() {
    String late = "sees the road too late";
    String hangs = "sees the road only up to an edge that hangs before it";
    assertThat(sightReasons(false, -20)).containsExactly(hangs);
    assertThat(sightReasons(true, -20)).containsExactlyInAnyOrder(late, hangs);
    assertThat(sightReasons(true, 400)).containsExactly(late);
    assertThat(sightReasons(false, 400)).isEmpty();
  }

  /** Why one of middling size does not see the road past a post and under an edge. */
  private static List<String> sightReasons(boolean post, double edgeMm) {
    BodyMeasures measures =
        new SampledCrowd(Population.usAdults(3, 0.5), SampledCrowd.From.ADULTS, 1).person(0);
    Study bare = TestMachine.asFiled("runabout");
    BodyChecks checks = FitMachine.of(bare.placed()).orElseThrow().checks();
    PointMm eye = checks.sit("x", Body.of(measures, Gear.RIDING)).posture().orElseThrow().eye();
    TestMachine m = TestMachine.runabout();
    double[] edge = Boxes.at(eye.x() + 400, eye.z() + edgeMm, eye.x() + 420, eye.z() + 600);
    m = Boxes.add(m, "edge", edge, 100, 100, "");
    if (post) {
      double[] high = Boxes.at(eye.x() + 500, eye.z() - 300, eye.x() + 520, eye.z() - 50);
      m = Boxes.add(m, "post", high, 100, 100, "");
    }
    BodyJudge judge =
        new BodyJudge(
            FitMachine.of(m.study().placed()).orElseThrow().checks(), Gear.RIDING, Set.of());
    Crowd crowd = new SampledCrowd(Population.usAdults(3, 0.5), SampledCrowd.From.ADULTS, 1);
    return judge.judge(crowd, 0).fails().stream()
        .filter(r -> r.key().equals("sight"))
        .map(Reason::words)
        .toList();
  }

  private static boolean under(Condition condition, Occupant who) {
    return condition.ladenBy(who);
  }

  /** Somebody as the file of a layout would say them. */
  private static Person person(BodyMeasures measures) {
    Map<String, Formula> measured = new LinkedHashMap<>();
    measures.measured().forEach((name, mm) -> measured.put(name, exactly(mm, "mm")));
    return new Person(
        "somebody",
        measures.sex().name().toLowerCase(java.util.Locale.ROOT),
        exactly(measures.statureMm(), "mm"),
        exactly(measures.massKg(), "kg"),
        measured,
        new ArrayList<>(List.of(Occupant.RIDER)),
        true,
        true,
        false);
  }

  private static Formula exactly(double value, String unit) {
    return Formula.parse(new java.math.BigDecimal(value).toPlainString() + " " + unit);
  }

  @Test
  void whatDoesNotCountIsLeftOut() {
    Study study = TestMachine.asFiled("runabout");
    FitMachine machine = FitMachine.of(study.placed()).orElseThrow();
    SampledCrowd crowd =
        new SampledCrowd(Population.usAdults(3, 0.5), SampledCrowd.From.ADULTS, PEOPLE);
    BodyJudge all = new BodyJudge(machine.checks(), Gear.RIDING, Set.of());
    BodyJudge some = new BodyJudge(machine.checks(), Gear.RIDING, Set.of("gap"));
    Set<String> with = new TreeSet<>();
    Set<String> without = new TreeSet<>();
    for (int i = 0; i < PEOPLE; i++) {
      with.addAll(keys(all.judge(crowd, i).fails()));
      without.addAll(keys(some.judge(crowd, i).fails()));
    }
    assertThat(with).anyMatch(k -> k.startsWith("gap."));
    with.removeIf(k -> k.startsWith("gap."));
    assertThat(without).isEqualTo(with);
  }
}

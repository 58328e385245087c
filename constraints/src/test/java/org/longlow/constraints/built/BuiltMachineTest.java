package org.longlow.constraints.built;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.BuiltSpan;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.Diagnosis;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** The machine as built: what follows from what was measured, and what goes against the plan. */
class BuiltMachineTest {

  private static final Study PLAN = TestMachine.asFiled("runabout");
  private static final Places WAS = PLAN.placed().places();

  private static List<Formula> at(double x, double z) {
    return List.of(Formula.of(x, Unit.MM), Formula.of(z, Unit.MM));
  }

  private static List<Formula> beside(String pin, double dx, double dz) {
    PointMm p = WAS.pin(pin);
    return at(p.x() + dx, p.z() + dz);
  }

  private static AsBuilt pins(Map<String, List<Formula>> pins, BuiltSpan... spans) {
    return built(Map.of(), pins, List.of(spans), Map.of(), Optional.empty(), Optional.empty());
  }

  private static AsBuilt built(
      Map<String, Formula> measures,
      Map<String, List<Formula>> pins,
      List<BuiltSpan> spans,
      Map<String, Formula> masses,
      Optional<Formula> front,
      Optional<Formula> rear) {
    return new AsBuilt(measures, pins, spans, masses, Map.of(), front, rear, "");
  }

  private static Placed plan(AsBuilt built) {
    return Placer.place(Change.set(PLAN.layout(), built, "asBuilt"));
  }

  private static BuiltLayout layout(AsBuilt built) {
    return BuiltLayout.of(plan(built));
  }

  private static BuiltMachine machine(AsBuilt built) {
    return BuiltMachine.of(Study.of(plan(built)));
  }

  private static void isMoved(Places now, String pin, double dx, double dz) {
    PointMm was = WAS.pin(pin);
    assertThat(now.pin(pin).x() - was.x()).as(pin).isCloseTo(dx, within(1e-6));
    assertThat(now.pin(pin).z() - was.z()).as(pin).isCloseTo(dz, within(1e-6));
  }

  @Test
  void whatHangsOnAMeasuredPinFollowsAndTheTieItGoesAgainstIsTold() {
    BuiltLayout now = layout(pins(Map.of("frontAxle", beside("frontAxle", 12, 0))));
    assertThat(now.placed().holds()).isTrue();
    isMoved(now.placed().places(), "linkPivot", 12, 0);
    isMoved(now.placed().places(), "rearAxle", 0, 0);
    isMoved(now.placed().places(), "headBottom", 0, 0);
    assertThat(now.letGo()).extracting(LetGo::name).containsExactly("baseline");
    LetGo baseline = now.letGo().get(0);
    assertThat(baseline.asked()).isEqualTo(WAS.measures().get("wheelbase"));
    assertThat(baseline.built() - baseline.asked()).isCloseTo(12, within(1e-9));
    assertThat(now.layout().ties()).containsKey("linkSize").doesNotContainKey("baseline");
    assertThat(now.layout().asBuilt()).isEqualTo(AsBuilt.NOTHING);
  }

  @Test
  void whatIsMeasuredAsPlannedGoesAgainstNothing() {
    // a tape shows no half millimetre
    assertThat(layout(pins(Map.of("frontAxle", beside("frontAxle", 0.4, -0.4)))).letGo()).isEmpty();
    assertThat(layout(pins(Map.of("frontAxle", beside("frontAxle", 0.6, 0)))).letGo()).hasSize(1);
  }

  @Test
  void aLimitThatIsNotKeptAsBuiltFailsByItsName() {
    // panPlace: 320 to 360 mm ahead of the rear axle
    double to366 = 366 - WAS.pin("panRear").x();
    BuiltMachine machine = machine(pins(Map.of("panRear", beside("panRear", to366, 0))));
    isMoved(machine.built().placed().places(), "panFront", to366, 0);
    Finding limit = finding(machine, "as-built.panPlace");
    assertThat(limit.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(limit.text()).contains("366.0 mm").contains("at most 360.0 mm");
    assertThat(machine.newlyFailing()).contains(limit);
    assertThat(machine.plan().findings()).noneMatch(f -> f.id().startsWith("as-built"));
  }

  @Test
  void aMeasureOutsideOfItsRangeFails() {
    Map.Entry<String, ?> free =
        PLAN.layout().measures().entrySet().stream()
            .filter(m -> m.getValue().free() && m.getValue().to().isPresent())
            .findFirst()
            .orElseThrow();
    double to = WAS.value(PLAN.layout().measures().get(free.getKey()).to().orElseThrow());
    Map<String, Formula> over = Map.of(free.getKey(), Formula.of(Math.toDegrees(to) + 1, Unit.DEG));
    AsBuilt built = built(over, Map.of(), List.of(), Map.of(), Optional.empty(), Optional.empty());
    BuiltLayout now = layout(built);
    assertThat(now.placed().holds()).isTrue();
    assertThat(now.letGo())
        .anyMatch(g -> g.isLimit() && g.name().equals(free.getKey()) && g.asked() == to);
  }

  @Test
  void twoMeasurementsThatCannotBothBeAreTold() {
    double wheelbase = WAS.measures().get("wheelbase");
    BuiltSpan tape =
        new BuiltSpan(
            TieKind.DISTANCE, "rearAxle", "frontAxle", Formula.of(wheelbase + 30, Unit.MM));
    BuiltMachine machine = machine(pins(Map.of("frontAxle", beside("frontAxle", 12, 0)), tape));
    assertThat(machine.built().placed().holds()).isTrue();
    Finding unlike = finding(machine, "as-built.measured distance rearAxle to frontAxle");
    assertThat(unlike.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(unlike.text()).contains("measure both again");
  }

  @Test
  void spansThatNoMachineHasContradictInTheirOwnNames() {
    // farther ahead than it is away
    BuiltSpan ahead = new BuiltSpan(TieKind.AHEAD, "panRear", "panFront", Formula.parse("380 mm"));
    BuiltSpan away =
        new BuiltSpan(TieKind.DISTANCE, "panRear", "panFront", Formula.parse("300 mm"));
    BuiltLayout now = layout(pins(Map.of(), ahead, away));
    assertThat(now.placed().holds()).isFalse();
    assertThat(now.placed().report().diagnosis().map(Diagnosis::contradiction).orElseThrow())
        .contains("measured ahead panRear to panFront", "measured distance panRear to panFront");
  }

  @Test
  void aSpanTakesThePlaceOfTheTieOfTheSamePins() {
    BuiltSpan rail =
        new BuiltSpan(TieKind.DISTANCE, "backHead", "backFoot", Formula.parse("431 mm"));
    BuiltLayout now = layout(pins(Map.of(), rail));
    assertThat(now.placed().holds()).isTrue();
    PointMm way =
        now.placed().places().pin("backHead").minus(now.placed().places().pin("backFoot"));
    assertThat(way.length()).isCloseTo(431, within(1e-6));
    assertThat(now.letGo()).extracting(LetGo::name).containsExactly("railSize");
  }

  /** Nine kilograms at a place, by moments about each contact. */
  @Test
  void scalesThatShowMoreSayHowMuchIsMissingAndWhere() {
    Scales reckoned = Scales.reckoned(PLAN).orElseThrow();
    double wheelbase = Scales.wheelbaseMm(PLAN);
    double x = 300;
    double front = reckoned.frontKg() + 9 * x / wheelbase;
    double rear = reckoned.rearKg() + 9 * (wheelbase - x) / wheelbase;
    Finding more = scales(front, rear);
    assertThat(more.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(more.text()).contains("9 kg that nobody reckoned with, 300 mm ahead of the rear");
    Finding less = scales(reckoned.frontKg(), reckoned.rearKg() - 9);
    assertThat(less.text()).contains("9 kg reckoned too much, 0 mm ahead of the rear contact");
    Finding shifted = scales(reckoned.frontKg() + 5, reckoned.rearKg() - 5);
    long mm = Math.round(wheelbase * 5 / (reckoned.frontKg() + reckoned.rearKg()));
    assertThat(shifted.text())
        .contains("weighs what it should")
        .contains(mm + " mm farther forward");
    assertThat(scales(reckoned.frontKg() + 0.9, reckoned.rearKg()).verdict())
        .isEqualTo(Verdict.PASS);
  }

  /** What would lie outside of the machine lies nowhere: by moments about each contact. */
  @Test
  void scalesThatNothingInTheMachineExplainsAreDoubted() {
    Scales reckoned = Scales.reckoned(PLAN).orElseThrow();
    double wheelbase = Scales.wheelbaseMm(PLAN);
    String ahead = scales(reckoned.frontKg() + 8, reckoned.rearKg() - 5).text();
    assertThat(ahead)
        .contains("front scale is 8 kg over and the rear scale 5 kg under")
        .contains("mass sits farther forward than drawn, or the scales are swapped or wrong")
        .doesNotContain("reckoned with");
    String behind = scales(reckoned.frontKg() - 8, reckoned.rearKg() + 5).text();
    assertThat(behind)
        .contains("front scale is 8 kg under and the rear scale 5 kg over")
        .contains("farther back")
        .doesNotContain("reckoned too much");
    // its last part reaches less than half a wheelbase behind: there and nearer something can lie
    double x = -PLAN.shapes().get("rearWheel").outline().getEnvelopeInternal().getWidth() / 2 + 1;
    String tail =
        scales(
                reckoned.frontKg() + 9 * x / wheelbase,
                reckoned.rearKg() + 9 * (wheelbase - x) / wheelbase)
            .text();
    assertThat(tail).contains("9 kg that nobody reckoned with").contains("behind the rear contact");
  }

  @Test
  void readingsThatAgreeWhenSwappedAreSaidTo() {
    Scales reckoned = Scales.reckoned(PLAN).orElseThrow();
    assertThat(Math.abs(reckoned.frontKg() - reckoned.rearKg())).isGreaterThan(3);
    String swapped = "With both readings swapped they would agree";
    assertThat(scales(reckoned.rearKg() * 1.019, reckoned.frontKg() * 0.981).text())
        .contains(swapped);
    assertThat(scales(reckoned.rearKg() * 1.021, reckoned.frontKg()).text())
        .doesNotContain(swapped);
    assertThat(scales(reckoned.frontKg(), reckoned.rearKg()).text()).doesNotContain(swapped);
  }

  @Test
  void scalesThatShowManyTimesTheMachineNameNoPlace() {
    Scales reckoned = Scales.reckoned(PLAN).orElseThrow();
    assertThat(scales(2.1 * reckoned.frontKg(), 2.1 * reckoned.rearKg()).text())
        .contains("more than was reckoned: look at the unit")
        .doesNotContain("contact");
    assertThat(scales(1.9 * reckoned.frontKg(), 1.9 * reckoned.rearKg()).text())
        .contains("that nobody reckoned with");
    assertThat(scales(0.4 * reckoned.frontKg(), 0.4 * reckoned.rearKg()).text())
        .contains("less than was reckoned: look at the unit");
  }

  /** The mass of all is that of its parts, and what scales show adds up to it. */
  @Test
  void whatIsWeighedCountsAndStandsInTheTable() {
    AsBuilt heavy =
        built(
            Map.of(),
            Map.of(),
            List.of(),
            Map.of("battery", Formula.parse("27 kg")),
            Optional.of(Formula.parse("60 kg")),
            Optional.empty());
    BuiltMachine machine = machine(heavy);
    Scales before = Scales.reckoned(machine.plan()).orElseThrow();
    Scales after = Scales.reckoned(machine.built()).orElseThrow();
    assertThat(after.totalKg() - before.totalKg()).isCloseTo(27 - 23, within(1e-6));
    BuiltRow mass = machine.rows().get(0);
    assertThat(mass.planned()).isEqualTo(23);
    assertThat(mass.difference()).isEqualTo(4);
    BuiltRow load = machine.rows().get(1);
    assertThat(load.what()).isEqualTo("front");
    assertThat(load.planned()).isCloseTo(before.frontKg(), within(1e-9));
    assertThat(finding(machine, "scales.machine").text()).contains("weigh the rear wheel");
  }

  private static Finding scales(double front, double rear) {
    Layout layout =
        Change.set(
            PLAN.layout(),
            built(
                Map.of(),
                Map.of(),
                List.of(),
                Map.of(),
                Optional.of(Formula.of(front, Unit.KG)),
                Optional.of(Formula.of(rear, Unit.KG))),
            "asBuilt");
    return BuiltFindings.of(layout, PLAN, List.of()).get(0);
  }

  private static Finding finding(BuiltMachine machine, String id) {
    return machine.built().findings().stream()
        .filter(f -> f.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    machine.built().findings().stream()
                        .map(Finding::id)
                        .filter(i -> i.startsWith("as-built") || i.startsWith("scales"))
                        .toList()
                        .toString()));
  }
}

package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.study.Changed;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** The machine in each of its stances: what moves, how far, and what weighs on the road then. */
class StancesTest {

  private static final Rider NELL = rider("Nell", 60, 500, 700);
  private static final Rider JOSS = rider("Joss", 80, 480, 720);

  private static Rider rider(String name, double kg, double x, double z) {
    return new Rider(
        List.of(
            new Rider.Seated(
                new Occupant(name, Occupant.RIDER),
                List.of(new MassPoint(kg - 20, x, z), new MassPoint(20, x + 300, z - 200)),
                List.of())));
  }

  private static Rider two() {
    Rider.Seated behind =
        new Rider.Seated(
            new Occupant("Joss", "passenger"), List.of(new MassPoint(80, 0, 900)), List.of());
    return new Rider(List.of(NELL.seated().get(0), behind));
  }

  @Test
  void everyStanceOfTheMachineInOrder() {
    assertThat(new Stood(TestMachine.runabout(), NELL, JOSS).says())
        .containsExactly(
            "unladen",
            "laden, Nell",
            "laden, Joss",
            "full bump",
            "full droop",
            "parked",
            "open, lid");
    // who does not ask for droop is spared it; what every machine has comes unasked
    assertThat(
            new Stood(
                    TestMachine.replacing("runabout", "    \"full droop\": \"full-droop\",\n", ""))
                .says())
        .containsExactly("unladen", "full bump", "parked", "open, lid");
    String text = TestMachine.text("runabout");
    int from = text.indexOf("  \"stances\": {");
    int to = text.indexOf("  \"crew\": {");
    assertThat(new Stood(TestMachine.replacing("runabout", text.substring(from, to), "")).says())
        .containsExactly("unladen", "full bump", "full droop", "parked", "open, lid");
    assertThat(new Stood(TestMachine.runabout().lacking("sideStand")).says())
        .doesNotContain("parked");
    Stood whole = new Stood(TestMachine.runabout());
    Layout bare = Changed.without(whole.layout, "rearWheel");
    assertThat(new Stances(Wheels.of(bare, whole.places), whole.shapes).all(List.of(NELL)))
        .isEmpty();
  }

  @Test
  void wheelsRiseAndFallAsFarAsTheyCan() {
    Stood stood = new Stood(TestMachine.runabout());
    for (String axle : new String[] {"frontAxle", "rearAxle"}) {
      assertThat(
              stood.in(Stance.Kind.FULL_BUMP).places().pin(axle).minus(stood.places.pin(axle)).z())
          .isCloseTo(50, within(1e-9));
      assertThat(
              stood.in(Stance.Kind.FULL_DROOP).places().pin(axle).minus(stood.places.pin(axle)).z())
          .isCloseTo(-40, within(1e-9));
    }
    for (Stance.Kind kind : new Stance.Kind[] {Stance.Kind.FULL_BUMP, Stance.Kind.FULL_DROOP}) {
      assertThat(stood.in(kind).rider().seated()).isEmpty();
      assertThat(stood.in(kind).springs()).isEmpty();
    }
  }

  private static final Set<String> ON_WHEELS =
      Set.of("frontWheel", "rearWheel", "motor", "front", "swingarm", "frontGuard", "rearGuard");

  @Test
  void onlyWhatHangsOnAWheelMoves() {
    Stood stood = new Stood(TestMachine.runabout());
    Standing bump = stood.in(Stance.Kind.FULL_BUMP);
    assertThat(bump.moved()).containsOnlyKeys(ON_WHEELS);
    assertThat(bump.shapes()).containsOnlyKeys(stood.shapes.keySet());
    bump.shapes()
        .forEach(
            (name, shape) -> {
              if (ON_WHEELS.contains(name)) {
                assertThat(shape).isSameAs(bump.moved().get(name));
                assertThat(shape).isNotSameAs(stood.shapes.get(name));
              } else {
                assertThat(shape).as(name).isSameAs(stood.shapes.get(name));
              }
            });
    // what hangs on an axle alone shifts with it
    Map<String, String> hung =
        Map.of(
            "motor", "rearAxle",
            "rearGuard", "rearAxle",
            "rearWheel", "rearAxle",
            "frontWheel", "frontAxle",
            "frontGuard", "frontAxle");
    hung.forEach(
        (part, axle) -> {
          PointMm by = bump.places().pin(axle).minus(stood.places.pin(axle));
          PartShape before = stood.shapes.get(part);
          PartShape now = bump.shapes().get(part);
          assertThat(now.centre().distance(before.centre().plus(by))).as(part).isLessThan(1e-9);
          var from = before.outline().getEnvelopeInternal();
          var to = now.outline().getEnvelopeInternal();
          assertThat(to.getMinX()).isCloseTo(from.getMinX() + by.x(), within(1e-6));
          assertThat(to.getMaxY()).isCloseTo(from.getMaxY() + by.z(), within(1e-6));
          assertThat(now.massKg()).isEqualTo(before.massKg());
        });
    // what spans from frame to wheel is shaped between the pins where they are
    for (String part : new String[] {"front", "swingarm"}) {
      PartShape now = bump.shapes().get(part);
      PartShape anew = Shapes.of(now.part(), bump.places(), false);
      assertThat(now.outline().equalsExact(anew.outline())).as(part).isTrue();
      assertThat(now.outline().equalsExact(stood.shapes.get(part).outline())).isFalse();
      var body = Stances.movedBody(stood.shapes.get(part), stood.places, bump.places());
      assertThat(body).hasSameSizeAs(now.prisms());
      for (int i = 0; i < body.size(); i++) {
        assertThat(body.get(i).across()).isEqualTo(now.prisms().get(i).across());
        assertThat(body.get(i).outline().equalsExact(now.prisms().get(i).outline())).isTrue();
      }
    }
    var body = Stances.movedBody(stood.shapes.get("motor"), stood.places, bump.places());
    assertThat(body.get(0).outline().equalsExact(bump.shapes().get("motor").outline(), 1e-9))
        .isTrue();
  }

  /** The foot comes down to the road; up, the stand lies along the rail 150 mm above it. */
  @Test
  void onlyParkedTheStandIsDown() {
    Stood stood = new Stood(TestMachine.runabout());
    double down = lowest(stood.in(Stance.Kind.PARKED));
    assertThat(down).isBetween(-30.0, 20.0);
    for (Standing s : stood.all) {
      if (s.kind() != Stance.Kind.PARKED) {
        assertThat(lowest(s)).as(s.condition().says()).isGreaterThan(100);
      }
    }
    assertThat(stood.in(Stance.Kind.PARKED).moved()).containsKey("sideStand");
    assertThat(stood.in(Stance.Kind.UNLADEN).moved()).doesNotContainKey("sideStand");
  }

  private static double lowest(Standing standing) {
    return standing.shapes().get("sideStand").outline().getEnvelopeInternal().getMinY();
  }

  private static MassPoint sum(Standing standing, Rider rider) {
    double kg = 0;
    double x = 0;
    double z = 0;
    double y = 0;
    for (PartShape s : standing.shapes().values()) {
      kg += s.massKg();
      x += s.massKg() * s.centre().x();
      z += s.massKg() * s.centre().z();
      y += s.massKg() * s.centreYMm();
    }
    for (Rider.Seated seated : rider.seated()) {
      for (MassPoint m : seated.masses()) {
        kg += m.massKg();
        x += m.massKg() * m.at().x();
        z += m.massKg() * m.at().z();
        y += m.massKg() * m.yMm();
      }
    }
    return new MassPoint(kg, new PointMm(x / kg, z / kg), y / kg);
  }

  @Test
  void theRoadCarriesAllMassesWhereTheyAre() {
    Rider both = two();
    Stood stood = new Stood(TestMachine.runabout(), NELL, both);
    int laden = 0;
    for (Standing s : stood.all) {
      Rider aboard = s.kind() == Stance.Kind.LADEN ? s.rider() : Rider.NOBODY;
      MassPoint sum = sum(s, aboard);
      laden += aboard.seated().size();
      assertThat(s.load().total().massKg()).isCloseTo(sum.massKg(), within(1e-9));
      assertThat(s.load().total().at().distance(sum.at())).isLessThan(1e-9);
      assertThat(s.load().total().yMm()).isCloseTo(sum.yMm(), within(1e-9));
      // moments about the rear contact, along the road
      PointMm along = s.ground().frontContact().minus(s.ground().rearContact());
      double ahead = sum.at().minus(s.ground().rearContact()).dot(along) / along.length();
      assertThat(s.load().axles().frontN())
          .isCloseTo(sum.massKg() * 9.80665 * ahead / along.length(), within(1e-6));
    }
    assertThat(laden).isEqualTo(3);
    assertThat(both.occupants()).extracting(Occupant::person).containsExactly("Nell", "Joss");
    assertThat(both.masses()).hasSize(3);
  }

  @Test
  void withoutMassesThereIsNoLoad() {
    Stood stood = new Stood(TestMachine.runabout());
    Ground ground = stood.all.get(0).ground();
    assertThat(Load.of(List.of(), Rider.NOBODY, ground)).isNull();
    assertThat(Load.of(List.of(), NELL, ground).total().massKg()).isCloseTo(60, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"runabout", "tourer"})
  void springsAreInBalanceUnderWhoeverIsAboard(String name) {
    Stood stood = new Stood(TestMachine.named(name), NELL, two());
    double less = Double.NEGATIVE_INFINITY;
    for (Standing s : stood.all) {
      if (s.kind() != Stance.Kind.UNLADEN && s.kind() != Stance.Kind.LADEN) {
        continue;
      }
      stood.balanced(s, s.ground(), s.frontTravelMm(), s.rearTravelMm(), 1, 1e-3);
      assertThat(s.rearTravelMm()).isGreaterThan(less);
      less = s.rearTravelMm();
    }
    Standing parked = stood.in(Stance.Kind.PARKED);
    assertThat(parked.rearTravelMm()).isEqualTo(stood.in(Stance.Kind.UNLADEN).rearTravelMm());
    Standing open = stood.in(Stance.Kind.OPEN);
    assertThat(open.rearTravelMm()).isEqualTo(stood.in(Stance.Kind.UNLADEN).rearTravelMm());
    assertThat(open.frontTravelMm()).isEqualTo(stood.in(Stance.Kind.UNLADEN).frontTravelMm());
  }

  @Test
  void withoutTheWeightOfAWheelNothingIsKnownOfTheSprings() {
    Stood stood = new Stood(TestMachine.runabout().without("frontWheel", "mass", "material"), NELL);
    Stood bare =
        new Stood(
            TestMachine.runabout()
                .without("frontWheel", "mass", "material")
                .without("front", "mass", "material"),
            NELL);
    assertThat(stood.in(Stance.Kind.UNLADEN).springs()).isPresent();
    for (Stance.Kind kind : new Stance.Kind[] {Stance.Kind.UNLADEN, Stance.Kind.LADEN}) {
      Standing s = bare.in(kind);
      assertThat(s.springs()).isEmpty();
      assertThat(s.frontTravelMm()).isZero();
      assertThat(s.rearTravelMm()).isZero();
      assertThat(s.places()).isSameAs(bare.places);
      assertThat(s.moved()).isEmpty();
      assertThat(s.condition().kind()).isEqualTo(kind);
    }
  }

  /** The lid turns 75 degrees clockwise about its hinge; all else is as unladen. */
  @Test
  void anOpenSectionIsTurnedAboutItsHinge() {
    Stood stood = new Stood(TestMachine.runabout());
    Standing unladen = stood.in(Stance.Kind.UNLADEN);
    Standing open = stood.in(Stance.Kind.OPEN);
    PointMm hinge = stood.places.pin("lidHinge");
    PointMm shut = stood.shapes.get("trunkLid").centre();
    double turn = Math.toRadians(-75);
    PointMm from = shut.minus(hinge);
    PointMm expected =
        hinge.plus(
            new PointMm(
                from.x() * Math.cos(turn) - from.z() * Math.sin(turn),
                from.x() * Math.sin(turn) + from.z() * Math.cos(turn)));
    assertThat(open.shapes().get("trunkLid").centre().distance(expected)).isLessThan(1e-9);
    assertThat(open.moved().get("trunkLid")).isSameAs(open.shapes().get("trunkLid"));
    Map<String, PartShape> rest = new LinkedHashMap<>(open.shapes());
    rest.remove("trunkLid");
    rest.forEach((name, shape) -> assertThat(shape).isSameAs(unladen.shapes().get(name)));
    assertThat(rest).hasSize(stood.shapes.size() - 1);
    assertThat(open.condition()).isEqualTo(Condition.open("lid"));
    assertThat(open.ground()).isEqualTo(unladen.ground());
  }

  private static TestMachine linked(String angle, String ahead) {
    return TestMachine.runabout()
        .pin("armA", 0, 700)
        .pin("armB", 150, 700)
        .with("pins", "armC", "{'at': ['0 mm', '800 mm'], 'nailed': true, 'with': 'lid'}")
        .with("pins", "armD", "{'at': ['" + ahead + "', '800 mm'], 'nailed': true, 'with': 'lid'}")
        .with(
            "sections",
            "lid",
            "{'parts': ['trunkLid'], 'frameArms': ['armA', 'armB'], 'sectionArms': ['armC',"
                + " 'armD'], 'angle': '"
                + angle
                + "'}");
  }

  /** On parallel arms of 100 mm, straight up when shut, a section shifts and does not turn. */
  @Test
  void aSectionOnParallelArmsKeepsLevel() {
    Stood stood = new Stood(linked("-40 deg", "150 mm"));
    PointMm shut = stood.shapes.get("trunkLid").centre();
    PointMm open = stood.in(Stance.Kind.OPEN).shapes().get("trunkLid").centre();
    double turn = Math.toRadians(40);
    assertThat(open.x() - shut.x()).isCloseTo(100 * Math.sin(turn), within(1e-6));
    assertThat(open.z() - shut.z()).isCloseTo(100 * Math.cos(turn) - 100, within(1e-6));
    // half way, as it is swept
    PointMm half =
        Sections.shapes(
                stood.layout.sections().get("lid"),
                Sections.motion(stood.layout.sections().get("lid"), stood.places),
                0.5,
                stood.shapes)
            .get("trunkLid")
            .centre();
    assertThat(half.x() - shut.x()).isCloseTo(100 * Math.sin(turn / 2), within(1e-6));
  }

  @Test
  void aSectionThatJamsHasNoOpenStanceAndSaysWhy() {
    Stood stood = new Stood(linked("-95 deg", "150 mm"));
    assertThat(stood.says()).doesNotContain("open, lid").contains("parked");
    assertThatThrownBy(() -> Sections.motion(stood.layout.sections().get("lid"), stood.places))
        .hasMessageContaining("can turn from -90.0 to 90.0 deg, not -95.0");
  }

  /** Parts that are not there, as while a file is edited, are left out. */
  @Test
  void ofASectionOnlyPartsThatAreThereMove() {
    Stood stood = new Stood(TestMachine.runabout());
    assertThat(
            Sections.shapes(
                stood.layout.sections().get("lid"),
                Sections.motion(stood.layout.sections().get("lid"), stood.places),
                1,
                Map.of()))
        .isEmpty();
  }

  @Test
  void somebodyIsTakenWithAsFewOthersAsMayBe() {
    Stood stood = new Stood(TestMachine.runabout(), two(), NELL);
    Occupant nell = new Occupant("Nell", "rider");
    Occupant joss = new Occupant("Joss", "passenger");
    Occupant mara = new Occupant("Mara", "rider");
    assertThat(Standing.under(nell, stood.all)).isEqualTo(Condition.laden(List.of(nell)));
    assertThat(Standing.under(joss, stood.all)).isEqualTo(Condition.laden(List.of(nell, joss)));
    assertThat(Standing.under(mara, stood.all)).isEqualTo(Condition.laden(List.of(mara)));
  }
}

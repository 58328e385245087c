package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.constraints.shape.FormersAsked.box;
import static org.longlow.constraints.shape.FormersAsked.off;
import static org.longlow.constraints.shape.FormersAsked.only;
import static org.longlow.constraints.shape.FormersAsked.points;
import static org.longlow.constraints.shape.FormersAsked.told;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Former;
import org.longlow.constraints.layout.Formers;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.layout.Stringer;
import org.longlow.constraints.layout.Vertex;
import org.longlow.rider.geom.PointMm;

/** What is let into formers, turned over on them, asked of them in vain, and under open lines. */
class FormerFittingsTest {

  private static final double NEAR_MM = 0.05;

  private static Formers fitted(Optional<Formula> flange, Stringer... stringers) {
    return new Formers(
        List.of(new Former("mid", Made.mm(150), Optional.empty(), Optional.empty())),
        List.of(),
        Optional.empty(),
        Made.mm(2),
        flange,
        Optional.empty(),
        List.of(stringers));
  }

  private static Part block(Formers formers) {
    return Made.formed(
        Made.outline(0, 0, 300, 0, 300, 80, 0, 80),
        Made.spread(100, 100, false),
        Breadth.EVEN,
        formers);
  }

  @Test
  void stringersAreLetInWhereTheyAreSaid() {
    Stringer waist =
        new Stringer("waist", Optional.empty(), Optional.of(Made.mm(30)), Made.mm(20), Made.mm(8));
    // from the middle below to the middle above it is 100 + 80 + 100: a quarter is on the floor
    Stringer keel =
        new Stringer(
            "", Optional.of(Formula.parse("0.25")), Optional.empty(), Made.mm(10), Made.mm(6));
    Stringer ridge =
        new Stringer(
            "ridge", Optional.of(Formula.parse("1")), Optional.empty(), Made.mm(12), Made.mm(5));
    FormerCut cut = only(block(fitted(Optional.empty(), waist, keel, ridge)));
    assertThat(cut.name()).isEqualTo("mid");
    assertThat(cut.notches())
        .extracting(FormerCut.Notch::name)
        .containsExactly("waist", "waist", "stringer 2", "stringer 2", "ridge");
    assertThat(cut.notches())
        .extracting(n -> new PointMm(Math.abs(n.at().x()), n.at().z()))
        .usingElementComparator((a, b) -> a.distance(b) < 1e-6 ? 0 : 1)
        .containsExactly(
            new PointMm(100, 30),
            new PointMm(100, 30),
            new PointMm(70, 0),
            new PointMm(70, 0),
            new PointMm(0, 80));
    assertThat(cut.notches().get(0).at().x() * cut.notches().get(1).at().x()).isNegative();
    assertThat(cut.line().getArea()).isCloseTo(200 * 80, within(1e-6));
    assertThat(cut.board().getArea())
        .isCloseTo(200 * 80 - 2 * 20 * 8 - 2 * 10 * 6 - 12 * 5, within(1e-6));
    assertThat(off(cut.board(), 92, 30)).isLessThan(1e-6);
    assertThat(off(cut.board(), 0, 75)).isLessThan(1e-6);
  }

  @Test
  void aRimIsLaidFlatWithItsFold() {
    FormerCut cut = only(block(fitted(Optional.of(Made.mm(15)))));
    // 90 degrees of 2 mm sheet round a radius of 2 mm, neutral at 0.44 of it
    double allowance = Math.PI / 2 * (2 + 0.44 * 2);
    double deduction = 2 * (2 + 2) - allowance;
    Envelope flat = box(cut.board());
    assertThat(flat.getWidth()).isCloseTo(200 + 2 * (15 - deduction), within(1e-6));
    assertThat(flat.getHeight()).isCloseTo(80 + 2 * (15 - deduction), within(1e-6));
    FormerCut.Flange flange = cut.flange().orElseThrow();
    // folded, the sheet is as long as web and rim on the neutral line
    double fold = box(flange.fold()).getWidth();
    assertThat((flat.getWidth() - fold) / 2).isCloseTo(15 - 4 + allowance / 2, within(1e-6));
  }

  /** Sides that widen by 0.4 on 1 and a level floor and roof: a rim turned over by two angles. */
  @Test
  void aRimFollowsTheLeanOfTheSkin() {
    double t = 2;
    Part wedge =
        Made.formed(
            Made.outline(0, 0, 300, 0, 300, 80, 0, 80),
            Made.spread(100, 100, false),
            new Breadth(Made.stations(false, 0, 60, 300, 180), Profile.FLAT),
            fitted(Optional.of(Made.mm(15))));
    FormerCut cut = only(wedge);
    assertThat(cut.ahead()).isTrue();
    double turn = Math.PI / 2 - Math.atan(0.4);
    FormerCut.Flange flange = cut.flange().orElseThrow();
    assertThat(flange.mostRad()).isCloseTo(Math.PI / 2, within(1e-6));
    assertThat(flange.leastRad()).isCloseTo(turn, within(1e-3));
    // folded: on the neutral line it is as long as the web to the bend, the bend, and the rim
    double bend = turn * (t + 0.44 * t);
    double setback = Math.tan(turn / 2) * 2 * t;
    double wide = 2 * (120 - setback + bend + 15 - setback);
    double right = 2 * (40 - 2 * t + Math.PI / 2 * 1.44 * t + 15 - 2 * t);
    Envelope flat = box(cut.board());
    assertThat(flat.getWidth()).isCloseTo(wide, within(0.02));
    assertThat(flat.getHeight()).isCloseTo(right, within(0.02));
    assertThat(cut.board().getArea()).isCloseTo(wide * right, within(3.0));
    double fold = box(flange.fold()).getWidth();
    assertThat((flat.getWidth() - fold) / 2).isCloseTo(15 - setback + bend / 2, within(0.02));
    // reckoned square it would be too small
    assertThat(wide - 2 * (120 - 2 * t + Math.PI / 2 * 1.44 * t + 15 - 2 * t)).isGreaterThan(0.4);
  }

  private static Formers deep(double depth, Stringer... more) {
    List<Stringer> all = new ArrayList<>(List.of(more));
    all.add(
        new Stringer(
            "keel",
            Optional.of(Formula.parse("0")),
            Optional.empty(),
            Made.mm(10),
            Made.mm(depth)));
    return fitted(Optional.empty(), all.toArray(Stringer[]::new));
  }

  @Test
  void whatCannotBeMadeIsTold() {
    assertThat(told(block(deep(79)))).isEmpty();
    assertThat(told(block(deep(81))))
        .isEqualTo(
            "mid: its notches cut it apart; let stringers in"
                + " less deep, or put them elsewhere");
    Stringer high =
        new Stringer("rail", Optional.empty(), Optional.of(Made.mm(90)), Made.mm(9), Made.mm(5));
    Stringer low =
        new Stringer("waist", Optional.empty(), Optional.of(Made.mm(79)), Made.mm(9), Made.mm(5));
    assertThat(told(block(deep(5, high)))).startsWith("rail: this stringer meets no former");
    assertThat(told(block(deep(5, low)))).isEmpty();
    assertThat(told(block(Made.across(0, 300.5, -1))))
        .contains("former 1: nothing to cut at x -1 mm, the part reaches from 0 to 300 mm")
        .contains("former 2: nothing to cut at x 300.5 mm");
    assertThat(told(block(Made.across(0, 0, 300)))).isEmpty();
    Part thin =
        Made.formed(
            Made.outline(0, 0, 9, 0, 9, 80, 0, 80),
            Made.spread(100, 100, false),
            Breadth.EVEN,
            Made.across(0, 5));
    assertThat(told(thin)).contains("its sheet of 10 mm is as thick as the part is long, 9 mm");
    Part thicker =
        Made.formed(
            Made.outline(0, 0, 19, 0, 19, 80, 0, 80),
            Made.spread(100, 100, false),
            Breadth.EVEN,
            Made.across(0, 9.5));
    assertThat(told(thicker)).contains("stands out of the part with its other face");
    assertThat(told(block(Made.across(0, 150)))).isEmpty();
  }

  /** A screen along an arc of radius 200 about (150, -100): under it to its chord. */
  @Test
  void anOpenLineHasFormersUnderIt() {
    double r = 200;
    double t = 4;
    List<Vertex> arc = new ArrayList<>();
    for (int i = 0; i <= 90; i++) {
      double a = Math.toRadians(135 - i);
      arc.add(
          new Vertex(Made.mm(150 + r * Math.cos(a)), Made.mm(-100 + r * Math.sin(a)), null, false));
    }
    Part screen =
        Made.formed(
            new Outline.Drawn(arc, false),
            Made.spread(120, 120, false),
            Breadth.EVEN,
            t,
            true,
            new Formers(
                List.of(new Former("mid", Made.mm(130), Optional.empty(), Optional.empty())),
                List.of(new Former("rib", Made.mm(30), Optional.empty(), Optional.empty())),
                Optional.empty(),
                Made.mm(9),
                Optional.empty(),
                Optional.empty(),
                List.of()));
    List<FormerCut> cuts = FormerCuts.of(screen, Made.PLACES);
    assertThat(cuts).extracting(FormerCut::name).containsExactly("mid", "rib");
    double chord = -100 + r * Math.sin(Math.PI / 4);
    double top = -100 + Math.sqrt((r - t / 2) * (r - t / 2) - 20 * 20);
    Envelope mid = box(cuts.get(0).line());
    assertThat(mid.getWidth()).isCloseTo(240, within(1e-3));
    assertThat(mid.getMinY()).isCloseTo(chord, within(1e-3));
    assertThat(mid.getMaxY()).isCloseTo(top, within(NEAR_MM));
    for (Coordinate p : points(cuts.get(1).line())) {
      double off = Math.hypot(p.x - 150, p.y + 100) - (r - t / 2);
      assertThat(Math.min(Math.abs(off), Math.abs(p.y - chord))).isLessThan(NEAR_MM);
    }
    // a segment of the disc inside of the sheet
    double half = Math.acos((chord + 100) / (r - t / 2));
    double area = (r - t / 2) * (r - t / 2) * (half - Math.sin(half) * Math.cos(half));
    assertThat(cuts.get(1).line().getArea()).isCloseTo(area, within(10.0));
    assertThat(told(screen)).isEmpty();
  }

  @Test
  void nothingLiesUnderAStraightLineOrOneThatCrossesItsChord() {
    for (double[] xz : new double[][] {{0, 0, 300, 40}, {0, 0, 100, 50, 200, -50, 300, 0}}) {
      Part line =
          Made.formed(
              new Outline.Drawn(Made.outline(xz).vertices(), false),
              Made.spread(120, 120, false),
              Breadth.EVEN,
              3,
              true,
              Made.across(0, 130));
      assertThat(FormerCuts.of(line, Made.PLACES)).isEmpty();
      assertThat(told(line)).startsWith("no formers can be made under its line");
    }
  }

  @Test
  void aSpacingIsCountedFromTheOrigin() {
    Formers every =
        new Formers(
            List.of(new Former("low", Made.mm(100.2), Optional.empty(), Optional.empty())),
            List.of(),
            Optional.of(Made.mm(100)),
            Made.mm(9),
            Optional.empty(),
            Optional.of(Made.mm(1)),
            List.of());
    Part block = block(every);
    assertThat(FormerCuts.of(block, Made.PLACES))
        .extracting(FormerCut::name)
        .containsExactly("low", "former 3");
    assertThat(FormerCuts.of(block, Made.PLACES))
        .extracting(FormerCut::placeMm)
        .containsExactly(100.2, 200.0);
    // those at the ends would lie in the walls
    assertThat(FormerFaults.of(block, Made.PLACES))
        .extracting(FormerFaults.Fault::of)
        .containsExactly("former 1", "former 4");
  }
}

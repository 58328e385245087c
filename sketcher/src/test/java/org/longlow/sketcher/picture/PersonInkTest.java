package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.study.Study;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.HandContact;
import org.longlow.rider.pose.HeadTarget;
import org.longlow.rider.pose.PoseSolver;
import org.longlow.rider.pose.RiderWidth;
import org.longlow.svg.drawing.Mark;

/** People as drawn, against the flesh that gaps are measured to. */
class PersonInkTest {

  /** Between the places where the flesh is asked, smooth lines leave it by no more than this. */
  private static final double LINE_MM = 6;

  /** How far the drawn may stay behind the flesh: in the hollow of a folded knee, under the rim. */
  private static final double FLESH_MM = 21;

  /** Short and tall, both sexes, upright to 60 degrees, in gear and without. */
  private static List<Manikin> people() {
    SplittableRandom random = new SplittableRandom(20261130);
    List<Manikin> people = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      Body body =
          Body.of(
              random.nextBoolean() ? Sex.MALE : Sex.FEMALE,
              random.nextDouble(1500, 1980),
              random.nextDouble(50, 115),
              random.nextBoolean() ? Gear.NONE : Gear.RIDING);
      PointMm foot = new PointMm(random.nextDouble(900, 1350), random.nextDouble(150, 600));
      FootContact contact =
          random.nextBoolean()
              ? new FootContact.BallOnPeg(foot)
              : new FootContact.Footboard(foot, foot.plus(new PointMm(250, 120)));
      PointMm grip = new PointMm(random.nextDouble(700, 950), random.nextDouble(620, 850));
      people.add(
          Manikin.of(
              "p" + i,
              "rider",
              body,
              PoseSolver.solve(
                      body,
                      new PointMm(400, 480),
                      Math.toRadians(random.nextDouble(0, 60)),
                      new HeadTarget.Gaze(),
                      contact,
                      new HandContact.Grip(grip),
                      RiderWidth.DEFAULT)
                  .posture()));
    }
    return people;
  }

  private static List<Geometry> drawn(Manikin m) {
    Canvas canvas = new Canvas(1);
    PersonInk.seated(canvas, m);
    return canvas.marks(PictureLayer.PERSON).stream()
        .map(mark -> ((Mark.Shape) mark).geometry())
        .toList();
  }

  @Test
  void nothingIsDrawnOutsideTheFleshAndNoneOfItIsLeftOut() {
    for (Manikin m : people()) {
      Geometry flesh = UnaryUnionOp.union(m.flesh().values());
      Geometry wide = flesh.buffer(14).buffer(LINE_MM - 14);
      List<Geometry> areas = new ArrayList<>();
      for (Geometry g : drawn(m)) {
        assertThat(wide.covers(g))
            .as(() -> m.name() + ": " + g.difference(wide) + " of " + g)
            .isTrue();
        if (g.getDimension() == 2) {
          areas.add(g.buffer(0));
        }
      }
      Geometry left = flesh.difference(UnaryUnionOp.union(areas).buffer(FLESH_MM));
      assertThat(left.getArea()).as(() -> m.name() + " at " + left).isLessThan(1);
    }
  }

  @Test
  void theHelmetHoldsTheHeadAndTheFistTheGrip() {
    for (Manikin m : people()) {
      PointMm c = m.joints().headCentre();
      if (m.helmet()) {
        double bare = 0.5 * m.body().measures().get("headlength");
        assertThat(HeadInk.shell(m).contains(Curves.disc(c, bare))).as(m.name()).isTrue();
      }
      PointMm grip = m.joints().grip();
      Geometry fist = PersonInk.fist(m);
      // a grip of 32 mm, and half a hand's breadth of fingers before it
      assertThat(fist.buffer(0).contains(Curves.disc(grip, 16))).as(m.name()).isTrue();
      assertThat(fist.distance(Curves.line(List.of(grip, grip.plus(new PointMm(0, 1)))))).isZero();
      PointMm ahead = grip.minus(m.joints().wrist());
      PointMm tip = grip.plus(ahead.times(60 / ahead.length()));
      assertThat(fist.distance(Curves.disc(tip, 1))).as(m.name()).isBetween(5.0, 40.0);
    }
  }

  @Test
  void farLimbsShowBesideNearOnes() {
    for (Manikin m : people()) {
      for (List<Limb> pair :
          List.of(
              List.of(Limb.leg(m, 0), Limb.leg(m, Limb.FAR_MM)),
              List.of(Limb.arm(m, 0), Limb.arm(m, Limb.FAR_MM)))) {
        Geometry far = Curves.line(pair.get(0).outer());
        Geometry near = Curves.line(pair.get(1).outer());
        assertThat(DiscreteHausdorffDistance.distance(far, near))
            .as(m.name())
            .isBetween(0.9 * Limb.FAR_MM, 1.6 * Limb.FAR_MM);
        assertThat(pair.get(0).inner()).isEqualTo(pair.get(1).inner());
      }
    }
  }

  static Stream<Study> machines() {
    return Stream.concat(Stream.of(Plover.study()), Shipped.studies());
  }

  @ParameterizedTest
  @MethodSource("machines")
  void solesTouchWhatTheyRestOnAndHandsAreRoundTheirGrips(Study study) {
    int feet = 0;
    for (var sitting : study.sittings()) {
      if (sitting.posture().isEmpty() || !sitting.seated().get().pose().shortfalls().isEmpty()) {
        continue;
      }
      Manikin m = Scenes.manikin(sitting).orElseThrow();
      for (RestPart rest : study.layout().parts(RestPart.class).toList()) {
        if (!rest.seat().equals(sitting.seat()) || rest.type() == RestPart.Kind.HANDHOLD) {
          continue;
        }
        Geometry outline = study.shapes().get(rest.name()).outline();
        if (rest.type().limb() == RestPart.Limb.FOOT) {
          feet++;
          Geometry sole = Boot.of(m, Limb.FAR_MM).sole();
          assertThat(sole.distance(outline)).as(m.name() + " on " + rest.name()).isLessThan(0.5);
          assertThat(sole.intersection(outline.buffer(-1)).getArea())
              .as(m.name() + " in " + rest.name())
              .isLessThan(0.02 * sole.getArea());
        } else {
          PointMm grip = study.placed().places().pin(rest.at());
          assertThat(m.joints().grip().distance(grip)).isLessThan(0.5);
          assertThat(PersonInk.fist(m).buffer(0).contains(outline)).as(m.name()).isTrue();
        }
      }
    }
    assertThat(feet).isPositive();
  }
}

package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.lock.Steered;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;

/** The machine leaned and steered by hand, against what the findings say and rotations by hand. */
class LeanedViewTest {

  /** A shipped machine asked for so much lock that its bars meet somebody. */
  private static final Study HERON = study();

  private static Study study() {
    String asked = "\"demands\": {\"lock\": \"60 deg\", ";
    String file = Demos.text("heron").replace("\"demands\": {", asked);
    ReadResult read = LayoutReader.read(file, Path.of("."));
    return Study.of(((ReadResult.Read) read).layout());
  }

  private static PictureOptions seen(Aspect aspect, Moved moved) {
    return PictureOptions.PLAIN.withAspect(aspect).withMoved(Optional.of(moved));
  }

  private static Standing laden() {
    return ElevationPicture.standing(HERON, PictureOptions.PLAIN).orElseThrow();
  }

  private static Eye eye(PictureOptions options) {
    return Pictures.eye(
        HERON, options, ElevationPicture.standing(HERON, options).orElseThrow().ground());
  }

  private static Envelope box(Drawing drawing, String subject) {
    Envelope box = new Envelope();
    drawing.layers().stream()
        .filter(l -> !l.id().equals(PictureLayer.FINDINGS.id()))
        .flatMap(l -> l.marks().stream())
        .filter(m -> m instanceof Mark.Shape && m.subject().equals(subject))
        .forEach(m -> box.expandToInclude(((Mark.Shape) m).geometry().getEnvelopeInternal()));
    return box;
  }

  private static Moved leaned(Touch touch, double share) {
    return new Moved.ByTurn(share * Math.toRadians(touch.deg()) * (touch.left() ? 1 : -1));
  }

  private static PictureOptions front(Touch touch, double share) {
    return PictureOptions.PLAIN
        .withStance(touch.stance())
        .withAspect(Aspect.FRONT)
        .withMoved(Optional.of(leaned(touch, share)));
  }

  @Test
  void whatTheFindingsSayTouchesIsOnTheRoadAtThatLean() {
    List<Touch> all = Touch.lean(HERON.findings());
    assertThat(all).hasSizeGreaterThan(4);
    assertThat(all).anyMatch(Touch::left).anyMatch(t -> !t.left());
    for (Touch touch : all) {
      PointMm at = eye(front(touch, 1)).page(touch.where(), touch.yMm());
      assertThat(at.z()).as(touch.words()).isCloseTo(0, within(0.01));
      PointMm before = eye(front(touch, 0.9)).page(touch.where(), touch.yMm());
      assertThat(before.z()).as(touch.words()).isGreaterThan(1);
    }
  }

  @Test
  void theFirstPartThatTouchesIsDrawnOnTheRoadAndTheTyresToo() {
    Touch first =
        Touch.lean(HERON.findings()).stream()
            .filter(t -> !t.what().startsWith("a limb"))
            .findFirst()
            .orElseThrow();
    Drawing drawing = Pictures.of(HERON, front(first, 1));
    assertThat(box(drawing, "part:" + first.what()).getMinY()).isCloseTo(0, within(0.2));
    for (WheelPart wheel : HERON.layout().parts(WheelPart.class).toList()) {
      // bodies of tyres hold a little more than the round tread
      assertThat(box(drawing, "part:" + wheel.name()).getMinY())
          .as(wheel.name())
          .isCloseTo(0, within(1.0));
    }
  }

  @Test
  void leanedToTheLeftItGoesToTheRightOfThePage() {
    double head = headAcross(new Moved.ByTurn(Math.toRadians(20)));
    assertThat(head).isGreaterThan(200);
    assertThat(headAcross(new Moved.ByTurn(Math.toRadians(-20)))).isCloseTo(-head, within(2.0));
  }

  private static double headAcross(Moved moved) {
    return box(Pictures.of(HERON, seen(Aspect.FRONT, moved)), "person:" + rider()).centre().x;
  }

  private static String rider() {
    return laden().condition().aboard().get(0).person();
  }

  /** A point of the front turned about the steering axis by hand (Rodrigues). */
  @Test
  void steeringTurnsTheFrontWheelAboutItsAxis() {
    double rad = Math.toRadians(25);
    Study s = HERON;
    var fork = s.layout().parts(FrontPart.class).findFirst().get();
    Standing laden = laden();
    PointMm a = laden.places().pin(fork.bottom());
    PointMm b = laden.places().pin(fork.top());
    PointMm u = b.minus(a).times(1 / b.distance(a));
    PointMm axle = laden.places().pin(fork.axle()).minus(a);
    double along = axle.x() * u.x() + axle.z() * u.z();
    double[] out = {axle.x() - along * u.x(), axle.z() - along * u.z()};
    // u x out points along y; a turn to the left takes what is ahead to the left
    double ahead = out[0] * u.z() - out[1] * u.x();
    PointMm turned = a.plus(u.times(along)).plus(new PointMm(out[0], out[1]).times(Math.cos(rad)));
    PointMm wanted =
        eye(seen(Aspect.PLAN, new Moved.BySteering(0))).page(turned, ahead * Math.sin(rad));
    Drawing drawing = Pictures.of(s, seen(Aspect.PLAN, new Moved.BySteering(rad)));
    String wheel = "part:" + s.layout().wheel(Part.End.FRONT).get().name();
    Coordinate middle = box(drawing, wheel).centre();
    assertThat(middle.x).isCloseTo(wanted.x(), within(0.5));
    assertThat(middle.y).isCloseTo(wanted.z(), within(0.5));
    assertThat(middle.y).as("ahead of the axis, to the left").isGreaterThan(0);
  }

  @Test
  void whatMeetsAtLockMeetsOnThePlan() {
    List<Touch> all = Touch.steer(HERON.findings());
    assertThat(all).isNotEmpty();
    for (Touch touch : all) {
      PictureOptions options =
          PictureOptions.PLAIN
              .withStance(touch.stance())
              .withAspect(Aspect.PLAN)
              .withMoved(
                  Optional.of(
                      new Moved.BySteering(Math.toRadians(touch.deg()) * (touch.left() ? 1 : -1))));
      PointMm at = eye(options).page(touch.where(), touch.yMm());
      Geometry spot = Planar.FACTORY.createPoint(new Coordinate(at.x(), at.z()));
      Scene scene = Scenes.of(HERON, options);
      Steered steered =
          Steered.of(HERON.layout(), scene.front().get(), scene.places()).orElseThrow();
      AspectBodies bodies = new AspectBodies(scene, List.of(), Map.of(), Aspect.PLAN);
      List<AspectBodies.Body> turned =
          bodies.all().stream()
              .filter(b -> touch.what().contains(name(b)) && steered.turns(name(b)))
              .toList();
      assertThat(turned).as(touch.words()).hasSize(1);
      assertThat(turned.get(0).seen().outline().distance(spot)).as(touch.words()).isLessThan(1);
    }
  }

  private static String name(AspectBodies.Body body) {
    return body.thing().subject().substring("part:".length());
  }

  @Test
  void asDrawnAndUnladenItIsSeenUpright() {
    PictureOptions options =
        PictureOptions.PLAIN
            .withStance(Optional.of(Condition.empty(Stance.Kind.UNLADEN)))
            .withAspect(Aspect.FRONT);
    PointMm contact = eye(options).page(new PointMm(0, 0), 120);
    assertThat(contact.x()).isCloseTo(120, within(1e-9));
  }
}

package org.longlow.constraints.check.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.check.rule.LampView.Seen;
import org.longlow.constraints.check.rule.LampView.View;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.law.FieldOfView;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.layout.LampPart.Colour;
import org.longlow.constraints.layout.LampPart.Kind;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.PointMm;

/** How far lamps are seen, against closed forms and single rays. */
class LampViewsTest {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** A level road whose rear contact is the origin. */
  private static final Ground LEVEL = new Ground(PointMm.ORIGIN, new PointMm(1500, 0));

  private static final FieldOfView WIDE = new FieldOfView(45, 80, 15, 10, List.of());

  private static final double FINE = 1e-6;

  record Box(double x0, double x1, double y0, double y1, double z0, double z1) {

    PartShape shape(String name) {
      Geometry outline = FACTORY.toGeometry(new Envelope(x0, x1, z0, z1));
      PartBase base =
          new PartBase(name, Optional.empty(), Optional.empty(), "", false, false, List.of(), "");
      Formula none = Formula.of(0, Unit.MM);
      Part part =
          new StandPart(
              base, StandPart.Kind.SIDE, "o", "o", "o", none, none, none, Optional.empty());
      return new PartShape(
          part, outline, List.of(new Prism(outline, new Interval(y0, y1))), 1, PointMm.ORIGIN, 0);
    }

    /** The same as the sheet of a cowl. */
    PartShape sheet(String name) {
      PartShape solid = shape(name);
      Formula none = Formula.of(0, Unit.MM);
      Part part =
          new ShellPart(solid.part().base(), ShellPart.Kind.COWL, null, null, null, none, false);
      return new PartShape(part, solid.outline(), solid.prisms(), 1, PointMm.ORIGIN, 0);
    }

    /** Whether a ray from a point meets it, slab by slab. */
    boolean met(double[] from, double[] way) {
      double near = 0;
      double far = Double.POSITIVE_INFINITY;
      double[] low = {x0, y0, z0};
      double[] high = {x1, y1, z1};
      for (int k = 0; k < 3; k++) {
        double a = (low[k] - from[k]) / way[k];
        double b = (high[k] - from[k]) / way[k];
        near = Math.max(near, Math.min(a, b));
        far = Math.min(far, Math.max(a, b));
      }
      return near <= far;
    }

    Box mirrored() {
      return new Box(x0, x1, -y1, -y0, z0, z1);
    }
  }

  private static final List<String> NAMES = List.of("one", "two", "three");

  private static LampItem lamp(Kind kind, double x, double y, double z) {
    return new LampItem("it", false, kind, Colour.RED, x > 750, x, y, z, 30, 20, false);
  }

  private static View view(LampItem lamp, FieldOfView field, List<Box> boxes) {
    return view(lamp, field, boxes, false);
  }

  private static View view(LampItem lamp, FieldOfView field, List<Box> boxes, boolean meant) {
    return seen(lamp, field, boxes, meant).centre();
  }

  private static Seen seen(LampItem lamp, FieldOfView field, List<Box> boxes, boolean meant) {
    List<PartShape> shapes = new ArrayList<>();
    for (int i = 0; i < boxes.size(); i++) {
      shapes.add(boxes.get(i).shape(NAMES.get(i)));
    }
    return new LampViews(shapes, (a, b) -> meant, LEVEL, List.of(field)).of(lamp).seen(field);
  }

  @Test
  void nothingHidesALampThatHasNothingBeforeIt() {
    Box beside = new Box(1000, 1500, 50, 90, 0, 900);
    View view = view(lamp(Kind.HEADLAMP, 1500, 0, 700), WIDE, List.of(beside));
    assertThat(view.out()).isEqualTo(89);
    assertThat(view.in()).isEqualTo(55);
    assertThat(view.outBy()).isEmpty();
    assertThat(view.inBy()).isEmpty();
  }

  /** A wall to 220 mm ahead that begins 120 mm to the left: atan(120 / 220) = 28.610 degrees. */
  @Test
  void aWallHidesFromTheAngleToItsEdgeOn() {
    Box wall = new Box(1700, 1720, 120, 400, 0, 2000);
    View view = view(lamp(Kind.HEADLAMP, 1500, 0, 700), WIDE, List.of(wall));
    assertThat(view.out()).isCloseTo(Math.toDegrees(Math.atan2(120, 220)), within(FINE));
    assertThat(view.outBy()).isEqualTo(NAMES.get(0));
    assertThat(view.inBy()).isEmpty();
    // to the rear the same wall behind hides the same side
    Box behind = new Box(-220, -200, 120, 400, 0, 2000);
    View tail = view(lamp(Kind.TAIL, 0, 0, 700), WIDE, List.of(behind));
    assertThat(tail.out()).isCloseTo(view.out(), within(1e-9));
    // of a lamp on the right the left is inwards
    View right = view(lamp(Kind.TAIL, 0, -10, 700), WIDE, List.of(behind));
    assertThat(right.in()).isCloseTo(Math.toDegrees(Math.atan2(130, 220)), within(FINE));
    assertThat(right.outBy()).isEmpty();
  }

  /**
   * A sill across the way at a distance d and h below the centre: a ray v below the level is d tan
   * v / cos a lower there, so it meets the sill from cos a = d tan v / h on.
   */
  @Test
  void aSillBelowHidesWhereTheLowestRayHasSunkToIt() {
    double d = 300;
    double h = 80;
    Box sill = new Box(1500 + d - 1, 1500 + d, -3000, 3000, 0, 700 - h);
    View view = view(lamp(Kind.HEADLAMP, 1500, 0, 700), WIDE, List.of(sill));
    double sinks = Math.toDegrees(Math.acos(d * Math.tan(Math.toRadians(10)) / h));
    assertThat(view.out()).isCloseTo(sinks, within(FINE));
    Box lower = new Box(1500, 1500 + d, -3000, 3000, 0, 700 - 4000);
    assertThat(view(lamp(Kind.HEADLAMP, 1500, 0, 700), WIDE, List.of(lower)).outBy()).isEmpty();
  }

  /** Where a lamp is low, less is asked below the level. */
  @Test
  void aLowLampIsAskedLessDown() {
    FieldOfView field = new FieldOfView(45, 45, 15, 15, List.of(new FieldOfView.Low(5, 750)));
    // 300 mm ahead, 60 mm below: met by 11.3 degrees, passed by 5
    Box low = new Box(1800, 1801, -100, 100, 0, 640);
    assertThat(view(lamp(Kind.HEADLAMP, 1500, 0, 700), field, List.of(low)).outBy()).isEmpty();
    Box high = new Box(1800, 1801, -100, 100, 0, 740);
    assertThat(view(lamp(Kind.HEADLAMP, 1500, 0, 800), field, List.of(high)).out()).isZero();
  }

  @Test
  void aSideReflectorLooksSideways() {
    LampItem reflector = lamp(Kind.SIDE_REFLECTOR, 200, -150, 500);
    Box ahead = new Box(260, 300, -400, -280, 0, 900);
    View view = view(reflector, WIDE, List.of(ahead));
    // its face is 180 mm out, so the edge ahead is 220 mm farther out where it stands 60 mm before
    assertThat(view.out()).isCloseTo(Math.toDegrees(Math.atan2(60, 220)), within(FINE));
    assertThat(view.inBy()).isEmpty();
  }

  @Test
  void aLampIsFlushWithWhatItIsLetInto() {
    Box cowl = new Box(1300, 1530, -200, 200, 500, 900);
    LampItem head = lamp(Kind.HEADLAMP, 1500, 0, 700);
    Seen let = seen(head, WIDE, List.of(cowl), true);
    assertThat(let.letInMm()).isCloseTo(30, within(0.2));
    assertThat(let.holder()).isEqualTo(NAMES.get(0));
    assertThat(let.centre().outBy()).isEmpty();
    Seen buried = seen(head, WIDE, List.of(cowl), false);
    assertThat(buried.centre().out()).isZero();
    assertThat(buried.letInMm()).isZero();
    // a sheet before the lamp, whose opening is as deep as the gap to it
    Box sheet = new Box(1520, 1523, -200, 200, 500, 900);
    assertThat(open(head, sheet).letInMm()).isCloseTo(23, within(0.2));
    assertThat(view(head, WIDE, List.of(sheet), false).out()).isZero();
    // what stands too far before it cannot have an opening for it
    Box far = new Box(1650, 1653, -200, 200, 500, 900);
    assertThat(open(head, far).centre().out()).isZero();
    // a box that stands before it hides it, whatever it may touch
    assertThat(view(head, WIDE, List.of(sheet), true).out()).isZero();
    Box meets = new Box(1504, 1530, -200, 200, 500, 900);
    assertThat(seen(head, WIDE, List.of(meets), true).letInMm()).isCloseTo(30, within(0.2));
  }

  private static Seen open(LampItem lamp, Box sheet) {
    List<PartShape> shapes = List.of(sheet.sheet(NAMES.get(0)));
    return new LampViews(shapes, (a, b) -> true, LEVEL, List.of(WIDE)).of(lamp).seen(WIDE);
  }

  /** A lip under the face stands out farther than the surface at its centre. */
  @Test
  void theWholeFaceIsClearOfWhatItIsLetInto() {
    LampItem head = lamp(Kind.HEADLAMP, 1500, 0, 700);
    Box wall = new Box(1300, 1510, -200, 200, 500, 900);
    Box lip = new Box(1300, 1525, -200, 200, 500, 685);
    Seen seen = seen(head, WIDE, List.of(wall, lip), true);
    assertThat(seen.letInMm()).isCloseTo(25, within(0.2));
    assertThat(seen.holder()).isEqualTo(NAMES.get(1));
    assertThat(seen.centre().outBy()).isEmpty();
    assertThat(seen.edgeBy()).isEmpty();
  }

  /** Random boxes against rays each half a degree across and up. */
  @Test
  void agreesWithSingleRays() {
    Random random = new Random(20);
    int hidden = 0;
    for (int n = 0; n < 60; n++) {
      List<Box> boxes = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        double x = 1510 + 500 * random.nextDouble();
        double y = -400 + 600 * random.nextDouble();
        double z = 400 + 500 * random.nextDouble();
        boxes.add(
            new Box(
                x,
                x + 5 + 60 * random.nextDouble(),
                y,
                y + 5 + 200 * random.nextDouble(),
                z,
                z + 5 + 200 * random.nextDouble()));
      }
      LampItem head = lamp(Kind.HEADLAMP, 1500, 20, 700);
      View view = view(head, WIDE, boxes);
      double left = byRays(head, boxes, 1, 89);
      double right = byRays(head, boxes, -1, 55);
      // rays may pass by what lies between two of them, and what is found lies up to one step
      // nearer
      assertThat(view.out()).isBetween(left - 0.51, left + FINE);
      assertThat(view.in()).isBetween(right - 0.51, right + FINE);
      hidden += view.out() < 89 ? 1 : 0;
      List<Box> other = boxes.stream().map(Box::mirrored).toList();
      View mirrored = view(head.mirrored(), WIDE, other);
      assertThat(mirrored.out()).isCloseTo(view.out(), within(1e-9));
      assertThat(mirrored.in()).isCloseTo(view.in(), within(1e-9));
      Collections.shuffle(boxes, random);
      assertThat(view(head, WIDE, boxes).out()).isEqualTo(view.out());
    }
    assertThat(hidden).isBetween(20, 59);
  }

  private static double byRays(LampItem lamp, List<Box> boxes, int side, double to) {
    double[] from = {lamp.xMm(), lamp.yMm(), lamp.zMm()};
    for (double across = 0; across < to; across += 0.5) {
      for (double up = -10; up <= 15; up += 0.5) {
        double a = Math.toRadians(across);
        double u = Math.toRadians(up);
        double[] way = {Math.cos(u) * Math.cos(a), side * Math.cos(u) * Math.sin(a), Math.sin(u)};
        if (boxes.stream().anyMatch(b -> b.met(from, way))) {
          return across;
        }
      }
    }
    return to;
  }
}

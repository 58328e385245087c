package org.longlow.constraints.check.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Opens;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.machine.linkage.MotionRate;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.machine.section.GasLaw;
import org.longlow.constraints.machine.section.SectionForces;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Sections;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * A section with all that moves it, in place.
 *
 * @param name of the section
 * @param opens what is said of how it opens
 * @param forces on it
 * @param grip where a hand takes hold, shut
 * @param gripWords the same in words
 * @param parts that move
 */
record Opener(
    String name,
    Opens opens,
    SectionForces forces,
    PointMm grip,
    String gripWords,
    List<String> parts) {

  /** A section that moves no farther than this where it moves most is not opened, mm. */
  private static final double LEAST_WAY_MM = 1;

  private static final PointMm LEVEL_DOWN = new PointMm(0, -1);

  /**
   * Returns a section of which it is said how it opens; empty for one that cannot move.
   *
   * @param ground the road under the machine with nobody aboard, if it stands on one
   */
  static Optional<Opener> of(
      String name,
      Layout layout,
      Places places,
      Map<String, PartShape> shapes,
      Optional<Ground> ground) {
    Section section = layout.sections().get(name);
    Opens opens = section.opens();
    SectionMotion motion;
    try {
      motion = Sections.motion(section, places);
    } catch (OutOfRange e) {
      return Optional.empty(); // that it cannot open is said already
    }
    List<PartShape> moved =
        section.parts().stream().filter(shapes::containsKey).map(shapes::get).toList();
    double mass = 0;
    PointMm moment = PointMm.ORIGIN;
    for (PartShape shape : moved) {
      mass += shape.massKg();
      moment = moment.plus(shape.centre().times(shape.massKg()));
    }
    Optional<PointMm> named = opens.grip().map(places::pin).filter(p -> moves(motion, p));
    Optional<PointMm> grip = named.or(() -> farEnd(motion, moved));
    if (grip.isEmpty() || !moves(motion, grip.get())) {
      return Optional.empty();
    }
    PointMm down = ground.map(g -> g.along().left().times(-1)).orElse(LEVEL_DOWN);
    SectionForces forces =
        new SectionForces(
            motion,
            mass,
            mass > 0 ? moment.times(1 / mass) : grip.get(),
            down,
            gas(opens, places),
            weights(opens, places));
    String words =
        named.isPresent()
            ? "at " + opens.grip().orElseThrow()
            : "at its far end" + opens.grip().map(g -> " (" + g + " stands still)").orElse("");
    return Optional.of(new Opener(name, opens, forces, grip.get(), words, section.parts()));
  }

  private static boolean moves(SectionMotion motion, PointMm point) {
    return motion.rate(0).of(point).length() >= LEAST_WAY_MM;
  }

  /** The point of what moves that goes off fastest: a hand there has the longest lever. */
  private static Optional<PointMm> farEnd(SectionMotion motion, List<PartShape> moved) {
    MotionRate rate = motion.rate(0);
    PointMm far = null;
    for (PartShape shape : moved) {
      for (Coordinate c : shape.outline().getCoordinates()) {
        PointMm p = new PointMm(c.x, c.y);
        if (far == null || rate.of(p).length() > rate.of(far).length()) {
          far = p;
        }
      }
    }
    return Optional.ofNullable(far);
  }

  private static List<SectionForces.Gas> gas(Opens opens, Places places) {
    List<SectionForces.Gas> all = new ArrayList<>();
    opens
        .gasSprings()
        .forEach(
            g ->
                all.add(
                    new SectionForces.Gas(
                        places.pin(g.frame()),
                        places.pin(g.section()),
                        new GasLaw(
                            places.value(g.force()),
                            places.value(g.length()),
                            places.value(g.stroke()),
                            g.progression().map(places::value).orElse(GasLaw.PROGRESSION),
                            g.count()))));
    return all;
  }

  private static List<SectionForces.Weight> weights(Opens opens, Places places) {
    List<SectionForces.Weight> all = new ArrayList<>();
    opens
        .counterweights()
        .forEach(
            w ->
                all.add(
                    new SectionForces.Weight(
                        places.pin(w.section()),
                        w.pulley().map(places::pin),
                        places.value(w.mass()))));
    return all;
  }

  /** How far open it is held, as a share of the way. */
  double held(Places places) {
    return opens.holds().map(places::value).orElse(1.0);
  }

  SectionMotion motion() {
    return forces.motion();
  }
}

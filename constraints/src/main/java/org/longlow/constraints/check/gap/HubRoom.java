package org.longlow.constraints.check.gap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Gaps;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.HubBody;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Hubs;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;

/**
 * What a body that turns about an axle comes too near of other parts and people, as drawn and in
 * every stance that moves either. What shares the axle is told beside the legs.
 */
final class HubRoom {

  /** A body about an axle somewhere. */
  private record Hub(String wheel, PointMm axle, double radiusMm, Interval across) {

    Solid solid() {
      return new Solid(wheel, List.of(Hubs.of(axle, radiusMm, across)));
    }
  }

  /** Most edits leave wheels where they are, and gaps know bodies by identity. */
  private static final Memo<Hub, Solid> BODIES = new Memo<>(128, Hub::solid);

  private final Layout layout;
  private final GapRules rules;
  private final Places drawn;
  private final Map<String, PartShape> shapes;
  private final List<Sitting> sittings;
  private final List<Standing> standings;
  private final double mostMm;

  /**
   * What is nearer than it may be.
   *
   * @param stance empty as drawn
   */
  record Near(String other, double mm, double askedMm, Basis basis, Optional<Condition> stance) {

    private double marginMm() {
      return mm - askedMm;
    }
  }

  HubRoom(
      Layout layout,
      GapRules rules,
      Places drawn,
      Map<String, PartShape> shapes,
      List<Sitting> sittings,
      List<Standing> standings) {
    this.layout = layout;
    this.rules = rules;
    this.drawn = drawn;
    this.shapes = shapes;
    this.sittings = sittings;
    this.standings = standings;
    mostMm = rules.largestMm(0);
  }

  /** Returns what lacks most; empty where nothing is too near. */
  Optional<Near> nearest(WheelPart wheel, HubBody body) {
    Near worst = in(wheel, body, drawn, shapes, Optional.empty(), null);
    for (Standing s : standings) {
      if (s.kind() != Stance.Kind.OPEN && s.moved().containsKey(wheel.name())) {
        worst = in(wheel, body, s.places(), s.shapes(), Optional.of(s.condition()), worst);
      }
    }
    return Optional.ofNullable(worst);
  }

  private Near in(
      WheelPart wheel,
      HubBody body,
      Places places,
      Map<String, PartShape> all,
      Optional<Condition> stance,
      Near known) {
    Hub hub =
        new Hub(
            wheel.name(),
            places.pin(wheel.axle()),
            places.value(body.radius()),
            Hubs.across(body, places));
    Solid solid = BODIES.of(hub);
    Near worst = known;
    for (PartShape shape : all.values()) {
      Part part = shape.part();
      if (near(hub, shape) && !part.equals(wheel) && rules.mayNotTouch(wheel.name(), part.name())) {
        double asked = rules.limitMm(wheel.name(), part.name(), Demands.Key.GAP);
        Basis basis = rules.source(wheel.name(), part.name(), Demands.Key.GAP);
        worst = worse(worst, solid, Solid.of(shape), part.name(), asked, basis, stance);
      }
    }
    double asked = rules.limitMm(wheel.name(), GapRules.RIDER, Demands.Key.PERSON_GAP);
    Basis basis = Sources.of(layout, Demands.Key.PERSON_GAP);
    for (Sitting sitting : sittings) {
      Optional<Solid> person = PersonBody.all(sitting);
      if (person.isPresent() && rules.clearOfPeople(wheel.name())) {
        String who = sitting.occupant().words();
        worst = worse(worst, solid, person.get(), who, asked, basis, stance);
      }
    }
    return worst;
  }

  /** Most parts are far off. */
  private boolean near(Hub hub, PartShape shape) {
    Envelope part = shape.outline().getEnvelopeInternal();
    double mm = hub.radiusMm + mostMm;
    return part.getMinX() - hub.axle.x() < mm
        && hub.axle.x() - part.getMaxX() < mm
        && part.getMinY() - hub.axle.z() < mm
        && hub.axle.z() - part.getMaxY() < mm
        && -shape.rightMm() < hub.across.to() + mostMm
        && shape.leftMm() > hub.across.from() - mostMm;
  }

  private static Near worse(
      Near worst,
      Solid hub,
      Solid other,
      String name,
      double asked,
      Basis basis,
      Optional<Condition> stance) {
    for (Gap gap : Gaps.between(List.of(hub), List.of(other), asked, (a, b) -> asked)) {
      if (worst == null || gap.gapMm() - asked < worst.marginMm()) {
        return new Near(name, gap.gapMm(), asked, basis, stance);
      }
    }
    return worst;
  }
}

package org.longlow.constraints.check.gap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.HubBody;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Hubs;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;

/**
 * What a body that turns about an axle comes too near of other parts and people, as drawn and in
 * every stance that moves either. What shares the axle is told beside the legs.
 */
final class HubRoom {

  private final Layout layout;
  private final GapRules rules;
  private final Places drawn;
  private final Map<String, PartShape> shapes;
  private final List<Sitting> sittings;
  private final List<Standing> standings;

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
    Prism hub = Hubs.of(body, places.pin(wheel.axle()), places);
    Solid solid = new Solid(wheel.name(), List.of(hub));
    Near worst = known;
    for (PartShape shape : all.values()) {
      Part part = shape.part();
      if (part.equals(wheel) || !rules.mayNotTouch(wheel.name(), part.name())) {
        continue;
      }
      double asked = rules.limitMm(wheel.name(), part.name(), Demands.Key.GAP);
      if (near(hub, shape, asked)) {
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
  private static boolean near(Prism hub, PartShape shape, double mm) {
    Envelope box = new Envelope(hub.outline().getEnvelopeInternal());
    box.expandBy(mm);
    return box.intersects(shape.outline().getEnvelopeInternal())
        && -shape.rightMm() < hub.across().to() + mm
        && shape.leftMm() > hub.across().from() - mm;
  }

  private static Near worse(
      Near worst,
      Solid hub,
      Solid other,
      String name,
      double asked,
      Basis basis,
      Optional<Condition> stance) {
    Gap gap = hub.to(other, worst == null ? asked : Math.min(asked, asked + worst.marginMm()));
    return gap == null ? worst : new Near(name, gap.gapMm(), asked, basis, stance);
  }
}

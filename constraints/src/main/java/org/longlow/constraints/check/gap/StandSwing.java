package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.gap.Fouling;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.gap.Sweep;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.machine.linkage.Hinge;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * What the leg of a stand meets between stowed and parked, the machine as drawn. At both ends it is
 * held to its gaps as every part is.
 */
public final class StandSwing {

  /** What comes near to something where it swings, the road or a part. */
  public static final FindingKind SWUNG =
      new FindingKind("swung", FindingGroup.CLEARANCE, Rests.ON_MASSES);

  private static final Basis HOW =
      Basis.model(
          Words.of(
              "the leg turned about its pivot the short way, gaps to within ",
              Say.mm(Sweep.BOUND_MM)));

  private final Layout layout;
  private final GapRules rules;
  private final GapFindings parts;
  private final JointFindings joints;
  private final Places places;

  /**
   * @param parts all of them as drawn
   */
  public StandSwing(Layout layout, GapRules rules, GapFindings parts, JointFindings joints) {
    this.layout = layout;
    this.rules = rules;
    this.parts = parts;
    this.joints = joints;
    this.places = rules.places();
  }

  public List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    for (StandPart stand : layout.parts(StandPart.class).toList()) {
      PointMm pivot = places.pin(stand.pivot());
      PointMm stowed = places.pin(stand.stowed()).minus(pivot);
      PointMm foot = places.pin(stand.foot()).minus(pivot);
      Hinge way = new Hinge(pivot, Math.atan2(stowed.cross(foot), stowed.dot(foot)));
      for (Solid other : parts.drawn()) {
        if (rules.mayNotTouch(stand.name(), other.name())) {
          past(stand, way, other).ifPresent(findings::add);
        }
      }
      for (GapRules.Joint joint : rules.joints()) {
        joined(stand, way, joint).ifPresent(findings::add);
      }
    }
    return findings;
  }

  private Optional<Finding> past(StandPart stand, Hinge way, Solid other) {
    String name = other.name();
    double curves = CurveCare.mm(layout, stand.name(), name);
    Demands.Key demand = rules.demand(stand.name(), name);
    double limit = rules.limitMm(stand.name(), name, demand);
    boolean wheel = layout.parts().get(name).traits().duty().atWheel();
    List<Fouling.Remedy> remedies = wheel ? List.of() : List.of(Fouling.Remedy.SHIFT_OTHER);
    return Fouling.of(way, parts.drawn(stand.name()), other, limit + curves, remedies)
        .filter(f -> f.worst() > 0 && f.worst() < 1)
        .map(
            f ->
                finding(
                    About.parts(stand.name(), name),
                    f,
                    limit,
                    rules.source(stand.name(), name, demand),
                    f.shift().isPresent() || f.across().isPresent()
                        ? Words.of(
                            Advice.ways(stand.name(), name, name, f),
                            ", or hinge the leg elsewhere")
                        : Words.of("hinge the leg elsewhere, or give it another length")))
        .map(f -> CurveCare.held(f, curves));
  }

  /** What it hinges on is in its way beyond their joint. */
  private Optional<Finding> joined(StandPart stand, Hinge way, GapRules.Joint joint) {
    boolean first = joint.a().equals(stand.name());
    if (!first && !joint.b().equals(stand.name())) {
      return Optional.empty();
    }
    String other = first ? joint.b() : joint.a();
    List<PointMm> pins = joint.pins().stream().map(places::pin).toList();
    double reach = joints.reachMm(stand, layout.parts().get(other));
    Solid leg = parts.drawn(stand.name()).beyond(pins, reach);
    Solid past = parts.drawn(other).beyond(pins, reach);
    if (leg.overlaps(past)) {
      return Optional.empty(); // the joint's own finding
    }
    return Fouling.of(way, leg, past, 0, List.of())
        .map(
            f ->
                finding(
                    About.parts(stand.name(), other)
                        .said("beyond their joint " + stand.name() + " and " + other),
                    f,
                    0,
                    JointFindings.JOINT,
                    Words.of("change their shape there, or hinge the leg elsewhere")));
  }

  private static Finding finding(
      About about, Fouling f, double limitMm, Basis source, Words remedy) {
    double gap = f.gapMm();
    return Finding.held(
            SWUNG,
            about,
            Optional.empty(),
            Figures.atLeast(gap, limitMm, FigureUnit.MM),
            List.of(source, HOW),
            Words.of(
                "On the leg's way between stowed and parked, " + about.words(),
                gap < 0
                    ? Words.of(" run into each other by ", Say.mm(-gap))
                    : gap == 0
                        ? Words.of(" touch")
                        : Words.of(" come to ", Say.mm(gap), " of each other"),
                "; ",
                Words.atLeast(limitMm),
                " are asked between them: ",
                remedy,
                "."))
        .at(f.where());
  }
}

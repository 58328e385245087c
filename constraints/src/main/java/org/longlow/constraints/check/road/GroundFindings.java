package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** The lowest point under the machine, laden and at full bump. */
public final class GroundFindings {

  /** The lowest point over the road. */
  public static final FindingKind CLEARANCE =
      new FindingKind("clearance", FindingGroup.CLEARANCE, Rests.ON_MASSES);

  private GroundFindings() {}

  public static List<Finding> of(Layout layout, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    Finding laden = null;
    for (Standing standing : standings) {
      if (standing.kind() == Stance.Kind.LADEN) {
        Finding f = lowest(layout, standing, "laden", Demands.Key.GROUND_CLEARANCE);
        if (f != null && (laden == null || f.value() < laden.value())) {
          laden = f;
        }
      } else if (standing.kind() == Stance.Kind.FULL_BUMP) {
        Finding f = lowest(layout, standing, "bump", Demands.Key.BUMP_CLEARANCE);
        if (f != null) {
          findings.add(f);
        }
      }
    }
    if (laden != null) {
      findings.add(0, laden);
    }
    return findings;
  }

  private static Finding lowest(
      Layout layout, Standing standing, String state, Demands.Key demand) {
    PointMm along = standing.ground().along();
    PointMm from = standing.ground().rearContact();
    double least = Double.POSITIVE_INFINITY;
    String part = null;
    Coordinate at = null;
    for (PartShape shape : standing.shapes().values()) {
      if (shape.part() instanceof WheelPart) {
        continue;
      }
      Envelope box = shape.outline().getEnvelopeInternal();
      double lowest =
          along.x() * (box.getMinY() - from.z())
              - along.z() * ((along.z() > 0 ? box.getMaxX() : box.getMinX()) - from.x());
      if (lowest > least) {
        continue; // not even a corner of its box is lower
      }
      for (Coordinate c : shape.outline().getCoordinates()) {
        double height = along.x() * (c.y - from.z()) - along.z() * (c.x - from.x());
        if (height < least) {
          least = height;
          part = shape.part().name();
          at = c;
        }
      }
    }
    if (part == null) {
      return null;
    }
    double limit = standing.places().value(layout.demands().limit(demand));
    return Finding.held(
            CLEARANCE,
            About.parts(part).named(state),
            Optional.of(standing.condition()),
            Figures.atLeast(least, limit, FigureUnit.MM),
            List.of(Sources.of(layout, demand)),
            Words.of(
                part + " is the lowest part, ",
                Say.mm(least),
                " above the road; ",
                Say.mm(limit),
                " are asked " + demand.meaning(),
                (least < limit ? Words.of(": raise it ", Words.atLeast(limit - least), ".") : ".")))
        .at(new PointMm(at.x, at.y));
  }
}

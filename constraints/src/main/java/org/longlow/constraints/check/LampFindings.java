package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.law.LampColour;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.law.LampKind;
import org.longlow.constraints.law.LampRules;
import org.longlow.constraints.law.LawFinding;
import org.longlow.constraints.law.RuleSet;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;

/** Lamps and reflectors against the rules that the layout is held to, unladen. */
final class LampFindings {

  /** Names the mirror image of a lamp that comes as a pair. */
  private static final String OTHER = " (other side)";

  private LampFindings() {}

  static List<Finding> of(Layout layout, List<Standing> standings) {
    Set<RuleSet> inForce = EnumSet.noneOf(RuleSet.class);
    for (RuleSet rules : RuleSet.values()) {
      if (layout.demands().rules().contains(rules.id())) {
        inForce.add(rules);
      }
    }
    Optional<Standing> unladen =
        standings.stream().filter(s -> s.kind() == Stance.Kind.UNLADEN).findFirst();
    if (inForce.isEmpty() || unladen.isEmpty()) {
      return List.of();
    }
    List<LampItem> lamps = new ArrayList<>();
    for (Part part : layout.parts().values()) {
      if (part instanceof Part.Lamp lamp && lamp.type() != Part.LampKind.PLATE) {
        add(lamps, lamp, unladen.get());
      }
    }
    List<Finding> findings = new ArrayList<>();
    for (LawFinding f : LampRules.check(inForce, lamps)) {
      findings.add(finding(f, layout, unladen.get()));
    }
    findings.add(
        Finding.note(
            "law",
            "lamps",
            unladen.get().name(),
            Verdict.NOT_APPLICABLE,
            Double.NaN,
            "",
            "tables listed with each finding",
            LampRules.CAUTION));
    return findings;
  }

  private static void add(List<LampItem> lamps, Part.Lamp lamp, Standing standing) {
    Places places = standing.places();
    PointMm at = standing.ground().toRoad(places.pin(lamp.at()));
    double halfWidth = places.value(lamp.halfWidth());
    double halfHeight = places.value(lamp.halfHeight());
    LampItem item =
        new LampItem(
            lamp.name(),
            kind(lamp.type(), at.x() > standing.ground().wheelbaseMm() / 2),
            colour(lamp.colour()),
            at.x(),
            places.value(lamp.y()),
            at.z(),
            halfWidth,
            halfHeight,
            halfWidth == halfHeight,
            lamp.base().steered());
    lamps.add(item);
    if (lamp.pair()) {
      lamps.add(item.mirrored(lamp.name() + OTHER));
    }
  }

  private static LampKind kind(Part.LampKind kind, boolean ahead) {
    return switch (kind) {
      case HEADLAMP -> LampKind.HEADLAMP;
      case TAIL -> LampKind.TAIL;
      case STOP -> LampKind.STOP;
      case FRONT_SIGNAL -> LampKind.FRONT_SIGNAL;
      case REAR_SIGNAL -> LampKind.REAR_SIGNAL;
      case FRONT_POSITION -> LampKind.FRONT_POSITION;
      case PLATE_LAMP, PLATE -> LampKind.PLATE;
      case REAR_REFLECTOR -> LampKind.REAR_REFLECTOR;
      case SIDE_REFLECTOR -> ahead ? LampKind.FRONT_SIDE_REFLECTOR : LampKind.REAR_SIDE_REFLECTOR;
    };
  }

  private static LampColour colour(String word) {
    for (LampColour colour : LampColour.values()) {
      if (colour.word().equals(word)) {
        return colour;
      }
    }
    throw new IllegalArgumentException("lamp colour " + word + "; allowed are white, amber, red");
  }

  private static Finding finding(LawFinding f, Layout layout, Standing standing) {
    String id = f.id();
    Optional<PointMm> where = Optional.empty();
    for (Part part : layout.parts().values()) {
      if (part instanceof Part.Lamp lamp && about(f.subject(), lamp.name())) {
        // a rule speaks of each lamp in turn; the lamp's name keeps the ids apart
        id += "." + lamp.name() + (f.subject().startsWith(lamp.name() + OTHER) ? ".other" : "");
        where = Optional.of(standing.places().pin(lamp.at()));
        break;
      }
    }
    return new Finding(
        id,
        f.subject(),
        standing.name(),
        Verdict.valueOf(f.verdict().name()),
        number(f.value()),
        number(f.limit()),
        number(f.margin()),
        f.unit(),
        f.source(),
        f.text(),
        where);
  }

  private static boolean about(String subject, String lamp) {
    return subject.equals(lamp)
        || subject.startsWith(lamp + OTHER)
        || subject.startsWith(lamp + ",");
  }

  private static double number(Double value) {
    return value == null ? Double.NaN : value;
  }
}

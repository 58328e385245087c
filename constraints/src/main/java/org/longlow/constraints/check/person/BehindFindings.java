package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Bearings;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.MirrorField;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.words.Words;

/** What is seen behind: over the shoulder, and in each mirror past the rider's own shoulders. */
final class BehindFindings {

  /** What hides the view straight behind. */
  static final FindingKind BEHIND =
      new FindingKind("behind", FindingGroup.SIGHT_AND_FOOT, Rests.ON_MASSES);

  /** What a mirror shows. */
  static final FindingKind MIRROR =
      new FindingKind("mirror", FindingGroup.SIGHT_AND_FOOT, Rests.ON_MASSES);

  /** What is looked for behind: a car's lamps, so high and so far behind the eye, mm; judgement. */
  static final double SEEN_HIGH_MM = 800;

  static final double SEEN_FAR_MM = 20_000;

  /** Eyes and a turned head see so far round from straight ahead, rad: 70 and 35; from memory. */
  static final double ROUND_RAD = Math.toRadians(105);

  /** Breadth of road that a mirror shows at that distance, mm: UN R46 class III; from memory. */
  static final double SHOWN_MM = 4000;

  /** Nearer to the flank than this a mirror begins to show, mm; judgement. */
  static final double BESIDE_MM = 1000;

  private static final List<Basis> LOOK =
      List.of(
          Basis.model("bodies as broad as they are, in plan from the eye"),
          Basis.published(
              Known.FROM_MEMORY,
              "a head turns some 70 degrees and eyes 35, so one sees 105 round (from memory)"));

  private static final List<Basis> GLASS =
      List.of(
          Basis.model("one eye and glass square to it, turned as is best"),
          Basis.published(
              Known.FROM_MEMORY, "4 m of road 20 m behind (UN R46 class III, from memory)"));

  private BehindFindings() {}

  static List<Finding> of(Sitting sitting, Posture posture, Standing standing) {
    List<Finding> findings = new ArrayList<>();
    if (!(standing.ground().heightMm(posture.eye()) > 0)) {
      return findings;
    }
    findings.add(behind(sitting, posture, standing));
    for (PartShape shape : standing.shapes().values()) {
      if (shape.part() instanceof SolidPart solid && solid.type() == SolidPart.Kind.MIRROR) {
        for (Prism prism : shape.prisms()) {
          findings.add(mirror(sitting, posture, standing, solid, prism));
        }
      }
    }
    return findings;
  }

  /** The plane from a point to what is looked for behind. */
  static Bearings back(PointMm from, double yMm, Ground ground) {
    double drop = ground.heightMm(from) - SEEN_HIGH_MM;
    PointMm way = ground.along().times(-SEEN_FAR_MM).plus(ground.along().left().times(-drop));
    return new Bearings(from, yMm, way.times(1 / way.length()));
  }

  /** A sector with the part that hides it. */
  private record Hidden(String part, Bearings.Sector sector) {}

  private static Finding behind(Sitting sitting, Posture posture, Standing standing) {
    Bearings from = back(posture.eye(), 0, standing.ground());
    List<Hidden> hidden = new ArrayList<>();
    for (PartShape shape : standing.shapes().values()) {
      if (!from.meets(shape.outline().getEnvelopeInternal())) {
        continue;
      }
      for (Prism prism : shape.prisms()) {
        from.of(prism).ifPresent(s -> hidden.add(new Hidden(shape.part().name(), s)));
      }
    }
    Optional<Bearings.Sector> sector =
        Bearings.round(0, hidden.stream().map(Hidden::sector).toList());
    double left = Math.toDegrees(sector.map(Bearings.Sector::toRad).orElse(0.0));
    double right = Math.toDegrees(-sector.map(Bearings.Sector::fromRad).orElse(0.0));
    double most = 180 - Math.toDegrees(ROUND_RAD);
    double worse = Math.max(left, right);
    Figures figures = Figures.atMost(worse, most, FigureUnit.DEG);
    boolean sees = figures.verdict() == Verdict.PASS;
    String by =
        hidden.stream()
            .filter(h -> sector.isPresent())
            .filter(
                h ->
                    left >= right
                        ? h.sector().toRad() >= sector.get().toRad()
                        : h.sector().fromRad() <= sector.get().fromRad())
            .map(Hidden::part)
            .findFirst()
            .orElse("");
    boolean mirrors =
        standing.shapes().values().stream()
            .anyMatch(
                s -> s.part() instanceof SolidPart solid && solid.type() == SolidPart.Kind.MIRROR);
    return new Finding(
            BEHIND,
            About.person(sitting.occupant(), "what is behind", "behind"),
            Optional.of(standing.condition()),
            sees ? Verdict.PASS : Verdict.CAUTION,
            figures,
            LOOK,
            Words.of(
                worse > 0
                    ? Say.format(
                        "Straight behind, the machine hides a car's lamps %s to the left and %s to"
                            + " the right, at the edge by %s",
                        Say.deg(left), Say.deg(right), by)
                    : Words.of("Nothing of the machine stands straight behind"),
                Say.format(
                    "; over the shoulder %s sees to some %s from there, and nearer only in mirrors",
                    sitting.person(), Say.deg(most)),
                mirrors ? "" : ", of which none is drawn",
                sees
                    ? "."
                    : ": make what stands behind narrower or lower at the height of the eye."))
        .at(posture.eye());
  }

  private static Finding mirror(
      Sitting sitting, Posture posture, Standing standing, SolidPart part, Prism glass) {
    Envelope box = glass.outline().getEnvelopeInternal();
    PointMm at = new PointMm(box.centre().x, box.centre().y);
    double y = (glass.across().from() + glass.across().to()) / 2;
    int side = y < 0 ? -1 : 1;
    String which = side > 0 ? "left" : "right";
    PointMm toEye = posture.eye().minus(at);
    double far = Math.hypot(toEye.length(), y);
    double radius =
        part.glassRadius().map(standing.places()::value).orElse(Double.POSITIVE_INFINITY);
    double shows = MirrorField.angleRad(glass.across().length(), Math.max(far, 1), radius);
    Bearings back = back(at, y, standing.ground());
    double inner = inner(sitting, standing, part, back, side);
    double flank = flank(sitting, standing);
    double distance =
        SEEN_FAR_MM + Math.max(0, standing.ground().along().dot(at.minus(posture.eye())));
    // turned in until its inner edge shows the flank, or out past what hides that
    double edge = Math.max(inner, Math.atan2(flank - side * y, distance));
    double outer = Math.min(edge + shows, Math.PI / 2 - 1e-3);
    double begins = Math.max(0, side * y + distance * Math.tan(edge) - flank);
    double breadth = edge < Math.PI / 2 - 1e-3 ? distance * (Math.tan(outer) - Math.tan(edge)) : 0;
    boolean wide = breadth >= SHOWN_MM;
    boolean near = begins <= BESIDE_MM;
    Figures figures =
        near
            ? Figures.atLeast(Math.min(breadth, 5 * SEEN_FAR_MM), SHOWN_MM, FigureUnit.MM)
            : Figures.atMost(Math.min(begins, 5 * SEEN_FAR_MM), BESIDE_MM, FigureUnit.MM);
    return new Finding(
            MIRROR,
            About.person(sitting.occupant(), part.name() + " " + which, part.name(), which)
                .on(part.name()),
            Optional.of(standing.condition()),
            wide && near ? Verdict.PASS : Verdict.CAUTION,
            figures,
            GLASS,
            Words.of(
                Say.format(
                    "The %s %s shows %s %s; past own arms and the machine that is ",
                    which, part.name(), sitting.person(), Say.deg(Math.toDegrees(shows))),
                breadth >= 5 * SEEN_FAR_MM ? "all" : LookingAhead.metres(breadth),
                " of the breadth of the road ",
                LookingAhead.metres(SEEN_FAR_MM),
                " behind, beginning ",
                begins >= 5 * SEEN_FAR_MM ? "far" : LookingAhead.metres(begins),
                " beside the machine",
                wide && near
                    ? Words.of(".")
                    : Say.format(
                        "; %s from within %s are asked: %s.",
                        LookingAhead.metres(SHOWN_MM),
                        LookingAhead.metres(BESIDE_MM),
                        near
                            ? "take a broader or more bulged glass"
                            : "move the mirror out or up past what hides the view")))
        .at(at, y);
  }

  /** How far outwards of straight back own limbs and the machine hide what a mirror shows, rad. */
  private static double inner(
      Sitting sitting, Standing standing, SolidPart part, Bearings back, int side) {
    double inner = -Math.PI / 2;
    for (Prism prism : sitting.prisms()) {
      inner = Math.max(inner, outward(back, prism, side));
    }
    for (PartShape shape : standing.shapes().values()) {
      if (!shape.part().name().equals(part.name())
          && back.meets(shape.outline().getEnvelopeInternal())) {
        for (Prism prism : shape.prisms()) {
          inner = Math.max(inner, outward(back, prism, side));
        }
      }
    }
    return inner;
  }

  private static double outward(Bearings back, Prism prism, int side) {
    return back.of(prism)
        .map(s -> side > 0 ? s.toRad() : -s.fromRad())
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** How broad machine and rider are, the broader side, mm. */
  private static double flank(Sitting sitting, Standing standing) {
    double most = 0;
    for (Prism prism : sitting.prisms()) {
      most = Math.max(most, prism.across().to());
    }
    for (PartShape shape : standing.shapes().values()) {
      if (!(shape.part() instanceof SolidPart s && s.type() == SolidPart.Kind.MIRROR)) {
        most = Math.max(most, Math.max(shape.leftMm(), shape.rightMm()));
      }
    }
    return most;
  }
}

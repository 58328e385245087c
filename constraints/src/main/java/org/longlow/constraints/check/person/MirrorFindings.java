package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Bearings;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.MirrorField;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.words.Words;

/** What each mirror shows: whether eyes turn to it, what hides it, and what it shows behind. */
final class MirrorFindings {

  /** What a mirror shows. */
  static final FindingKind MIRROR =
      new FindingKind("mirror", FindingGroup.SIGHT_AND_FOOT, Rests.ON_MASSES);

  /** What is looked for behind: a car's lamps, so high and so far behind the eye, mm; judgement. */
  static final double SEEN_HIGH_MM = 800;

  static final double SEEN_FAR_MM = 20_000;

  /** How far the neck turns, any way, for a glance from the road, rad; common practice. */
  static final double NECK_RAD = Math.toRadians(20);

  /** How far eyes turn sideways, rad (LaValle, Virtual Reality, ch. 5). */
  static final double EYES_SIDE_RAD = Math.toRadians(35);

  /** Breadth of road that a mirror shows 20 m behind, mm: UN R46 class III; from memory. */
  static final double SHOWN_MM = 4000;

  /** Nearer to the flank than this a mirror begins to show, mm; judgement. */
  static final double BESIDE_MM = 1000;

  /** So far behind the rider a mirror shows the road, and the horizon, mm: 35 ft (COMAR). */
  static final double ROAD_MM = 35 * 304.8;

  /** Breadths from here on are all the road, mm. */
  private static final double ALL_MM = 5 * SEEN_FAR_MM;

  private static final double MOST_RAD = Math.PI / 2 - 1e-3;

  private static final List<Basis> GLASS =
      List.of(
          Basis.model("one eye and glass square to it, turned as is best"),
          Basis.published(
              Known.CHECKED, "eyes turn 35 degrees sideways, 20 up, 25 down (LaValle, ch. 5)"),
          Basis.practice("the neck turns 20 degrees for a glance: common practice"),
          Basis.published(
              Known.TRANSCRIBED,
              "horizon and road 35 ft behind (COMAR 11.13.05.04, a rule of one state)"),
          Basis.published(
              Known.FROM_MEMORY, "4 m of road 20 m behind (UN R46 class III, from memory)"));

  private final Sitting sitting;
  private final PointMm eye;
  private final Standing standing;
  private final List<Prism> persons;
  private final String beside;

  private MirrorFindings(
      Sitting sitting, Posture posture, Standing standing, List<Standing> standings) {
    this.sitting = sitting;
    this.eye = posture.eye();
    this.standing = standing;
    List<Rider.Seated> others = others(sitting.occupant(), standings);
    this.persons =
        Stream.concat(sitting.prisms().stream(), others.stream().flatMap(o -> o.body().stream()))
            .toList();
    this.beside = others.isEmpty() ? "own arms" : "own arms, " + others.get(0).who().person();
  }

  static List<Finding> of(
      Sitting sitting, Posture posture, Standing standing, List<Standing> standings) {
    List<PartShape> mirrors =
        standing.shapes().values().stream().filter(MirrorFindings::mirror).toList();
    List<Finding> findings = new ArrayList<>();
    if (mirrors.isEmpty() || !(standing.ground().heightMm(posture.eye()) > 0)) {
      return findings;
    }
    MirrorFindings of = new MirrorFindings(sitting, posture, standing, standings);
    for (PartShape shape : mirrors) {
      for (Prism prism : shape.prisms()) {
        findings.add(of.new Glass((SolidPart) shape.part(), prism).finding());
      }
    }
    return findings;
  }

  static boolean mirror(PartShape shape) {
    return shape.part() instanceof SolidPart solid && solid.type() == SolidPart.Kind.MIRROR;
  }

  /** Returns who else is on the machine with somebody, where most are. */
  private static List<Rider.Seated> others(Occupant who, List<Standing> standings) {
    return standings.stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN && s.condition().aboard().contains(who))
        .map(s -> s.rider().seated())
        .max(Comparator.comparingInt(List::size))
        .orElse(List.of())
        .stream()
        .filter(s -> !s.who().equals(who))
        .toList();
  }

  /** Returns the plane from a point to something so high and so far behind it. */
  static Bearings back(PointMm from, double yMm, Ground ground, double highMm, double farMm) {
    double drop = ground.heightMm(from) - highMm;
    PointMm way = ground.along().times(-farMm).plus(ground.along().left().times(-drop));
    return new Bearings(from, yMm, way.times(1 / way.length()));
  }

  /** One glass. */
  private final class Glass {
    private final SolidPart part;
    private final PointMm at;
    private final double y;
    private final int side;
    private final double aheadMm;
    private final double upMm;
    private final double shows;
    private final double showsHigh;

    /** Clear parts that this is seen through. */
    private final Set<String> through = new LinkedHashSet<>();

    Glass(SolidPart part, Prism glass) {
      this.part = part;
      Envelope box = glass.outline().getEnvelopeInternal();
      at = new PointMm(box.centre().x, box.centre().y);
      y = (glass.across().from() + glass.across().to()) / 2;
      side = y < 0 ? -1 : 1;
      PointMm to = at.minus(eye);
      aheadMm = standing.ground().along().dot(to);
      upMm = standing.ground().along().left().dot(to);
      double far = Math.max(1, Math.hypot(to.length(), y));
      double radius =
          part.glassRadius().map(standing.places()::value).orElse(Double.POSITIVE_INFINITY);
      shows = MirrorField.angleRad(glass.across().length(), far, radius);
      showsHigh = MirrorField.angleRad(Math.max(box.getHeight(), 1e-3), far, radius);
    }

    Finding finding() {
      double out = Math.atan2(Math.abs(y), aheadMm);
      double up = Math.atan2(upMm, Math.hypot(aheadMm, y));
      double mostUp =
          NECK_RAD + (up < 0 ? HeadUpFindings.EYES_DOWN_RAD : HeadUpFindings.EYES_UP_RAD);
      if (out > EYES_SIDE_RAD + NECK_RAD) {
        return turned(out, EYES_SIDE_RAD + NECK_RAD, "to the side of", "forward or in");
      }
      if (Math.abs(up) > mostUp) {
        return up < 0
            ? turned(-up, mostUp, "below", "up or forward")
            : turned(up, mostUp, "above", "down or forward");
      }
      return before()
          .map(
              b ->
                  of(
                      Verdict.FAIL,
                      Figures.NONE,
                      Words.of(
                          "From the eyes of "
                              + sitting.person()
                              + " "
                              + b
                              + " before the "
                              + which()
                              + " "
                              + part.name()
                              + ": move it to where nothing stands before it.")))
          .orElseGet(this::field);
    }

    private String which() {
      return side > 0 ? "left" : "right";
    }

    private Finding of(Verdict verdict, Figures figures, Words words) {
      return new Finding(
              MIRROR,
              About.person(sitting.occupant(), part.name() + " " + which(), part.name(), which())
                  .on(part.name()),
              Optional.of(standing.condition()),
              verdict,
              figures,
              GLASS,
              words)
          .at(at, y);
    }

    private Finding turned(double rad, double mostRad, String way, String move) {
      double deg = Math.toDegrees(rad);
      double most = Math.toDegrees(mostRad);
      return of(
          Verdict.FAIL,
          Figures.atMost(deg, most, FigureUnit.DEG),
          Say.format(
              "The %s %s stands %s %s straight ahead of the eyes of %s; eyes and neck turn %s for"
                  + " a glance: move it %s.",
              which(), part.name(), Say.deg(deg), way, sitting.person(), Say.deg(most), move));
    }

    /** What stands between the eye and the middle of the glass, told with its verb. */
    private Optional<String> before() {
      PointMm to = at.minus(eye);
      if (!(to.length() > 1)) {
        return Optional.empty();
      }
      PointMm way = to.times(1 / to.length());
      double rad = Math.atan2(y, to.length());
      Bearings there = new Bearings(eye, 0, way);
      Bearings hither = new Bearings(at, y, way.times(-1));
      for (Map.Entry<String, List<Prism>> limb : sitting.fineLimbs().entrySet()) {
        // the eye is in the head, and the chin goes with it
        if (!Set.of("head", "neck").contains(limb.getKey())
            && limb.getValue().stream().anyMatch(p -> between(p, there, hither, rad))) {
          return Optional.of("own limbs stand");
        }
      }
      return standing.shapes().values().stream()
          .filter(s -> s.part() != part)
          .filter(s -> s.prisms().stream().anyMatch(p -> between(p, there, hither, rad)))
          .filter(s -> !isThrough(s))
          .findFirst()
          .map(s -> s.part().name() + " stands");
    }

    /** Whether a part in the way is clear; it is noted. */
    private boolean isThrough(PartShape shape) {
      boolean clear = LookingAhead.clear(shape.part());
      if (clear) {
        through.add(shape.part().name());
      }
      return clear;
    }

    /** A body that a line meets ahead of one end and ahead of the other is between them. */
    private static boolean between(Prism body, Bearings there, Bearings hither, double rad) {
      return hides(there, body, rad) && hides(hither, body, -rad);
    }

    private static boolean hides(Bearings from, Prism body, double rad) {
      return from.of(body).filter(s -> s.fromRad() <= rad && rad <= s.toRad()).isPresent();
    }

    private Finding field() {
      Ground ground = standing.ground();
      double high = ground.heightMm(at);
      double distance = SEEN_FAR_MM + Math.max(0, aheadMm);
      double road = ROAD_MM + Math.max(0, aheadMm);
      double flank = flank();
      // turned in until its inner edge shows the flank, or out past what hides horizon, lamps, road
      double edge = Math.atan2(flank - side * y, distance);
      edge = Math.max(edge, inner(back(at, y, ground, high, distance)));
      edge = Math.max(edge, inner(back(at, y, ground, SEEN_HIGH_MM, distance)));
      edge = Math.max(edge, inner(back(at, y, ground, 0, road)));
      double outer = Math.min(edge + shows, MOST_RAD);
      double begins = Math.max(0, side * y + distance * Math.tan(edge) - flank);
      double breadth = edge < MOST_RAD ? distance * (Math.tan(outer) - Math.tan(edge)) : 0;
      double needHigh = Math.atan2(high, road);
      boolean near = begins <= BESIDE_MM;
      boolean wide = breadth >= SHOWN_MM;
      boolean tall = showsHigh >= needHigh;
      Figures figures =
          !near
              ? Figures.atMost(Math.min(begins, ALL_MM), BESIDE_MM, FigureUnit.MM)
              : wide && !tall
                  ? Figures.atLeast(
                      Math.toDegrees(showsHigh), Math.toDegrees(needHigh), FigureUnit.DEG)
                  : Figures.atLeast(Math.min(breadth, ALL_MM), SHOWN_MM, FigureUnit.MM);
      boolean sees = near && wide && tall;
      noteClear(back(at, y, ground, SEEN_HIGH_MM, distance), edge, outer);
      return of(
          sees && through.isEmpty() ? Verdict.PASS : Verdict.CAUTION,
          figures,
          Words.of(
              Say.format(
                  "The %s %s shows %s %s across and %s up and down, of %s from the horizon to"
                      + " the road %s behind; past %s and the machine that is ",
                  which(),
                  part.name(),
                  sitting.person(),
                  Say.deg(Math.toDegrees(shows)),
                  Say.deg(Math.toDegrees(showsHigh)),
                  Say.deg(Math.toDegrees(needHigh)),
                  LookingAhead.metres(ROAD_MM),
                  beside),
              breadth >= ALL_MM ? "all" : LookingAhead.metres(breadth),
              " of the breadth of the road ",
              LookingAhead.metres(SEEN_FAR_MM),
              " behind, beginning ",
              begins >= ALL_MM ? "far" : LookingAhead.metres(begins),
              " beside the machine",
              sees
                  ? "."
                  : Say.format(
                      "; %s from within %s are asked: %s.",
                      LookingAhead.metres(SHOWN_MM),
                      LookingAhead.metres(BESIDE_MM),
                      !near
                          ? "move the mirror out or up past what hides the view"
                          : wide
                              ? "take a higher or more bulged glass"
                              : "take a broader or more bulged glass"),
              LookingAhead.through(through)));
    }

    /** How far outwards of straight back persons and machine hide what a mirror shows, rad. */
    private double inner(Bearings back) {
      double inner = -Math.PI / 2;
      for (Prism prism : persons) {
        inner = Math.max(inner, outward(back, prism));
      }
      for (PartShape shape : standing.shapes().values()) {
        if (shape.part() != part && !LookingAhead.clear(shape.part()) && back.meets(shape.box())) {
          for (Prism prism : shape.prisms()) {
            inner = Math.max(inner, outward(back, prism));
          }
        }
      }
      return inner;
    }

    /** Notes clear parts within what the glass shows. */
    private void noteClear(Bearings back, double fromRad, double toRad) {
      for (PartShape shape : standing.shapes().values()) {
        boolean shown =
            LookingAhead.clear(shape.part())
                && shape.prisms().stream()
                    .flatMap(p -> back.of(p).stream())
                    .anyMatch(
                        s ->
                            (side > 0 ? s.toRad() : -s.fromRad()) > fromRad
                                && (side > 0 ? s.fromRad() : -s.toRad()) < toRad);
        if (shown) {
          through.add(shape.part().name());
        }
      }
    }

    private double outward(Bearings back, Prism prism) {
      return back.of(prism)
          .map(s -> side > 0 ? s.toRad() : -s.fromRad())
          .orElse(Double.NEGATIVE_INFINITY);
    }
  }

  /** How broad machine and persons are, the broader side, mm. */
  private double flank() {
    double most = 0;
    for (Prism prism : persons) {
      most = Math.max(most, prism.across().to());
    }
    for (PartShape shape : standing.shapes().values()) {
      if (!mirror(shape)) {
        most = Math.max(most, Math.max(shape.leftMm(), shape.rightMm()));
      }
    }
    return most;
  }
}

package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.passage.Access;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.ByThing;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.words.Words;

/**
 * Whether whoever sits gets in and out: legs and trunk, with each section jammed shut. For several
 * threads.
 */
public final class AccessFindings {

  /** The narrowest place on the way of the legs. */
  public static final FindingKind LEGS =
      new FindingKind("legs-in", FindingGroup.ACCESS, Rests.ON_DRAWING);

  /** How high feet are lifted over what stands beside and under the legs. */
  public static final FindingKind STEP =
      new FindingKind("step-over", FindingGroup.ACCESS, Rests.ON_DRAWING);

  /** The narrowest place on the way out of the trunk. */
  public static final FindingKind GET_OUT =
      new FindingKind("get-out", FindingGroup.ACCESS, Rests.ON_DRAWING);

  /** Cells of the ways; nearer to a limit than this is not known. */
  private static final double CARE_MM = 25;

  /** Step-over that is easy, mm: common practice without a source. */
  private static final double EASY_STEP_MM = 250;

  /** Up to here one handhold does, mm; likewise. */
  private static final double HELD_STEP_MM = 450;

  /** Where the middle of a trunk is, of the way from hip to shoulder; judgement. */
  private static final double TRUNK_AT = 0.45;

  private static final Basis WAYS =
      Basis.model("widest way of a disc through the elevation, cells of 25 mm, parts as drawn");

  private static final Basis BODY = Basis.published(Known.CHECKED, "measures of the survey");

  private final Layout layout;
  private final Places places;
  private final Map<String, PartShape> open;
  private final Map<String, PartShape> shut;

  /** By seat: it is the same for everybody on it. */
  private final ByThing<SeatParts, Ways> ways = new ByThing<>(8, this::about);

  /** The ways about a seat, with all sections open and with each jammed that matters to them. */
  private record Ways(Optional<Access> open, Map<String, Access> jammed) {}

  /**
   * @param shapes every part as drawn, sections shut
   */
  public AccessFindings(Layout layout, Places places, Map<String, PartShape> shapes) {
    this.layout = layout;
    this.places = places;
    shut = shapes;
    open = new LinkedHashMap<>(shapes);
    open.putAll(OpenedParts.all(layout, places, shut));
  }

  /** Returns all of it for somebody; nothing where they do not sit. */
  public List<Finding> of(Sitting sitting, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    if (sitting.posture().isEmpty()) {
      return findings;
    }
    Ways about = ways.of(sitting.parts());
    if (about.open.isEmpty()) {
      return findings;
    }
    Access access = about.open.get();
    Condition stance = Standing.under(sitting.occupant(), standings);
    findings.add(legs(sitting, stance, access));
    findings.add(step(sitting, stance, access));
    findings.add(out(sitting, stance, access, Optional.empty()));
    about.jammed.forEach(
        (name, with) -> findings.add(out(sitting, stance, with, Optional.of(name))));
    return findings;
  }

  /** Returns the ways about a seat with all sections open, where it has somewhere for the feet. */
  Optional<Access> open(SeatParts seat) {
    return ways.of(seat).open;
  }

  /** Returns every part with all sections open. */
  Map<String, PartShape> opened() {
    return Collections.unmodifiableMap(open);
  }

  private Ways about(SeatParts seat) {
    Map<String, Access> jammed = new LinkedHashMap<>();
    layout
        .sections()
        .forEach(
            (name, section) -> jammed(seat, section).ifPresent(access -> jammed.put(name, access)));
    return new Ways(Access.of(seat, places, open.values()), jammed);
  }

  private Optional<Access> jammed(SeatParts seat, Section section) {
    Map<String, PartShape> opened = OpenedParts.of(section, places, shut);
    boolean concerns =
        opened.values().stream()
            .anyMatch(
                shape ->
                    Access.concerns(seat, places, shape)
                        || Access.concerns(seat, places, shut.get(shape.part().name())));
    if (!concerns) {
      return Optional.empty();
    }
    Map<String, PartShape> all = new LinkedHashMap<>(open);
    opened.keySet().forEach(part -> all.put(part, shut.get(part)));
    return Access.of(seat, places, all.values());
  }

  private static About about(Sitting sitting, String words, String... path) {
    return About.person(sitting.occupant(), words, path);
  }

  private static String side(boolean left) {
    return left ? "left" : "right";
  }

  // --- legs

  /** What a boot and the leg behind it need, mm. */
  private static double legMm(Body body) {
    double calf = body.measures().get("calfcircumference") / Math.PI;
    return Math.max(calf, body.foot().ankle().z()) + body.gear().armourMm();
  }

  /** Places of the foot on its rest. */
  private static PointMm[] foot(Posture posture) {
    return new PointMm[] {posture.ankle().towards(posture.toe(), 0.5), posture.ankle()};
  }

  private static double legsMm(Access access, boolean left, PointMm... foot) {
    return Math.min(access.legMm(left, foot), access.farLegMm(left, foot));
  }

  private Finding legs(Sitting sitting, Condition stance, Access access) {
    PointMm[] foot = foot(sitting.posture().orElseThrow());
    double atLeft = legsMm(access, true, foot);
    double atRight = legsMm(access, false, foot);
    boolean left = atLeft >= atRight;
    double room = Math.max(atLeft, atRight);
    double needs = legMm(sitting.body());
    Figures figures = Figures.atLeast(room, needs, FigureUnit.MM);
    Verdict verdict = ofLegs(sitting, figures);
    double near = access.legMm(left, foot);
    double far = access.farLegMm(left, foot);
    Words text =
        Words.of(
            "Getting in from "
                + (atLeft == atRight ? "either side" : "the " + side(left))
                + ", the narrowest place on the way of "
                + (near == far ? "either " : near < far ? "the nearer " : "the farther ")
                + "leg of "
                + sitting.occupant().words()
                + " to its foot rest is ",
            Say.mm(room),
            "; boot and shin need ",
            Say.mm(needs),
            verdict == Verdict.PASS
                ? "."
                : Words.of(
                    ". Give the leg ",
                    Words.atLeast(Math.max(CARE_MM - figures.margin(), 0)),
                    " more room between what is over and under it, or open a section there."));
    return new Finding(
            LEGS,
            about(sitting, "legs in", "legs"),
            Optional.of(stance),
            verdict,
            figures,
            List.of(WAYS, BODY),
            text)
        .at(foot[0]);
  }

  private static Verdict verdict(Figures figures) {
    return figures.margin() < 0
        ? Verdict.FAIL
        : figures.margin() < CARE_MM ? Verdict.CAUTION : Verdict.PASS;
  }

  /** As the other; whoever sits behind swings legs in from above, which no way here tells. */
  private static Verdict ofLegs(Sitting sitting, Figures figures) {
    Verdict verdict = verdict(figures);
    return verdict == Verdict.FAIL && !sitting.occupant().rides() ? Verdict.CAUTION : verdict;
  }

  // --- stepping over

  private static double sillMm(Access access, boolean left) {
    return access.sill(left).map(PointMm::z).orElse(Double.NaN);
  }

  private Finding step(Sitting sitting, Condition stance, Access access) {
    double atLeft = sillMm(access, true);
    double atRight = sillMm(access, false);
    Basis bands =
        Basis.practice("up to 250 mm easy, to 450 mm with a handhold: common practice, no source");
    About about = about(sitting, "step over", "step");
    if (Double.isNaN(atLeft) && Double.isNaN(atRight)) {
      return new Finding(
              STEP,
              about,
              Optional.of(stance),
              Verdict.CAUTION,
              Figures.NONE,
              List.of(WAYS, bands),
              Words.of(
                  "How high "
                      + sitting.occupant().words()
                      + " must step to get in is not known: no way for a leg of ",
                  Say.mm(Access.LEG_MM),
                  " leads from either side to the foot rests. Open a section there."))
          .at(sitting.posture().orElseThrow().hip());
    }
    boolean left = Double.isNaN(atRight) || atLeft <= atRight;
    double sill = left ? atLeft : atRight;
    double inside = sitting.body().measures().get("crotchheight") + sitting.body().gear().heelMm();
    boolean easy = sill <= EASY_STEP_MM;
    boolean held = !new Handholds(layout, places).beside(sitting).isEmpty();
    // whoever sits behind climbs up by a foot rest while somebody holds the machine
    boolean climbs = !sitting.occupant().rides();
    Verdict verdict =
        easy || sill <= HELD_STEP_MM && held
            ? Verdict.PASS
            : sill > inside && !climbs ? Verdict.FAIL : Verdict.CAUTION;
    double decides =
        easy || sill <= HELD_STEP_MM && !held
            ? EASY_STEP_MM
            : verdict == Verdict.FAIL ? inside : HELD_STEP_MM;
    Figures figures = Figures.atMost(sill, decides, FigureUnit.MM);
    Words text =
        Words.of(
            sitting.occupant().words() + " steps over ",
            Say.mm(sill),
            " to get in from " + (atLeft == atRight ? "either side" : "the " + side(left)),
            atLeft == atRight ? Words.NONE : other(left ? atRight : atLeft, !left),
            "; up to ",
            Say.mm(EASY_STEP_MM),
            " is easy, to ",
            Say.mm(HELD_STEP_MM),
            " with a handhold, and the inside of their leg is ",
            Say.mm(inside),
            " long",
            verdict == Verdict.PASS
                ? Words.of(".")
                : verdict == Verdict.FAIL
                    ? Words.of(": make it lower there, or let a section open.")
                    : sill > HELD_STEP_MM && climbs
                        ? Words.of(
                            ": see that a foot rest bears who climbs up by it, or make it lower"
                                + " there.")
                        : sill > HELD_STEP_MM
                            ? Words.of(
                                ": swing the leg over with a hand on something firm, or make it"
                                    + " lower there.")
                            : Words.of(handhold(sitting), ", or make it lower."));
    return new Finding(
            STEP, about, Optional.of(stance), verdict, figures, List.of(WAYS, bands, BODY), text)
        .at(sitting.posture().orElseThrow().hip());
  }

  /** Where a handhold would help, and why what is there does not. */
  private Words handhold(Sitting sitting) {
    Handholds handholds = new Handholds(layout, places);
    Handholds.Stand stand = handholds.stand(sitting);
    List<Words> far =
        handholds.shortBeside(sitting).entrySet().stream()
            .map(e -> Words.of(e.getKey() + " is ", Say.mm(e.getValue()), " too far for that"))
            .toList();
    return Words.of(
        ": give the machine a handhold within ",
        Say.mm(Handholds.armMm(sitting.body())),
        " of the shoulder of "
            + sitting.occupant().words()
            + " standing beside it between pan and"
            + " foot rest, ",
        Say.mm(stand.zMm()),
        " up and ",
        Say.mm(stand.yMm()),
        " out",
        far.isEmpty() ? Words.NONE : Words.of(" (", Words.join(", ", far), ")"));
  }

  private static Words other(double sill, boolean left) {
    return Double.isNaN(sill)
        ? Words.of(", and not at all from the " + side(left))
        : Words.of(" (", Say.mm(sill), " from the " + side(left) + ")");
  }

  // --- out

  /** Places of the trunk as it sits; a rucksack takes the room behind it, so it gives none. */
  private static PointMm[] trunk(Sitting sitting) {
    Posture posture = sitting.posture().orElseThrow();
    PointMm up = posture.shoulder().minus(posture.hip());
    PointMm back = up.left().times(sitting.body().gear().rucksackMm() / up.length());
    return new PointMm[] {
      posture.hip().towards(posture.shoulder(), TRUNK_AT).plus(back), posture.shoulder().plus(back)
    };
  }

  /** How deep a trunk, with what is on its back, and the helmet are, mm. */
  private static double trunkMm(Body body) {
    return Math.max(
        body.measures().get("abdominalextensiondepthsitting")
            + body.gear().backClothingMm()
            + body.gear().jacketMm()
            + body.gear().rucksackMm(),
        2 * body.head().radiusMm());
  }

  private Finding out(Sitting sitting, Condition stance, Access access, Optional<String> jammed) {
    Posture posture = sitting.posture().orElseThrow();
    PointMm[] trunk = trunk(sitting);
    double atLeft = access.trunkMm(true, trunk);
    double atRight = access.trunkMm(false, trunk);
    boolean left = atLeft >= atRight;
    double most = Math.max(atLeft, atRight);
    double legs =
        Math.max(legsMm(access, true, foot(posture)), legsMm(access, false, foot(posture)));
    double needs = trunkMm(sitting.body());
    double needsLegs = legMm(sitting.body());
    boolean byLegs = legs - needsLegs < most - needs;
    Figures figures =
        byLegs
            ? Figures.atLeast(legs, needsLegs, FigureUnit.MM)
            : Figures.atLeast(most, needs, FigureUnit.MM);
    Verdict verdict = byLegs ? ofLegs(sitting, figures) : verdict(figures);
    Words text =
        Words.of(
            jammed.map(name -> "With " + name + " jammed shut, ").orElse(""),
            sitting.occupant().words()
                + " gets out "
                + (atLeft == atRight ? "to either side" : "to the " + side(left))
                + " through ",
            Say.mm(figures.value()),
            byLegs
                ? " at the legs, which need "
                : sitting.body().gear().rucksackMm() > 0
                    ? " at the trunk, which with the rucksack on needs "
                    : " at the trunk, which with the helmet needs ",
            Say.mm(figures.limit()),
            verdict == Verdict.PASS
                ? "."
                : verdict == Verdict.FAIL
                    ? jammed.isPresent()
                        ? ": nobody gets out. Let the section come off from inside without tools, or"
                            + " give another way."
                        : ": nobody gets out. Open a section there, or take bodies apart."
                    : Words.of(", and the ways are known to ", Say.mm(CARE_MM), ": try it."));
    List<String> path = new ArrayList<>(List.of("out"));
    jammed.ifPresent(path::add);
    return new Finding(
            GET_OUT,
            about(
                sitting,
                jammed.map(name -> "out with " + name + " jammed").orElse("out"),
                path.toArray(new String[0])),
            Optional.of(stance),
            verdict,
            figures,
            List.of(WAYS, BODY),
            text)
        .at(byLegs ? foot(posture)[0] : trunk[0]);
  }
}

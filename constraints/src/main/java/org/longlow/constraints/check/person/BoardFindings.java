package org.longlow.constraints.check.person;

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
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.machine.shop.BoardMaterial;
import org.longlow.constraints.machine.shop.BoardStrip;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Spreads;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.seat.CushionLoad;
import org.longlow.rider.words.Words;

/** Whether the boards under pan and back bend too far between their brackets over a bump. */
public final class BoardFindings {

  /** How far a board bends. */
  public static final FindingKind BOARD =
      new FindingKind("board", FindingGroup.SEAT, Rests.ON_DRAWING);

  private static final Basis BEAM =
      Basis.model(
          "a beam; the load of 3 g spread evenly over 200 mm in the middle of each span, or over the"
              + " end beyond a bracket, and where these are shorter their share of it over all of"
              + " them");

  private static final Basis PRACTICE =
      Basis.practice(
          "that a body rests on 200 mm at least, 1/50 of the span at 3 g and a third of the strength"
              + " are common practice");

  /** Ends of boards this near to a bracket are at it, mm. */
  private static final double AT_MM = 1;

  /** Brackets are hardly set nearer than this, mm; judgement. */
  private static final double NEAR_MM = 100;

  private BoardFindings() {}

  public static List<Finding> of(Sitting sitting, Condition stance, Places places) {
    List<Finding> findings = new ArrayList<>();
    sitting
        .seated()
        .ifPresent(
            s -> {
              board(sitting, stance, places, sitting.parts().pan(), s.pan(), "pan")
                  .ifPresent(findings::add);
              sitting
                  .parts()
                  .back()
                  .flatMap(b -> board(sitting, stance, places, b, s.back(), "back"))
                  .ifPresent(findings::add);
            });
    return findings;
  }

  private static Optional<Finding> board(
      Sitting sitting,
      Condition stance,
      Places places,
      CushionPart cushion,
      CushionLoad load,
      String role) {
    double length = places.pin(cushion.from()).distance(places.pin(cushion.to()));
    double width = Spreads.of(cushion.base(), places).stream().mapToDouble(Interval::length).sum();
    double thick = places.value(cushion.board());
    double force = BoardStrip.SHOCK_G * load.normalN();
    if (!(force > 0 && width > 0 && thick > 0)) {
      return Optional.empty(); // it carries nothing
    }
    List<Double> brackets = brackets(cushion, places);
    boolean said = !brackets.isEmpty();
    if (said && (brackets.get(0) > length || brackets.size() == 1)) {
      return Optional.of(few(sitting, stance, cushion, role, length));
    }
    Optional<BoardMaterial> material = BoardMaterial.of(cushion.base().material());
    if (material.isEmpty()) {
      return Optional.of(unknown(sitting, stance, cushion, role));
    }
    BoardStrip strip = new BoardStrip(width, thick, material.get());
    List<Double> at = said ? brackets : List.of(0.0, length);
    Worst worst = worst(strip, at, length, force);
    double share = worst.bend().share();
    // unsaid, it breaks for sure where it does on brackets as near as anybody sets them
    boolean breaks =
        said
            ? worst.bend().breaks()
            : strip.between(Math.min(length, NEAR_MM), force, BoardStrip.PATCH_MM).breaks();
    Verdict verdict = share <= 1 ? Verdict.PASS : breaks ? Verdict.FAIL : Verdict.CAUTION;
    Words how =
        Say.format(
            "%sUnder %s at 3 g, %s, the board of %s, %s thick%s, %s over %s: it sags by %s, %s are"
                + " allowed, and takes %s of the stress allowed",
            said
                ? ""
                : "No brackets are said of " + cushion.name() + ", so what follows is supposed. ",
            sitting.occupant().words(),
            Say.newton(force),
            cushion.name(),
            Say.mm(thick),
            " and "
                + (cushion.base().material().isEmpty() ? "taken to be " : "of ")
                + material.get().word(),
            said
                ? worst.free() ? "stands out beyond its last bracket" : "bends between brackets"
                : "bends if its ends alone carry it,",
            Say.wholeMm(worst.spanMm()),
            Say.tenths(worst.bend().sagMm()),
            Say.tenths(worst.bend().mostSagMm()),
            Say.percent(worst.bend().stressShare()));
    Words thicker = Say.format("take a board %s thick", Say.mm(thicker(strip, at, length, force)));
    Words advice =
        share <= 1 ? Words.of(".") : advice(strip, force, said && worst.free(), said, thicker);
    return Optional.of(
        new Finding(
                BOARD,
                About.person(sitting.occupant(), cushion.name() + " board", role)
                    .on(cushion.name()),
                Optional.of(stance),
                verdict,
                Figures.atMost(share, 1, FigureUnit.SHARE),
                List.of(BEAM, ground(material.get()), PRACTICE),
                Words.of(how, advice))
            .at(load.centre()));
  }

  /** Where brackets would hold it, in steps of 5 mm, if they can be set so near. */
  private static Words advice(
      BoardStrip strip, double force, boolean free, boolean said, Words thicker) {
    double apart = Math.floor(strip.longestSpanMm(force) / 5) * 5;
    double beyond = Math.floor(strip.longestBeyondMm(force) / 5) * 5;
    String say = said ? "" : " and say under brackets where they are";
    if (apart < NEAR_MM || free && beyond < NEAR_MM / 2) {
      return Words.of(
          ", too much on brackets as near as ",
          free && apart >= NEAR_MM
              ? Words.of(Say.mm(NEAR_MM / 2), " to its ends too: ")
              : Words.of(Say.mm(NEAR_MM), " too: "),
          thicker,
          said ? "." : "," + say + ".");
    }
    return Say.format(
        ": put brackets at most %s%s apart%s, or %s.",
        free ? Words.of(Words.atMost(beyond), " from its ends and ") : Words.NONE,
        Words.atMost(apart),
        say,
        thicker);
  }

  /** The least whole thickness of the same board that holds on those brackets, mm. */
  private static double thicker(
      BoardStrip strip, List<Double> brackets, double length, double force) {
    double thick = Math.floor(strip.thickMm());
    BoardStrip tried;
    do {
      tried = new BoardStrip(strip.widthMm(), ++thick, strip.of());
    } while (worst(tried, brackets, length, force).bend().share() > 1);
    return thick;
  }

  private static List<Double> brackets(CushionPart cushion, Places places) {
    return cushion.brackets().stream().map(places::value).sorted().distinct().toList();
  }

  private static Basis ground(BoardMaterial of) {
    return Basis.published(of.checked() ? Known.CHECKED : Known.FROM_MEMORY, of.source());
  }

  private static Finding unknown(
      Sitting sitting, Condition stance, CushionPart cushion, String role) {
    String word = cushion.base().material();
    return new Finding(
        BOARD,
        About.person(sitting.occupant(), cushion.name() + " board", role).on(cushion.name()),
        Optional.of(stance),
        Verdict.CAUTION,
        Figures.NONE,
        List.of(BEAM, PRACTICE),
        Words.of(
            "How far the board of "
                + cushion.name()
                + " bends is not known: nothing is known here of how stiff and strong boards of "
                + word
                + " are. Load it with three times the weight on it before you ride, or take plywood,"
                + " steel, aluminium or laminate."));
  }

  private static Finding few(
      Sitting sitting, Condition stance, CushionPart cushion, String role, double length) {
    return new Finding(
        BOARD,
        About.person(sitting.occupant(), cushion.name() + " board", role).on(cushion.name()),
        Optional.of(stance),
        Verdict.FAIL,
        Figures.NONE,
        List.of(BEAM),
        Say.format(
            "The brackets said of %s do not carry its board: two at least must lie within its"
                + " length of %s.",
            cushion.name(), Say.mm(length)));
  }

  private record Worst(BoardStrip.Bend bend, double spanMm, boolean free) {}

  private static Worst worst(BoardStrip strip, List<Double> brackets, double length, double force) {
    Worst worst = new Worst(new BoardStrip.Bend(0, 0, 1, 1), 0, false);
    double last = Math.min(length, brackets.get(brackets.size() - 1));
    for (double end : new double[] {brackets.get(0), length - last}) {
      if (end > AT_MM) {
        worst = worse(worst, new Worst(strip.beyond(end, force, BoardStrip.PATCH_MM), end, true));
      }
    }
    for (int i = 1; i < brackets.size(); i++) {
      double span = Math.min(length, brackets.get(i)) - brackets.get(i - 1);
      if (span > AT_MM) {
        worst =
            worse(worst, new Worst(strip.between(span, force, BoardStrip.PATCH_MM), span, false));
      }
    }
    return worst;
  }

  private static Worst worse(Worst a, Worst b) {
    return b.bend().share() > a.bend().share() ? b : a;
  }
}

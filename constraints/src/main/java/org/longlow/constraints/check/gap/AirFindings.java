package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.algorithm.MinimumDiameter;
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
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Duct;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/** Whether a ducted radiator gets air and gets rid of it, and whom that blows on. */
public final class AirFindings {

  /** How large its intake is. */
  static final FindingKind INTAKE =
      new FindingKind("air-intake", FindingGroup.GAPS, Rests.ON_DRAWING);

  /** How large its outlet is. */
  static final FindingKind OUTLET =
      new FindingKind("air-outlet", FindingGroup.GAPS, Rests.ON_DRAWING);

  /** Whether the air that leaves blows on somebody. */
  static final FindingKind WARM_AIR =
      new FindingKind("warm-air", FindingGroup.GAPS, Rests.ON_DRAWING);

  /** Least intake as a share of the radiator's face: rule of thumb, from memory. */
  private static final double INTAKE_SHARE = 0.3;

  /** Least outlet as a share of the intake, for the air has grown warm: rule of thumb, memory. */
  private static final double OUTLET_SHARE = 1.2;

  /** How far air from an outlet stays hot: judgement, mm. */
  private static final double JET_MM = 300;

  private static final Basis THUMB =
      Basis.practice("a rule of thumb, common practice, from memory; speed and fan are not known")
          .fromMemory();

  private static final Basis JET =
      Basis.practice("warm air straight ahead of the outlet, as far as judgement has it");

  private final Layout layout;
  private final GapRules rules;
  private final Places places;

  public AirFindings(Layout layout, GapRules rules, Places places) {
    this.layout = layout;
    this.rules = rules;
    this.places = places;
  }

  public List<Finding> all(
      Map<String, PartShape> shapes, List<PersonBody> people, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    layout
        .parts(SolidPart.class)
        .filter(p -> !p.duct().equals(Duct.NONE))
        .forEach(
            part -> {
              PartShape shape = shapes.get(part.name());
              areas(part, shape, findings);
              jet(part.duct(), shape)
                  .ifPresent(jet -> blows(part, jet, people, standings, findings));
            });
    return findings;
  }

  private void areas(SolidPart part, PartShape shape, List<Finding> findings) {
    Duct duct = part.duct();
    Optional<Double> in = mm2(duct.intakeWidth(), duct.intakeHeight());
    Optional<Double> out = mm2(duct.outletWidth(), duct.outletHeight());
    in.ifPresent(
        mm2 ->
            findings.add(
                area(
                    INTAKE,
                    part,
                    shape,
                    Figures.atLeast(mm2, INTAKE_SHARE * faceMm2(shape), FigureUnit.MM2),
                    "Air comes to " + part.name() + " by ",
                    Words.of("; ", Say.percent(INTAKE_SHARE), " of its face are asked, "),
                    "make the intake that large")));
    if (in.isPresent() && out.isPresent()) {
      findings.add(
          area(
              OUTLET,
              part,
              shape,
              Figures.atLeast(out.get(), OUTLET_SHARE * in.get(), FigureUnit.MM2),
              "Warm air leaves " + part.name() + " by ",
              Words.of("; ", Say.percent(OUTLET_SHARE), " of its intake are asked, "),
              "make the outlet that large"));
    }
  }

  private Optional<Double> mm2(Optional<Formula> width, Optional<Formula> height) {
    return width.flatMap(w -> height.map(h -> places.value(w) * places.value(h)));
  }

  /** What a rule of thumb asks needs care where it is not kept. */
  private static Finding area(
      FindingKind kind,
      SolidPart part,
      PartShape shape,
      Figures figures,
      String begin,
      Words asked,
      String remedy) {
    boolean kept = figures.verdict() == Verdict.PASS;
    Words text =
        Words.of(
            begin,
            Words.figure(figures.value(), FigureSort.AREA),
            asked,
            Words.figure(figures.limit(), FigureSort.AREA),
            kept ? "." : ": " + remedy + ".");
    return new Finding(
            kind,
            About.parts(part.name()),
            Optional.empty(),
            kept ? Verdict.PASS : Verdict.CAUTION,
            figures,
            List.of(THUMB),
            text)
        .at(shape.centre());
  }

  /** The face that air goes through: the outline's area over its least width, by its breadth. */
  private static double faceMm2(PartShape shape) {
    double thin = new MinimumDiameter(shape.outline()).getLength();
    double side = thin > 0 ? shape.outline().getArea() / thin : 0;
    return side * (shape.leftMm() + shape.rightMm());
  }

  /**
   * Returns the air ahead of the outlet, as broad and as high as that, in one piece: of any outlet,
   * however thin.
   */
  private Optional<Solid> jet(Duct duct, PartShape shape) {
    if (duct.out().isEmpty() || duct.towards().isEmpty() || duct.outletHeight().isEmpty()) {
      return Optional.empty();
    }
    PointMm from = places.pin(duct.out().get());
    PointMm way = places.pin(duct.towards().get()).minus(from);
    if (!(way.length() > 0)) {
      return Optional.empty();
    }
    PointMm to = from.plus(way.times(JET_MM / way.length()));
    double side = places.value(duct.outletWidth().orElseThrow()) / 2;
    double middle = shape.centreYMm();
    Prism air =
        new Prism(
            Curves.bar(from, to, places.value(duct.outletHeight().get())),
            new Interval(middle - side, middle + side));
    return Optional.of(new Solid(shape.part().name(), List.of(air)));
  }

  private void blows(
      SolidPart part,
      Solid jet,
      List<PersonBody> people,
      List<Standing> standings,
      List<Finding> findings) {
    int before = findings.size();
    for (PersonBody person : people) {
      if (jet.overlaps(person.clearOf(part, rules))) {
        findings.add(
            new Finding(
                    WARM_AIR,
                    About.beside(part.name(), person.sitting().occupant()),
                    Optional.of(Standing.under(person.sitting().occupant(), standings)),
                    Verdict.CAUTION,
                    Figures.only(0, FigureUnit.NONE),
                    List.of(JET),
                    Words.of(
                        "Warm air of "
                            + part.name()
                            + " blows on "
                            + person.sitting().occupant().words()
                            + ": turn its outlet down or aside, or end it lower."))
                .at(places.pin(part.duct().out().orElseThrow())));
      }
    }
    if (findings.size() == before) {
      findings.add(
          new Finding(
              WARM_AIR,
              About.parts(part.name()),
              Optional.empty(),
              Verdict.PASS,
              Figures.only(0, FigureUnit.NONE),
              List.of(JET),
              Words.of(
                  "Within ",
                  Say.mm(JET_MM),
                  " of its outlet the warm air of " + part.name() + " blows on nobody.")));
    }
  }
}

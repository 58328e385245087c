package org.longlow.constraints.check.section;

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
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.gap.PersonBody;
import org.longlow.constraints.check.section.LineWays.Way;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Line;
import org.longlow.constraints.machine.line.LinePath;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.words.Names;
import org.longlow.rider.words.Words;

/** Whether cables, hoses and looms are long enough in every state, and how sharply they bend. */
public final class LineFindings {

  /** How sharply it bends. */
  static final FindingKind BEND = new FindingKind("bend", FindingGroup.GAPS, Rests.ON_DRAWING);

  /** More than this to spare, and this share of the way, hangs in the way; judgement. */
  private static final double LOOSE_MM = 150;

  private static final double LOOSE_SHARE = 0.25;

  private LineFindings() {}

  public static List<Finding> of(
      Layout layout,
      Wheels wheels,
      Places drawn,
      List<Standing> standings,
      List<PersonBody> people) {
    if (layout.lines().isEmpty()) {
      return List.of();
    }
    LineWays ways = new LineWays(layout, wheels, drawn, standings);
    List<Finding> findings = new ArrayList<>();
    layout
        .lines()
        .forEach(
            (name, line) -> {
              Extremes found = new Extremes();
              double radius = drawn.value(line.diameter()) / 2;
              LineTyres tyres = new LineTyres(layout, ways, drawn, radius);
              LineRoad road = new LineRoad(layout, wheels, drawn, radius);
              LinePeople aboard = new LinePeople(layout, people, drawn, name, radius);
              ways.each(
                  line,
                  way -> {
                    found.see(way);
                    tyres.see(way);
                    road.see(way);
                    aboard.see(way);
                  });
              findings.add(length(layout, drawn, name, line, found));
              findings.add(bend(drawn, name, line, found));
              tyres.finding(layout, name).ifPresent(findings::add);
              road.finding(name).ifPresent(findings::add);
              findings.addAll(aboard.findings());
            });
    return findings;
  }

  /** Returns the bodies of lines as drawn, as balls along them. */
  public static List<Solid> bodies(Layout layout, Wheels wheels, Places drawn) {
    LineWays ways = new LineWays(layout, wheels, drawn, List.of());
    return layout.lines().entrySet().stream()
        .map(
            line ->
                LineSaid.body(
                    line.getKey(),
                    ways.drawn(line.getValue()),
                    drawn.value(line.getValue().diameter()) / 2))
        .toList();
  }

  /** What is worst of all states. */
  private static final class Extremes {

    /** What differs by less is alike, so that of two like states the first is told, mm. */
    private static final double ALIKE_MM = 1e-6;

    private Way longest;
    private double mostMm = Double.NEGATIVE_INFINITY;
    private double leastMm = Double.POSITIVE_INFINITY;
    private Way bent;
    private LinePath.Bend tightest;

    void see(Way way) {
      double length = way.path().lengthMm();
      if (length > mostMm + ALIKE_MM) {
        mostMm = length;
        longest = way;
      }
      leastMm = Math.min(leastMm, length);
      LinePath.Bend bend = way.path().tightest();
      if (tightest == null || bend.radiusMm() < tightest.radiusMm() - ALIKE_MM) {
        tightest = bend;
        bent = way;
      }
    }
  }

  private static Finding length(
      Layout layout, Places drawn, String name, Line line, Extremes found) {
    double slack = drawn.value(layout.demands().limit(Demands.Key.LINE_SLACK));
    Words way =
        Words.of(
            "The way of " + name + " is ",
            Say.mm(found.leastMm),
            " to ",
            Say.mm(found.mostMm),
            " long",
            found.mostMm - found.leastMm > Extremes.ALIKE_MM
                ? Words.of(" (most", LineSaid.state(found.longest), ")")
                : "");
    Finding f;
    if (line.length().isEmpty()) {
      f =
          new Finding(
              LineSaid.LINE,
              About.thing(name, name),
              Optional.of(found.longest.condition()),
              Verdict.CAUTION,
              Figures.only(found.mostMm, FigureUnit.MM),
              List.of(Sources.of(layout, Demands.Key.LINE_SLACK), LineSaid.HOW),
              Words.of(
                  way,
                  "; cut it to at least ",
                  Words.atLeast(found.mostMm + slack),
                  " and say so."));
    } else {
      double cut = drawn.value(line.length().get());
      Figures figures = Figures.atLeast(cut - found.mostMm, slack, FigureUnit.MM);
      f =
          Finding.held(
              LineSaid.LINE,
              About.thing(name, name),
              Optional.of(found.longest.condition()),
              figures,
              List.of(Sources.of(layout, Demands.Key.LINE_SLACK), LineSaid.HOW),
              Words.of(
                  way,
                  "; cut to ",
                  Say.mm(cut),
                  figures.margin() >= 0
                      ? Words.of(
                          " it has ",
                          Say.mm(cut - found.mostMm),
                          " to spare, and up to ",
                          Say.mm(cut - found.leastMm),
                          " hang loose: tie those away from wheels, chain and heat",
                          isLoose(cut, found) ? ", or cut it shorter." : ".")
                      : Words.of(
                          cut < found.mostMm ? " it is torn: " : " it is tight: ",
                          "make it ",
                          Words.atLeast(-figures.margin()),
                          " longer, or lead it nearer to what it turns about.")));
    }
    boolean loose = line.length().map(drawn::value).filter(cut -> isLoose(cut, found)).isPresent();
    Finding held = loose && f.verdict() == Verdict.PASS ? f.withVerdict(Verdict.CAUTION) : f;
    return LineSaid.placed(held, found.longest, middle(found.longest.path()));
  }

  /** Whether so much hangs loose, even where its way is longest, that it finds a wheel. */
  private static boolean isLoose(double cutMm, Extremes found) {
    return cutMm - found.mostMm > Math.max(LOOSE_MM, LOOSE_SHARE * found.mostMm);
  }

  private static Finding bend(Places drawn, String name, Line line, Extremes found) {
    double diameter = drawn.value(line.diameter());
    double limit = line.bend().map(drawn::value).orElse(usual(line.kind()) * diameter);
    double radius = found.tightest.radiusMm();
    Basis basis =
        line.bend().isPresent()
            ? Basis.ownDemand("this layout's own least radius of " + name)
            : Basis.practice(
                    "common practice, from memory: along the middle of a "
                        + Names.word(line.kind())
                        + " at least "
                        + Say.number(usual(line.kind()))
                        + " times its diameter")
                .fromMemory();
    if (Double.isInfinite(radius)) {
      return new Finding(
          BEND,
          About.thing(name, name),
          Optional.empty(),
          Verdict.PASS,
          Figures.NONE,
          List.of(basis.aside(), LineSaid.HOW),
          Words.of("The way of " + name + " is straight."));
    }
    Figures figures = Figures.atLeast(radius, limit, FigureUnit.MM);
    Finding f =
        Finding.held(
            BEND,
            About.thing(name, name),
            Optional.of(found.bent.condition()),
            figures,
            List.of(basis, LineSaid.HOW),
            Words.of(
                "Where it is sharpest",
                LineSaid.state(found.bent),
                ", " + name + " bends to a radius of ",
                Say.mm(radius),
                "; at least ",
                Say.mm(limit),
                figures.margin() >= 0
                    ? " are asked. What is slack bends more there."
                    : " are asked: set its points farther apart, or in an easier curve."));
    return LineSaid.placed(f, found.bent, found.tightest.at());
  }

  /** How many diameters the middle of a line bends to: common practice, from memory. */
  private static double usual(Line.Kind kind) {
    return switch (kind) {
      case CABLE -> 12;
      case HOSE, FUEL_HOSE -> 6;
      case LOOM -> 4;
    };
  }

  private static double[] middle(LinePath path) {
    List<double[]> points = path.evenly(LineSaid.BALLS_MM);
    return points.get(points.size() / 2);
  }
}

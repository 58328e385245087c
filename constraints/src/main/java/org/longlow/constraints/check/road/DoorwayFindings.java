package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.words.Words;

/** Whether the machine goes through a doorway: pushed upright, nobody on it, steering straight. */
public final class DoorwayFindings {

  /** How wide and how high it is. */
  public static final FindingKind DOORWAY =
      new FindingKind("doorway", FindingGroup.CLEARANCE, Rests.ON_MASSES);

  private static final Basis DRAWN =
      Basis.model(
          "parts as drawn, upright, steering straight; hands beside it need room of theirs");

  private DoorwayFindings() {}

  public static List<Finding> of(Layout layout, List<Standing> standings) {
    return standings.stream()
        .filter(s -> s.kind() == Stance.Kind.UNLADEN)
        .findFirst()
        .map(s -> of(layout, s))
        .orElse(List.of());
  }

  private static List<Finding> of(Layout layout, Standing standing) {
    List<PartShape> shapes =
        standing.shapes().values().stream().filter(s -> !s.prisms().isEmpty()).toList();
    List<Finding> findings = new ArrayList<>();
    if (!shapes.isEmpty()) {
      findings.add(width(layout, standing, shapes));
      findings.add(height(layout, standing, shapes));
    }
    return findings;
  }

  private static double leftMm(Collection<PartShape> shapes) {
    return shapes.stream().mapToDouble(PartShape::leftMm).max().orElse(0);
  }

  private static double rightMm(Collection<PartShape> shapes) {
    return shapes.stream().mapToDouble(PartShape::rightMm).max().orElse(0);
  }

  private static Finding width(Layout layout, Standing standing, List<PartShape> shapes) {
    double left = leftMm(shapes);
    double right = rightMm(shapes);
    double limit = asked(layout, standing, Demands.Key.DOORWAY_WIDTH);
    List<String> widest =
        Stream.concat(
                shapes.stream().filter(s -> s.leftMm() == left),
                shapes.stream().filter(s -> s.rightMm() == right))
            .map(s -> s.part().name())
            .distinct()
            .sorted()
            .toList();
    // pushed in the middle of it, what reaches farther than half
    List<PartShape> out =
        shapes.stream().filter(s -> Math.max(s.leftMm(), s.rightMm()) > limit / 2).toList();
    List<PartShape> stay = shapes.stream().filter(s -> !out.contains(s)).toList();
    Words cure =
        left + right <= limit
            ? Words.of(".")
            : Words.of(
                ": fold or take off " + names(out),
                stay.isEmpty()
                    ? Words.NONE
                    : Words.of(", then it is ", Say.mm(leftMm(stay) + rightMm(stay)), " wide"),
                ".");
    return finding(
        layout,
        standing,
        About.parts(widest.toArray(String[]::new)).named("width"),
        left + right,
        Demands.Key.DOORWAY_WIDTH,
        Words.of(
            "Pushed through a doorway with its steering straight the machine is ",
            Say.mm(left + right),
            " wide, as far as "
                + String.join(" and ", widest)
                + (widest.size() == 1
                    ? " reaches out; the narrowest is "
                    : " reach out; the narrowest is "),
            Say.mm(limit),
            cure));
  }

  private static String names(List<PartShape> shapes) {
    return shapes.stream().map(s -> s.part().name()).collect(Collectors.joining(", "));
  }

  private static double topMm(Standing standing, PartShape shape) {
    return Arrays.stream(standing.ground().heightsMm(shape.outline().getCoordinates()))
        .max()
        .orElse(0);
  }

  private static Finding height(Layout layout, Standing standing, List<PartShape> shapes) {
    double top = shapes.stream().mapToDouble(s -> topMm(standing, s)).max().orElse(0);
    double limit = asked(layout, standing, Demands.Key.DOORWAY_HEIGHT);
    List<PartShape> over = shapes.stream().filter(s -> topMm(standing, s) > limit).toList();
    String highest =
        shapes.stream()
            .filter(s -> topMm(standing, s) == top)
            .map(s -> s.part().name())
            .findFirst()
            .orElse("");
    return finding(
        layout,
        standing,
        About.parts(highest).named("height"),
        top,
        Demands.Key.DOORWAY_HEIGHT,
        Words.of(
            "Pushed through a doorway the machine is ",
            Say.mm(top),
            " high at " + highest + "; the lowest is ",
            Say.mm(limit),
            over.isEmpty() ? "." : ": fold or take off " + names(over) + "."));
  }

  private static double asked(Layout layout, Standing standing, Demands.Key key) {
    return standing.places().value(layout.demands().limit(key));
  }

  private static Finding finding(
      Layout layout, Standing standing, About about, double mm, Demands.Key key, Words words) {
    return Finding.held(
        DOORWAY,
        about,
        Optional.of(standing.condition()),
        Figures.atMost(mm, asked(layout, standing, key), FigureUnit.MM),
        List.of(DRAWN, Sources.of(layout, key)),
        words);
  }
}

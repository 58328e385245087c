package org.longlow.constraints.check.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
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
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.FurtherBody;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.layout.Station;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.words.Words;

/**
 * Sides that changed places, and stations that passed each other, as free measures came out. What a
 * file alone tells is refused when it is read.
 */
public final class BreadthFindings {

  /** How far a part reaches to each side. */
  static final FindingKind BREADTH =
      new FindingKind("breadth", FindingGroup.PLACES, Rests.ON_DRAWING);

  private static final Basis SIDES = Basis.model("reaches as the measures came out");

  private final Places places;
  private final String part;
  private final List<Finding> findings;

  private BreadthFindings(Places places, String part, List<Finding> findings) {
    this.places = places;
    this.part = part;
    this.findings = findings;
  }

  /** Returns one for each part at most, and none where all is as it should be. */
  public static List<Finding> of(Layout layout, Places places) {
    List<Finding> all = new ArrayList<>();
    for (Part part : layout.parts().values()) {
      List<Finding> own = new ArrayList<>();
      new BreadthFindings(places, part.name(), own).look(part);
      own.stream().findFirst().ifPresent(all::add);
    }
    return all;
  }

  private void look(Part part) {
    part.base().spread().filter(Spread::said).ifPresent(s -> sides("", s.left(), s.right(), true));
    if (part instanceof Part.Outlined outlined) {
      varying("", outlined.outline(), outlined.breadth());
      for (int i = 0; i < outlined.bodies().size(); i++) {
        FurtherBody body = outlined.bodies().get(i);
        String what = (body.name().isEmpty() ? "body " + (i + 1) : body.name()) + " of ";
        if (body.spread().said()) {
          sides(what, body.spread().left(), body.spread().right(), false);
        }
        varying(what, body.outline(), body.breadth());
      }
    }
  }

  private void varying(String what, Outline outline, Breadth breadth) {
    for (int i = 0; i < outline.vertices().size(); i++) {
      String at = "point " + (i + 1) + " of " + what;
      Vertex vertex = outline.vertices().get(i);
      vertex.reach().ifPresent(reach -> sides(at, reach));
    }
    List<Station> stations = breadth.stations();
    for (int i = 0; i < stations.size(); i++) {
      sides(named(stations, i) + " of " + what, stations.get(i).reach());
      if (i > 0 && places.value(stations.get(i).x()) <= places.value(stations.get(i - 1).x())) {
        passed(named(stations, i), named(stations, i - 1), what, stations.get(i));
      }
    }
  }

  private static String named(List<Station> stations, int i) {
    String name = stations.get(i).name();
    return "station " + (i + 1) + (name.isEmpty() ? "" : " (" + name + ")");
  }

  private void sides(String where, HalfBreadths reach) {
    sides(where, reach.leftOrRight(), reach.rightOrLeft(), false);
  }

  private void sides(String where, Formula left, Formula right, boolean mustBeWide) {
    double wide = places.value(left) + places.value(right);
    if (wide > 0 || wide == 0 && !mustBeWide) {
      return;
    }
    Set<String> names = new TreeSet<>(left.names());
    names.addAll(right.names());
    findings.add(
        Finding.held(
            BREADTH,
            About.parts(part),
            Optional.empty(),
            Figures.atLeast(Math.min(wide, -1e-9), 0, FigureUnit.MM),
            List.of(SIDES),
            Words.of(
                "As "
                    + String.join(" and ", names)
                    + " came out, left and right of "
                    + where
                    + part,
                " are ",
                Say.mm(wide),
                " together: its sides "
                    + (wide < 0 ? "have changed places" : "leave it no breadth")
                    + ". Give what is free in it a range in which left + right is "
                    + (mustBeWide ? "more than 0." : "at least 0."))));
  }

  private void passed(String station, String before, String what, Station there) {
    findings.add(
        Finding.note(
            BREADTH,
            About.parts(part),
            Verdict.CAUTION,
            SIDES,
            Words.of(
                "As "
                    + String.join(" and ", new TreeSet<>(there.x().names()))
                    + " came out, "
                    + station
                    + " of "
                    + what
                    + part
                    + " does not lie ahead of "
                    + before
                    + "; stations are taken as they lie, and of two in one place the broader reach."
                    + " Give what is free in it a range in which they keep their order.")));
  }
}

package org.longlow.sketcher.report;

import java.util.List;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Inertia;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;

/** Axle loads with and without each crew member, and what everything weighs. */
final class LoadTables {

  private static final List<String> LOADS =
      List.of(
          "Stance",
          "All",
          "Front",
          "Rear",
          "Front share",
          "Centre forward",
          "Centre up",
          "Lifts braking");

  private static final List<String> MASSES =
      List.of("Part", "Kind", "Material", "Mass", "Forward", "Up", "Left");

  private static final List<String> TURNING =
      List.of("Stance", "Centre to the left", "Rolling", "Pitching", "Yawing");

  private LoadTables() {}

  private static void turning(Html h, Study study, FigureWords figures) {
    h.element("h2", "Resistance to turning");
    h.table(
        "turning",
        "Moments of inertia about the centre of mass, axes along those of the drawing; the mass of"
            + " each part spread evenly over its body, people as segments",
        TURNING);
    for (Standing s : study.standings()) {
      if (s.load() != null) {
        Inertia inertia = Inertia.of(s.shapes().values(), s.rider(), s.load().total());
        h.row(
            "",
            TURNING,
            List.of(
                s.condition().says(),
                figures.mm(s.load().total().yMm()),
                figures.inertia(inertia.rollKgM2()),
                figures.inertia(inertia.pitchKgM2()),
                figures.inertia(inertia.yawKgM2())));
      }
    }
    h.closeTable();
  }

  static void write(Html h, Study study) {
    FigureWords figures = FigureWords.of(study);
    h.element("h2", "Axle loads");
    h.table("loads", "On level ground; places from the rear contact point and the road", LOADS);
    for (Standing s : study.standings()) {
      if (s.load() == null) {
        continue;
      }
      AxleLoads a = s.load().axles();
      h.row(
          "",
          LOADS,
          List.of(
              s.condition().says(),
              figures.says(a.total().massKg(), FigureUnit.KG),
              figures.says(a.frontN(), FigureUnit.NEWTON),
              figures.says(a.rearN(), FigureUnit.NEWTON),
              figures.says(a.frontShare(), FigureUnit.SHARE),
              figures.mm(a.total().at().x()),
              figures.mm(a.total().at().z()),
              figures.says(a.brakeLiftG(), FigureUnit.G)));
    }
    h.closeTable();
    turning(h, study, figures);
    SilhouetteTable.write(h, study);
    h.element("h2", "Masses");
    h.table("masses", "Both sides together; places as drawn", MASSES);
    double sum = 0;
    for (PartShape p : study.shapes().values()) {
      sum += p.massKg();
      h.row(
          "",
          MASSES,
          List.of(
              p.part().name(),
              p.part().kind(),
              p.part().base().material(),
              p.massKg() > 0 ? figures.kg(p.massKg()) : "not known",
              figures.mm(p.centre().x()),
              figures.mm(p.centre().z()),
              figures.mm(p.centreYMm())));
    }
    h.row("sum", MASSES, List.of("all parts", "", "", figures.kg(sum), "", "", ""));
    h.closeTable();
  }
}

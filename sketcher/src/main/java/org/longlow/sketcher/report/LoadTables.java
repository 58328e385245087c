package org.longlow.sketcher.report;

import java.util.List;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.shape.PartShape;
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

  private LoadTables() {}

  static void write(Html h, Study study) {
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
              FigureUnit.KG.says(a.total().massKg()),
              FigureUnit.NEWTON.says(a.frontN()),
              FigureUnit.NEWTON.says(a.rearN()),
              FigureUnit.SHARE.says(a.frontShare()),
              FigureWords.mm(a.total().at().x()),
              FigureWords.mm(a.total().at().z()),
              FigureUnit.G.says(a.brakeLiftG())));
    }
    h.closeTable();
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
              p.massKg() > 0 ? FigureWords.fixed(p.massKg(), 2) + " kg" : "not known",
              FigureWords.mm(p.centre().x()),
              FigureWords.mm(p.centre().z()),
              FigureWords.mm(p.centreYMm())));
    }
    h.row(
        "sum", MASSES, List.of("all parts", "", "", FigureWords.fixed(sum, 2) + " kg", "", "", ""));
    h.closeTable();
  }
}

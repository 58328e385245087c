package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.fit.FitReport;
import org.longlow.constraints.fit.Judged;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Sex;
import org.longlow.rider.words.Units;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Mark;

class CrowdPictureTest {

  private static Judged person(double statureMm, double massKg, Verdict verdict) {
    return Judged.of(
        0, "", BodyMeasures.of(Sex.MALE, statureMm, massKg), verdict, List.of(), List.of());
  }

  private static List<Mark.Shape> people(Drawing drawing) {
    return drawing.layers().stream()
        .filter(l -> l.id().equals("people"))
        .flatMap(l -> l.marks().stream())
        .map(Mark.Shape.class::cast)
        .toList();
  }

  @Test
  void verdictsAreToldApartByShapeAndLieWhereTheirStatureIs() {
    FitReport report =
        new FitReport(
            "",
            List.of(
                person(1600, 70, Verdict.PASS),
                person(1700, 75, Verdict.CAUTION),
                person(1800, 80, Verdict.FAIL),
                person(2150, 150, Verdict.FAIL)));
    List<Mark.Shape> shapes = people(CrowdPicture.of("", report, Units.MM));
    assertThat(shapes).hasSize(4);
    Mark.Shape passes = shapes.get(0);
    Mark.Shape care = shapes.get(1);
    Mark.Shape fails = shapes.get(2);
    Mark.Shape outside = shapes.get(3);
    // without colour: filled rounds, empty rounds, lines, squares
    assertThat(passes.style().fill()).isNotNull();
    assertThat(care.style().fill()).isNull();
    assertThat(fails.geometry().getArea()).isZero();
    assertThat(outside.geometry().getNumPoints()).isEqualTo(5);
    assertThat(fails.geometry().getNumGeometries()).isEqualTo(4);
    // equal steps of stature are equal steps on paper
    double low = passes.geometry().getCentroid().getY();
    double middle = care.geometry().getCentroid().getY();
    double high = fails.geometry().getGeometryN(0).getCentroid().getY();
    assertThat(high - middle).isCloseTo(middle - low, org.assertj.core.data.Offset.offset(1e-6));
    assertThat(middle).isGreaterThan(low);
  }

  @Test
  void nobodyOneAndThousandsAreDrawn() {
    assertThat(people(CrowdPicture.of("", new FitReport("", List.of()), Units.IN))).isEmpty();
    FitReport one = new FitReport("", List.of(person(1700, 75, Verdict.FAIL)));
    assertThat(people(CrowdPicture.of("", one, Units.IN))).hasSize(1);
    List<Judged> many = new ArrayList<>();
    for (int i = 0; i < CrowdPicture.MOST + 1; i++) {
      many.add(one.people().get(0));
    }
    Drawing drawing = CrowdPicture.of("all", new FitReport("", many), Units.MM);
    assertThat(people(drawing).get(0).geometry().getNumGeometries())
        .isEqualTo(2 * CrowdPicture.MOST);
    assertThat(drawing.layers().stream().flatMap(l -> l.marks().stream()))
        .anyMatch(m -> m instanceof Mark.Words w && w.text().equals("all, the first 2000 of 2001"));
  }
}

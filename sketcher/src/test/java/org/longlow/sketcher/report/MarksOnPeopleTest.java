package org.longlow.sketcher.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.batik.parser.AWTPathProducer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.Plover;
import org.longlow.sketcher.picture.Shipped;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * Every mark of a report stands on the person it is about, as measured on the page itself: the
 * paths of each elevation are read back and distances taken on them.
 */
class MarksOnPeopleTest {

  private static final double SCALE = 10;
  private static final GeometryFactory JTS = new GeometryFactory();

  /** Thickest cushion of the machines looked at with its board: sink is marked on the board. */
  private static final double CUSHION_MM = 120;

  /** Paths are written to 0.001 mm of paper, outlines are polygons. */
  private static final double DRAWN_MM = 1;

  static Stream<Study> machines() {
    return Stream.concat(Shipped.sample().map(Shipped::study), Stream.of(Plover.study()))
        .map(MarksOnPeopleTest::allToldAboutPeople);
  }

  /** A report marks what fails or needs care; here that is all that is about somebody. */
  private static Study allToldAboutPeople(Study s) {
    List<Finding> findings =
        s.findings().stream()
            .map(f -> f.who().isPresent() ? f.withVerdict(Verdict.CAUTION) : f)
            .toList();
    return new Study(s.layout(), s.placed(), s.shapes(), s.sittings(), s.standings(), findings);
  }

  /** Those figures of the report that have marks. */
  private static String page(Study study) {
    Html h = new Html();
    h.raw("<main>");
    Elevations.write(h, study, ReportOptions.PLAIN.picture(), WorstFirst.of(study.findings()));
    return h.raw("</main>").toString();
  }

  private record Elevation(
      Map<String, Geometry> people,
      Map<String, Geometry> parts,
      Map<String, Point> marks,
      String text) {}

  @ParameterizedTest
  @MethodSource("machines")
  void everyMarkStandsOnItsPerson(Study study) throws Exception {
    List<Elevation> elevations = elevations(page(study));
    for (Elevation e : elevations) {
      e.people().keySet().forEach(name -> assertThat(e.text()).contains(name));
      if (!e.marks().isEmpty()) {
        assertThat(e.text()).containsPattern("Findings? \\d+");
      }
    }
    int looked = 0;
    List<Finding> led = FindingTables.led(study);
    for (Finding f : study.findings()) {
      List<Elevation> with =
          elevations.stream().filter(e -> e.marks().containsKey(f.id())).toList();
      if (f.who().isEmpty() || f.where().isEmpty() || !led.contains(f)) {
        continue;
      }
      assertThat(with).as(f.id() + " is marked once").hasSize(1);
      Geometry person = with.get(0).people().get(f.who().get().person());
      assertThat((Object) person).as(f.id() + ": the person it is about is drawn").isNotNull();
      double mm = SCALE * person.distance(with.get(0).marks().get(f.id()));
      assertThat(mm).as(f.id()).isLessThanOrEqualTo(allowedMm(f));
      looked++;
    }
    assertThat(looked).isGreaterThan(20);
  }

  /** How far from the person a mark may be. */
  private static double allowedMm(Finding f) {
    String family = f.id().substring(0, f.id().indexOf('.'));
    return switch (family) {
      case "gap", "open", "heat" -> Math.max(0, f.value()) + DRAWN_MM;
      case "sink", "pressure", "cover", "board", "contact", "vibration" -> CUSHION_MM;
      case "reach" -> Math.max(0, f.value()) + 60; // a rest is held by hand or sole round it
      // what hides the road, the road under the foot, and what hands and feet work
      case "sight",
          "foot",
          "footrest",
          "feet-down",
          "hold-up",
          "screen-edge",
          "own-body",
          "lever",
          "pedal" ->
          1500;
      default -> DRAWN_MM;
    };
  }

  /** Fully open or shut the lid is clear; only where it is worst does it lie under the mark. */
  @Test
  void aSweepIsDrawnWhereItIsWorst() throws Exception {
    Study study = Shipped.study("heron");
    Finding sweep =
        study.findings().stream()
            .filter(f -> f.id().equals("open.lid.lid.pillionPost"))
            .findFirst()
            .orElseThrow();
    Elevation seen =
        elevations(page(study)).stream()
            .filter(e -> e.marks().containsKey(sweep.id()))
            .findFirst()
            .orElseThrow();
    Point mark = seen.marks().get(sweep.id());
    for (String part : List.of("lid", "pillionPost")) {
      double mm = SCALE * seen.parts().get(part).distance(mark);
      assertThat(mm).as(part).isLessThan(Math.abs(sweep.value()) + DRAWN_MM);
    }
    assertThat(sweep.opening().getAsDouble()).isBetween(0.1, 0.9);
    assertThat(seen.text())
        .contains(String.format(Locale.ROOT, "at %.0f %%", 100 * sweep.opening().getAsDouble()));
  }

  private static List<Elevation> elevations(String html) throws Exception {
    Document page =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(html)));
    Map<String, Element> shared = new HashMap<>();
    each(page.getElementsByTagName("path"), path -> shared.put(path.getAttribute("id"), path));
    NodeList figures = page.getElementsByTagName("figure");
    List<Elevation> out = new ArrayList<>();
    for (int i = 0; i < figures.getLength(); i++) {
      Element figure = (Element) figures.item(i);
      Map<String, Geometry> people = new HashMap<>();
      Map<String, Geometry> parts = new HashMap<>();
      Map<String, Point> marks = new HashMap<>();
      List<Element> drawn = new ArrayList<>();
      each(figure.getElementsByTagName("path"), drawn::add);
      each(figure.getElementsByTagName("use"), drawn::add);
      for (Element mark : drawn) {
        String subject = mark.getAttribute("data-subject");
        String layer = ((Element) mark.getParentNode()).getAttribute("id");
        if (subject.startsWith("finding:")) {
          // the first path of a mark is the line from its place to its sign
          marks.putIfAbsent(
              subject.substring(8), JTS.createPoint(lines(mark, shared).get(0).get(0)));
        } else if (subject.startsWith("person:") && layer.endsWith("-person")) {
          people.merge(subject.substring(7), outline(mark, shared), MarksOnPeopleTest::both);
        } else if (subject.startsWith("part:") && layer.matches(".*-(body|frame)")) {
          parts.merge(subject.substring(5), outline(mark, shared), MarksOnPeopleTest::both);
        }
      }
      out.add(
          new Elevation(
              people,
              parts,
              marks,
              figure.getElementsByTagName("figcaption").item(0).getTextContent()));
    }
    return out;
  }

  private static void each(NodeList elements, Consumer<Element> taking) {
    for (int i = 0; i < elements.getLength(); i++) {
      taking.accept((Element) elements.item(i));
    }
  }

  private static Geometry both(Geometry a, Geometry b) {
    return UnaryUnionOp.union(List.of(a, b));
  }

  /** Rings as areas, other lines as they are, where the page has them. */
  private static Geometry outline(Element drawn, Map<String, Element> shared) throws IOException {
    Geometry all = JTS.createGeometryCollection();
    for (List<Coordinate> line : lines(drawn, shared)) {
      Coordinate[] points = line.toArray(Coordinate[]::new);
      boolean ring = points.length > 3 && points[0].equals2D(points[points.length - 1]);
      Geometry g = ring ? JTS.createPolygon(points).buffer(0) : JTS.createLineString(points);
      all = all.isEmpty() ? g : both(all, g);
    }
    return all;
  }

  private static List<List<Coordinate>> lines(Element drawn, Map<String, Element> shared)
      throws IOException {
    boolean used = drawn.getTagName().equals("use");
    Element path = used ? shared.get(drawn.getAttribute("xlink:href").substring(1)) : drawn;
    AffineTransform to = new AffineTransform();
    if (used) {
      to.translate(
          Double.parseDouble(drawn.getAttribute("x")), Double.parseDouble(drawn.getAttribute("y")));
    }
    List<List<Coordinate>> lines = new ArrayList<>();
    double[] at = new double[6];
    PathIterator steps =
        AWTPathProducer.createShape(
                new StringReader(path.getAttribute("d")), PathIterator.WIND_EVEN_ODD)
            .getPathIterator(to);
    for (; !steps.isDone(); steps.next()) {
      int kind = steps.currentSegment(at);
      if (kind == PathIterator.SEG_MOVETO) {
        lines.add(new ArrayList<>());
      }
      List<Coordinate> line = lines.get(lines.size() - 1);
      line.add(kind == PathIterator.SEG_CLOSE ? line.get(0) : new Coordinate(at[0], at[1]));
    }
    return lines;
  }
}

package org.longlow.svg.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.batik.parser.DefaultPathHandler;
import org.apache.batik.parser.PathParser;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Samples;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.page.TemplateSheets;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Does on files what the user does on the bench: reads the sheets back, lays cross on cross, joins
 * the lines and compares the outline with the one that was drawn. Files round to 0.001 mm; 0.05 mm
 * is what a scriber line can tell.
 */
class ReassemblyTest {

  private static final double TRUE_TO_MM = 0.05;
  private static final double PENCIL_MM = 0.04;
  private static final GeometryFactory GF = new GeometryFactory();

  /** What is read back from one sheet, mm, y up. */
  private record Sheet(Map<String, Coordinate> crosses, List<LineString> cut) {}

  private static List<Page> pages(Paper paper) {
    return TemplateSheets.of("Cowl side", Samples.cowl(), TemplateSettings.on(paper));
  }

  @Test
  void svgSheetsLaidCrossOnCrossGiveTheOutlineBack() throws IOException {
    List<Sheet> sheets = new ArrayList<>();
    for (Page page : pages(Paper.A4)) {
      sheets.add(readSvg(SvgWriterTest.svg(page, Palette.CARD)));
    }
    assertThat(sheets).hasSizeGreaterThan(8);
    compare(sheets);
  }

  @Test
  void pdfPagesLaidCrossOnCrossGiveTheOutlineBack() throws IOException {
    List<Sheet> sheets = new ArrayList<>();
    List<Page> pages = pages(Paper.LETTER);
    try (PDDocument doc = Loader.loadPDF(PdfWriterTest.pdf(pages))) {
      for (PDPage page : doc.getPages()) {
        sheets.add(readPdf(page));
      }
    }
    assertThat(sheets).hasSizeGreaterThan(8);
    compare(sheets);
  }

  private static void compare(List<Sheet> sheets) {
    List<LineString> laid = lay(sheets);
    Geometry lines = GF.createMultiLineString(laid.toArray(new LineString[0]));
    Polygon original = Samples.cowlOutline();
    // Crosses tell how sheets lie to each other; where the whole lies on the bench does not matter.
    lines =
        AffineTransformation.translationInstance(
                original.getEnvelopeInternal().getMinX() - lines.getEnvelopeInternal().getMinX(),
                original.getEnvelopeInternal().getMinY() - lines.getEnvelopeInternal().getMinY())
            .transform(lines);
    assertThat(DiscreteHausdorffDistance.distance(lines, original.getBoundary(), 0.25))
        .isLessThan(TRUE_TO_MM);

    // Give every line the width of a thin pencil: where lines meet they join, and a gap of more
    // than that width would leave
    // a band without an inside. The part has three contours: outline, window, hole.
    Geometry bands = lines.buffer(PENCIL_MM / 2);
    assertThat(bands.getNumGeometries()).isEqualTo(3);
    List<Polygon> insides = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      Polygon band = (Polygon) bands.getGeometryN(i);
      assertThat(band.getNumInteriorRing()).isEqualTo(1);
      insides.add((Polygon) GF.createPolygon(band.getInteriorRingN(0)).buffer(PENCIL_MM / 2));
    }
    insides.sort(Comparator.comparingDouble(Polygon::getArea).reversed());
    Geometry joined = insides.get(0).difference(insides.get(1)).difference(insides.get(2));
    assertThat(joined.symDifference(original).getArea())
        .isLessThan(TRUE_TO_MM * original.getLength());
  }

  /** Lays every sheet on those that lie already, by the mean of the crosses they share. */
  private static List<LineString> lay(List<Sheet> sheets) {
    Map<String, Coordinate> bench = new LinkedHashMap<>(sheets.get(0).crosses());
    List<LineString> out = new ArrayList<>(sheets.get(0).cut());
    List<Sheet> left = new ArrayList<>(sheets.subList(1, sheets.size()));
    while (!left.isEmpty()) {
      Sheet next =
          left.stream()
              .filter(s -> s.crosses().keySet().stream().anyMatch(bench::containsKey))
              .findFirst()
              .orElseThrow(() -> new AssertionError("a sheet shares no cross with the others"));
      left.remove(next);
      double dx = 0;
      double dy = 0;
      int n = 0;
      for (Map.Entry<String, Coordinate> c : next.crosses().entrySet()) {
        Coordinate there = bench.get(c.getKey());
        if (there != null) {
          dx += there.x - c.getValue().x;
          dy += there.y - c.getValue().y;
          n++;
        }
      }
      AffineTransformation move = AffineTransformation.translationInstance(dx / n, dy / n);
      next.crosses().forEach((k, c) -> bench.putIfAbsent(k, move.transform(c, new Coordinate())));
      next.cut().forEach(l -> out.add((LineString) move.transform(l)));
    }
    return out;
  }

  private static Sheet readSvg(String svg) throws IOException {
    Document doc = SvgWriterTest.parse(svg);
    String box = doc.getDocumentElement().getAttribute("viewBox");
    double height = Double.parseDouble(box.split(" ")[3]);
    Map<String, Coordinate> crosses = new LinkedHashMap<>();
    List<LineString> cut = new ArrayList<>();
    NodeList paths = doc.getElementsByTagName("path");
    for (int i = 0; i < paths.getLength(); i++) {
      Element path = (Element) paths.item(i);
      String subject = path.getAttribute("data-subject");
      if (subject.startsWith("register:")) {
        crosses.put(
            subject,
            GF.createMultiLineString(svgLines(path, height).toArray(new LineString[0]))
                .getEnvelopeInternal()
                .centre());
      } else if (((Element) path.getParentNode()).getAttribute("id").equals("cut")) {
        cut.addAll(svgLines(path, height));
      }
    }
    return new Sheet(crosses, cut);
  }

  private static List<LineString> svgLines(Element path, double height) {
    Trace trace = new Trace();
    PathParser parser = new PathParser();
    parser.setPathHandler(
        new DefaultPathHandler() {
          @Override
          public void movetoAbs(float x, float y) {
            trace.move(x, height - y);
          }

          @Override
          public void linetoAbs(float x, float y) {
            trace.line(x, height - y);
          }

          @Override
          public void closePath() {
            trace.close();
          }
        });
    parser.parse(path.getAttribute("d"));
    return trace.lines();
  }

  /**
   * Crosses are told by their shape: two equal strokes that halve each other, alone in the layer of
   * crosses.
   */
  private static Sheet readPdf(PDPage page) throws IOException {
    PdfPaths reader = new PdfPaths(page);
    reader.processPage(page);
    Map<String, Coordinate> crosses = new LinkedHashMap<>();
    String corner = "";
    for (List<LineString> path : reader.of("Register crosses")) {
      if (path.size() == 2 && path.get(0).getNumPoints() == 2) {
        Coordinate c =
            GF.createMultiLineString(path.toArray(new LineString[0]))
                .getEnvelopeInternal()
                .centre();
        corner =
            (c.x < page.getMediaBox().getWidth() * MM_PER_POINT / 2 ? "0" : "1")
                + (c.y > page.getMediaBox().getHeight() * MM_PER_POINT / 2 ? "0" : "1");
        crosses.put(corner, c);
      }
    }
    String label = reader.label();
    int row = label.charAt(0) - 'A';
    int column = Integer.parseInt(label.substring(1)) - 1;
    Map<String, Coordinate> named = new LinkedHashMap<>();
    crosses.forEach(
        (k, c) -> named.put((column + k.charAt(0) - '0') + ":" + (row + k.charAt(1) - '0'), c));
    List<LineString> cut = new ArrayList<>();
    reader.of("Cut line").forEach(cut::addAll);
    return new Sheet(named, cut);
  }

  private static final double MM_PER_POINT = 25.4 / 72;

  /** Collects lines from path commands. */
  private static final class Trace {
    private final List<LineString> done = new ArrayList<>();
    private List<Coordinate> run = new ArrayList<>();

    void move(double x, double y) {
      lines();
      run.add(new Coordinate(x, y));
    }

    void line(double x, double y) {
      run.add(new Coordinate(x, y));
    }

    void close() {
      run.add(run.get(0).copy());
    }

    List<LineString> lines() {
      if (run.size() > 1) {
        done.add(GF.createLineString(run.toArray(new Coordinate[0])));
      }
      run = new ArrayList<>();
      return done;
    }
  }

  /** Reads stroked paths by layer from a page's content stream. */
  private static final class PdfPaths extends PDFGraphicsStreamEngine {
    private final Map<String, List<List<LineString>>> byLayer = new LinkedHashMap<>();
    private final PDPage page;
    private String layer = "";
    private Trace trace = new Trace();

    PdfPaths(PDPage page) {
      super(page);
      this.page = page;
    }

    List<List<LineString>> of(String name) {
      return byLayer.getOrDefault(name, List.of());
    }

    /** Returns the sheet's label as printed: the words after "Sheet". */
    String label() throws IOException {
      try (PDDocument one = new PDDocument()) {
        one.importPage(page);
        String text = new PDFTextStripper().getText(one);
        var m = Pattern.compile("Sheet ([A-Z]\\d+), \\d+ of").matcher(text);
        assertThat(m.find()).isTrue();
        return m.group(1);
      }
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
      layer = properties == null ? "" : properties.getString(COSName.NAME);
    }

    @Override
    public void endMarkedContentSequence() {
      layer = "";
    }

    @Override
    public void moveTo(float x, float y) {
      trace.move(x * MM_PER_POINT, y * MM_PER_POINT);
    }

    @Override
    public void lineTo(float x, float y) {
      trace.line(x * MM_PER_POINT, y * MM_PER_POINT);
    }

    @Override
    public void closePath() {
      trace.close();
    }

    @Override
    public void strokePath() {
      byLayer.computeIfAbsent(layer, k -> new ArrayList<>()).add(trace.lines());
      trace = new Trace();
    }

    @Override
    public void endPath() {
      trace = new Trace();
    }

    @Override
    public void fillPath(int windingRule) {
      trace = new Trace();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
      strokePath();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int windingRule) {}

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
      throw new AssertionError("no curves are written");
    }

    @Override
    public Point2D getCurrentPoint() {
      return new Point2D.Float();
    }

    @Override
    public void shadingFill(COSName name) {}
  }
}

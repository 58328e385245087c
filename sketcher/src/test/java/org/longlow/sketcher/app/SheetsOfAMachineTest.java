package org.longlow.sketcher.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.Shipped;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;

/**
 * Lays the written sheets of a shipped machine's part cross on cross and compares the joined line
 * with the solved outline. 0.05 mm is what a scriber line can tell; files round to 0.001 mm.
 */
class SheetsOfAMachineTest {

  private static final double TRUE_TO_MM = 0.05;
  private static final GeometryFactory GF = new GeometryFactory();

  @TempDir Path folder;

  private record Sheet(Map<String, Coordinate> crosses, List<LineString> lines) {}

  /** One that lies as on the machine, and two that are turned to need less paper. */
  @ParameterizedTest
  @ValueSource(strings = {"lowSides", "header", "backRail"})
  void sheetsLaidCrossOnCrossGiveTheSolvedOutline(String part) throws IOException {
    Study study = Shipped.study("heron");
    Making.TemplatesMade made =
        Making.templates(
            study, folder, TemplateSettings.on(Paper.A4), Set.of(part), StepWatch.NONE);
    assertThat(made.sheets()).isGreaterThan(2);
    List<Sheet> sheets = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      // of the part as it is seen from the side; its edge strip has sheets of its own
      Pattern own = Pattern.compile(part.toLowerCase(Locale.ROOT) + "-a4-[0-9]+\\.svg");
      for (Path file :
          files.filter(f -> own.matcher(f.getFileName().toString()).matches()).sorted().toList()) {
        Sheet sheet = read(Files.readString(file));
        if (!sheet.crosses().isEmpty()) {
          sheets.add(sheet);
        }
      }
    }
    Geometry laid = GF.createMultiLineString(lay(sheets).toArray(new LineString[0]));
    Geometry solved = study.shapes().get(part).outline().getBoundary();
    Geometry moved = back(laid, solved);
    assertThat(DiscreteHausdorffDistance.distance(solved, moved, 0.1)).isLessThan(TRUE_TO_MM);
    assertThat(DiscreteHausdorffDistance.distance(moved, solved, 0.1)).isLessThan(TRUE_TO_MM);
  }

  /** Turns by what the sheets say, and moves corner on corner. */
  private Geometry back(Geometry laid, Geometry solved) throws IOException {
    double deg = 0;
    try (Stream<Path> files = Files.list(folder)) {
      Path first =
          files
              .filter(f -> f.toString().endsWith("-a4-01.svg") && !f.toString().contains("strip"))
              .findFirst()
              .orElseThrow();
      Matcher m =
          Pattern.compile("turned ([0-9.]+)° (left|right)").matcher(Files.readString(first));
      if (m.find()) {
        deg = Double.parseDouble(m.group(1)) * (m.group(2).equals("left") ? -1 : 1);
      }
    }
    // the sheet tells tenths; the rest is found by the closest fit within half a tenth
    Geometry best = null;
    double off = Double.POSITIVE_INFINITY;
    for (int k = -60; k <= 60; k++) {
      Geometry turned =
          AffineTransformation.rotationInstance(Math.toRadians(deg + (deg == 0 ? 0 : k * 0.001)))
              .transform(laid);
      Geometry moved =
          AffineTransformation.translationInstance(
                  solved.getEnvelopeInternal().getMinX() - turned.getEnvelopeInternal().getMinX(),
                  solved.getEnvelopeInternal().getMinY() - turned.getEnvelopeInternal().getMinY())
              .transform(turned);
      double far = DiscreteHausdorffDistance.distance(solved, moved);
      if (far < off) {
        off = far;
        best = moved;
      }
    }
    return best;
  }

  /** Lays every sheet on those that lie already, by a cross that they share. */
  private static List<LineString> lay(List<Sheet> sheets) {
    Map<String, Coordinate> bench = new HashMap<>(sheets.get(0).crosses());
    List<LineString> lines = new ArrayList<>(sheets.get(0).lines());
    List<Sheet> left = new ArrayList<>(sheets.subList(1, sheets.size()));
    while (!left.isEmpty()) {
      Sheet next =
          left.stream()
              .filter(s -> s.crosses().keySet().stream().anyMatch(bench::containsKey))
              .findFirst()
              .orElseThrow(() -> new AssertionError("a sheet shares no cross with the others"));
      left.remove(next);
      String shared =
          next.crosses().keySet().stream().filter(bench::containsKey).findFirst().orElseThrow();
      Coordinate here = next.crosses().get(shared);
      Coordinate there = bench.get(shared);
      AffineTransformation move =
          AffineTransformation.translationInstance(there.x - here.x, there.y - here.y);
      next.crosses().forEach((k, c) -> bench.putIfAbsent(k, move.transform(c, new Coordinate())));
      next.lines().forEach(l -> lines.add((LineString) move.transform(l)));
    }
    return lines;
  }

  private static Sheet read(String svg) {
    Map<String, Coordinate> crosses = new HashMap<>();
    Matcher register =
        Pattern.compile("<path d=\"([^\"]*)\" data-subject=\"(register:[^\"]*)\"").matcher(svg);
    while (register.find()) {
      crosses.put(
          register.group(2),
          GF.createMultiLineString(lines(register.group(1)).toArray(new LineString[0]))
              .getEnvelopeInternal()
              .centre());
    }
    List<LineString> cut = new ArrayList<>();
    Matcher group = Pattern.compile("<g id=\"outline\">(.*?)</g>", Pattern.DOTALL).matcher(svg);
    if (group.find()) {
      Matcher path = Pattern.compile("<path d=\"([^\"]*)\"").matcher(group.group(1));
      while (path.find()) {
        cut.addAll(lines(path.group(1)));
      }
    }
    return new Sheet(crosses, cut);
  }

  /** Straight pieces of a path of absolute M, L and Z, y up. */
  private static List<LineString> lines(String d) {
    List<LineString> lines = new ArrayList<>();
    for (String run : d.split("M")) {
      if (run.isBlank()) {
        continue;
      }
      List<Coordinate> points = new ArrayList<>();
      for (String point : run.replace("Z", "").split("L")) {
        String[] xy = point.trim().split("[ ,]+");
        points.add(new Coordinate(Double.parseDouble(xy[0]), -Double.parseDouble(xy[1])));
      }
      if (run.contains("Z")) {
        points.add(points.get(0).copy());
      }
      lines.add(GF.createLineString(points.toArray(new Coordinate[0])));
    }
    return lines;
  }
}

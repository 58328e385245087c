package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Frame;
import org.longlow.constraints.layout.Outline;

/** Reads the frame and the outline of a part. */
final class OutlineReader {

  /** Most vertices of one outline. */
  static final int MAX_POINTS = 2000;

  static final String SMOOTH = "smooth";

  private final Reading reading;

  OutlineReader(Reading reading) {
    this.reading = reading;
  }

  /** Reads the key {@code frame}: the name of the origin's pin or an object. */
  Frame frame(Obj obj) {
    JsonNode node = obj.required("frame", "the pin at the outline's origin");
    if (node == null) {
      return new Frame("", Optional.empty(), Optional.empty());
    }
    if (!node.isObject()) {
      String origin = reading.reference(obj.at("frame"), node, reading.pins, "pin");
      return new Frame(origin, Optional.empty(), Optional.empty());
    }
    Obj inner = Obj.open(reading, obj.at("frame"), node).orElseThrow();
    String origin = inner.pin("origin", "the outline's origin");
    Optional<String> along = inner.mayPin("along");
    if (along.isPresent() && along.get().equals(origin) && !origin.isEmpty()) {
      reading.faults.meaning(
          inner.at("along"),
          Json.quoted(origin),
          "is the same pin as the origin and gives no direction",
          "name another pin or leave it out");
    }
    Optional<Formula> angle = inner.may("angle", Dim.ANGLE, Sign.ANY);
    inner.close();
    return new Frame(origin, along, angle);
  }

  /** Reads the key {@code outline}. */
  Outline outline(Obj obj) {
    JsonNode node = obj.required("outline", "{\"points\": [...]} or {\"svg\": FILE, ...}");
    Outline nothing = new Outline.Drawn(List.of(), true);
    if (node == null) {
      return nothing;
    }
    Optional<Obj> open = Obj.open(reading, obj.at("outline"), node);
    if (open.isEmpty()) {
      return nothing;
    }
    Obj inner = open.get();
    Outline outline = inner.has("svg") ? traced(inner) : drawn(inner);
    inner.close();
    return outline;
  }

  private Outline drawn(Obj obj) {
    boolean closed = obj.flag("closed", true);
    obj.required("points", "the vertices in order");
    List<Outline.Vertex> vertices = new ArrayList<>();
    for (Obj.Item item : obj.items("points", 2, MAX_POINTS)) {
      vertices.add(vertex(item));
    }
    if (closed && vertices.size() == 2) {
      reading.faults.meaning(
          obj.at("points"),
          "",
          "has 2 entries, a closed outline needs at least 3",
          "add vertices or write \"closed\": false");
    }
    if (closed && vertices.size() > 2) {
      checkShape(obj.at("points"), vertices);
    }
    return new Outline.Drawn(vertices, closed);
  }

  private Outline.Vertex vertex(Obj.Item item) {
    Formula lost = Quantities.LOST;
    JsonNode json = item.json();
    if (json.isTextual()) {
      return onPin(item.path(), json, false);
    }
    boolean smooth = false;
    if (json.isArray() && json.size() > 1) {
      smooth = json.get(json.size() - 1).asText().equals(SMOOTH);
      if (smooth && json.size() == 2 && json.get(0).isTextual()) {
        return onPin(JsonPath.index(item.path(), 0), json.get(0), true);
      }
    }
    if (!json.isArray() || json.size() != (smooth && json.size() == 3 ? 3 : 2)) {
      reading.faults.structure(
          item.path(),
          Json.shown(json),
          "is no vertex",
          "write [\"x mm\", \"z mm\"], [\"x mm\", \"z mm\", \"smooth\"], a pin or [pin,"
              + " \"smooth\"]");
      return new Outline.Vertex(lost, lost, null, false);
    }
    Formula x =
        reading.quantities.read(JsonPath.index(item.path(), 0), json.get(0), Dim.LENGTH, Sign.ANY);
    Formula z =
        reading.quantities.read(JsonPath.index(item.path(), 1), json.get(1), Dim.LENGTH, Sign.ANY);
    return new Outline.Vertex(x, z, null, smooth);
  }

  private Outline.Vertex onPin(String path, JsonNode json, boolean smooth) {
    String pin = reading.reference(path, json, reading.pins, "pin");
    return new Outline.Vertex(null, null, pin, smooth);
  }

  private Outline traced(Obj obj) {
    String file = obj.text("svg", "");
    String path = obj.text("path", "");
    Formula scale = obj.need("scale", Dim.LENGTH, Sign.POSITIVE);
    Optional<Double> mm = reading.quantities.fixedValue(scale).filter(s -> s > 0);
    if (mm.isEmpty() || file.isEmpty()) {
      if (file.isEmpty() && obj.has("svg")) {
        reading.faults.meaning(obj.at("svg"), "\"\"", "names no file", "name an SVG file");
      }
      return new Outline.Traced(file, path, scale, List.of(), true);
    }
    SvgTrace trace = SvgTrace.read(reading.folder, file, path, mm.get());
    if (trace.fault() != null) {
      String at = trace.aboutPath() ? "path" : "svg";
      reading.faults.meaning(
          obj.at(at), Json.quoted(at.equals("path") ? path : file), trace.fault(), trace.remedy());
    } else if (trace.closed()) {
      checkShape(obj.at("svg"), trace.vertices());
    }
    return new Outline.Traced(file, path, scale, trace.vertices(), trace.closed());
  }

  /** Reports a closed outline that crosses itself; outlines through pins depend on the solver. */
  private void checkShape(String path, List<Outline.Vertex> vertices) {
    List<Coordinate> ring = new ArrayList<>();
    for (Outline.Vertex v : vertices) {
      if (v.pin() != null) {
        return;
      }
      Optional<Double> x = reading.quantities.fixedValue(v.x());
      Optional<Double> z = reading.quantities.fixedValue(v.z());
      if (x.isEmpty() || z.isEmpty()) {
        return;
      }
      ring.add(new Coordinate(x.get(), z.get()));
    }
    ring.add(ring.get(0).copy());
    TopologyValidationError error =
        new IsValidOp(new GeometryFactory().createPolygon(ring.toArray(new Coordinate[0])))
            .getValidationError();
    if (error != null) {
      Coordinate at = error.getCoordinate();
      reading.faults.meaning(
          path,
          "",
          "crosses or touches itself near x "
              + Sign.number(Math.rint(at.x * 10) / 10)
              + " mm, z "
              + Sign.number(Math.rint(at.y * 10) / 10)
              + " mm",
          "put the vertices in order round the edge, each once");
    }
  }
}

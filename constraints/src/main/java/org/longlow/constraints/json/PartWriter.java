package org.longlow.constraints.json;

import static org.longlow.constraints.json.LayoutWriter.flag;
import static org.longlow.constraints.json.LayoutWriter.names;
import static org.longlow.constraints.json.LayoutWriter.object;
import static org.longlow.constraints.json.LayoutWriter.quantity;
import static org.longlow.constraints.json.LayoutWriter.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Frame;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;

/** Writes parts: what the kind has first, what every part has after it. */
final class PartWriter {

  private PartWriter() {}

  static JsonNode part(Part part) {
    ObjectNode node = object();
    node.put("kind", part.kind());
    if (part instanceof Part.Wheel p) {
      wheel(node, p);
    } else if (part instanceof Part.Front p) {
      front(node, p);
    } else if (part instanceof Part.Swingarm p) {
      swingarm(node, p);
    } else if (part instanceof Part.Tube p) {
      tube(node, p);
    } else if (part instanceof Part.Solid p) {
      frame(node, p.frame());
      outline(node, p.outline());
    } else if (part instanceof Part.Shell p) {
      frame(node, p.frame());
      outline(node, p.outline());
      quantity(node, "thickness", p.thickness());
      flag(node, "open", p.open());
    } else if (part instanceof Part.Cushion p) {
      cushion(node, p);
    } else if (part instanceof Part.Rest p) {
      rest(node, p);
    } else if (part instanceof Part.Lamp p) {
      lamp(node, p);
    } else if (part instanceof Part.Stand p) {
      stand(node, p);
    }
    base(node, part.base(), part.usuallyHot());
    return node;
  }

  private static void base(ObjectNode node, PartBase base, boolean usuallyHot) {
    base.spread()
        .ifPresent(
            s -> {
              quantity(node, "left", s.left());
              quantity(node, "right", s.right());
              flag(node, "both", s.both());
            });
    quantity(node, "mass", base.mass());
    text(node, "material", base.material());
    flag(node, "steered", base.steered());
    if (base.hot() != usuallyHot) {
      node.put("hot", base.hot());
    }
    names(node, "touches", base.touches());
    text(node, "note", base.note());
  }

  private static void wheel(ObjectNode node, Part.Wheel p) {
    node.put("end", Obj.word(p.end()));
    node.put("axle", p.axle());
    text(node, "tyre", p.tyre());
    quantity(node, "radius", p.radius());
    quantity(node, "width", p.width());
    quantity(node, "crown", p.crown());
  }

  private static void front(ObjectNode node, Part.Front p) {
    node.put("type", Obj.word(p.type()));
    node.put("top", p.top());
    node.put("bottom", p.bottom());
    p.pivot().ifPresent(pin -> node.put("pivot", pin));
    node.put("axle", p.axle());
    quantity(node, "tube", p.tube());
    quantity(node, "y", p.y());
    quantity(node, "bump", p.bump());
    quantity(node, "droop", p.droop());
    quantity(node, "rate", p.rate());
    quantity(node, "preload", p.preload());
  }

  private static void swingarm(ObjectNode node, Part.Swingarm p) {
    node.put("pivot", p.pivot());
    node.put("axle", p.axle());
    quantity(node, "depth", p.depth());
    quantity(node, "bump", p.bump());
    quantity(node, "droop", p.droop());
    quantity(node, "rate", p.rate());
    quantity(node, "preload", p.preload());
  }

  private static void tube(ObjectNode node, Part.Tube p) {
    names(node, "path", p.path());
    quantity(node, "diameter", p.diameter());
    quantity(node, "wall", p.wall());
    quantity(node, "bendRadius", p.bendRadius());
    quantity(node, "y", p.y());
    flag(node, "both", p.both());
  }

  private static void frame(ObjectNode node, Frame frame) {
    if (frame.along().isEmpty() && frame.angle().isEmpty()) {
      node.put("frame", frame.origin());
      return;
    }
    ObjectNode inner = node.putObject("frame");
    inner.put("origin", frame.origin());
    frame.along().ifPresent(pin -> inner.put("along", pin));
    quantity(inner, "angle", frame.angle());
  }

  private static void outline(ObjectNode node, Outline outline) {
    ObjectNode inner = node.putObject("outline");
    if (outline instanceof Outline.Traced traced) {
      inner.put("svg", traced.file());
      text(inner, "path", traced.path());
      quantity(inner, "scale", traced.scale());
      return;
    }
    ArrayNode points = inner.putArray("points");
    for (Outline.Vertex v : outline.vertices()) {
      if (v.pin() != null && !v.smooth()) {
        points.add(v.pin());
        continue;
      }
      ArrayNode point = points.addArray();
      if (v.pin() != null) {
        point.add(v.pin());
      } else {
        point.add(v.x().text()).add(v.z().text());
      }
      if (v.smooth()) {
        point.add("smooth");
      }
    }
    inner.put("closed", outline.closed());
  }

  private static void cushion(ObjectNode node, Part.Cushion p) {
    node.put("role", Obj.word(p.role()));
    node.put("seat", p.seat());
    node.put("from", p.from());
    node.put("to", p.to());
    quantity(node, "board", p.board());
    ArrayNode layers = node.putArray("layers");
    for (FoamSpec foam : p.layers()) {
      ObjectNode layer = layers.addObject();
      text(layer, "name", foam.name());
      quantity(layer, "thickness", foam.thickness());
      quantity(layer, "density", foam.density());
      quantity(layer, "ifd25", foam.ifd25());
      quantity(layer, "supportFactor", foam.supportFactor());
      flag(layer, "closedCell", foam.closedCell());
      quantity(layer, "wallStress", foam.wallStress());
      quantity(layer, "polymerDensity", foam.polymerDensity());
    }
  }

  private static void rest(ObjectNode node, Part.Rest p) {
    node.put("seat", p.seat());
    node.put("at", p.at());
    p.to().ifPresent(pin -> node.put("to", pin));
    quantity(node, "diameter", p.diameter());
    quantity(node, "y", p.y());
    quantity(node, "length", p.length());
    flag(node, "folds", p.folds());
  }

  private static void lamp(ObjectNode node, Part.Lamp p) {
    node.put("lamp", Obj.word(p.type()));
    node.put("at", p.at());
    quantity(node, "y", p.y());
    flag(node, "pair", p.pair());
    quantity(node, "halfWidth", p.halfWidth());
    quantity(node, "halfHeight", p.halfHeight());
    quantity(node, "depth", p.depth());
    node.put("colour", p.colour());
  }

  private static void stand(ObjectNode node, Part.Stand p) {
    node.put("pivot", p.pivot());
    node.put("foot", p.foot());
    node.put("stowed", p.stowed());
    quantity(node, "y", p.y());
    quantity(node, "diameter", p.diameter());
    quantity(node, "lean", p.lean());
  }
}

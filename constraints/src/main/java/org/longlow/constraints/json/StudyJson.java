package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.solve.Freedom;
import org.longlow.constraints.stand.Inertia;
import org.longlow.constraints.stand.SeenFrom;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Profiles;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Names;

/** A study as the JSON object that {@code check --json} prints. Scripts depend on its names. */
public final class StudyJson {

  private StudyJson() {}

  /**
   * Returns {@code {"layout", "status", "freedoms", "bodies", "findings"}}; status is {@code pass},
   * {@code fail} or {@code contradicts}; a freedom is the pins and measures that move together,
   * with their speeds. {@code bodies} holds {@code silhouettes} (mm², mm from the rear contact
   * point, to the left and over the road) and {@code inertia} (kg m² about the centre of mass, one
   * for each stance whose masses are known).
   */
  public static String of(Study study) {
    ObjectNode root = Json.NODES.objectNode();
    root.put("layout", study.layout().name());
    root.put("status", study.contradicts() ? "contradicts" : study.failing() > 0 ? "fail" : "pass");
    ArrayNode freedoms = root.putArray("freedoms");
    study
        .placed()
        .report()
        .diagnosis()
        .ifPresent(d -> d.freedoms().forEach(f -> freedoms.add(freedom(f))));
    bodies(study, root.putObject("bodies"));
    ArrayNode findings = root.putArray("findings");
    study.findings().forEach(f -> findings.add(finding(f)));
    return Json.pretty(root, 160, 1);
  }

  private static void bodies(Study study, ObjectNode into) {
    ArrayNode silhouettes = into.putArray("silhouettes");
    for (Profiles.Profile p : Profiles.of(study)) {
      ObjectNode node = silhouettes.addObject();
      double across = p.seen().centroid().x();
      double up = p.seen().centroid().z();
      node.put("of", p.what());
      node.put("from", p.from() == SeenFrom.ABOVE ? "below" : Names.word(p.from()));
      number(node, "areaMm2", p.seen().areaMm2());
      switch (p.from()) {
        case SIDE -> {
          number(node, "xMm", across);
          number(node, "zMm", up);
        }
        case FRONT -> {
          number(node, "yMm", across);
          number(node, "zMm", up);
        }
        case ABOVE -> {
          number(node, "xMm", across);
          number(node, "yMm", up);
        }
      }
    }
    ArrayNode inertia = into.putArray("inertia");
    for (Standing s : study.standings()) {
      if (s.load() != null) {
        Inertia about = Inertia.of(s.shapes().values(), s.rider(), s.load().total());
        ObjectNode node = inertia.addObject();
        node.put("stance", s.condition().says());
        number(node, "massKg", s.load().total().massKg());
        number(node, "rollKgM2", about.rollKgM2());
        number(node, "pitchKgM2", about.pitchKgM2());
        number(node, "yawKgM2", about.yawKgM2());
        number(node, "productKgM2", about.productKgM2());
      }
    }
  }

  private static ObjectNode freedom(Freedom freedom) {
    ObjectNode node = Json.NODES.objectNode();
    node.put("lead", freedom.lead());
    ObjectNode moves = node.putObject("moves");
    freedom.moves().forEach(moves::put);
    return node;
  }

  private static ObjectNode finding(Finding f) {
    ObjectNode node = Json.NODES.objectNode();
    node.put("id", f.id());
    node.put("subject", f.subject());
    node.put("stance", f.stanceWords());
    node.put("verdict", f.verdict().word());
    number(node, "value", f.value());
    number(node, "limit", f.limit());
    number(node, "margin", f.margin());
    node.put("unit", f.unit().word());
    node.put("source", f.source());
    node.put("text", f.text());
    node.put("group", f.group().title());
    if (!f.group().caution().isEmpty()) {
      node.put("caution", f.group().caution());
    }
    return node;
  }

  private static void number(ObjectNode node, String key, double value) {
    if (Double.isFinite(value)) {
      node.put(key, value);
    } else {
      node.putNull(key);
    }
  }
}

package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.solve.Freedom;
import org.longlow.constraints.study.Study;

/** A study as the JSON object that {@code check --json} prints. Scripts depend on its names. */
public final class StudyJson {

  private StudyJson() {}

  /**
   * Returns {@code {"layout", "status", "freedoms", "findings"}}; status is {@code pass}, {@code
   * fail} or {@code contradicts}; a freedom is the pins and measures that move together, with their
   * speeds.
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
    ArrayNode findings = root.putArray("findings");
    study.findings().forEach(f -> findings.add(finding(f)));
    return Json.pretty(root, 160, 1);
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

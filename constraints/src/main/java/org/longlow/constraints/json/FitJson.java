package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.fit.AdjustReport;
import org.longlow.constraints.fit.FitReport;
import org.longlow.constraints.fit.Share;
import org.longlow.constraints.fit.Telling;
import org.longlow.rider.body.Sex;

/** How a crowd fits as the JSON object that {@code fit --json} prints: mm, kg, deg, shares of 1. */
public final class FitJson {

  private FitJson() {}

  /** Returns {@code {"layout", "crowd", "fit", ..., "reasons", "who", "adjusters", "least"}}. */
  public static String of(String layout, FitReport report, Optional<AdjustReport> adjusted) {
    ObjectNode root = Json.NODES.objectNode();
    root.put("layout", layout);
    root.put("crowd", report.crowd());
    share(root.putObject("fit"), report.fitting());
    share(root.putObject("fitWomen"), report.fitting(Sex.FEMALE));
    share(root.putObject("fitMen"), report.fitting(Sex.MALE));
    share(root.putObject("pass"), report.share(Verdict.PASS));
    share(root.putObject("caution"), report.share(Verdict.CAUTION));
    share(root.putObject("fail"), report.share(Verdict.FAIL));
    share(root.putObject("outsideSurvey"), report.outside());
    who(root.putArray("who"), report.failing());
    ArrayNode reasons = root.putArray("reasons");
    for (FitReport.Stopping s : report.stopping()) {
      ObjectNode node = reasons.addObject();
      node.put("reason", s.reason().key());
      node.put("text", s.reason().words());
      share(node, s.all());
      node.put("alone", s.alone().count());
      who(node.putArray("who"), s.who());
    }
    adjusted.ifPresent(a -> adjusted(root, a));
    return Json.pretty(root, 160, 2);
  }

  private static void share(ObjectNode into, Share share) {
    into.put("people", share.count());
    into.put("of", share.of());
    if (share.of() > 0) {
      into.put("share", share.value());
    }
    into.put("low", share.low());
    into.put("high", share.high());
  }

  private static void who(ArrayNode into, List<Telling> who) {
    for (Telling t : who) {
      ObjectNode node = into.addObject();
      node.put("measure", t.trait().words());
      node.put("mean", t.theirs());
      node.put("others", t.others());
      node.put("apart", t.apart());
    }
  }

  private static void adjusted(ObjectNode root, AdjustReport a) {
    ArrayNode adjusters = root.putArray("adjusters");
    for (AdjustReport.Curve curve : a.curves()) {
      ObjectNode node = adjusters.addObject();
      node.put("adjuster", curve.adjuster().name());
      node.put("text", curve.adjuster().words());
      node.put("unit", curve.adjuster().turns() ? "deg" : "mm");
      share(node.putObject("anywhere"), curve.anywhere());
      ArrayNode settings = node.putArray("settings");
      for (AdjustReport.Point point : curve.points()) {
        ObjectNode one = settings.addObject();
        one.put("setting", point.setting());
        point.share().ifPresent(s -> share(one, s));
        if (point.share().isEmpty()) {
          one.put("barred", point.barred());
        }
      }
    }
    ArrayNode people = root.putArray("toTakeIn");
    for (int i = 0; i < a.anchors().size(); i++) {
      ObjectNode node = people.addObject();
      node.put("who", a.anchors().get(i).words());
      node.put("fits", a.fitting().get(i));
      if (a.least().isPresent()) {
        node.put("takenIn", a.least().get().taken().get(i));
      }
    }
    ArrayNode least = root.putArray("least");
    a.least()
        .ifPresent(
            l ->
                l.ranges()
                    .forEach(
                        r ->
                            least
                                .addObject()
                                .put("adjuster", r.adjuster().name())
                                .put("from", r.from())
                                .put("to", r.to())));
  }
}

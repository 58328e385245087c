package org.longlow.rider.body;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * The survey's derived measurements as arithmetic on others, in an order in which each needs only
 * earlier ones.
 */
final class Derived {

  /** One rule: what it reads and how. */
  record Rule(Set<String> reads, ToDoubleFunction<Map<String, Double>> formula) {}

  private static final Map<String, Rule> RULES = new LinkedHashMap<>();

  static {
    sum("d_acromionheightsitting_standing", "acromialheight", "-stature", "sittingheight");
    sum("d_acromionheightsitting_elbow", "elbowrestheight", "shoulderelbowlength");
    sum("d_cervicaleheightsitting", "cervicaleheight", "-stature", "sittingheight");
    sum("d_trochanterionaboveseat", "trochanterionheight", "-stature", "sittingheight");
    sum("d_thighlink", "trochanterionheight", "-lateralfemoralepicondyleheight");
    sum("d_shanklink", "lateralfemoralepicondyleheight", "-lateralmalleolusheight");
    sum("d_wristtogrip", "forearmcenterofgriplength", "-forearmhandlength", "handlength");
    sum("d_elbowtogrip", "radialestylionlength", "d_wristtogrip");
    sum("d_shouldertogrip", "acromionradialelength", "d_elbowtogrip");
    sum("d_eyetovertex", "sittingheight", "-eyeheightsitting");
    sum("d_tragionheightsitting", "sittingheight", "-tragiontopofhead");
    sum("d_tragionabovecervicale", "stature", "-tragiontopofhead", "-cervicaleheight");
    sum("d_acromionbelowcervicale", "cervicaleheight", "-acromialheight");
    sum("d_acromiontotrochanterion", "acromialheight", "-trochanterionheight");
    sum("d_cervicaletotrochanterion", "cervicaleheight", "-trochanterionheight");
    RULES.put(
        "d_neckdiameter",
        new Rule(Set.of("neckcircumference"), m -> m.get("neckcircumference") / Math.PI));
    sum("d_kneetopaboveepicondyle", "kneeheightsitting", "-lateralfemoralepicondyleheight");
    sum("d_toebeyondball", "footlength", "-balloffootlength");
  }

  private Derived() {}

  static Map<String, Rule> rules() {
    return RULES;
  }

  private static void sum(String name, String... terms) {
    Set<String> reads = new java.util.LinkedHashSet<>();
    for (String term : terms) {
      reads.add(term.startsWith("-") ? term.substring(1) : term);
    }
    RULES.put(
        name,
        new Rule(
            reads,
            m -> {
              double total = 0;
              for (String term : terms) {
                total += term.startsWith("-") ? -m.get(term.substring(1)) : m.get(term);
              }
              return total;
            }));
  }
}

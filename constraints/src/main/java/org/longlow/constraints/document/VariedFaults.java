package org.longlow.constraints.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Variant;

/**
 * Holds each variant of a sound layout to what every layout is held to, and tells what is wrong
 * where the file says it. Where there are many, only those are that are traced from a file; {@link
 * Varied#named} lets no other through either.
 */
final class VariedFaults {

  /** Each takes some milliseconds at every edit: more are held to it when they are asked for. */
  static final int MOST_AT_ONCE = 20;

  private final Layout layout;
  private final Tracer tracer;
  private final Faults faults;

  VariedFaults(Layout layout, Tracer tracer, Faults faults) {
    this.layout = layout;
    this.tracer = tracer;
    this.faults = faults;
  }

  /** Reports all faults; returns the layout with its variants in their dimensions. */
  Layout fitted() {
    Map<String, Variant> fitted = new LinkedHashMap<>();
    layout
        .variants()
        .forEach(
            (name, variant) -> {
              String path = FieldPath.key("$.variants", name);
              Map<String, String> places = new LinkedHashMap<>();
              places(places, "measures", variant.measures(), path + ".measures");
              places(places, "pins", variant.pins(), path + ".pins");
              places(places, "parts", variant.parts(), path + ".parts");
              if (waits(layout, variant)
                  || variant.equals(
                      new Variant(Map.of(), Map.of(), Map.of(), List.of(), variant.note()))) {
                fitted.put(name, variant);
                return;
              }
              Layout varied = checked(Varied.said(layout, name), places, path);
              fitted.put(
                  name,
                  new Variant(
                      measures(variant.measures(), varied.measures()),
                      of(variant.pins(), varied.pins()),
                      of(variant.parts(), varied.parts()),
                      variant.without(),
                      variant.note()));
            });
    AsBuilt built = layout.asBuilt();
    if (!built.isNothing()) {
      Map<String, String> places = new LinkedHashMap<>();
      places(places, "measures", built.measures(), "$.asBuilt.measures");
      places(places, "pins", built.pins(), "$.asBuilt.pins");
      built.masses().keySet().forEach(n -> field(places, n, "mass", "$.asBuilt.masses"));
      built.radii().keySet().forEach(n -> field(places, n, "radius", "$.asBuilt.radii"));
      for (int i = 0; i < built.spans().size(); i++) {
        places.put(
            FieldPath.key("$.ties", Varied.tieName(layout, i)),
            FieldPath.index("$.asBuilt.spans", i));
      }
      checked(Varied.measured(layout), places, "$.asBuilt");
    }
    return layout.variants().isEmpty() ? layout : Change.set(layout, fitted, "variants");
  }

  /** Whether a variant is held to it only when it is asked for. */
  private static boolean waits(Layout layout, Variant variant) {
    return layout.variants().size() > MOST_AT_ONCE
        && variant.parts().values().stream()
            .noneMatch(p -> p.edge().filter(Outline.Traced.class::isInstance).isPresent());
  }

  /** Returns remarks on variants that nobody looked at yet. */
  static List<String> notes(Layout layout) {
    long waiting = layout.variants().values().stream().filter(v -> waits(layout, v)).count();
    return waiting == 0
        ? List.of()
        : List.of(
            "of "
                + layout.variants().size()
                + " variants "
                + waiting
                + " are not checked before they are asked for; with at most "
                + MOST_AT_ONCE
                + " all are");
  }

  private static void places(
      Map<String, String> places, String group, Map<String, ?> entries, String path) {
    entries
        .keySet()
        .forEach(n -> places.put(FieldPath.key("$." + group, n), FieldPath.key(path, n)));
  }

  private static void field(Map<String, String> places, String part, String key, String path) {
    places.put(FieldPath.key("$.parts", part) + "." + key, FieldPath.key(path, part));
  }

  /** What the layout says of a measure does not become the variant's own. */
  private static Map<String, Measure> measures(
      Map<String, Measure> said, Map<String, Measure> fitted) {
    Map<String, Measure> all = new LinkedHashMap<>(of(said, fitted));
    all.replaceAll((name, is) -> said.get(name).equals(said.get(name).onlyIs()) ? is.onlyIs() : is);
    return all;
  }

  private static <V> Map<String, V> of(Map<String, V> said, Map<String, V> fitted) {
    Map<String, V> all = new LinkedHashMap<>();
    said.forEach((name, value) -> all.put(name, fitted.getOrDefault(name, value)));
    return all;
  }

  private Layout checked(Layout varied, Map<String, String> places, String whole) {
    Faults found = new Faults();
    Layout fitted = new Checking(varied, tracer, found, null).layout();
    List<Fault> list = found.list();
    for (Fault fault : list) {
      Fault told = told(fault, places, whole);
      if (found.breaksStructure()) {
        faults.structure(told.path(), told.value(), told.message(), told.remedy());
      } else {
        faults.meaning(told.path(), told.value(), told.message(), told.remedy());
      }
    }
    return fitted;
  }

  private static Fault told(Fault fault, Map<String, String> places, String whole) {
    for (Map.Entry<String, String> place : places.entrySet()) {
      String rest =
          fault.path().startsWith(place.getKey())
              ? fault.path().substring(place.getKey().length())
              : null;
      if (rest != null && (rest.isEmpty() || rest.startsWith(".") || rest.startsWith("["))) {
        return new Fault(place.getValue() + rest, fault.value(), fault.message(), fault.remedy());
      }
    }
    return new Fault(
        whole,
        fault.value(),
        "does not suit " + fault.path() + ", which then " + fault.message(),
        "change one of them");
  }
}

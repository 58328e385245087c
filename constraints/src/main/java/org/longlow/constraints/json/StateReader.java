package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;

/** Reads sections, stances, crew and demands. */
final class StateReader {

  /**
   * Statures read, mm. The survey behind the figures spans 1409 to 1993 mm (ANSUR II, 2012,
   * adults); the range allows as much again beyond it as people of both sexes differ, and keeps
   * typing slips out.
   */
  static final Sign STATURE = Sign.between(1200, 2300);

  /** Body masses read, kg; wide enough for any adult, and keeps typing slips out. */
  static final Sign BODY_MASS = Sign.between(30, 250);

  private static final Sign MEASURED = Sign.between(10, 2300);
  private static final List<String> RULES = List.of("us", "un-r53", "uk");

  private final Reading reading;

  StateReader(Reading reading) {
    this.reading = reading;
  }

  /** Returns the section, or null where it is no object. */
  Section section(Obj.Entry e) {
    reading.checkName(e.path(), e.name(), "section");
    if (List.of(Pin.FRAME, Pin.FRONT_WHEEL, Pin.REAR_WHEEL).contains(e.name())) {
      reading.faults.meaning(e.path(), "", "already means what pins move with", "rename it");
    }
    Obj obj = Obj.open(reading, e.path(), e.json()).orElse(null);
    if (obj == null) {
      return null;
    }
    obj.required("parts", "the parts that open");
    List<String> parts = obj.references("parts", reading.parts, "part", 1, Reading.MAX_ENTRIES);
    Optional<String> pivot = obj.mayPin("pivot");
    List<String> frameArms = obj.references("frameArms", reading.pins, "pin", 2, 2);
    List<String> sectionArms = obj.references("sectionArms", reading.pins, "pin", 2, 2);
    boolean linkage = obj.has("frameArms") && obj.has("sectionArms");
    boolean anyArm = obj.has("frameArms") || obj.has("sectionArms");
    if (pivot.isPresent() ? anyArm : !linkage) {
      reading.faults.meaning(
          obj.path,
          "",
          "needs either a pivot or the four pins of a linkage",
          "write \"pivot\", or \"frameArms\" and \"sectionArms\" with two pins each");
    }
    Formula angle = obj.need("angle", Dim.ANGLE, Sign.between(-360, 360));
    String note = obj.text("note", "");
    obj.close();
    return new Section(parts, pivot, frameArms, sectionArms, angle, note);
  }

  /** Returns the stance, or null where even its kind is unknown. */
  Stance stance(Obj.Entry e) {
    reading.checkName(e.path(), e.name(), "stance");
    Stance.Kind kind;
    String section = "";
    String sectionPath = JsonPath.key(e.path(), "section");
    if (e.json().isObject()) {
      Obj obj = Obj.open(reading, e.path(), e.json()).orElseThrow();
      kind = obj.word("stance", Stance.Kind.class, null);
      JsonNode node = obj.optional("section");
      if (node != null) {
        section = reading.reference(sectionPath, node, reading.sections, "section");
      }
      obj.close();
    } else {
      List<String> words = Obj.words(Stance.Kind.class);
      int index = e.json().isTextual() ? words.indexOf(e.json().textValue()) : -1;
      if (index < 0) {
        Obj.notOneOf(reading.faults, e.path(), e.json(), words);
        return null;
      }
      kind = Stance.Kind.values()[index];
    }
    if (kind == null) {
      return null;
    }
    if (kind == Stance.Kind.OPEN && section.isEmpty()) {
      reading.faults.meaning(
          sectionPath, "", "is missing", "write {\"stance\": \"open\", \"section\": NAME}");
    }
    if (kind != Stance.Kind.OPEN && !section.isEmpty()) {
      reading.faults.meaning(
          sectionPath, Json.quoted(section), "belongs to the stance open only", "take it out");
    }
    return new Stance(kind, section);
  }

  /** Returns the person, or null where it is no object. */
  Person person(Obj.Entry e) {
    reading.checkName(e.path(), e.name(), "person");
    Obj obj = Obj.open(reading, e.path(), e.json()).orElse(null);
    if (obj == null) {
      return null;
    }
    String sex = obj.oneOf("sex", List.of("female", "male"), null);
    Formula stature = obj.need("stature", Dim.LENGTH, STATURE);
    Formula mass = obj.need("mass", Dim.MASS, BODY_MASS);
    Map<String, Formula> measured = new LinkedHashMap<>();
    obj.each(
        "measured",
        m ->
            measured.put(
                m.name(), reading.quantities.read(m.path(), m.json(), Dim.LENGTH, MEASURED)));
    List<String> seats =
        obj.has("seats")
            ? obj.references("seats", reading.seats, "seat", 1, 10)
            : new ArrayList<>(List.of(Reading.RIDER));
    if (!obj.has("seats") && !reading.seats.contains(Reading.RIDER)) {
      reading.faults.meaning(
          obj.at("seats"),
          "",
          "is missing and there is no seat called rider",
          Names.advice(Reading.RIDER, reading.seats, "seat"));
    }
    boolean helmet = obj.flag("helmet", true);
    boolean boots = obj.flag("boots", true);
    obj.close();
    return new Person(
        e.name(), sex == null ? "" : sex, stature, mass, measured, seats, helmet, boots);
  }

  /** Returns the demands; those of an object that could not be read are empty. */
  Demands demands(String path, JsonNode node) {
    Obj obj = Obj.open(reading, path, node).orElse(null);
    if (obj == null) {
      return new Demands(List.of(), Map.of());
    }
    List<String> rules = new ArrayList<>();
    for (Obj.Item item : obj.items("rules", 0, RULES.size())) {
      if (item.json().isTextual() && RULES.contains(item.json().textValue())) {
        rules.add(item.json().textValue());
      } else {
        Obj.notOneOf(reading.faults, item.path(), item.json(), RULES);
      }
    }
    Map<Demands.Key, Formula> limits = new EnumMap<>(Demands.Key.class);
    for (Demands.Key key : Demands.Key.values()) {
      Dim dim = key.standard().expr().dim(n -> Dim.NUMBER);
      obj.may(key.word(), dim, Sign.NOT_NEGATIVE).ifPresent(f -> limits.put(key, f));
    }
    obj.close();
    return new Demands(rules, limits);
  }
}

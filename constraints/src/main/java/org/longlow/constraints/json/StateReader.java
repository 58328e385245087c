package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;
import org.longlow.rider.body.Anthropometry;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.MeasureStats;
import org.longlow.rider.body.Sex;

/** Reads sections, stances, crew and demands. */
final class StateReader {

  /** Statures that the body model takes, mm. */
  static final Sign STATURE =
      Sign.between(BodyMeasures.MIN_STATURE_MM, BodyMeasures.MAX_STATURE_MM);

  /** Masses that the body model takes, kg. */
  static final Sign BODY_MASS = Sign.between(BodyMeasures.MIN_MASS_KG, BodyMeasures.MAX_MASS_KG);

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
    obj.each("measured", m -> measured.put(m.name(), measured(m, sex)));
    body(obj, sex, stature, mass, measured);
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
    boolean clothes = obj.flag("clothes", true);
    obj.close();
    return new Person(
        e.name(), sex == null ? "" : sex, stature, mass, measured, seats, helmet, boots, clothes);
  }

  private Formula measured(Obj.Entry m, String sex) {
    Map<String, MeasureStats> known =
        Anthropometry.survey().measures(sex == null ? Sex.FEMALE : Sex.of(sex));
    MeasureStats stats = known.get(m.name());
    boolean own = m.name().equals("stature") || m.name().equals("weightkg");
    if (own) {
      reading.faults.meaning(
          m.path(), Json.shown(m.json()), "belongs beside sex", "use the keys stature and mass");
    } else if (stats == null) {
      reading.faults.meaning(
          m.path(),
          Json.shown(m.json()),
          "is no measurement of the survey",
          Names.advice(m.name(), known.keySet(), "measurement"));
    }
    return reading.quantities.read(m.path(), m.json(), Dim.LENGTH, Sign.NOT_NEGATIVE);
  }

  /** Lets the body model judge whether such a person can be. */
  private void body(
      Obj obj, String sex, Formula stature, Formula mass, Map<String, Formula> measured) {
    Optional<Double> height = reading.quantities.fixedValue(stature).filter(STATURE::allows);
    Optional<Double> weight = reading.quantities.fixedValue(mass).filter(BODY_MASS::allows);
    if (sex == null || height.isEmpty() || weight.isEmpty() || measured.isEmpty()) {
      return;
    }
    Set<String> known = Anthropometry.survey().measures(Sex.of(sex)).keySet();
    Map<String, Double> values = new LinkedHashMap<>();
    measured.forEach(
        (name, formula) -> {
          if (known.contains(name) && !name.equals("stature") && !name.equals("weightkg")) {
            reading.quantities.fixedValue(formula).ifPresent(v -> values.put(name, v));
          }
        });
    try {
      Body.of(BodyMeasures.of(Sex.of(sex), height.get(), weight.get(), values), Gear.NONE);
    } catch (IllegalArgumentException e) {
      for (String line : e.getMessage().split("\n")) {
        reading.faults.meaning(obj.at("measured"), "", line, "measure again");
      }
    }
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

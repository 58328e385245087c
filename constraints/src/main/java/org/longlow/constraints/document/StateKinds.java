package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.ANGLE;
import static org.longlow.constraints.document.Type.FLAG;
import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.MASS;
import static org.longlow.constraints.document.Type.NUMBER;
import static org.longlow.constraints.document.Type.words;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.words.Names;
import org.longlow.constraints.words.Quoted;
import org.longlow.rider.body.AgeEffect;
import org.longlow.rider.body.Anthropometry;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.GearMass;
import org.longlow.rider.body.MeasureStats;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.OutOfRange;

/** Sections, stances, people and demands. */
final class StateKinds {

  private static final Type<List<String>> ARMS = new Type.ListOf<>(Type.ref(Referent.PIN), 2, 2);

  private static final List<String> USUAL_SEATS = List.of(Occupant.RIDER);

  private static final Type.Quantity STATURE =
      LENGTH.between(BodyMeasures.MIN_STATURE_MM, BodyMeasures.MAX_STATURE_MM);

  private static final Type.Quantity BODY_MASS =
      MASS.between(BodyMeasures.MIN_MASS_KG, BodyMeasures.MAX_MASS_KG);

  private static final Type.Quantity AGE = NUMBER.between(Person.LEAST_YEARS, Person.MOST_YEARS);

  private static final Type.Quantity RUCKSACK = MASS.between(0, GearMass.MOST_KG);

  private static final Type.Quantity JACKET_THICKNESS = LENGTH.between(0, Gear.MOST_JACKET_MM);

  private static final Type.Quantity GLOVE_THICKNESS = LENGTH.between(0, Gear.MOST_GLOVE_MM);

  private static final Type.Quantity RUCKSACK_THICKNESS = LENGTH.between(0, Gear.MOST_RUCKSACK_MM);

  /** What has keys of its own and is no measurement of the survey here. */
  private static final Set<String> BESIDE = Set.of("stature", "weightkg");

  static final Type.Word<String> RULES = Type.oneOf("us", "un-r53", "uk");

  static final Kind<Section> SECTION =
      Kind.of(
              "section",
              "Parts that open together, on a pivot or on a four-bar linkage.",
              StateKinds::section)
          .rule(StateKinds::hinged);

  static final Kind<Stance> STANCE =
      Kind.of(
              "stance",
              "A state in which the machine is examined: its word, or an object for an open"
                  + " section.",
              StateKinds::stance)
          .shortAs("stance")
          .decidedBy("stance")
          .rule(StateKinds::open);

  static final Kind<Person> PERSON =
      Kind.of("person", "A crew member.", StateKinds::person).rule(StateKinds::measured);

  static final Kind<Demands> DEMANDS =
      Kind.of(
              "demands",
              "What the findings hold the machine to; a key that is absent takes its default. The"
                  + " defaults are common practice, without a source.",
              StateKinds::demands)
          .rule(StateKinds::sensible);

  private StateKinds() {}

  private static Section section(Source<Section> s) {
    return new Section(
        s.need(
            "parts",
            new Type.ListOf<>(Type.ref(Referent.PART), 1, Type.MAX_ENTRIES),
            "the parts that open",
            Section::parts,
            "The parts that open together."),
        s.may(
            "pivot", Type.ref(Referent.PIN), Section::pivot, "Single pivot; absent for a linkage."),
        s.or(
            "frameArms",
            ARMS,
            List.of(),
            Section::frameArms,
            "A linkage's two pins on the frame, first arm first."),
        s.or(
            "sectionArms",
            ARMS,
            List.of(),
            Section::sectionArms,
            "A linkage's two pins on the section, first arm first."),
        s.need(
            "angle",
            ANGLE.between(-360, 360),
            Section::angle,
            "Turn from shut to fully open, of the section or of the linkage's first arm."),
        OpensKinds.opens(s),
        s.note(Section::note));
  }

  private static void hinged(Section section, Spot at) {
    if (PointKinds.CARRIERS.contains(at.name())) {
      at.fault("", "", "already means what pins move with", "rename it");
    }
    boolean frame = !section.frameArms().isEmpty() || !at.isSound("frameArms");
    boolean moving = !section.sectionArms().isEmpty() || !at.isSound("sectionArms");
    if (section.pivot().isPresent() ? frame || moving : !(frame && moving)) {
      at.fault(
          "",
          "",
          "needs either a pivot or the four pins of a linkage",
          "write \"pivot\", or \"frameArms\" and \"sectionArms\" with two pins each");
    }
    Optional<String> grip = section.opens().grip();
    if (grip.isPresent() && grip.equals(section.pivot()) && at.isSound("grip")) {
      at.fault(
          "grip",
          Quoted.of(grip.get()),
          "is what the section turns about, where no hand moves it",
          "name a pin farther out");
    }
  }

  private static Stance stance(Source<Stance> s) {
    return new Stance(
        s.need("stance", words(Stance.Kind.class), Stance::kind, "The state."),
        s.or(
            "section",
            new Type.Ref(Referent.SECTION, false),
            "",
            Stance::section,
            "The section that is open."));
  }

  private static void open(Stance stance, Spot at) {
    String section = stance.section();
    boolean open = stance.kind() == Stance.Kind.OPEN;
    if (open && section.isEmpty()) {
      at.fault("section", "", "is missing", "write {\"stance\": \"open\", \"section\": NAME}");
    } else if (!open && !section.isEmpty()) {
      at.fault("section", Quoted.of(section), "belongs to the stance open only", "take it out");
    }
  }

  private static Person person(Source<Person> s) {
    String sex =
        s.need("sex", Type.oneOf("female", "male"), Person::sex, "Chooses the body survey.");
    return new Person(
        s.name(),
        sex == null ? "" : sex,
        s.need(
            "stature",
            STATURE,
            Person::stature,
            "Standing height without shoes, " + STATURE.range().span() + " mm."),
        s.need(
            "mass",
            BODY_MASS,
            Person::mass,
            "Mass without gear, "
                + BODY_MASS.range().span()
                + " kg; helmet (1.5 kg), boots (2 kg) and clothes (4.3 kg) are added where worn."),
        s.or(
            "measured",
            new Type.Group<>(
                "measurement", Naming.KEYS, LENGTH.notNegative(), measurements(), Optional.empty()),
            Map.of(),
            Person::measured,
            "Own measurements by their survey names, such as sittingheight."),
        s.orSaid(
            "seats",
            new Type.ListOf<>(Type.ref(Referent.SEAT), 1, 10),
            USUAL_SEATS,
            Person::seats,
            "The seats they must fit; rider where absent."),
        s.orSaid("helmet", FLAG, true, Person::helmet, "Whether they wear one."),
        s.orSaid("boots", FLAG, true, Person::boots, "Whether they wear them."),
        s.orSaid(
            "clothes",
            FLAG,
            true,
            Person::clothes,
            "Whether they wear jacket, trousers and gloves, with armour at knee and elbow."),
        s.may(
            "age",
            AGE,
            Person::age,
            "Age in years, "
                + AGE.range().span()
                + ". Men's bellies are "
                + AgeEffect.BELLY_MM_A_DECADE_MALE
                + " mm deeper a decade (ANSUR II); of women nothing follows. Outside "
                + Math.round(AgeEffect.YOUNGEST)
                + " to "
                + Math.round(AgeEffect.OLDEST)
                + " years every answer about them needs care."),
        s.may(
            "rucksack",
            RUCKSACK,
            Person::rucksack,
            "Mass of a rucksack on the back, "
                + RUCKSACK.range().span()
                + " kg; none where absent or 0."),
        s.or(
            "rucksackThickness",
            RUCKSACK_THICKNESS,
            Person.USUAL_RUCKSACK,
            Person::rucksackThickness,
            "How thick the rucksack is between back and back rest, "
                + RUCKSACK_THICKNESS.range().span()
                + " mm; it moves the rider forward by that."),
        s.or(
            "jacketThickness",
            JACKET_THICKNESS,
            Person.USUAL_JACKET,
            Person::jacketThickness,
            "How thick the jacket is in front, at the sides and round the arms where clothes are"
                + " worn, "
                + JACKET_THICKNESS.range().span()
                + " mm; the usual one is common practice without a source."),
        s.or(
            "gloveThickness",
            GLOVE_THICKNESS,
            Person.USUAL_GLOVE,
            Person::gloveThickness,
            "How thick the gloves are where clothes are worn, "
                + GLOVE_THICKNESS.range().span()
                + " mm; it takes that twice from what the hand spans to a lever. The usual one is"
                + " common practice without a source."));
  }

  /** Names of the survey's measurements that both sexes have. */
  private static List<String> measurements() {
    Set<String> names = new TreeSet<>(Anthropometry.survey().measures(Sex.FEMALE).keySet());
    names.retainAll(Anthropometry.survey().measures(Sex.MALE).keySet());
    names.removeAll(BESIDE);
    return List.copyOf(names);
  }

  /** Lets the body model judge whether such a person can be. */
  private static void measured(Person person, Spot at) {
    boolean known = !person.sex().isEmpty() && at.isSound("sex");
    Sex sex = known ? Sex.of(person.sex()) : Sex.FEMALE;
    Map<String, MeasureStats> survey = Anthropometry.survey().measures(sex);
    Map<String, Double> values = new LinkedHashMap<>();
    person
        .measured()
        .forEach(
            (name, formula) -> {
              String shown = Quoted.cut(formula.text());
              if (BESIDE.contains(name)) {
                at.itemFault(
                    "measured", name, shown, "belongs beside sex", "use the keys stature and mass");
              } else if (!survey.containsKey(name)) {
                at.itemFault(
                    "measured",
                    name,
                    shown,
                    "is no measurement of the survey",
                    Names.advice(name, survey.keySet(), "measurement"));
              } else {
                at.fixed(formula).ifPresent(v -> values.put(name, v));
              }
            });
    Optional<Double> height = at.fixed(person.stature()).filter(STATURE.range()::allows);
    Optional<Double> weight = at.fixed(person.mass()).filter(BODY_MASS.range()::allows);
    if (!known || height.isEmpty() || weight.isEmpty() || person.measured().isEmpty()) {
      return;
    }
    try {
      Body.of(BodyMeasures.of(sex, height.get(), weight.get(), values), Gear.NONE);
    } catch (OutOfRange e) {
      for (String line : e.getMessage().split("\n")) {
        at.fault("measured", "", line, "measure again");
      }
    }
  }

  /** Rules that are named twice, and a share of the weight that nothing can have. */
  private static void sensible(Demands demands, Spot at) {
    for (int i = 0; i < demands.rules().size(); i++) {
      String rule = demands.rules().get(i);
      if (rule != null && demands.rules().indexOf(rule) < i) {
        at.itemFault("rules", i, Quoted.of(rule), "is named twice", "take one out");
      }
    }
    Demands.Key least = Demands.Key.FRONT_SHARE_MIN;
    Demands.Key most = Demands.Key.FRONT_SHARE_MAX;
    Optional<Double> from = at.fixed(demands.limit(least));
    Optional<Double> to = at.fixed(demands.limit(most));
    Demands.Key said = demands.limits().containsKey(least) ? least : most;
    if (from.isPresent() && to.isPresent() && from.get() > to.get() && at.isSound(said.word())) {
      at.fault(
          said.word(),
          Quoted.of(demands.limit(said).text()),
          said == least
              ? "is more than " + most.word() + " of " + Range.number(to.get())
              : "is less than " + least.word() + " of " + Range.number(from.get()),
          "no machine has a share between them: write another value");
    }
  }

  private static Demands demands(Source<Demands> s) {
    List<String> rules =
        s.or(
            "rules",
            new Type.ListOf<>(RULES, 0, RULES.words().size()),
            List.of(),
            Demands::rules,
            "Which rules are looked at: lamps, reflectors, plate, foot rests, stand, mirrors,"
                + " handlebar.");
    Map<Demands.Key, Formula> limits = new EnumMap<>(Demands.Key.class);
    for (Demands.Key key : Demands.Key.values()) {
      Dim dim = key.standard().expr().dim(n -> Dim.NUMBER);
      Range range = Double.isFinite(key.most()) ? Range.between(0, key.most()) : Range.NOT_NEGATIVE;
      String meaning =
          key.meaning().substring(0, 1).toUpperCase(Locale.ROOT) + key.meaning().substring(1);
      s.may(
              key.word(),
              new Type.Quantity(Optional.of(dim), range),
              d -> Optional.ofNullable(d.limits().get(key)),
              meaning
                  + (range.equals(Range.NOT_NEGATIVE) ? "" : ", from " + range.span(Unit.of(dim)))
                  + "; "
                  + key.standard().text()
                  + " where absent.")
          .ifPresent(f -> limits.put(key, f));
    }
    return new Demands(rules, limits);
  }
}

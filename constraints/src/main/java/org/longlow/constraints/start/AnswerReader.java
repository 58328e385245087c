package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.Range;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Expr;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.FormulaException;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.start.Answers.Box;
import org.longlow.constraints.start.Answers.Drive;
import org.longlow.constraints.start.Answers.Place;
import org.longlow.constraints.words.Names;
import org.longlow.constraints.words.Quoted;
import org.longlow.rider.body.GearMass;
import org.longlow.rider.body.Sex;
import org.longlow.rider.words.Decimals;

/** Reads answers as people write them, with all faults at once. */
public final class AnswerReader {

  private static final String CHOOSE = "choose";

  private final Answers.Builder answers = new Answers.Builder();
  private final List<Fault> faults = new ArrayList<>();

  private AnswerReader() {}

  /**
   * What was read.
   *
   * @param answers sound only if there is no fault
   * @param faults what could not be read, and what of the rest contradicts itself
   */
  public record Reading(Answers answers, List<Fault> faults) {
    public Reading {
      faults = List.copyOf(faults);
    }
  }

  /** Reads answers by their questions; a question that is not there is left to Longlow. */
  public static Reading read(Map<Question, String> written) {
    AnswerReader reader = new AnswerReader();
    Map<Question, String> rest = new LinkedHashMap<>(written);
    rest.replaceAll((question, text) -> text.strip());
    Drive drive = reader.drive(rest);
    rest.forEach((question, text) -> reader.read(question, text, drive));
    if (rest.containsKey(Question.TRACING)) {
      reader.tracing(rest.get(Question.TRACING));
    }
    Answers answers = reader.answers.answers();
    List<Fault> faults = new ArrayList<>(reader.faults);
    faults.addAll(Contradictions.of(answers));
    return new Reading(answers, faults);
  }

  private void read(Question question, String text, Drive drive) {
    switch (question) {
      case RIDER -> who(question, text).ifPresent(answers::rider);
      case SECOND -> who(question, text).ifPresent(answers::second);
      case SEATS -> oneOf(question, text, Map.of("1", 1, "2", 2), answers::seats);
      case WHEELBASE -> {
        if (!text.equals(CHOOSE)) {
          quantity(question, text, text, Dim.LENGTH).ifPresent(answers::wheelbaseMm);
        }
      }
      case FRONT_TYRE -> answers.frontTyre(text);
      case REAR_TYRE -> answers.rearTyre(text);
      case RECLINE ->
          quantity(question, text, text, Dim.ANGLE)
              .ifPresent(rad -> answers.reclineDeg(Math.toDegrees(rad)));
      case DRIVE -> {
        // read first, since what a box weighs depends on it
      }
      case PLACE -> oneOf(question, text, words(Place.values()), answers::place);
      case BOX -> box(text, drive);
      case TRACING -> {
        // read last, since the box says how long it is
      }
      case FRONT ->
          oneOf(
              question, text, words(Answers.FRONTS.toArray(FrontPart.Kind[]::new)), answers::front);
      case LAW -> law(text);
    }
  }

  private void law(String text) {
    if (text.equals("none")) {
      answers.law(List.of());
      return;
    }
    List<String> sets = Arrays.stream(text.split(",", -1)).map(String::strip).toList();
    if (sets.contains("")) {
      fault(
          Question.LAW,
          text,
          "names nothing before or after a comma",
          "write names with commas between, such as us, uk, or none");
      return;
    }
    answers.law(sets);
  }

  private Drive drive(Map<Question, String> written) {
    Drive[] said = {null};
    if (written.containsKey(Question.DRIVE)) {
      oneOf(Question.DRIVE, written.get(Question.DRIVE), words(Drive.values()), d -> said[0] = d);
    }
    if (said[0] != null) {
      answers.drive(said[0]);
    }
    return said[0];
  }

  private void fault(Question question, String text, String wrong, String remedy) {
    faults.add(new Fault(question.word(), Quoted.cut(text), wrong, remedy));
  }

  private static <E extends Enum<E>> Map<String, E> words(E[] values) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E value : values) {
      words.put(Names.word(value), value);
    }
    return words;
  }

  private <T> void oneOf(Question question, String text, Map<String, T> words, Consumer<T> into) {
    T value = words.get(text.toLowerCase(Locale.ROOT));
    if (value == null) {
      List<String> known = words.keySet().stream().sorted().toList();
      fault(
          question,
          text,
          "is none of " + String.join(", ", known),
          Names.nearest(text, known)
              .map(n -> "did you mean " + n + "?")
              .orElse("give one of these, or leave it out"));
      return;
    }
    into.accept(value);
  }

  /** A quantity, in internal units; a bare number takes those of files. */
  private Optional<Double> quantity(Question question, String whole, String text, Dim dim) {
    try {
      if (!(Formula.parse(text).expr() instanceof Expr.Num plain)) {
        fault(question, whole, text + " is no plain quantity", "give one, such as " + example(dim));
        return Optional.empty();
      }
      boolean bare = plain.dim().equals(Dim.NUMBER);
      if (!bare && !plain.dim().equals(dim)) {
        fault(question, whole, text + " is no " + named(dim), "give one, such as " + example(dim));
        return Optional.empty();
      }
      boolean degrees = bare && dim.equals(Dim.ANGLE);
      return Optional.of(degrees ? Math.toRadians(plain.value()) : plain.value());
    } catch (FormulaException e) {
      fault(question, whole, e.getMessage(), "give a quantity, such as " + example(dim));
      return Optional.empty();
    }
  }

  private static String named(Dim dim) {
    return dim.equals(Dim.LENGTH) ? "length" : dim.equals(Dim.MASS) ? "mass" : "angle";
  }

  private static String example(Dim dim) {
    return dim.equals(Dim.LENGTH) ? "1700 mm" : dim.equals(Dim.MASS) ? "48 kg" : "35 deg";
  }

  private Optional<Who> who(Question question, String text) {
    String[] words = text.split("[\\s,]+", 2);
    Optional<Sex> sex = sex(words[0]);
    if (sex.isEmpty()) {
      fault(question, text, "begins with neither woman nor man", "write it like woman 5 %");
      return Optional.empty();
    }
    OptionalDouble years = OptionalDouble.empty();
    OptionalDouble rucksack = OptionalDouble.empty();
    List<String> rest = new ArrayList<>();
    int before = faults.size();
    for (String piece : words.length < 2 ? new String[0] : words[1].split(",")) {
      Matcher age = YEARS.matcher(piece.strip());
      Matcher worn = RUCKSACK.matcher(piece.strip());
      if (age.matches()) {
        years = years(question, text, age.group(1));
      } else if (worn.matches()) {
        rucksack = rucksack(question, text, worn.group(1));
      } else {
        rest.add(piece);
      }
    }
    String body = String.join(",", rest).strip();
    Optional<Who> who =
        body.isEmpty()
            ? Optional.of(Who.percentile(sex.get(), 50))
            : body.endsWith("%")
                ? percentile(question, text, sex.get(), body)
                : measured(question, text, sex.get(), body);
    if (faults.size() > before) {
      return Optional.empty();
    }
    OptionalDouble of = years;
    OptionalDouble with = rucksack;
    return who.map(w -> w.with(of, with));
  }

  private OptionalDouble years(Question question, String text, String said) {
    double years = Double.parseDouble(said);
    if (years >= Person.LEAST_YEARS && years <= Person.MOST_YEARS) {
      return OptionalDouble.of(years);
    }
    String span =
        Decimals.brief(Person.LEAST_YEARS) + " to " + Decimals.brief(Person.MOST_YEARS) + " years";
    fault(question, text, "has an age that is not " + span, "write it like 48 years");
    return OptionalDouble.empty();
  }

  private OptionalDouble rucksack(Question question, String text, String said) {
    Optional<Double> kg = quantity(question, text, said, Dim.MASS);
    if (kg.isEmpty() || kg.get() >= 0 && kg.get() <= GearMass.MOST_KG) {
      return kg.filter(m -> m > 0).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
    String most = Decimals.brief(GearMass.MOST_KG) + " kg";
    fault(question, text, "has a rucksack of more than " + most, "write it like rucksack 9 kg");
    return OptionalDouble.empty();
  }

  private static final Pattern YEARS =
      Pattern.compile("(\\d{1,4}(?:\\.\\d{1,4})?)\\s*(?:years?(?: old)?|yr|y)");

  private static final Pattern RUCKSACK =
      Pattern.compile("rucksack(?:\\s+of)?[\\s=]+(.+)", Pattern.CASE_INSENSITIVE);

  private static Optional<Sex> sex(String word) {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "woman", "female" -> Optional.of(Sex.FEMALE);
      case "man", "male" -> Optional.of(Sex.MALE);
      default -> Optional.empty();
    };
  }

  private Optional<Who> percentile(Question question, String text, Sex sex, String percent) {
    double value;
    try {
      value = Double.parseDouble(percent.substring(0, percent.length() - 1).strip());
    } catch (NumberFormatException e) {
      value = Double.NaN;
    }
    double most = 100 - Who.LEAST_PERCENTILE;
    if (!(value >= Who.LEAST_PERCENTILE && value <= most)) {
      fault(
          question,
          text,
          "has no percentile of "
              + Decimals.brief(Who.LEAST_PERCENTILE)
              + " to "
              + Decimals.brief(most)
              + " %",
          "write it like woman 5 %, or give height and mass");
      return Optional.empty();
    }
    return Optional.of(Who.percentile(sex, value));
  }

  /** Feet and inches as many write them, 5' 9". */
  private static String inWords(String height) {
    return height
        .replaceAll("(\\d)\\s*['\u2019\u2032]\\s*", "$1 ft ")
        .replaceAll("(\\d)\\s*[\"\u201d\u2033]", "$1 in");
  }

  private Optional<Who> measured(Question question, String text, Sex sex, String rest) {
    Optional<Double> stature = Optional.empty();
    Optional<Double> mass = Optional.empty();
    Map<String, Double> own = new LinkedHashMap<>();
    int before = faults.size();
    for (String piece : inWords(rest).split(",")) {
      int is = piece.indexOf('=');
      if (is < 0 && Formula.fault(piece.strip()).isPresent()) {
        fault(
            question,
            text,
            "\"" + piece.strip() + "\" is neither a height nor a mass",
            "write it like man 1770 mm, 84 kg or man 5 ft 10 in, 185 lb, with a comma between");
      } else if (is >= 0) {
        quantity(question, text, piece.substring(is + 1).strip(), Dim.LENGTH)
            .ifPresent(mm -> own.put(piece.substring(0, is).strip(), mm));
      } else if (piece.strip().matches(".*(kg|lb|g)")) {
        mass = quantity(question, text, piece.strip(), Dim.MASS);
      } else {
        stature = quantity(question, text, piece.strip(), Dim.LENGTH);
      }
    }
    if (faults.size() > before) {
      return Optional.empty();
    }
    if (stature.isEmpty() || mass.isEmpty()) {
      fault(
          question,
          text,
          "lacks " + (stature.isEmpty() ? "a height" : "a mass"),
          "write it like man 1770 mm, 84 kg");
      return Optional.empty();
    }
    return Optional.of(new Who(sex, stature.get(), mass.get(), own));
  }

  private void tracing(String text) {
    new TracingReader((wrong, remedy) -> fault(Question.TRACING, text, wrong, remedy))
        .read(text, answers.answers().box())
        .ifPresent(answers::tracing);
  }

  private void box(String text, Drive drive) {
    String[] halves = text.split(",", 2);
    String[] sides = halves[0].strip().split("\\s*[xX×]\\s*");
    if (sides.length != 3) {
      fault(Question.BOX, text, "has no three sides", "write it like 390 x 310 x 320 mm, 48 kg");
      return;
    }
    String unit = sides[2].replaceFirst("^[0-9. /]+", "");
    List<Double> mm = new ArrayList<>();
    for (String side : sides) {
      String whole = side.matches("[0-9. /]+") ? side + " " + unit : side;
      quantity(Question.BOX, text, whole.strip(), Dim.LENGTH).ifPresent(mm::add);
    }
    if (mm.size() < sides.length) {
      return;
    }
    if (halves.length < 2) {
      double kg = Brief.guessedKg(drive, mm.get(0) * mm.get(1) * mm.get(2));
      fault(
          Question.BOX,
          text,
          "has no mass",
          kg > Range.largest(Dim.MASS)
              ? "look at its sides and their unit, and weigh it"
              : String.format(
                  Locale.ROOT,
                  "weigh it; one of that size may have %.0f kg: %s, %.0f kg",
                  kg,
                  text,
                  kg));
      return;
    }
    quantity(Question.BOX, text, halves[1].strip(), Dim.MASS)
        .ifPresent(kg -> answers.box(new Box(mm.get(0), mm.get(1), mm.get(2), kg)));
  }
}

package org.longlow.constraints.layout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.rider.words.Units;

/**
 * A whole layout document. Maps keep the order of the file; keys are the user's names.
 *
 * @param name short name, such as {@code heron}
 * @param title one line for title blocks
 * @param titleBlock what drawings say beside their picture
 * @param units in which figures are shown to people; none of what is stored hangs on it
 * @param notes free text for people
 * @param measures named quantities and formulas
 * @param pins named points of the elevation
 * @param parts physical things
 * @param ties exact geometric relations
 * @param limits inequalities that must hold
 * @param wishes weighted preferences
 * @param sections groups of parts that open together on a hinge or linkage
 * @param stances states in which the machine is examined
 * @param crew people the machine must fit
 * @param demands limits for the findings and the lamp rules in force
 * @param photos pictures under the drawing, to draw over
 * @param dimensions what was measured and is kept on the drawing
 * @param lines cables, hoses and looms
 * @param stock what parts are cut from
 * @param currency in which prices are, in whatever word; may be empty
 * @param variants other states of the same machine
 * @param asBuilt what was measured on the machine that was made
 */
public record Layout(
    String name,
    String title,
    TitleEntries titleBlock,
    Units units,
    List<String> notes,
    Map<String, Measure> measures,
    Map<String, Pin> pins,
    Map<String, Part> parts,
    Map<String, Tie> ties,
    Map<String, Limit> limits,
    Map<String, Wish> wishes,
    Map<String, Section> sections,
    Map<String, Stance> stances,
    Map<String, Person> crew,
    Demands demands,
    Map<String, Photo> photos,
    Map<String, Dimension> dimensions,
    Map<String, Line> lines,
    Map<String, Stock> stock,
    String currency,
    Map<String, Variant> variants,
    AsBuilt asBuilt) {

  /** Version of the layout file this document model stands for. */
  public static final int FILE_VERSION = 1;

  public Layout {
    notes = List.copyOf(notes);
    measures = Ordered.copy(measures);
    pins = Ordered.copy(pins);
    parts = Ordered.copy(parts);
    ties = Ordered.copy(ties);
    limits = Ordered.copy(limits);
    wishes = Ordered.copy(wishes);
    sections = Ordered.copy(sections);
    stances = Ordered.copy(stances);
    crew = Ordered.copy(crew);
    photos = Ordered.copy(photos);
    dimensions = Ordered.copy(dimensions);
    lines = Ordered.copy(lines);
    stock = Ordered.copy(stock);
    variants = Ordered.copy(variants);
  }

  /** A machine of one state only, which is not built yet. */
  public Layout(
      String name,
      String title,
      Units units,
      List<String> notes,
      Map<String, Measure> measures,
      Map<String, Pin> pins,
      Map<String, Part> parts,
      Map<String, Tie> ties,
      Map<String, Limit> limits,
      Map<String, Wish> wishes,
      Map<String, Section> sections,
      Map<String, Stance> stances,
      Map<String, Person> crew,
      Demands demands,
      Map<String, Photo> photos,
      Map<String, Dimension> dimensions) {
    this(
        name,
        title,
        TitleEntries.NONE,
        units,
        notes,
        measures,
        pins,
        parts,
        ties,
        limits,
        wishes,
        sections,
        stances,
        crew,
        demands,
        photos,
        dimensions,
        Map.of(),
        Map.of(),
        "",
        Map.of(),
        AsBuilt.NOTHING);
  }

  private static <K, V> Map<K, V> put(Map<K, V> map, K key, V value) {
    Map<K, V> copy = new LinkedHashMap<>(map);
    copy.put(key, value);
    return copy;
  }

  /** Returns the parts of one kind, in order. */
  public <P extends Part> Stream<P> parts(Class<P> kind) {
    return parts.values().stream().filter(kind::isInstance).map(kind::cast);
  }

  /** Returns the wheel at one end. */
  public Optional<WheelPart> wheel(Part.End end) {
    return parts(WheelPart.class).filter(w -> w.end() == end).findFirst();
  }

  /** Returns the other sections that the same drive moves, in order. */
  public List<String> drivenWith(String section) {
    String drive = sections.get(section).opens().drive();
    return sections.entrySet().stream()
        .filter(s -> !drive.isEmpty() && s.getValue().opens().drive().equals(drive))
        .map(Map.Entry::getKey)
        .filter(name -> !name.equals(section))
        .toList();
  }

  /** Returns a copy with the measure {@code measure} added or replaced. */
  public Layout withMeasure(String key, Measure measure) {
    return with(units, put(measures, key, measure), pins, parts, ties, crew);
  }

  /** Returns a copy with the pins of {@code changed} added or replaced. */
  public Layout withPins(Map<String, Pin> changed) {
    Map<String, Pin> copy = new LinkedHashMap<>(pins);
    copy.putAll(changed);
    return with(units, measures, copy, parts, ties, crew);
  }

  public Layout withPart(Part part) {
    return with(units, measures, pins, put(parts, part.name(), part), ties, crew);
  }

  public Layout withTie(String key, Tie tie) {
    return with(units, measures, pins, parts, put(ties, key, tie), crew);
  }

  public Layout withPerson(Person person) {
    return with(units, measures, pins, parts, ties, put(crew, person.name(), person));
  }

  /** Returns a copy whose figures are shown in other units. */
  public Layout withUnits(Units other) {
    return with(other, measures, pins, parts, ties, crew);
  }

  private Layout with(
      Units units,
      Map<String, Measure> measures,
      Map<String, Pin> pins,
      Map<String, Part> parts,
      Map<String, Tie> ties,
      Map<String, Person> crew) {
    return new Layout(
        name,
        title,
        titleBlock,
        units,
        notes,
        measures,
        pins,
        parts,
        ties,
        limits,
        wishes,
        sections,
        stances,
        crew,
        demands,
        photos,
        dimensions,
        lines,
        stock,
        currency,
        variants,
        asBuilt);
  }
}

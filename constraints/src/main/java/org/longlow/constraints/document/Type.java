package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.words.Names;

/**
 * What the value of a field is. Whoever reads, writes, checks or describes documents does so by
 * {@link Cases}, so a new type does not compile until each of them knows it.
 *
 * @param <V> the value in Java
 */
public sealed interface Type<V> {

  /** Longest free text. */
  int MAX_TEXT = 2000;

  /** Most entries of a group. */
  int MAX_ENTRIES = 2000;

  Quantity ANY = new Quantity(Optional.empty(), Range.ANY);

  /** The formula of a measure, which gives the measure its dimension. */
  Quantity DEFINITION =
      new Quantity(
          Optional.empty(), new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, true));

  Quantity LENGTH = quantity(Dim.LENGTH);
  Quantity ANGLE = quantity(Dim.ANGLE);
  Quantity MASS = quantity(Dim.MASS);
  Quantity FORCE = quantity(Dim.FORCE);
  Quantity RATE = quantity(Dim.RATE);
  Quantity DENSITY = quantity(Dim.DENSITY);
  Quantity PRESSURE = quantity(Dim.PRESSURE);
  Quantity NUMBER = quantity(Dim.NUMBER);
  Text TEXT = new Text(false, false);
  Text FILLED = new Text(true, false);

  /** Text with something in it that has to be there. */
  Text NAME = new Text(true, true);

  Flag FLAG = new Flag();

  /** Returns the value that stands in where none could be read; null where none can. */
  default V lost() {
    return null;
  }

  /** Says what to write, such as a length. */
  default String said() {
    return "a value";
  }

  <A, R> R by(Cases<A, R> cases, A argument);

  /** One answer for each type. */
  interface Cases<A, R> {
    R text(Text type, A a);

    R flag(Flag type, A a);

    R whole(Whole type, A a);

    R weight(Weight type, A a);

    R word(Word<?> type, A a);

    R quantity(Quantity type, A a);

    R place(Place type, A a);

    R ref(Ref type, A a);

    R list(ListOf<?> type, A a);

    R maybe(Maybe<?> type, A a);

    R nested(Nested<?> type, A a);

    R choice(Choice<?> type, A a);

    R group(Group<?> type, A a);

    R vertex(Vertices type, A a);

    R outline(Outlines type, A a);
  }

  /**
   * Free text.
   *
   * @param filled true if there must be something in it
   */
  record Text(boolean filled, boolean required) implements Type<String> {
    @Override
    public String lost() {
      return "";
    }

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.text(this, a);
    }
  }

  /** True or false. */
  record Flag() implements Type<Boolean> {
    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.flag(this, a);
    }
  }

  /** A whole number from 0 to {@code most}. */
  record Whole(int most) implements Type<Integer> {
    @Override
    public String said() {
      return "must be a whole number from 0 to " + most;
    }

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.whole(this, a);
    }
  }

  /** A bare number more than 0. */
  record Weight() implements Type<Double> {
    public static final String WORDS = "must be a number more than 0";

    /** The largest that makes sense. */
    static final double MOST = 1e6;

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.weight(this, a);
    }
  }

  /** One of a few words; each stands for the value at the same index. */
  record Word<V>(List<String> words, List<V> values) implements Type<V> {
    public Word {
      words = List.copyOf(words);
      values = List.copyOf(values);
    }

    public String of(Object value) {
      int index = values.indexOf(value);
      return index < 0 ? value.toString() : words.get(index);
    }

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.word(this, a);
    }
  }

  /**
   * A quantity or formula.
   *
   * @param dim its dimension; empty takes any
   * @param range that its value lies in
   */
  record Quantity(Optional<Dim> dim, Range range) implements Type<Formula> {
    public Quantity positive() {
      return new Quantity(dim, Range.POSITIVE);
    }

    /** What is smaller is a slip of the unit, or no size that anything has; in the unit shown. */
    public Quantity atLeast(double least) {
      return new Quantity(dim, Range.atLeast(least));
    }

    public Quantity notNegative() {
      return new Quantity(dim, Range.NOT_NEGATIVE);
    }

    public Quantity between(double from, double to) {
      return new Quantity(dim, Range.between(from, to));
    }

    @Override
    public String said() {
      return dim.map(Dim::words).orElse("a quantity or formula");
    }

    @Override
    public Formula lost() {
      return Quantities.LOST;
    }

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.quantity(this, a);
    }
  }

  /** A place of the elevation: x and z. */
  record Place() implements Type<List<Formula>> {
    @Override
    public String said() {
      return "[\"x mm\", \"z mm\"]";
    }

    @Override
    public List<Formula> lost() {
      return List.of(Quantities.LOST, Quantities.LOST);
    }

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.place(this, a);
    }
  }

  /**
   * The name of something else in the document.
   *
   * @param empty true if an empty name says the same as none
   */
  record Ref(Referent to, boolean empty) implements Type<String> {
    @Override
    public String lost() {
      return "";
    }

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.ref(this, a);
    }
  }

  /** A list with {@code fewest} to {@code most} entries. */
  record ListOf<V>(Type<V> item, int fewest, int most) implements Type<List<V>> {
    /** How many entries there may be, for a list that has {@code size}. */
    String allowed(int size) {
      return fewest == most
          ? "needs " + fewest
          : size < fewest ? "needs at least " + fewest : "takes at most " + most;
    }

    @Override
    public List<V> lost() {
      return List.of();
    }

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.list(this, a);
    }
  }

  /** What may be absent. */
  record Maybe<V>(Type<V> inner) implements Type<Optional<V>> {
    @Override
    public String said() {
      return inner.said();
    }

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.maybe(this, a);
    }
  }

  /** An object with fields of its own. */
  record Nested<V>(Kind<V> kind) implements Type<V> {
    @Override
    public V lost() {
      return kind.make("", Map.of());
    }

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.nested(this, a);
    }
  }

  /**
   * An object whose field {@code key} decides which other fields it has.
   *
   * @param kinds for each word, in the order of the documentation
   * @param word of a value
   */
  record Choice<V>(
      String name,
      String help,
      String key,
      Map<String, Kind<? extends V>> kinds,
      Function<V, String> word)
      implements Type<V> {
    @SuppressWarnings("unchecked")
    public <T extends V> Kind<T> kind(V value) {
      return (Kind<T>) kinds.get(word.apply(value));
    }

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.choice(this, a);
    }
  }

  /**
   * Entries by name.
   *
   * @param what one entry is called
   * @param keys what they can be called, where that is not the user's own; a rule holds them to it
   * @param to what they are called after, where that is something else in the document
   */
  record Group<V>(
      String what, Naming naming, Type<V> item, List<String> keys, Optional<Referent> to)
      implements Type<Map<String, V>> {
    Group(String what, Naming naming, Type<V> item) {
      this(what, naming, item, List.of(), Optional.empty());
    }

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.group(this, a);
    }
  }

  /**
   * A vertex of an outline: [x, z] or a pin.
   *
   * @param mayBeSmooth whether either may come with {@value #SMOOTH}
   * @param reach what may be said, last, of how far the body reaches to each side there
   */
  record Vertices(boolean mayBeSmooth, Optional<Kind<HalfBreadths>> reach) implements Type<Vertex> {
    public static final String SMOOTH = "smooth";

    @Override
    public String said() {
      return "[\"x mm\", \"z mm\"] or a pin";
    }

    @Override
    public Vertex lost() {
      return new Vertex(Quantities.LOST, Quantities.LOST, null, false);
    }

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.vertex(this, a);
    }
  }

  /** An outline, drawn or traced: that with the key {@value #TRACED_BY} is traced. */
  record Outlines(Kind<Outline.Drawn> drawn, Kind<Outline.Traced> traced) implements Type<Outline> {
    public static final String TRACED_BY = "svg";

    /** Most vertices of one outline. */
    public static final int MAX_POINTS = 2000;

    @Override
    public String said() {
      return "{\"points\": [...]} or {\"svg\": FILE, ...}";
    }

    @Override
    public Outline lost() {
      return new Outline.Drawn(List.of(), true);
    }

    @Override
    public <A, R> R by(Cases<A, R> cases, A a) {
      return cases.outline(this, a);
    }
  }

  static Quantity quantity(Dim dim) {
    return new Quantity(Optional.of(dim), Range.ANY);
  }

  static Ref ref(Referent to) {
    return new Ref(to, false);
  }

  /** Returns the words of an enum, in its order. */
  static <E extends Enum<E>> Word<E> words(Class<E> type) {
    List<String> words = new ArrayList<>();
    for (E value : type.getEnumConstants()) {
      words.add(Names.word(value));
    }
    return new Word<>(words, List.of(type.getEnumConstants()));
  }

  static Word<String> oneOf(String... words) {
    return new Word<>(List.of(words), List.of(words));
  }
}

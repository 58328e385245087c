package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.words.Counted;

/** Goes through what a kind describes and makes the rows of a {@link Form}. */
final class FormWalk implements Type.Cases<FormWalk.At, Void> {

  /** A field or place on the way. */
  record At(
      List<String> path,
      String name,
      int depth,
      String label,
      String help,
      Object value,
      String usual,
      boolean optional,
      boolean item) {
    At inside(String key, String label, Object inner, boolean item) {
      List<String> longer = new ArrayList<>(path);
      longer.add(key);
      return new At(List.copyOf(longer), name, depth + 1, label, help, inner, "", false, item);
    }

    At bare(Object inner) {
      return new At(path, name, depth, label, help, inner, usual, true, item);
    }
  }

  /** What the two numbers of a place on a photo are called: pixels from its upper left corner. */
  private static final List<String> PIXELS = List.of("right", "down");

  private final Layout layout;
  private final Map<Referent, Collection<String>> known;
  private final List<Form.Row> rows = new ArrayList<>();

  FormWalk(Layout layout) {
    this.layout = layout;
    this.known = ReferenceNames.in(layout);
  }

  /** Returns a row for each field met so far. */
  List<Form.Row> rows() {
    return rows;
  }

  Form entry(Type<?> group, Entries.Entry entry, Object value) {
    Type<?> item = ((Type.Group<?>) group).item();
    List<String> path = List.of(entry.group(), entry.name());
    if (item instanceof Type.Choice<?> choice) {
      return chosen(choice, value, path, entry.name());
    }
    Kind<?> kind = ((Type.Nested<?>) item).kind();
    nested(kind, value, path, entry.name(), 0);
    return new Form(kind.name(), kind.help(), rows);
  }

  @SuppressWarnings("unchecked")
  private <V> Form chosen(Type.Choice<V> choice, Object value, List<String> path, String name) {
    Kind<V> kind = choice.kind((V) value);
    fields(kind, (V) value, path, name, 0);
    return new Form(choice.word().apply((V) value), kind.help(), rows);
  }

  @SuppressWarnings("unchecked")
  private <T> void nested(Kind<T> kind, Object value, List<String> path, String name, int depth) {
    fields(kind.exactly(name, (T) value, dims()), (T) value, path, name, depth);
  }

  private Kind.Dims dims() {
    return measure -> Measures.known(layout, measure);
  }

  <T> void fields(Kind<T> kind, T owner, List<String> path, String name, int depth) {
    kind.fields().forEach(f -> field(f, owner, path, name, depth));
  }

  <T> void field(Field<T, ?> f, T owner, List<String> path, String name, int depth) {
    List<String> at = new ArrayList<>(path);
    at.add(f.key());
    f.type()
        .by(
            this,
            new At(
                List.copyOf(at),
                name,
                depth,
                Form.words(f.key()),
                f.help(),
                f.of(owner),
                owner instanceof Part part ? Lacking.usual(part, f) : Usual.of(f),
                !f.required(),
                false));
  }

  private Void row(At at, Form.Input input, String text, List<String> choices) {
    return row(at, input, text, choices, Optional.empty());
  }

  private Void row(At at, Form.Input input, String text, List<String> choices, Optional<Dim> dim) {
    rows.add(
        new Form.Row(
            at.path(),
            at.depth(),
            at.label(),
            at.help(),
            input,
            text,
            List.copyOf(choices),
            at.usual(),
            at.optional(),
            at.item(),
            dim));
    return null;
  }

  private static String text(Object value) {
    return value == null
        ? ""
        : value instanceof Formula formula ? formula.text() : value.toString();
  }

  @Override
  public Void text(Type.Text type, At at) {
    return row(at, Form.Input.TEXT, text(at.value()), List.of());
  }

  @Override
  public Void flag(Type.Flag type, At at) {
    return row(at, Form.Input.SWITCH, text(at.value()), List.of());
  }

  @Override
  public Void whole(Type.Whole type, At at) {
    return row(at, Form.Input.NUMBER, text(at.value()), List.of());
  }

  @Override
  public Void weight(Type.Weight type, At at) {
    return row(at, Form.Input.NUMBER, Range.number((Double) at.value()), List.of());
  }

  @Override
  public Void word(Type.Word<?> type, At at) {
    String word = at.value() == null ? "" : type.of(at.value());
    return row(at, Form.Input.CHOICE, word, type.words());
  }

  @Override
  public Void quantity(Type.Quantity type, At at) {
    return row(at, Form.Input.QUANTITY, text(at.value()), List.of(), type.dim());
  }

  @Override
  public Void place(Type.Place type, At at) {
    List<?> place = (List<?>) at.value();
    if (at.item()) {
      row(at, Form.Input.HEADING, "", List.of());
    }
    Type.LENGTH.by(this, coordinate(at, "0", "x", place.get(0)));
    return Type.LENGTH.by(this, coordinate(at, "1", "z", place.get(1)));
  }

  private static At coordinate(At at, String key, String label, Object value) {
    At inside = at.inside(key, label, value, false);
    return new At(inside.path(), at.name(), at.depth(), label, at.help(), value, "", false, false);
  }

  @Override
  public Void ref(Type.Ref type, At at) {
    return row(at, Form.Input.CHOICE, text(at.value()), names(type));
  }

  private List<String> names(Type.Ref type) {
    return List.copyOf(known.get(type.to()));
  }

  @Override
  public Void list(Type.ListOf<?> type, At at) {
    List<?> list = (List<?>) at.value();
    row(at, Form.Input.HEADING, "", List.of());
    boolean pixels = type.item() == Type.NUMBER && type.fewest() == 2 && type.most() == 2;
    for (int i = 0; i < list.size(); i++) {
      At inside =
          at.inside(
              Integer.toString(i),
              pixels ? PIXELS.get(i) : Counted.one(at.label()) + " " + (i + 1),
              list.get(i),
              list.size() > type.fewest());
      type.item().by(this, inside);
    }
    // what is a list itself is marked on the card, not typed one by one
    boolean typed = !(type.item() instanceof Type.ListOf);
    return typed && list.size() < type.most() ? more(at, left(type.item(), list)) : null;
  }

  private Void more(At at, List<String> choices) {
    return row(
        new At(
            at.path(),
            at.name(),
            at.depth() + 1,
            Counted.one(at.label()),
            at.help(),
            "",
            "",
            true,
            false),
        Form.Input.MORE,
        "",
        choices);
  }

  /** Names that a list has not yet; pins may come again. */
  private List<String> left(Type<?> item, List<?> there) {
    if (item instanceof Type.Ref ref) {
      return names(ref).stream()
          .filter(n -> ref.to() == Referent.PIN || !there.contains(n))
          .toList();
    }
    if (item instanceof Type.Choice<?> choice) {
      return List.copyOf(choice.kinds().keySet());
    }
    return item instanceof Type.Word<?> word
        ? word.words().stream().filter(w -> !there.contains(w)).toList()
        : List.of();
  }

  @Override
  public Void maybe(Type.Maybe<?> type, At at) {
    return type.inner().by(this, at.bare(((Optional<?>) at.value()).orElse(null)));
  }

  @Override
  public Void nested(Type.Nested<?> type, At at) {
    row(at, Form.Input.HEADING, "", List.of());
    nested(type.kind(), at.value(), at.path(), at.name(), at.depth() + 1);
    return null;
  }

  @Override
  public Void choice(Type.Choice<?> type, At at) {
    return chosen(type, at);
  }

  @SuppressWarnings("unchecked")
  private <V> Void chosen(Type.Choice<V> choice, At at) {
    V value = (V) at.value();
    row(at, Form.Input.HEADING, choice.word().apply(value), List.of());
    Kind<V> kind = choice.kind(value);
    fields(kind, value, at.path(), at.name(), at.depth() + 1);
    return null;
  }

  @Override
  public Void group(Type.Group<?> type, At at) {
    row(at, Form.Input.HEADING, "", List.of());
    ((Map<?, ?>) at.value())
        .forEach(
            (key, value) ->
                SaidOf.item(type, key.toString(), dims())
                    .by(this, at.inside(key.toString(), key.toString(), value, true)));
    Collection<String> may = type.to().<Collection<String>>map(known::get).orElse(type.keys());
    return more(at, may.stream().filter(k -> !((Map<?, ?>) at.value()).containsKey(k)).toList());
  }

  @Override
  public Void vertex(Type.Vertices type, At at) {
    Vertex vertex = (Vertex) at.value();
    row(at, Form.Input.HEADING, "", List.of());
    if (vertex.pin() == null) {
      Type.LENGTH.by(this, at.inside("0", "x", vertex.x(), false));
      Type.LENGTH.by(this, at.inside("1", "z", vertex.z(), false));
    }
    Type.ref(Referent.PIN).by(this, at.inside("pin", "pin", vertex.pin(), false));
    if (type.mayBeSmooth()) {
      Type.FLAG.by(this, at.inside(Type.Vertices.SMOOTH, "smooth", vertex.smooth(), false));
    }
    type.reach().ifPresent(kind -> reach(kind, vertex, at));
    return null;
  }

  /** What is said of a place, if anything, as optional fields of it. */
  private void reach(Kind<HalfBreadths> kind, Vertex vertex, At at) {
    for (Field<HalfBreadths, ?> f : kind.fields()) {
      Object said = vertex.reach().isEmpty() ? null : f.of(vertex.reach().get());
      Object value = said instanceof Optional<?> may ? may.orElse(null) : said;
      At inside = at.inside(f.key(), f.key(), value, false);
      Type.LENGTH.by(
          this,
          new At(
              inside.path(), at.name(), inside.depth(), f.key(), f.help(), value, "", true, false));
    }
  }

  @Override
  public Void outline(Type.Outlines type, At at) {
    row(at, Form.Input.HEADING, "", List.of());
    if (at.value() instanceof Outline.Traced traced) {
      fields(type.traced(), traced, at.path(), at.name(), at.depth() + 1);
    } else {
      fields(type.drawn(), (Outline.Drawn) at.value(), at.path(), at.name(), at.depth() + 1);
    }
    return null;
  }
}

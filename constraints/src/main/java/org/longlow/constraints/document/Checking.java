package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.words.Names;
import org.longlow.constraints.words.Quoted;

/** One walk over a layout that holds every field to its type, and every kind to its rules. */
final class Checking implements Type.Cases<Here, Object> {

  private static final Pattern INK = Pattern.compile("\\S");

  private final Layout layout;
  private final Tracer tracer;
  private final Faults faults;
  private final Surroundings around;
  private final Quantities quantities;
  private int group;

  Checking(Layout layout, Tracer tracer, Faults faults, Written written) {
    this.layout = layout;
    this.tracer = tracer;
    this.faults = faults;
    this.around = new Surroundings(layout, faults, written);
    this.quantities = around.quantities;
  }

  /** Reports all faults; returns the layout with its quantities in their dimensions. */
  Layout layout() {
    Kind<Layout> kind = Document.LAYOUT;
    Map<String, Object> values = new HashMap<>();
    for (Field<Layout, ?> field : kind.fields()) {
      faults.at(++group, 0);
      if (field.key().equals("measures")) {
        link();
      }
      values.put(field.key(), held(field, new Here("$", "", field.of(layout)), "$." + field.key()));
    }
    Layout fitted = kind.make("", values);
    faults.at(++group, 0);
    Here whole = new Here("$", "", fitted);
    kind.rules().forEach(rule -> rule.check(fitted, new SpotAt(around, whole, "")));
    return fitted;
  }

  private void link() {
    Map<String, String> paths = new LinkedHashMap<>();
    layout
        .measures()
        .forEach(
            (name, measure) -> {
              String path = FieldPath.key("$.measures", name);
              boolean shortly =
                  measure == null || around.isShort(PointKinds.MEASURE, path, measure);
              paths.put(name, shortly ? path : FieldPath.key(path, "is"));
              quantities.declare(
                  name,
                  measure == null ? Quantities.LOST : measure.is(),
                  measure != null && measure.free());
            });
    quantities.link(paths);
  }

  /** Returns remarks that do not stop the layout. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    for (String measure : layout.measures().keySet()) {
      if (!quantities.used().contains(measure)) {
        notes.add("measure " + measure + " is used nowhere");
      }
    }
    return notes;
  }

  @Override
  public Object text(Type.Text type, Here here) {
    String text = (String) here.value();
    if (text.codePointCount(0, text.length()) > Type.MAX_TEXT) {
      faults.structure(
          here.path(),
          Quoted.cut(text),
          "is longer than " + Type.MAX_TEXT + " characters",
          "shorten it");
    } else if (type.filled() && !INK.matcher(text).find() && faults.isSound(here.path())) {
      faults.structure(
          here.path(),
          Quoted.cut(text),
          "is empty",
          type.required() ? "write a name" : "write a name or leave the key out");
    }
    return text;
  }

  @Override
  public Object flag(Type.Flag type, Here here) {
    return here.value();
  }

  @Override
  public Object whole(Type.Whole type, Here here) {
    int count = (Integer) here.value();
    if (count < 0 || count > type.most()) {
      faults.structure(here.path(), Integer.toString(count), type.said(), "");
    }
    return count;
  }

  @Override
  public Object weight(Type.Weight type, Here here) {
    double weight = (Double) here.value();
    if (!(weight > 0)) {
      faults.structure(here.path(), Range.number(weight), Type.Weight.WORDS, "such as 1");
    } else if (weight > Type.Weight.MOST) {
      faults.meaning(here.path(), Range.number(weight), "is beyond 1000000", "such as 1");
    }
    return weight;
  }

  @Override
  public Object word(Type.Word<?> type, Here here) {
    Object value = here.value();
    if (value != null && !type.values().contains(value) && faults.isSound(here.path())) {
      String text = value.toString();
      faults.notOneOf(here.path(), Quoted.cut(text), text, type.words());
    }
    return value;
  }

  @Override
  public Object quantity(Type.Quantity type, Here here) {
    Formula formula = (Formula) here.value();
    return formula == Quantities.LOST || type.equals(Type.DEFINITION)
        ? formula
        : quantities.fit(here.path(), formula, type.dim().orElse(null), type.range());
  }

  @Override
  public Object place(Type.Place type, Here here) {
    List<?> place = (List<?>) here.value();
    return List.of(
        Type.LENGTH.by(this, here.item(0, place.get(0))),
        Type.LENGTH.by(this, here.item(1, place.get(1))));
  }

  @Override
  public Object ref(Type.Ref type, Here here) {
    String name = (String) here.value();
    if (name.isEmpty() && type.empty()) {
      return name;
    }
    known(type.to(), name, here.path());
    return name;
  }

  private void known(Referent to, String name, String path) {
    Collection<String> names = around.names(to);
    if (to == Referent.MEASURE) {
      quantities.use(name);
    }
    if (!names.contains(name)) {
      String what = to.word();
      faults.meaning(
          path, Quoted.cut(name), "is no " + what + " here", Names.advice(name, names, what));
    }
  }

  @Override
  public Object list(Type.ListOf<?> type, Here here) {
    List<?> list = (List<?>) here.value();
    int size = list.size();
    if ((size < type.fewest() || size > type.most()) && faults.isSound(here.path())) {
      faults.structure(
          here.path(),
          list.isEmpty() ? "[]" : "[...]",
          "has " + size + (size == 1 ? " entry, " : " entries, ") + type.allowed(size),
          "");
    }
    List<Object> fitted = new ArrayList<>(list);
    for (int i = 0; i < Math.min(size, type.most()); i++) {
      fitted.set(i, type.item().by(this, here.item(i, list.get(i))));
    }
    return fitted;
  }

  @Override
  public Object maybe(Type.Maybe<?> type, Here here) {
    return ((Optional<?>) here.value())
        .map(inner -> type.inner().by(this, new Here(here.path(), here.name(), inner)));
  }

  @Override
  public Object nested(Type.Nested<?> type, Here here) {
    return kind(type.kind(), here);
  }

  @Override
  public Object choice(Type.Choice<?> type, Here here) {
    return here.value() == null ? null : chosen(type, here);
  }

  @SuppressWarnings("unchecked")
  private <V> Object chosen(Type.Choice<V> type, Here here) {
    return kind(type.kind((V) here.value()), here);
  }

  /** What a document need not say and does not say is as it is meant to be. */
  private Object held(Field<?, ?> field, Here owner, String path) {
    Object value = owner.value();
    return !field.required() && !around.isSaid(path) && value.equals(field.orElse())
        ? value
        : field.type().by(this, new Here(path, owner.name(), value));
  }

  @SuppressWarnings("unchecked")
  private <T> T kind(Kind<T> general, Here here) {
    T value = (T) here.value();
    if (value == null || around.isUnread(here.path())) {
      return value;
    }
    Kind<T> kind = general.exactly(here.name(), value, quantities::dim);
    boolean shortly = around.isShort(kind, here.path(), value);
    String alone = shortly ? kind.shortField().orElseThrow().key() : "";
    SpotAt at = new SpotAt(around, here, alone);
    T fitted =
        kind.mapped(
            here.name(),
            value,
            (field, inner) ->
                held(field, new Here(here.path(), here.name(), inner), at.path(field.key())));
    kind.rules().forEach(rule -> rule.check(fitted, at));
    return fitted;
  }

  @Override
  public Object group(Type.Group<?> type, Here here) {
    Map<?, ?> entries = (Map<?, ?>) here.value();
    if (entries.size() > Type.MAX_ENTRIES) {
      faults.structure(
          here.path(),
          "",
          "has " + entries.size() + " entries, takes at most " + Type.MAX_ENTRIES,
          "split the layout up");
      return entries;
    }
    Map<String, Object> fitted = new LinkedHashMap<>();
    int entry = 0;
    for (Map.Entry<?, ?> e : entries.entrySet()) {
      String name = e.getKey().toString();
      Here inner = here.item(name, e.getValue());
      if (type.naming().given()) {
        faults.at(group, ++entry);
        EntryNames.check(type, name, inner.path(), faults);
      }
      if (type.to().isPresent()) {
        known(type.to().get(), name, inner.path());
      }
      if (type.naming().named()) {
        inner = new Here(inner.path(), name, e.getValue());
      }
      Object value =
          isVaried(type) ? e.getValue() : SaidOf.item(type, name, quantities::dim).by(this, inner);
      fitted.put(name, value);
      if (type.naming().given() && value instanceof Part part) {
        around.put(name, part);
      }
    }
    return fitted;
  }

  /** What a variant has otherwise is checked where it stands: in the layout as that variant. */
  private static boolean isVaried(Type.Group<?> type) {
    return type.to().isPresent()
        && (type.item() instanceof Type.Nested || type.item() instanceof Type.Choice);
  }

  @Override
  public Object vertex(Type.Vertices type, Here here) {
    Vertex vertex = (Vertex) here.value();
    boolean onPin = vertex.pin() != null;
    Vertex held = vertex;
    if (onPin) {
      Here pin = new Here(here.path(), here.name(), vertex.pin());
      boolean alone = !vertex.smooth() && vertex.reach().isEmpty();
      Type.ref(Referent.PIN).by(this, alone ? pin : pin.item(0, vertex.pin()));
    } else {
      held =
          vertex.at(
              (Formula) Type.LENGTH.by(this, here.item(0, vertex.x())),
              (Formula) Type.LENGTH.by(this, here.item(1, vertex.z())));
    }
    if (type.reach().isEmpty() || vertex.reach().isEmpty()) {
      return held;
    }
    int last = (onPin ? 1 : 2) + (vertex.smooth() ? 1 : 0);
    HalfBreadths reach = kind(type.reach().get(), here.item(last, vertex.reach().get()));
    return held.reaching(Optional.of(reach));
  }

  @Override
  public Object outline(Type.Outlines type, Here here) {
    if (here.value() instanceof Outline.Drawn) {
      return kind(type.drawn(), here);
    }
    Outline.Traced asked = (Outline.Traced) here.value();
    SpotAt at = new SpotAt(around, here, "");
    Outline.Traced fitted = kind(type.traced(), here);
    // The kind knows what the file says; the vertices come from where the file points.
    Outline.Traced full = fitted.as(asked.vertices(), asked.closed());
    Optional<Double> scale = quantities.fixedValue(fitted.scale()).filter(s -> s > 0);
    Outline.Traced traced =
        scale.isEmpty() || full.file().isEmpty() ? full : tracer.traced(full, scale.get(), at);
    EdgeRules.uncrossed(traced, Type.Outlines.TRACED_BY, at);
    EdgeRules.holes(traced, at);
    return traced;
  }
}

package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Vertex;

/**
 * A walk over a layout in which references, formulas and names of entries get other values, or
 * none: null. What cannot stand without goes with it: an item of its list, a field that may be left
 * out, at last the whole entry.
 */
abstract class Rewriting implements Type.Cases<Rewriting.Here, Object> {

  /**
   * Where the walk is.
   *
   * @param group key of the group, such as ties
   * @param name of the entry
   */
  record Here(String group, String name, Object value) {
    Here with(Object inner) {
      return new Here(group, name, inner);
    }
  }

  private Kind.Dims dims = name -> Optional.empty();

  /** Returns what a reference says instead; null where there is nothing any more. */
  abstract String ref(Referent to, String name);

  /** Returns a formula as it is to be. */
  Formula formula(Formula formula) {
    return formula;
  }

  /** Returns what an entry is called instead. */
  String called(String group, String name) {
    return name;
  }

  /** Told of an entry that goes. */
  void gone(String group, String name) {}

  /** Told of an entry that stays, otherwise than it was. */
  void changed(String group, String name) {}

  Layout of(Layout layout) {
    dims = name -> Measures.known(layout, name);
    return Document.LAYOUT.mapped(
        "", layout, (field, value) -> field.type().by(this, new Here(field.key(), "", value)));
  }

  @Override
  public Object group(Type.Group<?> type, Here here) {
    boolean own = type.naming().given();
    Map<String, Object> entries = new LinkedHashMap<>();
    ((Map<?, ?>) here.value())
        .forEach(
            (key, value) -> {
              String name = key.toString();
              String called =
                  own
                      ? called(here.group(), name)
                      : type.to().isPresent() ? ref(type.to().get(), name) : name;
              Object now =
                  type.naming().named() && called != null
                      ? type.item().by(this, new Here(here.group(), called, value))
                      : called == null ? null : type.item().by(this, here.with(value));
              if (now != null) {
                entries.put(called, now);
              }
              if (own && now == null) {
                gone(here.group(), name);
              } else if (own && !now.equals(value)) {
                changed(here.group(), name);
              }
            });
    return entries;
  }

  @Override
  public Object nested(Type.Nested<?> type, Here here) {
    return kind(type.kind(), here);
  }

  @Override
  @SuppressWarnings("unchecked")
  public Object choice(Type.Choice<?> type, Here here) {
    return kind(((Type.Choice<Object>) type).kind(here.value()), here);
  }

  @SuppressWarnings("unchecked")
  private <T> Object kind(Kind<T> general, Here here) {
    T value = (T) here.value();
    boolean[] stands = {true};
    T made =
        general
            .exactly(here.name(), value, dims)
            .mapped(
                here.name(),
                value,
                (field, inner) -> {
                  Object now = field.type().by(this, here.with(inner));
                  // what hung on something does not hang in the air instead
                  boolean hangs =
                      field.required()
                          || field.type() instanceof Type.Maybe<?> maybe
                              && !(maybe.inner() instanceof Type.Nested);
                  if (now == null && (hangs || isWhole(here.group()))) {
                    stands[0] = false;
                    return inner;
                  }
                  return now == null ? field.orElse() : now;
                });
    return stands[0] ? made : null;
  }

  /** A relation, a state, a hinge or a dimension is about all that it names. */
  private static boolean isWhole(String group) {
    return switch (group) {
      case "ties", "limits", "wishes", "stances", "sections", "dimensions" -> true;
      default -> false;
    };
  }

  @Override
  public Object list(Type.ListOf<?> type, Here here) {
    List<?> list = (List<?>) here.value();
    List<Object> kept = new ArrayList<>();
    for (Object item : list) {
      Object now = type.item().by(this, here.with(item));
      if (now != null) {
        kept.add(now);
      }
    }
    boolean tooFew = kept.size() < Math.min(type.fewest(), list.size());
    boolean mayLose = type.item() instanceof Type.Ref item && item.to() == Referent.PART;
    boolean lost = kept.size() < list.size() && !mayLose && isWhole(here.group());
    return tooFew || lost ? null : kept;
  }

  @Override
  public Object maybe(Type.Maybe<?> type, Here here) {
    Optional<?> old = (Optional<?>) here.value();
    if (old.isEmpty()) {
      return old;
    }
    Object now = type.inner().by(this, here.with(old.get()));
    return now == null ? null : Optional.of(now);
  }

  @Override
  public Object ref(Type.Ref type, Here here) {
    String name = (String) here.value();
    return name.isEmpty() ? name : ref(type.to(), name);
  }

  @Override
  public Object vertex(Type.Vertices type, Here here) {
    Vertex v = (Vertex) here.value();
    if (v.pin() == null) {
      return reach(v.at(formula(v.x()), formula(v.z())));
    }
    String pin = ref(Referent.PIN, v.pin());
    return pin == null ? null : reach(v.on(pin));
  }

  private Vertex reach(Vertex v) {
    return v.reaching(
        v.reach()
            .map(r -> new HalfBreadths(r.left().map(this::formula), r.right().map(this::formula))));
  }

  @Override
  public Object outline(Type.Outlines type, Here here) {
    if (here.value() instanceof Outline.Traced traced) {
      Outline.Traced now = (Outline.Traced) kind(type.traced(), here);
      return now == null ? null : now.as(traced.vertices(), traced.closed());
    }
    Outline.Drawn drawn = (Outline.Drawn) kind(type.drawn(), here);
    return drawn == null || drawn.closed() && drawn.vertices().size() < 3 ? null : drawn;
  }

  @Override
  public Object quantity(Type.Quantity type, Here here) {
    return formula((Formula) here.value());
  }

  @Override
  public Object place(Type.Place type, Here here) {
    List<?> place = (List<?>) here.value();
    return List.of(formula((Formula) place.get(0)), formula((Formula) place.get(1)));
  }

  @Override
  public Object text(Type.Text type, Here here) {
    return here.value();
  }

  @Override
  public Object flag(Type.Flag type, Here here) {
    return here.value();
  }

  @Override
  public Object whole(Type.Whole type, Here here) {
    return here.value();
  }

  @Override
  public Object weight(Type.Weight type, Here here) {
    return here.value();
  }

  @Override
  public Object word(Type.Word<?> type, Here here) {
    return here.value();
  }
}

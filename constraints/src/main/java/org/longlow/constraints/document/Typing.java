package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.FormulaException;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Hole;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.words.Names;
import org.longlow.constraints.words.Quoted;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.words.Units;

/**
 * Fields of a layout given as text, as people type or pick it. Whether a value can stand there is
 * for {@link LayoutFaults} to tell; here is refused what is no value of the field at all.
 */
public final class Typing {

  /** What a new layer of foam is until its data sheet is typed in: a common seat foam. */
  private static final FoamSpec LAYER =
      new FoamSpec(
          "medium",
          Formula.parse("30 mm"),
          Formula.parse("45 kg/m^3"),
          Optional.of(Formula.parse("170 N")),
          Optional.of(Formula.parse("2.5")),
          false,
          Optional.empty(),
          Optional.empty());

  private Typing() {}

  /**
   * Returns the layout with a field as typed. Nothing typed takes out what may be left out.
   *
   * @param path from the top by keys, names and indices
   * @throws OutOfRange if the text is no such value, or the layout has no such place
   * @throws FormulaException if the text is no quantity or formula
   */
  public static Layout typed(Layout layout, String text, List<String> path) {
    return typed(layout, text, path, Units.MM);
  }

  /**
   * Returns the layout with a field as somebody typed it who sees the layout in its units: there a
   * bare number takes those.
   */
  public static Layout typedAsShown(Layout layout, String text, List<String> path) {
    return typed(layout, text, path, layout.units());
  }

  private static Layout typed(Layout layout, String text, List<String> path, Units units) {
    String said = text.strip();
    return looked(
        path,
        Change.at(
            layout,
            path,
            (field, type, old) -> {
              boolean whole = type == field.type();
              if (said.isEmpty() && type instanceof Type.Maybe) {
                return Optional.empty();
              }
              if (said.isEmpty() && whole && !field.required() && !(type instanceof Type.Text)) {
                return field.orElse();
              }
              Type<?> bare = type instanceof Type.Maybe<?> maybe ? maybe.inner() : type;
              Object value =
                  bare.by(
                      VALUES,
                      bare instanceof Type.Quantity q && q.dim().isPresent()
                          ? ShownQuantity.typed(said, q.dim().get(), units)
                          : said);
              return type instanceof Type.Maybe ? Optional.of(value) : value;
            }));
  }

  /** Of many variants {@link LayoutFaults} looks at none: so that is looked at that is typed in. */
  private static Layout looked(List<String> path, Layout now) {
    if (path.get(0).equals("variants")
        && path.size() > 2
        && now.variants().size() > VariedFaults.MOST_AT_ONCE) {
      Varied.named(now, path.get(1));
    }
    return now;
  }

  /**
   * Returns the layout with one more in a list or group of the field at {@code path}.
   *
   * @param word what it says, or its key in a group; empty makes one like the last
   */
  public static Layout added(Layout layout, String word, List<String> path) {
    return Change.at(
        layout,
        path,
        (field, type, old) -> {
          if (type instanceof Type.ListOf<?> list) {
            List<Object> longer = new ArrayList<>((List<?>) old);
            if (list.item() == HoleKinds.HOLE) {
              longer.add(hole(layout, word, path));
            } else if (isHalf(layout, path) && word.isEmpty()) {
              int last = longer.size() - 1; // it ends on the axis
              longer.add(last, between((Vertex) longer.get(last - 1), (Vertex) longer.get(last)));
            } else {
              longer.add(item(layout, path, list.item(), word, longer));
            }
            return longer;
          }
          if (type instanceof Type.Group<?> group && group.naming() == Naming.KEYS) {
            Map<Object, Object> more = new LinkedHashMap<>((Map<?, ?>) old);
            more.putIfAbsent(word, group.item().by(VALUES, "100 mm"));
            return more;
          }
          if (type instanceof Type.Group<?> group && group.to().isPresent()) {
            Map<Object, Object> more = new LinkedHashMap<>((Map<?, ?>) old);
            boolean whole =
                group.item() instanceof Type.Nested || group.item() instanceof Type.Choice;
            Object begun =
                (whole
                        ? Optional.ofNullable(Entries.of(layout, field.key()).get(word))
                        : BuiltKinds.begun(layout, field.key(), word))
                    .orElseThrow(() -> new OutOfRange("there is no " + word + " to say it of"));
            more.putIfAbsent(word, begun);
            return more;
          }
          throw new OutOfRange(String.join(" ", path) + " takes no more");
        });
  }

  /** Whether a list holds the vertices of a half. */
  private static boolean isHalf(Layout layout, List<String> path) {
    return path.size() == 4
        && path.get(3).equals("points")
        && layout.parts().get(path.get(1)).edge().filter(Outline::half).isPresent();
  }

  /** A hole is begun where the outline has room, so that it can stand. */
  private static Hole hole(Layout layout, String word, List<String> path) {
    Outline outline = layout.parts().get(path.get(1)).edge().orElseThrow();
    return NewHole.of(picked(List.copyOf(HoleKinds.HOLE.kinds().keySet()), word), layout, outline);
  }

  private static Object item(
      Layout layout, List<String> path, Type<?> item, String word, List<Object> there) {
    if (!word.isEmpty()) {
      return item.by(VALUES, word);
    }
    if (item instanceof Type.Nested<?> nested) {
      Optional<?> begun = BreadthKinds.begun(nested.kind(), layout.parts().get(path.get(1)), there);
      begun = begun.isPresent() ? begun : FormerKinds.begun(nested.kind(), there);
      begun = begun.isPresent() ? begun : BuiltKinds.begun(nested.kind(), layout, there);
      begun = begun.isPresent() ? begun : StockKinds.begun(nested.kind());
      begun = begun.isPresent() ? begun : WheelKinds.begun(nested.kind());
      List<String> pins = List.copyOf(layout.pins().keySet());
      begun = begun.isPresent() ? begun : OpensKinds.begun(nested.kind(), pins, there);
      begun = begun.isPresent() ? begun : LineKinds.begun(nested.kind(), pins, there);
      begun = begun.isPresent() || !there.isEmpty() ? begun : FoamKinds.begun(nested.kind());
      begun = begun.isPresent() ? begun : TitleKinds.begun(nested.kind(), there);
      if (begun.isPresent()) {
        return begun.get();
      }
    }
    if (item instanceof Type.Vertices && there.size() > 1) {
      return between((Vertex) there.get(there.size() - 1), (Vertex) there.get(0));
    }
    if (!there.isEmpty()) {
      return there.get(there.size() - 1);
    }
    if (item instanceof Type.Nested<?> nested && nested.kind() == FoamKinds.FOAM) {
      return LAYER;
    }
    return item.by(VALUES, item instanceof Type.Quantity ? "10 mm" : "");
  }

  /** A vertex half way along an edge, such as that which closes the outline. */
  private static Vertex between(Vertex a, Vertex b) {
    if (a.pin() != null || b.pin() != null) {
      throw new OutOfRange("the last edge runs to a pin; give x and z of a vertex beside it first");
    }
    return new Vertex(half(a.x(), b.x()), half(a.z(), b.z()), null, false);
  }

  private static Formula half(Formula a, Formula b) {
    return Formula.parse("((" + a.text() + ") + (" + b.text() + ")) / 2");
  }

  /**
   * Returns the layout without one item of a list or group.
   *
   * @param path of the item
   */
  public static Layout dropped(Layout layout, List<String> path) {
    String key = path.get(path.size() - 1);
    return Change.at(
        layout,
        path.subList(0, path.size() - 1),
        (field, type, old) -> {
          if (old instanceof Map<?, ?> map && map.containsKey(key)) {
            Map<Object, Object> fewer = new LinkedHashMap<>(map);
            fewer.remove(key);
            return fewer;
          }
          if (old instanceof List<?> list && key.matches("\\d{1,5}")) {
            int i = Integer.parseInt(key);
            if (i < list.size()) {
              List<Object> fewer = new ArrayList<>(list);
              fewer.remove(i);
              return fewer;
            }
          }
          throw new OutOfRange("the layout has no " + String.join(" ", path));
        });
  }

  private static final Type.Cases<String, Object> VALUES =
      new Type.Cases<>() {
        @Override
        public Object text(Type.Text type, String said) {
          return said;
        }

        @Override
        public Object flag(Type.Flag type, String said) {
          return picked(List.of("true", "false"), said).equals("true");
        }

        @Override
        public Object whole(Type.Whole type, String said) {
          try {
            return Integer.valueOf(said);
          } catch (NumberFormatException e) {
            throw new OutOfRange(Quoted.cut(said) + " " + type.said());
          }
        }

        @Override
        public Object weight(Type.Weight type, String said) {
          try {
            return Double.valueOf(said);
          } catch (NumberFormatException e) {
            throw new OutOfRange(Quoted.cut(said) + " " + Type.Weight.WORDS);
          }
        }

        @Override
        public Object word(Type.Word<?> type, String said) {
          return type.values().get(type.words().indexOf(picked(type.words(), said)));
        }

        @Override
        public Object quantity(Type.Quantity type, String said) {
          return Formula.parse(said);
        }

        @Override
        public Object ref(Type.Ref type, String said) {
          return said;
        }

        @Override
        public Object maybe(Type.Maybe<?> type, String said) {
          return Optional.of(type.inner().by(this, said));
        }

        @Override
        public Object vertex(Type.Vertices type, String said) {
          return new Vertex(null, null, said, false);
        }

        @Override
        public Object place(Type.Place type, String said) {
          throw ofFields();
        }

        @Override
        public Object list(Type.ListOf<?> type, String said) {
          throw ofFields();
        }

        @Override
        public Object nested(Type.Nested<?> type, String said) {
          throw ofFields();
        }

        @Override
        public Object choice(Type.Choice<?> type, String said) {
          throw ofFields();
        }

        @Override
        public Object group(Type.Group<?> type, String said) {
          throw ofFields();
        }

        @Override
        public Object outline(Type.Outlines type, String said) {
          throw ofFields();
        }
      };

  private static OutOfRange ofFields() {
    return new OutOfRange("is made of fields of its own; type into those");
  }

  private static String picked(List<String> words, String said) {
    if (!words.contains(said)) {
      throw new OutOfRange(
          Quoted.cut(said)
              + " is none of "
              + String.join(", ", words)
              + Names.nearest(said, words).map(w -> "; did you mean " + w + "?").orElse(""));
    }
    return said;
  }
}

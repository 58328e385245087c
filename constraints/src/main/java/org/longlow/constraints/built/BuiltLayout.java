package org.longlow.constraints.built;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Varied;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.TyreWord;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.Diagnosis;
import org.longlow.constraints.solve.LimitFailure;
import org.longlow.rider.geom.PointMm;

/**
 * The layout that follows from what was measured. What was measured holds; what hangs on it follows
 * by the ties of the plan; and of ties and limits that cannot hold beside it so many are let go of
 * that the rest can.
 *
 * @param placed the layout, solved; it still contradicts itself where measurements do
 * @param letGo what does not hold any more, in the order of the plan
 */
public record BuiltLayout(Placed placed, List<LetGo> letGo) {

  /** A machine with more that does not hold is another machine. */
  private static final int MOST = 60;

  public BuiltLayout {
    letGo = List.copyOf(letGo);
  }

  public Layout layout() {
    return placed.layout();
  }

  /**
   * Returns it.
   *
   * @param plan the solved layout as planned
   */
  public static BuiltLayout of(Placed plan) {
    return new Reckoning(plan).done();
  }

  private static final class Reckoning {
    private final Placed plan;
    private final AsBuilt built;
    private final Carriers carriers;
    private final Set<String> gone = new HashSet<>();
    private Layout now;

    Reckoning(Placed plan) {
      this.plan = plan;
      this.built = plan.layout().asBuilt();
      this.carriers = new Carriers(plan.layout());
      this.now = grounded(Varied.measured(plan.layout()));
    }

    BuiltLayout done() {
      overruled();
      Placed placed = Placer.place(now);
      while (plan.holds() && gone.size() < MOST) {
        Optional<String> next = placed.holds() ? collapsed(placed) : next(placed);
        if (next.isEmpty()) {
          break;
        }
        drop(next.get());
        placed = Placer.place(now);
      }
      return new BuiltLayout(placed, told(placed.places()));
    }

    /** The origin lies under the rear axle: that is where measuring began. */
    private Layout grounded(Layout layout) {
      String axle = layout.wheel(Part.End.REAR).orElseThrow().axle();
      Pin pin = layout.pins().get(axle);
      if (pin.nailed() || built.isNothing()) {
        return layout;
      }
      PointMm at = plan.places().pin(axle);
      Measures measures = Measures.of(layout);
      double z =
          layout.ties().values().stream()
              .filter(t -> t.kind() == TieKind.HEIGHT && t.pins().contains(axle))
              .filter(t -> isSettled(t.is().orElseThrow()))
              .map(t -> measures.drawn(t.is().orElseThrow()))
              .findFirst()
              .orElse(at.z());
      Pin nailed =
          new Pin(
              Formula.of(at.x(), Unit.MM), Formula.of(z, Unit.MM), true, pin.with(), pin.note());
      return layout.withPins(Map.of(axle, nailed));
    }

    /** What speaks only of places that are measured or nailed is no question any more. */
    private void overruled() {
      for (Map.Entry<String, Tie> tie : plan.layout().ties().entrySet()) {
        Tie t = tie.getValue();
        boolean isPlain = t.is().isPresent() && t.is().filter(this::isSettled).isPresent();
        if (isPlain
            && PinFigures.isKnown(t.kind())
            && t.pins().stream().anyMatch(built.pins()::containsKey)
            && t.pins().stream().allMatch(p -> now.pins().get(p).nailed())) {
          drop(tie.getKey());
        }
      }
      for (int i = 0; i < built.spans().size(); i++) {
        var span = built.spans().get(i);
        if (now.pins().get(span.from()).nailed() && now.pins().get(span.to()).nailed()) {
          drop(Varied.tieName(plan.layout(), i));
        }
        for (Map.Entry<String, Tie> tie : plan.layout().ties().entrySet()) {
          Tie t = tie.getValue();
          List<String> pins = List.of(span.from(), span.to());
          boolean backwards =
              t.kind() == TieKind.DISTANCE && t.pins().equals(List.of(span.to(), span.from()));
          if (t.kind() == span.kind()
              && (t.pins().equals(pins) || backwards)
              && t.is().filter(this::isSettled).isPresent()) {
            drop(tie.getKey());
          }
        }
      }
      for (Map.Entry<String, Limit> limit : plan.layout().limits().entrySet()) {
        if (PinFigures.isKnown(limit.getValue())
            && !limit.getValue().pins().isEmpty()
            && limit.getValue().pins().stream().allMatch(p -> now.pins().get(p).nailed())) {
          drop(limit.getKey());
        }
      }
    }

    private boolean isSettled(Formula formula) {
      return formula.names().stream().allMatch(n -> isSettled(n, new HashSet<>()));
    }

    private boolean isSettled(String measure, Set<String> seen) {
      Measure m = now.measures().get(measure);
      return m == null
          ? TyreWord.words().contains(measure)
          : !m.free()
              && seen.add(measure)
              && m.is().names().stream().allMatch(n -> isSettled(n, seen));
    }

    private void drop(String name) {
      gone.add(name);
      String group = now.ties().containsKey(name) ? "ties" : "limits";
      Map<String, Object> rest =
          new LinkedHashMap<>(group.equals("ties") ? now.ties() : now.limits());
      rest.remove(name);
      now = Change.set(now, rest, group);
    }

    /**
     * Of what cannot all hold: a limit, which is a demand; else what speaks of the most pins, but
     * what says a measure that was measured comes last. Where nobody knows what contradicts what,
     * what was missed is let go of.
     */
    private Optional<String> next(Placed placed) {
      List<String> conflict =
          placed.report().diagnosis().map(Diagnosis::contradiction).orElse(List.of());
      List<String> names =
          (conflict.isEmpty() ? missed(placed) : conflict.stream())
              .map(this::plain)
              .distinct()
              .toList();
      Optional<String> limit = names.stream().filter(now.limits()::containsKey).findFirst();
      return limit.isPresent()
          ? limit
          : names.stream()
              .filter(plan.layout().ties()::containsKey)
              .filter(now.ties()::containsKey)
              .filter(n -> touches(now.ties().get(n)) > 0)
              .max(
                  Comparator.comparing((String n) -> carriers.of(now.ties().get(n)).isEmpty())
                      .thenComparing(n -> now.ties().get(n).is().isPresent())
                      .thenComparing(n -> touches(now.ties().get(n))));
    }

    private Optional<String> collapsed(Placed placed) {
      return now.ties().entrySet().stream()
          .filter(e -> Collapsed.is(e.getValue(), plan.places(), placed.places()))
          .map(Map.Entry::getKey)
          .findFirst();
    }

    private static Stream<String> missed(Placed placed) {
      return Stream.concat(
          placed.report().failedLimits().stream().map(LimitFailure::limit),
          placed.report().failedTies().stream());
    }

    /** How much of what a tie speaks of was measured. */
    private long touches(Tie tie) {
      long spans =
          built.spans().stream()
              .filter(s -> tie.pins().contains(s.from()) || tie.pins().contains(s.to()))
              .count();
      long measures =
          tie.is().stream()
              .flatMap(f -> f.names().stream())
              .filter(built.measures()::containsKey)
              .count();
      return tie.pins().stream().filter(built.pins()::containsKey).count() + spans + measures;
    }

    /** The solver says which side of a limit, or for whom. */
    private String plain(String full) {
      String name = full;
      while (!now.ties().containsKey(name) && !now.limits().containsKey(name)) {
        String shorter = name.replaceFirst(" \\([^()]*\\)$", "");
        if (shorter.equals(name)) {
          return full;
        }
        name = shorter;
      }
      return name;
    }

    private List<LetGo> told(Places places) {
      List<LetGo> all = new ArrayList<>();
      Map<String, Tie> ties = new LinkedHashMap<>(plan.layout().ties());
      ties.putAll(Varied.measured(plan.layout()).ties());
      ties.forEach(
          (name, tie) -> {
            if (gone.contains(name) && !now.ties().containsKey(name)) {
              tie(name, tie, places).ifPresent(all::add);
            }
          });
      plan.layout()
          .limits()
          .forEach(
              (name, limit) -> {
                if (!now.limits().containsKey(name)) {
                  limit(name, limit, places).ifPresent(all::add);
                }
              });
      built.measures().keySet().forEach(name -> range(name, places).ifPresent(all::add));
      return all;
    }

    /** The plan lets a free measure be found within a range only. */
    private Optional<LetGo> range(String name, Places places) {
      Measure planned = plan.layout().measures().get(name);
      Limit range =
          new Limit(
              Limit.Kind.MEASURE, List.of(), List.of(), name, planned.from(), planned.to(), "");
      return planned.free() ? limit(name, range, places) : Optional.empty();
    }

    private Optional<LetGo> tie(String name, Tie tie, Places places) {
      String what = tie.kind().word() + ": " + String.join(", ", tie.pins());
      Dim dim = tie.kind().dim().orElse(Dim.LENGTH);
      double is = PinFigures.of(tie.kind(), tie.pins(), places);
      double none = tie.kind() == TieKind.IN_LINE ? 0 : Double.NaN;
      double asked = tie.is().map(places::value).orElse(none);
      return Double.isFinite(is) && PinFigures.same(is, asked, dim)
          ? Optional.empty()
          : Optional.of(
              new LetGo(
                  "ties", name, what, asked, is, dim, carriers.contradicted(name, tie, places)));
    }

    private Optional<LetGo> limit(String name, Limit limit, Places places) {
      String what = limit.kind().word() + ": " + said(limit);
      boolean ofMeasure = limit.kind() == Limit.Kind.MEASURE;
      Dim dim = limit.kind().dim().orElseGet(() -> Measures.dim(now, limit.measure()));
      double is = ofMeasure ? places.measures().get(limit.measure()) : PinFigures.of(limit, places);
      double from = limit.from().map(places::value).orElse(Double.NEGATIVE_INFINITY);
      double to = limit.to().map(places::value).orElse(Double.POSITIVE_INFINITY);
      if (is >= from && is <= to) {
        return Optional.empty();
      }
      double asked = is < from ? from : is > to ? to : Double.NaN;
      return Optional.of(new LetGo("limits", name, what, asked, is, dim, List.of()));
    }

    private static String said(Limit limit) {
      return limit.measure().isEmpty()
          ? String.join(", ", limit.pins().isEmpty() ? limit.parts() : limit.pins())
          : limit.measure();
    }
  }
}

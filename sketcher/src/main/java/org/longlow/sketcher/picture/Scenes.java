package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.Finding;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.Freedom;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.seat.Compression;
import org.longlow.rider.seat.CushionLoad;
import org.longlow.rider.seat.SeatOutcome;

/** Picks from a study what one elevation shows. */
final class Scenes {

  private Scenes() {}

  static Scene of(Study study, PictureOptions options) {
    String person = options.person().isEmpty() ? firstRider(study) : options.person();
    Optional<Standing> standing =
        study.standing(options.stance().isEmpty() ? "laden, " + person : options.stance());
    if (standing.isEmpty() && !options.stance().isEmpty()) {
      throw new IllegalArgumentException(
          "no stance is called '"
              + options.stance()
              + "'; there are "
              + String.join("; ", study.standings().stream().map(Standing::name).toList()));
    }
    List<Sitting> seated = seated(study, options, standing, person);
    List<Manikin> people = new ArrayList<>();
    Map<String, Scene.Sunk> sunk = new LinkedHashMap<>();
    for (Sitting s : seated) {
      manikin(study.layout(), s).ifPresent(people::add);
      sunk.putAll(sunk(s));
    }
    List<Manikin> ghosts = new ArrayList<>();
    for (Sitting s : study.sittings()) {
      if (options.ghosts().contains(s.person()) && !seated.contains(s)) {
        manikin(study.layout(), s).ifPresent(ghosts::add);
      }
    }
    Places places = standing.map(Standing::places).orElse(study.placed().places());
    return new Scene(
        title(study.layout()),
        study.layout(),
        standing.map(Standing::name).orElse(""),
        places,
        standing.map(Standing::shapes).orElse(study.shapes()),
        standing.map(Standing::ground).orElseGet(() -> drawnGround(study)),
        people,
        ghosts,
        sunk,
        findings(study, options),
        phantoms(study, options),
        standing.map(Standing::load),
        options.freedoms() ? freedoms(study) : Map.of());
  }

  /** Returns the layout's title, or its name where it has none. */
  static String title(Layout layout) {
    return layout.title().isEmpty() ? layout.name() : layout.title();
  }

  /** Returns the findings asked for, in the order asked for. */
  private static List<Finding> findings(Study study, PictureOptions options) {
    List<Finding> out = new ArrayList<>();
    for (String id : options.findings()) {
      study.findings().stream().filter(f -> f.id().equals(id)).findFirst().ifPresent(out::add);
    }
    return out;
  }

  private static String firstRider(Study study) {
    return study.sittings().stream()
        .filter(s -> s.seat().equals(SeatParts.RIDER) && s.posture().isPresent())
        .map(Sitting::person)
        .findFirst()
        .orElse("");
  }

  /** Who sits: those of a laden stance, or the person asked for. */
  private static List<Sitting> seated(
      Study study, PictureOptions options, Optional<Standing> standing, String person) {
    List<Sitting> out = new ArrayList<>();
    boolean laden = standing.map(s -> s.kind() == Stance.Kind.LADEN).orElse(false);
    if (laden) {
      List<String> names = Arrays.asList(standing.get().people().split(" and "));
      for (int i = 0; i < names.size(); i++) {
        boolean rides = i == 0;
        String name = names.get(i);
        study.sittings().stream()
            .filter(s -> s.person().equals(name) && s.seat().equals(SeatParts.RIDER) == rides)
            .findFirst()
            .ifPresent(out::add);
      }
    }
    if (out.isEmpty() && (options.stance().isEmpty() || !options.person().isEmpty())) {
      study.sitting(person, SeatParts.RIDER).ifPresent(out::add);
    }
    return out;
  }

  static Optional<Manikin> manikin(Layout layout, Sitting sitting) {
    boolean helmet =
        Optional.ofNullable(layout.crew().get(sitting.person())).map(p -> p.helmet()).orElse(false);
    return sitting.posture().map(p -> Manikin.of(sitting, p, helmet));
  }

  /** Returns how far each cushion gives under a sitting, by part. */
  static Map<String, Scene.Sunk> sunk(Sitting sitting) {
    Map<String, Scene.Sunk> out = new LinkedHashMap<>();
    if (sitting.outcome() instanceof SeatOutcome.Seated seated) {
      SeatParts parts = sitting.parts();
      out.put(parts.pan().name(), sunk(seated.pan()));
      parts.back().ifPresent(c -> out.put(c.name(), sunk(seated.back())));
      if (seated.headRest().isPresent()) {
        parts.head().ifPresent(c -> out.put(c.name(), sunk(seated.headRest().get())));
      }
    }
    return out;
  }

  /** The sink is the best estimate; its shares are those of the layers at the peak. */
  private static Scene.Sunk sunk(CushionLoad load) {
    List<Compression.Layer> layers = load.layers().layers();
    double sum = layers.stream().mapToDouble(Compression.Layer::sinkMm).sum();
    List<Double> fromBoard = new ArrayList<>();
    for (int i = layers.size() - 1; i >= 0; i--) {
      fromBoard.add(sum > 0 ? load.sinkMm() * layers.get(i).sinkMm() / sum : 0.0);
    }
    return new Scene.Sunk(fromBoard);
  }

  private static Map<String, List<PartShape>> phantoms(Study study, PictureOptions options) {
    Map<String, List<PartShape>> out = new LinkedHashMap<>();
    for (Standing s : study.standings()) {
      if (s.kind() == Stance.Kind.OPEN && options.sections().contains(s.section())) {
        Section section = study.layout().sections().get(s.section());
        List<PartShape> moved = new ArrayList<>();
        for (String part : section.parts()) {
          if (s.shapes().containsKey(part)) {
            moved.add(s.shapes().get(part));
          }
        }
        out.put(s.section(), moved);
      }
    }
    return out;
  }

  private static Ground drawnGround(Study study) {
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    return wheels.stands()
        ? wheels.ground(study.placed().places())
        : new Ground(PointMm.ORIGIN, new PointMm(1, 0));
  }

  /** Returns how each unsettled pin can move: the sum over the freedoms it takes part in. */
  private static Map<String, PointMm> freedoms(Study study) {
    Map<String, PointMm> out = new LinkedHashMap<>();
    study
        .placed()
        .report()
        .diagnosis()
        .ifPresent(
            d -> {
              for (Freedom f : d.freedoms()) {
                for (String pin : study.layout().pins().keySet()) {
                  double dx = f.moves().getOrDefault(pin + ".x", 0.0);
                  double dz = f.moves().getOrDefault(pin + ".z", 0.0);
                  PointMm v = new PointMm(dx, dz);
                  if (v.length() > 1e-9) {
                    out.merge(pin, v, (a, b) -> a.length() >= b.length() ? a : b);
                  }
                }
              }
            });
    return out;
  }
}

package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.person.GettingInPose;
import org.longlow.constraints.check.person.OpenedParts;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Opened;
import org.longlow.constraints.stand.Sections;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.seat.Compression;
import org.longlow.rider.seat.CushionLoad;
import org.longlow.rider.seat.SeatOutcome;

/** Picks from a study what one elevation shows. */
public final class Scenes {

  private Scenes() {}

  static Scene of(Study study, PictureOptions options) {
    Optional<Standing> standing = standing(study, options);
    List<Sitting> seated = seated(study, options, standing);
    List<Manikin> people = new ArrayList<>();
    Map<String, Scene.Sunk> sunk = new LinkedHashMap<>();
    for (Sitting s : seated) {
      Optional<GettingInPose> pose = pose(study, options, s);
      pose.map(p -> InPose.manikin(s, p)).or(() -> manikin(s)).ifPresent(people::add);
      if (pose.map(p -> p.step().sits()).orElse(true)) {
        sunk.putAll(sunk(s));
      }
    }
    List<Manikin> ghosts = new ArrayList<>();
    for (Sitting s : study.sittings()) {
      if (options.ghosts().contains(s.person()) && !seated.contains(s)) {
        manikin(s).ifPresent(ghosts::add);
      }
    }
    Places places = standing.map(Standing::places).orElse(study.placed().places());
    return new Scene(
        title(study.layout()),
        study.layout(),
        standing.map(s -> stanceWords(s, options)).orElse(""),
        standing.map(Standing::condition),
        places,
        standing.map(s -> shapes(study, s, options)).orElse(study.shapes()),
        standing.map(Standing::ground).orElseGet(() -> drawnGround(study)),
        people,
        ghosts,
        sunk,
        findings(study, options, seated),
        phantoms(study, standing),
        standing.map(Standing::load).filter(l -> options.inPose().isEmpty()),
        standing.filter(s -> s.kind() == Stance.Kind.OPEN).map(s -> opened(study, s, options)),
        options.moved().flatMap(m -> stance(study, options).flatMap(s -> m.leaned(study, s))),
        options.moved().map(Moved::steerRad).orElse(0.0),
        AsDrawn.of(study));
  }

  /** Returns who was asked for, a passenger behind who rides, or else the first rider. */
  private static List<Sitting> asked(Study study, PictureOptions options) {
    List<Sitting> named = Company.sittings(study, options.seated());
    if (!named.isEmpty()) {
      return named;
    }
    if (options.person().isEmpty()) {
      return Company.firstRider(study).stream().toList();
    }
    List<Sitting> company = Company.with(study, options.person());
    return company.isEmpty()
        ? study.sitting(options.person(), Occupant.RIDER).stream().toList()
        : company;
  }

  /**
   * Returns the stance asked for, or else that of those who sit; empty for the machine as drawn.
   *
   * @throws IllegalArgumentException if the machine has no such stance
   */
  static Optional<Standing> standing(Study study, PictureOptions options) {
    return Moved.in(study, stance(study, options), options.moved());
  }

  /** Returns the stance asked for with its wheels where they are in it. */
  static Optional<Standing> stance(Study study, PictureOptions options) {
    if (options.asDrawn()) {
      return Optional.empty();
    }
    if (options.stance().isEmpty()) {
      return Company.laden(study, asked(study, options));
    }
    Optional<Standing> standing = study.standing(options.stance().get());
    if (standing.isEmpty()) {
      throw new IllegalArgumentException(
          "the machine has no stance " + options.stance().get().says());
    }
    return standing;
  }

  /** Returns who sits: those asked for, or else those of a laden stance. */
  static List<Sitting> seated(Study study, PictureOptions options, Optional<Standing> standing) {
    if (options.seated().isEmpty() && standing.isPresent()) {
      List<Sitting> company = Company.of(study, standing.get());
      if (!company.isEmpty()) {
        return company;
      }
    }
    boolean named = !options.seated().isEmpty() || !options.person().isEmpty();
    return named || options.stance().isEmpty() ? asked(study, options) : List.of();
  }

  private static String stanceWords(Standing standing, PictureOptions options) {
    if (options.moved().isPresent()) {
      return standing.condition().says() + ", " + options.moved().get().words(standing);
    }
    boolean partly = standing.kind() == Stance.Kind.OPEN && options.opening() < 1;
    return partly
        ? String.format(
            Locale.ROOT, "%s at %.0f %%", standing.condition().says(), 100 * options.opening())
        : standing.condition().says();
  }

  /** Returns the parts in a stance, its section open as far as asked. */
  private static Map<String, PartShape> shapes(
      Study study, Standing standing, PictureOptions options) {
    if (options.inPose().isPresent()) {
      Map<String, PartShape> open = new LinkedHashMap<>(standing.shapes());
      open.putAll(OpenedParts.all(study.layout(), study.placed().places(), study.shapes()));
      return open;
    }
    if (standing.kind() != Stance.Kind.OPEN || options.opening() == 1) {
      return standing.shapes();
    }
    Map<String, PartShape> shapes = new LinkedHashMap<>(standing.shapes());
    shapes.putAll(
        Sections.opened(
            standing.condition().stance().section(),
            study.layout(),
            study.placed().places(),
            options.opening(),
            study.shapes()));
    return shapes;
  }

  private static Opened opened(Study study, Standing standing, PictureOptions options) {
    String name = standing.condition().stance().section();
    Section section = study.layout().sections().get(name);
    return new Opened(
        name,
        Set.copyOf(section.parts()),
        Sections.motion(section, study.placed().places()).at(options.opening()));
  }

  /** Returns the layout's title, or its name where it has none. */
  static String title(Layout layout) {
    return layout.title().isEmpty() ? layout.name() : layout.title();
  }

  /** Returns the findings asked for, by number; those about somebody not drawn are left out. */
  private static Map<Integer, Finding> findings(
      Study study, PictureOptions options, List<Sitting> seated) {
    if (options.findings().isEmpty()) {
      return Map.of(); // what nobody asks for is not worked out
    }
    List<Occupant> here = Company.occupants(seated);
    Map<Integer, Finding> out = new TreeMap<>();
    for (Finding f : study.findings()) {
      Integer number = options.findings().get(f.id());
      if (number != null && f.who().map(here::contains).orElse(true)) {
        out.put(number, f);
      }
    }
    return out;
  }

  /** Returns the pose in which somebody is shown getting in; empty where they sit. */
  private static Optional<GettingInPose> pose(Study study, PictureOptions options, Sitting s) {
    return options
        .inPose()
        .filter(p -> p.who().equals(s.occupant()))
        .flatMap(p -> InPose.poses(study, p.who()).map(in -> in.pose(p.step())));
  }

  static Optional<Manikin> manikin(Sitting sitting) {
    return sitting
        .posture()
        .map(p -> Manikin.of(sitting.person(), sitting.seat(), sitting.body(), p));
  }

  /** Returns how far each cushion gives under a sitting, by part. */
  public static Map<String, Scene.Sunk> sunk(Sitting sitting) {
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

  /** Returns a section that is shown open as it is when shut. */
  private static Map<String, List<PartShape>> phantoms(Study study, Optional<Standing> shown) {
    return shown
        .filter(s -> s.kind() == Stance.Kind.OPEN)
        .map(s -> s.condition().stance().section())
        .map(name -> Map.of(name, parts(study.layout(), name, study.shapes())))
        .orElse(Map.of());
  }

  private static List<PartShape> parts(
      Layout layout, String section, Map<String, PartShape> shapes) {
    return layout.sections().get(section).parts().stream()
        .filter(shapes::containsKey)
        .map(shapes::get)
        .toList();
  }

  private static Ground drawnGround(Study study) {
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    return wheels.stands()
        ? wheels.ground(study.placed().places())
        : new Ground(PointMm.ORIGIN, new PointMm(1, 0));
  }
}

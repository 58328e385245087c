package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.gap.AfterMove;
import org.longlow.constraints.check.gap.Nudged;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.ride.TurnLean;
import org.longlow.constraints.shape.Hubs;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Pressed;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Turning;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.words.Progress;
import org.longlow.rider.geom.Bracket;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/**
 * How far the machine leans to each side in a turn before each part, or somebody on it, touches the
 * road: on round tyres, the springs pressed by the turn.
 */
public final class LeanFindings {

  /** How far the machine leans to a side before something hard touches. */
  public static final FindingKind LEAN =
      new FindingKind("lean", FindingGroup.LEAN, Rests.ON_MASSES);

  /** How far the machine leans before one thing touches. */
  public static final FindingKind TOUCH =
      new FindingKind("lean", FindingGroup.LEAN, Rests.ON_MASSES);

  /** What touches only beyond this lean is not listed, deg. */
  public static final double LISTED_TO_DEG = 60;

  /** The radius of the turn that is said beside a lean, m; a road junction, for comparison only. */
  static final double EXAMPLE_RADIUS_M = 20;

  private static final Basis SOURCE =
      Basis.model(
          "exact contact of two round tyres (support function of the torus), springs pressed by the"
              + " turn (1/cos of the turn's force, Cossalter ch. 4); tubes are round");

  private static final Basis CONTACT =
      Basis.model(
          "exact contact of two round tyres (support function of the torus); tubes are round");

  /** A roll is found to within this, rad. */
  private static final double FOUND_RAD = 1e-7;

  private final Layout layout;
  private final Wheels wheels;
  private final Optional<Nudged> nudged;
  private final double askedRad;

  /** Whether a part goes with a wheel, which it does in each stance or in none. */
  private final Map<Part, Boolean> onWheel = new IdentityHashMap<>();

  /**
   * Something that may touch: a part, a pedal that is pressed, a person with boots and all.
   *
   * @param onWheel whether it is a part that goes with a wheel
   */
  private record Thing(
      String name,
      Optional<PartShape> part,
      List<Prism> body,
      Optional<Rider.Seated> person,
      boolean pressed,
      boolean onWheel) {
    OverRoad over(Turning turning, Undersides undersides) {
      return part.map(
              p ->
                  p.part() instanceof WheelPart wheel
                      ? new OverRoad.Shifted(undersides.once(body), wheel.axle(), turning)
                      : OverRoad.of(p, onWheel, turning, undersides))
          .orElseGet(() -> OverRoad.fixed(undersides.of(body)));
    }

    boolean folds() {
      return part.filter(p -> p.part() instanceof RestPart r && r.folds()).isPresent();
    }

    List<String> path() {
      return person.isPresent()
          ? List.of(name, "body")
          : pressed ? List.of(name, "pressed") : List.of(name);
    }

    About about() {
      About part = About.parts(name);
      return person.map(p -> About.thing(name).with(p.who())).orElse(part);
    }
  }

  /** Where a thing touches, and how far under the road it is at the lean that is asked, mm. */
  private record Touch(
      Thing thing,
      boolean left,
      Condition stance,
      LowSide.Low low,
      Turning.State state,
      double underMm) {
    double deg() {
      return Math.toDegrees(state.rollRad());
    }
  }

  /** A side and what touches there; nothing for whatever is first and hard. */
  private record Key(boolean left, List<String> thing) {
    String[] path() {
      List<String> path = new ArrayList<>(List.of(side(left)));
      path.addAll(thing);
      return path.toArray(String[]::new);
    }
  }

  /** The touches that come first, by finding; in the order in which they were met. */
  private final Map<Key, Touch> worst = new LinkedHashMap<>();

  /** Without what a part comes near when it is moved as is advised. */
  public LeanFindings(Layout layout, Wheels wheels) {
    this(layout, wheels, Optional.empty());
  }

  /**
   * @param nudged tells what a part comes near when it is moved as is advised
   */
  public LeanFindings(Layout layout, Wheels wheels, Optional<Nudged> nudged) {
    this.layout = layout;
    this.wheels = wheels;
    this.nudged = nudged;
    this.askedRad = wheels.drawn().value(layout.demands().limit(Demands.Key.LEAN));
  }

  public List<Finding> of(List<Standing> standings) {
    return of(standings, Progress.NONE);
  }

  /** As {@link #of(List)}, saying how far it is. */
  public List<Finding> of(List<Standing> standings, Progress progress) {
    double limit = Math.toDegrees(askedRad);
    boolean ridden = false;
    int done = 0;
    for (Standing standing : standings) {
      progress.at("how far it leans, stance by stance", done++, standings.size());
      if (standing.kind() == Stance.Kind.LADEN) {
        ridden = true;
        inStance(standing);
      }
    }
    List<Finding> findings = new ArrayList<>();
    worst.forEach(
        (key, touch) -> {
          if (!touch.thing().pressed() || touch.deg() < limit && sooner(key, touch)) {
            findings.add(finding(key, touch, limit));
          }
        });
    for (boolean left : new boolean[] {true, false}) {
      if (ridden && !worst.containsKey(new Key(left, List.of()))) {
        boolean folds =
            worst.values().stream().anyMatch(t -> t.left() == left && t.thing().folds());
        findings.add(clear(left, folds));
      }
    }
    return findings;
  }

  /** Whether a pedal touches before it does when nobody works it; else that is said already. */
  private boolean sooner(Key key, Touch pressed) {
    Touch drawn = worst.get(new Key(key.left(), List.of(pressed.thing().name())));
    return drawn == null || pressed.deg() < drawn.deg();
  }

  private Finding finding(Key key, Touch touch, double limit) {
    Finding f =
        Finding.held(
                key.thing().isEmpty() ? LEAN : TOUCH,
                touch.thing().about().named(key.path()),
                Optional.of(touch.stance()),
                Figures.atLeast(touch.deg(), limit, FigureUnit.DEG),
                List.of(SOURCE, Sources.of(layout, Demands.Key.LEAN)),
                words(touch, key.thing().isEmpty(), limit))
            .at(touch.low().at(), touch.left() ? touch.low().yMm() : -touch.low().yMm());
    boolean warns = touch.thing().folds() && f.verdict() == Verdict.FAIL;
    return warns ? f.withVerdict(Verdict.CAUTION) : f;
  }

  private static Finding clear(boolean left, boolean folds) {
    return Finding.note(
            LEAN,
            About.thing("machine", side(left)),
            Verdict.PASS,
            CONTACT,
            Say.format(
                "Leaning to the %s, nothing but tyres%s touches the road up to %.0f°.",
                side(left), folds ? " and what folds" : "", LISTED_TO_DEG))
        .measured(Figures.only(Double.NaN, FigureUnit.DEG));
  }

  private Words words(Touch touch, boolean headline, double limit) {
    boolean hub = touch.thing().part().filter(p -> p.part() instanceof WheelPart).isPresent();
    String name =
        (hub ? "what sits about the axle of " : "")
            + touch.thing().name()
            + (touch.thing().pressed() ? ", worked as far as it goes," : "");
    Words roll = Say.deg(touch.deg());
    String touches =
        touch.thing().person().isPresent() ? "a limb of " + name + " touches" : name + " touches";
    Words first =
        headline
            ? Say.format(
                "Leaning to the %s, the first hard thing is %s%s, at %s",
                side(touch.left()),
                touch.thing().person().isPresent() ? "a limb of " : "",
                name,
                roll)
            : Say.format("Leaning to the %s, %s the road at %s", side(touch.left()), touches, roll);
    Words mend =
        touch.deg() >= limit
            ? Words.of(".")
            : touch.thing().folds()
                ? Words.of(": it folds, so it warns before something hard touches.")
                : room(touch, Math.toRadians(limit));
    return Words.of(
        first, "; ", Say.deg(limit), " are asked", mend, turn(touch.state().idealRad()));
  }

  /** What brings it up to the road at the lean that is asked, each thing alone. */
  private Words room(Touch touch, double askedRad) {
    double up = touch.underMm() / Math.cos(askedRad);
    double in = touch.underMm() / Math.sin(askedRad);
    return Words.of(
        ": raise it ",
        Words.atLeast(up),
        " or bring it ",
        Words.atLeast(in),
        " farther in.",
        nudged
            .map(
                n ->
                    n.but(
                        touch.thing().name(),
                        List.of(AfterMove.Move.up(up), AfterMove.Move.in(in))))
            .orElse(Words.NONE));
  }

  private static Words turn(double idealRad) {
    if (idealRad <= 0) {
      return Words.of(
          " The mass lies so far to the other side that it takes no turn to lean so far.");
    }
    if (idealRad >= Math.PI / 2) {
      return Words.of(" The mass lies so far to that side that no turn holds the machine there.");
    }
    return Say.format(
        " That lean is a turn of %s radius at %s, %.2f g sideways.",
        Words.figure(1000 * EXAMPLE_RADIUS_M, FigureSort.ROAD),
        Words.figure(3.6 * TurnLean.speedMs(idealRad, EXAMPLE_RADIUS_M), FigureSort.SPEED),
        Math.tan(idealRad));
  }

  private static String side(boolean left) {
    return left ? "left" : "right";
  }

  private void inStance(Standing standing) {
    Turning toLeft = new Turning(wheels, standing, 1);
    List<Thing> things = new ArrayList<>();
    for (PartShape shape : standing.shapes().values()) {
      Part part = shape.part();
      List<Prism> body =
          part instanceof WheelPart wheel ? Hubs.of(wheel, standing.places()) : shape.prisms();
      if (!body.isEmpty()) {
        boolean moves = onWheel.computeIfAbsent(part, p -> toLeft.goesWithWheel(shape));
        things.add(
            new Thing(part.name(), Optional.of(shape), body, Optional.empty(), false, moves));
      }
    }
    for (Rider.Seated person : standing.rider().seated()) {
      things.add(
          new Thing(
              person.who().person(),
              Optional.empty(),
              person.body(),
              Optional.of(person),
              false,
              false));
    }
    for (Pressed p : Pressed.of(standing.shapes().values(), standing.places())) {
      things.add(
          new Thing(
              p.shape().part().name(),
              Optional.empty(),
              p.shape().prisms(),
              Optional.empty(),
              true,
              false));
    }
    for (boolean left : new boolean[] {true, false}) {
      Turning turning = left ? toLeft : new Turning(wheels, standing, -1);
      Touch first = null;
      for (Thing thing : things) {
        Key key = new Key(left, thing.path());
        Touch touch = touch(standing.condition(), thing, left, turning, worst.get(key));
        if (touch == null) {
          continue;
        }
        keep(key, touch);
        if (!thing.folds() && !thing.pressed() && (first == null || touch.deg() < first.deg())) {
          first = touch;
        }
      }
      if (first != null) {
        keep(new Key(left, List.of()), first);
      }
    }
  }

  private void keep(Key key, Touch touch) {
    Touch known = worst.get(key);
    if (known == null || touch.deg() < known.deg()) {
      worst.put(key, touch);
    }
  }

  /** Returns where a thing touches; null if that is no sooner than what is known already. */
  private Touch touch(Condition stance, Thing thing, boolean left, Turning turning, Touch known) {
    double most = Math.toRadians(LISTED_TO_DEG);
    if (known != null) {
      most = Math.min(most, known.state().rollRad());
    }
    OverRoad over = thing.over(turning, Undersides.at(left));
    int last = Math.min(turning.steps() - 1, (int) Math.ceil(most / Turning.STEP_RAD));
    for (int step = 0; step <= last; step++) {
      if (over.reachesRoad(turning.step(step))) {
        if (step * Turning.STEP_RAD > most && !over.reachesRoad(turning.at(most))) {
          return null;
        }
        double roll = step == 0 ? 0 : crossing(over, turning, step);
        if (roll > most) {
          return null;
        }
        Turning.State state = turning.at(roll);
        double under = roll < askedRad ? -over.lowest(turning.at(askedRad)).heightMm() : 0;
        return new Touch(thing, left, stance, over.lowest(state), state, under);
      }
    }
    return null;
  }

  /** The lean at which a thing touches that is clear at the step before and not at this. */
  private static double crossing(OverRoad over, Turning turning, int step) {
    return Bracket.root(
        roll -> over.lowest(turning.at(roll)).heightMm(),
        (step - 1) * Turning.STEP_RAD,
        step * Turning.STEP_RAD,
        FOUND_RAD);
  }
}

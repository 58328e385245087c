package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.lock.SpaceBody;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Pressed;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;

/**
 * The parts as bodies in space, in the stances in which the steering is turned: laden with the
 * front wheel lowest and highest, and at full bump. Each body is made once.
 */
final class TurnedBodies {

  /**
   * A stance to turn the steering in.
   *
   * @param condition the stance; empty as drawn, where the machine cannot stand
   * @param shapes the parts in it
   * @param places where their pins are
   * @param worked the pedals that are at an end of their way
   */
  record State(
      Optional<Condition> condition,
      Map<String, PartShape> shapes,
      Places places,
      Set<String> worked) {

    static State of(Standing s) {
      return new State(Optional.of(s.condition()), s.shapes(), s.places(), Set.of());
    }

    /** Itself, then with pedals at the ends of their ways. */
    Stream<State> andWorked() {
      return Stream.concat(
          Stream.of(this),
          Pressed.ends(shapes.values(), places).stream()
              .map(
                  pedals -> {
                    Map<String, PartShape> all = new LinkedHashMap<>(shapes);
                    all.putAll(pedals);
                    return new State(condition, all, places, pedals.keySet());
                  }));
    }
  }

  /** What is cut off about joints, kept by value: most joints stay as they are. */
  private static final Memo<Cut<Geometry>, Geometry> CUT =
      new Memo<>(64, all -> cut(all.body, all));

  /** Likewise of pieces. */
  private static final Memo<Cut<Piece>, Geometry> CUT_PIECES =
      new Memo<>(256, all -> cut(outline(all.body), all));

  private record Cut<B>(B body, List<PointMm> points, double radiusMm) {}

  private final Map<String, PartShape> drawn;
  private final Places places;
  private final List<Standing> standings;
  private final Map<PartShape, SpaceBody> bodies = new IdentityHashMap<>();

  TurnedBodies(Map<String, PartShape> drawn, Places places, List<Standing> standings) {
    this.drawn = drawn;
    this.places = places;
    this.standings = standings;
  }

  /** Returns the stances for what turns past parts, pedals not worked and worked. */
  List<State> states() {
    return upright().stream().flatMap(State::andWorked).toList();
  }

  private List<State> upright() {
    List<State> states = new ArrayList<>();
    Comparator<Standing> travel = Comparator.comparingDouble(Standing::frontTravelMm);
    List<Standing> laden = of(Stance.Kind.LADEN);
    laden.stream().min(travel).map(State::of).ifPresent(states::add);
    if (laden.size() > 1) {
      laden.stream().max(travel).map(State::of).ifPresent(states::add);
    }
    of(Stance.Kind.FULL_BUMP).stream().map(State::of).forEach(states::add);
    return states.isEmpty()
        ? List.of(new State(Optional.empty(), drawn, places, Set.of()))
        : states;
  }

  /** Returns the stances for what turns past somebody. */
  List<State> states(Occupant who) {
    List<State> states = new ArrayList<>();
    Condition under = Standing.under(who, standings);
    standings.stream()
        .filter(s -> s.condition().equals(under) || s.kind() == Stance.Kind.FULL_BUMP)
        .map(State::of)
        .forEach(states::add);
    return states.isEmpty()
        ? List.of(new State(Optional.empty(), drawn, places, Set.of()))
        : states;
  }

  private List<Standing> of(Stance.Kind kind) {
    return standings.stream().filter(s -> s.kind() == kind).toList();
  }

  /** Returns a part as a body in space. */
  SpaceBody body(State state, String part) {
    return bodies.computeIfAbsent(state.shapes().get(part), SpaceBody::of);
  }

  /**
   * Returns what of a part lies farther than a radius from all of some points in side view; a piece
   * that reaches there is taken to fill what is left of its outline over its own breadth.
   */
  SpaceBody beyond(State state, String part, List<PointMm> points, double radiusMm) {
    Map<Geometry, Geometry> done = new IdentityHashMap<>();
    List<Prism> kept = new ArrayList<>();
    for (Prism prism : state.shapes().get(part).prisms()) {
      if (!reaches(prism.outline().getEnvelopeInternal(), points, radiusMm)) {
        kept.add(prism);
      } else if (prism.isFull()) {
        Geometry rest =
            done.computeIfAbsent(
                prism.outline(), outline -> CUT.of(new Cut<>(outline, points, radiusMm)));
        kept.add(new Prism(rest, prism.across()));
      } else {
        pieces(prism, points, radiusMm, kept);
      }
    }
    return SpaceBody.of(part, kept);
  }

  private static void pieces(Prism prism, List<PointMm> points, double radiusMm, List<Prism> kept) {
    List<Piece> whole = new ArrayList<>();
    for (Piece piece : prism.pieces()) {
      double[] from = piece.box().from();
      double[] to = piece.box().to();
      if (!reaches(new Envelope(from[0], to[0], from[2], to[2]), points, radiusMm)) {
        whole.add(piece);
        continue;
      }
      Geometry rest = CUT_PIECES.of(new Cut<>(piece, points, radiusMm));
      if (!rest.isEmpty()) {
        kept.add(new Prism(rest, new Interval(from[1], to[1])));
      }
    }
    if (!whole.isEmpty()) {
      kept.add(new Prism(prism.outline(), prism.across(), whole));
    }
  }

  private static boolean reaches(Envelope box, List<PointMm> points, double radiusMm) {
    return points.stream()
        .anyMatch(p -> box.distance(new Envelope(p.x(), p.x(), p.z(), p.z())) < radiusMm);
  }

  /** What a piece covers in side view, or hardly more. */
  private static Geometry outline(Piece piece) {
    Coordinate[] corners =
        piece.rings().stream()
            .flatMap(Arrays::stream)
            .map(c -> new Coordinate(c[0], c[2]))
            .toArray(Coordinate[]::new);
    return Curves.FACTORY.createMultiPointFromCoords(corners).convexHull();
  }

  private static Geometry cut(Geometry outline, Cut<?> off) {
    Geometry rest = outline;
    for (PointMm p : off.points) {
      rest = rest.difference(Curves.disc(p, off.radiusMm));
    }
    return rest;
  }
}

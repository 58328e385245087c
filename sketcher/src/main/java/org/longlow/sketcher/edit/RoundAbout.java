package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Former;
import org.longlow.constraints.layout.Formers;
import org.longlow.constraints.layout.FurtherBody;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Hole;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.layout.Station;
import org.longlow.constraints.layout.Vertex;

/**
 * What is drawn in local axes, turned round. An axis that points at a pin turns with that; then
 * what was on its left is on its right.
 *
 * @param along whether the local x axis points at a pin
 */
record RoundAbout(boolean along) {

  Outline.Drawn outline(Outline outline) {
    List<Hole> holes = outline.holes().stream().map(this::hole).toList();
    List<Vertex> vertices = outline.vertices().stream().map(this::vertex).toList();
    return new Outline.Drawn(vertices, outline.closed(), outline.half(), holes);
  }

  private Hole hole(Hole hole) {
    if (hole instanceof Hole.Round round) {
      return new Hole.Round(vertex(round.at()), round.diameter());
    }
    if (hole instanceof Hole.Slot slot) {
      return new Hole.Slot(vertex(slot.from()), vertex(slot.to()), slot.width());
    }
    return new Hole.Cut(hole.vertices().stream().map(this::vertex).toList());
  }

  private Vertex vertex(Vertex v) {
    Vertex there =
        v.pin() != null
            ? v
            : v.at(
                along ? v.x() : Shifted.negative(v.x()), along ? Shifted.negative(v.z()) : v.z());
    return there.reaching(v.reach().map(RoundAbout::reach));
  }

  List<Station> stations(Breadth breadth) {
    List<Station> stations = new ArrayList<>();
    for (Station s : breadth.stations()) {
      stations.add(
          new Station(
              s.name(), along ? s.x() : Shifted.negative(s.x()), reach(s.reach()), s.smooth()));
    }
    if (!along) {
      Collections.reverse(stations);
    }
    return stations;
  }

  FurtherBody body(FurtherBody body) {
    return new FurtherBody(
        body.name(),
        outline(body.outline()),
        swapped(body.spread()),
        new Breadth(stations(body.breadth()), body.breadth().profile()));
  }

  /** Those across are as far the other way along the axis. */
  Formers formers(Formers formers) {
    return along
        ? formers
        : with(formers, formers.across().stream().map(RoundAbout::back).toList(), formers.along());
  }

  /** What vertices say of its reach to the left is meant for the right. */
  static Outline otherSide(Outline outline) {
    return outline instanceof Outline.Drawn drawn
        ? new Outline.Drawn(
            drawn.vertices().stream()
                .map(v -> v.reaching(v.reach().map(RoundAbout::reach)))
                .toList(),
            drawn.closed(),
            drawn.half(),
            drawn.holes())
        : outline;
  }

  /** So it is with what stations say. */
  static List<Station> otherSide(Breadth breadth) {
    return breadth.stations().stream()
        .map(s -> new Station(s.name(), s.x(), reach(s.reach()), s.smooth()))
        .toList();
  }

  /** So it is with a further body. */
  static FurtherBody otherSide(FurtherBody body) {
    Breadth breadth = new Breadth(otherSide(body.breadth()), body.breadth().profile());
    return new FurtherBody(body.name(), otherSide(body.outline()), swapped(body.spread()), breadth);
  }

  private static Spread swapped(Spread s) {
    return new Spread(s.right(), s.left(), s.both(), s.said());
  }

  /** Those along are as far to the other side. */
  static Formers otherSide(Formers formers) {
    return with(formers, formers.across(), formers.along().stream().map(RoundAbout::back).toList());
  }

  private static Formers with(Formers f, List<Former> across, List<Former> along) {
    return new Formers(
        across, along, f.every(), f.thickness(), f.flange(), f.skin(), f.stringers());
  }

  private static Former back(Former f) {
    return new Former(f.name(), Shifted.negative(f.at()), f.thickness(), f.flange());
  }

  /** Left becomes right. */
  private static HalfBreadths reach(HalfBreadths reach) {
    return new HalfBreadths(reach.right(), reach.left());
  }
}

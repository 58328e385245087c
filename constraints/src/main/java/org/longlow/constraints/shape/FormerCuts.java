package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Former;
import org.longlow.constraints.layout.Formers;
import org.longlow.constraints.layout.FurtherBody;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.layout.Stringer;
import org.longlow.rider.geom.PointMm;

/** The formers that a part asks for. */
public final class FormerCuts {

  /** Formers nearer to each other than this are one, mm. */
  private static final double ONE_PLACE_MM = 0.5;

  private static final Memo<Wanted, List<FormerCut>> CUTS = new Memo<>(64, FormerCuts::cut);

  private FormerCuts() {}

  /** All that decides the formers of a part, in its local axes. */
  record Wanted(Slices slices, List<Place> places, List<Batten> battens) {}

  /** A place where one is asked for. */
  record Place(String name, Slices.Way way, double at, double thicknessMm, double flangeMm) {}

  /**
   * A stringer in local axes.
   *
   * @param girth share of the way round; NaN where a height says it
   * @param lineMm height on the axis square to local x, at x of nought
   * @param perMm how much that falls for each mm of x, where the axes lean
   */
  record Batten(
      String name, double girth, double lineMm, double perMm, double widthMm, double depthMm) {}

  /** Returns the formers of a part, those across first, from behind to ahead. */
  public static List<FormerCut> of(Part part, Places places) {
    if (!(part instanceof Part.Outlined outlined)
        || outlined.formers().isEmpty()
        || part.base().spread().isEmpty()) {
      return List.of();
    }
    double sheet = part instanceof ShellPart s ? places.value(s.thickness()) : 0;
    double skin = outlined.formers().skin().map(places::value).orElse(sheet);
    return slices(outlined, skin, Fineness.SHOP, places)
        .map(
            slices ->
                CUTS.of(
                    new Wanted(
                        slices,
                        places(outlined.formers(), slices, places),
                        battens(outlined, outlined.formers(), places))))
        .orElse(List.of());
  }

  /** Returns the names of all formers that a part asks for. */
  static List<String> asked(Part.Outlined part, Places places) {
    return slices(part, 0, Fineness.SHOP, places)
        .map(s -> places(part.formers(), s, places).stream().map(Place::name).toList())
        .orElse(List.of());
  }

  /** Returns the sections of a part; empty where nothing lies under a line that does not close. */
  static Optional<Slices> slices(
      Part.Outlined part, double skinMm, Fineness fineness, Places places) {
    List<Loft> lofts = lofts(part, fineness, places);
    boolean sided = !(part instanceof ShellPart s && s.open());
    if (part.outline().closed()) {
      return Optional.of(new Slices(lofts, skinMm, sided, Optional.empty()));
    }
    double sheet = part instanceof ShellPart s ? places.value(s.thickness()) : 0;
    return UnderLine.of(lofts.get(0), sheet, skinMm)
        .map(u -> new Slices(List.of(u.loft()), skinMm, sided, Optional.of(u)));
  }

  private static List<Loft> lofts(Part.Outlined part, Fineness fineness, Places places) {
    Spread spread = part.base().spread().orElseThrow();
    List<Loft> lofts = new ArrayList<>();
    lofts.add(Shaped.loft(part.frame(), part.outline(), spread, part.breadth(), fineness, places));
    for (FurtherBody b : part.bodies()) {
      Loft loft = Shaped.loft(part.frame(), b.outline(), b.spread(), b.breadth(), fineness, places);
      lofts.add(loft);
      if (b.spread().both() && !spread.both()) {
        lofts.add(loft.mirrored());
      }
    }
    return List.copyOf(lofts);
  }

  static List<Place> places(Formers asked, Slices slices, Places places) {
    Map<Double, Place> across = new TreeMap<>();
    for (Former f : asked.across()) {
      Place p = place(f, Slices.Way.ACROSS, asked, places);
      across.put(p.at(), p);
    }
    long spaced = spaced(asked, slices, places);
    if (spaced > 0 && spaced <= Formers.MOST) {
      double every = places.value(asked.every().orElseThrow());
      Interval extent = slices.extent(Slices.Way.ACROSS);
      for (double k = Math.ceil(extent.from() / every); k * every <= extent.to(); k++) {
        double at = k * every;
        boolean there = across.keySet().stream().anyMatch(x -> Math.abs(x - at) < ONE_PLACE_MM);
        if (!there) {
          Former f = new Former("", asked.every().get(), Optional.empty(), Optional.empty());
          Place p = place(f, Slices.Way.ACROSS, asked, places);
          across.put(at, new Place("", p.way(), at, p.thicknessMm(), p.flangeMm()));
        }
      }
    }
    Stream<Place> along =
        asked.along().stream().map(f -> place(f, Slices.Way.ALONG, asked, places));
    Map<String, Place> named = new LinkedHashMap<>();
    Stream.concat(across.values().stream(), along)
        .forEach(
            p -> {
              String base = p.name().isEmpty() ? numbered(p.way(), named) : p.name();
              String name = base;
              for (int k = 2; named.containsKey(name); k++) {
                name = base + " " + k;
              }
              named.put(name, new Place(name, p.way(), p.at(), p.thicknessMm(), p.flangeMm()));
            });
    return List.copyOf(named.values());
  }

  /** Returns how many places a spacing asks for, those taken up by listed ones among them. */
  static long spaced(Formers asked, Slices slices, Places places) {
    if (asked.every().isEmpty()) {
      return 0;
    }
    double every = places.value(asked.every().get());
    Interval extent = slices.extent(Slices.Way.ACROSS);
    return (long) (Math.floor(extent.to() / every) - Math.ceil(extent.from() / every) + 1);
  }

  private static String numbered(Slices.Way way, Map<String, Place> before) {
    long n = before.values().stream().filter(p -> p.way() == way).count() + 1;
    return (way == Slices.Way.ACROSS ? "former " : "rib ") + n;
  }

  private static Place place(Former f, Slices.Way way, Formers asked, Places places) {
    return new Place(
        f.name(),
        way,
        places.value(f.at()),
        places.value(f.thickness().orElse(asked.thickness())),
        f.flange().or(asked::flange).map(places::value).orElse(0.0));
  }

  static List<Batten> battens(Part.Outlined part, Formers asked, Places places) {
    Local local = Local.of(part.frame(), places);
    double up = Math.cos(local.turnRad());
    List<Batten> battens = new ArrayList<>();
    int k = 0;
    for (Stringer s : asked.stringers()) {
      k++;
      String name = s.name().isEmpty() ? "stringer " + k : s.name();
      double width = places.value(s.width());
      double depth = places.value(s.depth());
      if (s.girth().isPresent()) {
        battens.add(new Batten(name, places.value(s.girth().get()), 0, 0, width, depth));
      } else if (Math.abs(up) > 1e-6) {
        double height = places.value(s.height().orElseThrow()) - local.origin().z();
        double fall = Math.tan(local.turnRad());
        battens.add(new Batten(name, Double.NaN, height / up, fall, width, depth));
      }
    }
    return List.copyOf(battens);
  }

  private static List<FormerCut> cut(Wanted wanted) {
    return wanted.places().parallelStream().flatMap(p -> cut(wanted, p).stream()).toList();
  }

  private static Optional<FormerCut> cut(Wanted wanted, Place p) {
    Slices slices = wanted.slices();
    Geometry line = slices.at(p.way(), p.at());
    if (line.isEmpty()) {
      return Optional.empty();
    }
    double back = p.at() - p.thicknessMm();
    double on = p.at() + p.thicknessMm();
    double behind = slices.outside(p.way(), back).getArea();
    boolean ahead = slices.outside(p.way(), on).getArea() >= behind;
    Geometry other = slices.at(p.way(), ahead ? on : back, Slices.LEAN_MM);
    if (other.isEmpty()) {
      Geometry instead = slices.at(p.way(), ahead ? back : on, Slices.LEAN_MM);
      ahead = ahead == instead.isEmpty();
      other = instead;
    }
    List<Batten> battens = p.way() == Slices.Way.ACROSS ? wanted.battens() : List.of();
    return Optional.of(made(p, slices.skinMm(), ahead, line, other, battens));
  }

  private static FormerCut made(
      Place p, double skinMm, boolean ahead, Geometry line, Geometry other, List<Batten> battens) {
    FormerEdge edge = new FormerEdge(line);
    FormerLean lean = new FormerLean(line, other, p.thicknessMm());
    List<FormerCut.Notch> notches = new ArrayList<>();
    Optional<FormerCut.Flange> flange =
        p.flangeMm() > 0
            ? Optional.of(new FormerRim(line, lean, p.thicknessMm()).of(p.flangeMm()))
            : Optional.empty();
    Geometry board = flange.map(FormerCut.Flange::board).orElse(line);
    for (Batten b : battens) {
      List<PointMm> at =
          Double.isNaN(b.girth())
              ? edge.atHeight(b.lineMm() - b.perMm() * p.at())
              : edge.atGirth(b.girth());
      for (PointMm q : at) {
        notches.add(new FormerCut.Notch(b.name(), q, b.widthMm(), b.depthMm()));
        board = board.difference(edge.notch(q, b.widthMm(), b.depthMm(), p.flangeMm()));
      }
    }
    return new FormerCut(
        p.name(),
        p.way(),
        p.at(),
        p.thicknessMm(),
        skinMm,
        ahead,
        line,
        board,
        other,
        edge.leans(lean),
        notches,
        flange);
  }
}

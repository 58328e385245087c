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

  /** Most formers of one part that a spacing may ask for; closer ones are a slip. */
  static final int MOST = 60;

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
        || !outlined.outline().closed()
        || part.base().spread().isEmpty()) {
      return List.of();
    }
    Formers asked = outlined.formers();
    double sheet = part instanceof ShellPart s ? places.value(s.thickness()) : 0;
    double skin = asked.skin().map(places::value).orElse(sheet);
    boolean sided = !(part instanceof ShellPart s && s.open());
    Slices slices = new Slices(lofts(outlined, places), skin, sided);
    return CUTS.of(
        new Wanted(slices, places(asked, slices, places), battens(outlined, asked, places)));
  }

  /** Returns the places at which formers are asked for but the part has nothing to cut. */
  public static List<String> missed(Part part, Places places) {
    if (!(part instanceof Part.Outlined outlined) || !outlined.outline().closed()) {
      return List.of();
    }
    List<String> there = of(part, places).stream().map(FormerCut::name).toList();
    Slices slices = new Slices(lofts(outlined, places), 0, true);
    return places(outlined.formers(), slices, places).stream()
        .map(Place::name)
        .filter(name -> !there.contains(name))
        .toList();
  }

  private static List<Loft> lofts(Part.Outlined part, Places places) {
    Spread spread = part.base().spread().orElseThrow();
    List<Loft> lofts = new ArrayList<>();
    lofts.add(
        Shaped.loft(part.frame(), part.outline(), spread, part.breadth(), Fineness.SHOP, places));
    for (FurtherBody b : part.bodies()) {
      Loft loft =
          Shaped.loft(part.frame(), b.outline(), b.spread(), b.breadth(), Fineness.SHOP, places);
      lofts.add(loft);
      if (b.spread().both() && !spread.both()) {
        lofts.add(loft.mirrored());
      }
    }
    return List.copyOf(lofts);
  }

  private static List<Place> places(Formers asked, Slices slices, Places places) {
    Map<Double, Place> across = new TreeMap<>();
    for (Former f : asked.across()) {
      Place p = place(f, Slices.Way.ACROSS, asked, places);
      across.put(p.at(), p);
    }
    if (asked.every().isPresent()) {
      double every = places.value(asked.every().get());
      Interval extent = slices.extent(Slices.Way.ACROSS);
      int n = 0;
      for (double k = Math.ceil(extent.from() / every); k * every <= extent.to(); k++) {
        double at = k * every;
        boolean there = across.keySet().stream().anyMatch(x -> Math.abs(x - at) < ONE_PLACE_MM);
        if (!there && ++n <= MOST) {
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

  private static List<Batten> battens(Part.Outlined part, Formers asked, Places places) {
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
    List<FormerCut> cuts = new ArrayList<>();
    for (Place p : wanted.places()) {
      Geometry line = wanted.slices().at(p.way(), p.at());
      if (line.isEmpty()) {
        continue;
      }
      Geometry behind = wanted.slices().at(p.way(), p.at() - p.thicknessMm());
      Geometry ahead = wanted.slices().at(p.way(), p.at() + p.thicknessMm());
      boolean lies = ahead.getArea() >= behind.getArea();
      List<Batten> battens = p.way() == Slices.Way.ACROSS ? wanted.battens() : List.of();
      cuts.add(made(p, wanted.slices().skinMm(), lies, line, lies ? ahead : behind, battens));
    }
    return List.copyOf(cuts);
  }

  private static FormerCut made(
      Place p, double skinMm, boolean ahead, Geometry line, Geometry other, List<Batten> battens) {
    FormerEdge edge = new FormerEdge(line);
    List<FormerCut.Notch> notches = new ArrayList<>();
    Optional<FormerCut.Flange> flange =
        p.flangeMm() > 0
            ? Optional.of(edge.flange(p.flangeMm(), p.thicknessMm()))
            : Optional.empty();
    double more = flange.map(f -> f.breadthMm() - f.deductionMm()).orElse(0.0);
    Geometry board = edge.widened(more);
    for (Batten b : battens) {
      List<PointMm> at =
          Double.isNaN(b.girth())
              ? edge.atHeight(b.lineMm() - b.perMm() * p.at())
              : edge.atGirth(b.girth());
      for (PointMm q : at) {
        notches.add(new FormerCut.Notch(b.name(), q, b.widthMm(), b.depthMm()));
        board = board.difference(edge.notch(q, b.widthMm(), b.depthMm(), more));
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
        edge.leans(other, p.thicknessMm()),
        notches,
        flange);
  }
}

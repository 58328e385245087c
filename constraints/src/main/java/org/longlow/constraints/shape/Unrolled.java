package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Station;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * The sheet of a part laid flat as far as it can be without a stretch. An edge strip runs straight
 * across the machine everywhere, and a side whose breadth is said by stations alone runs straight
 * up: each bends one way only. So does a side that slants but does not twist, and what goes all
 * round a body along which straight lines run. Anything else needs formers. Lengths are those of
 * the middle of the sheet.
 *
 * @param even whether it is as broad everywhere: its sides are flat, and its outline is theirs
 * @param needsFormers whether some of it cannot be laid flat
 * @param strips how many edge strips, equal but for being turned over
 * @param strip how wide each is at places along it, in turn; none where formers are needed for it
 * @param stripAreaMm2 of one
 * @param sides how many sides; 0 where it is open, or wrapped all round; of a flat panel, which has
 *     no strip, how many panels
 * @param sideLongMm true length of the longer side along its x axis; 0 where formers are needed
 * @param sideAreaMm2 of that side; 0 where formers are needed
 * @param sheetAreaMm2 of all its outer face; 0 where all of it lies flat
 * @param patterns what is cut, laid flat; not the sides of what is even
 */
public record Unrolled(
    boolean even,
    boolean needsFormers,
    int strips,
    List<Width> strip,
    double stripAreaMm2,
    int sides,
    double sideLongMm,
    double sideAreaMm2,
    double sheetAreaMm2,
    List<FlatPiece> patterns) {

  /** Places along a strip nearer to each other than this are one, mm. */
  private static final double ONE_PLACE_MM = 0.5;

  /** What is this near to a station is at it, mm. */
  private static final double AT_MM = 1e-6;

  /**
   * How wide a strip is at a place.
   *
   * @param where the point or station there
   * @param alongMm from where it begins
   * @param wideMm across the machine, between the sides where there are some
   */
  public record Width(String where, double alongMm, double wideMm) {}

  /** From one edit to the next most sheets stay as they are, and every edit asks for all. */
  private static final Memo<Sheet, Flat> FLAT = new Memo<>(128, Flat::of);

  public Unrolled {
    strip = List.copyOf(strip);
    patterns = List.copyOf(patterns);
  }

  /** Returns the length of a strip, mm; 0 where formers are needed for it. */
  public double stripLongMm() {
    return strip.isEmpty() ? 0 : strip.get(strip.size() - 1).alongMm();
  }

  /** Returns the greatest width of a strip, mm. */
  public double stripWideMm() {
    return strip.stream().mapToDouble(Width::wideMm).max().orElse(0);
  }

  /** Returns whether it is one flat sheet, cut to its outline. */
  public boolean panel() {
    return even && sides > 0 && strips == 0;
  }

  /** Returns whether it is wrapped all round, without sides and edge strip. */
  public boolean wrapped() {
    return !needsFormers && sides == 0 && strip.isEmpty();
  }

  /** Returns the folds of a strip. */
  public List<FlatPiece.Fold> stripFolds() {
    return strip.isEmpty() ? List.of() : patterns.get(patterns.size() - 1).folds();
  }

  /** Returns whether its sides, or its edge strips, can be folded as they are drawn. */
  public boolean isFoldable(boolean strip) {
    return patterns.stream()
        .filter(p -> strip == p.what().equals(Patterns.STRIP))
        .allMatch(FlatPiece::isFoldable);
  }

  /** Returns what cannot be folded as it is drawn. */
  public List<Words> faults() {
    return patterns.stream()
        .flatMap(p -> p.faults().stream().map(f -> Words.of(p.what() + ": ", f)))
        .toList();
  }

  /** Returns how the sheet of a part is laid flat; empty for a part that is not made of sheet. */
  public static Optional<Unrolled> of(Part part, Places places) {
    return Skin.of(part, places).map(skin -> of(skin, places));
  }

  /** All that decides how a sheet lies flat. */
  private record Sheet(Skin skin, Loft loft) {}

  /**
   * A sheet laid flat.
   *
   * @param sides those that can be, of a body that is no wrap
   * @param edge along its edge, if that can be
   * @param strip that edge's pattern
   */
  private record Flat(
      List<FlatPiece> wraps,
      List<FlatPiece> sides,
      Optional<EdgeStrip> edge,
      Optional<FlatPiece> strip) {

    static Flat of(Sheet sheet) {
      Skin skin = sheet.skin;
      List<FlatPiece> wraps = Wraps.of(skin, sheet.loft);
      if (!wraps.isEmpty()) {
        return new Flat(wraps, List.of(), Optional.empty(), Optional.empty());
      }
      Optional<EdgeStrip> edge =
          !skin.sided() || sheet.loft.sides().isStraight()
              ? Optional.of(EdgeStrip.of(skin, sheet.loft))
              : Optional.empty();
      return new Flat(
          wraps,
          Patterns.sides(skin, sheet.loft),
          edge,
          edge.map(e -> Patterns.strip(e, skin.bodies())));
    }
  }

  private static Unrolled of(Skin skin, Places places) {
    if (skin.panel()) {
      return new Unrolled(true, false, 0, List.of(), 0, skin.bodies(), 0, 0, 0, List.of());
    }
    Loft loft = skin.loft(places);
    Flat flat = FLAT.of(new Sheet(skin, loft));
    int pieces = skin.bodies();
    if (!flat.wraps.isEmpty()) {
      return new Unrolled(false, false, 0, List.of(), 0, 0, 0, 0, 0, flat.wraps);
    }
    List<FlatPiece> patterns = new ArrayList<>(skin.even() ? List.of() : flat.sides);
    double sideLong = flat.sides.isEmpty() ? 0 : flat.sides.get(0).longMm();
    double sideArea = flat.sides.isEmpty() ? 0 : flat.sides.get(0).outline().getArea();
    boolean formers = skin.sided() && flat.sides.isEmpty();
    flat.strip.ifPresent(patterns::add);
    double area = flat.strip.map(p -> p.outline().getArea()).orElse(0.0);
    List<Width> strip =
        flat.edge.map(edge -> strip(skin.part(), loft, edge, places)).orElse(List.of());
    return new Unrolled(
        skin.even(),
        formers,
        pieces,
        named(strip),
        area,
        skin.sided() ? 2 * pieces : 0,
        sideLong,
        sideArea,
        formers ? areaMm2(skin, places) : 0,
        patterns);
  }

  /** The area of all the outer face of a body whose breadth varies. */
  private static double areaMm2(Skin skin, Places places) {
    Part.Outlined part = skin.part();
    double t = skin.thicknessMm() > 0 ? skin.thicknessMm() : 1;
    return Shaped.sheet(
                part.frame(),
                part.outline(),
                part.base().spread().orElseThrow(),
                part.breadth(),
                t,
                skin.sided(),
                places)
            .bulk()
            .volume()
        / t;
  }

  /** All places of a strip, those without a name between. */
  private static List<Width> strip(Part.Outlined part, Loft loft, EdgeStrip edge, Places places) {
    List<Girth> ring = loft.ring();
    Local local = Local.of(part.frame(), places);
    List<double[]> points =
        Outlines.vertices(part.frame(), part.outline(), places).stream()
            .map(local::within)
            .map(p -> new double[] {p.x(), p.z()})
            .toList();
    boolean closed = part.outline().closed();
    List<Width> all = new ArrayList<>();
    double[] along = edge.flat().alongMm();
    int n = ring.size();
    for (int i = 0; i < (closed ? n + 1 : n); i++) {
      Girth p = ring.get(i % n);
      boolean end = i == 0 || i == (closed ? n : n - 1);
      all.add(new Width(name(part, points, p, end, places), along[i], edge.wideMm(i)));
      if (i == (closed ? n : n - 1)) {
        break;
      }
      Girth q = ring.get((i + 1) % n);
      List<Width> crossed = new ArrayList<>();
      for (int k = 0; k < part.breadth().stations().size(); k++) {
        Station s = part.breadth().stations().get(k);
        double x = places.value(s.x());
        if (Math.min(p.x(), q.x()) + AT_MM < x && x < Math.max(p.x(), q.x()) - AT_MM) {
          double share = (x - p.x()) / (q.x() - p.x());
          double there = along[i] + share * (along[i + 1] - along[i]);
          double wide = edge.wideMm(i) + share * (edge.wideMm(i + 1) - edge.wideMm(i));
          crossed.add(new Width(called(s, k), there, wide));
        }
      }
      crossed.sort(Comparator.comparingDouble(Width::alongMm));
      all.addAll(crossed);
    }
    return all;
  }

  private static String called(Station s, int k) {
    return s.name().isEmpty() ? "station " + (k + 1) : s.name();
  }

  /**
   * The station that a point of the edge is at; else its own number, where that tells something.
   */
  private static String name(
      Part.Outlined part, List<double[]> points, Girth p, boolean end, Places places) {
    List<Station> stations = part.breadth().stations();
    for (int k = 0; k < stations.size(); k++) {
      if (Math.abs(places.value(stations.get(k).x()) - p.x()) <= AT_MM) {
        return called(stations.get(k), k);
      }
    }
    return end || stations.isEmpty() ? point(points, p) : "";
  }

  private static String point(List<double[]> points, Girth p) {
    for (int i = 0; i < points.size(); i++) {
      if (PointMm.norm(points.get(i)[0] - p.x(), points.get(i)[1] - p.z()) < 1e-6) {
        return "point " + (i + 1);
      }
    }
    return "";
  }

  /** Those with a name, each place once, by the name of its station. */
  private static List<Width> named(List<Width> all) {
    List<Width> out = new ArrayList<>();
    for (Width w : all) {
      if (w.where().isEmpty()) {
        continue;
      }
      int last = out.size() - 1;
      if (last >= 0 && w.alongMm() - out.get(last).alongMm() < ONE_PLACE_MM) {
        if (out.get(last).where().startsWith("point ")) {
          out.set(last, w);
        }
      } else {
        out.add(w);
      }
    }
    return out;
  }
}

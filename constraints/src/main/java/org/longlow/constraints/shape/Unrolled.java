package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.Station;
import org.longlow.constraints.layout.Vertex;

/**
 * The sheet of a shell whose breadth varies, laid flat as far as it can be without a stretch. An
 * edge strip runs straight across the machine everywhere, and a side whose breadth is said by
 * stations alone runs straight up: each bends one way only. Any other side needs formers.
 *
 * @param strips how many edge strips, equal but for being turned over
 * @param strip how wide each is at places along it, in turn; none where formers are needed for it
 * @param stripAreaMm2 of one
 * @param sides how many sides; 0 where it is open
 * @param sideLongMm true length of the longer side along its x axis; 0 where formers are needed
 * @param sideAreaMm2 of that side; 0 where formers are needed
 * @param sheetAreaMm2 of all its outer face
 */
public record Unrolled(
    int strips,
    List<Width> strip,
    double stripAreaMm2,
    int sides,
    double sideLongMm,
    double sideAreaMm2,
    double sheetAreaMm2) {

  /** Places along a strip nearer to each other than this are one, mm. */
  private static final double ONE_PLACE_MM = 0.5;

  /**
   * How wide a strip is at a place.
   *
   * @param where the point or station there
   * @param alongMm from where it begins
   * @param wideMm across the machine, between the sides where there are some
   */
  public record Width(String where, double alongMm, double wideMm) {}

  public Unrolled {
    strip = List.copyOf(strip);
  }

  /** Returns whether some of it cannot be laid flat. */
  public boolean needsFormers() {
    return sides > 0 && sideLongMm == 0;
  }

  /** Returns the length of a strip, mm; 0 where formers are needed for it. */
  public double stripLongMm() {
    return strip.isEmpty() ? 0 : strip.get(strip.size() - 1).alongMm();
  }

  /** Returns the greatest width of a strip, mm. */
  public double stripWideMm() {
    return strip.stream().mapToDouble(Width::wideMm).max().orElse(0);
  }

  /** Returns how a shell is laid flat; empty where it is as broad everywhere. */
  public static Optional<Unrolled> of(ShellPart shell, Places places) {
    if (shell.breadth().isEven(shell.outline()) || shell.base().spread().isEmpty()) {
      return Optional.empty();
    }
    double t = places.value(shell.thickness());
    boolean both = shell.base().spread().get().both();
    Loft loft =
        Shaped.loft(
            shell.frame(), shell.outline(), shell.base().spread().get(), shell.breadth(), places);
    boolean sided = !shell.open();
    boolean straight = loft.sides().isStraight();
    List<Width> strip = sided && !straight ? List.of() : strip(shell, loft, sided ? t : 0, places);
    double area = 0;
    for (int i = 1; i < strip.size(); i++) {
      Width a = strip.get(i - 1);
      Width b = strip.get(i);
      area += (b.alongMm() - a.alongMm()) * (a.wideMm() + b.wideMm()) / 2;
    }
    boolean bent =
        sided
            && straight
            && shell.outline().vertices().stream().map(Vertex::reach).allMatch(Optional::isEmpty);
    double[] left = bent ? side(loft, true) : new double[2];
    double[] right = bent ? side(loft, false) : new double[2];
    double[] longer = left[0] >= right[0] ? left : right;
    double volume =
        Shaped.sheet(
                shell.frame(),
                shell.outline(),
                shell.base().spread().get(),
                shell.breadth(),
                t,
                sided,
                places)
            .volumeMm3();
    int pieces = both ? 2 : 1;
    return Optional.of(
        new Unrolled(
            pieces, named(strip), area, sided ? 2 * pieces : 0, longer[0], longer[1], volume / t));
  }

  /** Length along x and area of a side that runs straight up everywhere. */
  private static double[] side(Loft loft, boolean left) {
    double length = 0;
    double area = 0;
    double reached = Double.NEGATIVE_INFINITY;
    for (Loft.Strip s : loft.strips(Lofted.PIECES)) {
      List<double[]> from = left ? s.from().left() : s.from().right();
      List<double[]> to = left ? s.to().left() : s.to().right();
      int last = from.size() - 1;
      double along = Math.hypot(s.to().x() - s.from().x(), to.get(0)[1] - from.get(0)[1]);
      double up = from.get(last)[0] - from.get(0)[0] + to.get(last)[0] - to.get(0)[0];
      area += along * up / 2;
      if (s.from().x() >= reached) {
        length += along;
        reached = s.to().x();
      }
    }
    return new double[] {length, area};
  }

  /** All places of a strip, those without a name between. */
  private static List<Width> strip(ShellPart shell, Loft loft, double lessMm, Places places) {
    List<Girth> ring = loft.ring();
    Local local = Local.of(shell.frame(), places);
    List<double[]> points =
        Outlines.vertices(shell.frame(), shell.outline(), places).stream()
            .map(local::within)
            .map(p -> new double[] {p.x(), p.z()})
            .toList();
    boolean atPoints = shell.breadth().stations().isEmpty();
    boolean closed = shell.outline().closed();
    List<Width> all = new ArrayList<>();
    double along = 0;
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      Girth p = ring.get(i);
      boolean end = i == 0 || i == n - 1 && !closed;
      String name = atPoints || end ? point(points, p) : "";
      all.add(new Width(name, along, p.to() - p.from() - 2 * lessMm));
      if (i == n - 1 && !closed) {
        break;
      }
      Girth q = ring.get((i + 1) % n);
      double length = Math.hypot(q.x() - p.x(), q.z() - p.z());
      int k = 0;
      List<Width> crossed = new ArrayList<>();
      for (Station s : shell.breadth().stations()) {
        k++;
        double share = (places.value(s.x()) - p.x()) / (q.x() - p.x());
        if (share >= 0 && share < 1) {
          Girth at = p.towards(q, share);
          String called = s.name().isEmpty() ? "station " + k : s.name();
          crossed.add(new Width(called, along + share * length, at.to() - at.from() - 2 * lessMm));
        }
      }
      crossed.sort(Comparator.comparingDouble(Width::alongMm));
      all.addAll(crossed);
      along += length;
    }
    if (closed) {
      Girth p = ring.get(0);
      all.add(new Width(point(points, p), along, p.to() - p.from() - 2 * lessMm));
    } else {
      Girth p = ring.get(n - 1);
      for (Station s : shell.breadth().stations()) {
        if (Math.abs(places.value(s.x()) - p.x()) < 1e-9) {
          all.set(
              all.size() - 1,
              new Width(s.name().isEmpty() ? "end" : s.name(), along, p.to() - p.from()));
        }
      }
    }
    return all;
  }

  private static String point(List<double[]> points, Girth p) {
    for (int i = 0; i < points.size(); i++) {
      if (Math.hypot(points.get(i)[0] - p.x(), points.get(i)[1] - p.z()) < 1e-6) {
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

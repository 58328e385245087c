package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.rider.geom.PointMm;

/**
 * Where two bodies come close in the elevation, place by place.
 *
 * <p>The gap of two bodies is the least of many distances and has no slope where two of them tie,
 * as for edges that lie side by side. Here they stay apart: each corner that is nearer to the other
 * outline than its neighbours makes a contact, and so does the far end of the edge that lies along
 * it. Outlines that overlap make one, minus the way out. Immutable.
 */
public final class Contacts {

  private static final Comparator<Contact> IN_PLACE =
      Comparator.comparingInt(Contact::faceA)
          .thenComparingInt(Contact::faceB)
          .thenComparing(Contact::kind)
          .thenComparingInt(Contact::point)
          .thenComparingInt(Contact::edge);

  private final Solid first;
  private final Solid second;
  private final List<Contact> contacts;

  private Contacts(Solid first, Solid second, List<Contact> contacts) {
    this.first = first;
    this.second = second;
    this.contacts = contacts;
  }

  /**
   * Finds them.
   *
   * @param gapMm the gap that matters, mm: faces farther apart than that across the machine have no
   *     contact
   * @param reachMm only places with less room over that gap matter, mm in the elevation
   * @param most how many to keep, those with the least room
   */
  public static Contacts of(Solid a, Solid b, double gapMm, double reachMm, int most) {
    return of(a, b, gapMm, reachMm, most, List.of());
  }

  /**
   * As {@link #of(Solid, Solid, double, double, int)} without some pairs of outlines.
   *
   * @param aside what is not looked at
   */
  public static Contacts of(
      Solid a, Solid b, double gapMm, double reachMm, int most, List<SideBySide.Pair> aside) {
    List<Contact> found = new ArrayList<>();
    for (int i = 0; i < a.faces().size(); i++) {
      for (int j = 0; j < b.faces().size(); j++) {
        Face p = a.faces().get(i);
        Face q = b.faces().get(j);
        if (isAside(aside, i, j)) {
          continue;
        }
        double across = p.acrossMm(q);
        if (across >= Math.max(0, gapMm)) {
          continue;
        }
        Contact shape = new Contact(i, j, Contact.Kind.CORNER_OF_A, 0, 0, 0, across, 0);
        double cut = shape.neededMm(gapMm) + reachMm;
        if (p.apartMm(q) < cut) {
          between(p.edges(), q.edges(), shape, p.holdsCornerOf(q), cut, found);
        }
      }
    }
    Comparator<Contact> byRoom = Comparator.comparingDouble(c -> c.sideMm() - c.neededMm(gapMm));
    found.sort(byRoom.thenComparing(IN_PLACE));
    List<Contact> kept = new ArrayList<>(found.subList(0, Math.min(most, found.size())));
    // a place keeps its number while nothing else changes
    kept.sort(IN_PLACE);
    return new Contacts(a, b, List.copyOf(kept));
  }

  private static boolean isAside(List<SideBySide.Pair> aside, int first, int second) {
    for (SideBySide.Pair pair : aside) {
      if (pair.first() == first && pair.second() == second) {
        return true;
      }
    }
    return false;
  }

  public int count() {
    return contacts.size();
  }

  /** Returns the room that contact {@code k} has over a gap, mm in the elevation. */
  public double roomMm(int k, double gapMm) {
    return contacts.get(k).sideMm() - contacts.get(k).neededMm(gapMm);
  }

  /** Returns how that room falls as the gap that is asked grows. */
  public double neededSlope(int k, double gapMm) {
    return contacts.get(k).neededSlope(gapMm);
  }

  /** Returns which outlines of the first body have contacts, as {@link Solid#outlines} has them. */
  public int[] facesOfFirst() {
    return contacts.stream().mapToInt(Contact::faceA).distinct().toArray();
  }

  /** Returns which outlines of the second body have contacts. */
  public int[] facesOfSecond() {
    return contacts.stream().mapToInt(Contact::faceB).distinct().toArray();
  }

  /**
   * Measures the distance in the elevation at every contact of one outline of the first body, were
   * that outline another.
   *
   * @param sides receives them by contact, mm; NaN where the other outline has other corners
   */
  public void sidesOfFirst(int face, Geometry outline, double[] sides) {
    Edges edges = Edges.of(outline);
    for (int k = 0; k < sides.length; k++) {
      Contact contact = contacts.get(k);
      if (contact.faceA() == face) {
        sides[k] = contact.sideMm(edges, second.faces().get(contact.faceB()).edges());
      }
    }
  }

  /** As {@link #sidesOfFirst} for the second body. */
  public void sidesOfSecond(int face, Geometry outline, double[] sides) {
    Edges edges = Edges.of(outline);
    for (int k = 0; k < sides.length; k++) {
      Contact contact = contacts.get(k);
      if (contact.faceB() == face) {
        sides[k] = contact.sideMm(first.faces().get(contact.faceA()).edges(), edges);
      }
    }
  }

  private static void between(
      Edges p, Edges q, Contact shape, boolean overlap, double cut, List<Contact> into) {
    Nearest near = overlap ? null : Nearest.of(p, q, Math.max(cut, Nearest.TOUCH_MM));
    if (!overlap && near == null) {
      return;
    }
    if (overlap || near.distanceMm() == 0) {
      Contact out = shape.overlap(p, q);
      if (out != null) {
        into.add(out);
        return;
      }
    }
    List<Contact> here = new ArrayList<>();
    corners(p, q, shape, true, cut, here);
    corners(q, p, shape, false, cut, here);
    for (Contact contact : here) {
      if (into.stream().noneMatch(c -> same(c, contact, p, q))) {
        into.add(contact);
      }
    }
  }

  /** Corners of one outline that are nearer to the other than their neighbours. */
  private static void corners(
      Edges of, Edges other, Contact shape, boolean ofA, double cut, List<Contact> into) {
    int n = of.count();
    PointSearch[] found = new PointSearch[n];
    double[] distance = new double[n];
    for (int v = 0; v < n; v++) {
      found[v] = PointSearch.of(other, of.ends[4 * v], of.ends[4 * v + 1], cut);
      distance[v] = found[v].edge < 0 ? Double.POSITIVE_INFINITY : found[v].distanceMm();
    }
    for (int r = 0; r + 1 < of.rings.length; r++) {
      int first = of.rings[r];
      int size = of.rings[r + 1] - first;
      for (int i = 0; i < size; i++) {
        int v = first + i;
        int before = first + (i + size - 1) % size;
        int after = first + (i + 1) % size;
        if (found[v].edge < 0 || distance[v] > distance[before] || distance[v] > distance[after]) {
          continue;
        }
        Contact contact = shape.corner(ofA, v, found[v].edge, found[v].share).measured(of, other);
        into.add(contact);
        Contact beside = Alongside.of(of, other, contact);
        // one that lies behind the edge faces something else
        if (beside != null && beside.sideMm() >= contact.sideMm()) {
          into.add(beside);
        }
      }
    }
  }

  private static boolean same(Contact c, Contact d, Edges p, Edges q) {
    if (c.faceA() != d.faceA() || c.faceB() != d.faceB() || c.isOverlap()) {
      return false;
    }
    PointMm[] one = c.ends(p, q);
    PointMm[] two = d.ends(p, q);
    return one[0].distance(two[0]) < Nearest.TOUCH_MM && one[1].distance(two[1]) < Nearest.TOUCH_MM;
  }
}

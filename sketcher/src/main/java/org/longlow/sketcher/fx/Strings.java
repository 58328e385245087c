package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import org.longlow.rider.geom.PointMm;

/**
 * How a string hangs from a tag to its place so that it does not run over anybody's head: from
 * another spot of the tag, or else round the head. Pure geometry, px.
 */
final class Strings {

  /** Spots along the lower edge of a tag that are tried. */
  private static final int SPOTS = 12;

  /** So far from a head a string goes round it, px. */
  private static final double ROOM_PX = 5;

  private static final double NEXT_TO_NOTHING_PX = 1e-6;

  private Strings() {}

  /**
   * Returns the string as a line, from the tag to the place. A head that the place itself is on is
   * in nobody's way. Where it can it runs through no words.
   *
   * @param tag where the tag is
   * @param to where its string ends
   * @param heads what it does not run over, each the square round a head
   * @param words the boxes of words on the card
   */
  static List<PointMm> of(Spots.Box tag, PointMm to, List<Spots.Box> heads, List<Spots.Box> words) {
    List<Spots.Box> over = heads.stream().filter(h -> !holds(h, to)).toList();
    PointMm middle = new PointMm(tag.centreX(), tag.bottom());
    List<PointMm> best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= SPOTS; i++) {
      PointMm from = new PointMm(tag.x() + tag.width() * i / SPOTS, tag.bottom());
      List<PointMm> straight = List.of(from, to);
      double cost =
          from.distance(middle)
              + tag.width() * words.stream().filter(w -> crosses(from, to, w)).count();
      if (isFree(straight, over) && cost < least) {
        least = cost;
        best = straight;
      }
    }
    return best != null ? best : round(middle, to, over);
  }

  /** The shortest way round one head that runs over none; straight if there is none. */
  private static List<PointMm> round(PointMm from, PointMm to, List<Spots.Box> heads) {
    List<PointMm> best = List.of(from, to);
    double least = Double.POSITIVE_INFINITY;
    for (Spots.Box head : heads) {
      double top = head.y() - ROOM_PX;
      double low = head.bottom() + ROOM_PX;
      for (double x : new double[] {head.x() - ROOM_PX, head.right() + ROOM_PX}) {
        PointMm above = new PointMm(x, top);
        PointMm below = new PointMm(x, low);
        for (List<PointMm> bends : List.of(List.of(above), List.of(below), List.of(above, below))) {
          List<PointMm> line = new ArrayList<>(List.of(from));
          line.addAll(bends);
          line.add(to);
          if (isFree(line, heads) && length(line) < least) {
            least = length(line);
            best = line;
          }
        }
      }
    }
    return best;
  }

  private static double length(List<PointMm> line) {
    double sum = 0;
    for (int i = 1; i < line.size(); i++) {
      sum += line.get(i - 1).distance(line.get(i));
    }
    return sum;
  }

  private static boolean holds(Spots.Box box, PointMm p) {
    return p.x() >= box.x() && p.x() <= box.right() && p.z() >= box.y() && p.z() <= box.bottom();
  }

  private static boolean isFree(List<PointMm> line, List<Spots.Box> heads) {
    for (int i = 1; i < line.size(); i++) {
      for (Spots.Box head : heads) {
        if (crosses(line.get(i - 1), line.get(i), head)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether a straight piece runs through a box (clipped at its four sides, Liang and Barsky). */
  static boolean crosses(PointMm a, PointMm b, Spots.Box box) {
    double dx = b.x() - a.x();
    double dy = b.z() - a.z();
    double[] goes = {-dx, dx, -dy, dy};
    double[] room = {a.x() - box.x(), box.right() - a.x(), a.z() - box.y(), box.bottom() - a.z()};
    double in = 0;
    double out = 1;
    for (int i = 0; i < 4; i++) {
      if (Math.abs(goes[i]) < NEXT_TO_NOTHING_PX) {
        if (room[i] <= 0) {
          return false;
        }
      } else if (goes[i] < 0) {
        in = Math.max(in, room[i] / goes[i]);
      } else {
        out = Math.min(out, room[i] / goes[i]);
      }
    }
    return in < out;
  }
}

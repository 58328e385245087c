package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.constraints.seat.Resting;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;

/** Which parts must stay clear of each other, and by how much. */
public final class GapRules {

  /** Two parts that share a pin. */
  static final FindingKind JOINT = new FindingKind("joint", FindingGroup.GAPS, Rests.ON_DRAWING);

  /** The word that stands for whoever sits on the machine. */
  static final String RIDER = Occupant.RIDER;

  private final Layout layout;
  private final Places places;
  private final Map<String, Integer> index = new HashMap<>();
  private final boolean[][] mayNotTouch;
  private final Set<String> excused = new HashSet<>();
  private final Map<String, List<String>> joints = new TreeMap<>();
  private final Map<String, Double> asked = new HashMap<>();

  public GapRules(Layout layout, Places places) {
    this.layout = layout;
    this.places = places;
    List<Part> parts = List.copyOf(layout.parts().values());
    parts.forEach(part -> index.put(part.name(), index.size()));
    mayNotTouch = new boolean[parts.size()][parts.size()];
    for (boolean[] row : mayNotTouch) {
      Arrays.fill(row, true);
    }
    excuseJoined(parts);
    for (Part part : parts) {
      for (String other : part.base().touches()) {
        if (!burns(part, other)) {
          excused.add(key(part.name(), other));
          mark(part.name(), other, false);
        }
      }
    }
    for (Limit limit : layout.limits().values()) {
      if (limit.kind() == Limit.Kind.GAP && limit.from().isPresent()) {
        String a = limit.parts().get(0);
        String b = limit.parts().get(1);
        asked.put(key(a, b), places.value(limit.from().get()));
        mark(a, b, true);
      }
    }
  }

  /**
   * What is hot is not meant to meet people, nor what heat spoils, whatever it is said to touch.
   */
  private boolean burns(Part part, String touched) {
    Part other = layout.parts().get(touched);
    return other == null ? burnsSkin(part) : isHot(part, other);
  }

  /** Returns whether skin burns on a part: what is hot, an engine, the air behind a radiator. */
  static boolean burnsSkin(Part part) {
    return part.base().hot()
        || part instanceof SolidPart s
            && (s.type() == SolidPart.Kind.ENGINE || s.type() == SolidPart.Kind.RADIATOR);
  }

  /** Whether one of two parts spoils the other by heat. */
  private static boolean isHot(Part a, Part b) {
    return a.base().hot() && suffers(b) || b.base().hot() && suffers(a);
  }

  /** Parts that share a pin are joined, but for what burns; one seat is upholstered as one. */
  private void excuseJoined(List<Part> parts) {
    Map<String, List<String>> onPin = new HashMap<>();
    for (Part part : parts) {
      for (String pin : part.pins()) {
        onPin.computeIfAbsent(pin, p -> new ArrayList<>()).add(part.name());
      }
      if (part instanceof CushionPart cushion) {
        // a line feed is in no pin's name
        onPin.computeIfAbsent("\n" + cushion.seat(), s -> new ArrayList<>()).add(part.name());
      }
    }
    onPin.forEach(
        (pin, group) -> {
          for (String a : group) {
            for (String b : group) {
              if (isHot(layout.parts().get(a), layout.parts().get(b))) {
                continue;
              }
              mark(a, b, false);
              if (a.compareTo(b) < 0) {
                joints.computeIfAbsent(key(a, b), k -> new ArrayList<>()).add(pin);
              }
            }
          }
        });
    joints.values().removeIf(pins -> pins.stream().anyMatch(p -> p.startsWith("\n")));
  }

  /** Returns where the pins are as drawn. */
  Places places() {
    return places;
  }

  /** Two parts and the pins they share. */
  record Joint(String a, String b, List<String> pins) {}

  /**
   * Returns the joints of parts that are not said to touch and have no limit of their own: they may
   * overlap about the pins that they share and nowhere else.
   */
  List<Joint> joints() {
    List<Joint> all = new ArrayList<>();
    joints.forEach(
        (key, pins) -> {
          int middle = key.indexOf('\n');
          String a = key.substring(0, middle);
          String b = key.substring(middle + 1);
          if (!excused.contains(key) && !mayNotTouch(a, b)) {
            all.add(new Joint(a, b, pins));
          }
        });
    return all;
  }

  private void mark(String a, String b, boolean value) {
    Integer i = index.get(a);
    Integer j = index.get(b);
    if (i != null && j != null) {
      mayNotTouch[i][j] = value;
      mayNotTouch[j][i] = value;
    }
  }

  /** Returns whether two parts are said to touch, though a limit of the layout asks for more. */
  boolean saidToTouch(String a, String b) {
    return excused.contains(key(a, b));
  }

  static String key(String a, String b) {
    return a.compareTo(b) <= 0 ? a + "\n" + b : b + "\n" + a;
  }

  /** Returns whether two parts must stay clear: not joined at a pin, not said to touch. */
  public boolean mayNotTouch(String a, String b) {
    return mayNotTouch[index.get(a)][index.get(b)];
  }

  /**
   * Returns whether the layout says that something shields one thing from another: by a limit of
   * its own for their gap that is no less than is asked behind a shield.
   */
  boolean isShielded(String a, String b, Demands.Key demand) {
    Double own = asked.get(key(a, b));
    return own != null && own >= demandMm(demand);
  }

  /** Returns the layout's own limit for the gap of two things, mm. */
  Optional<Double> ownMm(String a, String b) {
    return Optional.ofNullable(asked.get(key(a, b)));
  }

  /** Returns whether people must stay clear of a part, at least with what does not rest on it. */
  public boolean clearOfPeople(String part) {
    String key = key(part, RIDER);
    return asked.containsKey(key) || !excused.contains(key);
  }

  /** Returns what of somebody must stay clear of a part: what does not rest on it. */
  public Resting.Clear clear(Part part, Sitting sitting) {
    return asked.containsKey(key(part.name(), RIDER))
        ? new Resting.Clear(Set.of(), false)
        : Resting.clear(sitting, part);
  }

  /** Returns the smallest gap between somebody and a part, mm: own cushions may be touched. */
  public double limitMm(String part, Sitting sitting) {
    boolean own = Resting.ownCushion(sitting, layout.parts().get(part));
    return own && !asked.containsKey(key(part, RIDER))
        ? 0
        : limitMm(part, RIDER, demandOfPeople(part));
  }

  /** Returns the demand that holds for two parts. */
  public Demands.Key demand(String a, String b) {
    Part p = layout.parts().get(a);
    Part q = layout.parts().get(b);
    boolean tyre = p.traits().duty() == Duty.WHEEL || q.traits().duty() == Duty.WHEEL;
    if (isHot(p, q) && !(tyre && demandMm(Demands.Key.TYRE_GAP) > demandMm(Demands.Key.HOT_GAP))) {
      return Demands.Key.HOT_GAP;
    }
    return tyre ? Demands.Key.TYRE_GAP : Demands.Key.GAP;
  }

  public Demands.Key demandOfPeople(String part) {
    return layout.parts().get(part).base().hot() ? Demands.Key.HOT_GAP : Demands.Key.PERSON_GAP;
  }

  private static boolean suffers(Part part) {
    return part.traits().heat() == Heat.SUFFERS;
  }

  /** Returns the smallest gap allowed, mm: the layout's own limit for the pair, or the demand's. */
  public double limitMm(String a, String b, Demands.Key demand) {
    Double own = asked.get(key(a, b));
    return own != null ? own : demandMm(demand);
  }

  private double demandMm(Demands.Key demand) {
    return places.value(layout.demands().limit(demand));
  }

  /** Returns the largest of these gaps, mm, and of all that this layout asks for. */
  double largestMm(double mm) {
    double most = mm;
    for (double own : asked.values()) {
      most = Math.max(most, own);
    }
    for (Demands.Key key : List.of(Demands.Key.GAP, Demands.Key.TYRE_GAP, Demands.Key.HOT_GAP)) {
      most = Math.max(most, demandMm(key));
    }
    return most;
  }

  /** Returns where the limit for the pair comes from. */
  Basis source(String a, String b, Demands.Key demand) {
    return asked.containsKey(key(a, b))
        ? Basis.ownDemand("this layout's own limit")
        : Sources.of(layout, demand);
  }
}

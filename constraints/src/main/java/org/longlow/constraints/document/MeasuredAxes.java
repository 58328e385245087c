package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.words.Quoted;

/** Pins that were measured and that an axis, link or arm lies between are not in one spot. */
final class MeasuredAxes {

  /** What is nearer is one pin; judgement, mm. */
  static final double APART_MM = 1;

  private MeasuredAxes() {}

  /** What is to be between two pins. */
  private record Between(String what, String first, String second) {}

  static void apart(AsBuilt built, Spot at) {
    for (String name : at.known(Referent.PART)) {
      for (Between between : of(at.part(name))) {
        List<Formula> first = built.pins().get(between.first());
        List<Formula> second = built.pins().get(between.second());
        if (first != null && second != null) {
          distance(first, second, at)
              .filter(mm -> mm < APART_MM)
              .ifPresent(mm -> fault(name, between, second, mm, at));
        }
      }
    }
  }

  private static void fault(
      String part, Between between, List<Formula> second, double mm, Spot at) {
    at.itemFault(
        "pins",
        between.second(),
        Quoted.of(second.get(0).text() + ", " + second.get(1).text()),
        "is "
            + Range.number(mm)
            + " mm from "
            + between.first()
            + ", and "
            + between.what()
            + " of "
            + part
            + " lies between the two, which are at least "
            + Range.number(APART_MM)
            + " mm apart",
        "measure both again");
  }

  private static Optional<Double> distance(List<Formula> a, List<Formula> b, Spot at) {
    Optional<Double> x = at.fixed(a.get(0)).flatMap(p -> at.fixed(b.get(0)).map(q -> q - p));
    Optional<Double> z = at.fixed(a.get(1)).flatMap(p -> at.fixed(b.get(1)).map(q -> q - p));
    return x.flatMap(dx -> z.map(dz -> Math.hypot(dx, dz)));
  }

  private static List<Between> of(Part part) {
    List<Between> all = new ArrayList<>();
    if (part instanceof FrontPart front) {
      all.add(new Between("the steering axis", front.bottom(), front.top()));
      if (front.pivot().isPresent()) {
        front.pieces().stream()
            .filter(p -> !p.from().equals(front.bottom()))
            .forEach(p -> all.add(new Between("the " + p.what(), p.from(), p.to())));
      }
      front
          .postBottom()
          .flatMap(p -> front.postTop().map(q -> new Between("the bars' axis", p, q)))
          .ifPresent(all::add);
    } else if (part instanceof SwingarmPart arm) {
      all.add(new Between("the arm", arm.pivot(), arm.axle()));
    }
    return all;
  }
}

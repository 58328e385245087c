package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.check.rule.LitLamps;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.law.LampNeeds;
import org.longlow.constraints.law.LawTables;
import org.longlow.constraints.law.RuleSet;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Stance;
import org.longlow.rider.words.FigureSort;

/**
 * Dimensions of lamps and reflectors on the front view, as the law sees them: how high their
 * centres are, how far left and right are apart, each with what the strictest of the rules in force
 * asks.
 */
final class LampSpans {

  /** Off the middle by less, a lamp has no other one to be apart from, mm. */
  private static final double IN_THE_MIDDLE_MM = 1;

  private final Scene scene;
  private final Set<String> rules;
  private final List<LampItem> lamps;

  LampSpans(Scene scene) {
    this.scene = scene;
    rules = Set.copyOf(scene.layout().demands().rules());
    lamps =
        LitLamps.of(scene.layout(), scene.places(), scene.ground()).stream()
            .filter(lamp -> lamp.kind() != LampPart.Kind.PLATE)
            .toList();
  }

  /** Returns what is to be said of them, if any lamp has a dimension. */
  static Optional<String> said(Scene scene) {
    LampSpans spans = new LampSpans(scene);
    if (spans.lamps.isEmpty()) {
      return Optional.empty();
    }
    List<RuleSet> inForce =
        LawTables.sets().stream().filter(r -> spans.rules.contains(r.id())).toList();
    return Optional.of(
        "Lamps to their centres: ahead at the right, behind at the left"
            + (inForce.isEmpty()
                ? "."
                : "; asked by "
                    + RuleSet.words(inForce)
                    + ", the strictest"
                    + (unladen(scene)
                        ? "."
                        : ", of the machine with nobody on it, which stands higher: see its findings.")));
  }

  private static boolean unladen(Scene scene) {
    return scene.condition().filter(c -> c.kind() == Stance.Kind.UNLADEN).isPresent();
  }

  /**
   * Returns how high they are, one for each part.
   *
   * @param ahead whether those in the front half of the wheelbase, or the others
   */
  List<Tiers.Span> up(boolean ahead) {
    List<Tiers.Span> spans = new ArrayList<>();
    for (LampItem lamp : lamps) {
      if (!lamp.other() && lamp.ahead() == ahead) {
        double[] asked = LampNeeds.heightsMm(rules, lamp.kind(), ahead, lamp.halfHeightMm());
        double across = (ahead ? 1 : -1) * Math.abs(lamp.yMm());
        spans.add(
            new Tiers.Span(
                subject(lamp),
                0,
                lamp.zMm(),
                across,
                across,
                lamp.part() + " " + figure(lamp.zMm()) + asked(asked[0], asked[1])));
      }
    }
    return spans;
  }

  /** Returns how far left and right are apart, and lamps ahead from a headlamp. */
  List<Tiers.Span> across() {
    List<Tiers.Span> spans = new ArrayList<>();
    for (LampItem lamp : lamps) {
      if (!lamp.other() && Math.abs(lamp.yMm()) > IN_THE_MIDDLE_MM) {
        twin(lamp).ifPresent(twin -> spans.add(apart(lamp, twin)));
        lamps.stream()
            .filter(h -> LampNeeds.gapMm(rules, lamp.kind(), h.kind()) > 0)
            .min(Comparator.comparingDouble(lamp::frontViewGapMm))
            .flatMap(h -> gap(lamp, h))
            .ifPresent(spans::add);
      }
    }
    return spans;
  }

  private Optional<LampItem> twin(LampItem lamp) {
    return lamps.stream().filter(o -> o.part().equals(lamp.part()) && o.other()).findFirst();
  }

  private Tiers.Span apart(LampItem a, LampItem b) {
    double least = LampNeeds.centresApartMm(rules, a.kind(), a.halfWidthMm());
    return new Tiers.Span(
        subject(a),
        Math.min(a.yMm(), b.yMm()),
        Math.max(a.yMm(), b.yMm()),
        a.zMm(),
        b.zMm(),
        a.part()
            + " apart "
            + figure(Math.abs(a.yMm() - b.yMm()))
            + asked(least, Double.POSITIVE_INFINITY));
  }

  /** Returns the gap between two lit areas where it is level, which a level dimension can say. */
  private Optional<Tiers.Span> gap(LampItem lamp, LampItem to) {
    double side = Math.signum(lamp.yMm() - to.yMm());
    double from = to.yMm() + side * to.halfWidthMm();
    double end = lamp.yMm() - side * lamp.halfWidthMm();
    double gap = lamp.frontViewGapMm(to);
    if (side == 0 || Math.abs(side * (end - from) - gap) > 0.05) {
      return Optional.empty();
    }
    return Optional.of(
        new Tiers.Span(
            subject(lamp),
            from,
            end,
            to.zMm(),
            lamp.zMm(),
            lamp.part()
                + " from "
                + to.part()
                + " "
                + figure(gap)
                + asked(LampNeeds.gapMm(rules, lamp.kind(), to.kind()), Double.POSITIVE_INFINITY)));
  }

  private static String subject(LampItem lamp) {
    return "part:" + lamp.part();
  }

  private String asked(double least, double most) {
    boolean low = Double.isFinite(least);
    boolean high = Double.isFinite(most);
    return low && high
        ? ", asked " + figure(least) + " to " + figure(most)
        : low ? ", asked at least " + figure(least) : high ? ", asked at most " + figure(most) : "";
  }

  private String figure(double mm) {
    return scene.layout().units().bare(mm, FigureSort.LENGTH);
  }
}

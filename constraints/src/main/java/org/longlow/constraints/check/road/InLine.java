package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.HubBody;
import org.longlow.constraints.layout.HubBody.What;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Runs;
import org.longlow.rider.words.Words;

/**
 * Whether the wheels of a chain or belt are in line across the machine, and whether it runs on the
 * sprocket that a wheel of the machine says it has.
 */
final class InLine {

  static final FindingKind IN_LINE =
      new FindingKind("in-line", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** Out of line, in mm for each mm between the centres: 3 mm in a metre. */
  private static final double MOST_ASKEW = 0.003;

  /** Teeth end within the plates, which are so high outside the pitch circle; judgement, mm. */
  private static final double MOST_OUTSIDE_MM = Runs.HALF_HIGH_MM;

  /** A belt's pitch line lies so far outside its pulley, and figures are rounded; judgement, mm. */
  private static final double MOST_INSIDE_MM = 2;

  private static final Basis ASKEW =
      Basis.practice("sprockets within 3 mm of a line in a metre are common practice; no source");

  private static final Basis TEETH =
      Basis.judgement(
          "that teeth end no farther than 2 mm inside the pitch circle and 8 mm outside is"
              + " judgement");

  /** Two that should be in line, how far they are off, and how far they may be. */
  private record Askew(double mm, double mostMm, String which) {

    double share() {
      return mostMm > 0 ? mm / mostMm : mm > 0 ? Double.MAX_VALUE : 0;
    }
  }

  /** A sprocket that a wheel says it has. */
  private record Own(WheelPart wheel, HubBody body) {}

  private InLine() {}

  static Finding of(Layout layout, String name, Tie tie, Places drawn) {
    double[] across = tie.run().across().stream().mapToDouble(drawn::value).toArray();
    List<Askew> all = new ArrayList<>();
    for (int i = 0; i < across.length; i++) {
      int at = i;
      int next = (i + 1) % across.length;
      String one = tie.pins().get(i);
      String other = tie.pins().get(next);
      double most = MOST_ASKEW * drawn.pin(one).distance(drawn.pin(other));
      all.add(
          new Askew(
              Math.abs(across[i] - across[next]),
              most,
              across.length == 2
                  ? "The wheels of " + name
                  : "The wheels about " + one + " and " + other + " of " + name));
      own(layout, tie, i, drawn)
          .ifPresent(
              own ->
                  all.add(
                      new Askew(
                          off(tie, at, own, drawn),
                          most,
                          name + " about " + one + " and the sprocket of " + own.wheel().name())));
    }
    Askew worst = all.stream().max(Comparator.comparingDouble(Askew::share)).orElseThrow();
    boolean passes = worst.mm() <= worst.mostMm();
    return new Finding(
        IN_LINE,
        About.thing(name, name),
        Optional.empty(),
        passes ? Verdict.PASS : Verdict.FAIL,
        Figures.atMost(worst.mm(), worst.mostMm(), FigureUnit.MM),
        List.of(ASKEW),
        passes
            ? Words.of(
                "The wheels of " + name + " are ",
                Say.mm(worst.mm()),
                " out of line; ",
                Say.mm(worst.mostMm()),
                " is the most for so long a run.")
            : Words.of(
                worst.which() + " are ",
                Say.mm(worst.mm()),
                " out of line across the machine; ",
                Say.mm(worst.mostMm()),
                " is the most for so long a run: shim one of them, or mend \"across\" or \"y\"."));
  }

  private static double off(Tie tie, int i, Own own, Places drawn) {
    return tie.run().across().isEmpty()
        ? 0
        : Math.abs(drawn.value(tie.run().across().get(i)) - drawn.value(own.body().y()));
  }

  /** Returns the sprocket on that pin which it runs on: of several the nearest. */
  private static Optional<Own> own(Layout layout, Tie tie, int i, Places drawn) {
    return layout
        .parts(WheelPart.class)
        .filter(wheel -> wheel.axle().equals(tie.pins().get(i)))
        .flatMap(wheel -> wheel.inside().stream().map(body -> new Own(wheel, body)))
        .filter(own -> own.body().what() == What.SPROCKET)
        .min(Comparator.comparingDouble(own -> off(tie, i, own, drawn)));
  }

  /** Adds what is wrong with the size of a sprocket that a wheel says it has. */
  static void radii(List<Finding> findings, Layout layout, String name, Tie tie, Places drawn) {
    for (int i = 0; i < tie.pins().size(); i++) {
      double pitch = drawn.value(tie.radii().get(i));
      own(layout, tie, i, drawn)
          .filter(
              own -> {
                double more = drawn.value(own.body().radius()) - pitch;
                return more < -MOST_INSIDE_MM || more > MOST_OUTSIDE_MM;
              })
          .map(own -> wrongSize(name, own, pitch, drawn))
          .ifPresent(findings::add);
    }
  }

  private static Finding wrongSize(String name, Own own, double pitch, Places drawn) {
    double radius = drawn.value(own.body().radius());
    String wheel = own.wheel().name();
    return new Finding(
            IN_LINE,
            About.thing(name, name).named(name, wheel),
            Optional.empty(),
            Verdict.FAIL,
            Figures.within(radius, pitch - MOST_INSIDE_MM, pitch + MOST_OUTSIDE_MM, FigureUnit.MM),
            List.of(TEETH),
            Words.of(
                "The sprocket of " + wheel + " reaches ",
                Say.mm(radius),
                " from the axle, and " + name + " runs there on a pitch radius of ",
                Say.mm(pitch),
                ": ",
                Say.mm(pitch - MOST_INSIDE_MM),
                " to ",
                Say.mm(pitch + MOST_OUTSIDE_MM),
                " would go with that. Give both the same sprocket."))
        .at(drawn.pin(own.wheel().axle()), drawn.value(own.body().y()));
  }
}

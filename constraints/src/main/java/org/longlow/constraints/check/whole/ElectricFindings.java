package org.longlow.constraints.check.whole;

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
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Electric;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/** What the electrics of a machine take, against what is given: a plain sum. */
public final class ElectricFindings {

  /** What is taken from the electrics against what is given to them. */
  public static final FindingKind ELECTRIC =
      new FindingKind("electric", FindingGroup.ELECTRICS, Rests.ON_DRAWING);

  /** So many are named, the rest counted. */
  private static final int NAMED = 4;

  private static final Basis SUM =
      Basis.model("the sum of each power given times its share of the ride; nothing is lost");

  private final Layout layout;
  private final Places places;

  private ElectricFindings(Layout layout, Places places) {
    this.layout = layout;
    this.places = places;
  }

  /** Returns what comes of it; nothing where no part says anything. */
  public static Optional<Finding> of(Layout layout, Places places) {
    return layout.parts().values().stream().allMatch(p -> p.electric().equals(Electric.NOT_SAID))
        ? Optional.empty()
        : Optional.of(new ElectricFindings(layout, places).sum());
  }

  private Finding sum() {
    double taken = 0;
    double given = 0;
    double stored = 0;
    boolean drives = false;
    List<Taker> takers = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    for (Part part : layout.parts().values()) {
      Electric said = part.electric();
      if (said.power().isPresent()) {
        double mean = places.value(said.power().get()) * said.duty().map(places::value).orElse(1.0);
        takers.add(new Taker(part.name(), mean));
        taken += mean;
        drives |= isMotor(part) && mean > 0;
      } else if (takes(part) && said.supply().isEmpty()) {
        unknown.add(part.name());
      }
      given += value(said.supply());
      stored += value(said.energy());
    }
    if (taken == 0) {
      return finding(
          Verdict.NOT_APPLICABLE,
          Figures.NONE,
          Words.of(
              "Nothing says what it takes from the electrics: give \"electric\" with \"power\" of "
                  + (unknown.isEmpty() ? "what does" : named(unknown))
                  + "."));
    }
    takers.sort(Comparator.comparingDouble(Taker::watt).reversed());
    Words begin =
        Say.format("The electrics take %s%s", watt(taken), takers.size() == 1 ? "" : most(takers));
    Words open =
        unknown.isEmpty()
            ? Words.NONE
            : Words.of("; what " + named(unknown) + " takes is not known and comes to it");
    Verdict enough = unknown.isEmpty() ? Verdict.PASS : Verdict.CAUTION;
    if (given == 0 && stored == 0) {
      return finding(
          Verdict.CAUTION,
          Figures.only(taken, FigureUnit.WATT),
          Words.of(
              begin,
              open,
              "; nothing says what gives it: write the \"supply\" of the generator, or the"
                  + " \"energy\" of the battery."));
    }
    if (given >= taken) {
      return finding(
          enough,
          Figures.atMost(taken, given, FigureUnit.WATT),
          Words.of(
              begin,
              Say.format(", and %s are given: %s to spare", watt(given), watt(given - taken)),
              open,
              "."));
    }
    double hours = stored / (taken - given);
    Words lasts =
        Say.format(
            "%s of %s, used to the last, lasts %s%s",
            given > 0 ? "so the battery" : "the battery",
            Words.format("%.0f Wh", stored),
            FigureUnit.HOUR.says(hours),
            drives ? Words.of(", ", range(hours)) : Words.NONE);
    if (given == 0) {
      return finding(
          enough, Figures.only(hours, FigureUnit.HOUR), Words.of(begin, "; ", lasts, open, "."));
    }
    return finding(
        stored > 0 ? Verdict.CAUTION : Verdict.FAIL,
        Figures.atMost(taken, given, FigureUnit.WATT),
        Words.of(
            begin,
            Say.format(", and %s are given, %s too little", watt(given), watt(taken - given)),
            stored > 0 ? Words.of("; ", lasts) : Words.NONE,
            open,
            ": take what needs less, have it on for less of the ride, or fit a larger generator."));
  }

  /** What takes some power, in the mean. */
  private record Taker(String name, double watt) {}

  private static String most(List<Taker> takers) {
    Taker first = takers.get(0);
    return ", most of it " + first.name() + " with " + watt(first.watt());
  }

  private Words range(double hours) {
    double speed = places.value(layout.demands().limit(Demands.Key.SPEED));
    double kmh = Unit.KM_PER_HOUR.fromInternal(speed);
    return Say.format(
        "%s at %s, if its power is that at this speed",
        Words.figure(kmh * hours * 1e6, FigureSort.FAR), Words.figure(kmh, FigureSort.SPEED));
  }

  private static String watt(double watt) {
    return FigureUnit.WATT.says(watt);
  }

  private double value(Optional<Formula> said) {
    return said.map(places::value).orElse(0.0);
  }

  private static boolean isMotor(Part part) {
    return part instanceof SolidPart solid && solid.type() == SolidPart.Kind.MOTOR
        || part instanceof WheelPart wheel && wheel.driven();
  }

  /** Whether such a part takes something, whatever it says. */
  private static boolean takes(Part part) {
    return part instanceof LampPart lamp && lamp.lights()
        || isMotor(part)
        || part instanceof SolidPart solid && solid.type() == SolidPart.Kind.INSTRUMENT;
  }

  private static String named(List<String> names) {
    return names.size() <= NAMED
        ? String.join(", ", names)
        : String.join(", ", names.subList(0, NAMED)) + " and " + (names.size() - NAMED) + " more";
  }

  private static Finding finding(Verdict verdict, Figures figures, Words text) {
    return new Finding(
        ELECTRIC,
        About.thing("electrics", "machine"),
        Optional.empty(),
        verdict,
        figures,
        List.of(SUM),
        text);
  }
}

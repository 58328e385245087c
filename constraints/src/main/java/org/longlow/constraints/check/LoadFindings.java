package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.AxleLoads;
import org.longlow.constraints.stand.Standing;

/** Axle loads and centre of mass, with and without each crew member. */
final class LoadFindings {

  private static final String STATICS = "statics of masses on two axles; ";

  private LoadFindings() {}

  static List<Finding> of(Layout layout, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    for (Standing s : standings) {
      boolean laden = s.kind() == Stance.Kind.LADEN;
      if (s.load() == null || !(laden || s.kind() == Stance.Kind.UNLADEN)) {
        continue;
      }
      AxleLoads axles = s.load().axles();
      double share = axles.frontShare();
      double least = s.places().value(layout.demands().limit(Demands.Key.FRONT_SHARE_MIN));
      double most = s.places().value(layout.demands().limit(Demands.Key.FRONT_SHARE_MAX));
      String who = laden ? "with " + s.people() : "with nobody on it";
      String text =
          Say.format(
              "%s the machine weighs %s kg; front axle %.0f N, rear axle %.0f N, %s on the front;"
                  + " centre of mass %.0f mm ahead of the rear contact, %.0f mm up and %s.",
              who.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + who.substring(1),
              Say.number(s.load().total().massKg()),
              axles.frontN(),
              axles.rearN(),
              Say.percent(share),
              s.ground().toRoad(s.load().total().at()).x(),
              s.ground().toRoad(s.load().total().at()).z(),
              across(s.load().total().yMm()));
      String id = "load." + (laden ? s.people() : "unladen");
      if (laden) {
        boolean low = share - least < most - share;
        String limits =
            share < least
                ? Say.format(
                    " At least %s are asked there: move heavy parts or the seat forward.",
                    Say.percent(least))
                : share > most
                    ? Say.format(
                        " At most %s are asked there: move heavy parts or the seat back.",
                        Say.percent(most))
                    : "";
        Finding f =
            low
                ? Finding.atLeast(
                    id,
                    s.people(),
                    s.name(),
                    share,
                    least,
                    "share",
                    STATICS + Sources.of(layout, Demands.Key.FRONT_SHARE_MIN),
                    text + limits)
                : Finding.atMost(
                    id,
                    s.people(),
                    s.name(),
                    share,
                    most,
                    "share",
                    STATICS + Sources.of(layout, Demands.Key.FRONT_SHARE_MAX),
                    text + limits);
        findings.add(f.at(s.load().total().at()));
        findings.add(lift(s, axles));
      } else {
        findings.add(
            Finding.note(
                    id,
                    "machine",
                    s.name(),
                    Verdict.PASS,
                    share,
                    "share",
                    "statics of masses on two axles",
                    text)
                .at(s.load().total().at()));
      }
    }
    return findings;
  }

  /** Where the centre lies across the machine, in words. */
  private static String across(double yMm) {
    double mm = Math.abs(yMm);
    return mm < 0.5
        ? "in the middle"
        : Say.format("%.0f mm to the %s of the middle", mm, yMm > 0 ? "left" : "right");
  }

  private static Finding lift(Standing s, AxleLoads axles) {
    String id = "lift." + s.people();
    String source = "statics; no aerodynamics, level road";
    if (!(axles.total().at().z() > 0)) {
      return Finding.note(
          id,
          s.people(),
          s.name(),
          Verdict.FAIL,
          Double.NaN,
          "g",
          source,
          "With "
              + s.people()
              + " the centre of mass lies in the road or under it; look at the places and masses of"
              + " the heavy parts.");
    }
    double least = Math.min(axles.brakeLiftG(), axles.driveLiftG());
    return least > 0
        ? Finding.note(
            id,
            s.people(),
            s.name(),
            Verdict.PASS,
            axles.brakeLiftG(),
            "g",
            source,
            Say.format(
                "With %s braking lifts the rear wheel at %.2f g and pulling away lifts the front at"
                    + " %.2f g, if the tyres grip that well.",
                s.people(), axles.brakeLiftG(), axles.driveLiftG()))
        : Finding.note(
            id,
            s.people(),
            s.name(),
            Verdict.FAIL,
            least,
            "g",
            source,
            Say.format(
                "With %s the centre of mass lies outside the wheels: the %s wheel lifts at rest.",
                s.people(), axles.driveLiftG() > 0 ? "rear" : "front"));
  }
}

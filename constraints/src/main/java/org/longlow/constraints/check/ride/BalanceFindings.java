package org.longlow.constraints.check.ride;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.Words;

/** From which speed the machine would balance by itself, with the crew that is worst for it. */
public final class BalanceFindings {

  /** Speeds of weave and capsize by the linear model. */
  public static final FindingKind BALANCE =
      new FindingKind("balance", FindingGroup.BALANCE, Rests.ON_MASSES);

  private static final Basis MODEL =
      Basis.model(
          "linear model of two frames and two knife-edge wheels, J. P. Meijaard, J. M. Papadopoulos,"
              + " A. Ruina, A. L. Schwab, Proc. R. Soc. A 463 (2007) 1955-1982, appendix A");

  private static final Basis SPREAD =
      Basis.published(
          Known.FROM_MEMORY,
          String.format(
              Locale.ROOT,
              "wheels that do not say their spread are taken with %.1f, typical, from memory",
              SingleTrack.SPREAD));

  private BalanceFindings() {}

  /** Returns one, of the crew with which it balances last; empty where a mass is missing. */
  public static Optional<Finding> of(Wheels wheels, List<Standing> standings) {
    return Balanced.last(wheels, standings).map(r -> finding(r, wheels));
  }

  private static Words sooner(Balanced r) {
    return r.soonest()
        .map(
            change ->
                Words.of(
                    ". Of small changes tried one by one it begins soonest with ",
                    change.what(),
                    ": from ",
                    change.weave().orElseThrow()))
        .orElse(Words.of("; no small change tried alone makes it begin sooner"));
  }

  private static Finding finding(Balanced r, Wheels wheels) {
    boolean said =
        Stream.of(wheels.front(), wheels.rear())
            .map(WheelPart::spread)
            .allMatch(Optional::isPresent);
    OptionalDouble capsize = r.model().capsizeSpeedMs();
    String people = r.stance().condition().people();
    Words text =
        r.balances()
            ? Words.of(
                "With " + people + " it would balance by itself, hands off, from ",
                Balanced.speed(r.fromMs()),
                capsize.isPresent()
                    ? Words.of(
                        " to ",
                        Balanced.speed(capsize.getAsDouble()),
                        "; faster it falls slowly to one" + " side, which is easily held")
                    : Words.of(" up"),
                "; slower it must be steered",
                Words.later(() -> sooner(r)),
                ".")
            : Words.of(
                "With "
                    + people
                    + " there is no speed at which it would balance by itself, hands off: it must"
                    + " be steered all the time. Try more trail, more rake or another place for the"
                    + " heavy parts.");
    return new Finding(
            BALANCE,
            About.thing("balance", "balance"),
            Optional.of(r.stance().condition()),
            r.balances() && said ? Verdict.PASS : Verdict.CAUTION,
            r.balances()
                ? Figures.only(Balanced.KM_PER_HOUR * r.fromMs(), FigureUnit.KM_PER_HOUR)
                : Figures.NONE,
            said ? List.of(MODEL) : List.of(MODEL, SPREAD),
            text)
        .at(r.stance().ground().frontContact());
  }
}

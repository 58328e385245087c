package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.SightFindings;
import org.longlow.constraints.check.person.StopFindings;
import org.longlow.constraints.check.road.RunFindings;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;

/** Makes a first machine from answers: whole, solved and with everybody seated. */
public final class FirstMachine {

  /** A guessed engine under the seat is guessed so many times lower until feet come down. */
  private static final int LOWERED = 3;

  private static final Set<FindingKind> STANDS =
      Set.of(SightFindings.FOOT, StopFindings.FEET_DOWN, StopFindings.HOLD_UP);

  private FirstMachine() {}

  /** What came of it. */
  public sealed interface Outcome {}

  /**
   * A machine.
   *
   * @param study its layout and all that is known about it
   * @param yours what nobody but its builder can decide, one sentence each, in the units of the
   *     layout
   */
  public record Made(Study study, List<String> yours) implements Outcome {
    public Made {
      yours = List.copyOf(yours);
    }

    public Layout layout() {
      return study.layout();
    }
  }

  /**
   * None, and why.
   *
   * @param faults all that stands against it, each named by the answer it is about
   */
  public record Refused(List<Fault> faults) implements Outcome {
    public Refused {
      faults = List.copyOf(faults);
    }
  }

  /** Makes a machine under the name that goes with where its drive is. */
  public static Outcome of(Answers answers) {
    return of(answers, Optional.empty(), Units.MM);
  }

  /**
   * Makes a machine; the same answers give the same one.
   *
   * @param name what it is called
   * @param units in which it is shown and spoken of
   */
  public static Outcome of(Answers answers, Optional<String> name, Units units) {
    List<Fault> faults = Contradictions.of(answers);
    if (!faults.isEmpty()) {
      return new Refused(faults);
    }
    Brief brief = Brief.of(answers);
    boolean guessed = answers.box().isEmpty() && answers.tracing().isEmpty();
    return of(
        guessed && brief.place() == Answers.Place.UNDER ? lowered(brief, answers) : brief,
        answers,
        name,
        units);
  }

  /** How high such an engine may be is seen where the wheels are as far apart as need be. */
  private static Brief lowered(Brief brief, Answers answers) {
    Brief lower = brief;
    for (int k = 0; k < LOWERED; k++) {
      Brief free = lower.withWheelbaseMm(Double.NaN);
      double lift =
          of(free, answers, Optional.empty(), Units.MM) instanceof Made made
              ? legShortMm(made.study())
              : 0;
      if (lift <= 0) {
        break;
      }
      lower = lower.withBoxHeightMm(lower.box().heightMm() - Math.ceil(Trim.LEG_SLANTS * lift));
    }
    return lower;
  }

  /** How much the leg lacks of whoever lacks most to stand and to hold the machine, mm. */
  private static double legShortMm(Study study) {
    return study.findings().stream()
        .filter(f -> f.verdict() == Verdict.FAIL)
        .filter(f -> STANDS.contains(f.kind()) && f.unit() == FigureUnit.MM)
        .mapToDouble(f -> -f.margin())
        .max()
        .orElse(0);
  }

  private static Outcome of(Brief brief, Answers answers, Optional<String> name, Units units) {
    Trim trim = new Trim(brief);
    List<Fault> against = trim.settle();
    if (!against.isEmpty()) {
      return new Refused(against);
    }
    Story story = new Story(brief, answers, name, units);
    Study study = study(trim, story, true, units);
    List<String> yours = new ArrayList<>();
    boolean meets =
        study.findings().stream()
            .anyMatch(f -> f.kind() == RunFindings.RUN && f.verdict() == Verdict.FAIL);
    if (meets) {
      study = study(trim, story, false, units);
    }
    for (Finding f : study.findings()) {
      if (f.verdict() == Verdict.FAIL) {
        yours.add(f.text(units));
      }
    }
    if (meets) {
      yours.add(
          "No chain is drawn: straight from the drive to the rear wheel it would run into what is"
              + " between them. Lead it over an idler, raise the seat, or take smaller wheels.");
    }
    yours.addAll(story.yours());
    return new Made(study, yours);
  }

  private static Study study(Trim trim, Story story, boolean chain, Units units) {
    return Study.of(FirstLayout.of(trim.room(), story, chain).withUnits(units));
  }

  /**
   * Makes a card with two wheels and nothing else: wheelbase, tyres, law and who rides as answered.
   * The other answers are about what is not there yet; they are named among what is yours to do.
   *
   * @param name what it is called
   * @param units in which it is shown
   */
  public static Outcome wheels(Answers answers, Optional<String> name, Units units) {
    List<Fault> faults = Contradictions.of(TwoWheels.used(answers));
    if (!faults.isEmpty()) {
      return new Refused(faults);
    }
    Study study = Study.of(FirstLayout.faultless(TwoWheels.alone(answers, name)).withUnits(units));
    List<Question> unused = TwoWheels.unused(answers);
    return new Made(
        study,
        unused.isEmpty()
            ? List.of()
            : List.of(
                "What you answered for "
                    + unused.stream().map(Question::label).collect(Collectors.joining(", "))
                    + " is not used: two wheels have no place for it yet."));
  }
}

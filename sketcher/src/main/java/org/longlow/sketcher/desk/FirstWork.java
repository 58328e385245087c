package org.longlow.sketcher.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.start.AnswerReader;
import org.longlow.constraints.start.Answers;
import org.longlow.constraints.start.FirstMachine;
import org.longlow.constraints.start.Question;
import org.longlow.rider.words.Units;

/** Makes a first machine from answers and puts it on the board. */
public final class FirstWork {

  private final Surface desk;
  private final FileWork files;
  private boolean making;
  private List<Fault> faults = List.of();

  FirstWork(Surface desk, FileWork files) {
    this.desk = desk;
    this.files = files;
  }

  /** Returns whether a first machine is being made. */
  public boolean isMaking() {
    return making;
  }

  /** Returns what was wrong with the answers given last. */
  public List<Fault> faults() {
    return faults;
  }

  /** Makes a machine; what cannot be made is told by {@link #faults}. */
  public void make(Map<Question, String> answers) {
    make(
        answers,
        FirstMachine::of,
        yours -> "A first machine. Yours to decide:\n" + String.join("\n", yours));
  }

  /** Puts two wheels on an empty card. */
  public void wheels(Map<Question, String> answers) {
    make(
        answers,
        FirstMachine::wheels,
        yours ->
            String.join(" ", yours)
                + (yours.isEmpty() ? "" : "\n")
                + "Two wheels on the ground. Add parts from the drawer (A); what a machine still lacks to"
                + " be ridden is told among the findings.");
  }

  /** Makes a machine from answers, under a name, shown in some units. */
  private interface Maker {
    FirstMachine.Outcome of(Answers answers, Optional<String> name, Units units);
  }

  private void make(
      Map<Question, String> answers, Maker maker, Function<List<String>, String> words) {
    making = true;
    faults = List.of();
    Units units = files.unitsShownLast();
    desk.queue(
        () -> {
          AnswerReader.Reading reading = AnswerReader.read(answers);
          FirstMachine.Outcome outcome =
              reading.faults().isEmpty()
                  ? maker.of(reading.answers(), Optional.empty(), units)
                  : new FirstMachine.Refused(reading.faults());
          return () -> made(outcome, words);
        });
  }

  private void made(FirstMachine.Outcome outcome, Function<List<String>, String> words) {
    making = false;
    if (outcome instanceof FirstMachine.Refused refused) {
      faults = refused.faults();
    } else if (outcome instanceof FirstMachine.Made made) {
      files.openMade(made.layout());
      desk.say(Notice.Mood.SAID, "first", words.apply(made.yours()));
    }
  }

  /** Whatever was being made will not come. */
  void failed() {
    making = false;
  }
}

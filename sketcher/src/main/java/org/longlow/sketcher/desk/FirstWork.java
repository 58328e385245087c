package org.longlow.sketcher.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.start.AnswerReader;
import org.longlow.constraints.start.FirstMachine;
import org.longlow.constraints.start.Question;
import org.longlow.rider.words.Units;

/** Makes a first machine from answers and puts it on the board. */
final class FirstWork {

  private final Surface desk;
  private final FileWork files;
  private boolean making;
  private List<Fault> faults = List.of();

  FirstWork(Surface desk, FileWork files) {
    this.desk = desk;
    this.files = files;
  }

  boolean isMaking() {
    return making;
  }

  /** Returns what was wrong with the answers given last. */
  List<Fault> faults() {
    return faults;
  }

  /** Makes a machine; what cannot be made is told by {@link #faults}. */
  void make(Map<Question, String> answers, Units units) {
    making = true;
    faults = List.of();
    desk.queue(
        () -> {
          AnswerReader.Reading reading = AnswerReader.read(answers);
          FirstMachine.Outcome outcome =
              reading.faults().isEmpty()
                  ? FirstMachine.of(reading.answers(), Optional.empty())
                  : new FirstMachine.Refused(reading.faults());
          return () -> made(outcome, units);
        });
  }

  private void made(FirstMachine.Outcome outcome, Units units) {
    making = false;
    if (outcome instanceof FirstMachine.Refused refused) {
      faults = refused.faults();
    } else if (outcome instanceof FirstMachine.Made made) {
      files.openMade(made.layout().withUnits(units));
      desk.say(
          Notice.Mood.SAID,
          "first",
          "A first machine. Yours to decide:\n" + String.join("\n", made.yours()));
    }
  }

  /** Whatever was being made will not come. */
  void failed() {
    making = false;
  }
}

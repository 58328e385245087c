package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** First machines of tests, each made once, but where changes to the code are to be noticed. */
final class FirstMachines {

  private static final boolean ANEW = Boolean.getBoolean("longlow.studiesAnew");

  private static final Map<Answers, FirstMachine.Made> MADE = new ConcurrentHashMap<>();

  private FirstMachines() {}

  static FirstMachine.Made made(Answers answers) {
    return ANEW ? anew(answers) : MADE.computeIfAbsent(answers, FirstMachines::anew);
  }

  static FirstMachine.Made anew(Answers answers) {
    FirstMachine.Outcome outcome = FirstMachine.of(answers);
    assertThat(outcome).as(outcome.toString()).isInstanceOf(FirstMachine.Made.class);
    return (FirstMachine.Made) outcome;
  }

  static Answers.Builder say() {
    return new Answers.Builder();
  }
}

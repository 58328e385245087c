package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.start.AnswerReader;
import org.longlow.constraints.start.FirstMachine;
import org.longlow.constraints.start.Question;
import org.longlow.constraints.words.Quoted;
import org.longlow.rider.words.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow new}: a first machine from a handful of answers, or from none. */
@Command(
    name = "new",
    description = {
      "Makes a first machine, whole and solved, from a handful of answers or from none.",
      "Whatever is not answered Longlow chooses."
    })
final class NewCommand implements Callable<Integer> {

  /** It names a file too. */
  private static final String NAME = "[\\p{L}\\p{N}]([\\p{L}\\p{N} _-]{0,58}[\\p{L}\\p{N}_-])?";

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "NAME",
      arity = "0..1",
      description = "What the machine is called; it has a name of its own unless said.")
  private String name;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Where to save its layout; NAME.json unless said.")
  private Path out;

  @Option(
      names = "--wheels-only",
      description =
          "Only two wheels on the ground: wheelbase, tyres, law and who rides as" + " answered.")
  private boolean wheelsOnly;

  @Mixin private UnitsOption units;

  /** One option for each question, as the questions themselves put it. */
  static void addQuestions(CommandSpec spec) {
    for (Question question : Question.values()) {
      spec.addOption(
          OptionSpec.builder("--" + question.word())
              .paramLabel(question.form())
              .type(String.class)
              .description(question.help().replace("%", "%%"))
              .build());
    }
  }

  @Override
  public Integer call() throws IOException {
    Map<Question, String> written = new EnumMap<>(Question.class);
    for (Question question : Question.values()) {
      String answer =
          spec.commandLine().getParseResult().matchedOptionValue("--" + question.word(), null);
      if (answer != null) {
        written.put(question, answer);
      }
    }
    AnswerReader.Reading reading = AnswerReader.read(written);
    if (!reading.faults().isEmpty()) {
      throw refusal(reading.faults());
    }
    if (name != null && !name.matches(NAME)) {
      throw new Refusal(
          "NAME is "
              + Quoted.cut(name)
              + "; give letters, digits, spaces, - and _, at most 60 of them, a letter or digit first and no space last");
    }
    if (out != null) {
      check(out);
    }
    Optional<String> called = Optional.ofNullable(name);
    FirstMachine.Outcome outcome =
        wheelsOnly
            ? FirstMachine.wheels(reading.answers(), called, units.or(Units.MM))
            : FirstMachine.of(reading.answers(), called, units.or(Units.MM));
    if (outcome instanceof FirstMachine.Refused refused) {
      throw refusal(refused.faults());
    }
    FirstMachine.Made made = (FirstMachine.Made) outcome;
    Path file = out == null ? Path.of(made.layout().name() + ".json") : out;
    check(file);
    LayoutWriter.save(made.layout(), file);
    tell(made, file);
    return ExitCodes.of(made.study());
  }

  private static Refusal refusal(List<Fault> faults) {
    return new Refusal(faults.stream().map(fault -> "--" + fault.line()).toList());
  }

  /** What is there stays: it may be the work of weeks. */
  private static void check(Path file) {
    Outputs.file(file);
    if (Files.exists(file)) {
      throw new Refusal("--out is " + file + ", which is there already; give another name");
    }
  }

  private void tell(FirstMachine.Made made, Path file) {
    PrintWriter text = spec.commandLine().getOut();
    text.println(made.layout().title());
    text.println(made.study().summary());
    text.println("saved: " + file);
    text.println();
    if (!made.yours().isEmpty()) {
      text.println("Yours to decide:");
      made.yours().forEach(line -> text.println("  " + line));
      text.println();
    }
    text.println("Next:");
    text.println("  longlow open " + file);
    text.println("  longlow check " + file);
    text.println("  longlow draw " + file + " --out wall.pdf");
    text.println("  longlow templates " + file + " --out sheets");
    text.println();
    text.println("A sketch, not a certificate: local codes and licensed inspection decide.");
    text.flush();
  }
}

package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.longlow.sketcher.app.Figures;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow figure}: one calculation from a JSON object. */
@Command(name = "figure", description = "Answers one calculation, JSON in, JSON out.")
final class FigureCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "KIND", description = "What to work out, such as trail or lean.")
  private String kind;

  @Option(
      names = "--input",
      required = true,
      paramLabel = "FILE|-",
      description = "The JSON object, or - for standard input.")
  private String input;

  @Override
  public Integer call() throws IOException {
    if (!Figures.kinds().contains(kind)) {
      throw new Refusal(
          "figure " + kind + " is not known; allowed are " + String.join(", ", Figures.kinds()));
    }
    Figures.Answer answer = Figures.answer(kind, text());
    if (!answer.faults().isEmpty()) {
      throw new Refusal(answer.faults());
    }
    PrintWriter out = spec.commandLine().getOut();
    out.println(answer.json().stripTrailing());
    out.flush();
    return ExitCodes.PASS;
  }

  private String text() throws IOException {
    if (input.equals("-")) {
      return new String(System.in.readAllBytes(), StandardCharsets.UTF_8);
    }
    try {
      return Files.readString(Path.of(input));
    } catch (NoSuchFileException e) {
      throw new Refusal("there is no file " + input + "; give one, or - for standard input");
    }
  }
}

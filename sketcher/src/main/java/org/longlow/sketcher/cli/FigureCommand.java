package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.concurrent.Callable;
import org.longlow.sketcher.app.FigureAnswers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow figure}: one calculation from a JSON object. */
@Command(name = "figure", description = "Answers one calculation, JSON in, JSON out.")
final class FigureCommand implements Callable<Integer> {

  /**
   * Most bytes read; the longest sound input, a cope of thousands of stations, has a few 100 kB.
   */
  private static final int MOST_BYTES = 4_000_000;

  @Spec private CommandSpec spec;

  /** Names the kinds in the help. */
  static final class Kinds implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return FigureAnswers.kinds().iterator();
    }
  }

  @Parameters(
      paramLabel = "KIND",
      completionCandidates = Kinds.class,
      description = {
        "What to work out: ${COMPLETION-CANDIDATES}.",
        "Without --input it says what it takes; units are the ends of the names."
      })
  private String kind;

  @Option(
      names = "--input",
      paramLabel = "FILE|-",
      description = "The JSON object, or - for standard input.")
  private String input;

  @Override
  public Integer call() throws IOException {
    if (!FigureAnswers.kinds().contains(kind)) {
      throw new Refusal(
          "figure "
              + kind
              + " is not known; allowed are "
              + String.join(", ", FigureAnswers.kinds()));
    }
    if (input == null) {
      throw new Refusal(
          "--input is missing: figure "
              + kind
              + " takes "
              + FigureAnswers.takes(kind)
              + " from a file, or from standard input where it is -");
    }
    FigureAnswers.Answer answer = FigureAnswers.answer(kind, text());
    if (!answer.faults().isEmpty()) {
      throw new Refusal(answer.faults());
    }
    PrintWriter out = spec.commandLine().getOut();
    out.println(answer.json().stripTrailing());
    out.flush();
    return ExitCodes.PASS;
  }

  /** Bounded, because a device or a pipe may never end. */
  private String text() throws IOException {
    byte[] bytes;
    // not to be closed where it is the program's own
    try (InputStream file = input.equals("-") ? null : Files.newInputStream(Path.of(input))) {
      bytes = (file == null ? System.in : file).readNBytes(MOST_BYTES + 1);
    } catch (NoSuchFileException e) {
      throw new Refusal("there is no file " + input + "; give one, or - for standard input");
    } catch (IOException | InvalidPathException e) {
      throw new Refusal("--input is " + input + ", which cannot be read; give a file");
    }
    if (bytes.length == 0) {
      throw new Refusal(
          "--input is "
              + input
              + ", where there is nothing to read; figure "
              + kind
              + " takes "
              + FigureAnswers.takes(kind));
    }
    if (bytes.length > MOST_BYTES) {
      throw new Refusal(
          "--input is longer than "
              + MOST_BYTES
              + " bytes, far beyond any figure; look whether it is the right file");
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new Refusal("--input is " + input + ", which is not UTF-8 text; save it as UTF-8");
    }
  }
}

package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.demo.Demos;

/** What is said on a terminal, a pipe that is full, or one that nobody reads. */
class OutputTest {

  @TempDir Path folder;

  /** A pipe that breaks after some characters. */
  private static final class Broken extends Writer {
    private int left;

    Broken(int left) {
      this.left = left;
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
      left -= length;
      if (left < 0) {
        throw new IOException("No space left on device");
      }
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }

  @Test
  void outputThatCannotBeWrittenIsNoSuccess() throws IOException {
    Path file = Files.writeString(folder.resolve("m.json"), Demos.text("dunlin"));
    for (int room : new int[] {0, 100}) {
      for (String[] args :
          new String[][] {
            {"check", file.toString(), "--json"}, {"check", file.toString()}, {"--help"}
          }) {
        StringWriter err = new StringWriter();
        int code = Longlow.run(new PrintWriter(new Broken(room)), new PrintWriter(err), args);
        assertThat(code).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(err.toString())
            .startsWith("longlow: the output could not be written")
            .hasLineCount(1);
      }
    }
  }

  /** A layout may have any ending, and a link may have another name. */
  @Test
  void theLayoutThatIsReadIsNotDrawnOver() throws IOException {
    for (String[] as : new String[][] {{"draw", "m.svg"}, {"report", "m.html"}}) {
      Path file = Files.writeString(folder.resolve(as[1]), Demos.text("dunlin"));
      Path same = folder.resolve(".").resolve(as[1]);
      Ran ran = Ran.of(as[0], file, "--out", same);
      assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
      assertThat(ran.err()).contains("which is the layout itself; give another name");
      assertThat(file).hasContent(Demos.text("dunlin"));
    }
  }

  @Test
  void anErrorOfTheMachineEndsInOneLineAndCodeOne() {
    StringWriter err = new StringWriter();
    Writer none =
        new Writer() {
          @Override
          public void write(char[] text, int from, int length) {
            throw new OutOfMemoryError("Java heap\nspace");
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    int code = Longlow.run(new PrintWriter(none), new PrintWriter(err), "--version");
    assertThat(code).isEqualTo(ExitCodes.INTERNAL);
    assertThat(err.toString())
        .startsWith("longlow: internal error: java.lang.OutOfMemoryError: Java heap\\u000aspace")
        .hasLineCount(1);
  }

  @Test
  void whatNotesSayToATerminalIsShownAndNotDone() throws IOException {
    String text =
        Demos.text("dunlin")
            .replaceFirst("\"title\": \"", "\"title\": \"\\\\u001b[31m\\\\u202e")
            .replaceFirst("\"notes\": \\[", "\"notes\": [\"a\\\\rb\\\\u009bc\", ");
    Path file = Files.writeString(folder.resolve("m.json"), text);
    for (String[] args :
        new String[][] {
          {"check", file.toString()},
          {"check", file.toString(), "--json"},
          {"compare", file.toString(), file.toString()},
          {"check", folder + "/no\u001b[31m\nfile"},
          {"figure", "trail\u001b", "--input", "-"},
          {"\u001b]0;x\u0007"}
        }) {
      String said = Ran.of((Object[]) args).said();
      assertThat(said.chars().filter(c -> c != '\n' && c != '\r'))
          .noneMatch(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT);
      assertThat(said.replace(System.lineSeparator(), "")).doesNotContain("\r");
    }
  }
}

package org.longlow.sketcher;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.longlow.demo.Demos;
import org.longlow.sketcher.cli.ExitCodes;
import org.longlow.sketcher.cli.Longlow;

/**
 * Does what people do with a machine, in a passing folder, so that all classes for it are loaded;
 * the launcher runs it once to make later starts quick.
 */
final class WarmUp {

  /** What the launcher says instead of a command. */
  static final String WORD = "warm-up";

  private WarmUp() {}

  /** Returns 0 if all of it went as it should. */
  static int run() throws IOException {
    Path folder = Files.createTempDirectory("longlow-warm-up");
    try {
      String machine = Demos.names().get(0);
      String file = folder.resolve(machine + ".json").toString();
      List<List<String>> commands = new ArrayList<>();
      commands.add(List.of("--help"));
      commands.add(List.of("demo", machine, "--out", folder.toString()));
      commands.add(List.of("check", file, "--json"));
      commands.add(List.of("fit", file, "--people", "2", "--no-adjust"));
      commands.add(List.of("new", "--out", folder.resolve("first.json").toString()));
      for (String name : Demos.names()) {
        commands.add(List.of("check", Demos.copy(name, folder).toString()));
      }
      return commands.stream()
          .mapToInt(WarmUp::code)
          .filter(code -> code != ExitCodes.FINDING_FAILS)
          .max()
          .orElse(ExitCodes.PASS);
    } finally {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }

  private static int code(List<String> words) {
    return Longlow.run(
        new PrintWriter(Writer.nullWriter()),
        new PrintWriter(Writer.nullWriter()),
        words.toArray(String[]::new));
  }
}

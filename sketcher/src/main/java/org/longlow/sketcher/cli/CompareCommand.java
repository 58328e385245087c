package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.app.Comparison;
import org.longlow.sketcher.app.Difference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow compare}: all that changed. */
@Command(
    name = "compare",
    description = {
      "Tells all that changed from A to B: what the file says, what moved, loads, verdicts.",
      "Ends with the code of B's findings."
    })
final class CompareCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "A", description = "The layout file before.")
  private Path before;

  @Parameters(index = "1", paramLabel = "B", description = "The layout file after.")
  private Path after;

  @Mixin private UnitsOption units;

  @Override
  public Integer call() {
    Study a = Loading.study(Loading.layout(before), before);
    Study b = Loading.study(Loading.layout(after), after);
    Comparison comparison = Comparison.of(a, b, units.of(b.layout()));
    PrintWriter out = spec.commandLine().getOut();
    table("said otherwise", comparison.said(), out);
    table("came out otherwise", comparison.came(), out);
    comparison.verdicts().forEach(v -> out.println(v.line(units.of(b.layout()))));
    if (comparison.figures() > 0) {
      out.println(comparison.figures() + " more findings have another figure, same verdict");
    }
    if (comparison.isEmpty()) {
      out.println("nothing changed");
    }
    out.println(b.summary());
    out.flush();
    return ExitCodes.of(b);
  }

  private static void table(String what, List<Difference> changes, PrintWriter out) {
    if (changes.isEmpty()) {
      return;
    }
    TextTable table =
        new TextTable(
            List.of(
                TextTable.Column.of(what, 20),
                TextTable.Column.of("name", 30),
                TextTable.Column.of("field", 24),
                TextTable.Column.of("before", 36),
                TextTable.Column.of("after", 36)));
    changes.forEach(c -> table.row(List.of(c.kind(), c.name(), c.what(), c.before(), c.after())));
    table.print(out);
    out.println();
  }
}

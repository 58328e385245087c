package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.app.Comparison;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow compare}: what moved, what changed verdict. */
@Command(name = "compare", description = "Tells what moved and what changed verdict from A to B.")
final class CompareCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "A", description = "The layout file before.")
  private Path before;

  @Parameters(index = "1", paramLabel = "B", description = "The layout file after.")
  private Path after;

  @Override
  public Integer call() {
    Study a = Loading.study(Loading.layout(before));
    Study b = Loading.study(Loading.layout(after));
    List<String> lines = Comparison.of(a, b).lines();
    PrintWriter out = spec.commandLine().getOut();
    lines.forEach(out::println);
    if (lines.isEmpty()) {
      out.println("nothing moved and no verdict changed");
    }
    out.println(b.summary());
    out.flush();
    return ExitCodes.of(b);
  }
}

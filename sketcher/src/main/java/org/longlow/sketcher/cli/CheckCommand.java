package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.longlow.constraints.json.StudyJson;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow check}: every finding about a layout. */
@Command(name = "check", description = "Prints every finding about a layout.")
final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The layout file.")
  private Path file;

  @Option(names = "--json", description = "Print one JSON object instead of a table.")
  private boolean json;

  @Mixin private UnitsOption units;

  @Override
  public Integer call() {
    Layout layout = units.on(Loading.layout(file, spec.commandLine().getErr()));
    Study study = Loading.study(layout, file);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.print(StudyJson.of(study));
    } else {
      FindingsTable.print(study.findings(), layout.units(), out);
      out.println(study.summary());
    }
    out.flush();
    return ExitCodes.of(study);
  }
}

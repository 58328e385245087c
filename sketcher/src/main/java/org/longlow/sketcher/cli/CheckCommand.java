package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.longlow.constraints.json.StudyJson;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.app.MachineState;
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

  @Option(
      names = "--all",
      description = "Give each finding its own row and sentence, those that are alike too.")
  private boolean all;

  @Mixin private VariantOption variant;

  @Option(
      names = "--mends",
      paramLabel = "N",
      description = {
        "With --as-built: for how many findings that fail now and did not as planned the least",
        "change that mends each is looked for, some seconds each; 1 unless said."
      })
  private Integer mends;

  @Mixin private UnitsOption units;

  @Override
  public Integer call() {
    Layout layout = units.on(Loading.layout(file, spec.commandLine().getErr()));
    MachineState state = variant.of(layout, file);
    if (mends != null && (mends < 0 || state.built().isEmpty())) {
      throw new Refusal(
          mends < 0
              ? "--mends is " + mends + "; give 0 or more"
              : "--mends looks at what was built; give --as-built with it, or leave it out");
    }
    new Unused().see(json && mends != null, "--mends").refuse("--json has no mends");
    Study study = state.study();
    Loading.sayWhatGaveWay(study.placed(), file, spec.commandLine().getErr());
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.print(StudyJson.of(study));
    } else {
      FindingsTable.print(study.findings(), all, layout.units(), out);
      state
          .built()
          .ifPresent(
              built -> {
                BuiltText.table(built, layout.units(), out);
                BuiltText.failures(built, mends == null ? 1 : mends, layout.units(), out);
              });
      out.println(study.summary());
    }
    out.flush();
    return ExitCodes.of(study);
  }
}

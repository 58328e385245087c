package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.app.MachineState;
import org.longlow.sketcher.app.Making;
import org.longlow.sketcher.picture.PictureOptions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow report}: one self-contained page. */
@Command(name = "report", description = "Writes one self-contained page about a layout.")
final class ReportCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The layout file.")
  private Path file;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "X.html",
      description = "Where to write it.")
  private Path out;

  @Mixin private ViewOption view;

  @Mixin private VariantOption variant;

  @Mixin private UnitsOption units;

  @Override
  public Integer call() throws IOException {
    if (!Outputs.ends(out, ".html")) {
      throw new Refusal("--out is " + out + "; it must end in .html");
    }
    Outputs.file(out, file);
    MachineState state = variant.of(units.on(Loading.layout(file)), file);
    Study study = state.study();
    PictureOptions first = view.of(study);
    Optional<Path> kept = Making.report(state, first, out);
    PrintWriter text = spec.commandLine().getOut();
    text.println("written: " + out);
    kept.ifPresent(k -> text.println(Outputs.kept(k)));
    text.flush();
    return ExitCodes.of(study);
  }
}

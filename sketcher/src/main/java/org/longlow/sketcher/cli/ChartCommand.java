package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.app.Making;
import org.longlow.sketcher.picture.BalanceChart;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow chart}: how a machine balances by itself over its speed. */
@Command(
    name = "chart",
    description = {
      "Draws how motions that nobody steers grow or die out over speed.",
      "Tells what small changes of rake, trail and masses do to that."
    })
final class ChartCommand implements Callable<Integer> {

  private static final int WIDEST = 60;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The layout file.")
  private Path file;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "X.svg|X.pdf",
      description = "Where to draw it; the ending says how.")
  private Path out;

  @Mixin private VariantOption variant;

  @Mixin private UnitsOption units;

  @Override
  public Integer call() throws IOException {
    SheetOption.drawing(out);
    Outputs.file(out, file);
    Study study = variant.of(units.on(Loading.layout(file)), file).study();
    BalanceChart chart =
        BalanceChart.of(study)
            .orElseThrow(() -> new Refusal(file + ": not drawn: " + BalanceChart.NONE));
    PrintWriter text = spec.commandLine().getOut();
    Optional<Path> kept = Making.chart(study, chart, out);
    TextTable table =
        new TextTable(
            BalanceChart.HEADINGS.stream().map(h -> TextTable.Column.of(h, WIDEST)).toList());
    for (List<String> row : chart.rows()) {
      table.row(row);
    }
    table.print(text);
    text.println(BalanceChart.CAPTION);
    text.println("drawn " + chart.who() + ": " + out);
    kept.ifPresent(k -> text.println(Outputs.kept(k)));
    text.flush();
    return ExitCodes.of(study);
  }
}

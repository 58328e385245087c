package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.app.InTheWay;
import org.longlow.sketcher.app.ListSet;
import org.longlow.sketcher.app.StepWatch;
import org.longlow.sketcher.shop.Shop;
import org.longlow.sketcher.shop.ShopTable;
import org.longlow.svg.page.Paper;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow list}: what to buy and how to cut it. */
@Command(
    name = "list",
    description =
        "Makes lists for the shop: what to buy, parts and materials, tube and sheet with cutting"
            + " plans, foam, fasteners, lamps; and a page to fill in at two scales.")
final class ListCommand implements Callable<Integer> {

  /** Widest a column gets on a terminal. */
  private static final int WIDEST = 44;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The layout file.")
  private Path file;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "The folder to put lists (CSV) and plans (PDF, SVG) in.")
  private Path out;

  @Option(
      names = "--paper",
      defaultValue = "a4",
      converter = PaperOption.class,
      description = "Paper of the plans: a4, letter or larger; ${DEFAULT-VALUE} unless said.")
  private Paper paper;

  @Mixin private UnitsOption units;

  @Mixin private VariantOption variant;

  @Override
  public Integer call() throws IOException {
    Outputs.folder(out);
    ListSet.refusal(paper)
        .ifPresent(
            why -> {
              throw new Refusal("--paper: " + why);
            });
    Study study = variant.of(units.on(Loading.layout(file)), file).study();
    Shop shop = Shop.of(study);
    List<String> remarks =
        ListSet.of(shop, paper)
            .write(out, InTheWay.Consent.GIVEN, StepWatch.NONE)
            .orElseThrow(() -> new IllegalStateException("nobody stopped it"));
    PrintWriter text = spec.commandLine().getOut();
    print(study.layout(), shop, text);
    text.println("written: " + out);
    remarks.forEach(text::println);
    text.flush();
    return ExitCodes.of(study);
  }

  private static void print(Layout layout, Shop shop, PrintWriter text) {
    ShopTable list = shop.basket().table().withoutEmpty();
    List<String> headings = list.headings(layout.currency());
    List<TextTable.Column> columns =
        IntStream.range(0, headings.size())
            .mapToObj(
                i ->
                    new TextTable.Column(
                        headings.get(i),
                        WIDEST,
                        list.columns().get(i).sort() != ShopTable.Sort.WORDS))
            .toList();
    TextTable table = new TextTable(columns);
    list.rows().forEach(row -> table.row(list.said(row, layout.units())));
    table.print(text);
    String sum = shop.basket().sum(layout.currency());
    if (!sum.isEmpty()) {
      text.println(sum);
    }
  }
}

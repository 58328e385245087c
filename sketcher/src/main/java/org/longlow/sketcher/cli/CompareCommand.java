package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.longlow.constraints.document.Varied;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Counted;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.app.Comparison;
import org.longlow.sketcher.app.ComparisonSheet;
import org.longlow.sketcher.app.Difference;
import org.longlow.sketcher.app.MachineState;
import org.longlow.sketcher.app.Making;
import org.longlow.svg.page.Paper;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow compare}: all that changed. */
@Command(
    name = "compare",
    description = {
      "Tells all that changed from A to B: what the file says, what moved, loads, verdicts.",
      "With --variant or --as-built and no B, from A as planned to that state of it.",
      "Ends with the code of B's findings."
    })
final class CompareCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "A", description = "The layout file before.")
  private Path before;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "B",
      description = "The layout file after; A itself unless said.")
  private Path after;

  @Mixin private VariantOption variant;

  @Option(
      names = "--out",
      paramLabel = "X.svg|X.pdf",
      description = "Draws both over each other, A light and B dark; the ending says how.")
  private Path out;

  @Option(
      names = "--paper",
      defaultValue = "a3",
      converter = PaperOption.class,
      description = "a4, letter, a3, tabloid, a0 or WxH in mm; ${DEFAULT-VALUE} unless said.")
  private Paper paper;

  @Mixin private SheetOption onSheet;

  @Mixin private UnitsOption units;

  @Override
  public Integer call() throws IOException {
    if (after == null && !variant.isAsked()) {
      throw new Refusal("B is missing: name the layout file after, or --variant NAME, --as-built");
    }
    looksAtOut();
    boolean one = after == null;
    Layout first = Loading.layout(before);
    Layout second = one ? first : Loading.layout(after);
    Units shown = units.of(second);
    Layout planned = variant.isAsked() ? Varied.planned(first) : first;
    Study a = Loading.study(planned.withUnits(shown), before);
    MachineState state = variant.of(second.withUnits(shown), one ? before : after);
    Study b = state.study();
    Comparison all = Comparison.of(a, b, shown);
    Comparison comparison = variant.isAsked() ? all.withoutTitle() : all;
    PrintWriter text = spec.commandLine().getOut();
    state.built().ifPresent(built -> BuiltText.table(built, shown, text));
    table("said otherwise", comparison.said(), text);
    table("came out otherwise", comparison.came(), text);
    comparison.verdicts().forEach(v -> text.println(v.line(shown)));
    if (comparison.figures() > 0) {
      text.println(
          Counted.of(comparison.figures(), "more finding")
              + (comparison.figures() == 1 ? " has" : " have")
              + " another figure, same verdict");
    }
    if (comparison.isEmpty()) {
      text.println("nothing changed");
    }
    text.println(b.summary());
    if (out != null) {
      draw(a, b, comparison, text);
    }
    text.flush();
    return ExitCodes.of(b);
  }

  private void looksAtOut() throws IOException {
    if (out == null) {
      return;
    }
    SheetOption.drawing(out);
    if (paper.roll()) {
      throw new Refusal(
          "--paper is a roll, which is for templates; give a size such as 1200x600 instead");
    }
    Outputs.file(out, before);
    if (after != null) {
      Outputs.file(out, after);
    }
  }

  private void draw(Study a, Study b, Comparison comparison, PrintWriter text) throws IOException {
    try {
      Making.Drawn drawn =
          ComparisonSheet.write(
              a, b, names(), comparison, onSheet.scale(), out, paper, onSheet.issued());
      text.println("drawn at " + drawn.scale() + ", light as before, dark as after: " + out);
      drawn.kept().ifPresent(k -> text.println(Outputs.kept(k)));
    } catch (OutOfRange e) {
      throw onSheet.refused(e);
    }
  }

  private List<String> names() {
    return variant.isAsked()
        ? List.of("as planned", variant.name())
        : List.of(before.getFileName().toString(), after.getFileName().toString());
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

package org.longlow.sketcher.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.svg.page.Scale;
import picocli.CommandLine.Option;

/** How large a drawing is, and the date on its sheet. */
final class SheetOption {

  @Option(
      names = "--scale",
      paramLabel = "1:N",
      converter = ScaleOption.class,
      description = "The scale; the largest usual one that fits on the paper unless said.")
  private Scale scale;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      converter = DateOption.class,
      description = "Date of issue on the sheet; today unless said.")
  private LocalDate date;

  Optional<Scale> scale() {
    return Optional.ofNullable(scale);
  }

  String issued() {
    return (date == null ? LocalDate.now() : date).toString();
  }

  /** Returns why what was asked does not fit on the paper. */
  Refusal refused(OutOfRange e) {
    return new Refusal((scale == null ? "--paper: " : "--scale: ") + e.getMessage());
  }

  /** Refuses a file that is no drawing by its ending. */
  static void drawing(Path out) {
    if (!Outputs.ends(out, ".svg") && !Outputs.ends(out, ".pdf")) {
      throw new Refusal("--out is " + out + "; it must end in .svg or .pdf");
    }
  }
}

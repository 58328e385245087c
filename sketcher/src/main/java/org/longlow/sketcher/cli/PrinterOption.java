package org.longlow.sketcher.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.sketcher.desk.Printers;
import org.longlow.svg.page.PrintCorrection;
import picocli.CommandLine.Option;

/** For which printer sheets are made, and what it was measured to print. */
final class PrinterOption {

  @Option(
      names = "--printer",
      paramLabel = "NAME",
      description = {
        "Corrects for the printer that was measured under this name, here or in the window; with",
        "--measured-across and --measured-along keeps what is measured under it."
      })
  private String printer;

  @Option(
      names = "--measured-across",
      paramLabel = "MM",
      converter = MillimetreOption.class,
      description = {
        "What the bar of 100 mm, or of 200 mm, measures across the paper, held upright, on a print",
        "that was not corrected, in mm or as \"7.86 in\"; corrects the next."
      })
  private Double across;

  @Option(
      names = "--measured-along",
      paramLabel = "MM",
      converter = MillimetreOption.class,
      description = "Likewise, along the paper.")
  private Double along;

  private boolean measures() {
    return across != null || along != null;
  }

  /** Whether what was measured is not kept under the name of a printer. */
  boolean forgets() {
    return measures() && printer == null;
  }

  /**
   * Returns the correction.
   *
   * @param known the printers that were measured
   * @throws Refusal if the printer is not known or cannot be corrected; all faults at once
   */
  PrintCorrection correction(Printers known) {
    List<String> faults = new ArrayList<>();
    fault("--measured-across", across).ifPresent(faults::add);
    fault("--measured-along", along).ifPresent(faults::add);
    Optional.ofNullable(printer)
        .flatMap(Printers::refusal)
        .ifPresent(why -> faults.add("--printer is '" + printer + "'; " + why));
    if (faults.isEmpty() && printer != null && !measures() && known.of(printer).isEmpty()) {
      faults.add(
          "--printer is '"
              + printer
              + "', which was not measured; "
              + (known.byName().isEmpty()
                  ? "none was"
                  : "those measured are " + String.join(", ", known.byName().keySet()))
              + ": print the page of --calibration, and give what its bars measure with"
              + " --measured-across and --measured-along");
    }
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    if (!measures()) {
      return printer == null ? PrintCorrection.NONE : known.of(printer).orElseThrow();
    }
    // a side that was not measured stays as it was
    PrintCorrection before =
        printer == null
            ? PrintCorrection.NONE
            : known.of(printer).orElse(PrintCorrection.NONE.of(printer));
    return new PrintCorrection(
        before.printer(),
        across == null ? before.sx() : PrintCorrection.measured(across, across).sx(),
        along == null ? before.sy() : PrintCorrection.measured(along, along).sy());
  }

  private static Optional<String> fault(String option, Double mm) {
    return Optional.ofNullable(mm)
        .flatMap(PrintCorrection::refusal)
        .map(why -> option + " is " + why);
  }

  /** Returns the correction for this user, and keeps it if the printer was measured just now. */
  PrintCorrection ofThisUser() throws IOException {
    return of(Printers.homeOfThisUser());
  }

  /** Returns the correction, with what is kept in a folder. */
  PrintCorrection of(Path home) throws IOException {
    Printers known = printer == null ? Printers.NONE : Printers.at(home);
    Optional<Path> spoilt = Printers.spoilt(home);
    if (printer != null && !measures() && known.of(printer).isEmpty() && spoilt.isPresent()) {
      throw new Refusal(
          List.of(
              "--printer is '"
                  + printer
                  + "', but "
                  + spoilt.get()
                  + ", where printers are kept, cannot be read to its end; mend it, or measure the"
                  + " printer again with --measured-across and --measured-along"));
    }
    PrintCorrection correction = correction(known);
    if (printer != null && measures()) {
      Printers.keep(home, correction);
    }
    return correction;
  }
}

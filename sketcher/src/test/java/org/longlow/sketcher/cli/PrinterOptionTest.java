package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.sketcher.desk.Printers;
import org.longlow.svg.page.PrintCorrection;
import picocli.CommandLine;

/** Printers on the command line. */
class PrinterOptionTest {

  private final Printers known = Printers.NONE.with(new PrintCorrection("attic", 1.004, 0.998));

  private static PrinterOption given(String... words) {
    PrinterOption option = new PrinterOption();
    CommandLine.populateCommand(option, words);
    return option;
  }

  @Test
  void aPrinterIsCorrectedByItsName() {
    assertThat(given("--printer", "attic").correction(known))
        .isEqualTo(new PrintCorrection("attic", 1.004, 0.998));
    assertThat(given().correction(known)).isEqualTo(PrintCorrection.NONE);
  }

  @Test
  void whatIsMeasuredAgainTakesThePlaceOfThatSideAlone() {
    PrintCorrection c = given("--printer", "attic", "--measured-along", "199 mm").correction(known);
    assertThat(c.sx()).isEqualTo(1.004);
    assertThat(c.sy()).isEqualTo(200 / 199.0, within(1e-12));
    assertThat(c.printer()).isEqualTo("attic");
    assertThat(given("--measured-across", "99").correction(known))
        .isEqualTo(new PrintCorrection("", 100 / 99.0, 1));
    assertThat(given("--measured-across", "7.9 in").correction(known))
        .isEqualTo(new PrintCorrection("", 200 / (7.9 * 25.4), 1));
  }

  @Test
  void anUnknownPrinterIsRefusedWithThoseThatAreKnown() {
    assertThatThrownBy(() -> given("--printer", "Attic").correction(known))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("--printer is 'Attic', which was not measured")
        .hasMessageContaining("those measured are attic");
    assertThatThrownBy(() -> given("--printer", "x").correction(Printers.NONE))
        .hasMessageContaining("none was");
    assertThatThrownBy(() -> given("--printer", "").correction(known))
        .hasMessageContaining("needs a name");
  }

  @Test
  void allFaultsAreToldAtOnce() {
    assertThatThrownBy(
            () ->
                given("--printer", " ", "--measured-across", "180", "--measured-along", "120")
                    .correction(known))
        .hasMessageContaining("--measured-across is 180.0 mm; a bar of 200 mm")
        .hasMessageContaining("--measured-along is 120.0 mm; a bar of 100 mm")
        .hasMessageContaining("--printer is ' '");
  }

  @Test
  void aSpoiltFileIsNamedWhereAPrinterIsNotFoundInIt(@TempDir Path home) throws Exception {
    Path file =
        Files.writeString(
            home.resolve("printers.properties"), "attic.across=1.004\nattic.along=0.998\nx=1\n");
    assertThat(given("--printer", "attic").of(home).sx()).isEqualTo(1.004);
    assertThatThrownBy(() -> given("--printer", "work").of(home))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("'work'")
        .hasMessageContaining(file.toString());
  }
}

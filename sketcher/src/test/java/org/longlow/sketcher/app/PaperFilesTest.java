package org.longlow.sketcher.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.desk.Wren;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.Views;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.PrintCorrection;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.write.SvgWriter;

/**
 * What is shown of paper is what is written; what is there is asked about; what is stopped is not.
 */
class PaperFilesTest {

  private static final Study STUDY = Study.of(Wren.layout());
  private static final TemplateSettings A4 =
      TemplateSettings.on(Paper.A4).withCorrection(new PrintCorrection("attic", 1.004, 0.998));
  private static final TemplateSet ALL =
      TemplateSet.of(STUDY, Set.of(), A4, StepWatch.NONE).orElseThrow();
  private static final InTheWay.Consent NONE = there -> false;

  @TempDir Path folder;

  private static Map<String, String> contents(Path folder) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        all.put(file.getFileName().toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
      }
    }
    return all;
  }

  private static String part() {
    return ALL.templates().stream()
        .filter(t -> t.sheets().size() > 1)
        .map(t -> t.drawing().part())
        .filter(
            p -> ALL.templates().stream().filter(t -> t.drawing().part().equals(p)).count() == 1)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everySheetShownIsASheetWritten() throws IOException {
    Ready ready = new Ready.Templates(ALL);
    List<String> made = ready.write(folder, NONE, StepWatch.NONE).orElseThrow();
    Map<String, String> files = contents(folder);
    List<Page> left = new ArrayList<>(ready.pages());
    int printed = 0;
    for (Map.Entry<String, String> file : files.entrySet()) {
      if (file.getKey().endsWith(".pdf")) {
        try (PDDocument pdf = Loader.loadPDF(folder.resolve(file.getKey()).toFile())) {
          printed += pdf.getNumberOfPages();
        }
        continue;
      }
      assertThat(left)
          .as(file.getKey())
          .anySatisfy(page -> assertThat(file.getValue()).startsWith(svg(page).strip()));
      left.removeIf(page -> file.getValue().startsWith(svg(page).strip()));
    }
    assertThat(left).as("sheets shown and not written").isEmpty();
    assertThat(printed).isEqualTo(ready.pages().size());
    assertThat(files.keySet().stream().filter(n -> n.endsWith(".svg")).count()).isEqualTo(printed);
    assertThat(made.get(0)).contains(" on " + printed + " sheets");
    assertThat(ready.words()).contains(printed + " sheets of A4").contains("Corrected for attic");
    assertThat(ready.places(folder))
        .extracting(p -> p.getFileName().toString())
        .containsExactlyInAnyOrderElementsOf(files.keySet());
  }

  private static String svg(Page page) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      SvgWriter.write(page, Palette.CARD, out);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return out.toString(StandardCharsets.ISO_8859_1);
  }

  @Test
  void somePartsOfAllAreThoseAskedForAlone() throws IOException {
    Set<String> some = Set.of(part());
    TemplateSet alone = TemplateSet.of(STUDY, some, A4, StepWatch.NONE).orElseThrow();
    assertThat(ALL.only(some).bundles().stream().map(TemplateSet.Bundle::stem))
        .containsExactlyElementsOf(alone.bundles().stream().map(TemplateSet.Bundle::stem).toList())
        .isNotEmpty();
    assertThat(ALL.only(some).pages().stream().map(PaperFilesTest::svg))
        .containsExactlyElementsOf(alone.pages().stream().map(PaperFilesTest::svg).toList());
    assertThat(ALL.paperOfParts().get(part()).sheets()).isEqualTo(alone.pages().size());
    int shared =
        ALL.bundles().stream()
            .filter(TemplateSet.Bundle::isShared)
            .mapToInt(b -> b.sheets().size())
            .sum();
    assertThat(ALL.paperOfParts().values().stream().mapToInt(PartPaper::sheets).sum() + shared)
        .isEqualTo(ALL.pages().size());
  }

  @Test
  void whatIsGivenUpLeavesNotEvenAFolder() throws IOException {
    Path new1 = folder.resolve("a/b");
    int last = ALL.pages().size() - 1;
    assertThat(new Ready.Templates(ALL).write(new1, NONE, (what, done, of) -> done < last))
        .isEmpty();
    assertThat(folder).isEmptyDirectory();
    Path there = Files.writeString(folder.resolve("mine.txt"), "mine");
    assertThat(new Ready.Templates(ALL).write(folder, NONE, (what, done, of) -> done < 2))
        .isEmpty();
    Ready drawing =
        Ready.Drawing.of(
            STUDY,
            PictureOptions.PLAIN,
            Views.SIDE,
            Optional.empty(),
            Paper.A3,
            "2026-01-01",
            true);
    assertThat(drawing.write(folder, NONE, (what, done, of) -> false)).isEmpty();
    assertThat(contents(folder)).containsOnlyKeys(there.getFileName().toString());
  }

  @Test
  void nothingIsReplacedWithoutConsentAndAllOfItIsNamed() throws IOException {
    Ready ready = new Ready.Templates(ALL.only(Set.of(part())));
    ready.write(folder, NONE, StepWatch.NONE);
    List<Path> places = ready.places(folder);
    Path changed = places.get(1);
    Files.writeString(changed, Files.readString(changed) + "<!-- drill here -->");
    Map<String, String> before = contents(folder);

    InTheWay.NotAgreed asked =
        catchThrowableOfType(
            InTheWay.NotAgreed.class, () -> ready.write(folder, NONE, StepWatch.NONE));
    assertThat(asked.there().others()).containsExactly(changed);
    assertThat(asked.there().ours())
        .containsExactlyInAnyOrderElementsOf(
            places.stream().filter(p -> !p.equals(changed)).toList());
    assertThat(contents(folder))
        .as("all as it was, no mark of an unfinished set")
        .isEqualTo(before);

    List<String> made = ready.write(folder, InTheWay.Consent.GIVEN, StepWatch.NONE).orElseThrow();
    assertThat(made).anyMatch(line -> line.contains("is kept as"));
    assertThat(contents(folder)).hasSize(before.size() + 1);
  }

  /** Sheets that would be taken away count as replaced. */
  @Test
  void sheetsTakenAwayAreAskedAboutToo() throws IOException {
    TemplateSet one = ALL.only(Set.of(part()));
    new Ready.Templates(one).write(folder, NONE, StepWatch.NONE);
    TemplateSet.Template first = one.templates().get(0);
    TemplateSet fewer =
        TemplateSet.of(
            one.layout(),
            one.settings(),
            List.of(new TemplateSet.Template(first.drawing(), first.sheets().subList(0, 1))),
            List.of(),
            one.stems());
    assertThat(first.sheets()).hasSizeGreaterThan(1);
    String gone = fewer.bundles().get(0).stem() + "-a4-02.svg";
    assertThat(new Ready.Templates(fewer).places(folder)).contains(folder.resolve(gone));
    InTheWay.Consent butThat = there -> !there.all().contains(folder.resolve(gone));
    assertThatThrownBy(() -> new Ready.Templates(fewer).write(folder, butThat, StepWatch.NONE))
        .isInstanceOf(InTheWay.NotAgreed.class);
    assertThat(folder.resolve(gone)).exists();
    new Ready.Templates(fewer).write(folder, InTheWay.Consent.GIVEN, StepWatch.NONE);
    assertThat(folder.resolve(gone)).doesNotExist();
  }

  @Test
  void drawingReportAndCalibrationPageAskLikewise() throws IOException {
    for (Ready ready :
        List.of(
            Ready.Drawing.of(
                STUDY,
                PictureOptions.PLAIN,
                Views.SIDE,
                Optional.empty(),
                Paper.A3,
                "2026-01-01",
                false),
            Ready.Report.of(STUDY, PictureOptions.PLAIN),
            Ready.Calibration.of(Paper.A4, PrintCorrection.NONE))) {
      Path file = Files.writeString(ready.places(folder).get(0), "a letter");
      assertThatThrownBy(() -> ready.write(folder, NONE, StepWatch.NONE))
          .isInstanceOf(InTheWay.NotAgreed.class);
      assertThat(file).hasContent("a letter");
      assertThat(ready.write(folder, InTheWay.Consent.GIVEN, StepWatch.NONE).orElseThrow())
          .hasSize(2);
      assertThat(Files.size(file)).isGreaterThan(1000);
    }
  }
}

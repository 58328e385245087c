package org.longlow.svg.write;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Frame;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Samples;
import org.longlow.svg.page.Scale;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.page.TemplateSheets;
import org.longlow.svg.page.TitleBlock;

/** Writes the sample sheets into a folder, to be looked at. */
public final class Gallery {

  private Gallery() {}

  public static void main(String[] args) throws IOException {
    Path out = Path.of(args.length > 0 ? args[0] : "target/gallery");
    all(
        out,
        "cowl-a4",
        TemplateSheets.of("Cowl side, left", Samples.cowl(), TemplateSettings.on(Paper.A4)));
    all(
        out,
        "cowl-letter",
        TemplateSheets.of("Cowl side, left", Samples.cowl(), TemplateSettings.on(Paper.LETTER)));
    all(
        out,
        "cowl-a0",
        TemplateSheets.of("Cowl side, left", Samples.cowl(), TemplateSettings.on(Paper.A0)));
    all(
        out,
        "bracket-a4",
        TemplateSheets.of("Tank bracket", Samples.bracket(), TemplateSettings.on(Paper.A4)));
    Scale scale = Scale.oneTo(10);
    TitleBlock title =
        new TitleBlock(
            "Home shop",
            "LL-0001",
            "2026-03-01",
            "1/1",
            "Long tourer, elevation",
            "laden, rider seated",
            "A. Builder",
            "",
            "elevation",
            "mm",
            List.of());
    all(
        out,
        "frame-a3",
        List.of(Frame.sheet(Paper.A3.landscape(), title, Samples.machine(scale), scale)));
    Scale small = Scale.oneTo(20);
    all(out, "frame-a4", List.of(Frame.sheet(Paper.A4, title, Samples.machine(small), small)));
  }

  private static void all(Path out, String name, List<Page> pages) throws IOException {
    try (OutputStream pdf = Files.newOutputStream(out.resolve(name + ".pdf"))) {
      PdfWriter.write(pages, Palette.CARD, PdfInfo.titled(name), pdf);
    }
    for (int i = 0; i < pages.size(); i++) {
      try (OutputStream svg = Files.newOutputStream(out.resolve(name + "-" + (i + 1) + ".svg"))) {
        SvgWriter.write(pages.get(i), Palette.CARD, svg);
      }
    }
    System.out.println(name + ": " + pages.size());
  }
}

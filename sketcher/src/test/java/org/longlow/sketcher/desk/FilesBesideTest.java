package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.cli.Ran;

/** What a layout is traced from, where it lies, where it goes, and that it may be missing. */
class FilesBesideTest {

  @TempDir Path folder;

  private static String withPhoto() {
    return Wren.text()
        .replaceFirst(
            "(?s)\\}\\s*$",
            ", \"photos\": {\"side view\": {\"file\": \"pictures/side.png\", \"at\": [\"0 mm\","
                + " \"1 m\"], \"scale\": \"1 mm\"}}}");
  }

  private static Path photo(Path file) throws IOException {
    Files.createDirectories(file.getParent());
    ImageIO.write(new BufferedImage(4, 3, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
    return file;
  }

  @Test
  void checkSaysWhichPhotoCannotBeShownAndGoesOn() throws IOException {
    Path file = Files.writeString(folder.resolve("m.json"), withPhoto());
    Ran ran = Ran.of("check", file);
    Ran plain = Ran.of("check", Wren.file(folder));
    assertThat(ran.code()).isEqualTo(plain.code());
    assertThat(ran.err())
        .isEqualTo(
            "longlow: "
                + file
                + ": note: photo side view is not all shown: pictures/side.png does not exist; put"
                + " the photo beside the layout file"
                + System.lineSeparator());
    assertThat(ran.out()).as("findings are the same").isEqualTo(plain.out());

    photo(folder.resolve("pictures/side.png"));
    assertThat(Ran.of("check", file).err()).isEmpty();
    Files.writeString(folder.resolve("pictures/side.png"), "");
    assertThat(Ran.of("check", file).err()).contains("is no PNG or JPEG file");
  }

  @Test
  void photosGoWhereTheLayoutIsSaved() throws IOException {
    Path file = Files.writeString(folder.resolve("m.json"), withPhoto());
    Path photo = photo(folder.resolve("pictures/side.png"));
    LayoutFile.Opening.Opened opened = (LayoutFile.Opening.Opened) LayoutFile.open(file);
    Layout layout = opened.layout();
    Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
    Session.of(layout, opened.file()).saveAs(elsewhere.resolve("n.json"));
    assertThat(elsewhere.resolve("pictures/side.png")).hasSameBinaryContentAs(photo);
  }

  @Test
  void aCopyTakesAFreeNameAndTheSameFileIsNotCopiedTwice() throws IOException {
    Path phone = photo(folder.resolve("phone/side.png"));
    Path machine = Files.createDirectories(folder.resolve("machine"));
    assertThat(BesideLayout.within(machine, phone)).isEmpty();
    assertThat(BesideLayout.copy(phone, machine)).isEqualTo("side.png");
    assertThat(BesideLayout.copy(phone, machine)).isEqualTo("side.png");
    assertThat(BesideLayout.within(machine, machine.resolve("side.png"))).contains("side.png");
    Files.writeString(machine.resolve("side.png"), "changed since");
    assertThat(BesideLayout.copy(phone, machine)).isEqualTo("side-2.png");
    assertThat(machine.resolve("side.png")).hasContent("changed since");
    assertThat(BesideLayout.within(machine, photo(machine.resolve("sub/b.png"))))
        .contains("sub/b.png");
  }
}

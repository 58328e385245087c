package org.longlow.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.module.ModuleDescriptor;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of jars put together. */
class OneModuleTest {

  @TempDir private Path folder;

  @Test
  void servicesThatJarsOfferAreOfferedAndAskedFor() {
    ModuleDescriptor log =
        ModuleDescriptor.newModule("log")
            .uses("a.Log")
            .provides("a.Log", List.of("b.Quiet"))
            .build();
    ModuleDescriptor other = ModuleDescriptor.newModule("other").uses("c.Reader").build();
    assertThat(OneModule.description(Set.of("java.base", "java.desktop"), List.of(log, other)))
        .isEqualToIgnoringWhitespace(
            "open module org.longlow { requires java.desktop; uses a.Log; uses c.Reader;"
                + " provides a.Log with b.Quiet; }");
  }

  @Test
  void twoJarsMayHoldTheSameFileButNotUnlikeOnes() throws IOException {
    Path one = jar("one.jar", Map.of("p/a.txt", "same", "META-INF/LICENSE", "free"));
    Path two = jar("two.jar", Map.of("p/a.txt", "same"));
    Path three = jar("three.jar", Map.of("p/a.txt", "other"));
    OneModule module =
        new OneModule(
            Files.createDirectory(folder.resolve("classes")),
            Files.createDirectory(folder.resolve("notices")));
    assertThatThrownBy(() -> module.of(List.of(one, two, three), List.of()))
        .hasMessageContaining("p/a.txt")
        .hasMessageContaining("three.jar");
    assertThat(folder.resolve("classes/p/a.txt")).hasContent("same");
    assertThat(folder.resolve("notices/one.jar-LICENSE")).hasContent("free");
  }

  private Path jar(String name, Map<String, String> files) throws IOException {
    Path jar = folder.resolve(name);
    try (OutputStream out = Files.newOutputStream(jar);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, String> file : files.entrySet()) {
        zip.putNextEntry(new ZipEntry(file.getKey()));
        zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
      }
    }
    return jar;
  }
}

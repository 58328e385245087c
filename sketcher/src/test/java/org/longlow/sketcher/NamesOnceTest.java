package org.longlow.sketcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No two rooms of the house, in whatever module, have a class of the same name. */
class NamesOnceTest {

  private static final List<String> MODULES =
      List.of("rider-model", "constraints", "demo-layouts", "svg-export", "sketcher");

  @Test
  void aNameMeansOneThing() throws IOException {
    Map<String, Path> seen = new HashMap<>();
    for (String module : MODULES) {
      try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
        for (Path file : (Iterable<Path>) files::iterator) {
          String name = file.getFileName().toString();
          if (name.endsWith(".java") && !name.equals("package-info.java")) {
            Path before = seen.putIfAbsent(name, file);
            assertThat(before).as("%s stands in %s already", file, before).isNull();
          }
        }
      }
    }
    assertThat(seen).containsKeys("Layout.java", "PoseSolver.java", "Window.java");
  }
}

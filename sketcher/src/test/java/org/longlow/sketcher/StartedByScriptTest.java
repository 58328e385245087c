package org.longlow.sketcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The script that starts Longlow, with a Java that only says what it was called with. */
@DisabledOnOs(OS.WINDOWS)
class StartedByScriptTest {
  @TempDir Path root;
  private Path archive;

  @BeforeEach
  void aBuiltTree() throws IOException {
    Path target = Files.createDirectories(root.resolve("sketcher/target/lib")).getParent();
    Files.copy(Path.of("longlow"), root.resolve("sketcher/longlow"));
    Files.createFile(target.resolve("longlow.built"));
    archive = Files.writeString(target.resolve("longlow.jsa"), "whole archive");
    Path java = Files.createDirectories(root.resolve("java/bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\necho \"$@\"\n");
    assertThat(java.toFile().setExecutable(true)).isTrue();
  }

  @Test
  void archiveCutShortIsNotHandedToJavaWhichWouldDieOfIt() throws Exception {
    assertThat(started()).contains("-XX:SharedArchiveFile=" + archive);
    assertThat(started()).contains("-XX:SharedArchiveFile=" + archive);

    Files.writeString(archive, "whole arch");

    assertThat(started()).doesNotContain("-XX:SharedArchiveFile").contains("Launcher check");
    assertThat(archive).doesNotExist();
  }

  /** Java dies of that too, and the size alone does not tell. */
  @Test
  void archiveWrittenOverByOneOfTheSameSizeIsNotHandedToJava() throws Exception {
    assertThat(started()).contains("-XX:SharedArchiveFile=" + archive);

    FileTime before = Files.getLastModifiedTime(archive);
    Files.writeString(archive, "other archive");
    Files.setLastModifiedTime(archive, FileTime.from(before.toInstant().minusSeconds(60)));

    assertThat(started()).doesNotContain("-XX:SharedArchiveFile").contains("Launcher check");
    assertThat(archive).doesNotExist();
  }

  private String started() throws IOException, InterruptedException {
    ProcessBuilder call =
        new ProcessBuilder("bash", root.resolve("sketcher/longlow").toString(), "check");
    call.environment().put("JAVA_HOME", root.resolve("java").toString());
    Process p = call.redirectErrorStream(true).start();
    String said = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(p.waitFor()).as(said).isZero();
    return said;
  }
}

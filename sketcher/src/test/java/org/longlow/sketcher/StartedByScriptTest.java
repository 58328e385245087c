package org.longlow.sketcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The script that starts Longlow, with a Java that only says what it was called with. */
@DisabledOnOs(OS.WINDOWS)
class StartedByScriptTest {
  private static final List<String> STARTS =
      List.of("bash sketcher/longlow check", "sh image/bin/longlow check");

  @TempDir Path root;
  private Path archive;

  @BeforeEach
  void aBuiltTree() throws IOException {
    Path target = Files.createDirectories(root.resolve("sketcher/target/lib")).getParent();
    Files.copy(Path.of("longlow"), root.resolve("sketcher/longlow"));
    Files.createFile(target.resolve("longlow.built"));
    archive = Files.writeString(target.resolve("longlow.jsa"), "whole archive");
    Path java = Files.createDirectories(root.resolve("java/bin")).resolve("java");
    Files.writeString(
        java,
        "#!/bin/sh\necho \"$@\"\necho \"letters as in <$LC_ALL>\"\n"
            + "{ true 3<&0; } 2>/dev/null && echo input is open\n:\n");
    assertThat(java.toFile().setExecutable(true)).isTrue();
    Path image = Files.createDirectories(root.resolve("image/bin")).resolve("longlow");
    Files.copy(Path.of("src/image/linux/bin/longlow"), image);
    Path own = Files.createDirectories(root.resolve("image/lib/runtime/bin")).resolve("java");
    Files.copy(java, own, StandardCopyOption.COPY_ATTRIBUTES);
  }

  /** With these Java would read names of files as ASCII: what is set need not be there. */
  @ParameterizedTest
  @ValueSource(strings = {"", "C", "POSIX", "xx_XX.UTF-8", "nonsense"})
  void namesOfFilesAreUtf8WhereTheLocaleIsNotThere(String locale) throws Exception {
    for (String start : STARTS) {
      assertThat(started(start, locale)).as(start).contains("letters as in <C.UTF-8>");
    }
  }

  @Test
  void aLocaleThatHasUmlautsIsLeftAlone() throws Exception {
    assumeThat(said(new ProcessBuilder("locale", "-a"))).containsPattern("(?m)^C\\.utf8$");
    for (String start : STARTS) {
      assertThat(started(start, "C.utf8")).as(start).contains("letters as in <C.utf8>");
    }
  }

  /** Java would open its own files there, and a command that reads what is typed in read those. */
  @Test
  void whereNothingCanBeTypedInThereIsNothingToRead() throws Exception {
    for (String start : STARTS) {
      assertThat(started(start + " <&-", "")).as(start).contains("input is open");
    }
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
    return started(STARTS.get(0), "");
  }

  private String started(String command, String locale) throws IOException, InterruptedException {
    ProcessBuilder call = new ProcessBuilder("sh", "-c", command).directory(root.toFile());
    call.environment().put("JAVA_HOME", root.resolve("java").toString());
    call.environment().put("LC_ALL", locale);
    call.environment().keySet().removeAll(List.of("LC_CTYPE", "LANG"));
    return said(call);
  }

  private static String said(ProcessBuilder call) throws IOException, InterruptedException {
    Process p = call.redirectErrorStream(true).start();
    String said = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(p.waitFor()).as(said).isZero();
    return said;
  }
}

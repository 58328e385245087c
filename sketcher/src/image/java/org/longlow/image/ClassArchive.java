package org.longlow.image;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.GZIPOutputStream;

/**
 * The archive of classes that a linked Java runtime maps into memory instead of reading them one by
 * one. Which classes is learnt by running the program: a command in the runtime itself, the window
 * on a screen in memory. The archive stands where Java looks for it, and is good wherever the
 * runtime lies, for all its classes come from the runtime's own file.
 */
final class ClassArchive {

  private final Path runtime;
  private final String main;
  private final Path work;

  /**
   * @param main the class to run, as {@code module/class}
   * @param work a folder for lists and what is said meanwhile
   */
  ClassArchive(Path runtime, String main, Path work) {
    this.runtime = runtime;
    this.main = main;
    this.work = work;
  }

  /**
   * Makes the archive.
   *
   * @param options how the program's Java is started
   * @param fonts letters for a screen in memory
   * @throws IllegalStateException if Java makes none
   */
  void make(List<String> options, Path fonts) throws IOException, InterruptedException {
    Path commands = work.resolve("commands.classes");
    List<String> warmUp = new ArrayList<>(List.of(java(runtime)));
    warmUp.addAll(options);
    warmUp.addAll(List.of("-XX:DumpLoadedClassList=" + commands, "-m", main, "warm-up"));
    require("commands", warmUp);

    Path window = work.resolve("window.classes");
    Set<String> lines = new LinkedHashSet<>(lines(commands));
    if (Tool.start(work.resolve("window.log"), onScreenInMemory(window, fonts)) == 0) {
      lines.addAll(lines(window));
    } else {
      System.err.println(
          "the window could not be opened in memory (see "
              + work.resolve("window.log")
              + "), so it will start more slowly; it needs libpango on Linux");
    }
    Path all = Files.write(work.resolve("all.classes"), lines);
    require(
        "archive",
        List.of(
            java(runtime),
            "-Xshare:dump",
            "-XX:+UseG1GC", // others write no objects into it, and all can read them
            "-XX:SharedClassListFile=" + all,
            "-XX:SharedArchiveFile=" + home(runtime).resolve("classes.jsa"),
            "-m",
            main));
  }

  /** The window tests' toolkit, on the class path that this program was started with. */
  private static List<String> onScreenInMemory(Path list, Path fonts) {
    return List.of(
        java(Path.of(System.getProperty("java.home"))),
        "-XX:DumpLoadedClassList=" + list,
        "-XX:+UseG1GC",
        "-Dglass.platform=Monocle",
        "-Dmonocle.platform=Headless",
        "-Dprism.order=sw",
        "-Dprism.useFontConfig=false",
        "-Dprism.fontdir=" + fonts,
        "-cp",
        System.getProperty("java.class.path"),
        "org.longlow.sketcher.fx.OpenTime");
  }

  /**
   * Packs the archive of a runtime into a file that is called after what is in it, {@code
   * classes-CHECKSUM.jsa.gz}; it is a quarter as large so.
   */
  static void pack(Path runtime, Path to) throws IOException {
    Path archive = home(runtime).resolve("classes.jsa");
    byte[] bytes = Files.readAllBytes(archive);
    CRC32 sum = new CRC32();
    sum.update(bytes);
    String name = String.format(Locale.ROOT, "classes-%08x.jsa.gz", sum.getValue());
    try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(to.resolve(name)))) {
      out.write(bytes);
    }
    Files.delete(archive);
  }

  /** The folder of the virtual machine, where it looks for its archive. */
  private static Path home(Path runtime) {
    Path server = runtime.resolve("lib/server");
    return Files.isDirectory(server) ? server : runtime.resolve("bin/server");
  }

  private static List<String> lines(Path list) throws IOException {
    return Files.readAllLines(list).stream().filter(l -> !l.startsWith("#")).toList();
  }

  private static String java(Path home) {
    return home.resolve("bin").resolve("java").toString();
  }

  private void require(String name, List<String> command) throws IOException, InterruptedException {
    Path log = work.resolve(name + ".log");
    int code = Tool.start(log, command);
    if (code != 0) {
      throw new IllegalStateException(name + " ended with " + code + ", see " + log);
    }
  }
}

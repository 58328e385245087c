package org.longlow.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Makes {@code target/image/longlow}: the program with a Java of its own, for the system this runs
 * on. The profile {@code app} runs it after the jars are made.
 */
public final class ImageMaker {

  private static final String NAME = "longlow";
  private static final String MAIN = OneModule.NAME + "/org.longlow.sketcher.Launcher";

  /**
   * As the launchers that build start it. These choose compilers by command, and so does the script
   * of Linux; elsewhere one image has one choice: both compilers, and neither before a method is
   * used more often than in a short command.
   */
  private static final List<String> JAVA_OPTIONS =
      List.of(
          "-Xmx512m",
          "-Xshare:auto",
          "-Xlog:disable",
          "-Xlog:all=error:stderr",
          "-Dfile.encoding=UTF-8",
          "-XX:Tier3InvocationThreshold=1000",
          "-XX:Tier3MinInvocationThreshold=500",
          "-XX:Tier3CompileThreshold=8000",
          "-XX:Tier3BackEdgeThreshold=120000",
          "-XX:Tier4InvocationThreshold=50000",
          "-XX:Tier4MinInvocationThreshold=6000",
          "-XX:Tier4CompileThreshold=150000",
          "-XX:Tier4BackEdgeThreshold=400000");

  /**
   * How commands collect garbage: with the least work. The young part of the heap is as large as
   * what reading a machine takes, whatever the computer has.
   */
  private static final List<String> COMMANDS = List.of("-Xms256m", "-Xmn192m", "-XX:+UseSerialGC");

  /**
   * How the window does: in short breaks, for it is painted many times a second. The young part of
   * the heap holds what several frames leave behind, or each frame would have a break.
   */
  private static final List<String> WINDOW =
      List.of("-Xms256m", "-XX:+UseG1GC", "-XX:MaxGCPauseMillis=10", "-XX:NewSize=96m");

  private enum Target {
    LINUX("linux"),
    WINDOWS("windows"),
    MAC("mac");

    private final String folder;

    Target(String folder) {
      this.folder = folder;
    }

    static Target here() {
      String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
      return name.startsWith("windows") ? WINDOWS : name.startsWith("mac") ? MAC : LINUX;
    }
  }

  private final Path target;
  private final Path sources;
  private final String version;
  private final Target system = Target.here();

  private ImageMaker(Path target, Path sources, String version) {
    this.target = target;
    this.sources = sources;
    this.version = version;
  }

  /**
   * @param arguments the build's folder, the folder of what lies in the image beside the program,
   *     the version
   */
  public static void main(String[] arguments) throws Exception {
    new ImageMaker(Path.of(arguments[0]), Path.of(arguments[1]), arguments[2]).make();
  }

  private void make() throws IOException, InterruptedException {
    Path work = Folders.fresh(target.resolve("image-work"));
    Path runtime = linked(work);
    new ClassArchive(runtime, MAIN, work).make(with(COMMANDS), target.resolve("fonts"));
    withoutCommands(runtime);
    Path image = packed(runtime, work);
    Path beside = sources.resolve(system.folder);
    if (Files.isDirectory(beside)) {
      Folders.copyFiles(beside, image);
    }
    if (system == Target.LINUX) {
      byScript(image);
    }
    System.out.printf(Locale.ROOT, "%s: %.1f MB%n", image, Folders.bytes(image) / 1e6);
  }

  private static List<String> with(List<String> more) {
    return Stream.concat(JAVA_OPTIONS.stream(), more.stream()).toList();
  }

  /** A Java with the modules that the program needs and the program in it, and nothing else. */
  private Path linked(Path work) throws IOException, InterruptedException {
    List<Path> jars = new ArrayList<>(Folders.files(target.resolve("lib"), ".jar"));
    List<Path> toolkit = jars.stream().filter(ToolkitModules::isToolkit).toList();
    jars.removeAll(toolkit);
    jars.add(target.resolve("longlow-sketcher.jar"));
    Path modules = Files.createDirectories(work.resolve("modules"));
    List<Path> needed = ToolkitModules.of(toolkit, work.resolve("toolkit"), modules);
    Path classes = Files.createDirectories(work.resolve("program"));
    Path notices = Files.createDirectories(work.resolve("notices"));
    new OneModule(classes, notices).of(jars, needed);
    Tool.run(
        "jmod",
        List.of(
            "create",
            "--class-path",
            classes.toString(),
            "--legal-notices",
            notices.toString(),
            modules.resolve(OneModule.NAME + ".jmod").toString()));
    Path runtime = work.resolve("runtime");
    Tool.run(
        "jlink",
        List.of(
            "--module-path",
            modules.toString(),
            "--add-modules",
            OneModule.NAME,
            "--output",
            runtime.toString(),
            "--compress=2",
            "--strip-java-debug-attributes",
            "--no-header-files",
            "--no-man-pages"));
    if (system == Target.LINUX) {
      stripped(runtime.resolve("lib/server/libjvm.so"), work);
    }
    return runtime;
  }

  /** Takes out what only a debugger of Java itself reads; where there is no strip it stays. */
  private static void stripped(Path library, Path work) throws InterruptedException {
    try {
      Tool.start(work.resolve("strip.log"), List.of("strip", "--strip-unneeded", "" + library));
    } catch (IOException e) {
      System.err.println("no strip here; the image stays some MB larger");
    }
  }

  /** The image starts by launchers of its own; the script of Linux needs the plain one. */
  private void withoutCommands(Path runtime) throws IOException {
    Path bin = runtime.resolve("bin");
    for (Path file : Folders.files(bin, "")) {
      String name = file.getFileName().toString();
      boolean used = name.endsWith(".dll") || system == Target.LINUX && name.equals("java");
      if (Files.isRegularFile(file) && !used) {
        Files.delete(file);
      }
    }
  }

  private Path packed(Path runtime, Path work) throws IOException {
    Path to = Folders.fresh(target.resolve("image"));
    List<String> all =
        new ArrayList<>(
            List.of(
                "--type",
                "app-image",
                "--name",
                NAME,
                "--dest",
                to.toString(),
                "--runtime-image",
                runtime.toString(),
                "--module",
                MAIN,
                "--description",
                "Lays out one-off motorcycles",
                "--icon",
                icon(work).toString(),
                "--app-version",
                shownVersion()));
    // an application of macOS is opened by a click
    for (String option : with(system == Target.MAC ? WINDOW : COMMANDS)) {
      all.addAll(List.of("--java-options", option));
    }
    if (system == Target.WINDOWS) {
      // the command speaks to a console; menus and a double click start its twin without one
      Path twin = work.resolve("longlow-window.properties");
      Files.writeString(
          twin, "win-console=false\njava-options=" + String.join(" ", with(WINDOW)) + "\n");
      all.addAll(List.of("--win-console", "--add-launcher", "longlow-window=" + twin));
    }
    Tool.run("jpackage", all);
    return to.resolve(system == Target.MAC ? NAME + ".app" : NAME);
  }

  /** On Linux a script starts Java, and unpacks its archive of classes for whoever starts it. */
  private void byScript(Path image) throws IOException {
    Path lib = image.resolve("lib");
    ClassArchive.pack(lib.resolve("runtime"), lib);
    Files.delete(lib.resolve("libapplauncher.so"));
    Files.delete(lib.resolve("app").resolve(NAME + ".cfg"));
    Path app = lib.resolve("app");
    Files.write(app.resolve(NAME + ".options"), with(COMMANDS));
    Files.write(app.resolve(NAME + "-window.options"), with(WINDOW));
    Folders.copyFiles(sources.resolve("linux/bin"), image.resolve("bin"));
  }

  /** On macOS a bundle's version may not begin with nought. */
  private String shownVersion() {
    return system == Target.MAC && version.startsWith("0.") ? "1.0" : version;
  }

  private Path icon(Path work) throws IOException {
    return switch (system) {
      case LINUX -> Files.write(work.resolve("longlow.png"), IconFiles.png(256));
      case WINDOWS -> Files.write(work.resolve("longlow.ico"), IconFiles.ico());
      case MAC -> Files.write(work.resolve("longlow.icns"), IconFiles.icns());
    };
  }
}

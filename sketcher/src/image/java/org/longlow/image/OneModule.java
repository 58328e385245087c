package org.longlow.image;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.zip.ZipFile;

/**
 * The program with its libraries as one module. Only modules can be linked into a Java runtime, and
 * most libraries are none; together they need no description of each, and what they look up by name
 * stays as it was on a class path.
 */
final class OneModule {

  static final String NAME = "org.longlow";

  /** What jars say about themselves, which a module says otherwise or not at all. */
  private static final String ABOUT = "META-INF/";

  private final Path classes;
  private final Path notices;

  /**
   * @param classes an empty folder for what is in the jars
   * @param notices an empty folder for their licences
   */
  OneModule(Path classes, Path notices) {
    this.classes = classes;
    this.notices = notices;
  }

  /**
   * Puts jars together.
   *
   * @param toolkit folders of modules that these need
   * @throws IllegalStateException if two of them hold unlike files of one name
   */
  void of(List<Path> jars, List<Path> toolkit) throws IOException {
    for (Path jar : jars) {
      unpack(jar);
    }
    String path = String.join(File.pathSeparator, toolkit.stream().map(Path::toString).toList());
    Path source = Files.createDirectories(classes.resolveSibling("described"));
    Path description = source.resolve("module-info.java");
    Files.writeString(description, description(needs(path), descriptors(jars)));
    Tool.run(
        "javac",
        List.of(
            "-d",
            classes.toString(),
            "--module-path",
            path,
            "--patch-module",
            NAME + "=" + classes,
            description.toString()));
  }

  /** Each jar as Java 17 sees it: some hold other classes for later versions. */
  private void unpack(Path jar) throws IOException {
    Runtime.Version version = Runtime.Version.parse("17");
    try (JarFile file = new JarFile(jar.toFile(), false, ZipFile.OPEN_READ, version)) {
      List<JarEntry> entries = file.versionedStream().filter(e -> !e.isDirectory()).toList();
      for (JarEntry entry : entries) {
        try (InputStream in = file.getInputStream(entry)) {
          put(jar, entry.getName(), in.readAllBytes());
        }
      }
    }
  }

  private void put(Path jar, String name, byte[] bytes) throws IOException {
    Path to = classes.resolve(name).normalize();
    if (!to.startsWith(classes)) {
      throw new IllegalStateException(jar + " holds a file outside itself: " + name);
    }
    if (name.startsWith(ABOUT)) {
      if (name.matches(".*(LICENSE|NOTICE)[^/]*")) {
        String flat = name.substring(ABOUT.length()).replace('/', '-');
        Files.write(notices.resolve(jar.getFileName() + "-" + flat), bytes);
      }
      return;
    }
    if (name.equals("module-info.class")) {
      return;
    }
    if (Files.exists(to) && !Arrays.equals(Files.readAllBytes(to), bytes)) {
      throw new IllegalStateException("two jars hold " + name + ", one of them " + jar);
    }
    Files.createDirectories(to.getParent());
    Files.write(to, bytes);
  }

  private Set<String> needs(String toolkit) {
    String said =
        Tool.run(
            "jdeps",
            List.of(
                "--print-module-deps",
                "--ignore-missing-deps",
                "--module-path",
                toolkit,
                classes.toString()));
    return new TreeSet<>(List.of(said.strip().split(",")));
  }

  private static List<ModuleDescriptor> descriptors(List<Path> jars) {
    return ModuleFinder.of(jars.toArray(Path[]::new)).findAll().stream()
        .map(ModuleReference::descriptor)
        .toList();
  }

  /** The module's description: what it needs, and which services its jars offer and ask for. */
  static String description(Set<String> needs, List<ModuleDescriptor> jars) {
    Map<String, Set<String>> offers = new TreeMap<>();
    Set<String> asked = new TreeSet<>();
    for (ModuleDescriptor jar : jars) {
      asked.addAll(jar.uses());
      for (ModuleDescriptor.Provides p : jar.provides()) {
        offers.computeIfAbsent(p.service(), s -> new TreeSet<>()).addAll(p.providers());
      }
    }
    asked.addAll(offers.keySet());
    List<String> lines = new ArrayList<>();
    lines.add("open module " + NAME + " {");
    needs.stream()
        .filter(n -> !n.equals("java.base"))
        .forEach(n -> lines.add("requires " + n + ";"));
    asked.forEach(s -> lines.add("uses " + s.replace('$', '.') + ";"));
    offers.forEach(
        (s, by) ->
            lines.add("provides " + s.replace('$', '.') + " with " + String.join(", ", by) + ";"));
    lines.add("}");
    return String.join("\n", lines) + "\n";
  }
}

package org.longlow.sketcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the guides put between backticks and looks like code or a file is there. */
class DocumentedNamesTest {

  private static final Path ROOT = Path.of("..");

  private static final Pattern FENCE = Pattern.compile("(?s)```.*?```");

  private static final Pattern SPAN = Pattern.compile("`([^`]+)`");

  /** A type, with packages before it or members after it. */
  private static final Pattern TYPE =
      Pattern.compile("(?<!-)\\b((?:[a-z]+\\.)*)([A-Z]\\w*[a-z]\\w*)((?:\\.\\w+)*)");

  /** A package by its last names, such as {@code solve.graph}. */
  private static final Pattern PACKAGE = Pattern.compile("\\.?[a-z]+(?:\\.[a-z]+)+");

  private static final Pattern FILE =
      Pattern.compile("[\\w./-]+\\.(?:java|json|txt|css|md|svg|xml|png)|\\.?\\w+(?:/[\\w-]+)+");

  private static final Pattern DECLARED =
      Pattern.compile("\\b(?:class|record|interface|enum)\\s+(\\w+)");

  /** Made by the build or the program: there only after it ran. */
  private static final Pattern MADE =
      Pattern.compile(
          "target/.*|longlow-out/.*|not-finished\\.txt|(mine|better|before|after)\\.json|.*\\.pdf");

  private static final Set<String> PATHS = new HashSet<>();

  /** The text of the files that declare a type of a name. */
  private static final Map<String, StringBuilder> TYPES = new HashMap<>();

  @BeforeAll
  static void lookRound() throws IOException {
    Files.walkFileTree(
        ROOT,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes) {
            String name = dir.getFileName().toString();
            if (name.equals("target") || name.equals(".git") || name.equals("longlow-out")) {
              return FileVisitResult.SKIP_SUBTREE;
            }
            PATHS.add(relative(dir));
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            PATHS.add(relative(file));
            if (file.toString().endsWith(".java")) {
              String text = Files.readString(file);
              Matcher declared = DECLARED.matcher(text);
              while (declared.find()) {
                TYPES.computeIfAbsent(declared.group(1), k -> new StringBuilder()).append(text);
              }
            }
            return FileVisitResult.CONTINUE;
          }
        });
  }

  private static String relative(Path path) {
    return "/" + ROOT.relativize(path).toString().replace('\\', '/');
  }

  @ParameterizedTest
  @CsvSource({"DEVELOPERS.md, 350", "README.md, 1"})
  void eachNameIsThere(String guide, int atLeast) throws IOException {
    Matcher span =
        SPAN.matcher(FENCE.matcher(Files.readString(ROOT.resolve(guide))).replaceAll(""));
    List<String> missing = new ArrayList<>();
    int looked = 0;
    while (span.find()) {
      looked += looksLikeAName(span.group(1)) ? 1 : 0;
      missing.addAll(missing(span.group(1)));
    }
    assertThat(missing).isEmpty();
    assertThat(looked).isGreaterThanOrEqualTo(atLeast);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Nowhere",
        "desk.Nowhere",
        "Checks.nowhere",
        "solve.nowhere",
        "nowhere.json",
        "seat/nowhere.txt",
        "mvn test -Dtest=NowhereTest",
        "layout.Part.Nowhere"
      })
  void whatIsNotThereIsMissed(String span) {
    assertThat(missing(span)).isNotEmpty();
  }

  @Test
  void whatIsThereIsFound() {
    for (String span :
        List.of(
            "Checks",
            "check.Checks",
            "layout.Limit.Kind",
            "Layout.parts(StandPart.class)",
            "solve.graph",
            "seat/foam-grades.txt",
            "plank.json",
            ".ci/mutation",
            "120/70 R17")) {
      assertThat(missing(span)).as(span).isEmpty();
    }
  }

  private static boolean looksLikeAName(String span) {
    return TYPE.matcher(span).find()
        || PACKAGE.matcher(span).matches()
        || FILE.matcher(span).matches();
  }

  private static List<String> missing(String span) {
    List<String> missing = new ArrayList<>();
    if (MADE.matcher(span).matches()) {
      return missing;
    }
    boolean folder = PACKAGE.matcher(span).matches();
    if (folder || FILE.matcher(span).matches()) {
      // constraints.json is a package, plank.json a file
      String path = (span.startsWith(".") ? span : "." + span).replace('.', '/');
      if (PATHS.stream().noneMatch(p -> p.endsWith("/" + span) || folder && p.endsWith(path))) {
        missing.add(span);
      }
      return missing;
    }
    Matcher type = TYPE.matcher(span);
    while (type.find()) {
      if (isCode(span, type) && !isThere(type)) {
        missing.add(type.group());
      }
    }
    return missing;
  }

  /** A lone word with one capital may be anybody's name among other words. */
  private static boolean isCode(String span, Matcher type) {
    return type.group().equals(span) || type.group(2).matches("[A-Z]\\w*[a-z][A-Z]\\w*");
  }

  private static boolean isThere(Matcher type) {
    StringBuilder text = TYPES.get(type.group(2));
    if (text == null) {
      return false;
    }
    for (String member : type.group(3).split("\\.")) {
      if (!member.isEmpty()
          && !member.equals("class")
          && !Pattern.compile("\\b" + member + "\\b").matcher(text).find()) {
        return false;
      }
    }
    String folder = "/" + type.group(1).replace('.', '/') + type.group(2) + ".java";
    return type.group(1).isEmpty() || PATHS.stream().anyMatch(p -> p.endsWith(folder));
  }
}

package org.longlow.sketcher;

import static java.util.stream.Collectors.toCollection;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.Moved;
import org.longlow.svg.drawing.Drawing;

/**
 * Files of a module use each other one way. What uses what is told by the JDK's own {@code jdeps},
 * which sees constants too, where the compiler has put their values in.
 */
class CirclesTest {

  private static final Pattern USES =
      Pattern.compile(
          "^\\s+(org\\.longlow\\.[\\w.$]+)\\s+->\\s+(org\\.longlow\\.[\\w.$]+)", Pattern.MULTILINE);

  private static final String DOCUMENT = "org.longlow.constraints.document.";

  /**
   * The description of the document describes itself: a type may hold a kind, whose source asks for
   * fields, which have types. As one file it would be of some 700 lines.
   */
  private static final Set<String> DESCRIPTION =
      new TreeSet<>(
          Set.of(DOCUMENT + "Field", DOCUMENT + "Kind", DOCUMENT + "Source", DOCUMENT + "Type"));

  @ParameterizedTest
  @ValueSource(classes = {PointMm.class, Study.class, Demos.class, Drawing.class, Moved.class})
  void filesOfAModuleUseEachOtherOneWay(Class<?> ofModule) throws Exception {
    Map<String, Set<String>> uses = uses(ofModule);
    assertThat(uses).containsKey(ofModule.getName());
    List<Set<String>> found =
        circles(uses).stream().filter(circle -> !forced(circle, uses)).toList();
    assertThat(found).isEqualTo(ofModule == Study.class ? List.of(DESCRIPTION) : List.of());
  }

  @Test
  void aCircleOfAnyLengthIsFound() {
    Map<String, Set<String>> uses =
        Map.of(
            "a",
            Set.of("b", "x"),
            "b",
            Set.of("c"),
            "c",
            Set.of("a"),
            "x",
            Set.of("y"),
            "y",
            Set.of("z"),
            "p",
            Set.of("q", "a"),
            "q",
            Set.of("p"));
    assertThat(circles(uses)).containsExactly(Set.of("a", "b", "c"), Set.of("p", "q"));
  }

  @Test
  void aSealedTypeAndWhatItPermitsMayUseEachOtherAndNobodyElse() {
    String sealed = Part.class.getName();
    String round = WheelPart.class.getName();
    String square = TubePart.class.getName();
    Map<String, Set<String>> plain =
        Map.of(sealed, Set.of(round, square), round, Set.of(sealed), square, Set.of(sealed));
    assertThat(circles(plain)).hasSize(1).allMatch(circle -> forced(circle, plain));
    Map<String, Set<String>> aside =
        Map.of(sealed, Set.of(round, square), round, Set.of(sealed, square), square, Set.of(round));
    assertThat(circles(aside)).hasSize(1).noneMatch(circle -> forced(circle, aside));
    String other = CirclesTest.class.getName();
    Map<String, Set<String>> through =
        Map.of(sealed, Set.of(round), round, Set.of(other), other, Set.of(sealed));
    assertThat(circles(through)).hasSize(1).noneMatch(circle -> forced(circle, through));
  }

  /** Returns which files of the module of a class use which, by the names of their classes. */
  private static Map<String, Set<String>> uses(Class<?> ofModule) throws Exception {
    Path classes = Path.of(ofModule.getProtectionDomain().getCodeSource().getLocation().toURI());
    StringWriter told = new StringWriter();
    PrintWriter out = new PrintWriter(told);
    ToolProvider jdeps = ToolProvider.findFirst("jdeps").orElseThrow();
    int code = jdeps.run(out, out, "-v", "--multi-release", "17", classes.toString());
    out.flush();
    assertThat(code).as(told.toString()).isZero();
    Map<String, Set<String>> uses = new TreeMap<>();
    for (MatchResult line : USES.matcher(told.toString()).results().toList()) {
      uses.computeIfAbsent(file(line.group(1)), f -> new TreeSet<>()).add(file(line.group(2)));
    }
    return uses;
  }

  private static String file(String className) {
    return className.replaceAll("\\$.*", "");
  }

  /** Returns the sets of more than one of which each uses each other, over others or at once. */
  private static List<Set<String>> circles(Map<String, Set<String>> uses) {
    Map<String, Set<String>> reached = new TreeMap<>();
    uses.keySet().forEach(name -> reached.put(name, reached(name, uses)));
    return reached.keySet().stream()
        .map(
            name ->
                Stream.concat(Stream.of(name), reached.get(name).stream())
                    .filter(n -> reached.getOrDefault(n, Set.of()).contains(name) || n.equals(name))
                    .collect(toCollection(TreeSet::new)))
        .filter(circle -> circle.size() > 1)
        .<Set<String>>map(circle -> circle)
        .distinct()
        .toList();
  }

  private static Set<String> reached(String from, Map<String, Set<String>> uses) {
    Set<String> reached = new TreeSet<>();
    Deque<String> next = new ArrayDeque<>(uses.get(from));
    while (!next.isEmpty()) {
      String name = next.pop();
      if (reached.add(name)) {
        next.addAll(uses.getOrDefault(name, Set.of()));
      }
    }
    return reached;
  }

  /** Returns whether a circle is that of a sealed type and what it permits, and no other. */
  private static boolean forced(Set<String> circle, Map<String, Set<String>> uses) {
    return circle.stream().anyMatch(name -> permitsAll(name, circle) && open(name, circle, uses));
  }

  private static boolean permitsAll(String name, Set<String> circle) {
    Set<String> all = new TreeSet<>(Set.of(name));
    permitted(loaded(name), all);
    return all.containsAll(circle);
  }

  /** Adds the files of what a sealed type permits, itself or by a sealed type among these. */
  private static void permitted(Class<?> type, Set<String> all) {
    if (type.isSealed()) {
      for (Class<?> one : type.getPermittedSubclasses()) {
        all.add(file(one.getName()));
        permitted(one, all);
      }
    }
  }

  private static Class<?> loaded(String name) {
    try {
      return Class.forName(name, false, CirclesTest.class.getClassLoader());
    } catch (ClassNotFoundException e) {
      throw new AssertionError(e);
    }
  }

  /** Returns whether no circle is left once one of its names is taken out. */
  private static boolean open(String without, Set<String> circle, Map<String, Set<String>> uses) {
    Map<String, Set<String>> rest = new TreeMap<>();
    for (String name : circle) {
      Set<String> kept = new TreeSet<>(uses.get(name));
      kept.retainAll(circle);
      kept.remove(without);
      rest.put(name, kept);
    }
    rest.remove(without);
    return circles(rest).isEmpty();
  }
}

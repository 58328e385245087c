package org.longlow.sketcher.picture;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.sketcher.report.Report;

/** The shipped machines for tests, each studied and reported once, since nobody can change them. */
public final class Shipped {

  /** Whether what is tested is changed while tests run, so that nothing may be kept. */
  private static final boolean ANEW = Boolean.getBoolean("longlow.studiesAnew");

  private static final Map<String, Study> STUDIES = new ConcurrentHashMap<>();
  private static final Map<String, String> PAGES = new ConcurrentHashMap<>();

  private Shipped() {}

  /** Returns the study of one of them. */
  public static Study study(String name) {
    return ANEW
        ? Study.of(Demos.layout(name))
        : STUDIES.computeIfAbsent(name, n -> Study.of(Demos.layout(n)));
  }

  /** Returns the studies of all of them. */
  public static Stream<Study> studies() {
    return Demos.names().stream().map(Shipped::study);
  }

  /** Returns the names of those that a sweep is made over, by default one of them. */
  public static Stream<String> sample() {
    return Demos.names().stream().filter(Shipped::isSampled);
  }

  /** Returns whether a sweep is made over one of them too. */
  public static boolean isSampled(String name) {
    return Boolean.getBoolean("longlow.long") || name.equals("dunlin");
  }

  /** Returns the report of one of them. */
  public static String report(String name) {
    return ANEW
        ? Report.html(study(name))
        : PAGES.computeIfAbsent(name, n -> Report.html(study(n)));
  }
}

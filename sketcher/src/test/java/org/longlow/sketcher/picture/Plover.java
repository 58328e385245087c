package org.longlow.sketcher.picture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.report.Report;

/** An invented machine with one of each kind of part, and a crew of two. Not a good machine. */
public final class Plover {

  private static Study study;
  private static String report;

  private Plover() {}

  /** Returns the layout. */
  public static Layout layout() {
    return layout("{", "{");
  }

  /** Returns the layout with something else in place of a text of its file. */
  static Layout layout(String text, String other) {
    try (InputStream in = Plover.class.getResourceAsStream("plover.json")) {
      String file = new String(in.readAllBytes(), StandardCharsets.UTF_8).replace(text, other);
      ReadResult result = LayoutReader.read(file, Path.of("."));
      if (result instanceof ReadResult.Refused refused) {
        throw new IllegalStateException(refused.faults().toString());
      }
      return ((ReadResult.Read) result).layout();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Returns its study, made once. */
  public static synchronized Study study() {
    if (study == null) {
      study = Study.of(layout());
    }
    return study;
  }

  /** Returns its report, made once. */
  public static synchronized String report() {
    if (report == null) {
      report = Report.html(study());
    }
    return report;
  }
}

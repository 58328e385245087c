package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.longlow.constraints.disk.Windows;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Traits.Make;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.words.Said;

/** What every template says, and how its files are called. */
final class TemplateWords {
  /** As long as a part may be called; one of a former may be longer. */
  private static final int FILE_NAME_LENGTH = 60;

  /** Letters of a line of a sentence. */
  private static final int LINE_LETTERS = 80;

  private static final String LINE_STAYS = "LINE STAYS: cut outside it, work down to it";
  private static final String KERF = "saw kerf";

  /** Of what is cut out of something. */
  static final String INSIDE = "LINE STAYS: cut INSIDE it, work up to it";

  private TemplateWords() {}

  /** Returns whether a line is one of {@link #cutLines}. */
  static boolean isGeneral(String line) {
    return line.equals(LINE_STAYS) || line.startsWith(KERF);
  }

  /** Returns a sentence in lines that are no longer than most. */
  static List<String> wrapped(String sentence) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : sentence.split(" ")) {
      if (line.length() + word.length() >= LINE_LETTERS) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  static String massLine(PartShape shape, TemplateFigures figures) {
    return shape.massKg() > 0
        ? "mass " + figures.mass(shape.massKg()) + " all together"
        : "mass not known";
  }

  /** Returns what every template says about its line. */
  static List<String> cutLines(TemplateFigures figures) {
    return List.of(
        LINE_STAYS,
        figures.own(KERF + " 0.8 to 1.5 mm (from memory) belongs to the waste; test your own"));
  }

  /** Returns a name that is safe in every file system, also with another before it. */
  static String fileName(String name) {
    String plain =
        name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
    String safe =
        plain.substring(0, Math.min(plain.length(), FILE_NAME_LENGTH)).replaceAll("-+$", "");
    return safe.isEmpty() ? "part" : Windows.refuses(safe) ? safe + "-part" : safe;
  }

  static String titled(Part part) {
    return Said.with(part.name(), part.what());
  }

  /** Returns the words for material, how many and which side. */
  static String makeLine(PartShape shape) {
    Part part = shape.part();
    if (part.traits().make() == Make.BOUGHT) {
      return "dummy of what is bought: cut it of card or foam to try its room";
    }
    String many =
        part.paired()
            ? "make 2, the right one as seen here, the left one turned over"
            : shape.rightMm() < 0
                ? "make 1, left side"
                : shape.leftMm() < 0 ? "make 1, right side" : "make 1";
    String material = part.base().material();
    return material.isEmpty() ? many : material + "; " + many;
  }
}

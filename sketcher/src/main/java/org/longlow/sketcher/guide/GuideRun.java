package org.longlow.sketcher.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A run of words that look alike.
 *
 * @param to the file that it leads to; empty for none
 */
public record GuideRun(Look look, String words, String to) {

  /** How it looks. */
  public enum Look {
    PLAIN,
    STRONG,
    STRESSED,
    CODE,
    LINK
  }

  private static final Pattern MARKED =
      Pattern.compile(
          "`([^`]+)`|\\*\\*([^*]+)\\*\\*|\\*([^*\\s][^*]*)\\*|\\[([^\\]]+)\\]\\(([^)]+)\\)");

  /** Returns the runs of words. */
  public static List<GuideRun> of(String words) {
    List<GuideRun> spans = new ArrayList<>();
    Matcher m = MARKED.matcher(words);
    int from = 0;
    while (m.find()) {
      plain(spans, words.substring(from, m.start()));
      if (m.group(1) != null) {
        spans.add(new GuideRun(Look.CODE, m.group(1), ""));
      } else if (m.group(2) != null) {
        spans.add(new GuideRun(Look.STRONG, bare(m.group(2)), ""));
      } else if (m.group(3) != null) {
        spans.add(new GuideRun(Look.STRESSED, bare(m.group(3)), ""));
      } else {
        spans.add(new GuideRun(Look.LINK, bare(m.group(4)), m.group(5)));
      }
      from = m.end();
    }
    plain(spans, words.substring(from));
    return spans;
  }

  private static void plain(List<GuideRun> spans, String words) {
    if (!words.isEmpty()) {
      spans.add(new GuideRun(Look.PLAIN, bare(words), ""));
    }
  }

  /** Returns words without the strokes before signs that would mean something. */
  private static String bare(String words) {
    return words.replaceAll("\\\\([\\\\`*_\\[\\]|])", "$1");
  }
}

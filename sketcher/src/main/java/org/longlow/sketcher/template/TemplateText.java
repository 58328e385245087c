package org.longlow.sketcher.template;

import java.util.List;

/**
 * What a template says of itself.
 *
 * @param title its name
 * @param upWord what lies up on it
 * @param rightWord what lies to the right on it
 * @param lines below the name
 * @param rows a table, headings first, or empty
 * @param key lines on it that are not cut
 */
record TemplateText(
    String title,
    String upWord,
    String rightWord,
    List<String> lines,
    List<List<String>> rows,
    List<TemplateLine> key) {

  TemplateText {
    lines = List.copyOf(lines);
    rows = List.copyOf(rows);
    key = List.copyOf(key);
  }

  /** Returns the same without what is true of every template, which a shared sheet says itself. */
  TemplateText withoutGeneral() {
    return new TemplateText(
        title,
        upWord,
        rightWord,
        lines.stream().filter(l -> !TemplateWords.isGeneral(l)).toList(),
        rows,
        key);
  }
}

package org.longlow.sketcher.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a page of the guide. It takes the few forms of Markdown that the guide keeps to: headings
 * with {@code #}, paragraphs, flat lists, fences, tables and pictures.
 */
public final class GuidePage {

  private static final Pattern HEADING = Pattern.compile("(#{1,6}) (.*)");
  private static final Pattern ITEM = Pattern.compile("(-|\\d+\\.) (.*)");
  private static final Pattern PICTURE = Pattern.compile("!\\[([^\\]]*)\\]\\(([^)]+)\\)");
  private static final Pattern RULE = Pattern.compile("\\|[-| ]+\\|");
  private static final String FENCE = "```";

  private final List<GuideBlock> blocks = new ArrayList<>();

  /** What stands before an entry whose words are being read; empty for a paragraph. */
  private String sign = "";

  private final StringBuilder words = new StringBuilder();

  private GuidePage() {}

  /** Returns the blocks of a page, in order. */
  public static List<GuideBlock> of(String markdown) {
    GuidePage page = new GuidePage();
    List<String> lines = markdown.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (line.startsWith(FENCE)) {
        page.end();
        int from = ++i;
        while (i < lines.size() && !lines.get(i).equals(FENCE)) {
          i++;
        }
        String info = line.substring(FENCE.length()).strip();
        page.blocks.add(new GuideBlock.Code(info, lines.subList(from, i)));
      } else {
        page.read(line, i + 1 < lines.size() && RULE.matcher(lines.get(i + 1)).matches());
      }
    }
    page.end();
    return List.copyOf(page.blocks);
  }

  private void read(String line, boolean overRule) {
    Matcher heading = HEADING.matcher(line);
    Matcher item = ITEM.matcher(line);
    Matcher picture = PICTURE.matcher(line);
    if (line.isBlank()) {
      end();
    } else if (heading.matches()) {
      end();
      blocks.add(new GuideBlock.Heading(heading.group(1).length(), heading.group(2)));
    } else if (picture.matches()) {
      end();
      blocks.add(new GuideBlock.Picture(picture.group(1), picture.group(2)));
    } else if (line.startsWith("|")) {
      end();
      if (!RULE.matcher(line).matches()) {
        blocks.add(new GuideBlock.Row(overRule, cells(line)));
      }
    } else if (item.matches()) {
      end();
      sign = item.group(1).equals("-") ? "•" : item.group(1);
      words.append(item.group(2).strip());
    } else {
      words.append(words.isEmpty() ? "" : " ").append(line.strip());
    }
  }

  private void end() {
    if (!words.isEmpty()) {
      String said = words.toString();
      blocks.add(sign.isEmpty() ? new GuideBlock.Paragraph(said) : new GuideBlock.Item(sign, said));
    }
    sign = "";
    words.setLength(0);
  }

  private static List<String> cells(String row) {
    List<String> cells = new ArrayList<>();
    for (String cell : row.substring(1).split("(?<!\\\\)\\|")) {
      cells.add(cell.strip());
    }
    return cells;
  }
}

package org.longlow.sketcher.guide;

import java.util.List;

/** A piece of a page of the guide. Words may hold {@link GuideRun}s. */
public sealed interface GuideBlock {

  /**
   * A heading.
   *
   * @param level 1 for that of the page
   */
  record Heading(int level, String words) implements GuideBlock {}

  record Paragraph(String words) implements GuideBlock {}

  /**
   * An entry of a list.
   *
   * @param sign what stands before it, such as a dot or 2.
   */
  record Item(String sign, String words) implements GuideBlock {}

  /**
   * What is typed or answered, line by line.
   *
   * @param info what it is, as said behind the fence
   */
  record Code(String info, List<String> lines) implements GuideBlock {
    public Code {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A row of a table.
   *
   * @param head whether it names the columns
   */
  record Row(boolean head, List<String> cells) implements GuideBlock {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  record Picture(String words, String file) implements GuideBlock {}
}

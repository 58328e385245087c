package org.longlow.sketcher.shop;

import java.util.ArrayList;
import java.util.List;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Affine;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;

/** Lays blocks below each other on upright pages. */
final class ShopPages {

  private static final double MARGIN_MM = 15;
  private static final double TITLE_MM = 5;
  private static final double HEAD_MM = 14;
  private static final double BETWEEN_MM = 6;

  private ShopPages() {}

  /** Returns how wide a block may be. */
  static double widthMm(Paper paper) {
    return paper.portrait().widthMm() - 2 * MARGIN_MM;
  }

  /** Returns how high a block may be. */
  static double heightMm(Paper paper) {
    return paper.portrait().heightMm() - 2 * MARGIN_MM - HEAD_MM;
  }

  /**
   * Returns the pages; none for no blocks. What goes on with nothing and is gone on with by nothing
   * fills up an earlier page that has room for it.
   */
  static List<Page> of(String title, List<PageBlock> blocks, Paper paper) {
    List<Filling> on = new ArrayList<>();
    for (int i = 0; i < blocks.size(); i++) {
      PageBlock block = blocks.get(i);
      boolean alone = !block.follows() && (i + 1 == blocks.size() || !blocks.get(i + 1).follows());
      int from = alone ? 0 : Math.max(0, on.size() - 1);
      Filling page =
          on.subList(from, on.size()).stream()
              .filter(f -> f.hasRoom(block))
              .findFirst()
              .orElseGet(
                  () -> {
                    on.add(new Filling(heightMm(paper)));
                    return on.get(on.size() - 1);
                  });
      page.add(block);
    }
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < on.size(); i++) {
      pages.add(page(title, on.get(i).blocks, paper.portrait(), i + 1, on.size()));
    }
    return pages;
  }

  /** A page being filled. */
  private static final class Filling {
    private final List<PageBlock> blocks = new ArrayList<>();
    private double left;

    Filling(double heightMm) {
      left = heightMm;
    }

    boolean hasRoom(PageBlock block) {
      return block.highMm() <= left - (blocks.isEmpty() ? 0 : airMm(block));
    }

    void add(PageBlock block) {
      if (blocks.isEmpty()) {
        block.head().ifPresent(this::put);
      }
      left -= blocks.isEmpty() ? 0 : airMm(block);
      put(block);
    }

    private void put(PageBlock block) {
      blocks.add(block);
      left -= block.highMm();
    }
  }

  /** From the block before it to a block. */
  private static double airMm(PageBlock block) {
    return block.head().isPresent() ? 0 : BETWEEN_MM;
  }

  private static Page page(String title, List<PageBlock> blocks, Paper paper, int number, int of) {
    double top = paper.heightMm() - MARGIN_MM;
    String count = number + " of " + of;
    double room = widthMm(paper) - Lettering.widthMm(count, PageBlock.HEAD_MM) - 4;
    List<Mark> head =
        List.of(
            Mark.Words.level(
                Lettering.fitted(Lettering.printable(title), TITLE_MM, room),
                MARGIN_MM,
                top - TITLE_MM,
                TITLE_MM,
                Anchor.START,
                Tone.INK),
            Mark.Words.level(
                count,
                paper.widthMm() - MARGIN_MM,
                top - TITLE_MM,
                PageBlock.HEAD_MM,
                Anchor.END,
                Tone.PENCIL));
    List<Page.Piece> pieces = new ArrayList<>();
    pieces.add(
        new Page.Piece(Drawing.of("", new Layer("title", "Title", head)), Affine.IDENTITY, null));
    double y = top - HEAD_MM;
    for (int i = 0; i < blocks.size(); i++) {
      PageBlock block = blocks.get(i);
      y -= i == 0 ? 0 : airMm(block);
      pieces.add(new Page.Piece(block.drawing(), Affine.move(MARGIN_MM, y), null));
      y -= block.highMm();
    }
    return new Page(title, paper, pieces);
  }
}

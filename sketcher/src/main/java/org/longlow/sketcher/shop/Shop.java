package org.longlow.sketcher.shop;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.study.Study;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;

/**
 * All lists and plans of a machine.
 *
 * @param study of which
 * @param cuts what is cut
 * @param plans from which stock
 * @param basket what is to be bought
 */
public record Shop(Study study, Cuts cuts, CutPlans plans, Shopping.Basket basket) {

  /** Works them out. */
  public static Shop of(Study study) {
    Cuts cuts = Cuts.of(study);
    CutPlans plans = CutPlans.of(study, cuts);
    return new Shop(study, cuts, plans, Shopping.of(study, cuts, plans));
  }

  private SizeWords sizes() {
    return new SizeWords(study.layout().units());
  }

  /** Returns all lists, the shopping list first; none is left out where it is empty. */
  public List<ShopTable> tables() {
    return List.of(
        basket.table(),
        ShopLists.parts(study),
        materials(),
        ShopLists.tubes(cuts),
        ShopLists.barPlan(plans, sizes()),
        ShopLists.sheetPieces(cuts),
        ShopLists.sheetPlan(plans, sizes()),
        foam(),
        basket.fasteners(),
        lamps());
  }

  /** Returns what weighs how much by material. */
  public ShopTable materials() {
    return ShopLists.materials(study);
  }

  /** Returns foam by grade. */
  public ShopTable foam() {
    return ShopLists.foam(cuts, sizes());
  }

  /** Returns lamps by rule. */
  public ShopTable lamps() {
    return LampList.of(study);
  }

  /** Returns the pictures of one plan, so wide and each at most so high, paper mm. */
  public List<PageBlock> pictures(CutPlan plan, double widthMm, double heightMm) {
    return PlanBlocks.of(plan, sizes(), widthMm, heightMm);
  }

  /** Returns the cutting plans on paper; no page where nothing is cut from stock. */
  public List<Page> planPages(Paper paper) {
    List<PageBlock> blocks = new ArrayList<>();
    for (CutPlan plan : plans.plans()) {
      blocks.addAll(pictures(plan, ShopPages.widthMm(paper), ShopPages.heightMm(paper)));
    }
    return ShopPages.of("Cutting plans, " + study.layout().name(), blocks, paper);
  }

  /** Returns the page to fill in at two scales. */
  public List<Page> weighingPages(Paper paper) {
    return ShopPages.of(
        "Weighing, " + study.layout().name(),
        WeighingSheet.blocks(study, ShopPages.widthMm(paper)),
        paper);
  }
}

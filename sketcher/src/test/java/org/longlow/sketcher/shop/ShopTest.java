package org.longlow.sketcher.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.picture.Shipped;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;

/** Lists and plans against sums by hand, and plans as drawn measured on the page. */
class ShopTest {

  private static final Study STUDY = Study.of(Shed.layout());
  private static final Shop SHOP = Shop.of(STUDY);

  private static CutPlan plan(String words) {
    return SHOP.plans().plans().stream()
        .filter(p -> p.wanted().words(new SizeWords(Units.MM)).equals(words))
        .findFirst()
        .orElseThrow();
  }

  private static double column(ShopTable table, int column) {
    return table.rows().stream()
        .mapToDouble(r -> r.get(column).figure())
        .filter(f -> !Double.isNaN(f))
        .sum();
  }

  /** Two of 1000 mm and two of 500 mm. */
  @Test
  void tubesTakeTheStockThatSaysMostOfThem() {
    CutPlan.Bars bars = (CutPlan.Bars) plan("steel tube Ø25 × 2 mm");
    assertThat(bars.stock().name()).isEqualTo("yard");
    assertThat(bars.net()).isCloseTo(3000, within(1e-6));
    // 3000 and three kerfs are 3009: one more than a bar of 3003
    assertThat(bars.count()).isEqualTo(2);
    assertThat(bars.least()).isEqualTo(2);
    // two bars at 7 a metre
    assertThat(bars.cost()).isCloseTo(2 * 3.003 * 7, within(1e-9));
    // pi/4 (25^2 - 21^2) mm2 of steel, 7850 kg/m3
    double section = 144.513;
    assertThat(bars.massKg()).isCloseTo(2 * 3003 * section * 7850e-9, within(0.01));
  }

  @Test
  void boardsAndFoamAreCutFromWhatIsSaid() {
    CutPlan.Sheets board = (CutPlan.Sheets) plan("plywood 12 mm");
    assertThat(board.stock().name()).isEqualTo("ply");
    assertThat(board.stock().grained()).isTrue();
    assertThat(board.pieces()).hasSize(1);
    assertThat(board.net()).isCloseTo(400 * 300, within(1e-6));
    // foam is 10 mm larger all round, which just fits
    CutPlan.Sheets foam = (CutPlan.Sheets) plan("foam firm, 40 mm");
    assertThat(foam.count()).isEqualTo(1);
    assertThat(foam.tooLarge()).isEmpty();
    assertThat(foam.pieces().get(0).longMm()).isCloseTo(420, within(1e-6));
    assertThat(foam.massKg()).isCloseTo(0.42 * 0.32 * 0.04 * 50, within(1e-9));
  }

  /** A tank in sheet of which nobody says how thick it is, and one of which somebody does. */
  @Test
  void sheetThatNobodySaysTheThicknessOfIsToldSo() {
    String tank =
        """
        "tank": {"kind": "tank", "frame": "rear", "outline": {"points": [[300, 600], [600, 600], [600, 800],
                 [300, 800]], "closed": true}, "left": 100, "right": 100, "mass": 3,
                 "material": "stainless"%s}, "pan":""";
    Shop unsaid = Shop.of(Study.of(Shed.layout(tank.formatted(""))));
    String list = unsaid.basket().table().csv(Units.MM, "");
    assertThat(list).contains("stainless sheet, thickness not said").contains("skin of formers");
    assertThat(list).doesNotContain(" 0 mm");
    assertThat(unsaid.plans().plans()).noneMatch(p -> p.wanted().material().equals("stainless"));
    assertThat(unsaid.plans().shaped()).allMatch(s -> Double.isNaN(s.massKg()));
    assertThat(unsaid.tables().get(5).csv(Units.MM, "")).contains("stainless,,");
    Shop said = Shop.of(Study.of(Shed.layout(tank.formatted(", \"formers\": {\"skin\": 1.5}"))));
    assertThat(said.basket().table().csv(Units.MM, ""))
        .contains("stainless sheet 1.5 mm")
        .doesNotContain("not said");
  }

  @Test
  void costsAreSummedAndWhatHasNoneIsCounted() {
    ShopTable list = SHOP.basket().table();
    // tube 42.042, board 20, foam 9, wheel 80, six bolts at a half
    assertThat(SHOP.basket().known()).isCloseTo(42.042 + 20 + 9 + 80 + 3, within(1e-9));
    assertThat(column(list, 5)).isCloseTo(SHOP.basket().known(), within(1e-9));
    long unpriced = list.rows().stream().filter(r -> Double.isNaN(r.get(5).figure())).count();
    assertThat(SHOP.basket().unpriced()).isEqualTo((int) unpriced);
    // front wheel, fork, nut
    assertThat(unpriced).isEqualTo(4);
    assertThat(SHOP.basket().sum("crowns"))
        .isEqualTo("Together 154.04 crowns; 4 lines without a price.");
    assertThat(SHOP.basket().fasteners().rows()).hasSize(2);
    assertThat(SHOP.basket().fasteners().rows().get(0).get(1).figure()).isEqualTo(6);
  }

  @Test
  void listsAgreeWithTheStudyAndWithEachOther() {
    for (String name : Demos.names()) {
      Study study = Shipped.study(name);
      Shop shop = Shop.of(study);
      double mass = study.shapes().values().stream().mapToDouble(s -> s.massKg()).sum();
      assertThat(column(shop.tables().get(1), 4)).as(name).isCloseTo(mass, within(1e-9));
      assertThat(column(shop.materials(), 2)).as(name).isCloseTo(mass, within(1e-9));
      double planned =
          shop.plans().plans().stream()
              .filter(CutPlan.Bars.class::isInstance)
              .mapToDouble(CutPlan::net)
              .sum();
      assertThat(planned).as(name).isCloseTo(shop.cuts().tubeMm(), within(1e-6));
      double cut = shop.cuts().flat().stream().mapToDouble(c -> c.pieces() * c.areaMm2()).sum();
      cut += shop.cuts().foam().stream().mapToDouble(c -> c.pieces() * c.areaMm2()).sum();
      double laid =
          shop.plans().plans().stream()
              .filter(CutPlan.Sheets.class::isInstance)
              .mapToDouble(CutPlan::net)
              .sum();
      laid += shop.plans().shaped().stream().mapToDouble(CutPlans.Shaped::areaMm2).sum();
      assertThat(laid).as(name).isCloseTo(cut, within(1e-3));
      assertThat(shop.lamps().rows()).as(name).isNotEmpty();
    }
  }

  /** Boxes of a subject on pages, in page mm. */
  private static List<Envelope> boxes(List<Page> pages, String subject) {
    List<Envelope> boxes = new ArrayList<>();
    for (Page page : pages) {
      page.layers().stream()
          .flatMap(l -> l.marks().stream())
          .filter(m -> m instanceof Mark.Shape && m.subject().equals(subject))
          .forEach(m -> boxes.add(((Mark.Shape) m).geometry().getEnvelopeInternal()));
    }
    return boxes;
  }

  /**
   * 180 mm are between the margins of A4: a bar of 3003 mm is at 1:20, a sheet is as it comes out.
   */
  @Test
  void plansAreToScaleOnPaper() {
    List<Page> pages = SHOP.planPages(Paper.A4);
    assertThat(boxes(pages, "cut:long"))
        .hasSize(2)
        .allSatisfy(b -> assertThat(b.getWidth()).isCloseTo(1000 / 20.0, within(1e-9)));
    assertThat(boxes(pages, "cut:short"))
        .allSatisfy(b -> assertThat(b.getWidth()).isCloseTo(500 / 20.0, within(1e-9)));
    Envelope board = boxes(pages, "cut:pan board").get(0);
    assertThat(board.getWidth() / board.getHeight()).isCloseTo(400 / 300.0, within(1e-9));
    double scale = 400 / board.getWidth();
    assertThat(boxes(pages, "stock"))
        .anySatisfy(
            b -> {
              assertThat(b.getWidth() * scale).isCloseTo(800, within(1e-6));
              assertThat(b.getHeight() * scale).isCloseTo(600, within(1e-6));
            });
    for (Page page : pages) {
      double w = page.paper().widthMm();
      double h = page.paper().heightMm();
      page.layers().stream()
          .flatMap(l -> l.marks().stream())
          .map(m -> m instanceof Mark.Words words ? words.boxMm() : box(m))
          .forEach(b -> assertThat(new Envelope(10, w - 10, 10, h - 10).contains(b)).isTrue());
    }
    // between the first two pieces of the first bar lies a kerf of 3 mm
    List<Envelope> first = boxes(pages.subList(0, 1), "cut:long");
    assertThat((first.get(1).getMinX() - first.get(0).getMaxX()) * 20).isCloseTo(3, within(1e-6));
  }

  private static Envelope box(Mark mark) {
    return ((Mark.Shape) mark).geometry().getEnvelopeInternal();
  }

  @Test
  void theScalesShouldSayWhatTheMachineWeighs() {
    List<WeighingSheet.Planned> planned = WeighingSheet.planned(STUDY);
    assertThat(planned).isNotEmpty();
    double all = STUDY.shapes().values().stream().mapToDouble(s -> s.massKg()).sum();
    assertThat(planned.get(0).frontKg() + planned.get(0).rearKg()).isCloseTo(all, within(1e-6));
    List<Page> pages = SHOP.weighingPages(Paper.A4);
    // three blanks for each load, two for each part
    assertThat(boxes(pages, "blank")).hasSize(3 * planned.size() + 2 * STUDY.shapes().size());
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "tank, tank",
        "`a,b`, `\"a,b\"`",
        "`say \"so\"`, `\"say \"\"so\"\"\"`",
        "=1+1, '=1+1",
        "-tube, '-tube",
        "@x, '@x",
        "` =x`, `' =x`"
      })
  void wordsDoNoHarmInSpreadsheets(String words, String cell) {
    assertThat(Csv.words(words)).isEqualTo(cell);
  }

  @Test
  void listsForSpreadsheetsHaveUnitsInTheirHeadAndPlainNumbers() {
    ShopTable tubes = SHOP.tables().get(3);
    String mm = tubes.csv(Units.MM, "crowns");
    assertThat(mm)
        .startsWith("Tube,Pieces,Diameter (mm),Wall (mm),Cut length (mm),Bends,Material\r\n")
        .contains("\r\nlong,2,25,2,1000,0,steel\r\n");
    assertThat(tubes.csv(Units.IN, "crowns"))
        .contains("Cut length (in)")
        .contains("long,2,0.984,0.079,39.37,0,steel");
    for (ShopTable table : SHOP.tables()) {
      List<String> lines = Arrays.asList(table.csv(Units.MM, "a,b").split("\r\n"));
      assertThat(lines).hasSize(1 + table.rows().size());
    }
    assertThat(SHOP.basket().fasteners().csv(Units.MM, "=x"))
        .contains("Cost (=x)")
        .contains("\"'=cmd, \"\"nut\"\"\"");
  }

  /** curlew's shocks are bought, two of them; its rails are cut. */
  @Test
  void whatIsBoughtAsItIsIsNotCut() {
    Shop shop = Shop.of(Shipped.study("curlew"));
    assertThat(shop.cuts().tubes())
        .extracting(t -> t.part().name())
        .contains("strut", "seatRail")
        .doesNotContain("shocks");
    assertThat(shop.plans().plans())
        .filteredOn(CutPlan.Bars.class::isInstance)
        .flatExtracting(p -> ((CutPlan.Bars) p).pieces())
        .extracting(CutPlan.Length::part)
        .contains("strut")
        .doesNotContain("shocks");
    assertThat(shop.basket().table().rows())
        .filteredOn(r -> r.get(0).words().startsWith("shocks"))
        .singleElement()
        .satisfies(
            r -> {
              assertThat(r.get(0).words()).contains("bought bar");
              assertThat(r.get(2).figure()).isEqualTo(2);
            });
  }

  @Test
  void aMachineInInchesTakesStockOfInches() {
    Shop in = Shop.of(Study.of(Demos.layout("curlew").withUnits(Units.IN)));
    assertThat(in.plans().plans())
        .filteredOn(CutPlan.Bars.class::isInstance)
        .allSatisfy(p -> assertThat(p.stock().longMm()).isEqualTo(240 * 25.4));
  }
}

package org.longlow.sketcher.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.picture.Shipped;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;

/**
 * Nothing that a machine has is left out of its shopping list, and no stock too short is counted.
 */
class ShoppingTest {

  private static final SizeWords SIZES = new SizeWords(Units.MM);

  private static Shop shed(String piece, String instead) {
    String text = Shed.text().replace(piece, instead);
    assertThat(text).isNotEqualTo(Shed.text());
    return Shop.of(Study.of(((ReadResult.Read) LayoutReader.read(text, Path.of("."))).layout()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"heron", "dunlin", "curlew"})
  void everyPartIsBoughtOrItsMaterialIs(String name) {
    Study study = Shipped.study(name);
    List<String> lines =
        Shop.of(study).basket().table().rows().stream()
            .map(r -> r.get(0).words() + "," + r.get(6).words())
            .toList();
    Set<String> missed =
        Stream.concat(
                study.layout().parts().keySet().stream(), study.layout().lines().keySet().stream())
            .filter(p -> lines.stream().noneMatch(l -> l.matches("(.*\\W)?" + p + "(\\W.*)?")))
            .collect(Collectors.toSet());
    assertThat(missed).isEmpty();
  }

  @Test
  void whatIsMadeToTemplatesIsAskedForByItsMaterial() {
    String made =
        """
        "arm": {"kind": "bracket", "frame": "rear", "outline": {"points": [[0, 0], [90, 0], [90, 30]]},
                "left": 5, "right": 5, "mass": 1.25, "material": "steel"%s},
        "cell": {"kind": "battery", "frame": "rear", "outline": {"points": [[200, 0], [290, 0], [290, 30]]},
                 "left": 50, "right": 50, "mass": 3},
        "pan":""";
    String list = shed("\"pan\":", made.formatted("")).basket().table().csv(Units.MM, "");
    assertThat(list).contains("\"steel, by templates\",1.25 kg net,,,,,arm");
    assertThat(list).contains("cell, battery\",\"bought, or made to its template\",1,,,,");
    // what has a price is bought
    assertThat(
            shed("\"pan\":", made.formatted(", \"price\": 4")).basket().table().csv(Units.MM, ""))
        .doesNotContain("by templates")
        .contains("arm, bracket");
  }

  @Test
  void linesSpringsAndCoversAreBought() {
    String list = Shop.of(Shipped.study("dunlin")).basket().table().csv(Units.MM, "");
    assertThat(list).contains("gas spring,\"225 mm long, stroke 70 mm, 50 N\",1,,,,lid");
    // 400 × 300 mm of foam, 40 mm of it and 12 mm of board at each side
    assertThat(shed("\"kerf\": 2", "\"kerf\": 3").basket().table().csv(Units.MM, ""))
        .contains("cover cloth,504 × 404 mm and what is turned under,1,,,,pan");
    // a shock that is drawn as a bought tube is that tube
    String curlew = Shop.of(Shipped.study("curlew")).basket().table().csv(Units.MM, "");
    assertThat(curlew).contains("shocks").doesNotContain("between eyes");
    assertThat(curlew).contains("1080 mm long, Ø");
  }

  /** Leg from (1230, 640) straight down to (1230, 240), link from there to (1400, 300). */
  @Test
  void aFrontWithLinksIsMadeOrBoughtAndAForkIsBought() {
    String links =
        Shed.text()
            .replace("\"top\": [1150", "\"knee\": [1230, 240], \"top\": [1150")
            .replace("\"telescopic\"", "\"leading-link\", \"pivot\": \"knee\"");
    Shop shop =
        Shop.of(Study.of(((ReadResult.Read) LayoutReader.read(links, Path.of("."))).layout()));
    assertThat(shop.basket().table().csv(Units.MM, ""))
        .contains("legs and links made to their templates")
        .contains("\"fork, leg\",\"Ø36 mm or plates as broad, 400 mm between holes\",2,,,,fork")
        // Pythagoras: 170 and 60
        .contains("\"Ø36 mm or plates as broad, 180.3 mm between holes\",2,");
    assertThat(shop.tables().get(1).csv(Units.MM, "")).contains("bought, or legs and links");
    Shop bought = shed("\"kerf\": 2", "\"kerf\": 3");
    assertThat(bought.tables().get(1).csv(Units.MM, "")).doesNotContain("links");
    assertThat(bought.basket().table().csv(Units.MM, "")).doesNotContain("links");
  }

  @Test
  void aChainIsBoughtByItsLinks() {
    // 110 links of 15.875 mm, from the file
    assertThat(Shop.of(Shipped.study("curlew")).basket().table().csv(Units.MM, ""))
        .contains("chain,\"110 links of 15.875 mm, 1746.3 mm long\",1,,,,");
  }

  @Test
  void stockThatIsTooShortIsNoBars() {
    Shop none = shed("\"length\": 3003", "\"length\": 499");
    CutPlan bars = none.plans().plans().get(0);
    assertThat(bars.count()).isZero();
    assertThat(bars.cost()).isNaN();
    assertThat(PlanWords.of(bars, SIZES))
        .startsWith("Nothing fits a bar of 499 mm")
        .contains("long needs 1000 mm, short needs 500 mm")
        .doesNotContain("0 bar");
    assertThat(none.basket().table().csv(Units.MM, ""))
        .contains("too small: bars of 499 mm,,")
        .contains("long needs 1000 mm, short needs 500 mm");
    assertThat(none.basket().known()).isCloseTo(20 + 9 + 80 + 3, within(1e-9));
    CutPlan some = shed("\"length\": 3003", "\"length\": 999").plans().plans().get(0);
    assertThat(some.count()).isEqualTo(2);
    assertThat(PlanWords.of(some, SIZES)).contains("not in the plan: long needs 1000 mm;");
    assertThat(
            PlanWords.of(
                shed("\"length\": 3003", "\"length\": 1000").plans().plans().get(0), SIZES))
        .doesNotContain("needs");
  }

  /** A body of 200 × 100 mm: as wide as four sheets of 3 mm it is one sheet, wider it is a box. */
  @ParameterizedTest
  @CsvSource({"10, 1, 0", "12, 1, 0", "6, 1, 0", "12.2, 2, 1"})
  void aBodyWithNoRoomWithinIsOneSheet(double wide, int sides, int strips) {
    String cowl =
        """
        "side": {"kind": "cowl", "frame": "rear", "outline": {"points": [[0, 400], [200, 400], [200, 500],
                 [0, 500]], "closed": true}, "left": 300, "right": %s, "thickness": 3,
                 "material": "laminate"}, "pan":""";
    Shop shop = shed("\"pan\":", cowl.formatted(wide - 300));
    List<FlatCut> cuts = shop.cuts().sheet();
    assertThat(cuts).hasSize(1 + strips);
    assertThat(cuts.get(0).pieces()).isEqualTo(sides);
    assertThat(cuts.get(0).areaMm2()).isCloseTo(200 * 100, within(1e-6));
    assertThat(cuts.get(0).what().equals("flat panel")).isEqualTo(sides == 1);
    if (sides == 1) {
      double density = Material.LAMINATE.densityKgM3();
      assertThat(shop.study().shapes().get("side").massKg())
          .isCloseTo(0.2 * 0.1 * 0.003 * density, within(1e-9));
    }
  }

  /** Height from the top of the highest to the foot of the lowest mark below the title, mm. */
  private static double filled(Page page) {
    double low =
        page.layers().stream()
            .flatMap(l -> l.marks().stream())
            .mapToDouble(
                m ->
                    m instanceof Mark.Words w
                        ? w.boxMm().getMinY()
                        : ((Mark.Shape) m).geometry().getEnvelopeInternal().getMinY())
            .min()
            .orElseThrow();
    return page.paper().heightMm() - 15 - low;
  }

  /** A page is left only when what comes next would not have had room on it. */
  @ParameterizedTest
  @ValueSource(strings = {"heron", "dunlin", "curlew"})
  void pagesAreFilled(String name) {
    Shop shop = Shop.of(Shipped.study(name));
    List<Page> weighing = shop.weighingPages(Paper.A4);
    // a row is 8.5 mm; 253 mm are between the title and the lower margin
    for (Page page : weighing.subList(0, weighing.size() - 1)) {
      assertThat(filled(page)).isGreaterThan(14 + 253 - 2 * 8.5 - 6 - 10);
    }
    List<Page> plans = shop.planPages(Paper.A4);
    for (int i = 1; i + 1 < plans.size(); i++) {
      assertThat(filled(plans.get(i - 1)) + filled(plans.get(i))).isGreaterThan(253);
    }
    Set<String> said =
        plans.stream()
            .flatMap(p -> p.layers().stream())
            .flatMap(l -> l.marks().stream())
            .filter(m -> m instanceof Mark.Words)
            .map(m -> ((Mark.Words) m).text())
            .collect(Collectors.toSet());
    for (CutPlan plan : shop.plans().plans()) {
      assertThat(said).contains(Lettering.printable(plan.wanted().words(SIZES)));
    }
  }
}

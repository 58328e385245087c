package org.longlow.sketcher.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Gathered;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.check.person.SeatFindings;
import org.longlow.constraints.check.whole.CompletenessFindings;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.picture.Plover;
import org.longlow.sketcher.picture.Shipped;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ReportTest {

  private static final Study STUDY = Plover.study();
  private static final String HTML = Plover.report();
  private static final Study HERON = Shipped.study("heron");
  private static final Map<Study, String> PAGES =
      new IdentityHashMap<>(Map.of(STUDY, HTML, HERON, Shipped.report("heron")));

  /** Returns the page of a study, made once. */
  private static String page(Study study) {
    synchronized (PAGES) {
      return PAGES.computeIfAbsent(study, Report::html);
    }
  }

  /** The page is written so that an XML parser reads it too; that finds every missing escape. */
  private static Document parsed(String html) throws Exception {
    DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    return builder.parse(new InputSource(new StringReader(html)));
  }

  private static List<Element> all(Document doc, String tag) {
    return all(doc.getDocumentElement(), tag);
  }

  private static List<Element> all(Element from, String tag) {
    NodeList nodes = from.getElementsByTagName(tag);
    List<Element> out = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      out.add((Element) nodes.item(i));
    }
    return out;
  }

  @Test
  void thePageIsWellFormedAndSaysItsLanguage() throws Exception {
    Document doc = parsed(HTML);
    assertThat(doc.getDocumentElement().getAttribute("lang")).isEqualTo("en");
    assertThat(all(doc, "h1")).hasSize(1);
  }

  @Test
  void everyTableHasACaptionAndScopedHeadings() throws Exception {
    Document doc = parsed(HTML);
    assertThat(all(doc, "table")).hasSizeGreaterThan(8);
    for (Element table : all(doc, "table")) {
      assertThat(table.getElementsByTagName("caption").getLength()).isEqualTo(1);
    }
    assertThat(all(doc, "th")).allMatch(th -> th.getAttribute("scope").matches("col|row"));
  }

  @Test
  void theElevationHasATitleForThoseWhoDoNotSeeIt() throws Exception {
    Element svg = all(parsed(HTML), "svg").get(0);
    assertThat(svg.getAttribute("role")).isEqualTo("img");
    assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo(STUDY.layout().title());
  }

  /** A kind that says that it is cut from stock has its row; what is bought or shaped has none. */
  @Test
  void theCutListHasARowForEveryPartThatIsCutFromStock() throws Exception {
    for (Study each : List.of(STUDY, HERON)) {
      Set<String> rows = new TreeSet<>();
      for (Element table : all(parsed(page(each)), "table")) {
        if (table.getAttribute("class").equals("cut")) {
          NodeList heads = table.getElementsByTagName("tr");
          for (int i = 1; i < heads.getLength(); i++) {
            rows.add(((Element) heads.item(i)).getElementsByTagName("*").item(0).getTextContent());
          }
        }
      }
      Set<String> cut = new TreeSet<>();
      for (Part part : each.layout().parts().values()) {
        boolean sheet = part.kind().equals("tank") || part.kind().equals("silencer");
        if (part.traits().make().listed() || sheet) {
          cut.add(part.name());
        }
      }
      assertThat(rows).isEqualTo(cut).isNotEmpty();
    }
  }

  /** One vocabulary: likely sink, design sink, what is left and how it holds are said alike. */
  @Test
  void theRowOfACushionSaysWhatTheFindingSays() throws Exception {
    int rows = 0;
    for (Study each : List.of(STUDY, SOFT, HERON)) {
      for (Element row : all(parsed(page(each)), "tr")) {
        Map<String, String> cells = new LinkedHashMap<>();
        NodeList tds = row.getElementsByTagName("td");
        for (int i = 0; i < tds.getLength(); i++) {
          Element td = (Element) tds.item(i);
          cells.put(td.getAttribute("data-heading"), td.getTextContent());
        }
        if (!cells.containsKey("Design sink")) {
          continue;
        }
        rows++;
        String how = cells.get("Verdict").split(": ", 2)[1];
        String plain = "design sink " + cells.get("Design sink").replace(" ±20 %", "");
        assertThat(each.findings())
            .anyMatch(
                f ->
                    f.kind() == SeatFindings.SINK
                        && cells.get("Verdict").contains(f.verdict().says())
                        && f.text().contains(plain + ", leaves " + cells.get("Foam left then"))
                        && f.text()
                            .contains("likely sink " + cells.get("Likely sink").split(" ±")[0])
                        && f.text().contains(how));
      }
    }
    assertThat(rows).isGreaterThan(6);
  }

  /** Foam of a third of its firmness: it bottoms. */
  private static final Study SOFT = softened();

  private static Study softened() {
    ReadResult read =
        LayoutReader.read(
            Demos.text("dunlin").replaceAll("\"ifd25\": \"\\d+ N\"", "\"ifd25\": \"60 N\""), null);
    return Study.of(((ReadResult.Read) read).layout());
  }

  @Test
  void neitherSinkIsCalledTheMostThatCanHappen() {
    for (Study each : List.of(STUDY, SOFT)) {
      assertThat(page(each)).doesNotContain("Sink at most");
      assertThat(each.findings())
          .filteredOn(f -> f.kind() == SeatFindings.SINK)
          .isNotEmpty()
          .noneMatch(f -> f.text().contains("at most"))
          .noneMatch(f -> f.text().contains("goes through"));
    }
  }

  @Test
  void aClosedCowlIsTwoSidesAndAStripInTheCutList() throws Exception {
    List<String> rows =
        all(parsed(HTML), "tr").stream()
            .map(Element::getTextContent)
            .filter(t -> t.matches("nose[12].*"))
            .toList();
    assertThat(rows).hasSize(2);
    assertThat(rows.get(0)).startsWith("nose2side, half of them turned over3 mm");
    assertThat(rows.get(1)).startsWith("nose1edge strip3 mm").contains("594 mm");
  }

  /** Wall 1.65 mm is sold, 1.7 mm is not. */
  @Test
  void aWallIsNotRounded() {
    assertThat(Shipped.report("heron")).contains("Ø22 × 1.65 mm");
  }

  /** A name of 60 letters is broader than a phone: it breaks wherever on the page it stands. */
  @Test
  void longWordsBreakEverywhere() {
    assertThat(HTML).containsPattern("body\\{[^}]*overflow-wrap:break-word");
  }

  @Test
  void thePageNeedsNothingElse() {
    assertThat(HTML).doesNotContain("<script", "src=", "href=\"http", "@import", "url(");
    assertThat(
            HTML.replace("http://www.w3.org/2000/svg", "")
                .replace("http://www.w3.org/1999/xlink", ""))
        .doesNotContain("http:", "https:");
  }

  @Test
  void everyFindingIsThereAndTheWorstComeFirst() throws Exception {
    List<Finding> order = WorstFirst.of(STUDY.findings());
    assertThat(order).containsExactlyInAnyOrderElementsOf(STUDY.findings());
    // what the machine lacks to be ridden leads
    assertThat(order.get(0).kind()).isEqualTo(CompletenessFindings.COMPLETENESS);
    assertThat(order.subList(1, order.size()))
        .isSortedAccordingTo((a, b) -> a.verdict().compareTo(b.verdict()));
    assertThat(order.get(1).verdict()).isEqualTo(Verdict.FAIL);
    List<String> sentences =
        all(parsed(HTML), "td").stream()
            .filter(td -> td.getAttribute("data-heading").equals("What"))
            .map(Element::getTextContent)
            .toList();
    Map<String, String> others = Gathered.others(STUDY.findings());
    assertThat(others).isNotEmpty();
    assertThat(sentences)
        .containsAll(
            STUDY.findings().stream()
                .map(f -> f.text() + others.getOrDefault(f.id(), ""))
                .toList());
  }

  @Test
  void numbersInThePictureAreThoseOfTheTable() throws Exception {
    Document doc = parsed(HTML);
    Map<String, String> sentences = new LinkedHashMap<>();
    for (Element row : all(doc, "tr")) {
      Element first = (Element) row.getFirstChild();
      if (first.getAttribute("data-heading").equals("No.")) {
        sentences.put(first.getTextContent(), cell(row, "What"));
      }
    }
    int checked = 0;
    for (Element text : all(doc, "text")) {
      String subject = text.getAttribute("data-subject");
      if (subject.startsWith("finding:")) {
        Finding marked =
            STUDY.findings().stream()
                .filter(f -> f.id().equals(subject.substring(8)))
                .findFirst()
                .orElseThrow();
        assertThat(sentences.get(text.getTextContent())).startsWith(marked.text());
        checked++;
      }
    }
    assertThat(checked).isGreaterThan(3);
  }

  private static String cell(Element row, String heading) {
    return all(row, "td").stream()
        .filter(td -> td.getAttribute("data-heading").equals(heading))
        .map(Element::getTextContent)
        .collect(Collectors.joining());
  }

  /** What somebody must look at is never folded away; what passes always is, with its count. */
  @Test
  void whatPassesIsFoldedAwayByGroup() throws Exception {
    for (Study each : List.of(STUDY, HERON)) {
      Document doc = parsed(page(each));
      Map<String, Long> folded = new TreeMap<>();
      for (Element fold : all(doc, "details")) {
        List<Element> rows =
            all(fold, "tr").stream().filter(r -> !cell(r, "Source").isEmpty()).toList();
        if (rows.isEmpty()) {
          continue;
        }
        assertThat(rows).noneMatch(r -> r.getAttribute("class").equals("fail"));
        String words = all(fold, "summary").get(0).getTextContent();
        for (String verdict : List.of("pass", "caution", "not-applicable")) {
          long n = rows.stream().filter(r -> r.getAttribute("class").equals(verdict)).count();
          folded.merge(verdict, n, Long::sum);
          assertThat(words.matches(".*\\b" + n + " (pass|need|do|does).*")).isEqualTo(n > 0);
        }
      }
      assertThat(folded.get("pass")).isEqualTo(each.count(Verdict.PASS)).isPositive();
      assertThat(folded.get("not-applicable")).isEqualTo(each.count(Verdict.NOT_APPLICABLE));
      // the worst of those alike stands above, whatever is to be done
      long told =
          Gathered.open(each.findings()).stream()
              .filter(g -> g.worst().verdict() == Verdict.CAUTION)
              .count();
      long folds = each.count(Verdict.CAUTION) - told;
      assertThat(folded.get("caution")).isEqualTo(folds).isPositive();
    }
  }

  /** No paragraph and no sentence of a finding stands twice; sources and headings may. */
  @Test
  void nothingIsSaidTwice() throws Exception {
    for (String page : List.of(HTML, Shipped.report("heron"))) {
      List<String> said = new ArrayList<>();
      Document doc = parsed(page);
      all(doc, "p").forEach(p -> said.add(p.getTextContent()));
      all(doc, "tr").forEach(row -> said.add(cell(row, "What")));
      said.removeIf(text -> text.length() < 40);
      assertThat(said).doesNotHaveDuplicates().hasSizeGreaterThan(50);
    }
  }

  /** Each has their own figures on each seat; who only rides behind is told no road to see. */
  @Test
  void peopleHaveTheirOwnFiguresOnEachSeat() throws Exception {
    Study heron = HERON;
    Map<String, String> seen = new LinkedHashMap<>();
    for (Element row : all(parsed(Shipped.report("heron")), "tr")) {
      Element table = (Element) row.getParentNode().getParentNode();
      Element first = (Element) row.getFirstChild();
      if (table.getAttribute("class").equals("own") && first.getTextContent().equals("sight")) {
        seen.put(all(table, "caption").get(0).getTextContent(), cell(row, "Figure"));
      }
    }
    Map<String, String> wanted = new LinkedHashMap<>();
    for (String name : List.of("Runa", "Bram")) {
      Finding sight =
          heron.findings().stream()
              .filter(f -> f.id().equals("sight." + name))
              .findFirst()
              .orElseThrow();
      wanted.put(
          "Sight, foot, hands and seat of " + name,
          String.format(Locale.ROOT, "%.1f mm", sight.value()).replace(".0 mm", " mm"));
    }
    assertThat(seen).isEqualTo(wanted);
  }

  /** Leaned by the angle of the finding, what touches is on the road: no lower, no higher. */
  @Test
  void itIsShownLeanedToEachSide() throws Exception {
    List<String> names =
        all(parsed(Shipped.report("heron")), "input").stream()
            .map(i -> i.getAttribute("aria-label"))
            .filter(label -> label.startsWith("Larger: leaned"))
            .toList();
    assertThat(names).hasSize(2);
    for (int i = 0; i < 2; i++) {
      String side = i == 0 ? "left" : "right";
      double least =
          Shipped.study("heron").findings().stream()
              .filter(f -> f.id().startsWith("lean." + side + "."))
              .mapToDouble(Finding::value)
              .min()
              .orElseThrow();
      assertThat(names.get(i))
          .startsWith("Larger: leaned to the " + side)
          .contains(String.format(Locale.ROOT, "%.1f°", least));
    }
  }

  @Test
  void eachCushionIsCutThroughOnce() throws Exception {
    List<String> cuts =
        all(parsed(Shipped.report("heron")), "input").stream()
            .map(i -> i.getAttribute("aria-label"))
            .filter(label -> label.endsWith("cut through"))
            .toList();
    assertThat(cuts)
        .containsExactly(
            "Larger: pan cut through",
            "Larger: back cut through",
            "Larger: headRest cut through",
            "Larger: pillionPan cut through",
            "Larger: pillionBack cut through");
  }

  @Test
  void userWordsAreEscapedEverywhere() throws Exception {
    Layout l = Plover.layout();
    String evil = "<b onclick=\"x\">&'</b>";
    Map<String, Person> crew = new LinkedHashMap<>();
    l.crew()
        .values()
        .forEach(
            p ->
                crew.put(
                    p.name() + evil,
                    new Person(
                        p.name() + evil,
                        p.sex(),
                        p.stature(),
                        p.mass(),
                        p.measured(),
                        p.seats(),
                        p.helmet(),
                        p.boots(),
                        p.clothes())));
    Layout hostile =
        new Layout(
            evil,
            evil + "\u0000\u0007\uD800",
            Units.MM,
            List.of(evil),
            l.measures(),
            l.pins(),
            l.parts(),
            l.ties(),
            l.limits(),
            l.wishes(),
            l.sections(),
            l.stances(),
            crew,
            l.demands(),
            Map.of(),
            Map.of());
    String page = Report.html(Study.of(hostile));
    Document doc = parsed(page);
    assertThat(all(doc, "b")).hasSize(3);
    assertThat(all(doc, "h1").get(0).getTextContent()).startsWith(evil);
    assertThat(all(doc, "h3").stream().map(Element::getTextContent))
        .anyMatch(words -> words.startsWith("Mara" + evil));
  }

  @Test
  void theTextDoesNotDependOnTheLocale() {
    Locale before = Locale.getDefault();
    try {
      // points, digits and capitals all differ in the first of these
      List<String> tags = List.of("tr-TR-u-nu-arab", "de-DE", "tr-TR", "ar-EG-u-nu-arab");
      for (String tag : Boolean.getBoolean("longlow.long") ? tags : tags.subList(0, 1)) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(Report.html(STUDY)).isEqualTo(HTML);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void cautionsAreSaidOnce() {
    assertThat(HTML).containsOnlyOnce("A sketch, not a certificate");
    assertThat(HTML).containsOnlyOnce("Sink is good to ±20 %");
    assertThat(HTML).containsOnlyOnce("judgements built on car-driver");
    assertThat(HTML).containsOnlyOnce("plain statics");
  }

  @Test
  void theCautionOfTheLampRulesIsThereWhereLampsAreJudged() {
    boolean judged = STUDY.findings().stream().anyMatch(f -> f.id().startsWith("law."));
    assertThat(judged).isTrue();
    assertThat(HTML).containsOnlyOnce("not legal advice");
  }

  @Test
  void theCutListHasTheLengthOfEveryTube() throws Exception {
    List<String> firsts =
        all(parsed(HTML), "th").stream()
            .filter(t -> t.getAttribute("data-heading").equals("Tube"))
            .map(Element::getTextContent)
            .toList();
    assertThat(firsts).containsExactly("lowRail", "rearRail", "pipe");
    // legs 198.5 + 540 + 478.5 mm less the gains of bends of 40.9 and 64 degrees at R100
    assertThat(HTML).contains("1200.6 mm");
  }

  @Test
  void axleLoadsAreGivenWithAndWithoutEachPerson() throws Exception {
    List<String> stances =
        all(parsed(HTML), "th").stream()
            .filter(t -> t.getAttribute("data-heading").equals("Stance"))
            .map(Element::getTextContent)
            .toList();
    assertThat(stances).contains("unladen", "laden, Mara", "laden, Tor");
  }

  @Test
  void aMachineWithoutPeopleOrPartsStillHasAReport() throws Exception {
    Layout l = Plover.layout();
    Layout bare =
        new Layout(
            "bare",
            "",
            Units.MM,
            List.of(),
            l.measures(),
            l.pins(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            l.demands(),
            Map.of(),
            Map.of());
    assertThat(all(parsed(Report.html(Study.of(bare))), "h1").get(0).getTextContent())
        .isEqualTo("bare");
  }

  @Test
  void figuresOnPaperHaveTrueMinusSigns() {
    Html h = new Html();
    h.table("t", "signs", List.of("a", "b", "c"));
    h.row("", List.of("a", "b", "c"), List.of("-3 mm", "-", "- and more"));
    assertThat(h.toString()).contains(">−3 mm<", ">–<", ">- and more<");
    assertThat(FigureWords.words("trunkThigh")).isEqualTo("trunk thigh");
  }

  /** All of Unicode 15's Bidi_Control, and joiners that scripts and signs need. */
  @Test
  void nothingTurnsTheDirectionOfWriting() {
    String turning = "\u061C\u200E\u200F\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069";
    assertThat(Html.escaped("a" + turning + "b")).isEqualTo("a" + "\uFFFD".repeat(12) + "b");
    assertThat(Html.escaped("\u200C\u200D \u05D0")).isEqualTo("\u200C\u200D \u05D0");
  }

  /** On paper a column of sources made rows six times as high as what they are the source of. */
  @Test
  void onPaperSourcesRunAlongTheirFinding() {
    String html = Shipped.report("heron");
    String head = html.substring(html.indexOf("<table class=\"findings open\""));
    head = head.substring(0, head.indexOf("</thead>"));
    assertThat(head.split("<th ", -1)).hasSize(1 + 8);
    assertThat(head.substring(head.lastIndexOf("<th"))).contains(">Source<");
    assertThat(html.substring(html.indexOf("@media print")))
        .contains(".open tr{display:grid", ".open tr>:nth-child(8){grid-column:3/-1");
  }

  /** Whoever has least room on the way in, pose by pose, once; here somebody on the curlew. */
  @Test
  void theTightestWayInIsShownPoseByPose() {
    String page = Shipped.report("curlew");
    assertThat(page.split("getting in, pose by pose", -1)).hasSize(2);
    assertThat(page).contains("Larger: Tam getting in").contains("3  going down or rising");
    assertThat(page).contains("Least room is left going down or rising.");
  }
}

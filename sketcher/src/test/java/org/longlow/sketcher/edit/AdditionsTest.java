package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Forms;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Line;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.Stock;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.Wish;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;

/** Whatever a document has besides parts is added with values that hold as the machine is. */
class AdditionsTest {

  private static final Layout WREN = Tried.wren();
  private static final Places NOW = Drawn.places(WREN);

  /** Pins of the machine that nothing holds, four corners of a crooked figure. */
  private static Additions.Picked loose(Layout layout) {
    return new Additions.Picked(
        List.of("pin", "pin2", "pin3", "pin4"), List.of("engine", "tank"), Drawn.places(layout));
  }

  private static final Layout LOOSE = withLoosePins();

  private static Layout withLoosePins() {
    Layout layout = WREN;
    for (PointMm at :
        List.of(
            new PointMm(400, 700),
            new PointMm(650, 760),
            new PointMm(700, 900),
            new PointMm(380, 850))) {
      layout = Tried.of(layout, Additions.pin(at, Hang.FRAME));
    }
    return layout;
  }

  private static void isOneMore(Layout before, Layout after, String group) {
    Map<String, ?> entries = Entries.of(after, group);
    assertThat(entries).hasSize(Entries.of(before, group).size() + 1);
    String name = List.copyOf(entries.keySet()).get(entries.size() - 1);
    assertThat(Forms.of(after, new Entries.Entry(group, name)).orElseThrow().rows()).isNotEmpty();
  }

  @ParameterizedTest
  @EnumSource(TieKind.class)
  void everyTieThatHasFiguresHoldsWhatIsThere(TieKind kind) {
    Layout before = LOOSE;
    Layout after = Tried.of(before, Additions.tie(kind, loose(before)));
    isOneMore(before, after, "ties");
    assertThat(after.ties().get(kind.word()).kind()).isEqualTo(kind);
    boolean shapes =
        switch (kind) {
          case TOGETHER, SAME_CENTRE, ON_EDGE, PARALLEL, SQUARE_TO, IN_LINE, AS_LONG_AS -> true;
          case AS_ROUND_AS, HALFWAY, PART_WAY, MIRRORED, ON_ARC -> true;
          default -> false;
        };
    if (!shapes) {
      for (String pin : before.pins().keySet()) {
        double moved = Drawn.places(after).pin(pin).distance(Drawn.places(before).pin(pin));
        assertThat(moved).as(kind + " moves " + pin).isLessThan(1e-4);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Limit.Kind.class)
  void everyLimitHoldsAsItIs(Limit.Kind kind) {
    Layout before = LOOSE;
    Additions.Picked picked =
        kind == Limit.Kind.INSIDE
            ? new Additions.Picked(List.of("crank"), List.of("engine"), Drawn.places(before))
            : loose(before);
    Layout after = Tried.of(before, Additions.limit(kind, picked));
    isOneMore(before, after, "limits");
    assertThat(after.pins()).isEqualTo(before.pins());
  }

  @Test
  void aGapToOnePartIsAGapToTheRider() {
    Additions.Picked engine = new Additions.Picked(List.of(), List.of("engine"), NOW);
    Layout after = Additions.limit(Limit.Kind.GAP, engine).applied(WREN);
    assertThat(after.limits().get("gap").parts()).containsExactly("engine", "rider");
  }

  @ParameterizedTest
  @EnumSource(Wish.Kind.class)
  void everyWishIsReadAsAdded(Wish.Kind kind) {
    Layout before = LOOSE;
    isOneMore(before, Tried.of(before, Additions.wish(kind, loose(before))), "wishes");
  }

  @Test
  void whereTooLittleIsPickedItIsSaidHowMuchIsNeeded() {
    Additions.Picked one = new Additions.Picked(List.of("crank"), List.of(), NOW);
    assertThat(Tried.refusal(WREN, Additions.tie(TieKind.DISTANCE, one)))
        .contains("speaks of 2 pins")
        .contains("picked is 1");
    assertThat(Tried.refusal(WREN, Additions.limit(Limit.Kind.GAP, one))).contains("2 parts");
    Additions.Picked part = new Additions.Picked(List.of(), List.of("tank"), NOW);
    for (Additions.Picked few : List.of(one, part)) {
      assertThat(Tried.refusal(WREN, Additions.section(few)))
          .as("both at once")
          .contains("pick what opens")
          .contains("the pin it turns about");
    }
    assertThat(Tried.refusal(WREN, Additions.section(part))).contains("picked are 1 and 0");
    assertThat(Tried.refusal(WREN, Additions.stance(Stance.Kind.OPEN))).contains("nothing opens");
  }

  @Test
  void partsOpenOnThePinPickedOrOnFour() {
    Additions.Picked hinge = new Additions.Picked(List.of("tankPin"), List.of("tank"), NOW);
    Layout opens = Tried.of(WREN, Additions.section(hinge));
    Section section = opens.sections().get("section");
    assertThat(section.pivot()).contains("tankPin");
    assertThat(section.parts()).containsExactly("tank");
    Layout seen = Tried.of(opens, Additions.stance(Stance.Kind.OPEN));
    assertThat(seen.stances().get("section open").section()).isEqualTo("section");
    assertThat(Tried.refusal(seen, Additions.stance(Stance.Kind.OPEN))).contains("already");

    Layout before = LOOSE;
    Additions.Picked four =
        new Additions.Picked(
            List.of("pin", "pin2", "pin4", "pin3"), List.of("tank"), Drawn.places(before));
    Section linkage = Tried.of(before, Additions.section(four)).sections().get("section");
    assertThat(linkage.frameArms()).containsExactly("pin", "pin2");
    assertThat(linkage.sectionArms()).containsExactly("pin4", "pin3");
  }

  @Test
  void peopleStancesDemandsMeasuresAndSeatsAreAddedOnce() {
    Layout woman = Tried.of(WREN, Additions.person(Sex.FEMALE));
    isOneMore(WREN, woman, "crew");
    Person person = woman.crew().get("woman");
    // mean of the survey of 2012: 1628.5 mm, 67.8 kg
    assertThat(person.stature().evaluate(n -> 0)).isBetween(1620.0, 1640.0);
    assertThat(person.mass().evaluate(n -> 0)).isBetween(60.0, 75.0);
    assertThat(Tried.of(WREN, Additions.person(Sex.MALE)).crew()).containsKey("man");

    isOneMore(WREN, Tried.of(WREN, Additions.measure()), "measures");
    for (Stance.Kind kind : Stance.Kind.values()) {
      boolean there =
          WREN.stances().values().stream().anyMatch(s -> s.kind() == kind)
              || kind == Stance.Kind.OPEN;
      if (!there) {
        isOneMore(WREN, Tried.of(WREN, Additions.stance(kind)), "stances");
      } else {
        Tried.refusal(WREN, Additions.stance(kind));
      }
    }
    Layout demanding = Tried.of(WREN, Additions.demand(Demands.Key.LEAN));
    assertThat(demanding.demands().limits()).containsKey(Demands.Key.LEAN);
    assertThat(demanding.demands().limit(Demands.Key.LEAN))
        .isEqualTo(WREN.demands().limit(Demands.Key.LEAN));
    assertThat(Tried.refusal(demanding, Additions.demand(Demands.Key.LEAN))).contains("already");
    Layout ruled = Tried.of(WREN, Additions.rules("uk"));
    assertThat(ruled.demands().rules()).contains("uk");
    assertThat(Tried.refusal(ruled, Additions.rules("uk"))).contains("already");

    Layout seats = Tried.of(WREN, Additions.seat(new PointMm(-150, 620)));
    assertThat(seats.parts().values().stream().flatMap(p -> p.seatOf().stream()).distinct())
        .containsExactly("rider", "passenger");
    assertThat(seats.parts()).hasSize(WREN.parts().size() + 3);
    assertThat(person.seats()).as("no other seat").containsExactly("rider");
    Layout two = Tried.of(seats, Additions.person(Sex.FEMALE));
    assertThat(two.crew().get("woman").seats()).as("nobody's seat").containsExactly("passenger");
  }

  @Test
  void everyGroupOfTheDocumentCanBeAddedTo() {
    Additions.Picked picked =
        new Additions.Picked(List.of("pin", "pin2"), List.of("tank"), Drawn.places(LOOSE));
    Additions.Picked hinge =
        new Additions.Picked(List.of("tankPin"), List.of("tank"), Drawn.places(LOOSE));
    Map<String, Edit> edits =
        Map.ofEntries(
            Map.entry("measures", Additions.measure()),
            Map.entry("pins", Additions.pin(new PointMm(1, 2), Hang.FRAME)),
            Map.entry("parts", Adding.of("box").with(PinSpot.at(new PointMm(1, 900))).edit()),
            Map.entry("ties", Additions.tie(TieKind.DISTANCE, picked)),
            Map.entry("limits", Additions.limit(Limit.Kind.DISTANCE, picked)),
            Map.entry("wishes", Additions.wish(Wish.Kind.COMFORT, picked)),
            Map.entry("sections", Additions.section(hinge)),
            Map.entry("stances", Additions.stance(Stance.Kind.FULL_DROOP)),
            Map.entry(
                "photos",
                PhotoEdits.put("side", "side.png", 800, 400, new Envelope(0, 2000, 0, 1000))),
            Map.entry("dimensions", kept(LOOSE, "pin", "pin2")),
            Map.entry("lines", NewLine.of(Line.Kind.HOSE, picked)),
            Map.entry("variants", Additions.variant()),
            Map.entry("stock", NewStock.of(Stock.Form.SHEET)),
            Map.entry("crew", Additions.person(Sex.MALE)));
    Document.LAYOUT.fields().stream()
        .filter(f -> f.type() instanceof Type.Group)
        .forEach(
            f -> {
              assertThat(edits).containsKey(f.key());
              isOneMore(LOOSE, Tried.of(LOOSE, edits.get(f.key())), f.key());
            });
  }

  private static Edit kept(Layout layout, String from, String to) {
    Places places = Drawn.places(layout);
    MeasureView view =
        new MeasureView(
            layout, places, places, Map.of(), new Ground(PointMm.ORIGIN, new PointMm(1, 0)));
    Measuring m = Measuring.NOTHING.with(view.pin(from), false).with(view.pin(to), false);
    return Keeping.dimension(m, m.readings(view).get(0), view);
  }

  /** From (400, 700) to (650, 760): 257.1 mm, 13.5 degrees up. */
  @Test
  void aLimitBeginsAtFullTensAndFullDegrees() {
    assertThat(from(Limit.Kind.DISTANCE)).isEqualTo("250 mm");
    assertThat(from(Limit.Kind.ANGLE)).isEqualTo("13 deg");
    assertThat(from(Limit.Kind.ABOVE)).isEqualTo("60 mm");
    assertThat(from(Limit.Kind.HEIGHT)).isEqualTo("700 mm");
    assertThat(from(Limit.Kind.MEASURE)).isEqualTo("820 mm");
    Layout held = Edits.free("pegReach", false).applied(WREN);
    assertThat(Tried.refusal(held, Additions.limit(Limit.Kind.MEASURE, loose(LOOSE))))
        .contains("free one first");
  }

  private static String from(Limit.Kind kind) {
    Layout after = Additions.limit(kind, loose(LOOSE)).applied(LOOSE);
    return after.limits().get(kind.word()).from().orElseThrow().text();
  }

  @Test
  void theSectionSeenOpenIsTheFirstThatIsNot() {
    Layout two = WREN;
    for (String part : List.of("tank", "headlamp")) {
      Additions.Picked hinge = new Additions.Picked(List.of("tankPin"), List.of(part), NOW);
      two = Additions.section(hinge).applied(two);
    }
    Layout one = Additions.stance(Stance.Kind.OPEN).applied(two);
    assertThat(one.stances()).containsKey("section open").doesNotContainKey("section2 open");
    Layout both = Additions.stance(Stance.Kind.OPEN).applied(one);
    assertThat(both.stances().get("section2 open").section()).isEqualTo("section2");
    assertThat(Tried.refusal(both, Additions.stance(Stance.Kind.OPEN))).contains("every section");
  }

  @Test
  void somebodyNewSitsWhereNobodySitsTheRiderFirst() {
    Person woman = Additions.person(Sex.FEMALE).applied(WREN).crew().get("woman");
    assertThat(woman.sex()).isEqualTo("female");
    assertThat(woman.seats()).containsExactly("rider");
    assertThat(Additions.person(Sex.MALE).applied(WREN).crew().get("man").sex()).isEqualTo("male");
    Layout pair = Additions.seat(new PointMm(-150, 620)).applied(WREN);
    assertThat(Additions.person(Sex.MALE).applied(pair).crew().get("man").seats())
        .as("Mara and Tor ride, nobody sits behind")
        .containsExactly("passenger");
    Layout alone = Change.set(pair, Map.of(), "crew");
    assertThat(Additions.person(Sex.MALE).applied(alone).crew().get("man").seats())
        .containsExactly("rider");
    Layout behind = WREN;
    for (String part : List.of("pan", "back", "grips", "pegs")) {
      behind = Change.set(behind, "pillion", "parts", part, "seat");
    }
    assertThat(Additions.person(Sex.MALE).applied(behind).crew().get("man").seats())
        .containsExactly("pillion");
    Layout none = Change.set(WREN, Map.of(), "parts");
    assertThat(Additions.person(Sex.MALE).applied(none).crew().get("man").seats())
        .as("before there is a pan")
        .containsExactly("rider");
  }
}

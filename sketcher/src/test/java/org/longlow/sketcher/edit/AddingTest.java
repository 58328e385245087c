package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.document.Forms;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.demo.Demos;
import org.longlow.rider.geom.PointMm;

/** Parts of the gallery put into machines. */
class AddingTest {

  private static final Layout WREN = Tried.wren();

  static Stream<String> specimens() {
    return Gallery.layout().parts().keySet().stream();
  }

  private static Adding placed(String specimen, PointMm first) {
    return Adding.of(specimen).with(PinSpot.at(first));
  }

  @ParameterizedTest
  @MethodSource("specimens")
  void whateverIsAddedIsReadShownAndTakenBack(String specimen) {
    PointMm at = new PointMm(700, 650);
    Adding adding = placed(specimen, at);
    String name = adding.nameIn(WREN);
    Layout after = Tried.of(WREN, adding.edit());
    History history = new History(WREN);
    history.add(adding.edit().name(), after);
    assertThat(history.back()).isTrue();
    assertThat(history.layout()).isSameAs(WREN);

    Part part = after.parts().get(name);
    Part shown = adding.part();
    assertThat(part.kind()).isEqualTo(shown.kind());
    assertThat(part.base().mass()).isEqualTo(shown.base().mass());
    assertThat(part.base().material()).isEqualTo(shown.base().material());
    Form form = Forms.of(after, new Entries.Entry("parts", name)).orElseThrow();
    assertThat(form.name()).isEqualTo(part.kind());
    assertThat(form.rows()).isNotEmpty();
    assertThat(after.pins().keySet()).containsAll(part.pins());
    if (adding.replaced(WREN).isEmpty()) {
      assertThat(Drawn.places(after).pin(part.pins().get(0)).distance(at)).isLessThan(1e-6);
      assertThat(after.parts()).hasSize(WREN.parts().size() + 1);
      assertThat(after.parts()).containsAllEntriesOf(WREN.parts());
      assertThat(after.pins()).containsAllEntriesOf(WREN.pins());
      assertThat(after.pins()).hasSize(WREN.pins().size() + part.ownPins().size());
    } else {
      assertThat(after.parts()).hasSameSizeAs(WREN.parts());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"heron", "curlew", "dunlin"})
  void shippedMachinesTakeOneOfEachWithoutAFault(String machine) {
    Layout layout = Demos.layout(machine);
    int parts = layout.parts().size();
    for (String specimen : Gallery.layout().parts().keySet()) {
      Adding adding = placed(specimen, new PointMm(640, 510));
      parts += adding.replaced(layout).isPresent() ? 0 : 1;
      layout = adding.edit().applied(layout);
      assertThat(LayoutFaults.of(layout)).as(specimen).isEmpty();
      assertThat(layout.parts()).as(specimen).hasSize(parts);
    }
  }

  @Test
  void severalOfOneKindGetNamesOfTheirOwn() {
    Layout after = WREN;
    Random random = new Random(7);
    List<String> names = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Adding adding = placed("rail", new PointMm(300 + 500 * random.nextDouble(), 400 + i * 70));
      names.add(adding.nameIn(after));
      after = Tried.of(after, adding.edit());
    }
    assertThat(names).containsExactly("rail", "rail2", "rail3", "rail4");
    assertThat(after.parts()).containsKeys("rail", "rail2", "rail3", "rail4");
    assertThat(after.parts(TubePart.class).flatMap(t -> t.path().stream())).doesNotHaveDuplicates();
  }

  @Test
  void eachPinGoesWhereItIsPutOrIsSharedAndTheRestFollows() {
    PointMm rear = new PointMm(200, 700);
    Adding one = placed("exhaust", rear);
    assertThat(one.isPlaced()).isFalse();
    assertThat(one.next()).isEqualTo("bend");
    PointMm crank = Drawn.places(WREN).pin("crank");
    Adding two = one.with(new PinSpot(crank, Optional.of("crank")));
    Layout after = Tried.of(WREN, two.edit());
    TubePart tube = (TubePart) after.parts().get("exhaust");
    assertThat(tube.path().get(1)).isEqualTo("crank");
    assertThat(Drawn.places(after).pin(tube.path().get(0))).isEqualTo(rear);
    PointMm end = Drawn.places(after).pin(tube.path().get(2));
    Map<String, PointMm> drawn = Gallery.places().pins();
    PointMm offset = drawn.get("exhaustEnd").minus(drawn.get("exhaustBend"));
    assertThat(end.distance(crank.plus(offset))).isLessThan(1e-6);
    Adding three = two.with(PinSpot.at(end));
    assertThat(three.isPlaced()).isTrue();
    assertThat(three.next()).isEmpty();
    assertThat(Tried.of(WREN, three.edit())).isEqualTo(after);
  }

  @Test
  void aStandKeepsItsFootOnTheGroundHoweverHighItHangs() {
    for (double z : new double[] {120, 180, 333}) {
      Layout after = Tried.of(WREN, placed("stand", new PointMm(500, z)).edit());
      assertThat(Drawn.places(after).pin("standFoot").z()).isZero();
      assertThat(Drawn.places(after).pin("standStowed").z()).isCloseTo(z - 30, within(200));
    }
  }

  private static org.assertj.core.data.Offset<Double> within(double mm) {
    return org.assertj.core.data.Offset.offset(mm);
  }

  @Test
  void theGhostIsWhereThePartWillBe() {
    Adding adding = Adding.of("pan");
    PointMm pointer = new PointMm(421.5, 612.25);
    Map<String, PointMm> ghost = adding.places(pointer).pins();
    Layout after = Tried.of(WREN, adding.with(PinSpot.at(pointer)).edit());
    Map<String, PointMm> real = Drawn.places(after).pins();
    assertThat(real.get("panFrom").distance(ghost.get("panFrom"))).isLessThan(1e-6);
    assertThat(real.get("panTo").distance(ghost.get("panTo"))).isLessThan(1e-6);
  }

  @Test
  void aWheelAndWhatCarriesItTakeThePlaceOfThoseThere() {
    Layout wheel = Tried.of(WREN, Adding.of("frontWheel").edit());
    WheelPart front = (WheelPart) wheel.parts().get("frontWheel");
    assertThat(front.tyre()).isEqualTo("120/70 R17");
    assertThat(front.axle()).isEqualTo("frontAxle");
    assertThat(wheel.pins()).isEqualTo(WREN.pins());

    Layout linked = Tried.of(WREN, Adding.of("leadingLinkFork").edit());
    FrontPart fork = (FrontPart) linked.parts().get("fork");
    assertThat(fork.type()).isEqualTo(FrontPart.Kind.LEADING_LINK);
    assertThat(List.of(fork.top(), fork.bottom(), fork.axle()))
        .containsExactly("headTop", "headBottom", "frontAxle");
    PointMm pivot = Drawn.places(linked).pin(fork.pivot().orElseThrow());
    assertThat(pivot.minus(Drawn.places(linked).pin("frontAxle")).x())
        .isCloseTo(-140, within(1e-6));
    assertThat(linked.ties()).isEqualTo(WREN.ties());
    Layout back = Tried.of(linked, Adding.of("telescopicFork").edit());
    assertThat(((FrontPart) back.parts().get("fork")).pivot()).isEmpty();
    assertThat(back.pins()).as("its pivot was its own").isEqualTo(WREN.pins());
    Layout arm = Tried.of(WREN, Adding.of("swingarm").edit());
    assertThat(arm.parts().get("swingarm").pins()).containsExactly("swingPivot", "rearAxle");
  }

  /**
   * A lamp's own pin goes with the choice of another, unless something else has come to need it.
   */
  @Test
  void aPinMadeForAPartGoesOnceNothingUsesIt() {
    Layout with = Tried.of(WREN, placed("tailLamp", new PointMm(-150, 700)).edit());
    String own = with.parts().get("tailLamp").pins().get(0);
    assertThat(WREN.pins()).doesNotContainKey(own);
    Target at = new Target.OfPart("tailLamp", List.of("at"), "at");
    Layout moved = Tried.of(with, Edits.set(at, "lampPin"));
    assertThat(moved.parts().get("tailLamp").pins()).containsExactly("lampPin");
    assertThat(moved.pins()).isEqualTo(WREN.pins());

    Layout tied = Tried.of(with, Edits.tie(TieKind.AHEAD, List.of(own, "tankPin"), "1130 mm"));
    assertThat(Tried.of(tied, Edits.set(at, "lampPin")).pins()).containsKey(own);
    Layout shared =
        Tried.of(with, Edits.set(new Target.OfPart("headlamp", List.of("at"), "at"), own));
    assertThat(shared.pins()).as("nobody made it for the headlamp").containsKey("lampPin");
    assertThat(Tried.of(shared, Edits.set(at, "lampPin")).pins()).containsKey(own);
    Layout nailed = Tried.of(with, Edits.nail(own, true));
    assertThat(Tried.of(nailed, Edits.set(at, "lampPin")).pins()).containsKey(own);
  }

  @Test
  void whatItHangsOnDecidesWhatItMovesWith() {
    Layout heron = Demos.layout("heron");
    String section = heron.sections().keySet().iterator().next();
    String lid = heron.sections().get(section).parts().get(0);
    List<Hang> offered = Hang.offered(heron, List.of(lid, "frontWheel", "fork", "nobody"));
    Map<String, Hang> byWords = new LinkedHashMap<>();
    offered.forEach(h -> byWords.put(h.words(), h));
    assertThat(byWords.keySet())
        .contains(lid + " (opens with " + section + ")", "the frame")
        .contains("frontWheel (goes up and down with the front wheel, turns with the bars)");
    assertThat(offered.get(offered.size() - 1)).isEqualTo(Hang.FRAME);

    Adding box = placed("box", new PointMm(900, 900)).on(offered.get(0));
    Layout after = Tried.of(heron, box.edit());
    String name = box.nameIn(heron);
    assertThat(after.sections().get(section).parts()).contains(name);
    Part part = after.parts().get(name);
    assertThat(after.pins().get(part.pins().get(0)).with()).isEqualTo(section);
    assertThat(part.base().touches()).contains(lid);

    Hang wheel = new Hang("frontWheel", Pin.FRONT_WHEEL, true);
    Layout guard = Tried.of(WREN, placed("cowl", new PointMm(1640, 600)).on(wheel).edit());
    assertThat(guard.parts().get("cowl").base().steered()).isTrue();
    assertThat(guard.pins().get("cowlPin").with()).isEqualTo(Pin.FRONT_WHEEL);
  }
}

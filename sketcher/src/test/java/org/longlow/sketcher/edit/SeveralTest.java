package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.BuiltSpan;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.demo.Demos;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Wren;

/** Several things copied, turned round, moved, nailed, taken out. */
class SeveralTest {

  private static final Layout WREN = Tried.wren();
  private static final PointMm STEP = new PointMm(40, 60);

  private static PartShape shape(Layout layout, String part) {
    return Shapes.of(layout.parts().get(part), Drawn.places(layout), false);
  }

  private static boolean isAtEnd(Part part) {
    return part instanceof Part.AtEnd;
  }

  static Stream<String> bodies() {
    return Gallery.layout().parts().values().stream().filter(p -> !isAtEnd(p)).map(Part::name);
  }

  /** The gallery's part on the small machine. */
  private static Layout with(String specimen) {
    Adding adding = Adding.of(specimen).with(PinSpot.at(new PointMm(700, 700)));
    return adding.edit().applied(WREN);
  }

  private static String added(String specimen) {
    return Adding.of(specimen).nameIn(WREN);
  }

  // --- copies ---

  @ParameterizedTest
  @MethodSource("bodies")
  void aCopyIsTheSamePartAStepAway(String specimen) {
    Layout before = with(specimen);
    String name = added(specimen);
    Layout after = Tried.of(before, Several.duplicate(List.of(name), STEP));
    String copy = Several.copies(before, List.of(name)).get(name);
    assertThat(after.parts()).hasSize(before.parts().size() + 1).containsKey(copy);
    assertThat(after.parts()).containsAllEntriesOf(before.parts());
    PartShape one = shape(after, name);
    PartShape two = shape(after, copy);
    assertThat(two.massKg()).isCloseTo(one.massKg(), within(1e-9));
    AffineTransformation shift = AffineTransformation.translationInstance(STEP.x(), STEP.z());
    isSame(two.outline(), shift.transform(one.outline()));
    assertThat(after.parts().get(copy).pins())
        .doesNotContainAnyElementsOf(after.parts().get(name).pins());
  }

  private static void isSame(Geometry a, Geometry b) {
    assertThat(a.symDifference(b).getArea()).isLessThan(1e-3 * Math.max(1, a.getArea()));
    assertThat(a.getEnvelopeInternal().getMinX())
        .isCloseTo(b.getEnvelopeInternal().getMinX(), within(1e-3));
  }

  private static org.assertj.core.data.Offset<Double> within(double d) {
    return org.assertj.core.data.Offset.offset(d);
  }

  @Test
  void whatCopiesNameAmongThemselvesFollows() {
    List<String> both = List.of("pan", "back");
    Layout after = Tried.of(WREN, Several.duplicate(both, new PointMm(0, 300)));
    CushionPart back = (CushionPart) after.parts().get("back2");
    assertThat(back.base().touches()).containsExactly("pan2");
    assertThat(back.from()).isEqualTo("backLow2");
    assertThat(after.ties().get("backFootX2").pins()).containsExactly("backLow2", "panRear2");
    assertThat(after.ties().get("backFootX2").is()).isEqualTo(WREN.ties().get("backFootX").is());
    assertThat(after.ties()).as("it speaks of the rear axle too").doesNotContainKey("panPlace2");
    Layout alone = Tried.of(WREN, Several.duplicate(List.of("back"), new PointMm(0, 300)));
    assertThat(alone.parts().get("back2").base().touches()).containsExactly("pan");
    assertThat(alone.ties()).containsKey("backLong2").doesNotContainKey("backFootX2");
  }

  @Test
  void whatIsThereOnceIsNotCopiedAndSectionsTakeTheirCopies() {
    assertThat(Tried.refusal(WREN, Several.duplicate(List.of("frontWheel"), STEP)))
        .contains("cannot be there twice");
    Layout heron = Demos.layout("heron");
    Layout after = Several.duplicate(List.of("lid"), STEP).applied(heron);
    assertThat(after.sections().get("lid").parts()).contains("lid", "lid2");
  }

  // --- mirrored ---

  @ParameterizedTest
  @MethodSource("bodies")
  void turnedRoundItIsItsMirrorImageAndTurnedTwiceItself(String specimen) {
    Layout before = with(specimen);
    String name = added(specimen);
    Part part = before.parts().get(name);
    double x = Mirror.line(before, List.of(name));
    Edit edit = Mirror.turnedRound(List.of(name), x);
    if (part instanceof CushionPart cushion && cushion.role() != CushionPart.Role.PAN) {
      assertThat(Tried.refusal(before, edit)).contains("faces one way");
      return;
    }
    Layout once = Tried.of(before, edit);
    AffineTransformation mirror = AffineTransformation.reflectionInstance(x, 0, x, 1);
    boolean faces = part.kind().equals("lamp"); // its depth lies behind its face, mirrored or not
    if (!faces) {
      isSame(shape(once, name).outline(), mirror.transform(shape(before, name).outline()));
    }
    PartShape was = shape(before, name);
    PartShape now = shape(once, name);
    assertThat(now.leftMm()).isCloseTo(was.rightMm(), within(1e-6));
    assertThat(now.rightMm()).isCloseTo(was.leftMm(), within(1e-6));
    assertThat(now.massKg()).isCloseTo(was.massKg(), within(1e-9));
    assertThat(Tried.of(once, edit)).isEqualTo(before);
  }

  @ParameterizedTest
  @MethodSource("bodies")
  void onTheOtherSideItLooksTheSameFromTheSide(String specimen) {
    Layout before = with(specimen);
    String name = added(specimen);
    Edit edit = Mirror.otherSide(List.of(name));
    Layout once = Tried.of(before, edit);
    isSame(shape(once, name).outline(), shape(before, name).outline());
    assertThat(shape(once, name).leftMm()).isCloseTo(shape(before, name).rightMm(), within(1e-6));
    assertThat(Tried.of(once, edit)).isEqualTo(before);
  }

  @Test
  void whatSitsInAWheelAndCornersOfATubeComeToTheOtherSideToo() {
    Layout heron = Demos.layout("heron");
    Edit edit = Mirror.otherSide(List.of("rearWheel", "dragLink"));
    Layout once = edit.change().apply(heron);
    WheelPart wheel = (WheelPart) once.parts().get("rearWheel");
    // the sprocket of the chain, 92 mm to the left
    assertThat(wheel.inside().get(0).y().evaluate(n -> 0)).isNegative();
    assertThat(wheel.inside().get(0).radius())
        .isEqualTo(((WheelPart) heron.parts().get("rearWheel")).inside().get(0).radius());
    assertThat(edit.change().apply(once)).isEqualTo(heron);
  }

  @Test
  void formulasAreMirroredWithWhatTheyName() {
    for (String text :
        List.of("150 mm", "-150 mm", "wheelbase", "-(rake)", "a - (b)", "(a) - (b)", "2.5 in")) {
      Formula f = Formula.parse(text);
      Formula negative = Shifted.negative(f);
      assertThat(negative.evaluate(n -> 7)).as(text).isCloseTo(-f.evaluate(n -> 7), within(1e-9));
      assertThat(Shifted.negative(negative).text()).isEqualTo(text);
      assertThat(Shifted.mirrored(f, 812.5).evaluate(n -> 7))
          .isCloseTo(1625 - f.evaluate(n -> 7), within(1e-6));
      assertThat(Shifted.by(f, 12.5).evaluate(n -> 7))
          .isCloseTo(12.5 + f.evaluate(n -> 7), within(1e-6));
    }
    Formula named = Formula.parse("wheelbase");
    assertThat(Shifted.mirrored(Shifted.mirrored(named, 3), 3)).isEqualTo(named);
  }

  @Test
  void anAxisAlongAPinTurnsWithThatPin() {
    Layout curlew = Demos.layout("curlew");
    String turned = "headGusset";
    curlew = Change.set(curlew, "headBottom", "parts", turned, "frame", "along");
    curlew = Change.set(curlew, Formula.parse("12 deg"), "parts", turned, "frame", "angle");
    for (String name : List.of(turned, "brakePedal")) {
      Layout before = Several.duplicate(List.of(name), STEP).applied(curlew);
      String copy = Several.copies(curlew, List.of(name)).get(name);
      double x = Mirror.line(before, List.of(copy));
      Layout once = Mirror.turnedRound(List.of(copy), x).applied(before);
      AffineTransformation mirror = AffineTransformation.reflectionInstance(x, 0, x, 1);
      isSame(shape(once, copy).outline(), mirror.transform(shape(before, copy).outline()));
    }
  }

  @Test
  void whatSharesAPinIsTurnedRoundTogetherOrNotAtAll() {
    assertThat(Tried.refusal(WREN, Mirror.turnedRound(List.of("fork"), 1500)))
        .contains("frontWheel hangs on pin frontAxle too");
    assertThat(Tried.refusal(WREN, Mirror.turnedRound(List.of("frontWheel"), 1640)))
        .contains("faces one way");
  }

  // --- moved, nailed, taken out ---

  @Test
  void pinsThatCanMoveMoveTogetherAndNailedOnesStay() {
    Layout after = Tried.of(WREN, Several.move(List.of("lowA", "lowB", "crank"), STEP));
    assertThat(Drawn.places(after).pin("lowB")).isEqualTo(Drawn.places(WREN).pin("lowB"));
    Layout free = with("rail");
    Set<String> pins = Several.pins(free, List.of("rail"));
    Layout moved = Tried.of(free, Several.move(pins, STEP));
    for (String pin : pins) {
      PointMm gone = Drawn.places(moved).pin(pin).minus(Drawn.places(free).pin(pin));
      assertThat(gone.distance(STEP)).isLessThan(1e-6);
    }
    Layout back = Tried.of(moved, Several.move(pins, STEP.times(-1)));
    assertThat(back).isEqualTo(free);
    assertThat(Tried.refusal(WREN, Several.move(List.of("crank"), STEP))).contains("nailed");
  }

  @Test
  void aPartIsLockedByNailingAllItsPins() {
    Places now = Placer.place(WREN).places();
    Set<String> pins = Several.pins(WREN, List.of("pan", "back"));
    Layout locked = Tried.of(WREN, Several.nail(pins, true));
    for (String pin : pins) {
      assertThat(locked.pins().get(pin).nailed()).isTrue();
      assertThat(Drawn.places(locked).pin(pin).distance(now.pin(pin))).isLessThan(1e-8);
    }
    assertThat(locked.pins().get("panRear").z()).isEqualTo(WREN.pins().get("panRear").z());
    Layout loose = Tried.of(locked, Several.nail(pins, false));
    assertThat(loose.pins().get("panRear").nailed()).isFalse();
  }

  @Test
  void takenOutTogetherTheyTakeTheSameAsOneAfterTheOther() {
    List<Entry> entries =
        List.of(new Entry("parts", "pan"), new Entry("pins", "backTop"), new Entry("pins", "lowA"));
    Layout together = Several.takeOut(entries).applied(WREN);
    Layout single = WREN;
    for (Entry e : entries) {
      single = Several.takeOut(List.of(e)).applied(single);
    }
    assertThat(together).isEqualTo(single);
    assertThat(Several.follows(WREN, entries))
        .contains("With pan, backTop, lowA goes ")
        .contains("back (parts)")
        .contains("ties");
    assertThat(Several.follows(WREN, List.of(new Entry("parts", "headlamp")))).isEmpty();
  }

  @Test
  void pinsThatOnlyThePartUsedGoWithItWhateverTheyAreCalled() {
    Layout two = Tried.of(WREN, Several.duplicate(List.of("pan"), new PointMm(0, 300)));
    String from = ((CushionPart) two.parts().get("pan2")).from();
    Layout odd = Tried.of(two, Edits.rename(new Entry("pins", from), "heel"));
    List<Entry> pan = List.of(new Entry("parts", "pan2"));
    Layout tied = odd;
    for (String tie : odd.ties().keySet()) {
      if (!WREN.ties().containsKey(tie)) {
        tied = Several.takeOut(List.of(new Entry("ties", tie))).applied(tied);
      }
    }
    assertThat(Several.takeOut(pan).applied(tied).pins()).isEqualTo(WREN.pins());
    assertThat(Several.follows(tied, pan)).isEmpty();
    Pin heel = tied.pins().get("heel");
    Layout noted =
        tied.withPins(Map.of("heel", new Pin(heel.x(), heel.z(), true, heel.with(), "")));
    assertThat(Several.takeOut(pan).applied(noted).pins()).containsKey("heel");
  }

  @Test
  void theNoteOfAPartIsTyped() {
    Target note = new Target.OfPart("tank", List.of("note"), "note");
    Layout noted = Tried.of(WREN, Edits.set(note, "from the scrap heap"));
    assertThat(noted.parts().get("tank").base().note()).isEqualTo("from the scrap heap");
    assertThat(Tried.of(noted, Edits.set(note, ""))).isEqualTo(WREN);
  }

  @Test
  void nothingIsSaidToBeCopiedThatIsNotThere() {
    assertThatThrownBy(() -> Mirror.otherSide(List.of("anvil")).applied(WREN))
        .isInstanceOf(OutOfRange.class);
    Map<String, String> names = new LinkedHashMap<>(Several.copies(WREN, List.of("pan", "back")));
    assertThat(new ArrayList<>(names.values())).containsExactly("pan2", "back2");
  }

  @Test
  void manyThingsAreCalledByTheFirstTwo() {
    assertThat(Several.called(List.of("a", "b", "c"))).isEqualTo("a, b, c");
    assertThat(Several.called(List.of("a", "b", "c", "d", "e"))).isEqualTo("a, b and 3 more");
    assertThat(Several.pins(WREN, List.of("anvil", "pan"))).containsExactly("panRear", "panFront");
    assertThat(Mirror.line(WREN, List.of("pan", "back", "tank"))).isCloseTo(520, within(0.5));
  }

  @Test
  void whatNamesItNoMoreIsTold() {
    assertThat(Several.follows(WREN, List.of(new Entry("parts", "lowRail"))))
        .isEqualTo("It is named no more by engine (parts).");
    assertThat(
            Several.follows(
                WREN, List.of(new Entry("parts", "lowRail"), new Entry("parts", "tank"))))
        .isEqualTo("They are named no more by engine (parts).");
  }

  /** What was typed of the machine as built is nowhere else, so it is asked about. */
  @Test
  void whatWasMeasuredOfItIsToldToGo() {
    Layout built = Change.set(WREN, Map.of("tank", Formula.parse("4 kg")), "asBuilt", "masses");
    List<Entry> tank = List.of(new Entry("parts", "tank"));
    assertThat(Several.takeOut(tank).applied(built).asBuilt().masses()).isEmpty();
    assertThat(Several.follows(built, tank))
        .endsWith("What was measured as built goes too: mass of tank.");
    assertThat(Several.follows(built, List.of(new Entry("parts", "headlamp")))).isEmpty();
    Layout spanned =
        Change.set(
            WREN,
            List.of(
                new BuiltSpan(TieKind.DISTANCE, "panRear", "panFront", Formula.parse("361 mm"))),
            "asBuilt",
            "spans");
    assertThat(Several.follows(spanned, List.of(new Entry("pins", "panFront"))))
        .endsWith("goes too: distance from panRear to panFront.");
  }

  @Test
  void loosenedPinsStayAsTheyAreWritten() {
    // off its tie by 1.2 mm, and so solved elsewhere
    Layout off = Several.nail(List.of("backTop"), false).applied(WREN);
    assertThat(off.pins().get("backTop")).isEqualTo(WREN.pins().get("backTop"));
    Layout loose = Several.nail(List.of("crank"), false).applied(WREN);
    assertThat(loose.pins().get("crank").x()).isEqualTo(WREN.pins().get("crank").x());
    assertThat(loose.pins().get("crank").nailed()).isFalse();
    assertThat(Several.nail(List.of("crank"), false).name()).isEqualTo("loosen crank");
  }

  @Test
  void limitsOfCopiedThingsAloneAreCopied() {
    Map<String, Limit> limits = new LinkedHashMap<>(Wren.layout().limits());
    limits.put("kneeRoom", limit(Limit.Kind.GAP, List.of(), List.of("pan", "back")));
    limits.put("tankRoom", limit(Limit.Kind.GAP, List.of(), List.of("back", "tank")));
    limits.put("inPan", limit(Limit.Kind.INSIDE, List.of("panRear"), List.of("engine")));
    Layout layout = Change.set(WREN, limits, "limits");
    Layout both = Several.duplicate(List.of("pan", "back"), STEP).applied(layout);
    assertThat(both.limits().keySet())
        .containsExactly("backLean", "kneeRoom", "tankRoom", "inPan", "backLean2", "kneeRoom2");
    assertThat(both.limits().get("kneeRoom2").parts()).containsExactly("pan2", "back2");
    assertThat(both.limits().get("backLean2").pins()).containsExactly("backLow2", "backTop2");
    Layout pan = Several.duplicate(List.of("pan"), STEP).applied(layout);
    assertThat(pan.limits()).isEqualTo(layout.limits());
  }

  private static Limit limit(Limit.Kind kind, List<String> pins, List<String> parts) {
    Optional<Formula> from = Optional.of(Formula.parse("5 mm"));
    return new Limit(kind, pins, parts, "", from, Optional.empty(), "");
  }

  @Test
  void sectionsThatHoldNoneOfTheCopiedStayAsTheyAre() {
    Layout heron = Demos.layout("heron");
    Layout after = Several.duplicate(List.of("lid"), STEP).applied(heron);
    int with = heron.sections().get("lid").parts().size();
    assertThat(after.sections().get("lid").parts()).hasSize(with + 1).endsWith("lid2");
    heron.sections().keySet().stream()
        .filter(name -> !name.equals("lid"))
        .forEach(
            name -> assertThat(after.sections().get(name)).isEqualTo(heron.sections().get(name)));
  }
}

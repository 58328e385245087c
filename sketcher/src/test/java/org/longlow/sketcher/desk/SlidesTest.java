package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.road.LeanFindings;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.TravelWay;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.sketcher.desk.SlideWork.Kind;
import org.longlow.sketcher.picture.Aspect;
import org.longlow.sketcher.picture.PictureOptions;

/** Wheels moved and the machine leaned on the desk: what is shown and marked is what was found. */
class SlidesTest {

  private static final Condition BUMP = Condition.empty(Stance.Kind.FULL_BUMP);
  private static final Condition UNLADEN = Condition.empty(Stance.Kind.UNLADEN);

  private static final boolean LONG = Boolean.getBoolean("longlow.long");

  @TempDir Path folder;
  private DeskHands hands;
  private SlideWork slides;

  @BeforeEach
  void open() throws InterruptedException {
    hands = new DeskHands(folder);
    hands.desk().files().openCopy(Demos.layout("heron"), Optional.empty());
    hands.until(() -> hands.desk().shown().isPresent());
    slides = hands.desk().slides();
  }

  @AfterEach
  void close() {
    hands.desk().close();
  }

  private void open(Kind kind) throws InterruptedException {
    slides.open(kind);
    hands.until(() -> slides.slide().isPresent());
  }

  private void set(double value) throws InterruptedException {
    slides.set(value);
    hands.until(() -> true);
  }

  private Study study() {
    return hands.desk().shown().get().study();
  }

  private Standing shown() {
    return hands.desk().shown().get().standing().get();
  }

  private double at(String name) {
    return slides.slide().get().marks().stream()
        .filter(m -> m.words().equals(name))
        .mapToDouble(Slide.Mark::at)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theMachineIsInEachNamedStanceAtItsMark() throws InterruptedException {
    open(Kind.TRAVEL);
    assertThat(slides.slide().get().marks())
        .extracting(Slide.Mark::words)
        .containsExactly("full droop", "unladen", "laden, Runa", "full bump");
    for (Condition condition : List.of(BUMP, UNLADEN)) {
      set(at(condition.says()));
      Standing there = study().standing(condition).get();
      assertThat(shown().places().pins().get("frontAxle").distance(there.places().pin("frontAxle")))
          .isLessThan(1e-9);
      assertThat(shown().places().pin("rearAxle").distance(there.places().pin("rearAxle")))
          .isLessThan(1e-9);
      assertThat(shown().ground().rearContact().distance(there.ground().rearContact()))
          .isLessThan(1e-9);
      assertThat(shown().condition().says()).as("Runa stays on it").isEqualTo("laden, Runa");
    }
    assertThat(hands.desk().session().get().undoName()).as("nothing was changed").isEmpty();
  }

  @Test
  void oneWheelMovesWhileTheOtherStaysAndClosingPutsBothBack() throws InterruptedException {
    Standing laden = shown();
    open(Kind.TRAVEL);
    slides.move(TravelWay.Ends.REAR);
    hands.until(() -> slides.slide().isPresent());
    set(1);
    assertThat(shown().frontTravelMm()).isEqualTo(laden.frontTravelMm());
    assertThat(shown().rearTravelMm())
        .isCloseTo(study().standing(BUMP).get().rearTravelMm(), within(1e-9));
    slides.move(TravelWay.Ends.FRONT);
    hands.until(() -> slides.slide().isPresent());
    set(0);
    assertThat(shown().rearTravelMm())
        .as("where it was left")
        .isCloseTo(study().standing(BUMP).get().rearTravelMm(), within(1e-9));
    assertThat(shown().frontTravelMm()).isLessThan(laden.frontTravelMm());
    assertThat(slides.close()).isTrue();
    hands.until(() -> true);
    assertThat(shown().places().pins()).isEqualTo(laden.places().pins());
    assertThat(slides.close()).as("nothing is open").isFalse();
    assertThat(slides.slide()).isEmpty();
  }

  /** The machine is seen again as it was before; a stance chosen meanwhile stays. */
  @Test
  @Tag("long")
  void closingComesBackToTheMachineAsItWasSeen() throws InterruptedException {
    for (Kind first : Kind.values()) {
      look(s -> s.in(Optional.empty(), s.options()));
      List<Occupant> seated = hands.desk().options().seated();
      assertThat(hands.desk().shown().get().standing()).isEmpty();
      open(first);
      assertThat(shown().kind()).isEqualTo(Stance.Kind.LADEN);
      open(first == Kind.LEAN ? Kind.TRAVEL : Kind.LEAN);
      slides.close();
      hands.until(() -> true);
      assertThat(hands.desk().shown().get().standing()).as("as drawn").isEmpty();
      assertThat(hands.desk().options().asDrawn()).isTrue();
      assertThat(hands.desk().options().seated()).isEqualTo(seated);
      open(first);
      look(s -> s.in(Optional.of(BUMP), s.options()));
      slides.close();
      hands.until(() -> true);
      assertThat(shown().condition()).as("chosen meanwhile").isEqualTo(BUMP);
      open(Kind.TRAVEL);
      slides.close();
      hands.until(() -> true);
      assertThat(shown().condition()).as("as before").isEqualTo(BUMP);
    }
  }

  private void look(Function<BoardState, PictureOptions> change) throws InterruptedException {
    hands.desk().look(o -> change.apply(hands.desk().shown().get()));
    hands.until(() -> true);
  }

  /** A crate stands 20 mm over the rear tyre, which is 305.9 mm in radius. */
  @Test
  void theTravelStopsWhereATyreComesUpToACrate() throws Exception {
    String text;
    try (InputStream in = Demos.class.getResourceAsStream("heron.json")) {
      text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    String crate =
        "\"crate\": {\"kind\": \"box\", \"frame\": \"crateLow\", \"left\": 20, \"right\": 20,"
            + " \"mass\": 1, \"outline\": {\"points\": [[-40, 0], [40, 0], [40, 5], [-40, 5]]}},";
    text = text.replaceFirst("(\"parts\": \\{)", "$1" + crate);
    text = text.replaceFirst("(\"pins\": \\{)", "$1\"crateLow\": [0, 631.8],");
    ReadResult read = LayoutReader.read(text, null);
    assertThat(read).as(read.toString()).isInstanceOf(ReadResult.Read.class);
    Layout layout = ((ReadResult.Read) read).layout();
    hands.desk().files().openCopy(layout, Optional.empty());
    hands.until(() -> hands.desk().shown().isPresent());
    open(Kind.TRAVEL);
    Slide.Mark touch =
        slides.slide().get().marks().stream().filter(Slide.Mark::touch).findFirst().get();
    assertThat(touch.words()).isEqualTo("crate and rearWheel touch");
    assertThat(touch.stop()).isEqualTo(Slide.Stop.RISING);
    assertThat(touch.where().get().z()).isCloseTo(631.8, within(0.5));
    assertThat(slides.slide().get().stop(at("laden, Runa"), 1, 0.004)).hasValue(touch.at());
    assertThat(slides.slide().get().stop(1, 0, 0.004)).as("downwards").isEmpty();
    set(touch.at());
    assertThat(shown().places().pin("rearAxle").z() + 305.9).isCloseTo(631.8, within(0.3));
  }

  /** Of all who ride it, whoever lets a thing touch first is whom the study tells of. */
  @Test
  void whatTouchesWhereIsWhatTheFindingsSay() {
    Map<String, Double> first = new HashMap<>();
    for (Standing s : study().standings()) {
      if (s.kind() == Stance.Kind.LADEN) {
        for (Slide.Mark mark : Ways.lean(study(), s).marks()) {
          String side = mark.at() < 0 ? "left " : "right ";
          first.merge(side + mark.words(), Math.abs(mark.at()), Math::min);
        }
      }
    }
    List<Finding> found =
        study().findings().stream()
            .filter(f -> f.kind().equals(LeanFindings.TOUCH) && f.about().path().size() > 1)
            .toList();
    assertThat(found).hasSizeGreaterThan(8);
    for (Finding f : found) {
      String limb = f.who().isPresent() ? " a limb of " : " ";
      assertThat(first.remove(f.about().path().get(0) + limb + f.subject()))
          .as(f.id())
          .isCloseTo(f.value(), within(1e-4));
    }
    assertThat(first).as("nothing else").isEmpty();
    for (String side : List.of("left", "right")) {
      double headline =
          study().findings().stream()
              .filter(f -> f.id().equals("lean." + side))
              .mapToDouble(Finding::value)
              .findFirst()
              .orElseThrow();
      assertThat(
              found.stream()
                  .filter(f -> f.about().path().get(0).equals(side))
                  .mapToDouble(Finding::value)
                  .filter(v -> v >= headline - 1e-6)
                  .min()
                  .orElseThrow())
          .isCloseTo(headline, within(1e-6));
    }
  }

  @Test
  void aLeanPressesTheSpringsAndStopsWhereItFirstTouches() throws InterruptedException {
    Standing laden = shown();
    open(Kind.LEAN);
    Slide slide = slides.slide().get();
    List<Slide.Mark> left = slide.sides(true, 2);
    List<Slide.Mark> right = slide.sides(false, 2);
    assertThat(left.get(0).at()).isLessThan(0).isGreaterThan(left.get(1).at());
    assertThat(right.get(0).at()).isPositive().isLessThan(right.get(1).at());
    assertThat(slide.stop(0, -59, 0.1)).hasValue(left.get(0).at());
    assertThat(slide.stop(0, 59, 0.1)).hasValue(right.get(0).at());
    assertThat(slide.stop(0, left.get(0).at() + 1, 0.1)).isEmpty();
    assertThat(slide.stop(left.get(0).at(), -59, 0.1)).as("taken up again").isEmpty();
    assertThat(slide.stop(right.get(0).at(), 59, 0.1)).as("to the right too").isEmpty();
    assertThat(slide.stop(-59, 0, 0.1)).as("back to upright").isEmpty();

    set(0);
    assertThat(shown().frontTravelMm()).isCloseTo(laden.frontTravelMm(), within(1e-3));
    set(-35);
    assertThat(slides.value()).isCloseTo(-35, within(1e-9));
    double pressed = shown().rearTravelMm();
    assertThat(pressed).isGreaterThan(laden.rearTravelMm() + 2);
    set(-20);
    assertThat(shown().rearTravelMm()).isBetween(laden.rearTravelMm(), pressed);
  }

  @Test
  void anotherStanceOrMachineEndsIt() throws InterruptedException {
    hands.desk().look(o -> o.withStance(Optional.of(Condition.open("lid"))));
    hands.until(() -> true);
    open(Kind.LEAN);
    assertThat(shown().kind()).as("what is open does not lean").isEqualTo(Stance.Kind.LADEN);
    set(20);
    hands.desk().look(o -> o.withStance(Optional.of(BUMP)));
    hands.until(() -> true);
    assertThat(slides.slide()).as("nobody rides it").isEmpty();
    assertThat(shown().places().pins()).isEqualTo(study().standing(BUMP).get().places().pins());
    hands.desk().files().openCopy(Demos.layout("curlew"), Optional.empty());
    hands.until(() -> hands.desk().shown().isPresent());
    assertThat(slides.open()).isEmpty();
    assertThat(hands.desk().options().moved()).isEmpty();
  }

  /** Steering is seen from above, travel never; each slider gives back what was seen before all. */
  @Test
  void eachSliderIsSeenWhereItShowsAndGivesTheViewBack() throws InterruptedException {
    for (Aspect before : LONG ? List.of(Aspect.values()) : List.of(Aspect.PLAN)) {
      hands.desk().look(o -> o.withAspect(before));
      open(Kind.STEER);
      assertThat(hands.desk().options().aspect()).isEqualTo(Aspect.PLAN);
      open(Kind.TRAVEL);
      assertThat(hands.desk().options().aspect())
          .isEqualTo(before == Aspect.PLAN ? Aspect.SIDE : before);
      open(Kind.LEAN);
      assertThat(hands.desk().options().aspect())
          .isEqualTo(before == Aspect.PLAN ? Aspect.FRONT : before);
      slides.close();
      assertThat(hands.desk().options().aspect()).isEqualTo(before);
    }
    open(Kind.STEER);
    hands.desk().look(o -> o.withAspect(Aspect.SIDE));
    slides.close();
    assertThat(hands.desk().options().aspect()).as("chosen meanwhile").isEqualTo(Aspect.SIDE);
  }

  @Test
  void whoGotInSitsAgainOnceThatFindingIsPutDownOrTheMachineIsMoved() throws InterruptedException {
    String in = "getting-in.Bram.in";
    hands.until(() -> hands.desk().isIdle());
    for (Runnable away :
        List.<Runnable>of(
            () -> hands.desk().chooseFinding(""),
            () -> hands.desk().chooseFinding("balance.balance"),
            () -> slides.open(Kind.LEAN))) {
      hands.desk().chooseFinding(in);
      hands.until(() -> hands.desk().options().inPose().isPresent());
      away.run();
      hands.until(() -> hands.desk().isIdle());
      assertThat(hands.desk().options().inPose()).isEmpty();
    }
  }
}

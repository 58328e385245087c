package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.start.Answers.Box;
import org.longlow.constraints.start.Answers.Drive;
import org.longlow.constraints.start.Answers.Place;
import org.longlow.rider.body.Sex;

/** Answers as people write them. */
class AnswerReaderTest {

  private static AnswerReader.Reading read(Object... said) {
    Map<Question, String> written = new EnumMap<>(Question.class);
    for (int k = 0; k < said.length; k += 2) {
      written.put((Question) said[k], (String) said[k + 1]);
    }
    return AnswerReader.read(written);
  }

  private static Answers sound(Object... said) {
    AnswerReader.Reading reading = read(said);
    assertThat(reading.faults()).isEmpty();
    return reading.answers();
  }

  private static List<String> faults(Object... said) {
    return read(said).faults().stream().map(Fault::line).toList();
  }

  @Test
  void nothingSaidIsNoAnswer() {
    assertThat(sound()).isEqualTo(Answers.NONE);
    assertThat(sound(Question.WHEELBASE, "choose")).isEqualTo(Answers.NONE);
  }

  @Test
  void peopleByPercentileOrByMeasures() {
    assertThat(sound(Question.RIDER, "woman 5 %").rider()).contains(Who.percentile(Sex.FEMALE, 5));
    assertThat(sound(Question.RIDER, "man").rider()).contains(Who.percentile(Sex.MALE, 50));
    assertThat(sound(Question.RIDER, "man 1770 mm, 84 kg").rider())
        .contains(Who.of(Sex.MALE, 1770, 84));
    Who inches = sound(Question.SECOND, "Woman, 5 ft 4 in, 140 lb").second().orElseThrow();
    assertThat(inches.statureMm()).isCloseTo(1625.6, within(1e-6));
    assertThat(inches.massKg()).isCloseTo(63.503, within(1e-3));
    assertThat(
            sound(Question.RIDER, "man 1770 mm, 84 kg, sittingheight=930 mm")
                .rider()
                .orElseThrow()
                .measuredMm())
        .containsEntry("sittingheight", 930.0);
    for (String wrong :
        List.of(
            "",
            "bloke 5 %",
            "man 0.5 %",
            "man 100 %",
            "man x %",
            "man 1770 mm",
            "man 84 kg",
            "woman 30 deg, 60 kg",
            "man 1770 mm, 84 kg, sittinghigth=930 mm",
            "man a + b, 3 kg",
            "man 50 %, 9 years",
            "man 50 %, 101 years",
            "man 1770 mm, 84 kg, rucksack 21 kg",
            "man 1770 mm, 84 kg, rucksack 9 mm")) {
      assertThat(faults(Question.RIDER, wrong)).as(wrong).hasSize(1);
    }
  }

  @Test
  void ageAndRucksackAreWordsOfTheAnswer() {
    Who whole =
        sound(Question.RIDER, "woman 168 cm, 48 years, 71 kg, rucksack 9 kg").rider().orElseThrow();
    assertThat(whole.statureMm()).isCloseTo(1680, within(1e-9));
    assertThat(whole.massKg()).isEqualTo(71);
    assertThat(whole.years()).hasValue(48);
    assertThat(whole.rucksackKg()).hasValue(9);
    Person drawn = whole.on("Wren", "rider");
    assertThat(drawn.age().orElseThrow().text()).isEqualTo("48");
    assertThat(drawn.rucksack().orElseThrow().text()).isEqualTo("9 kg");
    Who bare = sound(Question.SECOND, "man 95 %, 30 years, rucksack 0 kg").second().orElseThrow();
    assertThat(bare).isEqualTo(Who.percentile(Sex.MALE, 95).with(bare.years(), bare.rucksackKg()));
    assertThat(bare.years()).hasValue(30);
    assertThat(bare.rucksackKg()).isEmpty();
    assertThat(bare.on("Wren", "rider").rucksack()).isEmpty();
  }

  @Test
  void heightsMayBeWrittenWithTicksAndACommaThatLacksIsAskedFor() {
    assertThat(sound(Question.RIDER, "man 5' 9\", 180 lb").rider())
        .isEqualTo(sound(Question.RIDER, "man 5 ft 9 in, 180 lb").rider());
    assertThat(faults(Question.RIDER, "woman 1640mm 62kg"))
        .singleElement()
        .asString()
        .contains("neither a height nor a mass", "with a comma between")
        .doesNotContain("seatHeight");
  }

  @Test
  void quantitiesTakeUnits() {
    assertThat(sound(Question.WHEELBASE, "1700").wheelbaseMm()).contains(1700.0);
    assertThat(sound(Question.WHEELBASE, "67 in").wheelbaseMm().orElseThrow())
        .isCloseTo(1701.8, within(1e-6));
    assertThat(sound(Question.RECLINE, "35").reclineDeg().orElseThrow())
        .isCloseTo(35, within(1e-9));
    assertThat(sound(Question.RECLINE, "0.6 rad").reclineDeg().orElseThrow())
        .isCloseTo(34.377, within(1e-3));
    assertThat(faults(Question.WHEELBASE, "35 deg")).hasSize(1);
    assertThat(faults(Question.RECLINE, "300 mm")).hasSize(1);
    assertThat(faults(Question.RECLINE, "steep")).hasSize(1);
  }

  @Test
  void boxesTakeOneUnitForAll() {
    assertThat(sound(Question.BOX, "390 x 310 x 320 mm, 48 kg").box())
        .contains(new Box(390, 310, 320, 48));
    Box inches = sound(Question.BOX, "15x12x12 in, 100 lb").box().orElseThrow();
    assertThat(inches.lengthMm()).isCloseTo(381, within(1e-9));
    assertThat(inches.massKg()).isCloseTo(45.36, within(0.01));
    // what nobody has weighed is not made up
    assertThat(faults(Question.BOX, "220x220x220", Question.DRIVE, "motor"))
        .singleElement()
        .asString()
        .contains("has no mass", "220x220x220, 22 kg");
    for (String wrong : List.of("3x4", "a x b x c", "390x310x320 kg", "390x310x320, 4 mm")) {
      assertThat(faults(Question.BOX, wrong)).as(wrong).isNotEmpty();
    }
  }

  @Test
  void wordsAreThoseThatAreListed() {
    assertThat(sound(Question.DRIVE, "motor", Question.PLACE, "hub"))
        .isEqualTo(new Answers.Builder().drive(Drive.MOTOR).place(Place.HUB).answers());
    assertThat(sound(Question.FRONT, "Leading-Link").front()).contains(FrontPart.Kind.LEADING_LINK);
    assertThat(sound(Question.LAW, "us, uk").law()).contains(List.of("us", "uk"));
    assertThat(sound(Question.LAW, "none").law()).contains(List.of());
    assertThat(sound(Question.SEATS, "2").seats()).contains(2);
    assertThat(faults(Question.FRONT, "telescopc").get(0)).contains("did you mean telescopic?");
    assertThat(faults(Question.PLACE, "nowhere at all").get(0))
        .contains("before, behind, hub, under");
    assertThat(faults(Question.LAW, "de").get(0)).contains("us, un-r53, uk");
    for (String wrong : List.of(",", "us,", ",us", "us,,uk", " ")) {
      assertThat(faults(Question.LAW, wrong)).as(wrong).hasSize(1);
      assertThat(faults(Question.LAW, wrong).get(0)).contains("names nothing");
    }
    // none is all there is, or none of the names
    assertThat(faults(Question.LAW, "none, us")).hasSize(1);
  }

  @Test
  void allFaultsComeAtOnce() {
    assertThat(
            read(
                    Question.RIDER, "bloke",
                    Question.SEATS, "3",
                    Question.WHEELBASE, "wide",
                    Question.RECLINE, "75 deg",
                    Question.FRONT_TYRE, "round",
                    Question.FRONT, "none",
                    Question.BOX, "big")
                .faults())
        .extracting(Fault::path)
        .contains("rider", "seats", "wheelbase", "recline", "front-tyre", "front", "box");
  }
}

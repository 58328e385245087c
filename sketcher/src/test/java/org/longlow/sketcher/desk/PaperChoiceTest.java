package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.stand.Condition;
import org.longlow.sketcher.picture.SheetInk;
import org.longlow.sketcher.picture.Views;
import org.longlow.svg.page.Scale;

/** A choice of paper: each change leaves the rest as it was. */
class PaperChoiceTest {

  private static final Condition LID = Condition.open("lid");

  private static final PaperChoice ALL =
      PaperChoice.FIRST
          .withKind(PaperChoice.Kind.DRAWING)
          .withTicked(Set.of("pan", "tank"))
          .withPaper("letter")
          .withPrinter("attic")
          .withWall("A0")
          .seating("passenger", "Tor")
          .withStance(Optional.of(LID))
          .withOpening(0.4)
          .withViews(new Views(Views.Kind.ALL, Views.Projection.THIRD_ANGLE))
          .withScale(Optional.of(Scale.oneTo(5)))
          .withInk(SheetInk.BLACK)
          .withSvg(true);

  @Test
  void whatWasChosenStays() {
    assertThat(ALL)
        .isEqualTo(
            new PaperChoice(
                PaperChoice.Kind.DRAWING,
                Set.of("pan", "tank"),
                "letter",
                "attic",
                "A0",
                new Views(Views.Kind.ALL, Views.Projection.THIRD_ANGLE),
                List.of(new Occupant("Tor", "passenger")),
                Optional.of(LID),
                false,
                0.4,
                Optional.of(Scale.oneTo(5)),
                SheetInk.BLACK,
                true));
    assertThat(ALL.withSvg(false).withSvg(true)).isEqualTo(ALL);
  }

  @Test
  void theMachineAsDrawnIsInNoStance() {
    PaperChoice drawn = ALL.withAsDrawn();
    assertThat(drawn.asDrawn()).isTrue();
    assertThat(drawn.stance()).isEmpty();
    assertThat(drawn.options().asDrawn()).isTrue();
    assertThat(drawn.options().seated()).isEqualTo(ALL.seated());
    assertThat(drawn.withStance(Optional.empty()).asDrawn()).isFalse();
    assertThat(drawn.withStance(Optional.of(LID)).options().stance()).contains(LID);
    assertThat(ALL.options().asDrawn()).isFalse();
  }

  @Test
  void partsAreTickedOneByOne() {
    assertThat(ALL.ticking(List.of("back"), true).ticked())
        .containsExactlyInAnyOrder("pan", "tank", "back");
    assertThat(ALL.ticking(List.of("tank", "back"), false).ticked()).containsExactly("pan");
  }

  /** The rider is named first, whoever sat down first; nobody sits on two seats. */
  @Test
  void eachSitsOnOneSeatAndTheRiderComesFirst() {
    PaperChoice two = ALL.seating(Occupant.RIDER, "Mara");
    assertThat(two.seated())
        .containsExactly(new Occupant("Mara", Occupant.RIDER), new Occupant("Tor", "passenger"));
    assertThat(two.seating(Occupant.RIDER, "Tor").seated())
        .containsExactly(new Occupant("Tor", Occupant.RIDER));
    assertThat(two.seating("passenger", "Ada").seated())
        .containsExactly(new Occupant("Mara", Occupant.RIDER), new Occupant("Ada", "passenger"));
    assertThat(two.seating(Occupant.RIDER, "").seated())
        .containsExactly(new Occupant("Tor", "passenger"));
    assertThat(two.options().person()).isEqualTo("Mara");
    assertThat(two.options().seated()).isEqualTo(two.seated());
    assertThat(ALL.options().person()).isEmpty();
  }

  @Test
  void inAnotherStanceASectionIsWideOpen() {
    assertThat(ALL.options().stance()).contains(LID);
    assertThat(ALL.options().opening()).isEqualTo(0.4);
    PaperChoice other = ALL.withStance(Optional.of(Condition.open("tail")));
    assertThat(other.opening()).isEqualTo(1);
    assertThat(other.withOpening(0.4).withStance(Optional.of(LID)).withOpening(0.4)).isEqualTo(ALL);
  }
}

package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Travel;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.Moved;
import org.longlow.sketcher.picture.PictureOptions;

/** The stance that the machine is seen in, whatever moved it there, and the heads on it. */
class BoardStateTest {

  private static final Layout LAYOUT = Wren.layout();
  private static final Study WREN = Study.of(LAYOUT);
  private static final Condition BUMP = Condition.empty(Stance.Kind.FULL_BUMP);

  private static final Standing LADEN =
      WREN.standings().stream()
          .filter(s -> s.kind() == Stance.Kind.LADEN)
          .filter(s -> s.condition().aboard().get(0).person().equals("Mara"))
          .findFirst()
          .orElseThrow();

  private static BoardState shown(Optional<Condition> stance, Moved moved) {
    PictureOptions options =
        PictureOptions.PLAIN
            .withPerson("Mara")
            .withStance(stance)
            .withMoved(Optional.ofNullable(moved));
    return new Studio().draw(LAYOUT, WREN, List.of(), options, "", false);
  }

  private static Optional<Condition> stance(Travel travel) {
    return shown(Optional.of(LADEN.condition()), new Moved.ByHand(travel)).stance();
  }

  @Test
  void wheelsPutWhereAStanceHasThemShowThatStance() {
    Standing bump = WREN.standing(BUMP).orElseThrow();
    Travel laden = Travel.of(LADEN);
    assertThat(shown(Optional.of(BUMP), null).stance()).contains(BUMP);
    assertThat(stance(laden)).contains(LADEN.condition());
    assertThat(stance(Travel.of(bump))).contains(BUMP);
    assertThat(stance(new Travel(laden.frontMm() + 0.04, laden.rearMm() - 0.04)))
        .contains(LADEN.condition());
    assertThat(stance(new Travel(laden.frontMm() + 0.06, laden.rearMm()))).isEmpty();
    assertThat(stance(new Travel(laden.frontMm(), laden.rearMm() - 0.06))).isEmpty();
  }

  /** The machine as drawn comes first in the row, and keeps those who are seen. */
  @Test
  void stancesAreSteppedThroughAsDrawnAmongThem() {
    PictureOptions laden = PictureOptions.PLAIN.withPerson("Mara");
    BoardState at = new Studio().draw(LAYOUT, WREN, List.of(), laden, "", false);
    int steps = at.steps().size();
    assertThat(steps).isGreaterThan(2);
    PictureOptions now = at.in(Optional.empty(), laden);
    BoardState drawn = new Studio().draw(LAYOUT, WREN, List.of(), now, "", false);
    assertThat(drawn.standing()).isEmpty();
    assertThat(drawn.places()).isEqualTo(WREN.placed().places());
    assertThat(drawn.drawnSaid()).isEmpty();
    assertThat(drawn.heads()).as("she sits on it as drawn").hasSize(1);
    for (int by : new int[] {1, -1}) {
      PictureOptions to = now;
      for (int i = 0; i < steps; i++) {
        to = new Studio().draw(LAYOUT, WREN, List.of(), to, "", false).stepped(by, to);
        BoardState there = new Studio().draw(LAYOUT, WREN, List.of(), to, "", false);
        int index = by > 0 ? i : steps - 1 - i;
        assertThat(there.stance()).contains(at.steps().get(index).condition());
        assertThat(there.drawnSaid()).isEqualTo(", as drawn");
      }
      to = new Studio().draw(LAYOUT, WREN, List.of(), to, "", false).stepped(by, to);
      assertThat(to.asDrawn()).isTrue();
    }
    assertThat(Looks.seated("Tor").apply(now).asDrawn()).as("somebody else as drawn").isTrue();
    assertThat(Looks.seated("Tor").apply(laden).asDrawn()).isFalse();
  }

  /** Heron with Runa behind only: whoever looks at her sees her behind who rides. */
  @Test
  void aPassengerIsShownBehindWhoRides() {
    Layout two = Typing.dropped(Demos.layout("heron"), List.of("crew", "Runa", "seats", "0"));
    Study study = Study.of(two);
    assertThat(two.crew().get("Runa").seats()).containsExactly("passenger");
    PictureOptions runa = Looks.seated("Runa").apply(PictureOptions.PLAIN);
    BoardState at = new Studio().draw(two, study, List.of(), runa, "", false);
    assertThat(at.heads()).hasSize(2);
    assertThat(at.stance().orElseThrow().aboard())
        .extracting(Occupant::person)
        .hasSize(2)
        .endsWith("Runa");
    String rider = at.stance().orElseThrow().aboard().get(0).person();
    BoardState rides =
        new Studio().draw(two, study, List.of(), Looks.seated(rider).apply(runa), "", false);
    assertThat(rides.heads()).hasSize(1);
    assertThat(at.steps()).isEqualTo(rides.steps());
    assertThat(at.steps().stream().map(Standing::kind)).contains(Stance.Kind.LADEN);
    PictureOptions drawn = Looks.seated("Runa").apply(runa.withAsDrawn());
    assertThat(new Studio().draw(two, study, List.of(), drawn, "", false).heads()).hasSize(2);
    PictureOptions bump = Looks.seated("Runa").apply(runa.withStance(Optional.of(BUMP)));
    assertThat(new Studio().draw(two, study, List.of(), bump, "", false).heads()).hasSize(2);
  }

  @Test
  void aMachineThatLeansIsSeenInNoStance() {
    Optional<Condition> laden = Optional.of(LADEN.condition());
    assertThat(shown(laden, new Moved.ByTurn(0.2)).stance()).isEmpty();
    assertThat(shown(laden, new Moved.ByTurn(-0.2)).stance()).isEmpty();
    assertThat(shown(laden, new Moved.ByTurn(-0.0005)).stance()).isEqualTo(laden);
  }

  /** The head keeps its distance from the grips, which it moves with. */
  @Test
  void headsAreWhereTheyAreOnTheDrawing() {
    BoardState shown = shown(Optional.of(BUMP), null);
    assertThat(shown(Optional.of(LADEN.condition()), null).heads())
        .singleElement()
        .satisfies(
            head -> {
              PointMm centre =
                  WREN.sitting("Mara", Occupant.RIDER)
                      .orElseThrow()
                      .posture()
                      .orElseThrow()
                      .headCentre();
              PointMm grip = WREN.placed().places().pin("gripPin");
              PointMm drawn = shown(Optional.of(LADEN.condition()), null).onDrawing("gripPin");
              assertThat(head.at().distance(drawn)).isCloseTo(centre.distance(grip), within(1e-6));
              assertThat(head.at().z()).isGreaterThan(drawn.z());
              assertThat(head.radiusMm()).isBetween(100.0, 180.0);
            });
    assertThat(shown.places()).isEqualTo(WREN.standing(BUMP).orElseThrow().places());
  }

  @Test
  void withoutAStanceItStandsAsItIsDrawn() {
    Study alone =
        new Study(LAYOUT, WREN.placed(), WREN.shapes(), WREN.sittings(), List.of(), List.of());
    BoardState drawn = new Studio().draw(LAYOUT, alone, List.of(), PictureOptions.PLAIN, "", false);
    assertThat(drawn.stance()).isEmpty();
    assertThat(drawn.places()).isEqualTo(WREN.placed().places());
    assertThat(drawn.shapes()).isEqualTo(WREN.shapes());
    // both tyres are 300 mm in radius, and both axles are drawn at 300 mm
    assertThat(drawn.onDrawing("frontAxle").z()).isCloseTo(300, within(1e-6));
    assertThat(drawn.onDrawing("rearAxle").z()).isCloseTo(300, within(1e-6));
  }
}

package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.Shipped;
import org.longlow.sketcher.picture.View;
import org.longlow.svg.drawing.Mark;

/** A finding that is picked is shown on the person it is about, and on nobody else. */
class ShownFindingTest {

  private static final Study STUDY = Shipped.study("heron");

  /** A picture is drawn for each so manieth finding. */
  private static final int EACH = Boolean.getBoolean("longlow.long") ? 1 : 7;

  private final Studio studio = new Studio();

  private BoardState shown(PictureOptions options, String finding) {
    return studio.draw(STUDY.layout(), STUDY, List.of(), options, finding, false);
  }

  @Test
  void aPickedFindingSeatsWhomItIsAbout() {
    PictureOptions before = Looks.first(STUDY.layout(), PictureOptions.PLAIN);
    BoardState first = shown(before, "");
    int passengers = 0;
    int met = 0;
    for (Finding f : STUDY.findings()) {
      if (f.who().isPresent() && f.where().isPresent() && met++ % EACH == 0) {
        BoardState then = shown(first.optionsFor(f.id(), before), f.id());
        assertThat(then.isMarked(f.id())).as(f.id()).isTrue();
        assertThat(then.drawing().layers())
            .as(f.id())
            .anyMatch(
                l ->
                    l.id().equals("person")
                        && l.marks().stream()
                            .anyMatch(m -> m.subject().equals("person:" + f.who().get().person())));
        passengers += f.who().get().seat().equals("rider") ? 0 : 1;
      }
    }
    assertThat(passengers).isGreaterThan(1);
  }

  @Test
  void aFindingWithoutAPlaceLeavesTheStanceAlone() {
    PictureOptions before = Looks.first(STUDY.layout(), PictureOptions.PLAIN).withAsDrawn();
    BoardState drawn = shown(before, "");
    int whole = 0;
    int placed = 0;
    for (Finding f : STUDY.findings()) {
      boolean seen = f.who().isEmpty() && f.stance().isPresent();
      if (seen && f.where().isEmpty()) {
        assertThat(drawn.optionsFor(f.id(), before)).as(f.id()).isSameAs(before);
        whole++;
      } else if (seen) {
        assertThat(drawn.optionsFor(f.id(), before).stance()).as(f.id()).isEqualTo(f.stance());
        placed++;
      }
    }
    assertThat(whole).isGreaterThan(3);
    assertThat(placed).isGreaterThan(3);
  }

  @Test
  void nothingIsMarkedOnSomebodyElse() {
    PictureOptions bram = PictureOptions.PLAIN.withPerson("Bram");
    for (Finding f : STUDY.findings()) {
      if (f.who().map(w -> w.person().equals("Runa")).orElse(false)) {
        assertThat(shown(bram, f.id()).isMarked(f.id())).as(f.id()).isFalse();
      }
    }
  }

  @Test
  void seatingSomebodyElseLetsGoOfThePair() {
    PictureOptions before = Looks.first(STUDY.layout(), PictureOptions.PLAIN);
    PictureOptions pair = shown(before, "").optionsFor("hold.Runa.passenger", before);
    assertThat(pair.seated()).hasSize(2);
    PictureOptions alone = Looks.seated("Runa").apply(pair);
    assertThat(alone.seated()).isEmpty();
    assertThat(alone.person()).isEqualTo("Runa");
  }

  /** Feet of who steps over are far apart, and nobody but them leaves their seat. */
  @Test
  void gettingInIsShownInItsTightestPose() {
    PictureOptions before = Looks.first(STUDY.layout(), PictureOptions.PLAIN);
    PictureOptions in = shown(before, "").optionsFor("getting-in.Bram.in", before);
    assertThat(View.shown(STUDY, in).words()).isEqualTo("Bram stepping over");
    assertThat(person(in)).isNotEqualTo(person(in.withInPose(Optional.empty())));
    PictureOptions next = shown(in, "").optionsFor("hold.Runa.passenger", in);
    assertThat(next.inPose()).isEmpty();
  }

  private List<Mark> person(PictureOptions options) {
    return shown(options, "").drawing().layers().stream()
        .filter(l -> l.id().equals("person"))
        .flatMap(l -> l.marks().stream())
        .toList();
  }
}

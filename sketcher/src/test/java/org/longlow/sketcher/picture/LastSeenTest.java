package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.study.Study;

/** What was seen last is taken again only where nothing that changes it was asked for. */
class LastSeenTest {

  private static final PictureOptions AHEAD = PictureOptions.PLAIN.withAspect(Aspect.FRONT);

  private static AspectBodies seen(Study study, PictureOptions options) {
    return LastSeen.of(study, options);
  }

  @Test
  void whatIsPickedOrHowLargeItIsDrawnHidesNothing() {
    Study study = Plover.study();
    AspectBodies first = seen(study, AHEAD);
    String finding = study.findings().get(0).id();
    for (PictureOptions same :
        List.of(
            AHEAD.withChosen("part:tank"),
            AHEAD.withDenominator(3),
            AHEAD.withDimensions(true),
            AHEAD.withFindings(List.of(finding)))) {
      assertThat(seen(study, same)).isSameAs(first);
    }
  }

  @Test
  @Tag("long")
  void whatIsSeenOtherwiseIsWorkedOutAnew() {
    Study study = Plover.study();
    String other = study.sittings().get(study.sittings().size() - 1).person();
    AspectBodies before = seen(study, AHEAD);
    for (PictureOptions options :
        List.of(
            AHEAD.withAspect(Aspect.PLAN),
            AHEAD.withPerson(other),
            AHEAD.withMoved(Optional.of(new Moved.ByTurn(0.2))),
            AHEAD.withMoved(Optional.of(new Moved.BySteering(0.2))))) {
      AspectBodies now = seen(study, options);
      assertThat(now).as(options.toString()).isNotSameAs(before);
      before = now;
    }
    before = seen(study, AHEAD);
    assertThat(seen(Study.of(Plover.layout()), AHEAD)).isNotSameAs(before);
  }

  @Test
  @Tag("long")
  void aPictureIsThatOfItsOwnOptions() {
    Study study = Plover.study();
    PictureOptions picked = AHEAD.withChosen("part:tank").withDenominator(5);
    seen(study, AHEAD.withAspect(Aspect.PLAN));
    String anew = Pictures.of(study, picked).toString();
    Pictures.of(study, AHEAD);
    assertThat(Pictures.of(study, picked).toString()).isEqualTo(anew);
  }
}

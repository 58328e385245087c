package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;

/** A pair that comes too close as it is steered is ringed from wherever one looks. */
class NearPairRingTest {

  @ParameterizedTest
  @EnumSource(Aspect.class)
  void aNearPairIsRingedInEveryView(Aspect aspect) {
    Study study = Shipped.study("heron");
    Finding near =
        study.findings().stream()
            .filter(f -> f.id().equals("lock.bars.Bram"))
            .findFirst()
            .orElseThrow();
    List<TouchRing> rings =
        FirstTouches.of(study, aspect, List.of(new Occupant("Bram", Occupant.RIDER)));
    TouchRing ring =
        rings.stream().filter(r -> r.words().endsWith(" apart")).findFirst().orElseThrow();
    assertThat(ring.words()).startsWith("steered, bars and a limb of Bram").contains("0.4 mm");
    assertThat(ring.where()).isEqualTo(near.where().orElseThrow());
    assertThat(FirstTouches.of(study, aspect, List.of(new Occupant("Runa", Occupant.RIDER))))
        .noneMatch(r -> r.words().endsWith(" apart"));
    Page page =
        ViewSheets.sheet(
                study,
                PictureOptions.PLAIN.withPerson("Bram"),
                new Views(Views.Kind.valueOf(aspect.name()), Views.Projection.FIRST_ANGLE),
                Optional.of(Scale.oneTo(20)),
                Paper.A2,
                "")
            .page();
    List<Mark> touches =
        page.layers().stream()
            .filter(l -> l.id().endsWith("touches"))
            .flatMap(l -> l.marks().stream())
            .toList();
    assertThat(touches).anyMatch(m -> m instanceof Mark.Words w && w.text().equals(ring.words()));
    // its ring is 2.6 mm across on paper
    assertThat(touches)
        .anyMatch(
            m -> {
              Envelope box =
                  m instanceof Mark.Shape s ? s.geometry().getEnvelopeInternal() : new Envelope();
              return Math.abs(box.getWidth() - 2.6) < 0.1 && Math.abs(box.getHeight() - 2.6) < 0.1;
            });
    if (aspect == Aspect.SIDE) {
      PointMm seen =
          Eye.of(
                  aspect,
                  Scenes.of(study, PictureOptions.PLAIN.withPerson("Bram")).ground(),
                  Optional.empty())
              .page(ring.where(), ring.yMm());
      assertThat(seen.x()).isCloseTo(ring.where().x(), within(40.0));
      assertThat(seen.z()).isCloseTo(ring.where().z(), within(80.0));
    }
  }
}

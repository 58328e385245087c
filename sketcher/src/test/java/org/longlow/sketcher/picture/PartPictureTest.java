package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Gallery;
import org.longlow.svg.drawing.Drawing;

/** A part alone is drawn where the machine would have it. */
class PartPictureTest {

  private static final Ground LEVEL = new Ground(PointMm.ORIGIN, new PointMm(1, 0));

  private static Drawing drawn(Part part, Ground ground) {
    return PartPicture.of(Gallery.layout(), part, Gallery.places(), ground, 10);
  }

  @Test
  void everyPartOfTheGalleryIsDrawnAsLargeAsItsBody() {
    for (Part part : Gallery.layout().parts().values()) {
      Envelope body = PartPicture.body(drawn(part, LEVEL));
      Envelope shape = Shapes.of(part, Gallery.places(), false).outline().getEnvelopeInternal();
      // a lens bows out of its lamp, a yoke and a slider are thicker than the stanchion
      double more = part.kind().equals("lamp") || part.kind().equals("front") ? 30 : 1;
      assertThat(body.getMinX()).as(part.name()).isCloseTo(shape.getMinX(), within(more));
      assertThat(body.getMaxX()).as(part.name()).isCloseTo(shape.getMaxX(), within(more));
      assertThat(body.getMinY()).as(part.name()).isCloseTo(shape.getMinY(), within(more));
      assertThat(body.getMaxY()).as(part.name()).isCloseTo(shape.getMaxY(), within(more));
    }
  }

  @Test
  void onARoadThatSlopesItTurnsWithTheMachine() {
    Part box = Gallery.layout().parts().get("box");
    Ground sloping = new Ground(new PointMm(40, -25), PointMm.unit(Math.toRadians(7)));
    Coordinate level = PartPicture.body(drawn(box, LEVEL)).centre();
    Coordinate sloped = PartPicture.body(drawn(box, sloping)).centre();
    PointMm expected = sloping.toRoad(new PointMm(level.x, level.y));
    assertThat(sloped.x).isCloseTo(expected.x(), within(1e-6));
    assertThat(sloped.y).isCloseTo(expected.z(), within(1e-6));
  }
}

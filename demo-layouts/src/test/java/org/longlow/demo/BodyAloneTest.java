package org.longlow.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Shapes;
import org.longlow.rider.geom.PointMm;

/** A body shaped without the rest of its part is the body of the part, wherever its pins are. */
class BodyAloneTest {

  @ParameterizedTest
  @MethodSource("org.longlow.demo.Demos#names")
  void bodyAloneIsTheBodyOfThePart(String name) {
    Layout layout = Demos.layout(name);
    Places drawn = Placer.place(layout).places();
    Random random = new Random(20_260_729);
    for (int round = 0; round < 20; round++) {
      Map<String, PointMm> pins = new LinkedHashMap<>(drawn.pins());
      pins.replaceAll(
          (pin, p) -> p.plus(new PointMm(random.nextGaussian() * 8, random.nextGaussian() * 8)));
      Places places = drawn.withPins(pins);
      for (Part part : layout.parts().values()) {
        List<Prism> alone = Shapes.body(part, places);
        List<Prism> whole = Shapes.of(part, places, false).prisms();
        assertThat(alone).as(part.name()).hasSameSizeAs(whole);
        for (int k = 0; k < whole.size(); k++) {
          Geometry outline = whole.get(k).outline();
          assertThat(alone.get(k).across()).isEqualTo(whole.get(k).across());
          assertThat(alone.get(k).outline().equalsExact(outline)).as(part.name()).isTrue();
        }
      }
    }
  }
}

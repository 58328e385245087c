package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Wren;

class OutlineEditsTest {

  @TempDir Path folder;
  private Study wren;

  @BeforeEach
  void aFileWithTwoPaths() throws IOException {
    Files.writeString(
        folder.resolve("parts.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0 H10 V10 H0 Z'/>"
            + "<path id='can' d='M20 10 H120 V60 H20 Z'/></svg>");
    wren = Study.of(Wren.layout());
  }

  private Trial.Accepted accepted(Edit edit) {
    Trial trial = Tried.of(wren, edit, folder);
    assertThat(trial).as(trial.toString()).isInstanceOf(Trial.Accepted.class);
    return (Trial.Accepted) trial;
  }

  private static Envelope box(Trial.Accepted a, String part) {
    Part.Outlined outlined = (Part.Outlined) a.layout().parts().get(part);
    return Outlines.area(outlined.frame(), outlined.outline(), a.study().placed().places())
        .getEnvelopeInternal();
  }

  @Test
  void aPartTakesItsOutlineFromAPathAtAScale() {
    Trial.Accepted a =
        accepted(
            OutlineEdits.traced("tank", new OutlineEdits.Source("parts.svg", "can", "1/8 * 1 in")));
    String origin = ((Part.Outlined) a.layout().parts().get("tank")).frame().origin();
    PointMm at = a.study().placed().places().pin(origin);
    Envelope box = box(a, "tank");
    double unit = 25.4 / 8;
    assertThat(box.getMinX() - at.x()).isCloseTo(20 * unit, within(1e-6));
    assertThat(box.getMaxX() - at.x()).isCloseTo(120 * unit, within(1e-6));
    assertThat(box.getMaxY() - at.z()).isCloseTo(-10 * unit, within(1e-6));
    assertThat(box.getMinY() - at.z()).isCloseTo(-60 * unit, within(1e-6));
  }

  @ParameterizedTest
  @EnumSource(SolidPart.Kind.class)
  void aNewPartOfEachKindIsSound(SolidPart.Kind kind) {
    String name = OutlineEdits.unused(wren.layout(), kind);
    assertThat(wren.layout().parts()).doesNotContainKey(name);
    String scale = OutlineEdits.scaleOf("63 1/2 in", 100);
    Trial.Accepted a =
        accepted(
            OutlineEdits.added(
                kind,
                name,
                new OutlineEdits.Source("parts.svg", "can", scale),
                new PointMm(100, 900)));
    assertThat(((SolidPart) a.layout().parts().get(name)).type()).isEqualTo(kind);
    assertThat(box(a, name).getWidth()).isCloseTo(63.5 * 25.4, within(1e-6));
    assertThat(a.layout().parts().get(name).base().hot()).isEqualTo(kind.usuallyHot());
    assertThat(a.layout().pins()).hasSize(wren.layout().pins().size() + 1);
  }

  @Test
  void whatCannotBeIsRefused() {
    OutlineEdits.Source source = new OutlineEdits.Source("parts.svg", "none", "1 mm");
    assertThat(Tried.of(wren, OutlineEdits.traced("tank", source), folder))
        .isInstanceOfSatisfying(
            Trial.Refused.class, r -> assertThat(r.words()).contains("id of no path"));
    String wheel =
        wren.layout().parts().values().stream()
            .filter(p -> p.kind().equals("wheel"))
            .findFirst()
            .orElseThrow()
            .name();
    Layout layout = wren.layout();
    assertThatThrownBy(() -> OutlineEdits.traced(wheel, source).applied(layout))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("no outline of its own");
    assertThatThrownBy(
            () ->
                OutlineEdits.added(SolidPart.Kind.TANK, "tank", source, PointMm.ORIGIN)
                    .applied(layout))
        .hasMessageContaining("already a part called tank");
    Layout measured = KeptPointsTest.measured("{\"points\": [[0, 0], [90, 0], [40, 60]]}", 2);
    assertThatThrownBy(() -> OutlineEdits.traced("plate", source).applied(measured))
        .hasMessageContaining("dimension to 2 names one by its number");
    assertThatThrownBy(() -> OutlineEdits.scaleOf("3 mm", 0)).hasMessageContaining("no width");
    assertThat(OutlineEdits.scaleOf("500", 100)).isEqualTo("(500 mm) / 100");
  }
}

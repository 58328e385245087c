package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Kind;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.formula.Dim;

/** A length that must be more than nought has a least that something may have. */
class LeastSizesTest {

  /** Smaller than this is nothing that a shop makes or a photo shows, mm. */
  private static final double NOTHING_MM = 0.9e-6;

  private final Set<Object> seen = new HashSet<>();
  private final Set<String> sizes = new TreeSet<>();

  private void walk(String path, Kind<?> kind) {
    if (seen.add(kind)) {
      kind.fields().forEach(f -> walk(path + "." + f.key(), f.type()));
    }
  }

  private void walk(String path, Type<?> type) {
    if (type instanceof Type.Quantity q && q.dim().filter(Dim.LENGTH::equals).isPresent()) {
      if (!q.range().allows(0)) {
        sizes.add(path);
        assertThat(q.range().allows(1e-300)).as(path).isFalse();
        assertThat(q.range().allows(NOTHING_MM)).as(path).isFalse();
        // a layer of foam is no thicker than 1000, a person no shorter
        assertThat(q.range().allows(1000) || q.range().allows(2000)).as(path).isTrue();
      }
    } else if (type instanceof Type.Maybe<?> maybe) {
      walk(path, maybe.inner());
    } else if (type instanceof Type.ListOf<?> list) {
      walk(path, list.item());
    } else if (type instanceof Type.Group<?> group) {
      walk(path, group.item());
    } else if (type instanceof Type.Nested<?> nested) {
      walk(path, nested.kind());
    } else if (type instanceof Type.Choice<?> choice) {
      choice.kinds().forEach((word, kind) -> walk(path + "." + word, kind));
    } else if (type instanceof Type.Outlines outlines) {
      walk(path, outlines.drawn());
      walk(path, outlines.traced());
    }
  }

  @Test
  void whatHasASizeHasALeast() {
    walk("$", Document.LAYOUT);
    assertThat(sizes)
        .contains(
            "$.parts.rail.diameter",
            "$.parts.cushion.layers.thickness",
            "$.parts.engine.outline.scale",
            "$.parts.wheel.radius",
            "$.photos.scale",
            "$.ties.radii");
  }

  @Test
  void theSchemaSaysIt() {
    assertThat(SchemaText.text())
        .contains("Outside diameter. It must be at least 1 mm.")
        .contains("Wall thickness. It must be at least 0.05 mm.")
        .contains("How long one pixel is; belongs to a photo without corners. It must be at least");
  }
}

package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Shapes;

/** The gallery has one of whatever can be added, of a size that such a thing has. */
class GalleryTest {

  private final Layout gallery = Gallery.layout();

  private <P extends Part, W> void each(Class<P> family, W[] words, Function<P, W> word) {
    assertThat(gallery.parts(family).map(word)).containsExactlyInAnyOrder(words);
  }

  @Test
  void everyKindThatTheDocumentDescribesIsInIt() {
    Set<String> kinds = new TreeSet<>();
    gallery.parts().values().forEach(p -> kinds.add(p.kind()));
    assertThat(kinds).containsExactlyInAnyOrderElementsOf(Document.PART.kinds().keySet());
    each(LampPart.class, LampPart.Kind.values(), LampPart::type);
    each(FrontPart.class, FrontPart.Kind.values(), FrontPart::type);
    each(CushionPart.class, CushionPart.Role.values(), CushionPart::role);
  }

  @Test
  void theReaderFindsNoFaultAndNothingHasToMove() {
    ReadResult read = LayoutReader.read(LayoutWriter.toJson(gallery), null);
    assertThat(read).isInstanceOf(ReadResult.Read.class);
    assertThat(((ReadResult.Read) read).notes()).isEmpty();
    Placed placed = Placer.place(gallery);
    assertThat(placed.holds()).isTrue();
    placed
        .places()
        .pins()
        .forEach(
            (name, at) -> assertThat(at.distance(Gallery.places().pin(name))).isLessThan(1e-6));
  }

  @Test
  void partsWeighAndMeasureWhatSuchPartsDo() {
    for (Part part : gallery.parts().values()) {
      PartShape shape = Shapes.of(part, Gallery.places(), false);
      assertThat(shape.massKg()).as(part.name()).isBetween(0.05, 80.0);
      double longest =
          Math.max(
              shape.outline().getEnvelopeInternal().getWidth(),
              shape.outline().getEnvelopeInternal().getHeight());
      assertThat(longest).as(part.name()).isBetween(5.0, 700.0);
    }
  }

  @Test
  void eachHasPinsOfItsOwnCalledAfterIt() {
    Set<String> seen = new TreeSet<>();
    for (Part part : gallery.parts().values()) {
      for (String pin : part.ownPins()) {
        assertThat(pin).startsWith(part.name()).isNotEqualTo(part.name());
        assertThat(seen.add(pin)).as(pin).isTrue();
      }
    }
    assertThat(gallery.pins().keySet()).containsExactlyInAnyOrderElementsOf(seen);
  }

  @Test
  void wordsFindWhatTheyBegin() {
    assertThat(found("plate la")).containsExactly("plateLamp", "plate");
    assertThat(found("telesc")).containsExactly("telescopicFork");
    assertThat(found("RAIL")).containsExactly("rail");
    assertThat(found("")).hasSize(gallery.parts().size());
    assertThat(found("anvil")).isEmpty();
  }

  private static Stream<String> found(String search) {
    return Gallery.specimens().stream().filter(s -> s.matches(search)).map(Gallery.Specimen::name);
  }
}

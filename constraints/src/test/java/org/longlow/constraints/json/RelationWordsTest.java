package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.document.Faults;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.Wish;

/** Words of ties, limits and wishes: each is read as it is written, and the schema has the same. */
class RelationWordsTest {

  @ParameterizedTest
  @EnumSource(TieKind.class)
  void eachTieIsReadAsItIsWritten(TieKind kind) {
    Tie tie = tie(kind, is(kind));
    Layout layout = Plank.layout().withTie("spoken", tie);
    String text = LayoutWriter.tree(layout).toString();
    assertThat(text).contains("\"tie\":\"" + kind.word() + "\"");
    ReadResult again = LayoutReader.read(text, null);
    assertThat(again).as("%s", Plank.lines(again)).isInstanceOf(ReadResult.Read.class);
    assertThat(((ReadResult.Read) again).layout().ties().get("spoken")).isEqualTo(tie);
  }

  static Stream<TieKind> ofLengths() {
    return Stream.of(TieKind.values()).filter(k -> k.dim().equals(Optional.of(Dim.LENGTH)));
  }

  /** What has a length cannot have less than none; what is only ahead or above may be behind. */
  @ParameterizedTest
  @MethodSource("ofLengths")
  void onlyLengthsAreRefusedNegative(TieKind kind) {
    Tie tie = tie(kind, Optional.of(Formula.parse("-40 mm")));
    String text = LayoutWriter.tree(Plank.layout().withTie("spoken", tie)).toString();
    ReadResult read = LayoutReader.read(text, null);
    boolean length = kind.is() == TieKind.Is.LENGTH;
    assertThat(read).isInstanceOf(length ? ReadResult.Refused.class : ReadResult.Read.class);
    // between two pins the way back is the other offset, and a length is the same both ways
    kind.between()
        .ifPresent(
            of ->
                assertThat(of.applyAsDouble(-3, -4))
                    .isEqualTo((length ? 1 : -1) * of.applyAsDouble(3, 4)));
  }

  private static Tie tie(TieKind kind, Optional<Formula> is) {
    List<String> pins = List.copyOf(Plank.layout().pins().keySet()).subList(0, kind.fewestPins());
    int radii = kind == TieKind.BELT_LENGTH ? pins.size() : kind.radii();
    return new Tie(
        kind,
        pins,
        is,
        Collections.nCopies(radii, Formula.parse("40 mm")),
        kind == TieKind.ON_EDGE ? "engine" : "",
        0,
        false,
        "");
  }

  private static Optional<Formula> is(TieKind kind) {
    if (kind == TieKind.FORMULA) {
      return Optional.of(Formula.parse("rake - 27 deg"));
    }
    return kind.dim()
        .map(d -> d.equals(Dim.LENGTH) ? "40 mm" : d.equals(Dim.ANGLE) ? "40 deg" : "0.4")
        .map(Formula::parse);
  }

  @Test
  void theSchemaHasTheSameWordsAndExplainsEachTie() {
    assertThat(schemaWords("tie"))
        .containsExactlyElementsOf(Stream.of(TieKind.values()).map(TieKind::word).toList());
    assertThat(schemaWords("limit"))
        .containsExactlyElementsOf(Stream.of(Limit.Kind.values()).map(Limit.Kind::word).toList());
    assertThat(schemaWords("wish"))
        .containsExactlyElementsOf(Stream.of(Wish.Kind.values()).map(Wish.Kind::word).toList());
    String told = property("tie").path("description").asText();
    for (TieKind kind : TieKind.values()) {
      assertThat(told).contains(" " + kind.word() + ": ");
    }
  }

  @Test
  void oneQuantityHasOneWordInTiesLimitsAndWishes() {
    List<String> ties = Stream.of(TieKind.values()).map(TieKind::word).toList();
    assertThat(ties)
        .containsAll(shared(Limit.Kind.values()))
        .containsAll(shared(Wish.Kind.values()));
  }

  /** Returns the words of what can be said of pins alone. */
  private static List<String> shared(Enum<?>[] kinds) {
    List<String> own = List.of("measure", "inside", "gap", "comfort", "front-share", "sight");
    return Stream.of(kinds)
        .map(k -> k.name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .filter(w -> !own.contains(w))
        .toList();
  }

  @Test
  void aPinIsNailedInFileAndLayout() {
    ObjectNode root = SchemaAgreementTest.plank();
    ((ObjectNode) root.path("pins").path("rearAxle")).put("nailed", false);
    Layout loose = ((ReadResult.Read) LayoutReader.read(root.toString(), null)).layout();
    assertThat(loose.pins().get("rearAxle").nailed()).isFalse();
    assertThat(Plank.layout().pins().get("rearAxle").nailed()).isTrue();
  }

  private static JsonNode property(String name) {
    return Json.parse(LayoutSchema.text(), new Faults())
        .orElseThrow()
        .path("$defs")
        .path(name)
        .path("properties")
        .path(name);
  }

  private static List<String> schemaWords(String name) {
    List<String> words = new ArrayList<>();
    property(name).path("enum").forEach(w -> words.add(w.asText()));
    return words;
  }
}

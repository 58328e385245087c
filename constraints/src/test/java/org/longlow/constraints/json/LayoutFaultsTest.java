package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.Field;
import org.longlow.constraints.document.Kind;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.document.Tracer;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.layout.WheelPart;

/** A layout changed in Java is judged as the same layout in a file is. */
class LayoutFaultsTest {

  private static final List<String> QUANTITIES =
      List.of(
          "0 mm",
          "-3 mm",
          "1 kg",
          "zebra",
          "30",
          "wheelbase",
          "rake",
          "wheelbase / (wheelbase - wheelbase)",
          "2000 m");

  /** Of the quantities each field gets one in so many, the next field the next ones. */
  private static final int STEP = Boolean.getBoolean("longlow.long") ? 1 : 7;

  private static final List<String> PINS = List.of("nowhere", "lowA", "");

  private final Layout plank = Plank.layout();
  private int turn;
  private int refused;
  private int accepted;

  @Test
  void aSoundLayoutStaysAsItIs() {
    LayoutFaults.Verdict verdict = LayoutFaults.verdict(plank, Tracer.NONE);
    assertThat(verdict.faults()).isEmpty();
    assertThat(verdict.layout()).isEqualTo(plank);
  }

  @Test
  void everyFieldOfEveryKindOfPartIsJudgedAsInAFile() {
    Set<String> seen = new HashSet<>();
    for (Part part : plank.parts().values()) {
      Kind<Part> kind = Document.PART.kind(part);
      if (seen.add(kind.name())) {
        spoil(kind, part);
      }
    }
    assertThat(seen).hasSize(17);
    assertThat(refused).isGreaterThan(300 / STEP);
    assertThat(accepted).isGreaterThan(100 / STEP);
  }

  private <P extends Part> void spoil(Kind<P> kind, P part) {
    for (Field<P, ?> field : kind.fields()) {
      Object old = field.of(part);
      if (old instanceof Formula || old instanceof Optional<?> o && o.isPresent() && isText(o)) {
        turn++;
        for (int i = turn % STEP; i < QUANTITIES.size(); i += STEP) {
          Formula formula = Formula.parse(QUANTITIES.get(i));
          Object value = old instanceof Formula ? formula : Optional.of(formula);
          same(plank.withPart(with(kind, part, field, value)));
        }
      } else if (old instanceof String) {
        turn++;
        int step = Math.min(STEP, PINS.size());
        for (int i = turn % step; i < PINS.size(); i += step) {
          same(plank.withPart(with(kind, part, field, PINS.get(i))));
        }
      }
    }
  }

  private static boolean isText(Optional<?> optional) {
    return optional.get() instanceof Formula;
  }

  private static <P extends Part> P with(Kind<P> kind, P part, Field<P, ?> field, Object value) {
    return kind.mapped(part.name(), part, (f, v) -> f.key().equals(field.key()) ? value : v);
  }

  /** Text and value must get the same faults, or become the same layout. */
  private void same(Layout edited) {
    LayoutFaults.Verdict verdict = LayoutFaults.verdict(edited, Tracer.NONE);
    ReadResult read = LayoutReader.read(LayoutWriter.toJson(edited), null);
    assertThat(verdict.faults().stream().map(Fault::line).toList())
        .isEqualTo(Plank.faults(read).stream().map(Fault::line).toList());
    if (read instanceof ReadResult.Read sound) {
      assertThat(verdict.layout()).isEqualTo(sound.layout());
      accepted++;
    } else {
      refused++;
    }
  }

  @Test
  void aBareNumberTakesTheUnitOfItsField() {
    StandPart stand = (StandPart) plank.parts().get("sideStand");
    Kind<StandPart> kind = Document.PART.kind(stand);
    Layout edited = plank.withPart(with(kind, stand, kind.field("lean"), Formula.parse("12")));
    Layout fitted = LayoutFaults.verdict(edited, Tracer.NONE).layout();
    Formula lean = ((StandPart) fitted.parts().get("sideStand")).lean();
    assertThat(lean.text()).isEqualTo("12");
    assertThat(lean.expr().dim(n -> Dim.NUMBER)).isEqualTo(Dim.ANGLE);
    assertThat(lean.evaluate(n -> Double.NaN)).isCloseTo(12 * Math.PI / 180, within(1e-15));
  }

  @Test
  void aMeasureOfAnotherDimensionIsFoundOutWhereItIsUsed() {
    Layout edited =
        plank.withMeasure(
            "wheelbase", plank.measures().get("wheelbase").withIs(Formula.parse("3 kg")));
    assertThat(LayoutFaults.of(edited))
        .extracting(Fault::line)
        .containsExactly(
            "$.measures.wheelbase = \"3 kg\": does not suit 4 places that use wheelbase:"
                + " $.pins.frontAxle.at[0] is a mass (such as 80 kg), needs a length (such as 1600"
                + " mm); write another value, or let them use another measure");
    assertThat(LayoutFaults.verdict(edited, Tracer.NONE).layout().measures().get("wheelbase").dim())
        .isEqualTo(Dim.MASS);
  }

  @Test
  void namesAndWheelsAreJudgedToo() {
    Layout edited =
        plank.withPins(
            Map.of(
                "bad/name",
                new Pin(Formula.parse("1 mm"), Formula.parse("2 mm"), false, Pin.FRAME, "")));
    assertThat(LayoutFaults.of(edited))
        .extracting(Fault::line)
        .singleElement()
        .asString()
        .contains("$.pins[\"bad/name\"]", "is no good name for a pin");
    WheelPart rear = (WheelPart) plank.parts().get("rearWheel");
    Kind<WheelPart> kind = Document.PART.kind(rear);
    assertThat(LayoutFaults.of(plank.withPart(with(kind, rear, kind.field("end"), Part.End.FRONT))))
        .extracting(Fault::message)
        .containsExactly(
            "has 2 wheels with \"end\": \"front\", needs exactly one",
            "has 0 wheels with \"end\": \"rear\", needs exactly one");
  }
}

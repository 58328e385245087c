package org.longlow.constraints.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * What was measured on the machine that was made. Whatever is not said here is taken to be as
 * planned.
 *
 * @param measures what named quantities came out at
 * @param pins where pins are: x and z, from the ground under the rear contact point
 * @param spans lengths and angles between pins
 * @param masses what parts weigh, both sides together
 * @param radii free radii of tyres, by the name of their wheel
 * @param frontLoad what the front wheel weighs on a scale, nobody aboard
 * @param rearLoad likewise the rear wheel
 * @param note for people, may be empty
 */
public record AsBuilt(
    Map<String, Formula> measures,
    Map<String, List<Formula>> pins,
    List<BuiltSpan> spans,
    Map<String, Formula> masses,
    Map<String, Formula> radii,
    Optional<Formula> frontLoad,
    Optional<Formula> rearLoad,
    String note) {

  /** Of a machine on which nothing was measured yet. */
  public static final AsBuilt NOTHING =
      new AsBuilt(
          Map.of(),
          Map.of(),
          List.of(),
          Map.of(),
          Map.of(),
          Optional.empty(),
          Optional.empty(),
          "");

  public AsBuilt {
    measures = Ordered.copy(measures);
    pins = Ordered.copy(pins);
    spans = List.copyOf(spans);
    masses = Ordered.copy(masses);
    radii = Ordered.copy(radii);
  }

  /** Returns whether nothing was measured; a note alone measures nothing. */
  public boolean isNothing() {
    return new AsBuilt(measures, pins, spans, masses, radii, frontLoad, rearLoad, "")
        .equals(NOTHING);
  }
}

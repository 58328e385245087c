package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.DENSITY;
import static org.longlow.constraints.document.Type.FORCE;
import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.MASS;
import static org.longlow.constraints.document.Type.NUMBER;
import static org.longlow.constraints.document.Type.PRESSURE;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.FoamTrial;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.seat.DiscTest;
import org.longlow.rider.seat.FoamLayer;

/** Layers of foam: figures of their data sheets, or a builder's own test. */
final class FoamKinds {

  /** Judgement: no foam is thinner, mm. */
  private static final double LEAST_FOAM_MM = 0.1;

  /** No open-cell foam sold for seats is softer, kPa, N; judgement: less is a slip of the unit. */
  private static final double LEAST_CV40_KPA = 0.3;

  private static final double LEAST_IFD_N = 5;

  /** No closed-cell foam is softer, kPa; judgement. */
  private static final double LEAST_STRESS25_KPA = 1;

  /** What such foam carries under the disc at the least, kg; judgement. */
  private static final double LEAST_LOAD_KG = 0.5;

  private static final Kind<FoamTrial.Press> PRESS =
      Kind.of(
          "foamPress",
          "One press of a disc into foam on a bathroom scale.",
          s ->
              new FoamTrial.Press(
                  s.need(
                      "depth",
                      LENGTH.atLeast(LEAST_FOAM_MM),
                      FoamTrial.Press::depth,
                      "How deep the disc is in the foam."),
                  s.need(
                      "load",
                      MASS.atLeast(LEAST_LOAD_KG),
                      FoamTrial.Press::load,
                      "What the scale shows after a minute.")));

  private static final Kind<FoamTrial> TEST =
      Kind.of(
          "foamTest",
          "A builder's own test of open-cell foam: a disc of 203 mm pressed into a slab that lies"
              + " on a bathroom scale.",
          s ->
              new FoamTrial(
                  s.may(
                      "thickness",
                      LENGTH.atLeast(LEAST_FOAM_MM),
                      FoamTrial::thickness,
                      "Thickness of the slab tested, free."),
                  s.or(
                      "presses",
                      new Type.ListOf<>(new Type.Nested<>(PRESS), 0, DiscTest.MOST),
                      List.of(),
                      FoamTrial::presses,
                      "What was read, three presses or more, to about 25, 45 and 65 % of the"
                          + " thickness.")));

  static final Kind<FoamSpec> FOAM =
      Kind.of(
              "foam",
              "One layer of foam. Open-cell foam needs supportFactor and ifd25 or cv40, or else a"
                  + " test; closed-cell foam polymerDensity and wallStress or stress25.",
              FoamKinds::foam)
          .rule(FoamKinds::canBe);

  private FoamKinds() {}

  /** What a new press begins with. */
  static Optional<?> begun(Kind<?> kind) {
    return kind == PRESS
        ? Optional.of(new FoamTrial.Press(Formula.parse("12 mm"), Formula.parse("15 kg")))
        : Optional.empty();
  }

  private static FoamSpec foam(Source<FoamSpec> s) {
    return new FoamSpec(
        s.text("name", FoamSpec::name, "For people, such as medium HR."),
        s.need(
            "thickness",
            LENGTH.between(LEAST_FOAM_MM, FoamLayer.MOST_MM),
            FoamSpec::thickness,
            "Free thickness."),
        s.need("density", DENSITY.positive(), FoamSpec::density, "Density of the foam."),
        s.may(
            "ifd25",
            FORCE.atLeast(LEAST_IFD_N),
            FoamSpec::ifd25,
            "Indentation force at 25 % (IFD, ILD), open-cell foam."),
        s.may(
            "supportFactor",
            NUMBER.positive(),
            FoamSpec::supportFactor,
            "IFD at 65 % over IFD at 25 %, open-cell foam."),
        s.flag("closedCell", FoamSpec::closedCell, "True for closed-cell foam."),
        s.may(
            "wallStress",
            PRESSURE.positive(),
            FoamSpec::wallStress,
            "Cell-wall stress, closed-cell foam."),
        s.may(
            "polymerDensity",
            DENSITY.positive(),
            FoamSpec::polymerDensity,
            "Density of the solid polymer, closed-cell foam."),
        s.may(
            "cv40",
            PRESSURE.atLeast(LEAST_CV40_KPA),
            FoamSpec::cv40,
            "Compression stress at 40 % (CV40), open-cell foam, in place of ifd25."),
        s.may(
            "stress25",
            PRESSURE.atLeast(LEAST_STRESS25_KPA),
            FoamSpec::stress25,
            "Stress at 25 % deflection (ASTM D1056), closed-cell foam, in place of wallStress."),
        s.or(
            "test",
            new Type.Nested<>(TEST),
            FoamTrial.NONE,
            FoamSpec::test,
            "The builder's own test of open-cell foam, in place of its data sheet."));
  }

  private static void canBe(FoamSpec foam, Spot at) {
    if (!at.isSound("closedCell")) {
      return; // which of the two it is meant to be is not known
    }
    boolean closed = foam.closedCell();
    String kind = closed ? "closed-cell foam" : "open-cell foam";
    boolean there = !at.isSound("test") || foam.test().isThere();
    boolean tested = !closed && there;
    if (tested) {
      twice("ifd25", foam.ifd25(), "test", at);
      twice("supportFactor", foam.supportFactor(), "test", at);
      twice("cv40", foam.cv40(), "test", at);
    } else {
      if (!closed && foam.cv40().isPresent()) {
        twice("ifd25", foam.ifd25(), "cv40", at);
      } else {
        belongs("ifd25", foam.ifd25(), !closed, kind, at);
      }
      belongs("supportFactor", foam.supportFactor(), !closed, kind, at);
    }
    if (closed && foam.stress25().isPresent()) {
      twice("wallStress", foam.wallStress(), "stress25", at);
    } else {
      belongs("wallStress", foam.wallStress(), closed, kind, at);
    }
    belongs("polymerDensity", foam.polymerDensity(), closed, kind, at);
    strange("cv40", foam.cv40(), closed, kind, at);
    strange("test", there ? Optional.of("") : Optional.empty(), closed, kind, at);
    strange("stress25", foam.stress25(), !closed, kind, at);
    if (tested && at.isSound("test") && foam.test().thickness().isEmpty()) {
      at.fault("test", "", "lacks thickness", "add how thick the slab was");
    }
    boolean complete =
        closed
            ? foam.polymerDensity().isPresent()
                && foam.wallStress().isPresent() != foam.stress25().isPresent()
            : tested && foam.test().thickness().isPresent()
                || !tested
                    && foam.supportFactor().isPresent()
                    && foam.ifd25().isPresent() != foam.cv40().isPresent();
    if (!complete || FoamOf.formulas(foam).stream().anyMatch(f -> at.fixed(f).isEmpty())) {
      return;
    }
    try {
      FoamOf.of(foam, f -> at.fixed(f).orElseThrow());
    } catch (OutOfRange e) {
      at.fault(
          tested ? "test" : "",
          "",
          "is no such foam: " + words(e.getMessage()),
          tested ? "test it again" : "look at the data sheet");
    }
  }

  /** The foam model's message with the keys of the file. */
  private static String words(String message) {
    return message
        .replace("densityKgM3", "density")
        .replace("ifd25N", "ifd25")
        .replace("cv40KPa", "cv40")
        .replace("stress25KPa", "stress25")
        .replace("wallStressKPa", "wallStress")
        .replace("polymerDensityKgM3", "polymerDensity")
        .replace("thicknessMm", "thickness")
        .replace("depthMm", "depth")
        .replace("loadN", "load");
  }

  private static void belongs(String key, Optional<?> value, boolean needed, String kind, Spot at) {
    if (value.isEmpty() && needed) {
      at.fault(key, "", "is missing, " + kind + " needs it", "add it from the data sheet");
    } else {
      strange(key, value, !needed, kind, at);
    }
  }

  private static void strange(
      String key, Optional<?> value, boolean strange, String kind, Spot at) {
    if (value.isPresent() && strange) {
      at.fault(key, "", "is no property of " + kind, "take it out");
    }
  }

  private static void twice(String key, Optional<?> value, String by, Spot at) {
    if (value.isPresent()) {
      at.fault(key, "", "is told by " + by + " already", "take one of the two out");
    }
  }
}

package org.longlow.constraints.json;

import java.util.Optional;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.rider.seat.Foam;

/** Reads layers of foam. */
final class FoamReader {

  private final Reading reading;

  FoamReader(Reading reading) {
    this.reading = reading;
  }

  /** Reads one layer. */
  FoamSpec foam(Obj obj) {
    String name = obj.text("name", "");
    Formula thickness = obj.need("thickness", Dim.LENGTH, Sign.POSITIVE);
    Formula density = obj.need("density", Dim.DENSITY, Sign.POSITIVE);
    boolean closedCell = obj.flag("closedCell", false);
    Optional<Formula> ifd25 = obj.may("ifd25", Dim.FORCE, Sign.POSITIVE);
    Optional<Formula> support = obj.may("supportFactor", Dim.NUMBER, Sign.POSITIVE);
    Optional<Formula> stress = obj.may("wallStress", Dim.PRESSURE, Sign.POSITIVE);
    Optional<Formula> polymer = obj.may("polymerDensity", Dim.DENSITY, Sign.POSITIVE);
    obj.close();
    String kind = closedCell ? "closed-cell foam" : "open-cell foam";
    belongs(obj, "ifd25", ifd25.isPresent(), !closedCell, kind);
    belongs(obj, "supportFactor", support.isPresent(), !closedCell, kind);
    belongs(obj, "wallStress", stress.isPresent(), closedCell, kind);
    belongs(obj, "polymerDensity", polymer.isPresent(), closedCell, kind);
    curve(obj, closedCell, density, closedCell ? stress : ifd25, closedCell ? polymer : support);
    return new FoamSpec(name, thickness, density, ifd25, support, closedCell, stress, polymer);
  }

  /** Lets the foam model judge whether such a foam can be. */
  private void curve(
      Obj obj, boolean closedCell, Formula density, Optional<Formula> a, Optional<Formula> b) {
    Optional<Double> d = reading.quantities.fixedValue(density);
    Optional<Double> first = a.flatMap(reading.quantities::fixedValue);
    Optional<Double> second = b.flatMap(reading.quantities::fixedValue);
    if (d.isEmpty() || first.isEmpty() || second.isEmpty()) {
      return;
    }
    double kgM3 = Unit.KG_PER_M3.fromInternal(d.get());
    try {
      if (closedCell) {
        Foam.closedCell(
            kgM3,
            Unit.KILOPASCAL.fromInternal(first.get()),
            Unit.KG_PER_M3.fromInternal(second.get()));
      } else {
        Foam.openCell(kgM3, first.get(), second.get());
      }
    } catch (IllegalArgumentException e) {
      reading.faults.meaning(
          obj.path, "", "is no such foam: " + words(e.getMessage()), "look at the data sheet");
    }
  }

  /** The foam model's message with the keys of the file. */
  private static String words(String message) {
    return message
        .replace("densityKgM3", "density")
        .replace("ifd25N", "ifd25")
        .replace("wallStressKPa", "wallStress")
        .replace("polymerDensityKgM3", "polymerDensity");
  }

  private void belongs(Obj obj, String key, boolean there, boolean needed, String kind) {
    if (there && !needed) {
      reading.faults.meaning(obj.at(key), "", "is no property of " + kind, "take it out");
    } else if (!there && needed) {
      reading.faults.meaning(
          obj.at(key), "", "is missing, " + kind + " needs it", "add it from the data sheet");
    }
  }
}

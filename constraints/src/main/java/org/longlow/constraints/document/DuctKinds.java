package org.longlow.constraints.document;

import org.longlow.constraints.layout.Duct;
import org.longlow.constraints.words.Quoted;

/** How air is led to a radiator and away. */
final class DuctKinds {

  static final Kind<Duct> DUCT =
      Kind.of("duct", "How air is led to a radiator and away from it.", DuctKinds::duct)
          .together("intakeWidth", "intakeHeight")
          .together("outletWidth", "outletHeight")
          .together("out", "towards")
          .rule(DuctKinds::apart);

  private DuctKinds() {}

  private static Duct duct(Source<Duct> s) {
    return new Duct(
        s.may("intakeWidth", PartSizes.SIZE, Duct::intakeWidth, "Breadth of where air comes in."),
        s.may(
            "intakeHeight",
            PartSizes.SIZE,
            Duct::intakeHeight,
            "Height of where air comes in, square to it."),
        s.may("outletWidth", PartSizes.SIZE, Duct::outletWidth, "Breadth of where air leaves."),
        s.may(
            "outletHeight",
            PartSizes.SIZE,
            Duct::outletHeight,
            "Height of where air leaves, square to it."),
        s.may(
            "out",
            Type.ref(Referent.PIN),
            Duct::out,
            "The pin in the middle of where air leaves; with towards."),
        s.may(
            "towards",
            Type.ref(Referent.PIN),
            Duct::towards,
            "A pin that the warm air leaves towards; with out."));
  }

  private static void apart(Duct duct, Spot at) {
    if (duct.out().isPresent() && duct.out().equals(duct.towards())) {
      at.fault(
          "towards",
          Quoted.of(duct.towards().get()),
          "is where the air leaves",
          "name a pin farther on the way of the air");
    }
  }
}

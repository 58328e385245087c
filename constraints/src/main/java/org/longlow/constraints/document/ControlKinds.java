package org.longlow.constraints.document;

import org.longlow.constraints.layout.Control;
import org.longlow.constraints.layout.Working;
import org.longlow.constraints.words.Names;
import org.longlow.constraints.words.Quoted;

/** What works a lever. */
final class ControlKinds {

  static final Kind<Working> CONTROL =
      Kind.of("worked", "By what of the rider a lever is worked, and where.", ControlKinds::control)
          .together("pivot", "travel")
          .rule(ControlKinds::pedal);

  private ControlKinds() {}

  private static Working control(Source<Working> s) {
    return new Working(
        s.may(
            "by",
            Type.words(Control.By.class),
            Working::by,
            "What works it: sole for a pedal that is pressed, toes for one that is lifted too."),
        s.may(
            "pad",
            Type.ref(Referent.PIN),
            Working::pad,
            "Where that lies: front face of a hand lever, a button, middle of a pedal's rubber."),
        s.may(
            "pivot",
            Type.ref(Referent.PIN),
            Working::pivot,
            "The pin that a pedal turns about; with travel."),
        s.may(
            "travel",
            PartSizes.SIZE,
            Working::travel,
            "How far a pedal's rubber goes, of one for the toes to either side; with pivot."));
  }

  private static void pedal(Working working, Spot at) {
    String by = working.by().filter(Control.By::pedal).map(Names::word).orElse("");
    if (!by.isEmpty() && working.pivot().isEmpty()) {
      at.fault(
          "pivot",
          "",
          "is missing, and a foot works it (" + by + ")",
          "name the pin that the pedal turns about, and its travel");
    }
    if (working.pivot().isPresent() && working.pivot().equals(working.pad())) {
      at.fault(
          "pivot",
          Quoted.of(working.pad().get()),
          "is the pad itself",
          "name the pin that the pedal turns about");
    }
  }
}

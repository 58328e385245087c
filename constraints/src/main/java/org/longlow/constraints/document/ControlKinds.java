package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.words;

import org.longlow.constraints.layout.Control;
import org.longlow.constraints.words.Names;
import org.longlow.constraints.words.Quoted;

/** What works a lever. */
final class ControlKinds {

  static final Kind<Control> CONTROL =
      Kind.of("worked", "By what of the rider a lever is worked, and where.", ControlKinds::control)
          .together("pivot", "travel")
          .rule(ControlKinds::pedal);

  private ControlKinds() {}

  private static Control control(Source<Control> s) {
    return new Control(
        s.need(
            "by",
            words(Control.By.class),
            Control::by,
            "What works it: sole for a pedal that is pressed, toes for one that is lifted too."),
        s.pin(
            "pad",
            "where finger, thumb or foot lies",
            Control::pad,
            "Where that lies: front face of a hand lever, a button, middle of a pedal's rubber."),
        s.may(
            "pivot",
            Type.ref(Referent.PIN),
            Control::pivot,
            "The pin that a pedal turns about; with travel."),
        s.may(
            "travel",
            PartSizes.SIZE,
            Control::travel,
            "How far a pedal's rubber goes, of one for the toes to either side; with pivot."));
  }

  private static void pedal(Control control, Spot at) {
    if (control.by() != null && control.by().pedal() && control.pivot().isEmpty()) {
      at.fault(
          "pivot",
          "",
          "is missing, and a foot works it (" + Names.word(control.by()) + ")",
          "name the pin that the pedal turns about, and its travel");
    }
    if (control.pivot().isPresent() && control.pivot().get().equals(control.pad())) {
      at.fault(
          "pivot",
          Quoted.of(control.pad()),
          "is the pad itself",
          "name the pin that the pedal turns about");
    }
  }
}

package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.document.Varied;
import org.longlow.constraints.layout.Layout;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Notice;
import org.longlow.sketcher.edit.Subjects;
import org.longlow.sketcher.picture.Aspect;
import org.longlow.sketcher.picture.Pictures;

/** Draws the machine as built, then each of its variants, over the machine as planned. */
final class OverSteps {

  private static final String TOPIC = "over";

  private final Desk desk;

  OverSteps(Desk desk) {
    this.desk = desk;
  }

  /** Returns what can be done, for keys and finder. */
  List<Deed> deeds() {
    return List.of(
        new Deed("see it as built, or as a variant, over the plan", "Y", this::next),
        new Deed("what was measured as built", "", this::measured));
  }

  private void measured() {
    desk.choose(Subjects.AS_BUILT);
  }

  private void next() {
    desk.session()
        .ifPresent(
            session -> {
              List<String> steps = new ArrayList<>(Pictures.states(session.layout()));
              if (steps.isEmpty()) {
                desk.say(
                    Notice.Mood.SAID,
                    TOPIC,
                    "Nothing was measured yet, and there are no variants: type what was measured"
                        + " on the ticket of a pin or part.");
                return;
              }
              steps.add("");
              String state = steps.get((steps.indexOf(desk.options().over()) + 1) % steps.size());
              show(state);
              if (session.layout().variants().containsKey(state)) {
                tellBroken(session.layout(), state);
              }
            });
  }

  /** Of many variants nobody knows whether they can be before they are asked for. */
  private void tellBroken(Layout layout, String variant) {
    try {
      Varied.named(layout, variant);
    } catch (OutOfRange e) {
      desk.say(Notice.Mood.BAD, TOPIC, e.getMessage() + ". Y goes on.");
    }
  }

  private void show(String state) {
    desk.look(o -> (state.isEmpty() ? o : o.withAspect(Aspect.SIDE)).withOver(state));
    if (state.isEmpty()) {
      desk.dropNotice(TOPIC);
    } else {
      desk.say(
          Notice.Mood.SAID,
          TOPIC,
          "Drawn over the plan: the machine as " + state + ". Y goes on, Escape takes it away.");
    }
  }

  /** Takes it away; returns whether there was any. */
  boolean close() {
    boolean shown = !desk.options().over().isEmpty();
    if (shown) {
      show("");
    }
    return shown;
  }
}

package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.SwingarmPart;

/**
 * What something new hangs on.
 *
 * @param part the part that carries it, which it may touch; empty for the frame at large
 * @param carrier what its pins move with: frame, front-wheel, rear-wheel or a section
 * @param steered whether it turns with the handlebars
 */
public record Hang(String part, String carrier, boolean steered) {

  /** On the frame, touching nothing. */
  public static final Hang FRAME = new Hang("", Pin.FRAME, false);

  /** Says it to whoever chooses. */
  public String words() {
    String way =
        switch (carrier) {
          case Pin.FRAME -> "";
          case Pin.FRONT_WHEEL -> "goes up and down with the front wheel";
          case Pin.REAR_WHEEL -> "goes up and down with the rear wheel";
          default -> "opens with " + carrier;
        };
    String turns = steered ? "turns with the bars" : "";
    String both = way + (way.isEmpty() || turns.isEmpty() ? "" : ", ") + turns;
    String on = part.isEmpty() ? "the frame" : part;
    return both.isEmpty() ? on : on + " (" + both + ")";
  }

  /** Returns what can be chosen from: each of these parts and the frame, the first part first. */
  public static List<Hang> offered(Layout layout, Collection<String> parts) {
    Map<Hang, Boolean> offered = new LinkedHashMap<>();
    for (String name : parts) {
      Part part = layout.parts().get(name);
      if (part != null) {
        of(layout, part).forEach(hang -> offered.put(hang, true));
      }
    }
    offered.put(FRAME, true);
    return List.copyOf(offered.keySet());
  }

  private static List<Hang> of(Layout layout, Part part) {
    Optional<String> section =
        layout.sections().entrySet().stream()
            .filter(s -> s.getValue().parts().contains(part.name()))
            .map(Map.Entry::getKey)
            .findFirst();
    if (section.isPresent()) {
      return List.of(new Hang(part.name(), section.get(), part.base().steered()));
    }
    if (part instanceof FrontPart) {
      return List.of(
          new Hang(part.name(), Pin.FRAME, true), new Hang(part.name(), Pin.FRONT_WHEEL, true));
    }
    boolean axle = part instanceof Part.AtEnd;
    boolean front = axle && ((Part.AtEnd) part).end() == Part.End.FRONT;
    String carrier =
        axle
            ? front ? Pin.FRONT_WHEEL : Pin.REAR_WHEEL
            : part.pins().stream()
                .map(layout.pins()::get)
                .map(Pin::with)
                .findFirst()
                .orElse(Pin.FRAME);
    Hang hang = new Hang(part.name(), carrier, front || part.base().steered());
    return part instanceof SwingarmPart
        ? List.of(hang, new Hang(part.name(), Pin.FRAME, false))
        : List.of(hang);
  }

  /** Returns the layout with a part of it hung on this. */
  Layout hung(Layout layout, Part own) {
    Layout hung = layout;
    if (steered && !own.base().steered()) {
      hung = Change.set(hung, true, "parts", own.name(), "steered");
    }
    if (!part.isEmpty()) {
      List<String> touches = new ArrayList<>(own.base().touches());
      touches.add(part);
      hung = Change.set(hung, touches, "parts", own.name(), "touches");
    }
    Section section = layout.sections().get(carrier);
    if (section != null) {
      List<String> parts = new ArrayList<>(section.parts());
      parts.add(own.name());
      hung = Change.set(hung, parts, "sections", carrier, "parts");
    }
    return hung;
  }
}

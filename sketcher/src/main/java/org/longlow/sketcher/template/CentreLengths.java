package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.shape.Places;

/** Legs, links and arms in figures: how far their pins are from each other, middle to middle. */
final class CentreLengths {

  private CentreLengths() {}

  /** Returns a line for each length; none for what has no legs. */
  static List<String> lines(Part part, Places places, TemplateFigures figures) {
    List<String> lines = new ArrayList<>();
    if (part instanceof FrontPart front) {
      lines.add(length("steering axis", front.top(), front.bottom(), places, figures));
      for (FrontPart.Piece p : front.pieces()) {
        String what = front.type().twoLinks() ? p.what() : p.what() + "s";
        lines.add(length(what, p.from(), p.to(), places, figures));
      }
      lines.add(
          "Ø"
              + figures.bare(places.value(front.tube()))
              + ", "
              + figures.mm(places.value(front.y()))
              + " to each side of the middle");
    } else if (part instanceof SwingarmPart arm) {
      lines.add(length("arm", arm.pivot(), arm.axle(), places, figures));
    } else if (part instanceof StandPart stand) {
      lines.add(
          length("leg as seen from the side", stand.pivot(), stand.stowed(), places, figures));
    }
    return lines;
  }

  /** Returns how far two pins are from each other, in words. */
  static String length(
      String what, String from, String to, Places places, TemplateFigures figures) {
    double mm = places.pin(from).distance(places.pin(to));
    return what + " from " + from + " to " + to + " " + figures.mm(mm) + ", middle to middle";
  }
}

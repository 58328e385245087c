package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** How to print, measure, glue and cut a template of several sheets, in words. */
final class SheetGuide {

  /** How far a bar may be from 100 mm on a good print, mm (usual practice, no standard). */
  static final double BAR_TOLERANCE_MM = 0.25;

  private SheetGuide() {}

  /** Returns what to do, step by step. */
  static List<String> notes(TemplatePlan plan) {
    List<String> out = new ArrayList<>();
    PrintCorrection correction = plan.settings().correction();
    boolean named = !correction.printer().isEmpty();
    out.add(
        "1. "
            + SheetNotes.ACTUAL_SIZE
            + ", nothing fitted to the page"
            + (named ? ". " : "; ")
            + Lettering.printable(correction.words())
            + ".");
    out.add(
        String.format(
            Locale.ROOT,
            "2. Measure both bars on every sheet: 100.0 mm, good within %.2f mm%s. If not, %s.",
            BAR_TOLERANCE_MM,
            plan.settings().lengths().inchBar() ? " (the line beside them: 4 in)" : "",
            named
                ? "measure a calibration page of this printer and print again"
                : "give what you measured as print correction and print again"));
    out.add(
        "3. Trim the edges marked so (left and top). Lay each sheet on the hatched glue strip of"
            + " its neighbour, cross on cross (pin through, or hold against a window).");
    out.add("4. Glue each row from left to right, then lay each row on the one above it.");
    out.add("5. " + tape(plan));
    out.add(
        "6. "
            + (plan.settings().cut() ? SheetNotes.LINE_STAYS + ", " + SheetNotes.UNLESS + ". " : "")
            + "Paper grows and shrinks with the weather: for metal, trust the figures before the"
            + " paper.");
    if (plan.sheets().size() < plan.tiling().rows() * plan.tiling().columns()) {
      out.add("Crossed-out fields of the map are empty and not printed.");
    }
    return out;
  }

  /** Returns the least that must be said where there is little room. */
  static List<String> brief(TemplatePlan plan) {
    return List.of(
        "Lay cross on cross, each sheet on the hatched strip of its neighbour.",
        "Measure both bars on every sheet: 100.0 mm.",
        tape(plan));
  }

  private static String tape(TemplatePlan plan) {
    boolean cut = plan.settings().cut();
    Envelope b = cut ? cutBoundsMm(plan.drawing()) : lineBoundsMm(plan.drawing(), 0);
    return String.format(
        Locale.ROOT,
        cut
            ? "Check with a tape before cutting: the line to cut is %s wide and %s high over all."
            : "Check with a tape: all that is drawn is %s wide and %s high, ground line and all.",
        plan.settings().lengths().says().apply(b.getWidth()),
        plan.settings().lengths().says().apply(b.getHeight()));
  }

  /** Returns the box round the wide lines, which are those to cut; round all shapes without any. */
  static Envelope cutBoundsMm(Drawing drawing) {
    Envelope wide = lineBoundsMm(drawing, Style.wide(Tone.INK).strokeMm());
    return wide.isNull() ? drawing.boundsMm() : wide;
  }

  private static Envelope lineBoundsMm(Drawing drawing, double leastStrokeMm) {
    Envelope box = new Envelope();
    for (Layer layer : drawing.layers()) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Shape s
            && s.style().stroke() != null
            && s.style().strokeMm() >= leastStrokeMm) {
          box.expandToInclude(s.geometry().getEnvelopeInternal());
        }
      }
    }
    return box;
  }
}

package org.longlow.sketcher.picture;

import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Part;
import org.longlow.svg.drawing.Hatch;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * How materials are told apart: by tone, and without colour by section lining. Double lines stand
 * for steel, every second line dashed for aluminium, crossed ones for plastics, lines along it for
 * plywood (customs of drawing offices, from memory; ISO 128 leaves such linings to them).
 */
final class Materials {

  private static final double SLANT = Math.PI / 4;

  /** Distance of lining lines, paper mm, and of the two of a pair. */
  private static final double STEP_MM = 1.6;

  private static final double PAIR_MM = 0.45;

  private Materials() {}

  private static Optional<Material> of(Part part) {
    return Material.named(part.base().material());
  }

  /** Returns the tone of what a part is made of; {@code otherwise} where that is not said. */
  static Tone tone(Part part, Tone otherwise) {
    return of(part).map(m -> tone(m, otherwise)).orElse(otherwise);
  }

  private static Tone tone(Material material, Tone otherwise) {
    return switch (material) {
      case STEEL, STAINLESS, TITANIUM -> Tone.STEEL;
      case ALUMINIUM -> Tone.ALUMINIUM;
      case PLYWOOD -> Tone.WOOD;
      case LAMINATE -> Tone.COWL;
      case ABS, POLYCARBONATE -> Tone.PLASTIC;
      case RUBBER -> Tone.RUBBER;
      case FOAM -> Tone.FOAM_FIRM;
      case MIXED -> otherwise;
    };
  }

  /** Draws the lining of a part's material inside its outline. */
  static void line(Canvas canvas, PictureLayer layer, String subject, Part part, Geometry outline) {
    Lines lines = new Lines(canvas, layer, subject, outline);
    Material material = of(part).orElse(Material.MIXED);
    switch (material) {
      case STEEL, STAINLESS, TITANIUM -> {
        lines.draw(STEP_MM, 0, SLANT, LineType.CONTINUOUS);
        lines.draw(STEP_MM, PAIR_MM, SLANT, LineType.CONTINUOUS);
      }
      case ALUMINIUM -> {
        lines.draw(STEP_MM, 0, SLANT, LineType.CONTINUOUS);
        lines.draw(STEP_MM, STEP_MM / 2, SLANT, LineType.DASHED);
      }
      case PLYWOOD -> lines.draw(0.4, 0, Grain.angleRad(outline), LineType.CONTINUOUS);
      case LAMINATE, ABS, POLYCARBONATE -> {
        lines.draw(STEP_MM, 0, SLANT, LineType.CONTINUOUS);
        lines.draw(STEP_MM, 0, -SLANT, LineType.DASHED);
      }
      case RUBBER -> lines.draw(0.5, 0, -SLANT, LineType.CONTINUOUS);
      case FOAM -> lines.draw(STEP_MM, 0, SLANT, LineType.DASHED);
      case MIXED -> lines.draw(STEP_MM, 0, -SLANT, LineType.CONTINUOUS);
    }
  }

  private record Lines(Canvas canvas, PictureLayer layer, String subject, Geometry outline) {
    void draw(double stepMm, double offMm, double angleRad, LineType type) {
      Style hair = Canvas.hair(Tone.INK).withLine(type);
      Geometry lines = Hatch.lines(outline, canvas.paper(stepMm), angleRad, canvas.paper(offMm));
      canvas.shape(layer, subject, lines, hair);
    }
  }
}

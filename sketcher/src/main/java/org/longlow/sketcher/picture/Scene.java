package org.longlow.sketcher.picture;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Load;
import org.longlow.constraints.stand.Opened;

/**
 * Everything that one elevation shows, in the axes of the frame.
 *
 * @param title one line
 * @param stance the stance shown, with who is on it; empty for the machine as drawn
 * @param condition which stance that is, and whom it carries
 * @param places pins in the stance shown
 * @param shapes every part in the stance shown
 * @param ground the road under it
 * @param people who is seated now
 * @param ghosts others, dashed
 * @param sunk how far each loaded cushion is pressed in, by part
 * @param findings those to mark, by number
 * @param phantoms parts in other positions, by section
 * @param load masses and axle loads of the stance shown
 * @param opened the section shown open, as far as it is; empty where none is
 * @param leaned how it leans; empty upright
 * @param steerRad how far the steering is turned, left positive, rad
 * @param drawn wheelbase and rake before any spring is pressed
 */
public record Scene(
    String title,
    Layout layout,
    String stance,
    Optional<Condition> condition,
    Places places,
    Map<String, PartShape> shapes,
    Ground ground,
    List<Manikin> people,
    List<Manikin> ghosts,
    Map<String, Sunk> sunk,
    Map<Integer, Finding> findings,
    Map<String, List<PartShape>> phantoms,
    Optional<Load> load,
    Optional<Opened> opened,
    Optional<Leaned> leaned,
    double steerRad,
    AsDrawn drawn) {

  /**
   * A cushion under load.
   *
   * @param layerSinksMm how far each layer gives, from the board up
   */
  public record Sunk(List<Double> layerSinksMm) {
    double totalMm() {
      return layerSinksMm.stream().mapToDouble(Double::doubleValue).sum();
    }
  }

  /** Whether the people of the stance are part of its load. */
  boolean laden() {
    return condition.filter(c -> c.kind() == Stance.Kind.LADEN).isPresent();
  }

  /** Returns the front system, if the machine has one. */
  Optional<FrontPart> front() {
    return layout.parts(FrontPart.class).findFirst();
  }

  /** Returns the wheel at one end. */
  Optional<WheelPart> wheel(Part.End end) {
    return layout.wheel(end);
  }
}

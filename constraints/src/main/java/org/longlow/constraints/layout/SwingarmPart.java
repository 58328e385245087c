package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.constraints.layout.Traits.Joint;
import org.longlow.constraints.layout.Traits.Make;

/**
 * The rear swingarm; travels and rate as for {@link FrontPart}.
 *
 * @param shock what springs it, if it is said
 */
public record SwingarmPart(
    PartBase base,
    String pivot,
    String axle,
    Formula depth,
    Formula bump,
    Formula droop,
    Optional<Formula> rate,
    Optional<Formula> preload,
    Shock shock)
    implements Part.Carrier {
  @Override
  public Part.End end() {
    return Part.End.REAR;
  }

  @Override
  public Traits traits() {
    return new Traits(
        "swingarm", Duty.CARRIER, Joint.BAR, Optional.of(depth), Heat.BEARS, Make.MADE, false);
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.swingarm(this);
  }

  @Override
  public List<String> pins() {
    return List.of(pivot, axle);
  }

  @Override
  public List<String> ownPins() {
    return Stream.concat(pins().stream(), shock.pins().stream()).distinct().toList();
  }
}

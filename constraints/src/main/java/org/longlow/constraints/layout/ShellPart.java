package org.longlow.constraints.layout;

import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.constraints.layout.Traits.Joint;
import org.longlow.constraints.layout.Traits.Make;
import org.longlow.constraints.words.Names;

/**
 * A sheet wrapped round the machine: edge strip and two sides where closed, a strip where open.
 *
 * @param breadth how its breadth varies
 * @param thickness of the sheet
 * @param open true if the sides are left open, as on a screen or a mudguard
 * @param formers asked for as templates
 */
public record ShellPart(
    PartBase base,
    Kind type,
    LocalAxes frame,
    Outline outline,
    Breadth breadth,
    Formula thickness,
    boolean open,
    Formers formers)
    implements Part.Outlined {

  /** A sheet without formers. */
  public ShellPart(
      PartBase base,
      Kind type,
      LocalAxes frame,
      Outline outline,
      Breadth breadth,
      Formula thickness,
      boolean open) {
    this(base, type, frame, outline, breadth, thickness, open, Formers.NONE);
  }

  /** What a shell is. */
  public enum Kind {
    COWL(false),
    SCREEN(true);

    private final boolean seeThrough;

    Kind(boolean seeThrough) {
      this.seeThrough = seeThrough;
    }

    /** Whether the road may be seen through it. */
    public boolean seeThrough() {
      return seeThrough;
    }
  }

  @Override
  public Traits traits() {
    return new Traits(Names.word(type), Duty.LOAD, Joint.OTHER, Heat.SUFFERS, Make.SHEET, true);
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.shell(this);
  }
}

package org.longlow.constraints.start;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Electric;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.Vertex;
import org.longlow.rider.words.Decimals;

/** Makes parts of plain numbers: lengths in mm, masses in kg. */
final class Parts {

  /** What every part has, said bit by bit. */
  static final class Base {
    private final String name;
    private final String material;
    private Optional<Spread> spread = Optional.empty();
    private Optional<Formula> mass = Optional.empty();
    private boolean steered;
    private boolean hot;
    private List<String> touches = List.of();
    private String note = "";

    private Base(String name, String material) {
      this.name = name;
      this.material = material;
    }

    /** A part of which mass and breadth follow from the rest. */
    static Base of(String name, String material) {
      return new Base(name, material);
    }

    Base mass(double kg) {
      mass = Optional.of(Draft.kg(kg));
      return this;
    }

    Base reaching(double leftMm, double rightMm) {
      spread = Optional.of(new Spread(Draft.mm(leftMm), Draft.mm(rightMm), false));
      return this;
    }

    /** As far to one side as to the other. */
    Base half(double mm) {
      return reaching(mm, mm);
    }

    Base steered() {
      steered = true;
      return this;
    }

    Base hot() {
      hot = true;
      return this;
    }

    Base touching(String... others) {
      touches = Arrays.asList(others);
      return this;
    }

    Base note(String text) {
      note = text;
      return this;
    }

    PartBase made() {
      return new PartBase(name, spread, mass, material, steered, hot, touches, note);
    }
  }

  private Parts() {}

  /** A corner of an outline, mm; smooth where the edge runs through it without one. */
  record At(double x, double z, boolean smooth) {
    static At corner(double x, double z) {
      return new At(x, z, false);
    }

    static At round(double x, double z) {
      return new At(x, z, true);
    }
  }

  private static Outline outline(boolean closed, At... corners) {
    return new Outline.Drawn(
        Arrays.stream(corners)
            .map(c -> new Vertex(Draft.mm(c.x()), Draft.mm(c.z()), null, c.smooth()))
            .toList(),
        closed);
  }

  static LocalAxes at(String pin) {
    return new LocalAxes(pin, Optional.empty(), Optional.empty());
  }

  static Part solid(Base base, SolidPart.Kind kind, String pin, At... corners) {
    return new SolidPart(base.made(), kind, at(pin), outline(true, corners));
  }

  /** The same with what it holds when full, besides its own mass. */
  static Part holding(Part solid, double kg) {
    SolidPart s = (SolidPart) solid;
    return new SolidPart(
        s.base(),
        s.type(),
        s.frame(),
        s.outline(),
        s.breadth(),
        s.bodies(),
        s.formers(),
        s.duct(),
        s.working(),
        s.glassRadius(),
        s.angle(),
        Optional.of(Draft.kg(kg)),
        s.electric());
  }

  /** A block with its lower rear corner on the pin. */
  static Part box(Base base, SolidPart.Kind kind, String pin, double lengthMm, double heightMm) {
    return solid(
        base,
        kind,
        pin,
        At.corner(0, 0),
        At.corner(lengthMm, 0),
        At.corner(lengthMm, heightMm),
        At.corner(0, heightMm));
  }

  /** A strip of sheet, open at its sides. */
  static Part strip(Base base, String pin, double thicknessMm, At... corners) {
    return new ShellPart(
        base.made(),
        ShellPart.Kind.COWL,
        at(pin),
        outline(false, corners),
        Breadth.EVEN,
        Draft.mm(thicknessMm),
        true);
  }

  /** A tube on both sides of the machine, or in its middle where {@code yMm} is 0. */
  static Part tube(
      Base base,
      TubePart.Kind kind,
      double diameterMm,
      double wallMm,
      double bendMm,
      double yMm,
      boolean both,
      String... path) {
    return new TubePart(
        base.made(),
        kind,
        Arrays.stream(path).map(TubePart.Corner::of).toList(),
        Draft.mm(diameterMm),
        Draft.mm(wallMm),
        Draft.mm(bendMm),
        Draft.mm(yMm),
        both,
        false);
  }

  static CushionPart cushion(
      Base base,
      CushionPart.Role role,
      String seat,
      String from,
      String to,
      double boardMm,
      List<FoamSpec> layers,
      double... bracketsMm) {
    return new CushionPart(
        base.made(),
        role,
        seat,
        from,
        to,
        Draft.mm(boardMm),
        layers,
        Arrays.stream(bracketsMm).mapToObj(Draft::mm).toList(),
        Optional.empty());
  }

  static RestPart rest(
      Base base,
      RestPart.Kind kind,
      String seat,
      String at,
      Optional<String> to,
      double thickMm,
      double yMm,
      double lengthMm) {
    return new RestPart(
        base.made(),
        kind,
        seat,
        at,
        to,
        Draft.mm(thickMm),
        Draft.mm(yMm),
        Draft.mm(lengthMm),
        false);
  }

  /**
   * A lamp, reflector or plate.
   *
   * @param yMm 0 for one in the middle, else one on either side so far out
   */
  static Part lamp(
      Base base,
      LampPart.Kind kind,
      String at,
      double yMm,
      double halfWidthMm,
      double halfHeightMm,
      double depthMm,
      LampPart.Colour colour) {
    return new LampPart(
        base.made(),
        kind,
        at,
        Draft.mm(yMm),
        yMm > 0,
        Draft.mm(halfWidthMm),
        Draft.mm(halfHeightMm),
        Draft.mm(depthMm),
        colour,
        Electric.NOT_SAID);
  }

  /** Open-cell foam as it is bought. */
  static FoamSpec foam(String name, double thickMm, double kgM3, double ifd25N, double support) {
    return new FoamSpec(
        name,
        Draft.mm(thickMm),
        Formula.parse(Decimals.brief(kgM3) + " kg/m^3"),
        Optional.of(Formula.parse(Decimals.brief(ifd25N) + " N")),
        Optional.of(Formula.parse(String.valueOf(support))),
        false,
        Optional.empty(),
        Optional.empty());
  }
}

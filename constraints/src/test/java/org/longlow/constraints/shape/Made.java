package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.AngleLeg;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Duct;
import org.longlow.constraints.layout.Electric;
import org.longlow.constraints.layout.Former;
import org.longlow.constraints.layout.Formers;
import org.longlow.constraints.layout.FurtherBody;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.layout.Station;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.layout.Working;
import org.longlow.rider.geom.PointMm;

/** Bodies for tests, written in a few figures of mm. */
public final class Made {

  /** Where their axes begin. */
  public static final Places PLACES = new Places(Map.of("o", PointMm.ORIGIN), Map.of());

  private Made() {}

  public static Formula mm(double v) {
    return Formula.of(v, Unit.MM);
  }

  public static Spread spread(double left, double right, boolean both) {
    return new Spread(mm(left), mm(right), both);
  }

  /** A closed outline: x and z in turn. */
  public static Outline outline(double... xz) {
    List<Vertex> vertices = new ArrayList<>();
    for (int i = 0; i < xz.length; i += 2) {
      vertices.add(new Vertex(mm(xz[i]), mm(xz[i + 1]), null, false));
    }
    return new Outline.Drawn(vertices, true);
  }

  /** A closed outline whose vertices say how broad it is: x, z, left and right in turn. */
  public static Outline reaching(double... xzlr) {
    List<Vertex> vertices = new ArrayList<>();
    for (int i = 0; i < xzlr.length; i += 4) {
      vertices.add(
          new Vertex(
              mm(xzlr[i]),
              mm(xzlr[i + 1]),
              null,
              false,
              Optional.of(
                  new HalfBreadths(Optional.of(mm(xzlr[i + 2])), Optional.of(mm(xzlr[i + 3]))))));
    }
    return new Outline.Drawn(vertices, true);
  }

  /** Stations as broad to both sides: x and breadth to a side in turn. */
  public static List<Station> stations(boolean smooth, double... xb) {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < xb.length; i += 2) {
      stations.add(
          new Station(
              "",
              mm(xb[i]),
              new HalfBreadths(Optional.of(mm(xb[i + 1])), Optional.empty()),
              smooth));
    }
    return stations;
  }

  public static Profile profile(Profile.Shape shape) {
    return new Profile(shape, Optional.empty(), List.of());
  }

  public static Profile corner(double radius) {
    return new Profile(Profile.Shape.FLAT, Optional.of(mm(radius)), List.of());
  }

  private static PartBase base(Spread spread, String material) {
    return new PartBase(
        "thing", Optional.of(spread), Optional.empty(), material, false, false, List.of(), "");
  }

  /** A solid at {@link #PLACES}, of aluminium right through. */
  public static PartShape solid(
      Outline outline, Spread spread, Breadth breadth, FurtherBody... bodies) {
    return Shapes.of(
        new SolidPart(
            base(spread, "aluminium"),
            SolidPart.Kind.BLOCK,
            new LocalAxes("o", Optional.empty(), Optional.empty()),
            outline,
            breadth,
            List.of(bodies)),
        PLACES,
        false);
  }

  /** A sheet of aluminium at {@link #PLACES}. */
  public static PartShape shell(
      Outline outline, Spread spread, Breadth breadth, double thickness, boolean open) {
    return Shapes.of(
        new ShellPart(
            base(spread, "aluminium"),
            ShellPart.Kind.COWL,
            new LocalAxes("o", Optional.empty(), Optional.empty()),
            outline,
            breadth,
            mm(thickness),
            open),
        PLACES,
        false);
  }

  /** A solid as {@link #solid} with formers. */
  public static SolidPart formed(
      Outline outline, Spread spread, Breadth breadth, Formers formers, FurtherBody... bodies) {
    return new SolidPart(
        base(spread, "aluminium"),
        SolidPart.Kind.BLOCK,
        new LocalAxes("o", Optional.empty(), Optional.empty()),
        outline,
        breadth,
        List.of(bodies),
        formers,
        Duct.NONE,
        Working.NOT_SAID,
        Optional.empty(),
        AngleLeg.NONE,
        Optional.empty(),
        Electric.NOT_SAID);
  }

  /** A sheet as {@link #shell} with formers. */
  public static ShellPart formed(
      Outline outline,
      Spread spread,
      Breadth breadth,
      double thickness,
      boolean open,
      Formers formers) {
    return new ShellPart(
        base(spread, "aluminium"),
        ShellPart.Kind.COWL,
        new LocalAxes("o", Optional.empty(), Optional.empty()),
        outline,
        breadth,
        mm(thickness),
        open,
        formers);
  }

  /** Formers across at places, of sheet of 10 mm over a skin. */
  public static Formers across(double skin, double... x) {
    return new Formers(
        formers(x), List.of(), Optional.empty(), mm(10), Optional.empty(), maybe(skin), List.of());
  }

  /** Formers along at places, of sheet of 10 mm over a skin. */
  public static Formers along(double skin, double... y) {
    return new Formers(
        List.of(), formers(y), Optional.empty(), mm(10), Optional.empty(), maybe(skin), List.of());
  }

  private static Optional<Formula> maybe(double v) {
    return v > 0 ? Optional.of(mm(v)) : Optional.empty();
  }

  private static List<Former> formers(double... at) {
    return Arrays.stream(at)
        .mapToObj(v -> new Former("", mm(v), Optional.empty(), Optional.empty()))
        .toList();
  }
}

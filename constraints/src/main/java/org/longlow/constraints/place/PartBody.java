package org.longlow.constraints.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Shapes;

/** A part as its pins and measures have it. */
final class PartBody extends MovingBody {

  private final Unknowns unknowns;
  private final Part part;

  private PartBody(Unknowns unknowns, Part part, int[] variables) {
    super(variables);
    this.unknowns = unknowns;
    this.part = part;
  }

  static PartBody of(Unknowns unknowns, Part part) {
    Set<String> pins = Set.copyOf(part.pins());
    int[] variables =
        unknowns.variablesOf(pins, places -> Shapes.of(part, places, false).prisms().size());
    return new PartBody(unknowns, part, variables);
  }

  @Override
  At make(double[] x, double[] values) {
    double[] here = x.clone();
    return new At(values, new Solid(part.name(), prisms(here)), () -> besides(here));
  }

  private List<Prism> prisms(double[] x) {
    return Shapes.of(part, unknowns.places(x, part.pins()), false).prisms();
  }

  private IntFunction<Geometry> outlines(double[] x) {
    List<Geometry> outlines = Solid.outlines(prisms(x));
    return face -> face < outlines.size() ? outlines.get(face) : null;
  }

  private List<Beside> besides(double[] x) {
    List<Beside> besides = new ArrayList<>();
    for (int i = 0; i < variables().length; i++) {
      int v = variables()[i];
      double step = STEP_MM * unknowns.scale(v);
      double at = x[v];
      x[v] = at - step;
      IntFunction<Geometry> less = outlines(x);
      x[v] = at + step;
      IntFunction<Geometry> more = outlines(x);
      x[v] = at;
      double[] slopes = new double[variables().length];
      slopes[i] = 1;
      besides.add(new Beside(less, more, 2 * step, slopes));
    }
    return besides;
  }
}

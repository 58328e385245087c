package org.longlow.constraints.document;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Pin;

/** Measures and pins. */
final class PointKinds {

  /** What pins may move with besides sections. */
  static final List<String> CARRIERS = List.of(Pin.FRAME, Pin.FRONT_WHEEL, Pin.REAR_WHEEL);

  private static final Type.Place PLACE = new Type.Place();

  static final Kind<Measure> MEASURE = measure(Optional.empty());

  static final Kind<Pin> PIN =
      Kind.of(
              "pin",
              "A named point of the elevation: its place, or an object where there is more to say.",
              PointKinds::pin)
          .shortAs("at");

  private PointKinds() {}

  private static Kind<Measure> measure(Optional<Dim> dim) {
    return Kind.<Measure>of(
            "measure",
            "A named quantity: given, computed by a formula, or free for the solver to find.",
            s -> measure(dim, s))
        .shortAs("is")
        .rule((measure, at) -> at.ordered(measure.from(), measure.to()))
        .exactly((name, measure, dims) -> measure(dims.apply(name)));
  }

  private static Measure measure(Optional<Dim> dim, Source<Measure> s) {
    Type.Quantity bound = dim.map(Type::quantity).orElse(Type.ANY);
    return new Measure(
        s.need(
            "is",
            Type.DEFINITION,
            Measure::is,
            "Its value or formula; where it is free, where the solver starts."),
        dim.orElse(Dim.NUMBER),
        s.flag("free", Measure::free, "True if the solver may change it."),
        s.may("from", bound, Measure::from, "Smallest value allowed."),
        s.may("to", bound, Measure::to, "Largest value allowed."),
        s.note(Measure::note));
  }

  private static Pin pin(Source<Pin> s) {
    List<Formula> at =
        s.need(
            "at",
            PLACE,
            PLACE.said(),
            p -> List.of(p.x(), p.z()),
            "Where it is now: x forward of the rear contact point, z above the ground.");
    return new Pin(
        at.get(0),
        at.get(1),
        s.flag("nailed", Pin::nailed, "True if the solver may not move it."),
        s.or(
            "with",
            Type.ref(Referent.CARRIER),
            Pin.FRAME,
            Pin::with,
            "What it moves with when the machine moves: frame, front-wheel, rear-wheel or the name"
                + " of a section."),
        s.note(Pin::note));
  }
}

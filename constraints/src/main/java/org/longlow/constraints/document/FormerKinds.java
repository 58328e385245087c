package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.NUMBER;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Former;
import org.longlow.constraints.layout.Formers;
import org.longlow.constraints.layout.Stringer;
import org.longlow.constraints.words.Quoted;

/** Cross sections of a body that are asked for as templates. */
final class FormerKinds {

  /** Judgement: formers nearer to each other than this are a slip of the unit, mm. */
  private static final double LEAST_SPACING_MM = 5;

  static final Kind<Former> ACROSS =
      Kind.of(
          "formerAcross",
          "A former square to the local x axis of a body.",
          s ->
              former(
                  s,
                  "x",
                  "Along the local x axis of the outline; the line is of its forward face"
                      + " or its rear face, whichever lies where the body is narrower."));

  static final Kind<Former> ALONG =
      Kind.of(
          "formerAlong",
          "A former along a body, upright.",
          s -> former(s, "y", "Distance from the middle plane, left positive."));

  static final Kind<Stringer> STRINGER =
      Kind.of("stringer", "A batten let into formers, flush.", FormerKinds::stringer)
          .rule(FormerKinds::placed);

  static final Kind<Formers> FORMERS =
      Kind.of("formers", "Cross sections of a body as templates.", FormerKinds::all);

  private FormerKinds() {}

  static <T> Formers formers(Source<T> s, Function<? super T, Formers> get) {
    return s.or(
        "formers",
        new Type.Nested<>(FORMERS),
        Formers.NONE,
        get,
        "Cross sections that are printed as templates, to build it over; of a sheet along a line that"
            + " does not close, what lies between its inner face and the straight line between its"
            + " ends.");
  }

  private static Formers all(Source<Formers> s) {
    return new Formers(
        s.or(
            "across",
            list(ACROSS),
            List.of(),
            Formers::across,
            "Those square to the local x axis."),
        s.or("along", list(ALONG), List.of(), Formers::along, "Those along the machine."),
        s.may(
            "every",
            LENGTH.atLeast(LEAST_SPACING_MM),
            Formers::every,
            "From one former across to the next, counted from the origin of the outline, besides"
                + " those listed; up to "
                + Formers.MOST
                + " of them."),
        s.or(
            "thickness",
            PartSizes.SHEET,
            Formers.USUAL,
            Formers::thickness,
            "Thickness of a former's own sheet."),
        s.may(
            "flange",
            PartSizes.SIZE,
            Formers::flange,
            "Breadth of a rim turned over square along the edge of formers of sheet metal; the"
                + " template is then the flat sheet."),
        s.may(
            "skin",
            PartSizes.SHEET,
            Formers::skin,
            "Thickness of what is laid over them, taken off square to its surface; absent takes"
                + " that of the sheet of a cowl or screen."),
        s.or(
            "stringers",
            list(STRINGER),
            List.of(),
            Formers::stringers,
            "Battens let into those across."));
  }

  private static <T> Type.ListOf<T> list(Kind<T> kind) {
    return new Type.ListOf<>(new Type.Nested<>(kind), 0, Formers.MOST);
  }

  private static Former former(Source<Former> s, String place, String help) {
    return new Former(
        s.text("name", Former::name, "For people, such as bulkhead."),
        s.need(place, LENGTH, Former::at, help),
        s.may(
            "thickness",
            PartSizes.SHEET,
            Former::thickness,
            "Thickness of its own sheet; absent takes that of all formers here."),
        s.may(
            "flange",
            PartSizes.SIZE,
            Former::flange,
            "Breadth of its rim; absent takes that of all formers here."));
  }

  private static Stringer stringer(Source<Stringer> s) {
    return new Stringer(
        s.text("name", Stringer::name, "For people, such as waist."),
        s.may(
            "girth",
            NUMBER.between(0, 1),
            Stringer::girth,
            "Its place as a share of the way round each side, 0 at the lowest middle to 1 at the"
                + " highest."),
        s.may(
            "height",
            LENGTH,
            Stringer::height,
            "Its place as a height over the ground, machine as drawn, instead of girth."),
        s.need("width", PartSizes.SIZE, Stringer::width, "Its width along the edge."),
        s.need("depth", PartSizes.SIZE, Stringer::depth, "How deep it is let in."));
  }

  private static void placed(Stringer stringer, Spot at) {
    if (stringer.girth().isPresent() == stringer.height().isPresent()) {
      at.fault(
          stringer.girth().isPresent() ? "height" : "",
          stringer.height().map(h -> Quoted.of(h.text())).orElse(""),
          stringer.girth().isPresent()
              ? "says its place a second time, girth says it already"
              : "says neither girth nor height",
          "write one of them");
    }
  }

  /** Returns what is added to a list of these first, or next: something that can stand. */
  static Optional<?> begun(Kind<?> kind, List<?> there) {
    if (kind == ACROSS || kind == ALONG) {
      String at =
          there.isEmpty()
              ? "0 mm"
              : "(" + ((Former) there.get(there.size() - 1)).at().text() + ") + 100 mm";
      return Optional.of(new Former("", Formula.parse(at), Optional.empty(), Optional.empty()));
    }
    return kind == STRINGER && there.isEmpty()
        ? Optional.of(
            new Stringer(
                "",
                Optional.of(Formula.parse("0.5")),
                Optional.empty(),
                Formula.parse("20 mm"),
                Formula.parse("10 mm")))
        : Optional.empty();
  }
}

package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.MASS;
import static org.longlow.constraints.document.Type.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.layout.AngleLeg;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Duct;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.Working;
import org.longlow.constraints.words.Names;

/** The kinds of parts: what each has besides what {@link PartCommon} says of all. */
final class PartKinds {

  /** Most foam layers on one board. */
  private static final int MAX_LAYERS = 20;

  /** Glass bulged more is a ball, mm. */
  private static final double LEAST_GLASS_MM = 100;

  /** Most brackets of one board. */
  private static final int MAX_BRACKETS = 20;

  /** Most pins of one tube. */
  private static final int MAX_PATH = 50;

  private static final String ON_EACH_SIDE = ", one on each side.";

  static final Kind<TubePart.Corner> CORNER =
      Kind.of(
              "tubePin",
              "A pin of a tube, or an object that says how far across it lies there too.",
              (Source<TubePart.Corner> s) ->
                  new TubePart.Corner(
                      s.pin("pin", "an end or a bend", TubePart.Corner::pin, "The pin there."),
                      s.may(
                          "y",
                          PartSizes.REACH,
                          TubePart.Corner::y,
                          "Distance of the tube's centre from the middle plane there, left positive;"
                              + " absent where it is that of the tube. A tube whose pins lie at"
                              + " different ones is bent in space.")))
          .shortAs("pin");

  /** All of them; a part's {@code kind} decides which fields it has. */
  static final Type.Choice<Part> PART =
      new Type.Choice<>(
          "part",
          "A physical thing of the machine; its kind decides which keys it has.",
          "kind",
          kinds(),
          Part::kind);

  private PartKinds() {}

  private static Map<String, Kind<? extends Part>> kinds() {
    Map<String, Kind<? extends Part>> all = new LinkedHashMap<>();
    all.put(
        "wheel",
        part("wheel", "A wheel with its tyre. A layout has one at each end.", WheelKinds::wheel)
            .rule(PartRules::sized)
            .rule(PartRules::currentless));
    all.put(
        "front",
        part("front", "The front system, from the steering axis to the axle.", WheelKinds::front)
            .together("postTop", "postBottom")
            .rule(PartRules::linked));
    all.put("swingarm", part("swingarm", "The rear swingarm.", WheelKinds::swingarm));
    for (TubePart.Kind type : TubePart.Kind.values()) {
      all.put(
          Names.word(type),
          PartKinds.<TubePart>part("tube", "A round tube through pins.", s -> tube(type, s))
              .rule(PartRules::drawnTube));
    }
    for (SolidPart.Kind type : SolidPart.Kind.values()) {
      all.put(
          Names.word(type),
          PartKinds.<SolidPart>part(
                  switch (type) {
                    case RADIATOR, LEVER, MIRROR, BRACKET -> Names.word(type);
                    case TANK, BOX -> "store";
                    default -> "solid";
                  },
                  "A body filled to its outline.",
                  s -> solid(type, s))
              .rule(AngleKinds::straight));
    }
    for (ShellPart.Kind type : ShellPart.Kind.values()) {
      all.put(
          Names.word(type),
          PartKinds.<ShellPart>part(
                  "shell",
                  "A sheet wrapped round the machine: edge strip and two sides where its outline is"
                      + " closed, a strip where it is open.",
                  s -> shell(type, s))
              .rule(PartRules::sided));
    }
    all.put(
        "cushion",
        part("cushion", "Foam on a board.", PartKinds::cushion).rule(PartRules::twoEnds));
    for (RestPart.Kind type : RestPart.Kind.values()) {
      boolean board = type.board();
      all.put(
          Names.word(type),
          PartKinds.<RestPart>part(
              board ? "footboard" : type == RestPart.Kind.HANDHOLD ? "handhold" : "rest",
              (board
                      ? "A footboard"
                      : type == RestPart.Kind.HANDHOLD
                          ? "What a hand holds or pushes on to get in and out"
                          : "What a hand or foot rests on")
                  + ON_EACH_SIDE,
              s -> FittingKinds.rest(type, s)));
    }
    all.put("lamp", part("lamp", "A lamp, reflector or number plate.", FittingKinds::lamp));
    all.put(
        "stand",
        part("stand", "A stand that the machine carries.", FittingKinds::stand)
            .rule(PartRules::stood));
    return all;
  }

  private static <P extends Part> Kind<P> part(String name, String help, Kind.Shape<P> shape) {
    Kind<P> kind = Kind.of(name, help, shape).rule(PartRules::common);
    return kind.field("left").required() ? kind : kind.together("left", "right");
  }

  private static TubePart tube(TubePart.Kind type, Source<TubePart> s) {
    return new TubePart(
        PartCommon.across(s, type.usuallyHot()),
        type,
        s.need(
            "path",
            new Type.ListOf<>(new Type.Nested<>(CORNER), 2, MAX_PATH),
            "two or more pins",
            TubePart::corners,
            "Its pins in order, bent at the inner ones."),
        s.need("diameter", PartSizes.SIZE, TubePart::diameter, "Outside diameter."),
        s.need("wall", PartSizes.SHEET, TubePart::wall, "Wall thickness."),
        s.need(
            "bendRadius", PartSizes.SIZE, TubePart::bendRadius, "Centre-line radius of the bends."),
        s.need(
            "y",
            LENGTH,
            TubePart::y,
            "Distance of the tube's centre from the middle plane, left positive, at each pin that"
                + " says no other."),
        s.flag("both", TubePart::both, "True if there is one on each side."),
        s.flag(
            "bought",
            TubePart::bought,
            "True if it is bought as it is, such as a shock or a handlebar: nothing is cut for it,"
                + " and it weighs what its mass says."));
  }

  private static SolidPart solid(SolidPart.Kind type, Source<SolidPart> s) {
    PartBase base = PartCommon.outlined(s, type.usuallyHot());
    LocalAxes frame = frame(s);
    Outline outline = outline(s);
    Breadth breadth = BreadthKinds.breadth(s, SolidPart::breadth);
    return new SolidPart(
        PartCommon.byStations(base, breadth),
        type,
        frame,
        outline,
        breadth,
        s.or(
            "bodies",
            new Type.ListOf<>(new Type.Nested<>(BreadthKinds.BODY), 0, BreadthKinds.MAX_BODIES),
            List.of(),
            SolidPart::bodies,
            "What it has besides the body of its outline, such as cylinder heads beside a"
                + " crankcase."),
        FormerKinds.formers(s, SolidPart::formers),
        type == SolidPart.Kind.RADIATOR
            ? s.or(
                "duct",
                new Type.Nested<>(DuctKinds.DUCT),
                Duct.NONE,
                SolidPart::duct,
                "How air is led to it and away; absent where it stands in the wind.")
            : Duct.NONE,
        type == SolidPart.Kind.LEVER
            ? s.or(
                "worked",
                new Type.Nested<>(ControlKinds.CONTROL),
                Working.NOT_SAID,
                SolidPart::working,
                "By what of the rider it is worked, and where.")
            : Working.NOT_SAID,
        type == SolidPart.Kind.MIRROR
            ? s.may(
                "glassRadius",
                LENGTH.atLeast(LEAST_GLASS_MM),
                SolidPart::glassRadius,
                "Radius that its glass is bulged to; absent where it is flat.")
            : Optional.empty(),
        type == SolidPart.Kind.BRACKET
            ? s.or(
                "angle",
                new Type.Nested<>(AngleKinds.LEG),
                AngleLeg.NONE,
                SolidPart::angle,
                "Its second leg, where it is of angle section: sheet folded along one edge.")
            : AngleLeg.NONE,
        type == SolidPart.Kind.TANK || type == SolidPart.Kind.BOX
            ? s.may(
                "holds",
                MASS.positive(),
                SolidPart::holds,
                "Mass of what it holds when full, besides its own mass: fuel in a tank, luggage in a"
                    + " box. The machine is looked at full, and sag and loads with it empty too.")
            : Optional.empty(),
        ElectricKinds.said(s, SolidPart::electric));
  }

  private static <P extends Part.Outlined> LocalAxes frame(Source<P> s) {
    return s.need(
        "frame",
        new Type.Nested<>(ShapeKinds.FRAME),
        "the pin at the outline's origin",
        P::frame,
        "The axes that its outline is written in.");
  }

  private static <P extends Part.Outlined> Outline outline(Source<P> s) {
    return s.need(
        "outline",
        ShapeKinds.OUTLINE,
        ShapeKinds.OUTLINE.said(),
        P::outline,
        "Its edge in the elevation.");
  }

  private static ShellPart shell(ShellPart.Kind type, Source<ShellPart> s) {
    PartBase base = PartCommon.outlined(s, false);
    LocalAxes frame = frame(s);
    Outline outline = outline(s);
    Breadth breadth = BreadthKinds.breadth(s, ShellPart::breadth);
    return new ShellPart(
        PartCommon.byStations(base, breadth),
        type,
        frame,
        outline,
        breadth,
        s.need("thickness", PartSizes.SHEET, ShellPart::thickness, "Thickness of the sheet."),
        s.flag(
            "open",
            ShellPart::open,
            "True if the sides are left open, as on a screen or a mudguard."),
        FormerKinds.formers(s, ShellPart::formers));
  }

  private static CushionPart cushion(Source<CushionPart> s) {
    return new CushionPart(
        PartCommon.wide(s, true),
        s.need(
            "role", words(CushionPart.Role.class), CushionPart::role, "Which cushion of a seat."),
        s.orSaid(
            "seat", Type.FILLED, Occupant.RIDER, CushionPart::seat, "Whose seat it belongs to."),
        s.pin(
            "from",
            "the rear or lower end of the board",
            CushionPart::from,
            "The board's face: rear end of a pan, lower end of a back or head rest."),
        s.pin(
            "to",
            "the front or upper end of the board",
            CushionPart::to,
            "The board's face: front end of a pan, upper end of a back or head rest."),
        s.need(
            "board",
            PartSizes.SHEET,
            CushionPart::board,
            "Thickness of the board, on the far side from the person."),
        s.need(
            "layers",
            new Type.ListOf<>(new Type.Nested<>(FoamKinds.FOAM), 1, MAX_LAYERS),
            "the foam from the top down to the board",
            CushionPart::layers,
            "Foam from the top (next to the person) down to the board."),
        s.or(
            "brackets",
            new Type.ListOf<>(LENGTH.notNegative(), 0, MAX_BRACKETS),
            List.of(),
            CushionPart::brackets,
            "Where the board is carried, measured along it from its first end."),
        s.may(
            "coverGive",
            LENGTH.notNegative(),
            CushionPart::coverGive,
            "How much longer the cover can get along the board than the foam it lies on, by"
                + " stretch, slack or pleats."));
  }
}

package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.law.LampNeeds;
import org.longlow.constraints.law.LampNeeds.Lamps;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * All lamps and reflectors that the rules in force ask for and a machine lacks, in one edit: those
 * ahead along the steering axis, over the front wheel; those behind one over the other, behind
 * everything. Each is of the size that the gallery has and nailed relative to the axle at its end.
 */
public final class LampSet {

  /** What it is called where it is offered. */
  public static final String TITLE = "lamps and reflectors that the rules ask for";

  /** Between two lamps that stand over each other, mm. */
  private static final double BETWEEN_MM = 8;

  /** Reflectors of the sides are so high over the axle, clear of its tyre's tread, mm. */
  private static final double SIDE_UP_MM = 150;

  /** So far from what the rules ask at least or at most, for the springs, mm. */
  private static final double SPARE_MM = 60;

  /** Front indicators are so far from the lit area of the headlamp, mm: 101.6 asked at most. */
  private static final double BESIDE_HEADLAMP_MM = 105;

  /** Of the lowest lamp behind, mm over the road. */
  private static final double LOWEST_BEHIND_MM = 430;

  /**
   * A reflector of the side has free room so far forward and rearward, to be seen from there, mm.
   */
  private static final double SEEN_ALONG_MM = 120;

  /** A plate's lamp is so far ahead of the plate that it lights it, mm. */
  private static final double LIT_FROM_MM = 22;

  /** What stays is so many radii behind the front axle, clear of the wheel at full lock. */
  private static final double BEHIND_LOCKED = 1.4;

  private static final PointMm FORWARD = new PointMm(1, 0);
  private static final PointMm BACK = new PointMm(-1, 0);
  private static final PointMm STILL = new PointMm(0, 0);

  private final Study study;
  private final LampSpots spots;
  private Layout layout;
  private final Map<LampPart.Kind, LampSpots.Spot> behind = new LinkedHashMap<>();
  private LampSpots.Spot headlamp;
  private String headlampName = "";
  private boolean turns;

  private LampSet(Study study) {
    this.study = study;
    this.layout = study.layout();
    spots = new LampSpots(study);
  }

  /** Returns whether all words of what is searched for begin a word of its title. */
  public static boolean matches(String search) {
    List<String> described = List.of((TITLE + " law indicators plate").split(" "));
    return List.of(search.strip().toLowerCase(Locale.ROOT).split("\\s+")).stream()
        .allMatch(word -> described.stream().anyMatch(d -> d.startsWith(word)));
  }

  /** Returns whether a finding says that a lamp is lacking. */
  public static boolean isAsked(Finding finding) {
    return finding.group() == FindingGroup.LAW
        && finding.unit() == FigureUnit.COUNT
        && finding.margin() < 0
        && finding.value() < finding.limit();
  }

  /** Returns the edit that adds them to a machine, which it solves and seats to find room. */
  public static Edit edit() {
    return new Edit(
        "add lamps", layout -> new LampSet(Study.unchecked(Placer.place(layout))).all());
  }

  /** Returns what a machine lacks. */
  static List<Lamps> lacking(Layout layout, Places places) {
    List<Lamps> given = new ArrayList<>();
    for (LampPart lamp : layout.parts(LampPart.class).toList()) {
      boolean ahead = LampColour.ahead(layout, places, places.pin(lamp.at())).orElse(false);
      given.add(new Lamps(lamp.type(), ahead, lamp.pair() ? 2 : 1));
    }
    return LampNeeds.lacking(layout.demands().rules(), given);
  }

  private Layout all() {
    List<Lamps> lacking = lacking(layout, study.placed().places());
    if (lacking.isEmpty()) {
      throw new OutOfRange("the rules in force ask for no lamp that is not there");
    }
    ahead();
    stack();
    lacking.stream().filter(l -> l.kind() == LampPart.Kind.HEADLAMP).forEach(this::add);
    lacking.stream().filter(l -> l.kind() != LampPart.Kind.HEADLAMP).forEach(this::add);
    return layout;
  }

  private static LampPart specimen(LampPart.Kind kind) {
    return Gallery.layout()
        .parts(LampPart.class)
        .filter(l -> l.type() == kind)
        .findFirst()
        .orElseThrow();
  }

  private static double mm(Formula size) {
    return Gallery.places().value(size);
  }

  private LampSpots.Room room(LampPart.Kind kind) {
    LampPart lamp = specimen(kind);
    double deep = mm(lamp.depth());
    double half = mm(lamp.halfHeight());
    return new LampSpots.Room(
        new Envelope(isBehind(kind) ? 0 : -deep, isBehind(kind) ? deep : 0, -half, half),
        mm(lamp.halfWidth()));
  }

  /** The one that is there, or a place for one over the wheel. */
  private void ahead() {
    Optional<LampPart> there =
        layout.parts(LampPart.class).filter(l -> l.type() == LampPart.Kind.HEADLAMP).findFirst();
    LampPart lamp = specimen(LampPart.Kind.HEADLAMP);
    double z = spots.overFrontWheelMm() + mm(lamp.halfHeight());
    PointMm nominal = spots.onAxis(within(LampPart.Kind.HEADLAMP, true, z));
    headlamp =
        there
            .map(l -> new LampSpots.Spot(study.placed().places().pin(l.at()), 0))
            .orElseGet(() -> spots.free(nominal, 0, room(LampPart.Kind.HEADLAMP), FORWARD, 0));
    headlampName = there.map(LampPart::name).orElse("");
    turns = there.map(l -> l.base().steered()).orElseGet(() -> spots.turns(headlamp.at()));
  }

  private double within(LampPart.Kind kind, boolean ahead, double z) {
    double[] allowed =
        LampNeeds.heightsMm(layout.demands().rules(), kind, ahead, mm(specimen(kind).halfHeight()));
    return Math.max(allowed[0] + SPARE_MM, Math.min(allowed[1] - SPARE_MM, z));
  }

  private static boolean isBehind(LampPart.Kind kind) {
    return STACK.contains(kind) || kind == LampPart.Kind.REAR_SIGNAL;
  }

  /** From the road up. */
  private static final List<LampPart.Kind> STACK =
      List.of(
          LampPart.Kind.REAR_REFLECTOR,
          LampPart.Kind.PLATE,
          LampPart.Kind.PLATE_LAMP,
          LampPart.Kind.TAIL,
          LampPart.Kind.STOP,
          LampPart.Kind.REAR_FOG);

  /** Gives each lamp behind its height, and all of them one place along the machine. */
  private void stack() {
    Map<LampPart.Kind, Double> heights = new LinkedHashMap<>();
    double low = LOWEST_BEHIND_MM - mm(specimen(STACK.get(0)).halfHeight());
    double z = low;
    double deep = 0;
    for (LampPart.Kind kind : STACK) {
      double half = mm(specimen(kind).halfHeight());
      heights.put(kind, z + half);
      z += 2 * half + BETWEEN_MM;
      deep = Math.max(deep, mm(specimen(kind).depth()));
    }
    heights.put(LampPart.Kind.REAR_SIGNAL, heights.get(LampPart.Kind.TAIL));
    LampPart signal = specimen(LampPart.Kind.REAR_SIGNAL);
    double wide = mm(signal.y()) + mm(signal.halfWidth());
    deep = Math.max(deep, mm(signal.depth())) + LIT_FROM_MM;
    LampSpots.Room all = new LampSpots.Room(new Envelope(0, deep, low, z), wide);
    double x = spots.free(new PointMm(spots.rear.x(), 0), 0, all, BACK, 0).at().x();
    heights.forEach(
        (kind, up) ->
            behind.put(
                kind,
                new LampSpots.Spot(
                    new PointMm(
                        kind == LampPart.Kind.PLATE_LAMP ? x + LIT_FROM_MM : x, Math.rint(up)),
                    mm(specimen(kind).y()))));
  }

  private void add(Lamps lacking) {
    LampPart.Kind kind = lacking.kind();
    Optional<LampPart> single =
        layout
            .parts(LampPart.class)
            .filter(l -> l.type() == kind && !l.pair() && study.placed().places().value(l.y()) != 0)
            .findFirst();
    if (lacking.number() == 1 && specimen(kind).pair() && single.isPresent()) {
      layout = Change.set(layout, true, "parts", single.get().name(), "pair");
      return;
    }
    LampSpots.Spot spot = spot(kind, lacking.ahead());
    Adding adding = Adding.of(specimen(kind).name()).with(PinSpot.at(spot.at()));
    String name = adding.nameIn(layout);
    layout = adding.edit().applied(layout);
    set(name, "y", Formula.of(spot.yMm(), Unit.MM));
    nail(((LampPart) layout.parts().get(name)).at(), spot.at(), lacking.ahead());
    if (lacking.ahead() && turns) {
      set(name, "steered", true);
    }
    if (kind == LampPart.Kind.HEADLAMP) {
      headlampName = name;
    }
    if (kind == LampPart.Kind.FRONT_POSITION && !headlampName.isEmpty()) {
      set(name, "touches", List.of(headlampName));
    }
  }

  private void set(String name, String field, Object value) {
    layout = Change.set(layout, value, "parts", name, field);
  }

  private LampSpots.Spot spot(LampPart.Kind kind, boolean ahead) {
    return switch (kind) {
      case HEADLAMP, FRONT_POSITION -> headlamp;
      case FRONT_SIGNAL -> frontSignals();
      case SIDE_REFLECTOR -> side(ahead);
      case DRIVING_BEAM, DAYTIME, FRONT_FOG -> spots.free(headlamp.at(), 0, room(kind), FORWARD, 0);
      default -> behind.get(kind);
    };
  }

  /** Beside the headlamp, as far outside as the rules and whoever sits there ask. */
  private LampSpots.Spot frontSignals() {
    LampPart signal = specimen(LampPart.Kind.FRONT_SIGNAL);
    double headlampHalf =
        headlampName.isEmpty()
            ? mm(specimen(LampPart.Kind.HEADLAMP).halfWidth())
            : study
                .placed()
                .places()
                .value(((LampPart) layout.parts().get(headlampName)).halfWidth());
    double y = Math.max(mm(signal.y()), headlampHalf + BESIDE_HEADLAMP_MM + mm(signal.halfWidth()));
    return spots.free(headlamp.at(), y, room(LampPart.Kind.FRONT_SIGNAL), FORWARD, 0);
  }

  /** Outside of the wheel at its end. */
  private LampSpots.Spot side(boolean ahead) {
    double z = (ahead ? spots.front : spots.rear).z() + SIDE_UP_MM;
    double up = within(LampPart.Kind.SIDE_REFLECTOR, ahead, z);
    double x =
        !ahead
            ? spots.rear.x()
            : turns ? spots.onAxis(up).x() : spots.front.x() - BEHIND_LOCKED * spots.front.z();
    PointMm at = new PointMm(x, up);
    LampPart lamp = specimen(LampPart.Kind.SIDE_REFLECTOR);
    double high = mm(lamp.halfHeight());
    LampSpots.Room seen =
        new LampSpots.Room(
            new Envelope(-SEEN_ALONG_MM, SEEN_ALONG_MM, -high, high + SEEN_ALONG_MM / 2),
            SEEN_ALONG_MM);
    LampSpots.Spot beside =
        spots.free(at, mm(lamp.y()), room(LampPart.Kind.SIDE_REFLECTOR), STILL, 10);
    // what turns keeps clear of feet at lock by going forward, what stays by going outwards
    boolean forward = ahead && turns;
    LampSpots.Spot clear =
        spots.free(
            beside.at(),
            beside.yMm() + SEEN_ALONG_MM,
            seen,
            forward ? FORWARD : STILL,
            forward ? 0 : 10);
    return new LampSpots.Spot(clear.at(), clear.yMm() - SEEN_ALONG_MM);
  }

  /** Nails a pin so far from the axle at its end as it is now. */
  private void nail(String pin, PointMm at, boolean ahead) {
    PointMm axle = ahead ? spots.front : spots.rear;
    Part.End end = ahead ? Part.End.FRONT : Part.End.REAR;
    String from = layout.wheel(end).flatMap(w -> along(w.axle())).orElse("");
    double off = Math.rint(at.x() - axle.x());
    Formula x =
        from.isEmpty()
            ? Formula.of(at.x(), Unit.MM)
            : Formula.parse(
                from + (off < 0 ? " - " : " + ") + Formula.of(Math.abs(off), Unit.MM).text());
    Pin was = layout.pins().get(pin);
    layout =
        layout.withPins(
            Map.of(pin, new Pin(x, Formula.of(at.z(), Unit.MM), true, was.with(), was.note())));
  }

  /** Returns where an axle is along the machine, as the layout says it; empty if it is found. */
  private Optional<String> along(String axle) {
    Pin pin = layout.pins().get(axle);
    if (pin.nailed()) {
      return Optional.of(pin.x().text());
    }
    return layout.ties().values().stream()
        .filter(t -> t.kind() == TieKind.AHEAD && t.pins().get(1).equals(axle))
        .filter(t -> layout.pins().get(t.pins().get(0)).nailed())
        .map(
            t ->
                layout.pins().get(t.pins().get(0)).x().text() + " + " + t.is().orElseThrow().text())
        .findFirst();
  }
}

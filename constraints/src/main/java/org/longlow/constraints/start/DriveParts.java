package org.longlow.constraints.start;

import static org.longlow.constraints.start.Draft.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.whole.BendFindings;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.start.Answers.Place;
import org.longlow.constraints.start.Cargo.Item;
import org.longlow.constraints.start.Parts.At;
import org.longlow.constraints.start.Parts.Base;
import org.longlow.rider.geom.PointMm;

/** Draws the drive, what feeds it, and the exhaust of an engine. */
final class DriveParts {

  /** Diameter of the exhaust, of an engine no lower than {@link #PIPE_SHARE} says, mm. */
  private static final double PIPE_MM = 40;

  /** Diameter of the exhaust at most, of the height of the engine. */
  private static final double PIPE_SHARE = 0.2;

  private static final double PIPE_Y_MM = -60;
  private static final double PORT_SHARE = 0.46;

  /** From port to knee: down, so that there is room for its bend, and ahead, mm. */
  private static final double KNEE_DOWN_MM = 40;

  private static final double KNEE_AHEAD_MM = 36;

  /** Of the low run under the floor rails, mm. */
  private static final double LOW_MM = 30;

  /** From knee to low run it leans back by this at least, 1: sine of the angle. */
  private static final double LEAST_LEAN = 0.03;

  /** Where the gearbox has its sprocket, of the length of an engine; a first guess. */
  private static final double GEAR_AT = 0.14;

  /**
   * Of each litre of a box so much is fuel, kg: nine tenths of it, at 0.745 kg each (EN 228 allows
   * 0.720 to 0.775).
   */
  private static final double FUEL = 0.9 * 0.745;

  private static final double SILENCER_WIDE_MM = 82;
  private static final double SILENCER_DOWN_MM = 34;
  private static final double LEAN_SPARE_MM = 32;

  private final Lengthwise room;
  private final Draft draft;
  private final boolean chain;

  /**
   * @param chain whether its chain is drawn
   */
  DriveParts(Lengthwise room, Draft draft, boolean chain) {
    this.chain = chain;
    this.room = room;
    this.draft = draft;
  }

  void draw() {
    row(room.cargo.behind(), room.behindFromMm);
    row(room.cargo.under(), room.underFromMm);
    row(room.cargo.ahead(), room.aheadFromMm);
    if (room.brief.place() == Place.HUB) {
      hub();
    }
  }

  private void row(List<Item> items, double fromMm) {
    double x = fromMm;
    for (Item item : items) {
      place(item, x);
      x += item.roomMm();
    }
  }

  /** Stands on the lower rails, strapped or bolted to them. */
  private void place(Item item, double x) {
    String pin = item.name() + "Low";
    draft.pin(pin, new PointMm(x, Rails.DECK_MM));
    draft.tie(
        item.name() + "Up", TieKind.HEIGHT, "floorHeight + " + text(Rolling.RAIL_MM / 2), pin);
    draft.length(item.name() + "Ahead", x, "moves the weight");
    draft.tie(item.name() + "At", TieKind.AHEAD, item.name() + "Ahead", "rearAxle", pin);
    List<String> touches = new ArrayList<>(List.of("floorRail"));
    if (item.kind() == SolidPart.Kind.ENGINE) {
      touches.add("header");
    }
    Base base =
        Base.of(item.name(), item.drives() ? "aluminium" : "")
            .reaching(leftMm(item), item.halfMm())
            .mass(item.massKg())
            .touching(touches.toArray(String[]::new));
    double l = item.lengthMm();
    double h = item.heightMm();
    switch (item.kind()) {
      case ENGINE -> {
        At[] corners = traced().orElseGet(() -> engine(l, h));
        draft.part(Parts.solid(base, item.kind(), pin, corners));
        exhaust(l, h);
        new ChainDrive(room, draft).draw("engineLow", GEAR_AT * l, h, chain);
      }
      case MOTOR -> {
        At[] corners = traced().orElseGet(() -> motor(l, h));
        draft.part(Parts.solid(base, item.kind(), pin, corners));
        new ChainDrive(room, draft).draw("motorLow", l / 2, h, chain);
      }
      case TANK -> {
        double litres = l * h * (leftMm(item) + item.halfMm()) * 1e-6;
        draft.part(
            Parts.holding(
                Parts.box(base, item.kind(), pin, l, h), Math.rint(litres * FUEL * 10) / 10));
      }
      default -> draft.part(Parts.box(base, item.kind(), pin, l, h));
    }
  }

  /** What lies between the drive and the rear wheel leaves the chain its way, mm. */
  private double leftMm(Item item) {
    boolean passed = room.brief.place() == Place.BEFORE && room.cargo.under().contains(item);
    return passed ? Math.min(item.halfMm(), ChainDrive.freeMm(room.rolling)) : item.halfMm();
  }

  private Optional<At[]> traced() {
    return room.brief
        .tracing()
        .map(t -> t.drawn().stream().map(p -> At.corner(p.x(), p.z())).toArray(At[]::new));
  }

  /** A crankcase with its gearbox behind and a cylinder leaning forward, all of the box. */
  private static At[] engine(double l, double h) {
    double[][] shares = {
      {0, 0.10},
      {0, 0.44},
      {0.10, 0.56},
      {0.36, 0.60},
      {0.44, 1.00},
      {0.82, 1.00},
      {0.90, 0.62},
      {1.00, 0.48},
      {1.00, 0.16},
      {0.90, 0.00},
      {0.08, 0.00}
    };
    At[] corners = new At[shares.length];
    for (int k = 0; k < shares.length; k++) {
      corners[k] = At.corner(Math.rint(shares[k][0] * l), Math.rint(shares[k][1] * h));
    }
    return corners;
  }

  private static At[] motor(double l, double h) {
    double cut = Math.rint(0.28 * Math.min(l, h));
    return new At[] {
      At.corner(cut, 0),
      At.corner(l - cut, 0),
      At.corner(l, cut),
      At.corner(l, h - cut),
      At.corner(l - cut, h),
      At.corner(cut, h),
      At.corner(0, h - cut),
      At.corner(0, cut)
    };
  }

  /** A round motor in the hub, that goes with the wheel. */
  private void hub() {
    double r = room.brief.box().lengthMm() / 2;
    At[] corners = new At[12];
    for (int k = 0; k < corners.length; k++) {
      PointMm p = PointMm.unit(2 * Math.PI * k / corners.length).times(r);
      corners[k] = At.round(Math.rint(p.x() * 10) / 10, Math.rint(p.z() * 10) / 10);
    }
    draft.part(
        Parts.solid(
            Base.of("motor", "aluminium")
                .half(room.brief.box().breadthMm() / 2)
                .mass(room.brief.box().massKg())
                .touching("rearWheel", "swingarm")
                .note("in the hub, between the legs of the swingarm"),
            SolidPart.Kind.MOTOR,
            "rearAxle",
            corners));
  }

  /** Out at the front, down, and back under everything to a silencer low on the right. */
  private void exhaust(double l, double height) {
    PointMm pivot = room.rolling.pivot;
    double diameter = Math.min(PIPE_MM, Math.rint(PIPE_SHARE * height));
    double radius = BendFindings.LEAST_DIAMETERS * diameter;
    double portUp = Math.rint(PORT_SHARE * height);
    double kneeUp = portUp - KNEE_DOWN_MM;
    String front = "engineAhead + ";
    double port = room.brief.tracing().map(t -> Math.rint(t.frontMm(portUp))).orElse(l);
    double knee = l - 6 + KNEE_AHEAD_MM;
    nailed("exPort", front + text(port - 6), portUp);
    nailed("exKnee", front + text(knee), kneeUp);
    double low = knee - backMm(kneeUp + Rolling.RAIL_MM / 2 + LOW_MM, radius);
    String lowUp = "floorHeight - " + text(LOW_MM);
    draft.nailed("exLow", front + text(low), lowUp);
    draft.nailed("exTail", text(pivot.x() + 20), lowUp);
    double inner = room.rolling.railYMm + Rolling.RAIL_MM / 2 + 5;
    double outer = inner + SILENCER_WIDE_MM;
    draft.nailed("silencerIn", text(pivot.x() - 10), text(silencerUp(pivot.z(), outer)));
    draft.part(
        Parts.tube(
            Base.of("header", "stainless").hot(),
            TubePart.Kind.EXHAUST,
            diameter,
            1.5,
            radius,
            PIPE_Y_MM,
            false,
            "exPort",
            "exKnee",
            "exLow",
            "exTail",
            "silencerIn"));
    double back = -Math.rint(pivot.x() + 40);
    draft.part(
        Parts.solid(
            Base.of("silencer", "stainless").reaching(-inner, outer).mass(4).hot(),
            SolidPart.Kind.SILENCER,
            "silencerIn",
            At.corner(10, -24),
            At.corner(-40, -SILENCER_DOWN_MM),
            At.corner(back + 30, -SILENCER_DOWN_MM),
            At.corner(back, -18),
            At.corner(back, 22),
            At.corner(back + 30, 42),
            At.corner(-40, 42),
            At.corner(10, 24)));
  }

  /**
   * How far back it must lean on its way down, so that half that way takes half a bend into the
   * level: of {@code v = 2 r (1 - sin a)}, mm.
   */
  private static double backMm(double downMm, double radiusMm) {
    double lean = Math.asin(Math.max(LEAST_LEAN, 1 - downMm / (2 * radiusMm)));
    return Math.ceil(downMm * Math.tan(lean));
  }

  /** So high that leaning over does not set it down, as far as the swingarm over it lets it be. */
  private static double silencerUp(double pivotUp, double outer) {
    double lean = Draft.mmOf(Demands.Key.LEAN);
    double needed = outer * Math.tan(lean) + SILENCER_DOWN_MM + LEAN_SPARE_MM;
    double most = pivotUp - Rolling.ARM_DEPTH_MM / 2 - PIPE_MM / 2 - 5;
    return Math.rint(Math.min(most, Math.max(pivotUp - 72, needed)));
  }

  private void nailed(String pin, String x, double overDeck) {
    draft.nailed(pin, x, "floorHeight + " + text(Rolling.RAIL_MM / 2 + overDeck), Pin.FRAME, "");
  }
}

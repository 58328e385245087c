package org.longlow.constraints.start;

import static org.longlow.constraints.start.Draft.text;

import java.util.List;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.HubBody;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.machine.chassis.Chain;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.shape.Runs;
import org.longlow.rider.geom.PointMm;

/**
 * Draws the chain from the drive to the rear wheel, on the left. Where a drive has its sprocket is
 * a guess until somebody measures it: as near to a first one as an even number of links allows.
 */
final class ChainDrive {

  /** ISO 606 chain 10B and what is sold as 520, mm. */
  private static final double PITCH_MM = 15.875;

  // middling road machines have such sprockets; common practice, from memory
  static final int GEAR_TEETH = 16;
  private static final int MOST_TEETH = 38;
  private static final int LEAST_TEETH = 32;

  /** From a sprocket's pitch circle to the tips of its teeth, mm; judgement. */
  private static final double TIPS_MM = 6;

  // where a gearbox has its sprocket, of the height of its drive; a first guess
  private static final double LOWEST = 0.15;
  private static final double HIGHEST = 0.6;

  /** The run is taken as a line over both wheels' tops, which leans on them a little lower, mm. */
  private static final double SPARE_MM = 1;

  private static final double UNDER_PAN_MM = 5;

  private static final int NEWTON = 4;

  private static final double SPROCKET_WIDE_MM = 8;

  // radii of discs, of the tyre's; common practice, from memory
  private static final double FRONT_DISC = 0.45;
  private static final double REAR_DISC = 0.38;

  private final Lengthwise room;
  private final Draft draft;

  ChainDrive(Lengthwise room, Draft draft) {
    this.room = room;
    this.draft = draft;
  }

  /** How far to the left something between drive and wheel may reach beside the chain, mm. */
  static double freeMm(Rolling rolling) {
    return Math.floor(rolling.chainYMm - Rolling.CHAIN_MM / 2 - Draft.mmOf(Demands.Key.GAP));
  }

  /**
   * @param low the pin at the drive's lower rear corner
   * @param ahead where about the sprocket is, from there, mm
   * @param height of the drive, mm
   * @param drawn whether the chain itself is drawn, else its sprockets alone are chosen
   */
  void draw(String low, double ahead, double height, boolean drawn) {
    PointMm axle = new PointMm(0, room.rolling.rear.freeRadiusMm());
    PointMm corner = draft.at(low);
    double level = levelMm(corner.x() + ahead) - corner.z();
    double up = Math.rint(Math.max(LOWEST * height, Math.min(HIGHEST * height, level)));
    PointMm about = corner.plus(new PointMm(ahead, up));
    int teeth = teeth(about);
    Chain chain = Chain.over(GEAR_TEETH, teeth, PITCH_MM);
    int links = chain.links(about.distance(axle));
    double centre = tautMm(chain, links);
    double rise = about.z() - axle.z();
    draft.measure("chainPitch", Formula.parse(PITCH_MM + " mm"), Dim.LENGTH, "chain 520");
    draft.measure("chainLinks", Formula.parse(String.valueOf(links)), Dim.NUMBER, "must be even");
    radius("gearSprocket", GEAR_TEETH);
    radius("wheelSprocket", teeth);
    if (!drawn) {
      return;
    }
    draft.pin(
        "sprocket",
        new PointMm(Math.sqrt(centre * centre - rise * rise), about.z()),
        Pin.FRAME,
        "where links and teeth put the drive's sprocket: measure yours");
    draft.tie("sprocketUp", TieKind.ABOVE, text(up), low, "sprocket");
    draft.chain(
        "chain",
        "chainLinks * chainPitch",
        room.rolling.chainYMm,
        Rolling.CHAIN_MM,
        "decides where the drive's sprocket is",
        new Draft.Wheel("sprocket", "gearSprocket"),
        new Draft.Wheel("rearAxle", "wheelSprocket"));
  }

  /** The distance at which arcs and tangents, which the tie measures, are as long as the links. */
  private static double tautMm(Chain chain, int links) {
    double r = Chain.pitchRadiusMm(chain.fewerTeeth(), PITCH_MM);
    double more = Chain.pitchRadiusMm(chain.moreTeeth(), PITCH_MM) - r;
    double centre = chain.centreMm(links);
    for (int k = 0; k < NEWTON; k++) {
      double lean = Math.asin(more / centre);
      double length = 2 * centre * Math.cos(lean) + 2 * Math.PI * r + more * (Math.PI + 2 * lean);
      centre -= (length - links * PITCH_MM) / (2 * Math.cos(lean));
    }
    return centre;
  }

  /** As many as let the upper run pass under the pan at full bump. */
  private int teeth(PointMm sprocket) {
    PointMm pan = room.of(PointMm.ORIGIN);
    double most =
        pan.z() - SeatKit.BOARD_MM - Runs.HALF_HIGH_MM - Draft.mmOf(Demands.Key.GAP) - SPARE_MM;
    double share = pan.x() / sprocket.x();
    double front = sprocket.z() + Chain.pitchRadiusMm(GEAR_TEETH, PITCH_MM);
    double axle = room.rolling.rear.freeRadiusMm() + Rolling.BUMP_MM;
    int teeth = MOST_TEETH;
    while (teeth > LEAST_TEETH
        && share < 1
        && (axle + Chain.pitchRadiusMm(teeth, PITCH_MM)) * (1 - share) + front * share > most) {
      teeth--;
    }
    return teeth;
  }

  /**
   * What sits about the rear axle: the wheel's sprocket and the brake's disc on the other side, or
   * the disc beside a motor in the hub.
   */
  static List<HubBody> atRearWheel(Rolling rolling) {
    double y = rolling.chainYMm;
    return y == 0
        ? List.of(disc(rolling.rear, REAR_DISC, -rolling.hubDiscYMm))
        : List.of(
            new HubBody(
                HubBody.What.SPROCKET,
                Formula.parse("wheelSprocket + " + text(TIPS_MM)),
                Draft.mm(SPROCKET_WIDE_MM),
                Draft.mm(y)),
            disc(rolling.rear, REAR_DISC, -y));
  }

  /** The disc of the brake in front, beside the tyre on the left. */
  static List<HubBody> atFrontWheel(Rolling rolling) {
    double inner = rolling.forkYMm - Rolling.FORK_TUBE_MM / 2;
    return List.of(disc(rolling.front, FRONT_DISC, (rolling.front.widthMm() / 2 + inner) / 2));
  }

  private static HubBody disc(Tyre tyre, double share, double yMm) {
    return new HubBody(
        HubBody.What.DISC,
        Draft.mm(Math.rint(share * tyre.freeRadiusMm())),
        Draft.mm(Rolling.DISC_WIDE_MM),
        Draft.mm(yMm));
  }

  /**
   * So high that the pivot's tube is in the middle between both runs as the axle is in the middle
   * of its travel, mm, less a little for the pan over them; near to it the chain keeps its length
   * too.
   */
  private double levelMm(double xMm) {
    PointMm pivot = room.rolling.pivot;
    double axle = room.rolling.rear.freeRadiusMm() + (Rolling.BUMP_MM - Rolling.DROOP_MM) / 2;
    return axle + (pivot.z() - axle) * xMm / pivot.x() - UNDER_PAN_MM;
  }

  private void radius(String name, int teeth) {
    draft.measure(
        name,
        Formula.parse("chainPitch / (2 * sin(180 deg / " + teeth + "))"),
        Dim.LENGTH,
        "pitch radius of " + teeth + " teeth");
  }
}

package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import org.longlow.constraints.shape.Curves;
import org.longlow.rider.body.Anthropometry;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.MeasureStats;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.Flesh;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.HandContact;
import org.longlow.rider.pose.JointLimits;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.RiderWidth;
import org.longlow.rider.seat.Cushion;
import org.longlow.rider.seat.Foam;
import org.longlow.rider.seat.FoamLayer;
import org.longlow.rider.seat.FoamStack;
import org.longlow.rider.seat.SeatGeometry;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.seat.Settle;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Page;
import org.longlow.svg.write.SvgWriter;

/**
 * Ten people on backs from steep to nearly flat, on one sheet to look at; look at the new one
 * before you replace the old ({@link #main}). What a glance would find is asserted too.
 */
class PeopleSheetTest {

  private static final double[] BACKS = {10, 30, 50, 65};
  private static final double SCALE = 20;
  private static final double CELL_X = 2100;
  private static final double CELL_Z = 1650;
  private static final double BOARD_MM = 320;
  private static final double FOAM_MM = 40;
  private static final double SOFT_MM = 12;

  private static final FoamStack FOAM =
      new FoamStack(List.of(new FoamLayer(FOAM_MM, Foam.openCell(55, 170, 2.4))));

  private record Who(String name, Body body) {}

  private static MeasureStats stats(Sex sex, String measure) {
    return Anthropometry.survey().measures(sex).get(measure);
  }

  private static double at(MeasureStats stats, int percent) {
    MeasureStats.Percentiles p = stats.percentiles();
    return switch (percent) {
      case 1 -> p.p1();
      case 5 -> p.p5();
      case 50 -> p.p50();
      case 95 -> p.p95();
      default -> p.p99();
    };
  }

  private static Who who(Sex sex, int percent, Map<String, Double> own, String more, Gear gear) {
    BodyMeasures measures =
        BodyMeasures.of(
            sex, at(stats(sex, "stature"), percent), at(stats(sex, "weightkg"), percent), own);
    String word = sex == Sex.FEMALE ? "woman" : "man";
    return new Who(word + " " + percent + " %" + more, Body.of(measures, gear));
  }

  /** Legs at the 95th percentile of the survey, stature and mass at the 50th. */
  private static Who longLegs() {
    double legs = at(stats(Sex.FEMALE, "trochanterionheight"), 95) - 25;
    return who(Sex.FEMALE, 50, Map.of("trochanterionheight", legs), ", long legs", Gear.RIDING);
  }

  private static Who longTrunk() {
    double sitting = stats(Sex.MALE, "sittingheight").percentiles().p95();
    return who(Sex.MALE, 50, Map.of("sittingheight", sitting), ", long trunk", Gear.RIDING);
  }

  private static List<Who> people() {
    return List.of(
        who(Sex.FEMALE, 1, Map.of(), "", Gear.RIDING),
        who(Sex.FEMALE, 5, Map.of(), ", bare", Gear.NONE),
        who(Sex.FEMALE, 50, Map.of(), "", Gear.RIDING),
        longLegs(),
        who(Sex.FEMALE, 95, Map.of(), "", Gear.RIDING),
        who(Sex.MALE, 5, Map.of(), "", Gear.RIDING),
        who(Sex.MALE, 50, Map.of(), ", bare", Gear.NONE),
        longTrunk(),
        who(Sex.MALE, 95, Map.of(), ", rucksack", Gear.RIDING.withRucksack(6, 120)),
        who(Sex.MALE, 99, Map.of(), "", Gear.RIDING));
  }

  private record Seated(Who who, SeatGeometry seat, SeatOutcome.Seated outcome) {
    Posture posture() {
      return outcome.pose().posture();
    }

    Manikin manikin() {
      return Manikin.of(who.name(), "rider", who.body(), posture());
    }
  }

  /** Seats somebody with boards and grips where their own limbs like them. */
  private static Seated seated(Who who, double backDeg, PointMm corner) {
    Body body = who.body();
    double panDeg = Math.min(25, 5 + 0.35 * backDeg);
    PointMm pan = PointMm.unit(Math.toRadians(panDeg));
    PointMm back = PointMm.unit(Math.toRadians(90 + backDeg));
    Cushion panel = new Cushion(corner, corner.plus(pan.times(400)), FOAM, 380);
    Cushion rest = new Cushion(corner, corner.plus(back.times(body.hipToShoulderMm())), FOAM, 340);
    PointMm hip =
        corner
            .plus(pan.times(body.hipToBackMm() + FOAM_MM))
            .plus(pan.left().times(body.hipAboveSeatMm()));
    double leg = 0.95 * (body.thighMm() + body.shankMm());
    PointMm foot = hip.plus(PointMm.unit(Math.toRadians(panDeg - 25)).times(leg));
    PointMm along = PointMm.unit(Math.toRadians(55 + 0.2 * panDeg));
    FootContact board =
        new FootContact.Footboard(
            foot.minus(along.times(0.45 * BOARD_MM)), foot.plus(along.times(0.55 * BOARD_MM)));
    PointMm shoulder = hip.plus(back.times(body.hipToShoulderMm()));
    double arm = 0.84 * (body.upperArmMm() + body.elbowToGripMm());
    PointMm grip = shoulder.plus(PointMm.unit(Math.toRadians(-32 + 0.25 * backDeg)).times(arm));
    SeatGeometry seat =
        new SeatGeometry(panel, rest, null, board, new HandContact.Grip(grip), RiderWidth.DEFAULT);
    return new Seated(who, seat, (SeatOutcome.Seated) Settle.settle(body, seat));
  }

  private static List<Seated> all() {
    List<Seated> all = new ArrayList<>();
    List<Who> people = people();
    for (int row = 0; row < people.size(); row++) {
      for (int column = 0; column < BACKS.length; column++) {
        PointMm corner = new PointMm(column * CELL_X + 800, -row * CELL_Z);
        all.add(seated(people.get(row), BACKS[column], corner));
      }
    }
    return all;
  }

  private static byte[] svg() throws IOException {
    Canvas canvas = new Canvas(SCALE);
    for (Seated s : all()) {
      for (Cushion c : List.of(s.seat().pan(), s.seat().back())) {
        boolean pan = c == s.seat().pan();
        PointMm off = along(c).left().times(pan ? FOAM_MM : -FOAM_MM);
        canvas.shape(
            PictureLayer.SEAT,
            "seat",
            Flow.polygon(List.of(c.from(), c.to(), c.to().plus(off), c.from().plus(off))),
            Canvas.fine(Tone.INK).withFill(Tone.FOAM_SOFT, 0.4));
      }
      FootContact.Footboard board = (FootContact.Footboard) s.seat().foot();
      canvas.line(PictureLayer.PERSON, "board", Canvas.edge(Tone.INK), board.rear(), board.front());
      PersonInk.seated(canvas, s.manikin());
      PointMm grip = ((HandContact.Grip) s.seat().hand()).centre();
      canvas.circle(PictureLayer.PERSON, "grip", grip, 16, Canvas.fine(Tone.INK));
      canvas.words(
          PictureLayer.NAMES,
          "",
          s.who().name() + ", back " + Math.round(Math.toDegrees(s.outcome().reclineRad())),
          s.seat().pan().from().plus(new PointMm(-500, -330)),
          Canvas.SMALL_MM,
          Anchor.START,
          Tone.INK);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Page page = Page.round(coarse(canvas.drawing("People")).scaled(1 / SCALE), 5);
    SvgWriter.write(page, Palette.CARD, out);
    return out.toByteArray();
  }

  /** Leaves out corners that are not seen on paper, so that the sheet stays small. */
  private static Drawing coarse(Drawing drawing) {
    return new Drawing(
        drawing.title(),
        drawing.layers().stream()
            .map(l -> new Layer(l.id(), l.title(), l.marks().stream().map(m -> coarse(m)).toList()))
            .toList());
  }

  private static Mark coarse(Mark mark) {
    return mark instanceof Mark.Shape s
        ? new Mark.Shape(
            s.subject(), DouglasPeuckerSimplifier.simplify(s.geometry(), 0.06 * SCALE), s.style())
        : mark;
  }

  /** Writes the sheet anew to the file named, such as people.svg; {@code gzip -9n} packs it. */
  public static void main(String[] args) throws IOException {
    Files.write(Path.of(args[0]), svg());
  }

  @Test
  void theSheetLooksAsItDid() throws Exception {
    try (InputStream golden = PeopleSheetTest.class.getResourceAsStream("people.svgz")) {
      GoldenSvg.same(new GZIPInputStream(golden).readAllBytes(), svg());
    }
  }

  @Test
  void nobodyIsBroken() {
    for (Seated s : all()) {
      String name = s.who().name() + " at " + Math.toDegrees(s.outcome().reclineRad());
      Posture p = s.posture();
      assertThat(s.outcome().pose()).as(name).isInstanceOf(PoseResult.Reached.class);
      // elbows and knees bend their own way, inside their ranges
      assertThat(p.angles().elbow())
          .as(name)
          .isBetween(JointLimits.ELBOW_LOW, JointLimits.ELBOW_HIGH);
      assertThat(p.angles().knee()).as(name).isBetween(JointLimits.KNEE_LOW, JointLimits.KNEE_HIGH);
      // the pelvis lies on the pan's foam as it is pressed, but for flesh that a corner narrower
      // than a right angle presses together; the trunk on the back's
      Manikin m = s.manikin();
      assertThat(above(s.seat().pan(), m.flesh(Figure.Part.PELVIS), 1))
          .as(name)
          .isCloseTo(FOAM_MM - s.outcome().pan().sinkMm(), within(11.0));
      Polygon onBack =
          new Figure(s.who().body(), p)
              .rucksack()
              .map(Flesh::outline)
              .orElse(m.flesh(Figure.Part.CHEST));
      assertThat(above(s.seat().back(), onBack, -1))
          .as(name)
          .isCloseTo(FOAM_MM - s.outcome().back().sinkMm(), within(2.0));
      // the chin stays off the chest, but for a fold of the neck of the heaviest
      PointMm chin = chin(m);
      assertThat(m.flesh(Figure.Part.CHEST).buffer(-SOFT_MM).distance(Curves.disc(chin, 0.1)))
          .as(name + " chin")
          .isPositive();
      // soles lie on their board and nothing of a foot goes through it
      FootContact.Footboard board = (FootContact.Footboard) s.seat().foot();
      PointMm way = board.front().minus(board.rear());
      for (var corner : m.flesh(Figure.Part.FOOT).getCoordinates()) {
        PointMm from = new PointMm(corner.x, corner.y).minus(board.rear());
        assertThat(way.cross(from) / way.length()).as(name + " foot").isGreaterThan(-1);
      }
      Geometry whole = m.silhouette();
      assertThat(whole.getGeometryType()).as(name).isEqualTo("Polygon");
    }
  }

  private static PointMm along(Cushion board) {
    PointMm way = board.to().minus(board.from());
    return way.times(1 / way.length());
  }

  /** How far the nearest of some flesh lies above a board, mm. */
  private static double above(Cushion board, Geometry flesh, int side) {
    double least = Double.POSITIVE_INFINITY;
    for (var corner : flesh.getCoordinates()) {
      PointMm from = new PointMm(corner.x, corner.y).minus(board.from());
      least = Math.min(least, side * along(board).cross(from));
    }
    return least;
  }

  /** The chin of the bare face: below the brow's line, ahead of the middle of the skull. */
  private static PointMm chin(Manikin m) {
    double half = 0.5 * m.body().measures().get("headlength");
    return m.joints().headCentre().plus(new PointMm(0.7 * half, -0.98 * half).turned(pitch(m)));
  }

  private static double pitch(Manikin m) {
    return m.joints().angles().headPitch();
  }
}

package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.layout.FurtherBody;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Vertex;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Handle;
import org.longlow.sketcher.edit.Plates;

/** What is done to the points of a further body, asked of the desk. */
class BodyPointsTest {

  @TempDir Path folder;
  private DeskHands hands;
  private PartPoints points;

  @BeforeEach
  void open() throws Exception {
    hands = new DeskHands(folder.resolve("state"));
    Layout plate =
        Plates.withBoss(
            "[0, 0], [100, 0], [100, 60], [0, 60]", "[20, 60], [80, 60], [80, 90], [20, 90]");
    hands.open(Files.writeString(folder.resolve("plate.json"), LayoutWriter.toJson(plate)));
    hands.until(() -> hands.desk().shown().isPresent());
    points = new PartPoints(hands.desk(), "plate");
  }

  @AfterEach
  void close() {
    hands.desk().close();
  }

  private void done() throws InterruptedException {
    hands.until(() -> true);
    assertThat(hands.desk().trouble()).isEmpty();
  }

  private Part.Outlined plate() {
    return (Part.Outlined) hands.session().layout().parts().get("plate");
  }

  private FurtherBody boss() {
    return plate().bodies().get(0);
  }

  /** The corners of the boss in the axes of the machine: those of the plate are at 400, 500. */
  private List<PointMm> corners() {
    List<PointMm> corners = new ArrayList<>();
    for (Vertex v : boss().outline().vertices()) {
      corners.add(new PointMm(400 + mm(v.x()), 500 + mm(v.z())));
    }
    return corners;
  }

  private static double mm(Formula formula) {
    return formula.evaluate(name -> Double.NaN);
  }

  @Test
  void theyComeAfterThoseOfThePartAndMakeARingOfTheirOwn() {
    assertThat(points.handles()).hasSize(8);
    assertThat(points.handles().get(4).at()).isEqualTo(new PointMm(420, 560));
    points.pick(4);
    assertThat(points.picked().of()).isEqualTo(Handle.Of.BODY);
    assertThat(points.picked().body()).isZero();
    assertThat(points.ring()).hasSize(4).doesNotContain(points.handles().get(0));
    assertThat(points.before().at()).isEqualTo(new PointMm(420, 590));
    points.pick(0);
    assertThat(points.before().at()).isEqualTo(new PointMm(400, 560));
    assertThat(points.picked().body()).isEqualTo(-1);
  }

  @Test
  void oneMovesIsMadeSmoothAndTakenOutAndLeavesThePlateAsItIs() throws Exception {
    List<Vertex> edge = plate().outline().vertices();
    points.pick(6);
    points.move(new PointMm(485, 600), "");
    points.smooth();
    done();
    assertThat(corners().get(2)).isEqualTo(new PointMm(485, 600));
    assertThat(boss().outline().vertices().get(2).smooth()).isTrue();
    points.pick(5);
    points.setTo(70);
    done();
    assertThat(corners().get(1)).isEqualTo(new PointMm(490, 560));
    points.pick(4);
    points.takeOut();
    done();
    assertThat(corners())
        .containsExactly(new PointMm(490, 560), new PointMm(485, 600), new PointMm(420, 590));
    assertThat(plate().outline().vertices()).isEqualTo(edge);
  }

  @Test
  void oneIsAddedToTheEdgeThatIsNearest() throws Exception {
    points.add(new PointMm(450, 591), 5);
    done();
    assertThat(corners()).hasSize(5);
    assertThat(corners().get(3)).isEqualTo(new PointMm(450, 590));
    assertThat(plate().outline().vertices()).hasSize(4);
    // half way to the next, and that one is picked
    points.pick(4);
    points.addAfter();
    done();
    assertThat(corners().get(1)).isEqualTo(new PointMm(450, 560));
    assertThat(points.picked().at()).isEqualTo(new PointMm(450, 560));
    // the edge of the plate is nearer
    points.add(new PointMm(450, 501), 5);
    done();
    assertThat(corners()).hasSize(6);
    assertThat(plate().outline().vertices()).hasSize(5);
    // nothing is near
    points.add(new PointMm(450, 530), 5);
    done();
    assertThat(points.handles()).hasSize(11);
  }

  @Test
  void oneSaysHowFarTheBodyReachesThereAndASideNotSaidIsThatOfTheBody() throws Exception {
    points.pick(5);
    points.reach(Optional.of(70.0), true, false);
    done();
    HalfBreadths reach = boss().outline().vertices().get(1).reach().orElseThrow();
    assertThat(mm(reach.leftOrRight())).isEqualTo(70);
    assertThat(mm(reach.rightOrLeft())).isEqualTo(-10);
    assertThat(points.reaches()).isEqualTo("reaches 70.0 left, -10.0 mm right");
    points.reach(Optional.empty(), true, true);
    done();
    assertThat(boss().outline().vertices().get(1).reach()).isEmpty();
  }
}

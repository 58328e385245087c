package org.longlow.sketcher.picture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.Finding;
import org.longlow.constraints.check.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.machine.AxleLoads;
import org.longlow.constraints.machine.MassPoint;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Load;
import org.longlow.constraints.stand.Suspension;
import org.longlow.rider.geom.PointMm;

/** An invented machine with one of each kind of part, and somebody on it. */
final class Plover {

  static final double WHEELBASE_MM = 1640;

  private Plover() {}

  static Layout layout() {
    try (InputStream in = Plover.class.getResourceAsStream("plover.json")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      ReadResult result = LayoutReader.read(text, Path.of("."));
      if (result instanceof ReadResult.Refused refused) {
        throw new IllegalStateException(refused.faults().toString());
      }
      return ((ReadResult.Read) result).layout();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  static Places places(Layout layout) {
    Measures measures = Measures.of(layout);
    Map<String, Double> values = measures.values(measures.start()::get);
    Places empty = new Places(Map.of(), values);
    Map<String, PointMm> pins = new LinkedHashMap<>();
    layout
        .pins()
        .forEach((k, v) -> pins.put(k, new PointMm(empty.value(v.x()), empty.value(v.z()))));
    return new Places(pins, values);
  }

  static Scene scene() {
    Layout layout = layout();
    Places places = places(layout);
    Map<String, PartShape> shapes = Shapes.of(layout, places);
    Ground ground = Suspension.of(layout, places).ground(places);
    List<MassPoint> masses = new ArrayList<>();
    shapes.values().forEach(x -> masses.add(new MassPoint(x.massKg(), x.centre())));
    masses.add(new MassPoint(70, new PointMm(500, 750)));
    MassPoint total = MassPoint.total(masses);
    AxleLoads axles = AxleLoads.of(ground.wheelbaseMm(), List.of(total));
    return new Scene(
        layout.title(),
        layout,
        places,
        shapes,
        ground,
        List.of(manikin(places, "Mara", 0)),
        List.of(manikin(places, "Tor", 12)),
        Map.of(
            "pan", new Scene.Sunk(List.of(2.0, 12.0, 12.0)),
            "back", new Scene.Sunk(List.of(6.0, 9.0)),
            "rest", new Scene.Sunk(List.of(10.0))),
        List.of(
            Finding.atLeast(
                    "gap.tank.Mara", "tank, Mara", "laden", 12, 20, "mm", "test", "Knee near tank")
                .at(new PointMm(800, 700)),
            Finding.note("sink.pan", "pan", "laden", Verdict.CAUTION, 22, "mm", "test", "soft")
                .at(new PointMm(500, 520))),
        Map.of("canopy", List.of(shapes.get("nose"), shapes.get("screen"))),
        Optional.of(new Load(total, axles)),
        Map.of("pegPin", new PointMm(1, 0.4)));
  }

  /** Returns somebody in a plausible posture, joints placed by hand. */
  static Manikin manikin(Places places, String name, double taller) {
    PointMm hip = new PointMm(430, 616);
    PointMm up = PointMm.unit(Math.toRadians(114));
    PointMm shoulder = hip.plus(up.times(470 + taller));
    PointMm neck = hip.plus(up.times(540 + taller)).plus(up.left().times(70));
    PointMm head = neck.plus(new PointMm(45, 150));
    PointMm grip = places.pin("gripPin");
    PointMm sole = PointMm.unit(Math.toRadians(55));
    PointMm ball = places.pin("pegPin").plus(sole.left().times(15));
    PointMm heel = ball.minus(sole.times(170));
    PointMm ankle = heel.plus(sole.times(55)).plus(sole.left().times(95));
    return new Manikin(
        name,
        "rider",
        new Manikin.Joints(
            hip,
            shoulder,
            neck,
            head,
            142,
            head.plus(new PointMm(85, -15)),
            shoulder.towards(grip, 0.5).plus(new PointMm(0, -90)),
            grip,
            hip.towards(ankle, 0.5).plus(new PointMm(20, 60)),
            ankle,
            heel,
            ball,
            ball.plus(sole.times(80))),
        new Manikin.Girths(235, 215, 150, 118, 100, 88, 108, 142, 95),
        true);
  }
}

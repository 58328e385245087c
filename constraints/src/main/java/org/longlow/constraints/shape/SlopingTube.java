package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.space.SpaceMm;
import org.longlow.constraints.space.Strut;
import org.longlow.rider.geom.PointMm;

/** The body of a tube whose pins lie at different distances from the middle plane. */
final class SlopingTube {

  private SlopingTube() {}

  static PartShape of(TubePart tube, TubeLine corners, Places places) {
    double d = places.value(tube.diameter());
    double inside = Math.max(0, d - 2 * places.value(tube.wall()));
    List<SpaceMm> line = corners.bent(places.value(tube.bendRadius()));
    Bulk bulk = Bulk.along(line, Math.PI / 4 * (d * d - inside * inside));
    Prism one = body(line, d);
    List<Prism> prisms = tube.both() ? List.of(one, one.mirrored()) : List.of(one);
    Bulk all = tube.both() ? bulk.plus(bulk.mirrored()) : bulk;
    double volume = all.volume();
    boolean some = volume > 0;
    return new PartShape(
        tube,
        one.outline(),
        prisms,
        FillMass.mass(tube, volume, places),
        some
            ? new PointMm(all.first()[0] / volume, all.first()[2] / volume)
            : Filled.centre(one.outline()),
        some ? all.first()[1] / volume : 0,
        Optional.of(all));
  }

  private static Prism body(List<SpaceMm> line, double d) {
    List<PointMm> side = line.stream().map(SpaceMm::side).toList();
    // one that runs straight across is seen on end
    Geometry outline =
        Curves.length(side) > d / 100 ? Curves.strip(side, d) : Curves.disc(side.get(0), d / 2);
    double least = line.stream().mapToDouble(SpaceMm::y).min().orElseThrow();
    double most = line.stream().mapToDouble(SpaceMm::y).max().orElseThrow();
    List<Piece> pieces = new ArrayList<>();
    for (int i = 1; i < line.size(); i++) {
      boolean last = i + 1 == line.size();
      pieces.add(new Strut(line.get(i - 1), line.get(i), d / 2, i > 1, !last));
    }
    return new Prism(outline, new Interval(least - d / 2, most + d / 2), pieces);
  }
}

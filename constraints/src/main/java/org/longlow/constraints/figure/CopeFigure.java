package org.longlow.constraints.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.longlow.constraints.machine.shop.TubeCope;

/** The figure {@code cope}: the wrap template of a tube joint. */
public final class CopeFigure {

  /** Stations when none are given: every 15 deg once round. */
  public static final List<Double> DEFAULT_STATIONS_DEG =
      IntStream.rangeClosed(0, 24).mapToObj(i -> 15.0 * i).toList();

  /**
   * Input.
   *
   * @param branchRadiusMm outside, &gt; 0
   * @param branchInnerRadiusMm inside, 0 (a bar) to branchRadiusMm
   * @param mainRadiusMm at least branchRadiusMm plus the offset
   * @param angleDeg between the axes, 1 to 90
   * @param offsetMm between the axes; 0 if not given
   * @param stationsDeg round the branch from the acute side; every 15 deg if not given
   */
  public record Input(
      Double branchRadiusMm,
      Double branchInnerRadiusMm,
      Double mainRadiusMm,
      Double angleDeg,
      Double offsetMm,
      List<Double> stationsDeg) {}

  /**
   * A station.
   *
   * @param xMm round the outside of the branch
   * @param yMm cut from the main tube's axis along the branch, largest over the wall
   */
  public record Station(double phiDeg, double xMm, double yMm) {}

  /** Output, in the order asked. */
  public record Output(List<Station> stations) {}

  private CopeFigure() {}

  public static Output answer(Input input) {
    Needs.input(input);
    Needs needs = new Needs();
    double outer = needs.positive("branchRadiusMm", input.branchRadiusMm());
    double inner =
        Double.isNaN(outer)
            ? needs.notNegative("branchInnerRadiusMm", input.branchInnerRadiusMm())
            : needs.within("branchInnerRadiusMm", input.branchInnerRadiusMm(), 0, outer);
    double main = needs.positive("mainRadiusMm", input.mainRadiusMm());
    Double angle = input.angleDeg();
    // Below a degree the tubes lie along each other and there is no cope to cut.
    if (angle == null || !(angle >= 1 && angle <= 90)) {
      needs.fault("angleDeg", angle, "1 to 90, the acute angle between the axes");
    }
    double offset = input.offsetMm() == null ? 0 : needs.finite("offsetMm", input.offsetMm());
    if (outer + Math.abs(offset) > main) {
      needs.fault(
          "mainRadiusMm",
          input.mainRadiusMm(),
          (outer + Math.abs(offset)) + " (branch radius plus offset) up");
    }
    List<Double> stations =
        input.stationsDeg() == null ? DEFAULT_STATIONS_DEG : input.stationsDeg();
    for (int i = 0; i < stations.size(); i++) {
      needs.finite("stationsDeg[" + i + "]", stations.get(i));
    }
    needs.settle();
    TubeCope cope = new TubeCope(outer, inner, main, Math.toRadians(angle), offset);
    List<Station> out = new ArrayList<>();
    for (double deg : stations) {
      double phi = Math.toRadians(deg);
      out.add(new Station(deg, cope.wrapMm(phi), cope.cutMm(phi)));
    }
    return new Output(List.copyOf(out));
  }
}

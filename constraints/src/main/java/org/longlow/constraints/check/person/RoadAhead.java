package org.longlow.constraints.check.person;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Say;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Sight;
import org.longlow.rider.words.Words;

/**
 * The road from where what stands in front lets it be seen to where what hangs before it hides it.
 *
 * @param over what is seen over what stands in front, or through what of it is clear
 * @param things all that is ahead
 * @param limitMm how far off the nearest road seen may be
 */
record RoadAhead(PointMm eye, Sight over, List<LookingAhead> things, double limitMm) {

  /** What hangs before the road, below the level of the eye. */
  Optional<LookingAhead> edge() {
    return LookingAhead.hanging(eye, things);
  }

  /** How far the edge hangs below the eye, mm. */
  private double dropMm() {
    return edge().map(a -> eye.z() - a.under().z()).orElse(0.0);
  }

  /** How far ahead of the eye the road goes up behind the edge, mm; infinite without one. */
  double farMm() {
    return edge()
        .map(a -> eye.z() * (a.under().x() - eye.x()) / dropMm())
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Whether what stands in front hides more of the road than is asked. */
  boolean late() {
    return over.roadMm() > limitMm;
  }

  /** Whether some of the road is seen. */
  boolean any() {
    return over.roadMm() < farMm();
  }

  /** The figure that fails: where the road begins, or else by how much the edge hangs low. */
  Figures figures() {
    return edge().isPresent() && !late()
        ? Figures.atMost(dropMm(), 0, FigureUnit.MM)
        : Figures.atMost(
            // the road that is nowhere seen is no distance; the words say so
            Double.isFinite(over.roadMm()) ? over.roadMm() : Double.NaN, limitMm, FigureUnit.MM);
  }

  /** From where to where it is seen. */
  Words seen() {
    return !any()
        ? Words.of(" sees no road")
        : Words.of(
            " sees the road from ",
            LookingAhead.metres(over.roadMm()),
            " ahead",
            edge().isPresent()
                ? Words.of(" and no farther than ", LookingAhead.metres(farMm()))
                : Words.NONE);
  }

  /** What to do, with the colon before it, that spoils nothing else; only the stop if nothing. */
  Words advice() {
    if (edge().isPresent()) {
      String part = edge().get().part();
      return late()
          ? Words.of(
              ": lower what stands in front, and raise the edge of " + part + " too, which hangs ",
              Say.mm(dropMm()),
              " below the eye: raise that above the eye. An eye raised or lowered mends one and"
                  + " spoils the other.")
          : Words.of(
              ". The edge of " + part + " hangs before the road beyond, ",
              Say.mm(dropMm()),
              " below the eye: raise that above the eye.");
    }
    if (!late()) {
      return Words.of(".");
    }
    double eyeMm = raisedMm();
    return things.stream()
        .filter(a -> a.overhead() && !a.clear() && a.under().z() < eyeMm)
        .min(Comparator.comparingDouble(a -> a.under().z()))
        .map(
            a ->
                Words.of(
                    ": lower what stands in front; an eye raised enough would have "
                        + a.part()
                        + " before it."))
        .orElse(Words.of(": raise the eye or lower what stands in front."));
  }

  /** How high the eye would have to be to see the road over all that stands in front, mm. */
  private double raisedMm() {
    return LookingAhead.hiding(things).stream()
        .map(LookingAhead::corner)
        .filter(c -> c.x() > eye.x())
        .mapToDouble(
            c ->
                c.x() - eye.x() < limitMm
                    ? limitMm * c.z() / (limitMm - (c.x() - eye.x()))
                    : Double.POSITIVE_INFINITY)
        .max()
        .orElse(eye.z());
  }
}

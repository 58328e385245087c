package org.longlow.constraints.fit;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.words.FigureSort;

/** What people differ by, in plain words. Trunk and build are told beside stature. */
public enum BodyTrait {
  STATURE("stature", "short", "tall", FigureSort.WHOLE_LENGTH, BodyMeasures::statureMm),
  MASS("mass", "light", "heavy", FigureSort.WHOLE_MASS, BodyMeasures::massKg),
  /** kg/m² */
  BUILD(
      "mass over stature squared",
      "slight for their stature",
      "heavy for their stature",
      null,
      m -> m.massKg() / (m.statureMm() * m.statureMm()) * 1e6),
  /** Share of stature. */
  TRUNK(
      "sitting height over stature",
      "short trunk for their stature",
      "long trunk for their stature",
      FigureSort.SHARE,
      m -> m.get("sittingheight") / m.statureMm()),
  SITTING(
      "sitting height",
      "short trunk",
      "long trunk",
      FigureSort.WHOLE_LENGTH,
      m -> m.get("sittingheight")),
  LEGS(
      "stature less sitting height",
      "short legs",
      "long legs",
      FigureSort.WHOLE_LENGTH,
      m -> m.statureMm() - m.get("sittingheight")),
  THIGHS(
      "buttock to knee",
      "short thighs",
      "long thighs",
      FigureSort.WHOLE_LENGTH,
      m -> m.get("buttockkneelength")),
  ARMS(
      "shoulder to grip",
      "short arms",
      "long arms",
      FigureSort.WHOLE_LENGTH,
      m -> m.get("d_shouldertogrip")),
  HIPS(
      "hip breadth, sitting",
      "narrow hips",
      "broad hips",
      FigureSort.WHOLE_LENGTH,
      m -> m.get("hipbreadthsitting"));

  private final String words;
  private final String less;
  private final String more;
  private final FigureSort sort;
  private final ToDoubleFunction<BodyMeasures> of;

  BodyTrait(
      String words, String less, String more, FigureSort sort, ToDoubleFunction<BodyMeasures> of) {
    this.words = words;
    this.less = less;
    this.more = more;
    this.sort = sort;
    this.of = of;
  }

  /** Returns what it is. */
  public String words() {
    return words;
  }

  /** Returns what somebody with more or less of it is called. */
  String says(boolean isMore) {
    return isMore ? more : less;
  }

  /** Returns how a figure of it is said; empty for kg/m². */
  Optional<FigureSort> sort() {
    return Optional.ofNullable(sort);
  }

  /** Returns it of somebody, mm, kg, kg/m² or a share. */
  public double of(BodyMeasures measures) {
    return of.applyAsDouble(measures);
  }
}

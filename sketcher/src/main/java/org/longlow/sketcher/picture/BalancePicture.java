package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.longlow.constraints.machine.ride.WhippleModel;
import org.longlow.constraints.machine.ride.WhippleModel.Eigenvalue;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.rider.words.Words;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * How a machine that nobody steers moves after a push, over its speed: above, how fast each motion
 * grows or dies out (the real parts of the eigenvalues); below, how often those sway that do. Paper
 * mm, y up.
 */
public final class BalancePicture {

  /** What the signs say. */
  public static final String KEY =
      "thick: sways; thin: leans or turns without swaying; above the middle line it grows, below it"
          + " dies out; upright chain lines: from and up to where it balances by itself";

  private static final double WIDE_MM = 76;
  private static final double RATES_MM = 42;
  private static final double SWAYS_MM = 24;
  private static final double BETWEEN_MM = 14;

  /** As wide as the words of a speed are, with what keeps them apart. */
  private static final double SPEED_MM = 14;

  private static final double LETTERS_MM = 2.7;
  private static final double SMALL_MM = 2.4;

  /** What grows or dies out faster is cut off, 1/s. */
  private static final double MOST_RATE = 10;

  /** What sways more often is cut off, Hz. */
  private static final double MOST_HZ = 5;

  private static final double KM_PER_HOUR = 3.6;

  /** The highest speed, and the least that is drawn, m/s: the model says nothing of fast ones. */
  private static final double MOST_MS = 120 / KM_PER_HOUR;

  private static final double LEAST_MS = 40 / KM_PER_HOUR;

  private static final int STEPS = 240;

  /** An imaginary part below it is none, 1/s. */
  private static final double SWAYS_FROM = 1e-6;

  private final List<Mark> axes = new ArrayList<>();
  private final List<Mark> curves = new ArrayList<>();
  private final WhippleModel model;
  private final Units units;
  private final double mostMs;

  private BalancePicture(WhippleModel model, Units units) {
    this.model = model;
    this.units = units;
    double last = Math.max(model.weaveSpeedMs().orElse(0), model.capsizeSpeedMs().orElse(0)) * 1.25;
    this.mostMs = Math.max(LEAST_MS, Math.min(MOST_MS, last));
  }

  /** Draws both panels. */
  public static Drawing of(String title, WhippleModel model, Units units) {
    BalancePicture picture = new BalancePicture(model, units);
    picture.axes.add(Mark.Words.level(title, 0, RATES_MM + 4, LETTERS_MM, Anchor.START, Tone.INK));
    picture.frames();
    picture.curves();
    return new Drawing(
        title,
        List.of(
            new Layer("axes", "Axes", picture.axes),
            new Layer("curves", "Curves", picture.curves)));
  }

  private void frames() {
    double low = -BETWEEN_MM - SWAYS_MM;
    frame(0, RATES_MM);
    frame(low, low + SWAYS_MM);
    for (int k = -2; k <= 2; k++) {
      double at = rate(k * MOST_RATE / 2);
      axes.add(
          line(
              k == 0 ? Style.line(Tone.INK, 0.35) : Style.line(Tone.FAINT, 0.13),
              0,
              at,
              WIDE_MM,
              at));
      label(String.format(Locale.ROOT, "%.0f /s", k * MOST_RATE / 2), at);
    }
    for (int hz = 0; hz <= MOST_HZ; hz++) {
      double at = sways(hz);
      axes.add(line(Style.line(Tone.FAINT, 0.13), 0, at, WIDE_MM, at));
      label(hz + " Hz", at);
    }
    for (int k = 0; k <= 4; k++) {
      double ms = mostMs * k / 4;
      axes.add(
          Mark.Words.level(speed(ms), x(ms), low - 2.8, SMALL_MM, Anchor.TOP_MIDDLE, Tone.INK));
    }
    model.weaveSpeedMs().ifPresent(ms -> upright(ms, 0));
    model.capsizeSpeedMs().ifPresent(ms -> upright(ms, lineFor(ms)));
  }

  private void frame(double low, double high) {
    axes.add(
        new Mark.Shape("", Planar.rectangle(0, low, WIDE_MM, high), Style.line(Tone.INK, 0.25)));
  }

  private void label(String words, double at) {
    axes.add(Mark.Words.level(words, -1.5, at, SMALL_MM, Anchor.CENTRE_END, Tone.INK));
  }

  /** Words that stand too near to those of the first chain line take the next line, mm lower. */
  private double lineFor(double ms) {
    boolean near = model.weaveSpeedMs().stream().anyMatch(w -> Math.abs(x(w) - x(ms)) < SPEED_MM);
    return near ? 1.5 * SMALL_MM : 0;
  }

  private void upright(double ms, double lower) {
    if (ms <= mostMs) {
      Style chain = Style.line(Tone.PENCIL, 0.18).withLine(LineType.CHAIN);
      // not through its words, which stand between
      axes.add(line(chain, x(ms), -BETWEEN_MM - SWAYS_MM, x(ms), -BETWEEN_MM));
      axes.add(line(chain, x(ms), 0, x(ms), RATES_MM));
      axes.add(
          Mark.Words.level(speed(ms), x(ms), -2 - lower, SMALL_MM, Anchor.TOP_MIDDLE, Tone.INK));
    }
  }

  private void curves() {
    List<List<Eigenvalue>> all = new ArrayList<>();
    for (int k = 0; k <= STEPS; k++) {
      all.add(model.eigenvalues(mostMs * k / STEPS));
    }
    curves(all, true, Eigenvalue::re, this::rate, Style.line(Tone.INK, 0.6));
    curves(all, false, Eigenvalue::re, this::rate, Style.line(Tone.INK, 0.25));
    curves(all, true, e -> e.im() / (2 * Math.PI), this::sways, Style.line(Tone.INK, 0.6));
  }

  /** Draws one kind of motion; its lines go on as long as there are as many of them. */
  private void curves(
      List<List<Eigenvalue>> all,
      boolean swaying,
      ToDoubleFunction<Eigenvalue> figure,
      DoubleUnaryOperator up,
      Style style) {
    List<List<Double>> open = new ArrayList<>();
    for (int k = 0; k <= all.size(); k++) {
      double at = x(mostMs * k / STEPS);
      List<Eigenvalue> now =
          k == all.size()
              ? List.of()
              : all.get(k).stream()
                  .filter(e -> swaying ? e.im() > SWAYS_FROM : Math.abs(e.im()) <= SWAYS_FROM)
                  .sorted(Comparator.comparingDouble(Eigenvalue::re))
                  .toList();
      if (now.size() != open.size()) {
        open.forEach(xy -> close(xy, style));
        open = new ArrayList<>();
        for (int i = 0; i < now.size(); i++) {
          open.add(new ArrayList<>());
        }
      }
      for (int i = 0; i < now.size(); i++) {
        double y = up.applyAsDouble(figure.applyAsDouble(now.get(i)));
        if (Double.isNaN(y)) {
          close(open.get(i), style);
          open.set(i, new ArrayList<>());
        } else {
          open.get(i).add(at);
          open.get(i).add(y);
        }
      }
    }
  }

  private void close(List<Double> xy, Style style) {
    if (xy.size() >= 4) {
      curves.add(line(style, xy.stream().mapToDouble(v -> v).toArray()));
    }
  }

  private double x(double ms) {
    return WIDE_MM * ms / mostMs;
  }

  /** Returns how high a growth stands; not a number where it is cut off. */
  private double rate(double perSecond) {
    return Math.abs(perSecond) > MOST_RATE
        ? Double.NaN
        : RATES_MM / 2 * (1 + perSecond / MOST_RATE);
  }

  private double sways(double hz) {
    return hz > MOST_HZ ? Double.NaN : -BETWEEN_MM - SWAYS_MM + SWAYS_MM * hz / MOST_HZ;
  }

  private String speed(double ms) {
    return Words.figure(KM_PER_HOUR * ms, FigureSort.SPEED).in(units);
  }

  private static Mark line(Style style, double... xy) {
    return new Mark.Shape("", Planar.line(xy), style);
  }
}

package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Curves;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Collects marks by layer while one picture is drawn. */
public final class Canvas {

  /** Visible edges, paper mm; with {@link #FINE_MM} one of the line pairs of ISO 128-2. */
  static final double EDGE_MM = 0.35;

  /** Details, hatching, centre lines, paper mm. */
  public static final double FINE_MM = 0.18;

  /** Construction, spokes, paper mm: the narrowest width of ISO 128-2. */
  static final double HAIR_MM = 0.13;

  /** Farthest that a side of a circle lies inside it, paper mm. */
  private static final double ROUND_MM = 0.005;

  /** Height of names and notes, paper mm. */
  static final double SMALL_MM = 2.5;

  private final double denominator;
  private final Map<PictureLayer, List<Mark>> marks = new EnumMap<>(PictureLayer.class);

  Canvas(double denominator) {
    this.denominator = denominator;
  }

  /** Returns drawing mm that come out as {@code paperMm} on paper. */
  double paper(double paperMm) {
    return paperMm * denominator;
  }

  double denominator() {
    return denominator;
  }

  void add(PictureLayer layer, Mark mark) {
    marks.computeIfAbsent(layer, l -> new ArrayList<>()).add(mark);
  }

  void shape(PictureLayer layer, String subject, Geometry geometry, Style style) {
    if (!geometry.isEmpty()) {
      add(layer, new Mark.Shape(subject, geometry, style));
    }
  }

  /** Draws a body that hides what is behind it: card first, then a tint, then its edge. */
  void body(
      PictureLayer layer, String subject, Geometry outline, Tone tint, double opacity, Style edge) {
    shape(layer, subject, outline, Style.area(Tone.PAPER, 1));
    shape(layer, subject, outline, edge.withFill(tint, opacity));
  }

  void line(PictureLayer layer, String subject, Style style, PointMm... points) {
    shape(layer, subject, Curves.line(List.of(points)), style);
  }

  /** Draws a circle with as few sides as are not seen on paper. */
  void circle(PictureLayer layer, String subject, PointMm c, double radiusMm, Style style) {
    double onPaper = Math.max(radiusMm / denominator, ROUND_MM);
    double sides = Math.PI / Math.acos(1 - ROUND_MM / onPaper);
    shape(layer, subject, Planar.disc(c.x(), c.z(), radiusMm, (int) Math.ceil(sides)), style);
  }

  void words(
      PictureLayer layer,
      String subject,
      String text,
      PointMm at,
      double heightMm,
      Anchor anchor,
      Tone tone) {
    add(layer, new Mark.Words(subject, text, at.x(), at.z(), heightMm, 0, anchor, tone));
  }

  static Style edge(Tone tone) {
    return Style.line(tone, EDGE_MM);
  }

  static Style fine(Tone tone) {
    return Style.line(tone, FINE_MM);
  }

  static Style hair(Tone tone) {
    return Style.line(tone, HAIR_MM);
  }

  static Style chain(Tone tone) {
    return fine(tone).withLine(LineType.CHAIN);
  }

  List<Mark> marks(PictureLayer layer) {
    return marks.getOrDefault(layer, List.of());
  }

  /** Returns the picture; empty layers are left out. */
  Drawing drawing(String title) {
    List<Layer> layers = new ArrayList<>();
    marks.forEach((layer, list) -> layers.add(new Layer(layer.id(), layer.title(), list)));
    return new Drawing(title, layers);
  }
}

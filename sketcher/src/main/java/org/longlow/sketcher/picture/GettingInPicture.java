package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.check.person.GettingIn;
import org.longlow.constraints.check.person.GettingInPose;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;

/** A strip of figures: somebody gets in, pose by pose, every section open. */
public final class GettingInPicture {

  /** Air between two figures, paper mm. */
  private static final double APART_MM = 8;

  private GettingInPicture() {}

  /**
   * Returns the figures at real size, lettered for a scale.
   *
   * @param columns how many stand beside each other
   */
  public static Drawing of(Study study, GettingIn in, Occupant who, int columns, double n) {
    Map<String, Layer> layers = new LinkedHashMap<>();
    List<Drawing> cells = new ArrayList<>();
    double wide = 0;
    double high = 0;
    for (GettingInPose pose : in.poses()) {
      Drawing cell = cell(study, who, pose, n);
      Envelope box = cell.scaled(1 / n).paperBoundsMm();
      // whole mm of paper, so that what all figures share is the same to the last decimal
      wide = Math.max(wide, n * Math.ceil(box.getWidth() + APART_MM));
      high = Math.max(high, n * Math.ceil(box.getHeight() + APART_MM));
      cells.add(cell);
    }
    String from = in.poses().get(0).left() ? "left" : "right";
    for (int i = 0; i < cells.size(); i++) {
      GettingInPose pose = in.poses().get(i);
      String words = i + 1 + "  " + pose.step().words() + (i == 0 ? ", at the " + from : "");
      put(layers, cells.get(i), words, i % columns * wide, -(double) (i / columns) * high, n);
    }
    return new Drawing(who.words() + " getting in from the " + from, List.copyOf(layers.values()));
  }

  private static Drawing cell(Study study, Occupant who, GettingInPose pose, double n) {
    PictureOptions plain = PictureOptions.PLAIN.withDenominator(n);
    return ElevationPicture.of(
        study,
        View.seating(study, who).in(plain).withInPose(Optional.of(new InPose(who, pose.step()))));
  }

  private static void put(
      Map<String, Layer> layers, Drawing cell, String words, double right, double up, double n) {
    for (Layer layer : cell.moved(right, up).layers()) {
      layers.merge(layer.id(), layer, GettingInPicture::both);
    }
    Mark.Words says =
        Mark.Words.level(words, right, up - 9 * n, Canvas.SMALL_MM, Anchor.START, Tone.INK);
    layers.merge(
        PictureLayer.NOTES.id(),
        new Layer(PictureLayer.NOTES.id(), PictureLayer.NOTES.title(), List.of(says)),
        GettingInPicture::both);
  }

  private static Layer both(Layer a, Layer b) {
    List<Mark> marks = new ArrayList<>(a.marks());
    marks.addAll(b.marks());
    return new Layer(a.id(), a.title(), marks);
  }

  /**
   * Returns the strip on a framed sheet.
   *
   * @param scale the scale; the largest that fits unless given
   * @param date date of issue for the title block; may be empty
   * @throws OutOfRange if nobody knows a way in, or it does not fit
   */
  public static DimensionedElevation.Sheet sheet(
      Study study, Occupant who, Optional<Scale> scale, Paper paper, String date) {
    GettingIn in =
        InPose.poses(study, who)
            .orElseThrow(
                () ->
                    new OutOfRange(
                        who.words()
                            + " has no known way in: see the findings about getting in and out"));
    SheetChoice choice =
        new SheetChoice(
            paper,
            DimensionedElevation.title(study, date).withDocumentType("getting in"),
            "the strip of getting in",
            false,
            new Envelope(),
            List.of(Detail.MAIN),
            1,
            (n, detail) -> of(study, in, who, 3, n));
    return scale.map(choice::at).orElseGet(choice::largest);
  }
}

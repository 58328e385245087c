package org.longlow.sketcher.desk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Gathered;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.AsWritten;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.solve.Freedom;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Freedoms;
import org.longlow.sketcher.edit.PinDrag;
import org.longlow.sketcher.edit.PinFreedom;
import org.longlow.sketcher.picture.ElevationPicture;
import org.longlow.sketcher.picture.Eye;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.Pictures;
import org.longlow.svg.drawing.Drawing;

/**
 * Studies layouts and draws them, remembering the last of each so that a zoom does not solve and a
 * second look at a pin does not count its freedoms again. Confined to the worker's thread.
 */
final class Studio {

  private Set<String> movable = Set.of();
  private Layout studied;
  private Study study;
  private Study freed;
  private Freedoms freedoms;

  /** Returns the study of a layout, its findings worked out when they are asked for. */
  Study of(Layout layout) {
    return of(layout, layout);
  }

  /** As {@link #of(Layout)} of what is a change of {@code from}, as it is when it is a step. */
  Study of(Layout layout, Layout from) {
    if (layout != studied) {
      study =
          Study.unchecked(
              layout == from
                  ? Placer.place(layout)
                  : Placer.place(layout, AsWritten.between(from, layout)));
      studied = layout;
    }
    return study;
  }

  /** Keeps a study that was made elsewhere. */
  void remember(Layout layout, Study made) {
    studied = layout;
    study = made;
  }

  /**
   * Draws a study; every failing finding that has a place is marked, and the one picked.
   *
   * @param before what was found of the machine before, shown until this one is checked
   */
  BoardState draw(
      Layout layout,
      Study made,
      List<Finding> before,
      PictureOptions options,
      String finding,
      boolean live) {
    boolean working = !made.isChecked();
    List<Finding> findings = working ? before : Gathered.order(made.findings());
    PictureOptions asked = options.withFindings(BoardState.marked(findings, finding));
    if (asked.stance().isPresent() && asked.stance().flatMap(made::standing).isEmpty()) {
      asked = asked.withStance(Optional.empty());
    }
    Drawing drawing = Pictures.of(working ? made.withFindings(before) : made, asked);
    Optional<Standing> standing = ElevationPicture.standing(made, asked);
    Eye eye = Pictures.eye(made, asked, BoardState.ground(layout, made, standing));
    return new BoardState(
        layout, made, asked, standing, eye, drawing, movable(made), findings, working, live);
  }

  /** Pins that can move; while a pin is dragged they are those that could before. */
  private Set<String> movable(Study made) {
    made.placed()
        .report()
        .diagnosis()
        .ifPresent(
            diagnosis -> {
              Set<String> names = new LinkedHashSet<>();
              for (Freedom freedom : diagnosis.freedoms()) {
                freedom.moves().keySet().stream()
                    .filter(v -> v.endsWith(".x") || v.endsWith(".z"))
                    .forEach(v -> names.add(v.substring(0, v.length() - 2)));
              }
              movable = names;
            });
    return movable;
  }

  /** Returns how a pin can move. */
  PinFreedom freedom(Study made, String pin) {
    if (made != freed) {
      freedoms = new Freedoms(made.placed().problem().problem(), made.placed().report().x());
      freed = made;
    }
    return freedoms.of(pin);
  }

  /** A drag as the worker sees it. */
  static final class Dragging {
    private final PinDrag drag;
    private PointMm at;
    private Study study;

    Dragging(PinDrag drag) {
      this.drag = drag;
    }

    Study moveTo(PointMm target) {
      if (!target.equals(at)) {
        study = drag.moveTo(target);
        at = target;
      }
      return study;
    }

    PinDrag drag() {
      return drag;
    }
  }

  /** Begins to drag a pin of a study. */
  static Optional<Dragging> begin(Study made, String pin) {
    return PinDrag.of(made.placed(), pin).map(Dragging::new);
  }
}

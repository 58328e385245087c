package org.longlow.sketcher.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Travel;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.picture.Aspect;
import org.longlow.sketcher.picture.Company;
import org.longlow.sketcher.picture.Eye;
import org.longlow.sketcher.picture.Moved;
import org.longlow.sketcher.picture.PictureLayer;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.View;
import org.longlow.svg.drawing.Drawing;

/**
 * What is on the board: one layout, everything known about it and its picture. All of one moment.
 *
 * @param layout the layout that was studied
 * @param study everything about it
 * @param options how the picture was asked for
 * @param standing the stance shown, its wheels moved as asked; empty for the machine as drawn
 * @param eye from where the machine is seen
 * @param drawing the picture, in the axes of the road of the stance shown
 * @param movable names of the pins that can still move
 * @param findings what is known of it, worst first; of the machine before it while it is working
 * @param working true while its findings are still being worked out
 * @param live true while a pin is dragged or a slider moved, before the change is a step
 */
public record BoardState(
    Layout layout,
    Study study,
    PictureOptions options,
    Optional<Standing> standing,
    Eye eye,
    Drawing drawing,
    Set<String> movable,
    List<Finding> findings,
    boolean working,
    boolean live) {

  /** Less than this nobody sees. */
  private static final double STILL_MM = 0.05;

  private static final double UPRIGHT_RAD = 1e-3;

  public BoardState {
    movable = Set.copyOf(movable);
    findings = List.copyOf(findings);
  }

  /** Returns the units in which its figures are shown. */
  public Units units() {
    return layout.units();
  }

  /**
   * Returns the stance that the machine is seen in; empty for the machine as drawn, and where its
   * wheels were moved to where no stance has them, or it is leaned.
   */
  public Optional<Condition> stance() {
    Optional<Condition> from = standing.map(Standing::condition);
    Moved moved = options.moved().orElse(null);
    if (moved == null) {
      return from;
    }
    if (moved instanceof Moved.ByTurn turn) {
      return from.filter(c -> Math.abs(turn.rollRad()) < UPRIGHT_RAD);
    }
    if (moved instanceof Moved.BySteering) {
      return from;
    }
    List<Condition> like =
        steps().stream()
            .filter(s -> s.kind() != Stance.Kind.OPEN && s.kind() != Stance.Kind.PARKED)
            .filter(this::hasItsWheels)
            .map(Standing::condition)
            .toList();
    return from.filter(like::contains).or(() -> like.stream().findFirst());
  }

  private boolean hasItsWheels(Standing stance) {
    Travel named = Travel.of(stance);
    Travel now = Travel.of(standing.orElseThrow());
    return Math.abs(named.frontMm() - now.frontMm()) < STILL_MM
        && Math.abs(named.rearMm() - now.rearMm()) < STILL_MM;
  }

  /** Returns whether a finding is marked on the picture: those about somebody not shown are not. */
  public boolean isMarked(String id) {
    String subject = "finding:" + id;
    return drawing.layers().stream()
        .filter(layer -> layer.id().equals(PictureLayer.FINDINGS.id()))
        .flatMap(layer -> layer.marks().stream())
        .anyMatch(mark -> mark.subject().equals(subject));
  }

  /** Returns the road under the machine as shown. */
  public Ground ground() {
    return ground(layout, study, standing);
  }

  static Ground ground(Layout layout, Study study, Optional<Standing> standing) {
    if (standing.isPresent()) {
      return standing.get().ground();
    }
    Wheels wheels = Wheels.of(layout, study.placed().places());
    return wheels.stands()
        ? wheels.ground(study.placed().places())
        : new Ground(PointMm.ORIGIN, new PointMm(1, 0));
  }

  /** Returns the pins in the stance shown, in the axes of the frame. */
  public Places places() {
    return standing().map(Standing::places).orElse(study.placed().places());
  }

  /** Returns what is said behind coordinates of the drawn machine while it is seen in a stance. */
  public String drawnSaid() {
    return standing.isEmpty() ? "" : ", as drawn";
  }

  /** Returns the parts in the stance shown, in the axes of the frame. */
  public Map<String, PartShape> shapes() {
    return standing().map(Standing::shapes).orElse(study.shapes());
  }

  /** Returns where a pin is on the drawing. */
  public PointMm onDrawing(String pin) {
    return eye.page(places().pin(pin), 0);
  }

  /** Returns where a finding that has a place is on the drawing. */
  public PointMm onDrawing(Finding finding) {
    return eye.page(finding, shapes());
  }

  /**
   * Returns whether the machine is seen from its side, where pins, outlines and photos are, and
   * things are drawn and moved.
   */
  public boolean fromSide() {
    return options.aspect() == Aspect.SIDE;
  }

  /** A head on the drawing: its middle and half its length, helmet included, mm. */
  public record Head(PointMm at, double radiusMm) {}

  /** Returns the heads of those who are seated, where they are on the drawing. */
  public List<Head> heads() {
    return View.shown(study, options.withMoved(Optional.empty())).seated().stream()
        .flatMap(o -> study.sitting(o.person(), o.seat()).stream())
        .filter(s -> s.posture().isPresent())
        .map(s -> new Head(eye.page(s.posture().get().headCentre(), 0), s.body().head().radiusMm()))
        .toList();
  }

  /**
   * Returns the ids of findings that are marked on the picture, in the order of their numbers: all
   * that fail, then the one picked.
   *
   * @param findings worst first
   */
  static List<String> marked(List<Finding> findings, String picked) {
    List<String> ids = new ArrayList<>();
    findings.stream().filter(f -> f.verdict() == Verdict.FAIL).forEach(f -> ids.add(f.id()));
    findings.stream()
        .filter(f -> f.id().equals(picked) && f.verdict() != Verdict.FAIL)
        .forEach(f -> ids.add(f.id()));
    return ids;
  }

  /**
   * Returns options that show a finding in its own stance, with those whom it concerns seated. What
   * has no place is seen nowhere better than here: only whom it concerns is seated then.
   */
  PictureOptions optionsFor(String id, PictureOptions now) {
    return findings.stream()
        .filter(f -> f.id().equals(id))
        .findFirst()
        .filter(f -> f.where().isPresent() || f.who().filter(w -> !isSeated(w)).isPresent())
        .map(f -> View.of(study, f))
        .filter(view -> view.stance().isPresent() || !view.seated().isEmpty())
        .map(view -> view.in(now))
        .orElse(now);
  }

  private boolean isSeated(Occupant who) {
    return View.shown(study, options).seated().contains(who);
  }

  /** Returns the stances that concern who rides where the person is shown, in their order. */
  public List<Standing> steps() {
    String rider = Company.rider(study, options.person());
    return study.standings().stream()
        .filter(
            s ->
                s.condition().aboard().isEmpty()
                    || s.condition().aboard().get(0).person().equals(rider))
        .toList();
  }

  /** Returns options that show the machine in a stance, or as drawn with those who are seen now. */
  public PictureOptions in(Optional<Condition> stance, PictureOptions now) {
    return stance.isPresent()
        ? now.withStance(stance)
        : now.withAsDrawn().withSeated(View.shown(study, options).seated());
  }

  /** Returns options one stance on or back; the machine as drawn comes before the first. */
  public PictureOptions stepped(int by, PictureOptions now) {
    List<Optional<Condition>> all = new ArrayList<>(List.of(Optional.empty()));
    steps().forEach(s -> all.add(Optional.of(s.condition())));
    int at = Math.max(0, all.indexOf(standing.map(Standing::condition)));
    return in(all.get(Math.floorMod(at + by, all.size())), now);
  }
}

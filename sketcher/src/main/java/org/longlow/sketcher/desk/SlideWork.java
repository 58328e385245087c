package org.longlow.sketcher.desk;

import java.util.Optional;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Travel;
import org.longlow.constraints.stand.TravelWay;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.Aspect;
import org.longlow.sketcher.picture.ElevationPicture;
import org.longlow.sketcher.picture.Moved;
import org.longlow.sketcher.picture.PictureOptions;

/**
 * The wheels moved along their travel, the machine leaned, or its steering turned, for the desk:
 * what is on the way is worked out on the worker, anew for each machine and stance. Belongs to the
 * desk's thread.
 */
public final class SlideWork {

  /** What a slider moves. */
  public enum Kind {
    TRAVEL,
    LEAN,
    STEER
  }

  private final Surface desk;
  private final SeenBefore before;
  private Kind open;

  /** From where it was seen before a slider showed it from where it is seen best. */
  private Aspect seenFrom = Aspect.SIDE;

  private Aspect shownFrom = Aspect.SIDE;

  private TravelWay.Ends ends = TravelWay.Ends.BOTH;
  private Key asked;
  private Answer answer;

  /** What an answer holds for. */
  private record Key(Kind kind, Study study, Standing stance, TravelWay.Ends ends, Travel still) {
    boolean is(Key other) {
      return other != null
          && kind == other.kind
          && study == other.study
          && stance.condition().equals(other.stance.condition())
          && ends == other.ends
          && still.equals(other.still);
    }
  }

  private record Answer(Key key, Slide slide, Optional<TravelWay> way) {}

  SlideWork(Surface desk, SeenBefore before) {
    this.desk = desk;
    this.before = before;
  }

  /** Returns which slider is open. */
  public Optional<Kind> open() {
    return Optional.ofNullable(open);
  }

  /** Returns which wheels the travel moves. */
  public TravelWay.Ends ends() {
    return ends;
  }

  /** Opens a slider, in a stance in which it can be moved. */
  public void open(Kind kind) {
    if (desk.shown().isEmpty()) {
      return;
    }
    Aspect from = unslid(desk.options().aspect());
    seenFrom = from;
    open = kind;
    before.enter(SeenBefore.By.SLIDER, desk.options());
    Aspect best =
        kind == Kind.STEER
            ? Aspect.PLAN
            : from != Aspect.PLAN ? from : kind == Kind.LEAN ? Aspect.FRONT : Aspect.SIDE;
    shownFrom = best;
    Stance.Kind stance = desk.options().stance().map(c -> c.kind()).orElse(Stance.Kind.LADEN);
    boolean fits =
        kind == Kind.LEAN
            ? stance == Stance.Kind.LADEN
            : stance != Stance.Kind.OPEN && stance != Stance.Kind.PARKED;
    desk.look(
        o ->
            (fits && !o.asDrawn() ? o.withMoved(Optional.empty()) : o.withStance(Optional.empty()))
                .withInPose(Optional.empty())
                .withAspect(best));
  }

  /** Returns from where it would be seen without the slider that is open. */
  private Aspect unslid(Aspect now) {
    return open != null && now == shownFrom ? seenFrom : now;
  }

  /**
   * Closes the slider that is open, and puts the machine back as it was seen before; returns
   * whether one was open.
   */
  public boolean close() {
    if (open == null) {
      return false;
    }
    Optional<PictureOptions> back =
        desk.shown().flatMap(s -> before.leave(SeenBefore.By.SLIDER, s, desk.options()));
    Aspect after = unslid(desk.options().aspect());
    forget();
    desk.look(o -> back.orElse(o).withMoved(Optional.empty()).withAspect(after));
    return true;
  }

  /** Forgets what was open. */
  void forget() {
    open = null;
    answer = null;
    asked = null;
  }

  /** Says which wheels the travel moves from now on; the other stays where it is. */
  public void move(TravelWay.Ends which) {
    ends = which;
    look();
    desk.tell();
  }

  /** Returns the way and what is on it, once that is known for what is shown. */
  public Optional<Slide> slide() {
    return known().map(Answer::slide);
  }

  /** Returns the way of the wheels, once it is known. */
  public Optional<TravelWay> way() {
    return known().flatMap(Answer::way);
  }

  private Optional<Answer> known() {
    return Optional.ofNullable(answer).filter(a -> a.key().is(key().orElse(null)));
  }

  /** Returns where the wheels are, as asked for last; empty with nothing shown. */
  public Optional<Travel> travel() {
    Optional<Moved> moved = desk.options().moved();
    return moved.isPresent() && moved.get() instanceof Moved.ByHand byHand
        ? Optional.of(byHand.travel())
        : stance().map(Travel::of);
  }

  /**
   * Returns how far along its way the machine is; for lean and steering degrees, to the right
   * positive.
   */
  public double value() {
    Moved moved = desk.options().moved().orElse(null);
    if (open == Kind.LEAN) {
      return moved instanceof Moved.ByTurn turn ? -Math.toDegrees(turn.rollRad()) : 0;
    }
    if (open == Kind.STEER) {
      return moved instanceof Moved.BySteering by ? -Math.toDegrees(by.steerRad()) : 0;
    }
    return way().flatMap(w -> travel().map(w::share)).orElse(0.0);
  }

  /** Moves the machine along its way. */
  public void set(double value) {
    Optional<Moved> moved =
        switch (open) {
          case LEAN -> Optional.of(new Moved.ByTurn(-Math.toRadians(value)));
          case STEER -> Optional.of(new Moved.BySteering(-Math.toRadians(value)));
          case TRAVEL -> way().map(w -> new Moved.ByHand(w.at(value)));
        };
    moved.ifPresent(m -> desk.look(o -> o.withMoved(Optional.of(m))));
  }

  /** The stance that is shown, with its wheels where they are in it. */
  private Optional<Standing> stance() {
    return desk.shown().flatMap(s -> ElevationPicture.stance(s.study(), s.options()));
  }

  private Optional<Key> key() {
    if (open == null || desk.shown().isEmpty()) {
      return Optional.empty();
    }
    PictureOptions options = desk.options();
    Study study = desk.shown().get().study();
    return stance()
        .filter(s -> open != Kind.LEAN || s.kind() == Stance.Kind.LADEN)
        .filter(s -> options.stance().map(s.condition()::equals).orElse(true))
        .map(s -> new Key(open, study, s, ends, still(travel().orElse(Travel.of(s)))));
  }

  /** Where the wheel is that does not move; nought for those that do. */
  private Travel still(Travel now) {
    boolean travels = open == Kind.TRAVEL;
    return new Travel(
        travels && ends == TravelWay.Ends.REAR ? now.frontMm() : 0,
        travels && ends == TravelWay.Ends.FRONT ? now.rearMm() : 0);
  }

  /** Something else may be shown: has what is on the way worked out anew where it is. */
  void look() {
    Key key = key().orElse(null);
    if (key == null || desk.shown().get().live() || key.is(asked)) {
      return;
    }
    asked = key;
    desk.queue(
        () -> {
          Answer next = answered(key);
          return () -> {
            if (next.key().is(asked)) {
              answer = next;
            }
          };
        });
  }

  private static Answer answered(Key key) {
    if (key.kind() == Kind.LEAN) {
      return new Answer(key, Ways.lean(key.study(), key.stance()), Optional.empty());
    }
    if (key.kind() == Kind.STEER) {
      return new Answer(key, Ways.steer(key.study()), Optional.empty());
    }
    TravelWay way = Ways.travelWay(key.study(), key.stance(), key.ends(), key.still());
    return new Answer(key, Ways.travel(key.study(), key.stance(), way), Optional.of(way));
  }
}

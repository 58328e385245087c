package org.longlow.constraints.check.rule;

import java.util.Comparator;
import java.util.List;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.rule.LampView.Seen;
import org.longlow.constraints.check.rule.LampView.View;
import org.longlow.constraints.check.rule.Ruling.Outcome;
import org.longlow.constraints.law.Asked;
import org.longlow.constraints.law.FieldOfView;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.law.Row;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.shape.Lamps;
import org.longlow.rider.words.Words;

/** From where the lamps of a machine are seen, against one row of the tables. */
final class ViewRulings {

  /** A face that lies deeper in another part than this is told, mm; ours, not the law's. */
  private static final double LET_IN_MM = 5;

  /** Seen as far to both sides, deg: rounding. */
  private static final double SAME_DEG = 1e-6;

  private final Row row;
  private final FieldOfView field;
  private final LampViews views;

  private ViewRulings(Row row, LampViews views) {
    this.row = row;
    this.field = row.field();
    this.views = views;
  }

  /**
   * Returns what the row says, part by part: of a pair, of the one that is seen less.
   *
   * @param all every lamp of the machine
   */
  static List<Ruling> of(Row row, List<LampItem> all, LampViews views) {
    List<LampItem> lamps =
        all.stream().filter(l -> l.kind() == row.kind()).filter(row::inZone).toList();
    if ((row.asked() == Asked.SEEN_ALONE && lamps.size() > 1)
        || (row.asked() == Asked.SEEN_SHARED && lamps.size() < 2)) {
      return List.of();
    }
    ViewRulings rulings = new ViewRulings(row, views);
    return LampRulings.parts(lamps).stream()
        .map(part -> lamps.stream().filter(l -> l.part().equals(part)).map(rulings::worst).toList())
        .map(each -> each.stream().min(Comparator.comparingDouble(Worst::toSpare)).orElseThrow())
        .map(rulings::ruling)
        .toList();
  }

  /** How far a lamp is seen to the side where less is to spare. */
  private record Worst(Seen seen, boolean out, double asked) {

    LampItem lamp() {
      return seen.lamp();
    }

    View centre() {
      return seen.centre();
    }

    double angle() {
      return out ? centre().out() : centre().in();
    }

    String by() {
      return out ? centre().outBy() : centre().inBy();
    }

    /**
     * Whether it is seen as far to the other side: which of both is said would hang on rounding.
     */
    boolean alike() {
      return Math.abs(centre().out() - centre().in()) < SAME_DEG && lamp().yMm() == 0;
    }

    double toSpare() {
      return angle() - asked - (seen.edgeBy().isEmpty() ? 0 : 1e-3);
    }
  }

  private Worst worst(LampItem lamp) {
    Seen seen = views.of(lamp).seen(field);
    boolean out = seen.centre().out() - field.out() <= seen.centre().in() - field.in();
    return new Worst(seen, out, out ? field.out() : field.in());
  }

  private Ruling ruling(Worst worst) {
    Figures figures = Figures.atLeast(worst.angle(), worst.asked(), FigureUnit.DEG);
    boolean covered = worst.seen().letInMm() > LET_IN_MM;
    boolean partly = !worst.seen().edgeBy().isEmpty();
    Outcome outcome =
        !figures.inside() ? Outcome.OUTSIDE : covered || partly ? Outcome.CARE : Outcome.INSIDE;
    return Ruling.of(
        row,
        About.parts(worst.lamp().part()).named(row.name(), "seen", worst.lamp().part()),
        outcome,
        figures,
        words(worst, figures.inside(), covered, partly));
  }

  private Words words(Worst worst, boolean inside, boolean covered, boolean partly) {
    boolean free = worst.by().isEmpty();
    Words what =
        Say.format(
            "%s: %s its centre is seen to %s%s off straight %s, at least %s asked, from"
                + " %s above to %s below the level, nobody aboard",
            worst.lamp().part(),
            worst.alike() ? "to either side" : "towards the " + side(worst),
            Say.deg(worst.angle()),
            free ? " or more" : "",
            straight(worst.lamp()),
            Say.deg(worst.asked()),
            Say.deg(field.up()),
            Say.deg(field.down(worst.lamp().zMm())));
    Words hidden =
        inside
            ? Words.of("")
            : Words.of(
                "; there it is hidden by " + worst.by() + ": move the lamp, or cut that part back");
    Words edge =
        inside && partly
            ? Words.of("; part of its face is hidden by " + worst.seen().edgeBy())
            : Words.of("");
    Words holder =
        covered
            ? Say.format(
                "; its face lies %s deep in %s and is taken as flush with it",
                Say.mm(worst.seen().letInMm()), worst.seen().holder())
            : Words.of("");
    return Words.of(what, hidden, edge, holder);
  }

  private static String straight(LampItem lamp) {
    if (lamp.kind() == LampPart.Kind.SIDE_REFLECTOR) {
      return "out to its side";
    }
    return Lamps.facesForward(lamp.kind()) ? "ahead" : "behind";
  }

  private static String side(Worst worst) {
    if (worst.lamp().kind() == LampPart.Kind.SIDE_REFLECTOR) {
      return worst.out() ? "front" : "rear";
    }
    boolean left = worst.lamp().yMm() >= 0 == worst.out();
    return left ? "left" : "right";
  }
}

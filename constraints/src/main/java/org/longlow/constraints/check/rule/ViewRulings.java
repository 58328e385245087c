package org.longlow.constraints.check.rule;

import java.util.Comparator;
import java.util.List;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.rule.LampViews.View;
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

  /** So much farther than asked it is looked, for the figure to say what is to spare, degrees. */
  private static final double BEYOND_DEG = 10;

  /** A face that lies deeper in another part than this is told, mm; ours, not the law's. */
  private static final double LET_IN_MM = 5;

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
        .map(part -> lamps.stream().filter(l -> l.part().equals(part)).map(rulings::seen).toList())
        .map(each -> each.stream().min(Comparator.comparingDouble(Seen::toSpare)).orElseThrow())
        .map(rulings::ruling)
        .toList();
  }

  /** How far a lamp is seen, and what stands before some of its face if not before its centre. */
  private record Seen(LampItem lamp, View centre, boolean out, double asked, String edgeBy) {

    double angle() {
      return out ? centre.out() : centre.in();
    }

    String by() {
      return out ? centre.outBy() : centre.inBy();
    }

    double toSpare() {
      return angle() - asked - (edgeBy.isEmpty() ? 0 : 1e-3);
    }
  }

  private Seen seen(LampItem lamp) {
    View centre = views.of(lamp, field, 0, 0, BEYOND_DEG);
    boolean out = centre.out() - field.out() <= centre.in() - field.in();
    double asked = out ? field.out() : field.in();
    return new Seen(lamp, centre, out, asked, edgeHiddenBy(lamp));
  }

  private String edgeHiddenBy(LampItem lamp) {
    // the face of one that looks sideways is drawn from the side, its length is not told
    boolean sideways = lamp.kind() == LampPart.Kind.SIDE_REFLECTOR;
    double wide = sideways ? 0 : lamp.halfWidthMm();
    double high = lamp.halfHeightMm();
    double[][] edges = {{wide, 0}, {-wide, 0}, {0, high}, {0, -high}};
    for (double[] edge : edges) {
      View view = views.of(lamp, field, edge[0], edge[1], 0);
      if (!view.outBy().isEmpty() || !view.inBy().isEmpty()) {
        return view.outBy().isEmpty() ? view.inBy() : view.outBy();
      }
    }
    return "";
  }

  private Ruling ruling(Seen seen) {
    Figures figures = Figures.atLeast(seen.angle(), seen.asked(), FigureUnit.DEG);
    boolean covered = seen.centre().letInMm() > LET_IN_MM;
    boolean partly = !seen.edgeBy().isEmpty();
    Outcome outcome =
        !figures.inside() ? Outcome.OUTSIDE : covered || partly ? Outcome.CARE : Outcome.INSIDE;
    return Ruling.of(
        row,
        About.parts(seen.lamp().part()).named(row.name(), "seen", seen.lamp().part()),
        outcome,
        figures,
        words(seen, figures.inside(), covered, partly));
  }

  private Words words(Seen seen, boolean inside, boolean covered, boolean partly) {
    boolean free = seen.by().isEmpty();
    Words what =
        Say.format(
            "%s: towards the %s its centre is seen to %s%s off straight %s, at least %s asked, from"
                + " %s above to %s below the level, nobody aboard",
            seen.lamp().part(),
            side(seen),
            Say.deg(seen.angle()),
            free ? " or more" : "",
            straight(seen.lamp()),
            Say.deg(seen.asked()),
            Say.deg(field.up()),
            Say.deg(field.down(seen.lamp().zMm())));
    Words hidden =
        inside
            ? Words.of("")
            : Words.of("; there " + seen.by() + " hides it: move the lamp, or cut that part back");
    Words edge =
        inside && partly
            ? Words.of("; part of its face is hidden by " + seen.edgeBy())
            : Words.of("");
    Words holder =
        covered
            ? Say.format(
                "; its face lies %s deep in %s and is taken as flush with it",
                Say.mm(seen.centre().letInMm()), seen.centre().holder())
            : Words.of("");
    return Words.of(what, hidden, edge, holder);
  }

  private static String straight(LampItem lamp) {
    if (lamp.kind() == LampPart.Kind.SIDE_REFLECTOR) {
      return "out to its side";
    }
    return Lamps.facesForward(lamp.kind()) ? "ahead" : "behind";
  }

  private static String side(Seen seen) {
    if (seen.lamp().kind() == LampPart.Kind.SIDE_REFLECTOR) {
      return seen.out() ? "front" : "rear";
    }
    boolean left = seen.lamp().yMm() >= 0 == seen.out();
    return left ? "left" : "right";
  }
}

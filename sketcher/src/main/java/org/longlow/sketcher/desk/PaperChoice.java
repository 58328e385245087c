package org.longlow.sketcher.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.SheetInk;
import org.longlow.sketcher.picture.Views;
import org.longlow.svg.page.Scale;

/**
 * What is to be put on paper.
 *
 * @param kind which of it
 * @param ticked parts whose templates are wanted
 * @param paper for templates and the calibration page, as typed
 * @param printer name of the printer that is corrected for, or empty
 * @param wall paper of the drawing, as typed
 * @param views which views are on the drawing, and how they lie
 * @param seated who is aboard on the drawing and in the report
 * @param stance stance of these; empty for laden by those aboard, or as drawn
 * @param asDrawn whether the machine is shown as drawn, in no stance
 * @param opening how far the section of an open stance is open, 0 shut to 1 open
 * @param scale of the drawing; empty for the largest that fits
 * @param ink with what the drawing is printed
 * @param svg whether the drawing is written as SVG, else as PDF
 */
public record PaperChoice(
    Kind kind,
    Set<String> ticked,
    String paper,
    String printer,
    String wall,
    Views views,
    List<Occupant> seated,
    Optional<Condition> stance,
    boolean asDrawn,
    double opening,
    Optional<Scale> scale,
    SheetInk ink,
    boolean svg) {

  /** What can be put on paper. */
  public enum Kind {
    TEMPLATES("templates"),
    DRAWING("drawing"),
    REPORT("report"),
    LISTS("lists"),
    PRINTER("printer");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** Templates on A4, the drawing on A3, of the machine laden by its first rider. */
  public static final PaperChoice FIRST =
      new PaperChoice(
          Kind.TEMPLATES,
          Set.of(),
          "A4",
          "",
          "A3",
          Views.SIDE,
          List.of(),
          Optional.empty(),
          false,
          1,
          Optional.empty(),
          SheetInk.COLOUR,
          false);

  public PaperChoice {
    ticked = Set.copyOf(ticked);
    seated = List.copyOf(seated);
  }

  /** Returns what the drawing shows. */
  PictureOptions options() {
    String rider =
        seated.stream().filter(Occupant::rides).map(Occupant::person).findFirst().orElse("");
    PictureOptions plain = PictureOptions.PLAIN.withPerson(rider);
    return (asDrawn ? plain.withAsDrawn() : plain.withStance(stance))
        .withOpening(opening)
        .withSeated(seated);
  }

  public PaperChoice withKind(Kind next) {
    return with(d -> d.kind = next);
  }

  public PaperChoice withTicked(Set<String> parts) {
    return with(d -> d.ticked = parts);
  }

  /** Returns a copy in which these parts are ticked, or are not; others stay. */
  public PaperChoice ticking(Iterable<String> parts, boolean on) {
    Set<String> next = new TreeSet<>(ticked);
    for (String part : parts) {
      if (on) {
        next.add(part);
      } else {
        next.remove(part);
      }
    }
    return withTicked(next);
  }

  public PaperChoice withPaper(String text) {
    return with(d -> d.paper = text);
  }

  /** Returns a copy on the paper usual with {@code next}, unless some other was chosen. */
  PaperChoice withUsualPaper(Units before, Units next) {
    PaperChoice on = paper.equals(sheet(before)) ? withPaper(sheet(next)) : this;
    return wall.equals(wall(before)) ? on.withWall(wall(next)) : on;
  }

  private static String sheet(Units units) {
    return units == Units.IN ? "Letter" : FIRST.paper;
  }

  private static String wall(Units units) {
    return units == Units.IN ? "Tabloid" : FIRST.wall;
  }

  public PaperChoice withPrinter(String name) {
    return with(d -> d.printer = name);
  }

  public PaperChoice withWall(String text) {
    return with(d -> d.wall = text);
  }

  public PaperChoice withViews(Views next) {
    return with(d -> d.views = next);
  }

  public PaperChoice withSeated(List<Occupant> people) {
    return with(d -> d.seated = people);
  }

  /** Returns a copy with somebody on a seat, or nobody for an empty name. */
  public PaperChoice seating(String seat, String person) {
    List<Occupant> people =
        new ArrayList<>(
            seated.stream()
                .filter(o -> !o.seat().equals(seat) && !o.person().equals(person))
                .toList());
    if (!person.isEmpty()) {
      people.add(new Occupant(person, seat));
    }
    people.sort((a, b) -> Boolean.compare(b.rides(), a.rides()));
    return withSeated(people);
  }

  /** Returns a copy in another stance, its section wide open. */
  public PaperChoice withStance(Optional<Condition> next) {
    return with(
        d -> {
          d.stance = next;
          d.asDrawn = false;
          d.opening = 1;
        });
  }

  /** Returns a copy of the machine as drawn, in no stance. */
  public PaperChoice withAsDrawn() {
    return withStance(Optional.empty()).with(d -> d.asDrawn = true);
  }

  public PaperChoice withOpening(double share) {
    return with(d -> d.opening = share);
  }

  public PaperChoice withScale(Optional<Scale> next) {
    return with(d -> d.scale = next);
  }

  public PaperChoice withInk(SheetInk next) {
    return with(d -> d.ink = next);
  }

  public PaperChoice withSvg(boolean on) {
    return with(d -> d.svg = on);
  }

  private PaperChoice with(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.choice();
  }

  /** The choice while some of it is changed. */
  private static final class Draft {
    private Kind kind;
    private Set<String> ticked;
    private String paper;
    private String printer;
    private String wall;
    private Views views;
    private List<Occupant> seated;
    private Optional<Condition> stance;
    private boolean asDrawn;
    private double opening;
    private Optional<Scale> scale;
    private SheetInk ink;
    private boolean svg;

    Draft(PaperChoice c) {
      kind = c.kind;
      ticked = c.ticked;
      paper = c.paper;
      printer = c.printer;
      wall = c.wall;
      views = c.views;
      seated = c.seated;
      stance = c.stance;
      asDrawn = c.asDrawn;
      opening = c.opening;
      scale = c.scale;
      ink = c.ink;
      svg = c.svg;
    }

    PaperChoice choice() {
      return new PaperChoice(
          kind, ticked, paper, printer, wall, views, seated, stance, asDrawn, opening, scale, ink,
          svg);
    }
  }
}

package org.longlow.sketcher.edit;

import java.util.List;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.ShownQuantity;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.mend.Offer;

/** The edits a builder can make. Each is a pure function with a name. */
public final class Edits {

  private Edits() {}

  /**
   * Returns the edit that types {@code text} over what stands at a target; nothing typed takes out
   * what may be left out. A free measure that is given a value is held to it. Where the text is no
   * such value the edit cannot be applied.
   */
  public static Edit set(Target target, String text) {
    String said = text.strip();
    return new Edit(
        said.isEmpty() ? "clear " + spoken(target) : "set " + spoken(target) + " to " + said,
        layout -> set(layout, target, said));
  }

  /**
   * In a sentence a field called {@code to} or {@code from} would be read as another word of it.
   */
  private static String spoken(Target target) {
    return target.name().replaceFirst(" (to|from)$", " \u201c$1\u201d");
  }

  private static Layout set(Layout layout, Target target, String text) {
    if (target instanceof Target.OfMeasure m) {
      return Change.set(
          Typing.typedAsShown(layout, withUnit(layout, m.measure(), text), target.path()),
          false,
          "measures",
          m.measure(),
          "free");
    }
    if (target instanceof Target.OfBuilt built) {
      return MeasuredRows.typed(layout, built, text);
    }
    return tidied(layout, Typing.typedAsShown(layout, text, target.path()), target);
  }

  /** A bare number typed over a measure is one of what it measures, in the units shown. */
  private static String withUnit(Layout layout, String measure, String text) {
    Measure was = layout.measures().get(measure);
    return was == null ? text : ShownQuantity.withUnit(text, was.dim(), layout.units());
  }

  /**
   * Returns the edit that adds one to a list or group.
   *
   * @param target the list
   * @param word what is added where that is picked; empty for one like the last
   */
  public static Edit more(Target target, String word) {
    return new Edit(
        "add " + (word.isEmpty() ? target.name() : word + " to " + target.path().get(1)),
        layout -> Typing.added(layout, word, target.path()));
  }

  /** Returns the edit that drops an item of a list or group. */
  public static Edit drop(Target target) {
    return new Edit(
        "drop " + target.name(),
        layout -> tidied(layout, Typing.dropped(layout, target.path()), target));
  }

  /** A part that is given another pin leaves none behind that was made for it alone. */
  private static Layout tidied(Layout before, Layout after, Target target) {
    return target instanceof Target.OfPart of ? OwnPins.tidied(before, after, of.part()) : after;
  }

  /** Returns the edit that lets the solver find a measure, or holds it where it is written. */
  public static Edit free(String measure, boolean free) {
    return new Edit(
        (free ? "free " : "hold ") + measure,
        layout -> Change.set(layout, free, "measures", measure, "free"));
  }

  /**
   * Returns the edit that lets the solver find a measure within a range.
   *
   * @param from its smallest value, may be empty
   * @param to its largest value, may be empty
   */
  public static Edit freeWithin(String measure, String from, String to) {
    return new Edit(
        "free " + measure,
        layout -> {
          Layout lower =
              Typing.typedAsShown(
                  layout,
                  withUnit(layout, measure, from.strip()),
                  List.of("measures", measure, "from"));
          Layout ranged =
              Typing.typedAsShown(
                  lower, withUnit(layout, measure, to.strip()), List.of("measures", measure, "to"));
          return Change.set(ranged, true, "measures", measure, "free");
        });
  }

  /** Returns the edit that nails a pin where it is written, or lets the solver move it. */
  public static Edit nail(String pin, boolean nailed) {
    return new Edit(
        (nailed ? "nail " : "loosen ") + pin,
        layout -> Change.set(layout, nailed, "pins", pin, "nailed"));
  }

  /**
   * Returns the edit that adds a tie of two pins held to {@code text}, under the first name of the
   * form {@code kind-pin-pin} that is not taken.
   */
  public static Edit tie(TieKind kind, List<String> pins, String text) {
    Formula is = kind.is() != TieKind.Is.NONE ? Formula.parse(text.strip()) : null;
    return new Edit(
        "tie " + String.join(" and ", pins),
        layout -> layout.withTie(unused(layout, kind, pins), Tie.of(kind, pins, is)));
  }

  private static String unused(Layout layout, TieKind kind, List<String> pins) {
    String first = pins.get(0);
    StringBuilder name = new StringBuilder(first);
    for (String pin : pins.subList(1, pins.size())) {
      name.append(Character.toUpperCase(pin.charAt(0))).append(pin.substring(1));
    }
    String word = kind.word();
    for (int dash = word.indexOf('-'); dash >= 0; dash = word.indexOf('-')) {
      word =
          word.substring(0, dash)
              + Character.toUpperCase(word.charAt(dash + 1))
              + word.substring(dash + 2);
    }
    name.append(Character.toUpperCase(word.charAt(0))).append(word.substring(1));
    return Fresh.name(layout, "ties", name.toString());
  }

  /** Returns the edit that makes the change that an offer proposes. */
  public static Edit mend(Offer offer) {
    return new Edit(offer.change(), offer.rewrite()::on);
  }

  /** Returns the edit that lets go of a tie. */
  public static Edit untie(String tie) {
    Entries.Entry entry = new Entries.Entry("ties", tie);
    return new Edit("let go of tie " + tie, layout -> Entries.without(layout, entry).layout());
  }

  /** Returns an edit that lets go of a tie or limit which it would contradict. */
  public static Edit lettingGo(Edit edit, Entries.Entry entry) {
    return new Edit(
        edit.name() + ", letting go of " + entry.name(),
        layout -> Entries.without(edit.applied(layout), entry).layout());
  }

  /** Returns the edit that calls a thing otherwise, wherever it is named. */
  public static Edit rename(Entries.Entry entry, String to) {
    String name = to.strip();
    return new Edit(
        "rename " + entry.name() + " to " + name, layout -> Entries.renamed(layout, entry, name));
  }
}

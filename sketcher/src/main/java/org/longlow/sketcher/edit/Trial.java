package org.longlow.sketcher.edit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.FormulaException;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.place.AsWritten;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.Diagnosis;
import org.longlow.constraints.solve.LimitFailure;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;

/** What comes of an edit when it is tried: the new layout, or why it cannot be. */
public sealed interface Trial {

  /** What the solver puts this near to where it was is not moved, mm. */
  double STAYS_MM = 1e-4;

  /** The same of angles. */
  double STAYS_RAD = 1e-7;

  /**
   * The edit holds.
   *
   * @param layout the layout after it, pins written where the solver put them
   * @param study everything about it, its findings worked out when they are asked for
   */
  record Accepted(Layout layout, Study study) implements Trial {}

  /**
   * The edit is refused; the layout stays as it was.
   *
   * @param words why, in the user's names
   * @param names the ties and limits to blame, if it is a contradiction
   */
  record Refused(String words, List<String> names) implements Trial {
    public Refused {
      names = List.copyOf(names);
    }
  }

  /**
   * Tries an edit of typed text: it is read as if it stood in the file, so that units, names and
   * ranges are held to the same rules.
   *
   * @param layout what the edit is of, pins written where they are
   * @param before how that was solved; an edit of a layout that contradicts itself is let through
   *     even if it does not mend everything
   * @param folder where traced outlines are looked for, or null
   */
  static Trial of(Layout layout, Study before, Edit edit, Path folder) {
    Layout asked;
    try {
      asked = edit.applied(layout);
    } catch (OutOfRange e) {
      return new Refused(e.getMessage(), List.of());
    } catch (FormulaException e) {
      return new Refused("It " + e.getMessage(), List.of());
    }
    ReadResult result = LayoutReader.checked(asked, folder);
    if (result instanceof ReadResult.Refused refused) {
      return new Refused(words(asked, refused.faults()), List.of());
    }
    Layout now = ((ReadResult.Read) result).layout();
    Study study = Study.unchecked(Placer.place(now, AsWritten.between(layout, now)));
    if (study.placed().holds() || !before.placed().holds()) {
      return new Accepted(settled(layout, before.placed().places(), asked, study.placed()), study);
    }
    return refusal(study.placed());
  }

  /** A single fault is about what was just typed, so its place needs no saying. */
  private static String words(Layout asked, List<Fault> faults) {
    if (faults.size() > 1) {
      return faults.stream().map(f -> FaultWords.line(asked, f)).collect(Collectors.joining("\n"));
    }
    Fault fault = faults.get(0);
    String remedy = fault.remedy().isEmpty() ? "" : "; " + fault.remedy();
    return FaultWords.said(asked, "It " + fault.message() + remedy + ".");
  }

  /**
   * Returns the layout with its pins written where the solver put them. What the edit does not move
   * stays as it is written, though the solver puts it elsewhere by a little: a rate that is typed
   * writes no coordinates anew.
   */
  private static Layout settled(Layout layout, Places before, Layout asked, Placed placed) {
    if (!placed.holds()) {
      return placed.layout();
    }
    Layout settled = placed.problem().withPlaces(placed.report().x());
    Map<String, Pin> stay = new LinkedHashMap<>();
    settled
        .pins()
        .forEach(
            (name, pin) -> {
              Pin was = layout.pins().get(name);
              if (was != null
                  && was.equals(asked.pins().get(name))
                  && !was.equals(pin)
                  && before.pin(name).distance(placed.places().pin(name)) < STAYS_MM) {
                stay.put(name, was);
              }
            });
    Layout stayed = stay.isEmpty() ? settled : settled.withPins(stay);
    for (String name : settled.measures().keySet()) {
      Measure was = layout.measures().get(name);
      if (was != null
          && was.equals(asked.measures().get(name))
          && !was.equals(settled.measures().get(name))
          && Math.abs(before.measures().get(name) - placed.places().measures().get(name))
              < (was.dim().equals(Dim.ANGLE) ? STAYS_RAD : STAYS_MM)) {
        stayed = stayed.withMeasure(name, was);
      }
    }
    return stayed;
  }

  /** Explains a layout that does not hold. */
  static Refused refusal(Placed placed) {
    SolveReport report = placed.report();
    List<String> names = report.diagnosis().map(Diagnosis::contradiction).orElse(List.of());
    if (names.isEmpty()) {
      List<String> failed = new ArrayList<>(report.failedTies());
      report.failedLimits().stream().map(LimitFailure::limit).forEach(failed::add);
      names = failed;
    }
    if (names.isEmpty()) {
      return new Refused("No places were found that suit this. Try a smaller step.", names);
    }
    Layout layout = placed.layout();
    String list =
        names.stream()
            .map(n -> "\u2022 " + said(layout, n))
            .distinct()
            .collect(Collectors.joining("\n"));
    return new Refused(
        "These cannot all hold:\n" + list + "\nChange or let go of one of them.",
        names.stream().map(n -> plain(layout, n)).distinct().toList());
  }

  /** Returns the name the user gave, without which end of a limit is meant or for whom. */
  static String plain(Layout layout, String name) {
    String shown = shown(name);
    return layout.ties().containsKey(shown)
            || layout.limits().containsKey(shown)
            || layout.measures().containsKey(shown)
        ? shown
        : shown.replaceFirst(" \\([^()]*\\)$", "");
  }

  /** Returns the name of a limit with whom it is about, without which end of it is meant. */
  static String shown(String name) {
    return name.replaceFirst(" \\(at (most|least)\\)$", "");
  }

  /** Says what a tie, limit or range of a measure demands. */
  static String said(Layout layout, String full) {
    String name = plain(layout, full);
    Tie tie = layout.ties().get(name);
    if (tie != null) {
      return "tie "
          + name
          + ": "
          + tie.kind().word()
          + " "
          + String.join(", ", tie.pins())
          + tie.is().map(f -> " = " + f.text()).orElse("");
    }
    Limit limit = layout.limits().get(name);
    if (limit != null) {
      List<String> about = new ArrayList<>(limit.pins());
      about.addAll(limit.parts());
      Optional.of(limit.measure()).filter(m -> !m.isEmpty()).ifPresent(about::add);
      return "limit "
          + shown(full)
          + ": "
          + limit.kind().word()
          + " "
          + String.join(", ", about)
          + limit.from().map(f -> " from " + f.text()).orElse("")
          + limit.to().map(f -> " to " + f.text()).orElse("");
    }
    return layout.measures().containsKey(name) ? "range of measure " + name : name;
  }
}

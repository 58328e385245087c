package org.longlow.sketcher.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.figure.FigureFault;
import org.longlow.constraints.figure.FigureFaults;
import org.longlow.constraints.figure.MachineFigures;
import org.longlow.constraints.json.FigureJson;

/** One calculation from a JSON object, answered as a JSON object. */
public final class FigureAnswers {

  /**
   * What came of a calculation.
   *
   * @param json the answer; empty if there are faults
   * @param faults one line a fault; empty if there is an answer
   */
  public record Answer(String json, List<String> faults) {
    public Answer {
      faults = List.copyOf(faults);
    }
  }

  private static final Map<String, MachineFigures.Kind<?, ?>> KINDS = new LinkedHashMap<>();

  static {
    MachineFigures.all().forEach(kind -> KINDS.put(kind.name(), kind));
  }

  private FigureAnswers() {}

  /**
   * Returns what a kind takes, as JSON with words for values, such as {@code {"radiusMm": number}}.
   */
  public static String takes(String kind) {
    return RecordWords.of(KINDS.get(kind).inputType());
  }

  /** Returns the names of the kinds, in their order. */
  public static List<String> kinds() {
    return List.copyOf(KINDS.keySet());
  }

  /** Returns the answer of {@code kind} to the JSON object {@code json}. */
  public static Answer answer(String kind, String json) {
    return KINDS.containsKey(kind)
        ? answer(KINDS.get(kind), json)
        : new Answer(
            "",
            List.of("figure " + kind + " is not known; allowed are " + String.join(", ", kinds())));
  }

  private static <I extends Record> Answer answer(MachineFigures.Kind<I, ?> kind, String json) {
    FigureJson.Result<I> read = FigureJson.read(json, kind.inputType());
    if (read instanceof FigureJson.Result.Refused<I> refused) {
      return new Answer("", refused.faults().stream().map(Fault::line).toList());
    }
    try {
      I input = ((FigureJson.Result.Bound<I>) read).value();
      return new Answer(FigureJson.write(kind.answer().apply(input)), List.of());
    } catch (FigureFaults e) {
      return new Answer("", new ArrayList<>(e.faults().stream().map(FigureFault::line).toList()));
    }
  }
}

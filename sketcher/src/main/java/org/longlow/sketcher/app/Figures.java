package org.longlow.sketcher.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.json.FigureJson;
import org.longlow.constraints.machine.figure.BodyFigure;
import org.longlow.constraints.machine.figure.FigureFault;
import org.longlow.constraints.machine.figure.FigureFaults;
import org.longlow.constraints.machine.figure.MachineFigures;

/** One calculation from a JSON object, answered as a JSON object. */
public final class Figures {

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

  private static final Map<String, Function<String, Answer>> KINDS = new LinkedHashMap<>();
  private static final Map<String, Class<? extends Record>> INPUTS = new LinkedHashMap<>();

  static {
    for (MachineFigures.Kind<?, ?> kind : MachineFigures.all()) {
      add(kind);
    }
    INPUTS.put("body", BodyFigure.Input.class);
    KINDS.put(
        "body",
        json ->
            answer(json, BodyFigure.Input.class, in -> FigureJson.write(BodyFigure.answer(in))));
  }

  private Figures() {}

  private static <I extends Record, O extends Record> void add(MachineFigures.Kind<I, O> kind) {
    INPUTS.put(kind.name(), kind.inputType());
    KINDS.put(
        kind.name(),
        json -> answer(json, kind.inputType(), in -> FigureJson.write(kind.answer().apply(in))));
  }

  /**
   * Returns what a kind takes, as JSON with words for values, such as {@code {"radiusMm": number}}.
   */
  public static String takes(String kind) {
    return RecordWords.of(INPUTS.get(kind));
  }

  /** Returns the names of the kinds, in their order. */
  public static List<String> kinds() {
    return List.copyOf(KINDS.keySet());
  }

  /** Returns the answer of {@code kind} to the JSON object {@code json}. */
  public static Answer answer(String kind, String json) {
    Function<String, Answer> work = KINDS.get(kind);
    if (work == null) {
      return new Answer(
          "",
          List.of("figure " + kind + " is not known; allowed are " + String.join(", ", kinds())));
    }
    return work.apply(json);
  }

  private static <I extends Record> Answer answer(
      String json, Class<I> input, Function<I, String> work) {
    FigureJson.Result<I> read = FigureJson.read(json, input);
    if (read instanceof FigureJson.Result.Refused<I> refused) {
      return new Answer("", refused.faults().stream().map(Fault::line).toList());
    }
    try {
      return new Answer(work.apply(((FigureJson.Result.Bound<I>) read).value()), List.of());
    } catch (FigureFaults e) {
      return new Answer("", new ArrayList<>(e.faults().stream().map(FigureFault::line).toList()));
    }
  }
}

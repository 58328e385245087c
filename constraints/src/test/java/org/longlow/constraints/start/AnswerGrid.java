package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Answers of all sorts of people: who rides, backs, places of the drive and wheelbases in every
 * combination, with fronts, tyres and laws going round beside them.
 */
public final class AnswerGrid {

  /** One seat for one or two, then two seats. */
  private static final List<List<String>> CREWS =
      List.of(
          List.of("1", "woman 5 %"),
          List.of("1", "woman 50 %"),
          List.of("1", "man 50 %"),
          List.of("1", "man 95 %"),
          List.of("1", "woman 5 %", "man 95 %"),
          List.of("1", "woman 50 %", "man 50 %"),
          List.of("2", "man 50 %", "woman 50 %"),
          List.of("2", "woman 5 %", "man 50 %"));

  private static final List<String> BACKS = List.of("25 deg", "32 deg", "45 deg", "60 deg");
  private static final List<String> BACKS_OF_TWO = List.of("25 deg", "28 deg", "32 deg", "35 deg");

  private static final List<List<String>> DRIVES =
      List.of(
          List.of("engine", "before"),
          List.of("engine", "under"),
          List.of("engine", "behind"),
          List.of("motor", "before"),
          List.of("motor", "under"),
          List.of("motor", "behind"),
          List.of("motor", "hub"));

  private static final List<String> WHEELBASES = List.of("choose", "1500 mm", "1700 mm", "1900 mm");

  private static final List<String> FRONTS = List.of("telescopic", "leading-link", "trailing-link");

  private static final List<List<String>> TYRES =
      List.of(
          List.of("110/80-16", "140/70-16"),
          List.of("90/90-14", "110/80-14"),
          List.of("100/90-18", "120/80-18"),
          List.of("120/70 R17", "180/55 R17"),
          List.of("MT90-16", "MT90-16"));

  private static final List<String> LAWS =
      List.of("us,un-r53,uk", "us", "un-r53", "uk", "un-r53,uk", "none", "us,uk");

  private AnswerGrid() {}

  /** Returns all of it, or of every so many one. */
  public static List<Map<Question, String>> every(int nth) {
    List<Map<Question, String>> all = all();
    return IntStream.range(0, all.size()).filter(k -> k % nth == 0).mapToObj(all::get).toList();
  }

  private static List<Map<Question, String>> all() {
    List<Map<Question, String>> all = new ArrayList<>();
    for (List<String> crew : CREWS) {
      boolean two = crew.get(0).equals("2");
      for (String back : two ? BACKS_OF_TWO : BACKS) {
        for (List<String> drive : DRIVES) {
          for (String wheelbase : WHEELBASES) {
            Map<Question, String> said = new EnumMap<>(Question.class);
            said.put(Question.SEATS, crew.get(0));
            said.put(Question.RIDER, crew.get(1));
            if (crew.size() > 2) {
              said.put(Question.SECOND, crew.get(2));
            }
            said.put(Question.RECLINE, back);
            said.put(Question.DRIVE, drive.get(0));
            said.put(Question.PLACE, drive.get(1));
            said.put(Question.WHEELBASE, wheelbase);
            int k = all.size();
            // by numbers that share no factor, so that in time everything meets everything
            said.put(Question.FRONT, FRONTS.get(k * 2 % FRONTS.size()));
            said.put(Question.FRONT_TYRE, TYRES.get(k * 3 % TYRES.size()).get(0));
            said.put(Question.REAR_TYRE, TYRES.get(k * 3 % TYRES.size()).get(1));
            said.put(Question.LAW, LAWS.get(k * 5 % LAWS.size()));
            all.add(said);
          }
        }
      }
    }
    return all;
  }

  /** Returns answers that must be without a fault. */
  static Answers read(Map<Question, String> said) {
    AnswerReader.Reading reading = AnswerReader.read(said);
    if (!reading.faults().isEmpty()) {
      throw new AssertionError(reading.faults().toString());
    }
    return reading.answers();
  }
}

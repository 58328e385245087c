package org.longlow.constraints.start;

import java.util.Arrays;
import java.util.Optional;

/** What is asked for a first machine, and how an answer is written. Each may be left out. */
public enum Question {
  RIDER(
      "rider",
      "who rides",
      "WHO",
      "Who steers: woman or man, with a percentile of the survey (woman 5 %) or height and mass"
          + " (man 1770 mm, 84 kg; 5 ft 9 in, 180 lb), and own measures by their survey names"
          + " (..., sittingheight=900 mm), an age (..., 48 years) and what they wear on the back (...,"
          + " rucksack 9 kg). A man of 50 % unless said."),
  SECOND(
      "second",
      "who else",
      "WHO",
      "Who else: rides it too on one seat, sits behind on two. Written like the rider."),
  SEATS("seats", "seats", "1|2", "How many seats; the second is behind. 1 unless said."),
  WHEELBASE(
      "wheelbase",
      "wheelbase",
      "LENGTH",
      "Such as 1700 mm or 67 in; choose, or nothing, lets it follow."),
  FRONT_TYRE("front-tyre", "front tyre", "SIZE", "Such as 110/80-16."),
  REAR_TYRE("rear-tyre", "rear tyre", "SIZE", "Such as 140/70-16."),
  RECLINE(
      "recline",
      "recline of the back",
      "ANGLE",
      "Back rest from the vertical, 18 to 60 deg; 30 deg unless said."),
  DRIVE(
      "drive",
      "what drives it",
      "engine|motor",
      "What drives it: an engine with a tank, a motor with a battery."),
  PLACE(
      "place",
      "where the drive is",
      "before|under|behind|hub",
      "Where the drive is, seen from the rider: before (under the knees), under (the seat), behind"
          + " (the back), hub (rear wheel, motors only)."),
  BOX(
      "box",
      "its size and mass",
      "LxHxB",
      "Its length, height and breadth, and its mass: 390 x 310 x 320 mm, 48 kg. In the hub: its"
          + " diameter twice, and its breadth."),
  TRACING(
      "tracing",
      "its outline",
      "FILE",
      "An SVG file of its outline in side view, front to the right: its first path, or the one named"
          + " after a #, engine.svg#case. It is drawn as long as the box says, or else in the unit"
          + " of the file."),
  FRONT(
      "front",
      "front end",
      "telescopic|leading-link|trailing-link",
      "How the front wheel is carried."),
  LAW(
      "law",
      "lamp rules",
      "SETS",
      "Lamp rules in force, with commas between: us, un-r53, uk; all unless said.");

  private final String word;
  private final String label;
  private final String form;
  private final String help;

  Question(String word, String label, String form, String help) {
    this.word = word;
    this.label = label;
    this.form = form;
    this.help = help;
  }

  /** The word for it in options and in what is said of answers. */
  public String word() {
    return word;
  }

  /** What is asked, as written beside a field. */
  public String label() {
    return label;
  }

  /** What an answer looks like, in a few letters. */
  public String form() {
    return form;
  }

  public String help() {
    return help;
  }

  /** Returns the question of this word. */
  public static Optional<Question> of(String word) {
    return Arrays.stream(values()).filter(q -> q.word.equals(word)).findFirst();
  }
}

package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.law.LawTables;
import org.longlow.constraints.law.RuleSet;
import org.longlow.constraints.machine.chassis.TyreSize;
import org.longlow.constraints.machine.chassis.TyreSizeReader;
import org.longlow.constraints.start.Answers.Box;
import org.longlow.constraints.start.Answers.Drive;
import org.longlow.constraints.start.Answers.Place;
import org.longlow.constraints.words.Quoted;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.words.Decimals;

/**
 * What in answers goes against itself or against what a machine can be, found before anything is
 * drawn. Bounds are those within which first machines were tried; none is a rule for machines.
 */
final class Contradictions {

  static final double LEAST_RECLINE_DEG = 18;
  static final double MOST_RECLINE_DEG = 60;

  /** Behind a flatter back nobody can sit with a leg on either side of the rider. */
  static final double MOST_RECLINE_FOR_TWO_DEG = 35;

  static final double LEAST_WHEELBASE_MM = 1300;
  static final double MOST_WHEELBASE_MM = 2500;
  static final double LEAST_TYRE_RADIUS_MM = 230;
  static final double MOST_TYRE_RADIUS_MM = 345;
  static final double MOST_TYRE_WIDTH_MM = 205;
  private static final double LEAST_TYRE_WIDTH_MM = 60;

  /** From the bead of a rim to what a motor in it may fill, on either side, mm. */
  private static final double RIM_DEPTH_MM = 28;

  private static final double MOST_HUB_BREADTH_MM = 170;

  private final Answers answers;
  private final List<Fault> faults = new ArrayList<>();

  private Contradictions(Answers answers) {
    this.answers = answers;
  }

  /** Returns all of them. */
  static List<Fault> of(Answers answers) {
    Contradictions found = new Contradictions(answers);
    found.people();
    found.back();
    found.wheels();
    found.drive();
    found.law();
    return found.faults;
  }

  private void add(String answer, String value, String wrong, String remedy) {
    faults.add(new Fault(answer, value, wrong, remedy));
  }

  private void within(String answer, double value, double least, double most, String unit) {
    if (!(value >= least && value <= most)) {
      add(
          answer,
          Decimals.brief(value) + " " + unit,
          "is not " + Decimals.brief(least) + " to " + Decimals.brief(most) + " " + unit,
          "give one of these, or leave it out");
    }
  }

  private void people() {
    answers.rider().ifPresent(who -> body("rider", who));
    answers.second().ifPresent(who -> body("second", who));
    answers
        .seats()
        .filter(n -> n < 1 || n > 2)
        .ifPresent(n -> add("seats", String.valueOf(n), "is not 1 or 2", "give one of these"));
  }

  private void body(String answer, Who who) {
    try {
      BodyMeasures.of(who.sex(), who.statureMm(), who.massKg(), who.measuredMm());
    } catch (OutOfRange e) {
      // one line for each measurement, in the words of the question
      e.getMessage()
          .lines()
          .forEach(
              line ->
                  add(
                      answer,
                      "",
                      line.replace("statureMm", "height, mm,").replace("massKg", "mass, kg,"),
                      ""));
    }
  }

  private void back() {
    answers
        .reclineDeg()
        .ifPresent(deg -> within("recline", deg, LEAST_RECLINE_DEG, MOST_RECLINE_DEG, "deg"));
    boolean two = answers.seats().filter(n -> n == 2).isPresent();
    if (two && answers.reclineDeg().orElse(0.0) > MOST_RECLINE_FOR_TWO_DEG) {
      add(
          "recline",
          Decimals.brief(answers.reclineDeg().get()) + " deg",
          "leaves nobody room behind: with 2 seats at most "
              + Decimals.brief(MOST_RECLINE_FOR_TWO_DEG)
              + " deg",
          "set the back steeper or take 1 seat");
    }
  }

  private void wheels() {
    answers
        .wheelbaseMm()
        .ifPresent(mm -> within("wheelbase", mm, LEAST_WHEELBASE_MM, MOST_WHEELBASE_MM, "mm"));
    answers.frontTyre().ifPresent(size -> tyre("front-tyre", size));
    answers.rearTyre().ifPresent(size -> tyre("rear-tyre", size));
  }

  private void tyre(String answer, String text) {
    TyreSize.Reading reading = TyreSizeReader.read(text);
    if (reading.size() == null) {
      reading.faults().forEach(fault -> add(answer, Quoted.cut(text), fault, ""));
      return;
    }
    double radius = reading.size().tyre().freeRadiusMm();
    double width = reading.size().tyre().widthMm();
    if (radius < LEAST_TYRE_RADIUS_MM || radius > MOST_TYRE_RADIUS_MM) {
      add(
          answer,
          Quoted.cut(text),
          "has a radius of "
              + Draft.text(radius)
              + "; first machines stand on "
              + Draft.text(LEAST_TYRE_RADIUS_MM)
              + " to "
              + Draft.text(MOST_TYRE_RADIUS_MM),
          "choose another, and change it in the layout");
    }
    if (width < LEAST_TYRE_WIDTH_MM || width > MOST_TYRE_WIDTH_MM) {
      add(
          answer,
          Quoted.cut(text),
          "is "
              + Draft.text(width)
              + " wide; first machines stand on "
              + Draft.text(LEAST_TYRE_WIDTH_MM)
              + " to "
              + Draft.text(MOST_TYRE_WIDTH_MM),
          "choose another, and change it in the layout");
    }
  }

  private void drive() {
    Optional<Place> place = answers.place();
    boolean hub = place.filter(p -> p == Place.HUB).isPresent();
    if (hub && answers.drive().filter(d -> d == Drive.ENGINE).isPresent()) {
      add("place", "hub", "holds no engine", "take a motor, or put the engine elsewhere");
    }
    if (hub && answers.tracing().isPresent()) {
      add("tracing", "", "is of no motor in a hub, which is round", "leave it out, or say the box");
    }
    answers.tracing().filter(t -> answers.box().isEmpty()).ifPresent(this::size);
    if (answers.box().isEmpty()) {
      return;
    }
    Box box = answers.box().get();
    within("box", box.lengthMm(), Box.LEAST.lengthMm(), Box.MOST.lengthMm(), "mm long");
    within("box", box.heightMm(), Box.LEAST.heightMm(), Box.MOST.heightMm(), "mm high");
    within("box", box.breadthMm(), Box.LEAST.breadthMm(), Box.MOST.breadthMm(), "mm broad");
    within("box", box.massKg(), Box.LEAST.massKg(), Box.MOST.massKg(), "kg");
    if (hub) {
      hub(box);
    }
  }

  private void size(Tracing tracing) {
    within("tracing", tracing.lengthMm(), Box.LEAST.lengthMm(), Box.MOST.lengthMm(), "mm long");
    within("tracing", tracing.heightMm(), Box.LEAST.heightMm(), Box.MOST.heightMm(), "mm high");
  }

  private void hub(Box box) {
    if (Math.abs(box.lengthMm() - box.heightMm()) > 1) {
      add(
          "box",
          Draft.text(box.lengthMm()) + " x " + Draft.text(box.heightMm()),
          "is no motor in a hub, which is round",
          "give its diameter as length and height");
    }
    TyreSize size = TyreSizeReader.read(answers.rearTyre().orElse(Brief.REAR_TYRE)).size();
    if (size != null && box.lengthMm() > size.rimDiameterMm() - 2 * RIM_DEPTH_MM) {
      add(
          "box",
          Draft.text(box.lengthMm()),
          "does not go into the rim of "
              + size.designation()
              + ", which takes "
              + Draft.text(Math.floor(size.rimDiameterMm() - 2 * RIM_DEPTH_MM)),
          "take a smaller motor or a larger rear wheel");
    }
    if (box.breadthMm() > MOST_HUB_BREADTH_MM) {
      add(
          "box",
          Draft.text(box.breadthMm()),
          "is broader than a hub's " + Draft.text(MOST_HUB_BREADTH_MM),
          "give the breadth between the legs of the swingarm");
    }
  }

  private void law() {
    List<String> known = LawTables.sets().stream().map(RuleSet::id).toList();
    for (String rules : answers.law().orElse(List.of())) {
      if (!known.contains(rules)) {
        add(
            "law",
            Quoted.cut(rules),
            "is no rule set Longlow has",
            "use " + String.join(", ", known));
      }
    }
  }
}

package org.longlow.constraints.start;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.layout.Electric;
import org.longlow.constraints.layout.HubBody;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part.End;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.start.Parts.Base;
import org.longlow.rider.geom.PointMm;

/** Stands two wheels on the ground; all else is measured from where they stand. */
final class TwoWheels {

  /** What a card holds between its wheels until somebody says more, mm: a middling length. */
  private static final double WHEELBASE_MM = 1600;

  /** Masses of common wheels with tyre and brake by their width; weigh them. Common practice. */
  private static final double KG_PER_MM = 0.11;

  private static final String NAME = "mine";

  private final Brief brief;
  private final Draft draft;

  TwoWheels(Brief brief, Draft draft) {
    this.brief = brief;
    this.draft = draft;
  }

  /** Returns a card with two wheels and nothing else, for those who were answered. */
  static Layout alone(Answers answers, Optional<String> name) {
    Brief brief = Brief.of(answers);
    Draft draft = new Draft();
    new TwoWheels(brief, draft)
        .draw(
            Double.isNaN(brief.wheelbaseMm()) ? WHEELBASE_MM : brief.wheelbaseMm(),
            List.of(),
            List.of());
    Brief.said(answers).forEach(draft::person);
    String called = name.orElse(NAME);
    return draft.layout(called, called + ", two wheels to begin with", List.of(), brief.law());
  }

  /** Returns the answers that such a card has a use for; no other can stand against it. */
  static Answers used(Answers a) {
    return new Answers(
        a.rider(),
        a.second(),
        a.seats(),
        a.wheelbaseMm(),
        a.frontTyre(),
        a.rearTyre(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        a.law());
  }

  /** Returns which answers such a card has no use for. */
  static List<Question> unused(Answers answers) {
    Map<Question, Boolean> said = new EnumMap<>(Question.class);
    said.put(Question.SEATS, answers.seats().isPresent() && answers.second().isEmpty());
    said.put(Question.RECLINE, answers.reclineDeg().isPresent());
    said.put(Question.DRIVE, answers.drive().isPresent());
    said.put(Question.PLACE, answers.place().isPresent());
    said.put(Question.BOX, answers.box().isPresent());
    said.put(Question.TRACING, answers.tracing().isPresent());
    said.put(Question.FRONT, answers.front().isPresent());
    return said.keySet().stream().filter(said::get).toList();
  }

  /**
   * @param atFront what sits about the front axle
   * @param atRear and about the rear one
   */
  void draw(double wheelbaseMm, List<HubBody> atFront, List<HubBody> atRear) {
    Tyre front = brief.tyreAhead();
    Tyre rear = brief.tyreBehind();
    draft.length("wheelbase", wheelbaseMm, "axle to axle");
    draft.length("frontRadius", front.freeRadiusMm(), brief.frontTyre());
    draft.length("rearRadius", rear.freeRadiusMm(), brief.rearTyre());
    draft.nailed("rearAxle", "0 mm", "rearRadius", Pin.REAR_WHEEL, "");
    draft.pin("frontAxle", new PointMm(wheelbaseMm, front.freeRadiusMm()), Pin.FRONT_WHEEL, "");
    draft.tie("baseline", TieKind.AHEAD, "wheelbase", "rearAxle", "frontAxle");
    draft.tie("frontOnGround", TieKind.HEIGHT, "frontRadius", "frontAxle");
    part("frontWheel", End.FRONT, "frontAxle", brief.frontTyre(), front, atFront);
    part("rearWheel", End.REAR, "rearAxle", brief.rearTyre(), rear, atRear);
  }

  private void part(
      String name, End end, String axle, String size, Tyre tyre, List<HubBody> inside) {
    draft.part(
        new WheelPart(
            Base.of(name, "rubber").mass(Math.rint(KG_PER_MM * tyre.widthMm())).made(),
            end,
            axle,
            size,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            inside,
            Electric.NOT_SAID));
  }
}

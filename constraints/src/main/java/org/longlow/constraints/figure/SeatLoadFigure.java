package org.longlow.constraints.figure;

import java.util.Locale;
import org.longlow.rider.seat.SeatLoad;

/** The figure {@code seat-load}: how a reclined rider's weight is shared out. */
public final class SeatLoadFigure {

  /**
   * Input.
   *
   * @param massKg body mass
   * @param backDeg back from the vertical
   * @param panDeg pan from the horizontal, front up
   * @param backCentreShare height of the back's resultant above the hip over hip-shoulder length
   * @param headRest whether the head leans on a rest
   * @param handsShare fraction of body weight on the hands
   */
  public record Input(
      Double massKg,
      Double backDeg,
      Double panDeg,
      Double backCentreShare,
      Boolean headRest,
      Double handsShare) {}

  /** Output, N; friction as a number. */
  public record Output(
      double backN,
      double headRestN,
      double pegsN,
      double handsN,
      double panVerticalN,
      double panNormalN,
      double panShearN,
      double frictionNeeded) {}

  private SeatLoadFigure() {}

  public static Output answer(Input input) {
    Needs.input(input);
    Needs needs = new Needs();
    double mass = needs.within("massKg", input.massKg(), 1, 500);
    double back = needs.within("backDeg", input.backDeg(), 0, 89);
    double pan = needs.within("panDeg", input.panDeg(), -59, 59);
    double centre =
        needs.within("backCentreShare", input.backCentreShare(), SeatLoad.LEAST_BACK_CENTRE, 1);
    boolean head = needs.there("headRest", input.headRest(), "true or false");
    double hands = needs.within("handsShare", input.handsShare(), 0, SeatLoad.ARMS);
    needs.settle();
    SeatLoad.Shares s =
        SeatLoad.of(
            SeatLoad.Input.of(
                mass,
                Math.toRadians(back),
                Math.toRadians(pan),
                centre,
                head && input.headRest(),
                hands));
    if (!s.carried()) {
      needs.add(
          new FigureFault(
              "backDeg",
              String.format(
                  Locale.ROOT,
                  "%s with this pan, which leaves %.1f N upright and %.1f N square on the pan",
                  Double.toString(back),
                  s.panVerticalN(),
                  s.panNormalN()),
              "a back and pan that leave weight on the pan"));
    }
    needs.settle();
    return new Output(
        s.backN(),
        s.headRestN(),
        s.pegsN(),
        s.handsN(),
        s.panVerticalN(),
        s.panNormalN(),
        s.panShearN(),
        s.frictionNeeded());
  }
}

package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.SolidPart;

/**
 * What is carried between the wheels, in the order from the rear, in three rooms over the lower
 * rails: behind the seat's back, under the pan, between the shanks.
 *
 * @param behind behind the back
 * @param under under the pan
 * @param ahead ahead of the pan
 */
record Cargo(List<Item> behind, List<Item> under, List<Item> ahead) {

  /** Share of an engine's length, from its rear, that is low enough to lie under a pan. */
  static final double LOW_SHARE = 0.4;

  /** Beside each other, mm. */
  static final double APART_MM = 12;

  /** Room for the pipe before an engine: its bend, its half and the gap that heat asks for, mm. */
  static final double PIPE_ROOM_MM = 78;

  /**
   * One thing.
   *
   * @param name the part's name
   * @param kind what it is
   * @param lengthMm along the machine
   * @param heightMm up
   * @param halfMm across, to either side
   * @param massKg kg
   * @param lowMm how much of its length, from its rear, is low enough to lie under a pan
   */
  record Item(
      String name,
      SolidPart.Kind kind,
      double lengthMm,
      double heightMm,
      double halfMm,
      double massKg,
      double lowMm) {

    Item(
        String name,
        SolidPart.Kind kind,
        double lengthMm,
        double heightMm,
        double halfMm,
        double massKg) {
      this(name, kind, lengthMm, heightMm, halfMm, massKg, 0);
    }

    boolean drives() {
      return kind == SolidPart.Kind.ENGINE || kind == SolidPart.Kind.MOTOR;
    }

    /** Length with what must stay free before it. */
    double roomMm() {
      return lengthMm + (kind == SolidPart.Kind.ENGINE ? PIPE_ROOM_MM : APART_MM);
    }
  }

  /** Sorts what a machine carries into its rooms, so that the heavy things balance the rider. */
  static Cargo of(Brief brief, Rolling rolling) {
    List<Item> behind = new ArrayList<>();
    List<Item> under = new ArrayList<>();
    List<Item> ahead = new ArrayList<>();
    Answers.Box box = brief.box();
    SolidPart.Kind kind = brief.electric() ? SolidPart.Kind.MOTOR : SolidPart.Kind.ENGINE;
    Item drive =
        new Item(
            brief.electric() ? "motor" : "engine",
            kind,
            box.lengthMm(),
            box.heightMm(),
            box.breadthMm() / 2,
            box.massKg(),
            lowMm(brief));
    // sizes and masses are common ones, from memory; between the rails, so that these never meet
    // them
    double half = Math.floor(Math.min(110, rolling.railYMm - Rolling.RAIL_MM / 2 - 4));
    Item store =
        brief.electric()
            ? new Item("battery", SolidPart.Kind.BATTERY, 380, 165, half, 27)
            : new Item("tank", SolidPart.Kind.TANK, 215, 160, half, 3);
    Item small =
        brief.electric()
            ? new Item("controller", SolidPart.Kind.BOX, 90, 130, 85, 3.2)
            : new Item("battery", SolidPart.Kind.BATTERY, 90, 130, 75, 3.6);
    switch (brief.place()) {
      case BEFORE -> {
        under.add(small);
        under.add(store);
        ahead.add(drive);
      }
      case UNDER -> {
        under.add(drive);
        ahead.add(store);
        ahead.add(small);
      }
      case BEHIND -> {
        behind.add(drive);
        under.add(store);
        ahead.add(small);
      }
      case HUB -> {
        under.add(small);
        ahead.add(store);
      }
    }
    return new Cargo(behind, under, ahead);
  }

  /** Of an engine the cylinder stands high, the gearbox behind it does not. */
  private static double lowMm(Brief brief) {
    double most = LOW_SHARE * brief.box().lengthMm();
    double drawn = brief.electric() ? 0 : most;
    return brief.tracing().map(t -> Math.min(most, t.lowRearMm())).orElse(drawn);
  }

  /** How much of what is ahead of the pan is low at its rear. */
  double lowRearMm() {
    return ahead.isEmpty() ? 0 : ahead.get(0).lowMm();
  }

  static double lengthMm(List<Item> items) {
    return items.stream().mapToDouble(Item::roomMm).sum();
  }

  static double heightMm(List<Item> items) {
    return items.stream().mapToDouble(Item::heightMm).max().orElse(0);
  }
}

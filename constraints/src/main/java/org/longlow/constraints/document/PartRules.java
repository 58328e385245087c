package org.longlow.constraints.document;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Electric;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.chassis.TyreSize;
import org.longlow.constraints.machine.chassis.TyreSizeReader;
import org.longlow.constraints.words.Names;
import org.longlow.constraints.words.Quoted;

/** What must hold between the fields of a part. */
final class PartRules {

  private PartRules() {}

  static void common(Part part, Spot at) {
    PartBase base = part.base();
    if (at.name().equals(Occupant.RIDER)) {
      at.fault("", "", "is the word for whoever sits on the machine", "choose another name");
    }
    base.spread().filter(Spread::said).ifPresent(spread -> wide(spread, at));
    if (part instanceof Part.Outlined outlined) {
      if (base.spread().isEmpty() && at.isSound("left") && at.isSound("right")) {
        ReachKind.missing(at);
      }
      BreadthKinds.once(outlined.outline(), outlined.breadth(), at);
    }
    String word = base.material();
    Optional<Material> material = Material.named(word);
    if (!word.isEmpty() && material.isEmpty()) {
      at.fault(
          "material",
          Quoted.of(word),
          "is no material Longlow knows",
          Names.advice(word, Type.words(Material.class).words(), "material"));
    }
    if (material.isPresent()
        && Double.isNaN(material.get().densityKgM3())
        && base.mass().isEmpty()) {
      at.fault("mass", "", "is missing, material " + word + " has no density", "weigh the part");
    }
  }

  private static void wide(Spread spread, Spot at) {
    Optional<Double> left = at.fixed(spread.left());
    Optional<Double> right = at.fixed(spread.right());
    if (left.isPresent() && right.isPresent() && left.get() + right.get() <= 0) {
      at.fault(
          "right",
          Quoted.of(spread.right().text()),
          "leaves no width: the part runs from -right to +left, and left is "
              + spread.left().text(),
          "make left + right more than 0");
    }
  }

  static void sized(WheelPart wheel, Spot at) {
    String tyre = wheel.tyre();
    if (tyre.isBlank() && (wheel.radius().isEmpty() || wheel.width().isEmpty())) {
      at.fault(
          "",
          "",
          "has neither a tyre size nor a measured radius and width",
          "add \"tyre\", such as \"120/70 R17\", or \"radius\" and \"width\"");
    }
    if (!tyre.isBlank()) {
      for (String fault : TyreSizeReader.read(tyre).faults()) {
        at.fault("tyre", Quoted.of(tyre), fault, "");
      }
    }
    section(wheel, at);
  }

  /** A tyre whose section has a larger radius than the whole wheel is round about nothing. */
  private static void section(WheelPart wheel, Spot at) {
    Optional<Tyre> size =
        Optional.of(wheel.tyre())
            .filter(t -> !t.isBlank())
            .map(t -> TyreSizeReader.read(t).size())
            .map(TyreSize::tyre);
    Optional<Double> radius =
        wheel.radius().isPresent()
            ? wheel.radius().flatMap(at::fixed)
            : size.map(Tyre::freeRadiusMm);
    Optional<Double> section =
        wheel.crown().isPresent()
            ? wheel.crown().flatMap(at::fixed)
            : wheel.width().isPresent()
                ? wheel.width().flatMap(at::fixed).map(w -> w / 2)
                : size.map(Tyre::sectionRadiusMm);
    if (radius.isEmpty() || section.isEmpty() || section.get() <= radius.get()) {
      return;
    }
    if (radius.get() < PartSizes.LEAST_WHEEL_RADIUS_MM) {
      return; // told by its range
    }
    String key =
        wheel.radius().isPresent() ? "radius" : wheel.crown().isPresent() ? "crown" : "width";
    Optional<Formula> said = wheel.radius().or(() -> wheel.crown()).or(() -> wheel.width());
    at.fault(
        key,
        said.map(f -> Quoted.of(f.text())).orElse(""),
        "leaves no tyre: the radius of wheel "
            + wheel.name()
            + ", "
            + Range.number(radius.get())
            + " mm, is less than that of its tyre's section, "
            + Range.number(section.get())
            + " mm",
        "measure the radius from the axle to the tread, or give the wheel the \"width\" or"
            + " \"crown\" that its tyre has");
  }

  /** Only what is in it can take a current. */
  static void currentless(WheelPart wheel, Spot at) {
    if (!wheel.driven() && !wheel.electric().equals(Electric.NOT_SAID)) {
      at.fault(
          "electric",
          "",
          "is said of a wheel without a motor",
          "add the motor to what sits inside it, or take this out");
    }
  }

  static void linked(FrontPart front, Spot at) {
    boolean telescopic = front.type() == FrontPart.Kind.TELESCOPIC;
    if (telescopic && front.pivot().isPresent()) {
      at.fault("pivot", "", "is not part of a telescopic fork", "take it out");
    }
    if (front.type() != null && !telescopic && front.pivot().isEmpty()) {
      at.fault("pivot", "", "is missing", "add the pin that the link turns about");
    }
    if (front.type() != null) {
      upright(front, at);
    }
  }

  private static void upright(FrontPart front, Spot at) {
    boolean two = front.type().twoLinks();
    if (two && front.links().pins().isEmpty()) {
      at.fault("links", "", "is missing", "say which pins hold the upright");
    }
    if (!two && !front.links().pins().isEmpty()) {
      at.fault("links", "", "is only for parallelogram and hub-centre", "take it out");
    }
    if (two && front.brakeRod()) {
      at.fault("brakeRod", "true", "has no use: the upright holds the brake", "take it out");
    }
    if (front.type() == FrontPart.Kind.HUB_CENTRE
        && (front.postTop().isEmpty() || front.postBottom().isEmpty())) {
      at.fault(
          "postTop",
          "",
          "is missing: bars cannot turn about an axis in the hub",
          "add both pins of the axis that they turn about");
    }
  }

  static void drawnTube(TubePart tube, Spot at) {
    List<String> path = tube.path();
    for (int i = 1; i < path.size(); i++) {
      if (path.get(i).equals(path.get(i - 1)) && !path.get(i).isEmpty()) {
        at.itemFault(
            "path",
            i,
            Quoted.of(path.get(i)),
            "is the same pin as the one before",
            "take one of them out");
      }
    }
    Optional<Double> diameter = at.fixed(tube.diameter());
    Optional<Double> wall = at.fixed(tube.wall());
    if (diameter.isPresent()
        && wall.isPresent()
        && diameter.get() > 0
        && 2 * wall.get() > diameter.get()) {
      at.fault(
          "wall",
          Quoted.of(tube.wall().text()),
          "is more than half the diameter, " + tube.diameter().text(),
          "write the thickness of the tube's wall");
    }
  }

  /** A hole goes through the sides; of what has none, it would be cut from nothing. */
  static void sided(ShellPart shell, Spot at) {
    if (shell.open() && shell.outline() != null && !shell.outline().holes().isEmpty()) {
      at.fault(
          "open",
          "true",
          "leaves no sides that holes could go through",
          "take the holes out of the outline or the word open away");
    }
  }

  /** What is said of a stand of another type would be passed over in silence. */
  static void stood(StandPart stand, Spot at) {
    if (stand.type() == null) {
      return;
    }
    if (stand.type() != StandPart.Kind.CENTRE && stand.lever().isPresent()) {
      at.fault("lever", "", "is only for a centre stand", "take it out");
    }
    if (stand.type() != StandPart.Kind.SIDE && at.fixed(stand.lean()).orElse(0.0) != 0) {
      at.fault(
          "lean",
          Quoted.of(stand.lean().text()),
          "is only for a side stand: on two legs the machine stands upright",
          "take it out");
    }
  }

  static void twoEnds(CushionPart cushion, Spot at) {
    if (!cushion.from().isEmpty() && cushion.from().equals(cushion.to())) {
      at.fault("to", Quoted.of(cushion.to()), "is the same pin as from", "give the board two ends");
    }
  }
}

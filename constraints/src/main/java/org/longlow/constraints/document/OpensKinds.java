package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.FORCE;
import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.MASS;
import static org.longlow.constraints.document.Type.NUMBER;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Catch;
import org.longlow.constraints.layout.Counterweight;
import org.longlow.constraints.layout.GasSpring;
import org.longlow.constraints.layout.Opens;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.words.Quoted;

/** By what sections are opened, held open and held shut. */
final class OpensKinds {

  /** Judgement: more of a kind on one section are a slip. */
  private static final int MOST = 12;

  static final Kind<GasSpring> GAS_SPRING =
      Kind.of("gasSpring", "A gas spring that helps a section open.", OpensKinds::gasSpring)
          .rule(OpensKinds::pressed);

  static final Kind<Counterweight> COUNTERWEIGHT =
      Kind.of("counterweight", "A weight that helps a section open.", OpensKinds::counterweight)
          .rule(OpensKinds::hangs);

  static final Kind<Catch> CATCH =
      Kind.of(
              "catch",
              "What holds a section to the frame, or to another that the same drive moves.",
              OpensKinds::held)
          .rule(OpensKinds::grips);

  private OpensKinds() {}

  static Opens opens(Source<Section> s) {
    return new Opens(
        s.may(
            "grip",
            Type.ref(Referent.PIN),
            x -> x.opens().grip(),
            "The pin of the section where a hand takes hold; absent takes its far end."),
        s.may(
            "holds",
            NUMBER.between(0.01, 1),
            x -> x.opens().holds(),
            "How far open it is held, as a share of the way; all the way where absent."),
        s.flag("wayOut", x -> x.opens().wayOut(), "Whether somebody must get out through it."),
        s.text(
            "drive",
            x -> x.opens().drive(),
            "The name of what moves it by power; sections with the same one move together."),
        s.or(
            "gasSprings",
            list(GAS_SPRING),
            List.of(),
            x -> x.opens().gasSprings(),
            "Gas springs that help it open."),
        s.or(
            "counterweights",
            list(COUNTERWEIGHT),
            List.of(),
            x -> x.opens().counterweights(),
            "Weights that help it open."),
        s.or("catches", list(CATCH), List.of(), x -> x.opens().catches(), "What holds it."));
  }

  private static <T> Type.ListOf<T> list(Kind<T> kind) {
    return new Type.ListOf<>(new Type.Nested<>(kind), 0, MOST);
  }

  private static GasSpring gasSpring(Source<GasSpring> s) {
    return new GasSpring(
        s.pin("frame", "its end that stays", GasSpring::frame, "The pin of its end that stays."),
        s.pin(
            "section",
            "its end that moves",
            GasSpring::section,
            "The pin of its end that moves with the section, where that is shut."),
        s.need(
            "force",
            FORCE.notNegative(),
            GasSpring::force,
            "What one pushes with at its full length, as printed on it."),
        s.need("length", PartSizes.SIZE, GasSpring::length, "Eye to eye at its full length."),
        s.need("stroke", PartSizes.SIZE, GasSpring::stroke, "How far it can be pressed together."),
        s.may(
            "progression",
            NUMBER.between(1, 3),
            GasSpring::progression,
            "How many times as much it pushes pressed together; 1.3 where absent, from memory."),
        s.or(
            "count",
            new Type.Whole(MOST),
            1,
            GasSpring::count,
            "How many there are alike, side by side."));
  }

  private static void pressed(GasSpring spring, Spot at) {
    if (spring.count() == 0 && at.isSound("count")) {
      at.fault("count", "0", "is none", "write how many there are, or take the gas spring out");
    }
    apart(spring.frame(), spring.section(), "section", at);
    Optional<Double> length = at.fixed(spring.length());
    Optional<Double> stroke = at.fixed(spring.stroke());
    if (length.isPresent() && stroke.isPresent() && 2 * stroke.get() >= length.get()) {
      at.fault(
          "stroke",
          Quoted.of(spring.stroke().text()),
          "is half its length of " + Range.number(length.get()) + " mm or more, which none has",
          "measure both again: length is from eye to eye, drawn out");
    }
  }

  private static Counterweight counterweight(Source<Counterweight> s) {
    return new Counterweight(
        s.pin(
            "section",
            "where it is fixed",
            Counterweight::section,
            "The pin of the section where it is fixed, or where its cord is."),
        s.may(
            "pulley",
            Type.ref(Referent.PIN),
            Counterweight::pulley,
            "The pin of the frame over which it hangs on a cord; absent for one that is fixed."),
        s.need("mass", MASS.notNegative(), Counterweight::mass, "Its mass."));
  }

  private static void hangs(Counterweight weight, Spot at) {
    weight.pulley().ifPresent(p -> apart(weight.section(), p, "pulley", at));
  }

  private static Catch held(Source<Catch> s) {
    return new Catch(
        s.pin("jaw", "the jaw", Catch::jaw, "The pin of the jaw, which moves with the section."),
        s.pin(
            "striker",
            "what the jaw grips",
            Catch::striker,
            "The pin that the jaw grips, on the frame or on another section."),
        s.need("depth", LENGTH.notNegative(), Catch::depth, "How deep the jaw engages."),
        s.need(
            "play",
            LENGTH.notNegative(),
            Catch::play,
            "How far jaw and striker may be out of place at worst: hinges, flexing and wear, all"
                + " together."),
        s.may("spring", FORCE.notNegative(), Catch::spring, "What its spring keeps it shut with."),
        s.may(
            "pull",
            FORCE.notNegative(),
            Catch::pull,
            "What its release is pulled with, at the jaw."));
  }

  private static void grips(Catch held, Spot at) {
    if (held.jaw().isEmpty() || held.striker().isEmpty()) {
      return;
    }
    if (held.jaw().equals(held.striker())) {
      at.fault(
          "striker",
          Quoted.of(held.striker()),
          "is the jaw's own pin",
          "name a pin of what it grips, in the same place");
    }
  }

  private static void apart(String one, String other, String key, Spot at) {
    if (one != null && one.equals(other) && at.isSound(key)) {
      at.fault(key, Quoted.of(other), "is its other end", "name the pin of this end");
    }
  }

  /** Returns what is added to a list of these first: something that can stand. */
  static Optional<?> begun(Kind<?> kind, List<String> pins, List<?> there) {
    if (!there.isEmpty() || pins.size() < 2) {
      return Optional.empty();
    }
    String one = pins.get(0);
    String other = pins.get(1);
    if (kind == GAS_SPRING) {
      return Optional.of(
          new GasSpring(
              one,
              other,
              Formula.parse("100 N"),
              Formula.parse("400 mm"),
              Formula.parse("150 mm"),
              Optional.empty(),
              1));
    }
    if (kind == COUNTERWEIGHT) {
      return Optional.of(new Counterweight(one, Optional.empty(), Formula.parse("1 kg")));
    }
    return kind == CATCH
        ? Optional.of(
            new Catch(
                one,
                other,
                Formula.parse("10 mm"),
                Formula.parse("2 mm"),
                Optional.empty(),
                Optional.empty()))
        : Optional.empty();
  }
}

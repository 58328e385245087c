package org.longlow.sketcher.shop;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.machine.shop.BarPlan;
import org.longlow.constraints.machine.shop.SheetPlan;

/** How pieces of one material and size are cut from stock. */
public sealed interface CutPlan {

  /** What they are cut from. */
  Wanted wanted();

  /** The stock taken. */
  Bought stock();

  /** How many bars or sheets. */
  int count();

  /** No plan needs fewer. */
  int least();

  /** Numbers of the pieces that the stock is too small for, from 0. */
  List<Integer> tooLarge();

  /** How much the pieces are, without kerfs and extras: mm of tube, mm² of sheet. */
  double net();

  /** How much is bought: mm of tube, mm² of sheet. */
  default double bought() {
    return count() * stock().size();
  }

  /** Returns the mass of what is bought, kg; NaN where the density is not known. */
  double massKg();

  /** Returns what is bought costs; NaN where that is not known, or nothing can be cut from it. */
  default double cost() {
    return count() == 0 ? Double.NaN : stock().cost(count(), bought(), massKg());
  }

  /**
   * One piece of tube.
   *
   * @param part its name
   * @param lengthMm net, mm
   */
  record Length(String part, double lengthMm) {}

  /**
   * Tube.
   *
   * @param pieces as the plan counts them
   */
  record Bars(Wanted wanted, Bought stock, List<Length> pieces, BarPlan plan, double massKg)
      implements CutPlan {
    public Bars {
      pieces = List.copyOf(pieces);
    }

    @Override
    public int count() {
      return plan.bars().size();
    }

    @Override
    public int least() {
      return plan.leastBars();
    }

    @Override
    public List<Integer> tooLarge() {
      return plan.tooLong();
    }

    @Override
    public double net() {
      return pieces.stream().mapToDouble(Length::lengthMm).sum();
    }
  }

  /**
   * One piece of sheet.
   *
   * @param part its name, and which piece of it
   * @param longMm with what is added all round, mm
   * @param wideMm likewise, mm
   * @param grained whether its grain runs along its length
   * @param areaMm2 net, mm²
   * @param outline what is cut, its length to the right; absent for a rectangle
   */
  record Area(
      String part,
      double longMm,
      double wideMm,
      boolean grained,
      double areaMm2,
      Optional<Geometry> outline) {}

  /**
   * Sheet or foam.
   *
   * @param pieces as the plan counts them
   */
  record Sheets(Wanted wanted, Bought stock, List<Area> pieces, SheetPlan plan, double massKg)
      implements CutPlan {
    public Sheets {
      pieces = List.copyOf(pieces);
    }

    @Override
    public int count() {
      return plan.sheets().size();
    }

    @Override
    public int least() {
      return plan.leastSheets();
    }

    @Override
    public List<Integer> tooLarge() {
      return plan.tooLarge();
    }

    @Override
    public double net() {
      return pieces.stream().mapToDouble(Area::areaMm2).sum();
    }
  }
}

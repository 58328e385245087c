package org.longlow.constraints.law;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.longlow.constraints.layout.LampPart;

/** What the rules in force ask of lamps before they are drawn. */
public final class LampNeeds {

  private LampNeeds() {}

  /**
   * Lamps of one kind in one half of the wheelbase.
   *
   * @param ahead true in the front half
   * @param number how many, a pair counting two
   */
  public record Lamps(LampPart.Kind kind, boolean ahead, int number) {}

  /**
   * Returns what has to be added until each kind is there as often as it is asked for.
   *
   * @param rules ids of the rules in force
   * @param given what is there
   */
  public static List<Lamps> lacking(Collection<String> rules, Collection<Lamps> given) {
    List<Lamps> there = new ArrayList<>(given);
    List<Lamps> lacking = new ArrayList<>();
    // what may be anywhere is served by what must be in one half
    rows(rules)
        .filter(row -> row.asked() == Asked.COUNT)
        .sorted(Comparator.comparing(row -> row.zone() == Row.Zone.ANYWHERE))
        .forEach(
            row -> {
              int more = (int) row.least() - number(row, there);
              if (more > 0) {
                Lamps lamps = new Lamps(row.kind(), row.zone() != Row.Zone.REAR, more);
                there.add(lamps);
                lacking.add(lamps);
              }
            });
    return lacking;
  }

  private static int number(Row row, List<Lamps> there) {
    return there.stream()
        .filter(l -> l.kind() == row.kind() && row.counts(l.ahead()))
        .mapToInt(Lamps::number)
        .sum();
  }

  /**
   * Returns a colour that all rules in force allow.
   *
   * @param usual what is taken where it is allowed, or where nothing is
   */
  public static LampPart.Colour colour(
      Collection<String> rules, LampPart.Kind kind, boolean ahead, LampPart.Colour usual) {
    Set<LampPart.Colour> allowed = EnumSet.allOf(LampPart.Colour.class);
    of(rules, kind, ahead)
        .filter(row -> row.asked() == Asked.COLOUR)
        .forEach(row -> allowed.retainAll(row.colours()));
    return allowed.isEmpty() || allowed.contains(usual) ? usual : allowed.iterator().next();
  }

  /**
   * Returns how high the centre may be above the road, the least and the most, mm; infinite where
   * nobody says.
   *
   * @param halfHeightMm half the height of the lit area
   */
  public static double[] heightsMm(
      Collection<String> rules, LampPart.Kind kind, boolean ahead, double halfHeightMm) {
    double[] heights = {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
    of(rules, kind, ahead)
        .filter(row -> row.asked().isHeight())
        .forEach(
            row -> {
              double edge = row.asked() == Asked.HEIGHT_OF_EDGE ? halfHeightMm : 0;
              heights[0] = Math.max(heights[0], row.least() + edge);
              heights[1] = Math.min(heights[1], row.most() - edge);
            });
    return heights;
  }

  /**
   * Returns how far the centres of left and right must be apart at least, mm; negative infinity
   * where nobody says.
   *
   * @param halfWidthMm half the width of each lit area
   */
  public static double centresApartMm(
      Collection<String> rules, LampPart.Kind kind, double halfWidthMm) {
    return spacing(rules, kind)
        .filter(row -> row.asked() == Asked.CENTRES_APART || row.asked() == Asked.EDGES_APART)
        .mapToDouble(row -> row.least() + (row.asked() == Asked.EDGES_APART ? 2 * halfWidthMm : 0))
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /**
   * Returns how far the lit areas of one kind must be at least from those of another, mm; negative
   * infinity where nobody says.
   */
  public static double gapMm(Collection<String> rules, LampPart.Kind kind, LampPart.Kind other) {
    return spacing(rules, kind)
        .filter(row -> row.asked() == Asked.GAP && row.other().equals(Optional.of(other)))
        .mapToDouble(Row::least)
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  private static Stream<Row> spacing(Collection<String> rules, LampPart.Kind kind) {
    return LawTables.rows().stream()
        .filter(row -> rules.contains(row.rules().id()))
        .filter(row -> row.asked().about() == Asked.Subject.SPACING && row.kind() == kind);
  }

  private static Stream<Row> of(Collection<String> rules, LampPart.Kind kind, boolean ahead) {
    return rows(rules).filter(row -> row.kind() == kind && row.counts(ahead));
  }

  private static Stream<Row> rows(Collection<String> rules) {
    return LawTables.rows().stream()
        .filter(row -> rules.contains(row.rules().id()))
        .filter(row -> row.asked().about() == Asked.Subject.LAMP);
  }
}

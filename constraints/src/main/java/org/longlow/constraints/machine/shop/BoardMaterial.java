package org.longlow.constraints.machine.shop;

import java.util.Optional;

/**
 * How stiff and how strong boards of a material are, on the weak side of what is sold.
 *
 * @param word what the board is of
 * @param modulusNmm2 modulus in bending, N/mm²
 * @param strengthNmm2 stress in bending at which it breaks, of a metal stays bent, N/mm²
 * @param checked whether both were read in the source; else they are from memory
 * @param source where they come from
 */
public record BoardMaterial(
    String word, double modulusNmm2, double strengthNmm2, boolean checked, String source) {

  public static final BoardMaterial PLYWOOD =
      new BoardMaterial(
          "plywood",
          6860,
          37.6,
          true,
          "commercial plywoods as measured, the least stiff and the least strong of them (Journal of"
              + " the Korean Wood Science and Technology 53(4) 429, table 3)");

  static final BoardMaterial STEEL =
      new BoardMaterial(
          "steel",
          205_000,
          235,
          false,
          "steel: modulus of any handbook, yield of the mildest sheet sold (EN 10025, S235), from"
              + " memory");

  static final BoardMaterial ALUMINIUM =
      new BoardMaterial(
          "aluminium",
          69_000,
          80,
          false,
          "aluminium: modulus of any handbook, yield of soft sheet (EN 485-2, 5754 in temper O), from"
              + " memory");

  static final BoardMaterial LAMINATE =
      new BoardMaterial(
          "laminate",
          6000,
          100,
          false,
          "laminate of chopped-strand mat and polyester, 30 % glass: modulus and strength on the low"
              + " side of handbooks, from memory");

  /**
   * Returns that of a cushion's board.
   *
   * @param material the word of the cushion's, empty where it says none: then, and where it is that
   *     of the foam, the board is taken to be plywood
   * @return empty where nothing is known of it
   */
  public static Optional<BoardMaterial> of(String material) {
    return switch (material) {
      case "", "plywood", "foam" -> Optional.of(PLYWOOD);
      case "steel" -> Optional.of(STEEL);
      case "aluminium" -> Optional.of(ALUMINIUM);
      case "laminate" -> Optional.of(LAMINATE);
      default -> Optional.empty();
    };
  }
}

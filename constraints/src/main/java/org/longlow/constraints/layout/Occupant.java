package org.longlow.constraints.layout;

/**
 * A crew member on a seat.
 *
 * @param person the crew's name
 * @param seat the seat's name, such as {@code rider} or {@code passenger}
 */
public record Occupant(String person, String seat) {

  /** The seat of whoever steers. */
  public static final String RIDER = "rider";

  /** The seat behind, unless it is called something else. */
  public static final String PASSENGER = "passenger";

  /** Whether they steer. */
  public boolean rides() {
    return seat.equals(RIDER);
  }

  /** Returns them in words, with the seat where it is not the rider's. */
  public String words() {
    return rides() ? person : person + " as " + seat;
  }

  /**
   * Returns them as in the names of findings, with the seat where it is not the rider's. Dots in
   * the name are doubled, so that nobody's name reads like somebody else's seat.
   */
  public String name() {
    String plain = person.replace(".", "..");
    return rides() ? plain : plain + "." + seat;
  }
}

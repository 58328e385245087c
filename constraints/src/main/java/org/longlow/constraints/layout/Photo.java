package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * A photo that lies under the drawing, to draw over. Nothing is worked out from it.
 *
 * <p>Its pixels are counted from its upper left corner, to the right and down, once it stands
 * upright. They are all of one size, {@code scale}; or else its {@code corners}, those of a
 * rectangle of known {@code width} and {@code height}, tell how the camera stood.
 *
 * @param file a PNG or JPEG file, relative to the folder of the layout file
 * @param view in which it lies
 * @param part with which it moves, in whose axes it lies then; absent for the machine's own
 * @param x where its upper left corner lies, or the rectangle's lower left one
 * @param z likewise
 * @param turn about that corner, from where the photo's (or the rectangle's) lower edge is level
 * @param scale length of a pixel
 * @param corners none, or four: lower left, lower right, upper right, upper left, each with its
 *     pixels to the right and down
 * @param width of the rectangle
 * @param height of the rectangle
 * @param fade how pale it is shown, from 0 to 1, which is not at all
 * @param locked true if pointer and keys leave it where it lies
 * @param hidden true if it is not shown
 * @param note for people, may be empty
 */
public record Photo(
    String file,
    View view,
    Optional<String> part,
    Formula x,
    Formula z,
    Optional<Formula> turn,
    Optional<Formula> scale,
    List<List<Formula>> corners,
    Optional<Formula> width,
    Optional<Formula> height,
    Formula fade,
    boolean locked,
    boolean hidden,
    String note) {

  /** Where a photo can lie. */
  public enum View {
    SIDE
  }

  public Photo {
    corners = corners.stream().map(List::copyOf).toList();
  }
}

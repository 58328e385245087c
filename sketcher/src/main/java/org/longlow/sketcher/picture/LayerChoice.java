package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.page.Page;

/**
 * Which layers of a sheet are drawn. Frame and title block always are; a view beside the elevation
 * has the same layers as that, its own name before theirs.
 */
public final class LayerChoice {

  /** Everything. */
  public static final LayerChoice ALL = new LayerChoice(EnumSet.allOf(PictureLayer.class));

  private static final String LEFT_OUT = "no-";

  private final Set<String> ids;

  private LayerChoice(Set<PictureLayer> layers) {
    ids = layers.stream().map(PictureLayer::id).collect(Collectors.toUnmodifiableSet());
  }

  /**
   * Reads names of layers: those to draw, or those to leave out, each with {@code no-} before it.
   *
   * @throws OutOfRange if a name is no layer, or some are named in either way
   */
  public static LayerChoice of(List<String> names) {
    Set<PictureLayer> named = EnumSet.noneOf(PictureLayer.class);
    List<String> wrong = new ArrayList<>();
    long out = names.stream().filter(n -> n.strip().startsWith(LEFT_OUT)).count();
    for (String name : names) {
      String id = name.strip().replaceFirst("^" + LEFT_OUT, "");
      Arrays.stream(PictureLayer.values())
          .filter(l -> l.id().equals(id))
          .findFirst()
          .ifPresentOrElse(named::add, () -> wrong.add("'" + name.strip() + "'"));
    }
    if (!wrong.isEmpty() || named.isEmpty()) {
      throw new OutOfRange(
          (wrong.isEmpty() ? "no layer is named" : "no layer is called " + String.join(", ", wrong))
              + "; there are "
              + Arrays.stream(PictureLayer.values())
                  .map(PictureLayer::id)
                  .collect(Collectors.joining(", ")));
    }
    if (out > 0 && out < names.size()) {
      throw new OutOfRange(
          "some layers are to be drawn and others left out; name those to draw, or write no- before"
              + " each");
    }
    if (out > 0 && named.contains(PictureLayer.PERSON)) {
      named.add(PictureLayer.SIGHT); // there is no eye to see along it
    }
    return new LayerChoice(out > 0 ? EnumSet.complementOf(EnumSet.copyOf(named)) : named);
  }

  /** Returns a sheet with these layers alone. */
  Page on(Page page) {
    return new Page(
        page.title(),
        page.paper(),
        page.pieces().stream()
            .map(p -> new Page.Piece(on(p.drawing()), p.placement(), p.clip()))
            .toList());
  }

  Drawing on(Drawing drawing) {
    List<Layer> kept = drawing.layers().stream().filter(l -> draws(l.id())).toList();
    return new Drawing(drawing.title(), kept);
  }

  private boolean draws(String id) {
    String own = id.replaceFirst("^(front|plan)-", "");
    boolean known = Arrays.stream(PictureLayer.values()).anyMatch(l -> l.id().equals(own));
    return !known || ids.contains(own);
  }
}

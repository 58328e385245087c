package org.longlow.sketcher.desk;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.mend.Offer;

/**
 * What mends a finding, as far as it is known.
 *
 * @param finding its id
 * @param layout the layout it was asked of
 * @param offers those found so far, the best first
 * @param looking whether more may come
 * @param tried the offer that is shown on the board, if one is
 */
public record Mends(
    String finding, Layout layout, List<Offer> offers, boolean looking, Optional<Offer> tried) {
  public Mends {
    offers = List.copyOf(offers);
  }

  Mends found(List<Offer> all, boolean more) {
    return new Mends(finding, layout, all, more, tried);
  }

  Mends trying(Optional<Offer> offer) {
    return new Mends(finding, layout, offers, looking, offer);
  }

  /**
   * Returns what is found, as it is listed: while it is looked for more, what is there keeps its
   * place, for somebody may be pointing.
   *
   * @param there what is listed already, in its order
   */
  public List<Offer> listed(Collection<Offer> there) {
    return looking ? keepingPlaces(there, offers) : offers;
  }

  static <T> List<T> keepingPlaces(Collection<T> there, List<T> now) {
    Set<T> order = new LinkedHashSet<>(there);
    order.retainAll(now);
    order.addAll(now);
    return List.copyOf(order);
  }
}

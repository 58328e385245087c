package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Copies;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.document.Field;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.document.PinWords;
import org.longlow.constraints.document.Referent;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/**
 * A part of the gallery on its way into a machine: its pins are given places one after the other.
 * Those without a place yet keep to the last that has one, as they do in the gallery; what stands
 * on the ground there stands on the ground here.
 *
 * @param specimen its name in the gallery
 * @param spots of its pins, the first ones first
 */
public record Adding(String specimen, List<PinSpot> spots, Hang hang) implements Putting {

  public Adding {
    spots = List.copyOf(spots);
    if (!Gallery.layout().parts().containsKey(specimen)) {
      throw new IllegalArgumentException("the gallery has no " + specimen);
    }
  }

  /** Begins with nothing placed. */
  public static Adding of(String specimen) {
    return new Adding(specimen, List.of(), Hang.FRAME);
  }

  /** Returns the part as the gallery has it. */
  public Part part() {
    return Gallery.layout().parts().get(specimen);
  }

  @Override
  public String title() {
    return Form.words(specimen);
  }

  @Override
  public String said(Layout layout) {
    return NextSeat.said(layout, part());
  }

  @Override
  public Adding with(PinSpot spot) {
    List<PinSpot> more = new ArrayList<>(spots);
    more.add(spot);
    return new Adding(specimen, more, hang);
  }

  @Override
  public Adding back() {
    return new Adding(specimen, spots.subList(0, Math.max(0, spots.size() - 1)), hang);
  }

  @Override
  public Adding on(Hang other) {
    return new Adding(specimen, spots, other);
  }

  @Override
  public boolean isPlaced() {
    return spots.size() >= part().pins().size();
  }

  @Override
  public String next() {
    if (isPlaced() || part().pins().size() == 1) {
      return "";
    }
    String pin = part().pins().get(spots.size());
    return PinWords.of(part(), pin)
        .orElseGet(() -> pin.substring(specimen.length()).toLowerCase(Locale.ROOT));
  }

  /**
   * Returns where its pins are, by their names in the gallery, so that it can be drawn.
   *
   * @param next where the next pin would be
   */
  public Places places(PointMm next) {
    return Gallery.places().withPins(isPlaced() ? pins() : with(PinSpot.at(next)).pins());
  }

  /** Returns where all of its pins are; at least one has a place. */
  private Map<String, PointMm> pins() {
    Map<String, PointMm> drawn = Gallery.places().pins();
    Map<String, PointMm> pins = new LinkedHashMap<>();
    String last = null;
    for (String pin : part().ownPins()) {
      int i = pins.size();
      PointMm at;
      if (i < spots.size()) {
        at = spots.get(i).at();
      } else {
        PointMm offset = drawn.get(pin).minus(drawn.get(last));
        PointMm beside = pins.get(last).plus(offset);
        at = drawn.get(pin).z() == 0 ? new PointMm(beside.x(), 0) : beside;
      }
      pins.put(pin, at);
      last = pin;
    }
    return pins;
  }

  /**
   * Returns the part that a new one takes the place of: a machine has one wheel, and what carries
   * it, at each end. Its name and the pins that both have stay.
   */
  public Optional<Part> replaced(Layout layout) {
    return part() instanceof Part.AtEnd own
        ? layout
            .parts(Part.AtEnd.class)
            .filter(p -> p.end() == own.end() && p.getClass() == own.getClass())
            .map(Part.class::cast)
            .findFirst()
        : Optional.empty();
  }

  /** Returns the name that it will have in a layout. */
  public String nameIn(Layout layout) {
    return replaced(layout).map(Part::name).orElseGet(() -> Fresh.name(layout, "parts", specimen));
  }

  /**
   * Returns the edit that puts it there, with pins of its own but for those that serve already.
   *
   * @throws IllegalStateException if no pin has a place and the layout has nothing to replace
   */
  @Override
  public Edit edit() {
    return new Edit("add " + specimen, this::added);
  }

  @Override
  public List<Ghost> ghosts(PointMm next) {
    return List.of(new Ghost(part(), places(next)));
  }

  @Override
  public String subjectIn(Layout layout) {
    return Subjects.of(new Entry("parts", nameIn(layout)));
  }

  private Layout added(Layout layout) {
    Optional<Part> old = replaced(layout);
    return old.isPresent() ? replacing(layout, old.get()) : beside(layout);
  }

  private Layout beside(Layout layout) {
    if (spots.isEmpty()) {
      throw new IllegalStateException(specimen + " has no place yet");
    }
    Map<String, PointMm> at = pins();
    List<String> own = part().pins();
    Map<String, String> shared = new LinkedHashMap<>();
    for (int i = 0; i < Math.min(own.size(), spots.size()); i++) {
      String pin = own.get(i);
      spots
          .get(i)
          .shared()
          .filter(layout.pins()::containsKey)
          .ifPresent(there -> shared.put(pin, there));
    }
    String name = nameIn(layout);
    PointMm first = at.get(own.get(0));
    Layout put = NextSeat.seated(layout, put(layout, name, at, shared), name);
    Layout with = LampColour.fitting(put, name, first);
    return hang.hung(with, with.parts().get(name));
  }

  private Layout replacing(Layout layout, Part old) {
    Map<String, String> before = byField(old);
    Map<String, String> shared = new LinkedHashMap<>();
    byField(part())
        .forEach(
            (key, pin) -> {
              if (before.containsKey(key)) {
                shared.put(pin, before.get(key));
              }
            });
    String axle = ((Part.AtEnd) part()).axle();
    Map<String, PointMm> drawn = Gallery.places().pins();
    PointMm shift = Drawn.places(layout).pin(shared.get(axle)).minus(drawn.get(axle));
    Map<String, PointMm> at = new LinkedHashMap<>();
    part().ownPins().forEach(pin -> at.put(pin, drawn.get(pin).plus(shift)));
    Map<String, Part> others = new LinkedHashMap<>(layout.parts());
    others.remove(old.name());
    Layout with = put(Change.set(layout, others, "parts"), old.name(), at, shared);
    return OwnPins.tidied(layout, with, old.name());
  }

  /** Puts the part in, with new pins at these places where none is shared. */
  private Layout put(
      Layout layout, String name, Map<String, PointMm> at, Map<String, String> shared) {
    Map<Entry, String> names = new LinkedHashMap<>();
    Map<String, Pin> pins = new LinkedHashMap<>();
    for (String pin : part().ownPins()) {
      String there = shared.get(pin);
      if (there == null) {
        there = Fresh.name(layout, "pins", OwnPins.name(name, pin.substring(specimen.length())));
        pins.put(there, pin(pin, at.get(pin)));
      }
      names.put(new Entry("pins", pin), there);
    }
    Layout roomy = layout.withPins(pins);
    names.put(new Entry("parts", specimen), name);
    return Copies.into(roomy, Gallery.layout(), names);
  }

  private Pin pin(String pin, PointMm at) {
    Pin drawn = Gallery.layout().pins().get(pin);
    String with = drawn.with().equals(Pin.FRAME) ? hang.carrier() : drawn.with();
    return new Pin(
        Formula.of(at.x(), Unit.MM), Formula.of(at.z(), Unit.MM), false, with, drawn.note());
  }

  /** Returns a part's pins by the fields that name them. */
  private static Map<String, String> byField(Part part) {
    Map<String, String> pins = new LinkedHashMap<>();
    for (Field<Part, ?> field : Document.PART.<Part>kind(part).fields()) {
      Type<?> type = field.type() instanceof Type.Maybe<?> maybe ? maybe.inner() : field.type();
      Object value = field.of(part);
      Object bare = value instanceof Optional<?> maybe ? maybe.orElse(null) : value;
      if (type instanceof Type.Ref ref && ref.to() == Referent.PIN && bare != null) {
        pins.put(field.key(), (String) bare);
      }
    }
    return pins;
  }
}

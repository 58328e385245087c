package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.document.Entries;

/** What an edit is about: a quantity of a layout that can be typed over, or a thing of it. */
public sealed interface Target {

  /** Returns what the quantity is called in messages and in the history. */
  String name();

  /** Returns where it stands in the document, by keys, names and indices. */
  List<String> path();

  /** A thing as a whole, such as when it is renamed or taken out. */
  record OfEntry(Entries.Entry entry) implements Target {
    @Override
    public List<String> path() {
      return List.of(entry.group(), entry.name());
    }

    @Override
    public String name() {
      return entry.name();
    }
  }

  /** The value or formula of a measure. */
  record OfMeasure(String measure) implements Target {
    @Override
    public List<String> path() {
      return List.of("measures", measure, "is");
    }

    @Override
    public String name() {
      return measure;
    }
  }

  /**
   * A field of a part.
   *
   * @param within where in the part, such as layers, 1, thickness
   */
  record OfPart(String part, List<String> within, String label) implements Target {
    @Override
    public List<String> path() {
      List<String> path = new ArrayList<>(List.of("parts", part));
      path.addAll(within);
      return path;
    }

    @Override
    public String name() {
      return part + " " + label;
    }
  }

  /**
   * A field of anything else.
   *
   * @param path from the top; the name of the thing comes second where it has one
   */
  record OfField(List<String> path, String label) implements Target {
    @Override
    public String name() {
      return path.size() > 2 ? path.get(1) + " " + label : label;
    }
  }

  /**
   * What was measured of a thing on the machine that was made.
   *
   * @param field of what is said of the machine as built, such as masses
   * @param of the name of the thing
   * @param place 0 for x and 1 for z of a pin; empty else
   */
  record OfBuilt(String field, String of, String place, String label) implements Target {

    List<String> whole() {
      return List.of("asBuilt", field, of);
    }

    @Override
    public List<String> path() {
      return place.isEmpty() ? whole() : List.of("asBuilt", field, of, place);
    }

    @Override
    public String name() {
      return of + " " + label;
    }
  }

  /**
   * A coordinate of a pin.
   *
   * @param x true for x, false for z
   */
  record OfPin(String pin, boolean x) implements Target {
    @Override
    public List<String> path() {
      return List.of("pins", pin, "at", x ? "0" : "1");
    }

    @Override
    public String name() {
      return pin + (x ? " x" : " z");
    }
  }

  /** What a tie holds its quantity to. */
  record OfTie(String tie) implements Target {
    @Override
    public List<String> path() {
      return List.of("ties", tie, "is");
    }

    @Override
    public String name() {
      return "tie " + tie;
    }
  }

  /**
   * One end of a limit.
   *
   * @param from true for the smallest value allowed, false for the largest
   */
  record OfLimit(String limit, boolean from) implements Target {
    @Override
    public List<String> path() {
      return List.of("limits", limit, from ? "from" : "to");
    }

    @Override
    public String name() {
      return "limit " + limit + (from ? " from" : " to");
    }
  }

  /**
   * A quantity of a crew member.
   *
   * @param stature true for stature, false for mass
   */
  record OfPerson(String person, boolean stature) implements Target {
    @Override
    public List<String> path() {
      return List.of("crew", person, stature ? "stature" : "mass");
    }

    @Override
    public String name() {
      return person + (stature ? " stature" : " mass");
    }
  }
}

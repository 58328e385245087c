package org.longlow.constraints.check.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Occupant;

/**
 * What a finding is about.
 *
 * @param words what it is about, in the user's names
 * @param parts the parts it is about, may be empty
 * @param who the person it is about, on which seat, if it is about one
 * @param path what tells it from others of its kind, in order; for names only, never read back
 */
public record About(String words, List<String> parts, Optional<Occupant> who, List<String> path) {

  public About {
    parts = List.copyOf(parts);
    path = List.copyOf(path);
  }

  /** Returns something that is no part and nobody, such as the layout or a tie. */
  public static About thing(String words, String... path) {
    return new About(words, List.of(), Optional.empty(), List.of(path));
  }

  /** Returns parts, in words such as {@code tank and rail}. */
  public static About parts(String... names) {
    List<String> parts = List.of(names);
    return new About(String.join(" and ", parts), parts, Optional.empty(), parts);
  }

  /** Returns lamps by their parts. */
  public static About lamps(List<String> parts) {
    return new About(String.join(", ", parts), parts, Optional.empty(), List.of());
  }

  /**
   * Returns something about a person on a seat.
   *
   * @param aspect what of them, in words, such as {@code hands}; may be empty
   * @param path what tells it from others about them
   */
  public static About person(Occupant who, String aspect, String... path) {
    List<String> all = new ArrayList<>(List.of(who.name()));
    all.addAll(List.of(path));
    String words = aspect.isEmpty() ? who.words() : who.words() + ", " + aspect;
    return new About(words, List.of(), Optional.of(who), all);
  }

  /** Returns what of its person it is about, where it is about one; else all of its words. */
  public String aspect() {
    String person = who.map(w -> w.words() + ", ").orElse("");
    return words.startsWith(person) ? words.substring(person.length()) : words;
  }

  /**
   * Returns what is asked of it, alike for other people and, where it names nothing but parts and
   * people, for others of them; for telling what is alike, never read back.
   */
  String question() {
    return parts.isEmpty() || !aspect().equals(words) ? aspect() : "";
  }

  /** Returns a part beside a person on a seat. */
  public static About beside(String part, Occupant who) {
    return new About(
        part + " and " + who.words(), List.of(part), Optional.of(who), List.of(part, who.name()));
  }

  /** Returns this as about a part too. */
  public About on(String part) {
    return new About(words, List.of(part), who, path);
  }

  /** Returns this in other words. */
  public About said(String other) {
    return new About(other, parts, who, path);
  }

  /** Returns this as told from others by {@code path} alone. */
  public About named(String... other) {
    return new About(words, parts, who, List.of(other));
  }

  /** Returns this as what {@code first} comes before in names. */
  public About under(String first) {
    List<String> longer = new ArrayList<>(List.of(first));
    longer.addAll(path);
    return new About(words, parts, who, longer);
  }

  /** Returns this as what concerns somebody too. */
  public About with(Occupant person) {
    return new About(words, parts, Optional.of(person), path);
  }
}

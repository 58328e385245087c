package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.longlow.constraints.layout.Formers;
import org.longlow.constraints.layout.Part;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/** What cannot be made as it is asked for of the formers of a part, and what mends it. */
public final class FormerFaults {

  private FormerFaults() {}

  /**
   * Something that cannot be made as it is asked for.
   *
   * @param of the former or stringer; empty for all of them
   * @param says what is wrong and what to do, without its name
   */
  public record Fault(String of, Words says) {

    /** Returns all of it as one line. */
    public Words line() {
      return of.isEmpty() ? says : Words.of(of, ": ", says);
    }
  }

  /** Returns what the places of formers and stringers tell, before anything is cut. */
  public static List<Fault> placed(Part part, Places places) {
    if (!(part instanceof Part.Outlined outlined)
        || outlined.formers().isEmpty()
        || part.base().spread().isEmpty()) {
      return List.of();
    }
    Optional<Slices> slices = FormerCuts.slices(outlined, 0, Fineness.BODY, places);
    if (slices.isEmpty()) {
      return List.of(
          new Fault(
              "",
              Words.of(
                  "no formers can be made under its line, which is straight or crosses the straight"
                      + " line between its ends; close the outline or take the formers out")));
    }
    List<FormerCuts.Place> asked = FormerCuts.places(outlined.formers(), slices.get(), places);
    List<FormerCuts.Place> within = new ArrayList<>();
    Map<String, Fault> faults = new LinkedHashMap<>();
    for (FormerCuts.Place p : asked) {
      Interval reach = slices.get().extent(p.way());
      String axis = p.way() == Slices.Way.ACROSS ? "x " : "y ";
      if (p.at() < reach.from() || p.at() > reach.to()) {
        faults.put(
            p.name(),
            new Fault(
                p.name(),
                Words.of(
                    "nothing to cut at " + axis,
                    mm(p.at()),
                    ", the part reaches from ",
                    Words.bare(reach.from(), FigureSort.LENGTH),
                    " to ",
                    mm(reach.to()),
                    "; give it a place within")));
        continue;
      }
      within.add(p);
      if (p.thicknessMm() >= reach.length()) {
        faults.put(
            p.name(),
            new Fault(
                p.name(),
                Words.of(
                    "its sheet of ",
                    mm(p.thicknessMm()),
                    " is as thick as the part is "
                        + (p.way() == Slices.Way.ACROSS ? "long, " : "broad, "),
                    mm(reach.length()),
                    "; take thinner sheet")));
      }
    }
    tooMany(outlined.formers(), slices.get(), places).ifPresent(f -> faults.put(f.of(), f));
    for (FormerCuts.Batten b : FormerCuts.battens(outlined, outlined.formers(), places)) {
      if (within.stream().noneMatch(p -> reaches(b, p, slices.get()))) {
        faults.put(b.name(), missesAll(b.name()));
      }
    }
    return List.copyOf(faults.values());
  }

  /** A spacing that asks for more formers than one part may have: none of them is made. */
  private static Optional<Fault> tooMany(Formers asked, Slices slices, Places places) {
    long n = FormerCuts.spaced(asked, slices, places);
    if (n <= Formers.MOST) {
      return Optional.empty();
    }
    Interval reach = slices.extent(Slices.Way.ACROSS);
    return Optional.of(
        new Fault(
            "every",
            Words.of(
                "a former every ",
                mm(places.value(asked.every().orElseThrow())),
                " makes "
                    + n
                    + " of them, allowed: "
                    + Formers.MOST
                    + "; none of these is made;"
                    + " take a spacing of more than ",
                mm(reach.length() / Formers.MOST))));
  }

  /** Returns all that cannot be made as it is asked for: as placed, and as it was cut. */
  public static List<Fault> of(Part part, Places places) {
    List<Fault> faults = new ArrayList<>(placed(part, places));
    if (!(part instanceof Part.Outlined outlined)
        || faults.stream().anyMatch(f -> f.of().isEmpty())) {
      return faults;
    }
    List<String> told = faults.stream().map(Fault::of).collect(Collectors.toList());
    List<FormerCut> cuts = FormerCuts.of(part, places);
    List<String> cut = cuts.stream().map(FormerCut::name).toList();
    FormerCuts.asked(outlined, places).stream()
        .filter(name -> !cut.contains(name) && !told.contains(name))
        .map(
            name ->
                new Fault(
                    name,
                    Words.of("nothing to cut, only the skin is there; move it farther inward")))
        .forEach(faults::add);
    for (FormerCut c : cuts) {
      if (c.other().isEmpty() && !told.contains(c.name())) {
        faults.add(
            new Fault(
                c.name(),
                Words.of(
                    "its sheet of ",
                    mm(c.thicknessMm()),
                    " stands out of the part with its other face; move it inward or take thinner"
                        + " sheet")));
      }
      c.flange()
          .filter(FormerCut.Flange::tooNarrow)
          .ifPresent(
              f ->
                  faults.add(
                      new Fault(
                          c.name(),
                          Words.of(
                              "its rim of ",
                              mm(f.breadthMm()),
                              " cannot be folded so, the fold alone takes ",
                              mm(f.setBackMm()),
                              "; nothing is taken off for it; make the rim broader or its sheet"
                                  + " thinner"))));
      if (c.fallsApart()) {
        faults.add(
            new Fault(
                c.name(),
                Words.of(
                    "its notches cut it apart; let stringers in less deep, or put them elsewhere")));
      }
      if (c.line().getNumGeometries() > 1) {
        faults.add(
            new Fault(
                c.name(),
                Words.of(
                    "in "
                        + c.line().getNumGeometries()
                        + " pieces, as the part is there; notches"
                        + " are let into the largest")));
      }
    }
    FormerCuts.battens(outlined, outlined.formers(), places).stream()
        .map(FormerCuts.Batten::name)
        .distinct()
        .filter(name -> !told.contains(name))
        .filter(name -> notches(cuts).noneMatch(n -> n.name().equals(name)))
        .map(FormerFaults::missesAll)
        .forEach(faults::add);
    return faults;
  }

  private static Stream<FormerCut.Notch> notches(List<FormerCut> cuts) {
    return cuts.stream().flatMap(c -> c.notches().stream());
  }

  private static Fault missesAll(String stringer) {
    return new Fault(
        stringer,
        Words.of(
            "this stringer meets no former across; give it another height, or formers where it"
                + " runs"));
  }

  /** Whether a stringer may meet a former, by how high the part is anywhere. */
  private static boolean reaches(FormerCuts.Batten b, FormerCuts.Place p, Slices slices) {
    if (p.way() != Slices.Way.ACROSS) {
      return false;
    }
    DoubleSummaryStatistics high =
        slices.lofts().stream()
            .flatMap(l -> l.ring().stream())
            .mapToDouble(Girth::z)
            .summaryStatistics();
    double z = b.lineMm() - b.perMm() * p.at();
    return !Double.isNaN(b.girth()) || z >= high.getMin() && z <= high.getMax();
  }

  private static Words mm(double value) {
    return Words.figure(value, FigureSort.LENGTH);
  }
}

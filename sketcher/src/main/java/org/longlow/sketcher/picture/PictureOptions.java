package org.longlow.sketcher.picture;

import java.util.Collection;
import java.util.List;
import java.util.Set;

/**
 * What an elevation shows.
 *
 * @param person who is seated; empty takes the first of the crew who has a seat
 * @param ghosts others of the crew, dashed
 * @param stance name of a stance; empty takes the laden stance of {@code person}, or the machine as
 *     drawn
 * @param sections sections whose open position is shown by phantom lines
 * @param findings ids of findings to mark, numbered from 1 in this order; those without a place
 *     keep their number but have no mark
 * @param chosen subject to bring out, such as {@code part:tank}, or empty
 * @param pins whether pins are shown with their names
 * @param freedoms whether the pins that can still move show where to
 * @param names whether larger parts are named
 * @param dimensions whether wheelbase, rake, trail and the main heights are written
 * @param denominator N of the scale 1:N at which the drawing will be shown, greater than 0
 */
public record PictureOptions(
    String person,
    Set<String> ghosts,
    String stance,
    Set<String> sections,
    List<String> findings,
    String chosen,
    boolean pins,
    boolean freedoms,
    boolean names,
    boolean dimensions,
    double denominator) {

  /** The machine with its first rider, no dimensions, for showing at 1:10. */
  public static final PictureOptions PLAIN =
      new PictureOptions("", Set.of(), "", Set.of(), List.of(), "", false, false, false, false, 10);

  public PictureOptions {
    ghosts = Set.copyOf(ghosts);
    sections = Set.copyOf(sections);
    findings = List.copyOf(findings);
    if (!(denominator > 0) || !Double.isFinite(denominator)) {
      throw new IllegalArgumentException(
          "scale denominator is " + denominator + "; allowed: finite, greater than 0");
    }
  }

  public PictureOptions withPerson(String name) {
    return new PictureOptions(
        name,
        ghosts,
        stance,
        sections,
        findings,
        chosen,
        pins,
        freedoms,
        names,
        dimensions,
        denominator);
  }

  public PictureOptions withGhosts(Set<String> people) {
    return new PictureOptions(
        person,
        people,
        stance,
        sections,
        findings,
        chosen,
        pins,
        freedoms,
        names,
        dimensions,
        denominator);
  }

  public PictureOptions withStance(String name) {
    return new PictureOptions(
        person,
        ghosts,
        name,
        sections,
        findings,
        chosen,
        pins,
        freedoms,
        names,
        dimensions,
        denominator);
  }

  public PictureOptions withSections(Set<String> open) {
    return new PictureOptions(
        person,
        ghosts,
        stance,
        open,
        findings,
        chosen,
        pins,
        freedoms,
        names,
        dimensions,
        denominator);
  }

  public PictureOptions withFindings(Collection<String> ids) {
    return new PictureOptions(
        person,
        ghosts,
        stance,
        sections,
        List.copyOf(ids),
        chosen,
        pins,
        freedoms,
        names,
        dimensions,
        denominator);
  }

  public PictureOptions withChosen(String subject) {
    return new PictureOptions(
        person,
        ghosts,
        stance,
        sections,
        findings,
        subject,
        pins,
        freedoms,
        names,
        dimensions,
        denominator);
  }

  public PictureOptions withPins(boolean shown) {
    return new PictureOptions(
        person,
        ghosts,
        stance,
        sections,
        findings,
        chosen,
        shown,
        freedoms,
        names,
        dimensions,
        denominator);
  }

  public PictureOptions withFreedoms(boolean shown) {
    return new PictureOptions(
        person,
        ghosts,
        stance,
        sections,
        findings,
        chosen,
        pins,
        shown,
        names,
        dimensions,
        denominator);
  }

  public PictureOptions withNames(boolean shown) {
    return new PictureOptions(
        person,
        ghosts,
        stance,
        sections,
        findings,
        chosen,
        pins,
        freedoms,
        shown,
        dimensions,
        denominator);
  }

  public PictureOptions withDimensions(boolean shown) {
    return new PictureOptions(
        person,
        ghosts,
        stance,
        sections,
        findings,
        chosen,
        pins,
        freedoms,
        names,
        shown,
        denominator);
  }

  public PictureOptions withDenominator(double n) {
    return new PictureOptions(
        person, ghosts, stance, sections, findings, chosen, pins, freedoms, names, dimensions, n);
  }
}

package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.FurtherBody;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.Station;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.shape.FlatPiece;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Unrolled;
import org.longlow.rider.words.Decimals;
import org.longlow.rider.words.Words;
import org.longlow.svg.drawing.Dimensions;

/** What a template says of a part whose breadth varies, so that nobody cuts a flat side for it. */
final class BreadthWords {

  /** What is said of flat patterns of a body of which nothing tells how thick its sheet is. */
  static final String NO_THICKNESS =
      "NO THICKNESS reckoned: lengths are those of its outer face; give formers a skin to have it";

  private BreadthWords() {}

  /** Returns how broad a part is that is as broad everywhere, each piece of it. */
  static Optional<String> even(PartShape shape, TemplateFigures figures) {
    if (shape.part() instanceof Part.Flat flat
        && !(flat.bodies().isEmpty() && flat.breadth().isEven(flat.outline()))) {
      return Optional.empty();
    }
    return shape.prisms().stream()
        .map(Prism::across)
        .max(Comparator.comparingDouble(Interval::to))
        .map(
            a ->
                figures.mm(a.length())
                    + " broad throughout, from "
                    + figures.bare(a.from())
                    + " to "
                    + figures.mm(a.to())
                    + " left of the middle"
                    + (shape.part().paired() ? ", and its mirror image" : ""));
  }

  /**
   * Returns the words for a solid; none where it is one body as broad everywhere and is not made of
   * sheet.
   */
  static List<String> solid(
      Part.Flat part, Optional<Unrolled> sheet, Places places, TemplateFigures figures) {
    List<String> lines = new ArrayList<>();
    sheet.ifPresent(u -> lines.addAll(pieces(u, figures)));
    if (part.bodies().isEmpty() && part.breadth().isEven(part.outline())) {
      return lines;
    }
    if (sheet.isEmpty() && !part.breadth().isEven(part.outline())) {
      lines.add("ITS SIDES ARE NOT FLAT: cut no flat side to this line");
    }
    lines.addAll(reaches(part.outline(), part.breadth(), "", places, figures));
    int k = 0;
    for (FurtherBody body : part.bodies()) {
      k++;
      String name = body.name().isEmpty() ? "body " + k : body.name();
      lines.add(
          name
              + ": a body of its own, from "
              + figures.bare(-places.value(body.spread().right()))
              + " to "
              + figures.mm(places.value(body.spread().left()))
              + " left of the middle"
              + (body.spread().both() ? ", and its mirror image" : ""));
      lines.addAll(reaches(body.outline(), body.breadth(), name + " ", places, figures));
    }
    return lines;
  }

  /** Returns the words for a shell, and for what it is cut from. */
  static List<String> shell(
      ShellPart shell, Unrolled unrolled, Places places, TemplateFigures figures) {
    String material = shell.base().material();
    List<String> lines = new ArrayList<>();
    if (!material.isEmpty()) {
      lines.add(material);
    }
    lines.addAll(pieces(unrolled, figures));
    if (!unrolled.even()) {
      lines.addAll(reaches(shell.outline(), shell.breadth(), "", places, figures));
    }
    return lines;
  }

  /** Returns the words for what a sheet is cut from. */
  private static List<String> pieces(Unrolled sheet, TemplateFigures figures) {
    List<String> lines = new ArrayList<>();
    if (sheet.wrapped()) {
      lines.add("ITS SIDES ARE ROUND: cut no flat side to this line; flat patterns have sheets of");
      lines.add("their own: " + names(sheet));
    } else if (sheet.needsFormers()) {
      lines.add(
          "ITS SIDES ARE NOT FLAT and bend two ways: no flat pattern, build it over formers,");
      lines.add("cut no flat side to this line");
    } else if (sheet.panel()) {
      lines.add("one flat sheet: make " + sheet.sides() + " to this line");
    } else if (sheet.even() && sheet.sides() > 0) {
      lines.add("make " + sheet.sides() + " sides to this line, half of them turned over");
    } else if (sheet.sides() > 0) {
      lines.add("ITS SIDES ARE NOT FLAT: make " + sheet.sides() + ", bent along; each is");
      lines.add(
          figures.mm(sheet.sideLongMm())
              + " long before it is bent, longer than this line: cut by its flat pattern");
    }
    lines.addAll(faults(sheet, figures));
    if (sheet.strip().isEmpty()) {
      return lines;
    }
    String make =
        "make " + sheet.strips() + (sheet.strips() == 1 ? " edge strip, " : " edge strips, ");
    if (sheet.even()) {
      lines.add(
          make
              + figures.bare(sheet.stripLongMm())
              + " x "
              + figures.mm(sheet.stripWideMm())
              + ", bent along "
              + (sheet.sides() > 0 ? "the edge between the sides" : "this line")
              + (sheet.stripFolds().isEmpty() ? "" : "; folds"));
      lines.addAll(folds(sheet, figures));
    } else {
      lines.add(make + figures.mm(sheet.stripLongMm()) + " long; how far along it is how wide:");
      sheet
          .strip()
          .forEach(
              w ->
                  lines.add(
                      "    "
                          + w.where()
                          + ": at "
                          + figures.bare(w.alongMm())
                          + " it is "
                          + figures.mm(w.wideMm())));
    }
    return lines;
  }

  /** What cannot be folded as it is drawn. */
  private static List<String> faults(Unrolled sheet, TemplateFigures figures) {
    List<String> lines = new ArrayList<>();
    for (Words fault : sheet.faults()) {
      lines.addAll(TemplateWords.wrapped("TAKE CARE, " + fault.in(figures.units())));
    }
    if (!lines.isEmpty()) {
      lines.add("its lengths are as drawn, WITHOUT what folds take");
    }
    return lines;
  }

  private static String names(Unrolled sheet) {
    return sheet.patterns().stream().map(FlatPiece::what).collect(Collectors.joining(", "));
  }

  /** Where a strip is folded, from where it begins. */
  private static List<String> folds(Unrolled sheet, TemplateFigures figures) {
    return sheet.stripFolds().stream()
        .map(
            f ->
                "    at "
                    + figures.mm(f.alongMm())
                    + ": "
                    + Dimensions.figure(Math.abs(Math.toDegrees(f.rad())))
                    + (f.rad() > 0 ? "° inward" : "° outward"))
        .toList();
  }

  /** How far it reaches at stations and points, and what it looks like cut across. */
  private static List<String> reaches(
      Outline outline, Breadth breadth, String of, Places places, TemplateFigures figures) {
    List<String> lines = new ArrayList<>();
    int k = 0;
    for (Station s : breadth.stations()) {
      k++;
      lines.add(
          of
              + (s.name().isEmpty() ? "station " + k : s.name())
              + " (x "
              + figures.bare(places.value(s.x()))
              + " of its own axes): "
              + reach(s.reach(), places, figures));
    }
    k = 0;
    for (Vertex v : outline.vertices()) {
      k++;
      if (v.reach().isPresent()) {
        lines.add(of + "point " + k + ": " + reach(v.reach().get(), places, figures));
      }
    }
    Profile profile = breadth.profile();
    if (!profile.drawn().isEmpty()) {
      lines.add(
          of
              + "cut across, up and out as shares: "
              + profile.drawn().stream()
                  .map(s -> share(places.value(s.up())) + " " + share(places.value(s.out())))
                  .collect(Collectors.joining(", ")));
    } else if (profile.corner().isPresent()) {
      lines.add(of + "edges rounded R" + figures.mm(places.value(profile.corner().get())));
    } else if (profile.shape() == Profile.Shape.ROUND) {
      lines.add(of + "edges as round as its height and breadth allow");
    } else if (profile.shape() == Profile.Shape.OVAL) {
      lines.add(of + "oval, cut across");
    }
    return lines;
  }

  private static String reach(HalfBreadths reach, Places places, TemplateFigures figures) {
    return "reaches "
        + figures.bare(places.value(reach.leftOrRight()))
        + " left, "
        + figures.mm(places.value(reach.rightOrLeft()))
        + " right";
  }

  private static String share(double share) {
    return Decimals.upTo(2, share);
  }
}

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
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Unrolled;
import org.longlow.rider.words.Decimals;

/** What a template says of a part whose breadth varies, so that nobody cuts a flat side for it. */
final class BreadthWords {

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

  /** Returns the words for a solid; none where it is one body as broad everywhere. */
  static List<String> solid(Part.Flat part, Places places, TemplateFigures figures) {
    if (part.bodies().isEmpty() && part.breadth().isEven(part.outline())) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    if (!part.breadth().isEven(part.outline())) {
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
    if (unrolled.needsFormers()) {
      lines.add("ITS SIDES ARE NOT FLAT and bend two ways: build it over formers, cut no flat");
      lines.add("side to this line");
    } else if (unrolled.sides() > 0) {
      lines.add("ITS SIDES ARE NOT FLAT: make " + unrolled.sides() + ", bent along; each is");
      lines.add(
          figures.mm(unrolled.sideLongMm())
              + " long before it is bent, longer than this line: cut by its flat pattern");
    }
    if (!unrolled.strip().isEmpty()) {
      lines.add(
          "make "
              + unrolled.strips()
              + " edge strip, "
              + figures.mm(unrolled.stripLongMm())
              + " long; how far along it is how wide:");
      lines.addAll(
          unrolled.strip().stream()
              .map(
                  w ->
                      "    "
                          + w.where()
                          + ": at "
                          + figures.bare(w.alongMm())
                          + " it is "
                          + figures.mm(w.wideMm()))
              .toList());
    }
    lines.addAll(reaches(shell.outline(), shell.breadth(), "", places, figures));
    return lines;
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

package org.longlow.sketcher.edit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.words.Names;

/**
 * A layout with one of each kind of part: the first values of what is added to a machine, and its
 * picture until then. Sizes and masses are usual ones, from practice without a source.
 */
public final class Gallery {

  private Gallery() {}

  private static final class Held {
    static final Layout LAYOUT = read();

    private Held() {}

    private static Layout read() {
      try (InputStream in = Gallery.class.getResourceAsStream("gallery.json")) {
        ReadResult result =
            LayoutReader.read(new String(in.readAllBytes(), StandardCharsets.UTF_8), null);
        if (result instanceof ReadResult.Refused refused) {
          throw new IllegalStateException("the gallery has faults: " + refused.faults());
        }
        return ((ReadResult.Read) result).layout();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /**
   * A part of the gallery.
   *
   * @param title for people, such as plate lamp
   * @param kind as files have it, with its word of a second kind, such as lamp headlamp
   * @param help one sentence
   */
  public record Specimen(String name, String title, String kind, String help) {

    /** Returns whether all words of what is searched for begin a word that it is described by. */
    public boolean matches(String search) {
      List<String> described = List.of((title + " " + kind).toLowerCase(Locale.ROOT).split("\\W+"));
      return List.of(search.strip().toLowerCase(Locale.ROOT).split("\\s+")).stream()
          .allMatch(word -> described.stream().anyMatch(d -> d.startsWith(word)));
    }

    public Part part() {
      return layout().parts().get(name);
    }
  }

  public static Layout layout() {
    return Held.LAYOUT;
  }

  /** Returns all of it, in its order. */
  public static List<Specimen> specimens() {
    return layout().parts().values().stream().map(Gallery::specimen).toList();
  }

  private static Specimen specimen(Part part) {
    return new Specimen(
        part.name(), Form.words(part.name()), kind(part), Document.PART.kind(part).help());
  }

  private static String kind(Part part) {
    String second =
        part instanceof LampPart lamp
            ? Names.word(lamp.type())
            : part instanceof FrontPart front
                ? Names.word(front.type())
                : part instanceof StandPart stand && stand.type() != StandPart.Kind.SIDE
                    ? Names.word(stand.type())
                    : part instanceof CushionPart cushion ? Names.word(cushion.role()) : "";
    return (part.kind() + " " + second).strip();
  }

  /** Returns where its pins are; nothing in it is left to a solver. */
  public static Places places() {
    return Drawn.places(layout());
  }
}

package org.longlow.sketcher.fx;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.input.KeyEvent;
import org.longlow.sketcher.desk.Habits;

/**
 * How large letters are. All lengths that hold words grow with them: those of the style sheet here,
 * those of what is laid out by hand by {@link #of}. Lines, edges and rounding stay as they are.
 */
final class TextSize {

  /** The sizes there are, per cent. */
  private static final int[] STEPS = {80, 90, 100, 110, 125, 150, 175, 200};

  private static final String SHEET = "bench.css";

  /** What holds words or lies round them; widths of borders and insets are left out. */
  private static final Pattern LENGTHS =
      Pattern.compile(
          "(-fx-(?:font-size|padding|label-padding|graphic-text-gap|spacing|hgap|vgap"
              + "|(?:min|pref|max)-(?:width|height)|pref-wrap-length)\\s*:)([^;}]*)");

  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

  private final Parent root;
  private final Runnable changed;
  private int percent = Habits.USUAL_TEXT;

  /**
   * @param root of the window, which gets the style sheet
   * @param changed is run after letters became larger or smaller
   */
  TextSize(Parent root, Runnable changed) {
    this.root = root;
    this.changed = changed;
    root.getProperties().put(TextSize.class, this);
    root.getStylesheets().setAll(sheet(percent));
  }

  int percent() {
    return percent;
  }

  /** Makes letters so large, per cent; everything is laid out anew. */
  void use(int next) {
    if (next != percent) {
      percent = next;
      root.getStylesheets().setAll(sheet(next));
      changed.run();
    }
  }

  private void step(int by) {
    use(stepped(percent, by));
  }

  /** Takes the keys that change it; returns whether one was meant. */
  boolean key(KeyEvent e) {
    if (!e.isShortcutDown() || e.isAltDown()) {
      return false;
    }
    switch (e.getCode()) {
      case PLUS, EQUALS, ADD -> step(1);
      case MINUS, SUBTRACT -> step(-1);
      case DIGIT0, NUMPAD0 -> use(Habits.USUAL_TEXT);
      default -> {
        return false;
      }
    }
    return true;
  }

  List<Deed> deeds() {
    return List.of(
        new Deed("larger letters", "Ctrl +", () -> step(1)),
        new Deed("smaller letters", "Ctrl \u2212", () -> step(-1)),
        new Deed("letters of the usual size", "Ctrl 0", () -> use(Habits.USUAL_TEXT)));
  }

  /** Returns the size {@code by} steps larger, per cent; it stays at the ends. */
  static int stepped(int percent, int by) {
    int nearest = 0;
    for (int i = 0; i < STEPS.length; i++) {
      if (Math.abs(STEPS[i] - percent) < Math.abs(STEPS[nearest] - percent)) {
        nearest = i;
      }
    }
    return STEPS[Math.max(0, Math.min(STEPS.length - 1, nearest + by))];
  }

  /** Returns how much larger than usual the letters round a node are, as a factor. */
  static double of(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (n.getProperties().get(TextSize.class) instanceof TextSize size) {
        return size.percent / 100.0;
      }
    }
    return 1;
  }

  /** Returns the address of the style sheet at a size. */
  static String sheet(int percent) {
    if (percent == Habits.USUAL_TEXT) {
      return TextSize.class.getResource(SHEET).toExternalForm();
    }
    try (InputStream in = TextSize.class.getResourceAsStream(SHEET)) {
      String css = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      byte[] sized = sized(css, percent / 100.0).getBytes(StandardCharsets.UTF_8);
      return "data:text/css;charset=UTF-8;base64," + Base64.getEncoder().encodeToString(sized);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns a style sheet with all that holds words larger by a factor. */
  static String sized(String css, double factor) {
    return LENGTHS
        .matcher(css)
        .replaceAll(m -> Matcher.quoteReplacement(m.group(1) + larger(m.group(2), factor)));
  }

  private static String larger(String lengths, double factor) {
    return NUMBER
        .matcher(lengths)
        .replaceAll(
            n -> String.format(Locale.ROOT, "%.2f", Double.parseDouble(n.group()) * factor));
  }
}

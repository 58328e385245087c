package org.longlow.constraints.machine.chassis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.longlow.constraints.machine.chassis.TyreSize.Construction;
import org.longlow.constraints.machine.chassis.TyreSize.Reading;
import org.longlow.constraints.machine.chassis.TyreSize.Series;

/** Reads tyre sizes: tolerant of spacing, case and sidewall extras, strict about the numbers. */
public final class TyreSizeReader {

  private static final String EXAMPLES = "write it like 120/70 R17, MT90-16 or 3.50-18";

  /** Load index and speed letter, M/C, tube and strength marks that may follow a size. */
  private static final String EXTRAS =
      "((?:\\s*(?:M/C|TL|TT|REINF|RF|[FR]RONT|REAR|\\(?\\d{2,3}\\s*[A-Z]\\)?))*)\\s*";

  private static final Pattern LOAD_INDEX = Pattern.compile("(\\d{2,3})\\s*[A-Z]");

  /** Speed letters may stand before the construction letter, as in ZR or HB. */
  private static final String BUILD = "\\s*([A-Z]?(?:R|B|D|-)|[HSVW]|)\\s*";

  private static final Pattern METRIC =
      Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*/\\s*(\\d+(?:\\.\\d+)?)" + BUILD + "(\\d+)" + EXTRAS);
  private static final Pattern ALPHABETIC =
      Pattern.compile("M([A-Z])\\s*(\\d+)" + BUILD + "(\\d{2})" + EXTRAS);
  private static final Pattern INCH =
      Pattern.compile("(\\d{1,2}\\.\\d{1,2})" + BUILD + "(\\d+)" + EXTRAS);

  /**
   * Section width of each width letter, mm. H, J, M, N, P, R, T, U, V from a retailer's published
   * conversion chart; L (90 to 100) and S (120 to 130) from memory, the middle is used.
   */
  private static final Map<Character, Double> LETTER_WIDTH_MM =
      Map.ofEntries(
          Map.entry('H', 80.0),
          Map.entry('J', 90.0),
          Map.entry('L', 95.0),
          Map.entry('M', 100.0),
          Map.entry('N', 110.0),
          Map.entry('P', 120.0),
          Map.entry('R', 120.0),
          Map.entry('S', 125.0),
          Map.entry('T', 130.0),
          Map.entry('U', 140.0),
          Map.entry('V', 150.0));

  /** Section widths of full-section inch sizes, mm by hundredths of an inch (UN R75, memory). */
  private static final Map<Integer, Double> INCH_WIDTH_MM =
      Map.of(275, 75.0, 300, 80.0, 325, 89.0, 350, 93.0, 400, 108.0);

  /** Width over name of other full-section inch sizes: mean of the remembered ones, 1.06. */
  private static final double FULL_SECTION_WIDTH_FACTOR = 1.06;

  /** Section height over width of an inch size; fits the remembered diameters within 5 mm. */
  private static final double INCH_ASPECT = 0.88;

  private TyreSizeReader() {}

  /** Reads a size as written on a sidewall, in any usual spelling; never throws. */
  public static Reading read(String text) {
    if (text == null || text.isBlank()) {
      return failed("tyre size is empty: " + EXAMPLES);
    }
    String size = text.trim().toUpperCase(Locale.ROOT).replace('–', '-').replace(',', '.');
    if (size.length() > 60) {
      return failed("tyre size is " + size.length() + " characters long: " + EXAMPLES);
    }
    Matcher m = METRIC.matcher(size);
    if (m.matches()) {
      return metric(text, m);
    }
    m = ALPHABETIC.matcher(size);
    if (m.matches()) {
      return alphabetic(text, m);
    }
    m = INCH.matcher(size);
    if (m.matches()) {
      return inch(text, m);
    }
    return failed("tyre size \"" + text + "\" is not understood: " + EXAMPLES);
  }

  private static Reading metric(String text, Matcher m) {
    List<String> faults = new ArrayList<>();
    double width = within(text, "section width mm", m.group(1), 50, 400, faults);
    double aspect = within(text, "aspect ratio", m.group(2), 20, 110, faults);
    int code = rimCode(text, m.group(4), faults);
    if (!faults.isEmpty()) {
      return new Reading(null, faults);
    }
    String build = m.group(3);
    String name = String.format(Locale.ROOT, "%s/%s %s", m.group(1), m.group(2), tail(build, code));
    TyreSize size =
        size(name.replace(" -", "-"), Series.METRIC, build, width, width * aspect / 100, code);
    return new Reading(size.withLoadIndex(loadIndex(m.group(5))), List.of());
  }

  private static Reading alphabetic(String text, Matcher m) {
    List<String> faults = new ArrayList<>();
    char letter = m.group(1).charAt(0);
    Double width = LETTER_WIDTH_MM.get(letter);
    if (width == null) {
      faults.add(
          "tyre size \"" + text + "\": width letter " + letter + " is not one of HJLMNPRSTUV");
    }
    double aspect = within(text, "aspect ratio", m.group(2), 20, 110, faults);
    int code = rimCode(text, m.group(4), faults);
    if (!faults.isEmpty()) {
      return new Reading(null, faults);
    }
    String build = m.group(3);
    String name = "M" + letter + m.group(2) + tail(build, code);
    TyreSize size = size(name, Series.ALPHABETIC, build, width, width * aspect / 100, code);
    return new Reading(size.withLoadIndex(loadIndex(m.group(5))), List.of());
  }

  private static Reading inch(String text, Matcher m) {
    List<String> faults = new ArrayList<>();
    double inches = within(text, "section width inches", m.group(1), 1.5, 8, faults);
    int code = rimCode(text, m.group(3), faults);
    if (!faults.isEmpty()) {
      return new Reading(null, faults);
    }
    int hundredths = (int) Math.round(inches * 100);
    // Widths ending in .10 and .60 name the low section, which is about as wide as it says.
    boolean lowSection = hundredths % 50 == 10;
    double width =
        INCH_WIDTH_MM.getOrDefault(
            hundredths, 25.4 * inches * (lowSection ? 1 : FULL_SECTION_WIDTH_FACTOR));
    String build = m.group(2);
    String name = String.format(Locale.ROOT, "%.2f%s", inches, tail(build, code));
    TyreSize size = size(name, Series.INCH, build, width, INCH_ASPECT * width, code);
    return new Reading(size.withLoadIndex(loadIndex(m.group(4))), List.of());
  }

  private static OptionalInt loadIndex(String extras) {
    Matcher m = LOAD_INDEX.matcher(extras);
    return m.find() ? OptionalInt.of(Integer.parseInt(m.group(1))) : OptionalInt.empty();
  }

  private static TyreSize size(
      String name, Series series, String build, double width, double height, int code) {
    Construction construction =
        build.endsWith("R")
            ? Construction.RADIAL
            : build.endsWith("B") ? Construction.BIAS_BELTED : Construction.DIAGONAL;
    return new TyreSize(name, series, construction, width, height, code, OptionalInt.empty());
  }

  private static String tail(String build, int code) {
    return (build.isEmpty() || build.endsWith("-") ? "-" : build) + code;
  }

  private static int rimCode(String text, String digits, List<String> faults) {
    return (int) within(text, "rim code", digits, 4, 30, faults);
  }

  private static double within(
      String text, String what, String digits, double least, double most, List<String> faults) {
    double value = Double.parseDouble(digits);
    if (value < least || value > most) {
      faults.add(
          String.format(
              Locale.ROOT,
              "tyre size \"%s\": %s is %s, allowed is %s to %s; check for swapped or missing digits",
              text,
              what,
              digits,
              least,
              most));
    }
    return value;
  }

  private static Reading failed(String fault) {
    return new Reading(null, List.of(fault));
  }
}

package org.longlow.rider.words;

import java.util.Locale;

/**
 * The units in which figures are shown. Whatever is stored or handed to programs stays in mm, kg
 * and N; only what people read is turned, here and nowhere else.
 *
 * <p>In inches a length of {@value #SHOP_IN} in or more is a dimension to build by and is said to
 * the nearest 1/16 in, such as {@code 12 5/16 in}. A shorter one is a gap, a thickness or a
 * tolerance: to 0.01 in, such as {@code 0.47 in}, but for one that is a sixteenth exactly, such as
 * {@code 1/2 in}. A length somebody wrote down is shown to 0.001 in where it is no sixteenth, so
 * that it is known again. What is to be done at least ({@link Rounding#AWAY}) or at most ({@link
 * Rounding#TOWARDS}) is rounded to that side. Two figures of which one is held to the other are
 * said finer ({@link #finer}) where this would hide which is the greater.
 */
public enum Units {
  /** Millimetres, kilograms, newtons. */
  MM("mm"),
  /** Inches, pounds, pounds-force. */
  IN("in");

  /** From here on a length is one to build by, in. */
  private static final double SHOP_IN = 4;

  /** Sixteenths are exact in binary; what is this near to one is one, in. */
  private static final double EXACT_IN = 1e-6;

  /** An inch in mm, exactly (international yard and pound agreement, 1959). */
  public static final double INCH_MM = 25.4;

  private static final int SIXTEENTHS = 16;

  /** Decimals of a length that is said in hundredths of an inch. */
  private static final int IN_DECIMALS = 2;

  private final String word;

  Units(String word) {
    this.word = word;
  }

  /** Which way a figure is rounded. */
  public enum Rounding {
    /** To what is nearest. */
    NEAREST,
    /** Away from nought: what is said is enough. */
    AWAY,
    /** Towards nought: what is said is not too much. */
    TOWARDS
  }

  /** Returns in what lengths are written, for people. */
  public String lengths() {
    return this == IN ? "inches" : "mm";
  }

  /** Returns the word for these in files and options. */
  public String word() {
    return word;
  }

  /** Returns a figure with its unit, such as {@code 12 5/16 in}; a dash where there is none. */
  public String says(double value, FigureSort shown) {
    return says(value, shown, Rounding.NEAREST);
  }

  /** Returns a figure with its unit, rounded to one side. */
  public String says(double value, FigureSort shown, Rounding rounding) {
    return says(value, shown, rounding, 0);
  }

  /**
   * Returns a figure with its unit and so many decimals more than usual, 1 or more, never in
   * fractions.
   */
  public String finer(double value, FigureSort shown, int more) {
    return says(value, shown, Rounding.NEAREST, more);
  }

  private String says(double value, FigureSort shown, Rounding rounding, int more) {
    if (Double.isNaN(value)) {
      return "-";
    }
    if (Double.isInfinite(value)) {
      return value > 0 ? "no end" : "-no end";
    }
    if (more > 0) {
      int decimals =
          this == MM ? shown.metricDecimals : shown.isLength() ? IN_DECIMALS : shown.inchDecimals;
      return Decimals.upTo(decimals + more, value * factor(shown)) + sign(shown);
    }
    if (this == IN && shown.isLength()) {
      return inches(value / INCH_MM, rounding) + " in";
    }
    return said(value * factor(shown), shown, rounding) + sign(shown);
  }

  private String said(double turned, FigureSort shown, Rounding rounding) {
    if (rounding != Rounding.NEAREST) {
      double steps = Math.pow(10, this == MM ? shown.metricDecimals : shown.inchDecimals);
      double size = round(Math.abs(turned) * steps, rounding) / steps;
      return said(Math.copySign(size, turned), shown, Rounding.NEAREST);
    }
    if (shown == FigureSort.LENGTH_IN_TENTHS || shown == FigureSort.MASS_IN_TENTHS) {
      return Decimals.tenths(turned);
    }
    boolean hundredths =
        switch (shown) {
          case MASS_IN_HUNDREDTHS, GRAVITY, NUMBER -> true;
          case CIRCLE -> this == MM;
          default -> false;
        };
    if (hundredths) {
      return String.format(Locale.ROOT, "%.2f", turned);
    }
    return Decimals.upTo(this == MM ? shown.metricDecimals : shown.inchDecimals, turned);
  }

  /** Returns a unit's sign, with the space before it. */
  public String sign(FigureSort shown) {
    if (this == MM) {
      return shown.metric;
    }
    return shown.isLength() ? " in" : shown.inch;
  }

  /** Returns how many of the unit shown one of the unit inside is. */
  public double factor(FigureSort shown) {
    if (this == MM) {
      return shown.metricFactor;
    }
    return shown.isLength() ? 1 / INCH_MM : shown.inchFactor;
  }

  /** Returns a figure without its unit, such as {@code 12 5/16}, for dimensions and rulers. */
  public String bare(double value, FigureSort shown) {
    String said = says(value, shown);
    String sign = sign(shown);
    return said.endsWith(sign) ? said.substring(0, said.length() - sign.length()) : said;
  }

  /** Returns a shift, mm, with its sign and without its unit, such as {@code +12.0}. */
  public String signed(double mm) {
    String size = bare(Math.abs(mm), FigureSort.LENGTH_IN_TENTHS);
    return (mm < 0 && !size.matches("[0.]+") ? "-" : "+") + size;
  }

  /**
   * Returns a length that somebody gave, such as {@code 63 1/2 in}, without rounding it to what a
   * shop can cut: to the thousandth of an inch, or to the thousandth of a millimetre.
   */
  public String given(double mm) {
    if (this == MM) {
      return Decimals.upTo(3, mm) + " mm";
    }
    double in = mm / INCH_MM;
    double nearest = Math.rint(in * SIXTEENTHS) / SIXTEENTHS;
    return (Math.abs(nearest - in) < EXACT_IN ? fraction(nearest) : Decimals.upTo(3, in)) + " in";
  }

  /**
   * Returns a length as it stands in a field: one to build by as it is said everywhere else, such
   * as {@code 65 3/8 in} for 1661 mm, a shorter one as it was given. What is kept is not rounded.
   */
  public String inField(double mm) {
    return this == IN && Math.abs(mm) >= SHOP_IN * INCH_MM
        ? says(mm, FigureSort.LENGTH)
        : given(mm);
  }

  private static String inches(double in, Rounding rounding) {
    double size = Math.abs(in);
    double sixteenths = round(size * SIXTEENTHS, rounding) / SIXTEENTHS;
    if (size >= SHOP_IN || Math.abs(sixteenths - size) < EXACT_IN) {
      return signed(in, sixteenths, fraction(sixteenths));
    }
    double hundredths = round(size * 100, rounding) / 100;
    return signed(in, hundredths, Decimals.upTo(IN_DECIMALS, hundredths));
  }

  private static String signed(double value, double size, String said) {
    return value < 0 && size > 0 ? "-" + said : said;
  }

  private static double round(double value, Rounding rounding) {
    // what is a hair beyond a step is that step: sums of binary fractions, and what was solved
    double hair = 1e-4;
    return switch (rounding) {
      case NEAREST -> Math.floor(value + 0.5);
      case AWAY -> Math.ceil(value - hair);
      case TOWARDS -> Math.floor(value + hair);
    };
  }

  /** Returns sixteenths in lowest terms, such as {@code 12 5/16}, {@code 1/2} or {@code 7}. */
  private static String fraction(double inches) {
    double size = Math.abs(inches);
    double whole = Math.floor(size);
    int over = (int) Math.round((size - whole) * SIXTEENTHS);
    int under = SIXTEENTHS;
    while (over > 0 && over % 2 == 0) {
      over /= 2;
      under /= 2;
    }
    String sign = inches < 0 ? "-" : "";
    String number = Decimals.upTo(0, whole);
    if (over == 0) {
      return (whole > 0 ? sign : "") + number;
    }
    return sign + (whole > 0 ? number + " " : "") + over + "/" + under;
  }
}

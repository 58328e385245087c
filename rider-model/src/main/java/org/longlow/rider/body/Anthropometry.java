package org.longlow.rider.body;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Summary statistics of the ANSUR II public data (US Army, 2012): 4082 men, 1986 women, serving
 * soldiers aged 17 to 58; Gordon et al. 2014, NATICK/TR-15/007, released for public use. Lengths in
 * mm, mass in kg, bare feet, no helmet.
 *
 * <p>Soldiers are fitter and lighter than civilians: give civil stature and mass to the regressions
 * rather than reading the percentiles as civil ones.
 */
public final class Anthropometry {

  private static final String MEASURES = "ansur2-measures.tsv";
  private static final String CORRELATION = "ansur2-correlation.tsv";

  private final Map<Sex, Map<String, MeasureStats>> stats;
  private final Map<Sex, Correlation> correlation;

  private Anthropometry(
      Map<Sex, Map<String, MeasureStats>> stats, Map<Sex, Correlation> correlation) {
    this.stats = stats;
    this.correlation = correlation;
  }

  /** Returns the survey, read once. */
  public static Anthropometry survey() {
    return Holder.SURVEY;
  }

  /** Returns every measurement of a sex by its survey name, in the order of the file. */
  public Map<String, MeasureStats> measures(Sex sex) {
    return stats.get(sex);
  }

  /** Returns the correlation block of a sex. */
  Correlation correlation(Sex sex) {
    return correlation.get(sex);
  }

  /**
   * Correlations of the raw columns.
   *
   * @param order column names; the first two are stature and mass
   * @param sd standard deviation of each
   * @param matrix Pearson correlations
   * @param lnMassMean mean of ln(mass in kg)
   * @param lnMassSd its standard deviation
   * @param lnMassStature its correlation with stature
   */
  record Correlation(
      List<String> order,
      double[] mean,
      double[] sd,
      double[][] matrix,
      double lnMassMean,
      double lnMassSd,
      double lnMassStature) {}

  private static final class Holder {
    static final Anthropometry SURVEY = load();
  }

  private static Anthropometry load() {
    Map<Sex, Map<String, MeasureStats>> stats = new EnumMap<>(Sex.class);
    for (Sex sex : Sex.values()) {
      stats.put(sex, new LinkedHashMap<>());
    }
    boolean heading = true;
    for (String line : lines(MEASURES)) {
      if (heading) {
        heading = false;
        continue;
      }
      String[] cell = line.split("\t", -1);
      stats.get(Sex.of(cell[2])).put(cell[0], stats(cell));
    }
    stats.replaceAll((sex, map) -> Collections.unmodifiableMap(map));
    return new Anthropometry(stats, correlations());
  }

  private static MeasureStats stats(String[] cell) {
    double[] v = new double[cell.length];
    for (int i = 3; i < 25; i++) {
      v[i] = cell[i].isEmpty() ? Double.NaN : Double.parseDouble(cell[i]);
    }
    return new MeasureStats(
        cell[0],
        cell[26],
        cell[1],
        cell[25],
        (int) v[3],
        v[4],
        v[5],
        v[6],
        v[7],
        v[8],
        new MeasureStats.Percentiles(v[9], v[10], v[11], v[12], v[13], v[14], v[15]),
        cell[16].isEmpty() ? null : new MeasureStats.Regression(v[16], v[17], v[18], v[19], v[20]),
        cell[21].isEmpty() ? null : new MeasureStats.Regression(v[21], v[22], 0, v[23], v[24]));
  }

  private static Map<Sex, Correlation> correlations() {
    List<String> order = List.of();
    Map<Sex, double[]> mean = new EnumMap<>(Sex.class);
    Map<Sex, double[]> sd = new EnumMap<>(Sex.class);
    Map<Sex, double[]> lnMass = new EnumMap<>(Sex.class);
    Map<Sex, double[]> lnCorrelation = new EnumMap<>(Sex.class);
    Map<Sex, List<double[]>> rows = new EnumMap<>(Sex.class);
    for (String line : lines(CORRELATION)) {
      String[] cell = line.split("\t", -1);
      if (cell[0].equals("order")) {
        order = List.of(Arrays.copyOfRange(cell, 1, cell.length));
        continue;
      }
      Sex sex = Sex.of(cell[0]);
      double[] v = Arrays.stream(cell, 2, cell.length).mapToDouble(Double::parseDouble).toArray();
      switch (cell[1]) {
        case "mean" -> mean.put(sex, v);
        case "sd" -> sd.put(sex, v);
        case "lnmass" -> lnMass.put(sex, v);
        case "lncorr" -> lnCorrelation.put(sex, v);
        default -> rows.computeIfAbsent(sex, s -> new ArrayList<>()).add(v);
      }
    }
    Map<Sex, Correlation> out = new EnumMap<>(Sex.class);
    for (Sex sex : Sex.values()) {
      out.put(
          sex,
          new Correlation(
              order,
              mean.get(sex),
              sd.get(sex),
              rows.get(sex).toArray(new double[0][]),
              lnMass.get(sex)[0],
              lnMass.get(sex)[1],
              lnCorrelation.get(sex)[0]));
    }
    return out;
  }

  private static List<String> lines(String resource) {
    List<String> out = new ArrayList<>();
    try (InputStream in = Anthropometry.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException(resource + " is missing from the program; build it again");
      }
      BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (!line.startsWith("#") && !line.isEmpty()) {
          out.add(line);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + resource, e);
    }
    return out;
  }
}

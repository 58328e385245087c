package org.longlow.sketcher.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longlow.constraints.fit.AdjustReport;
import org.longlow.constraints.fit.BodyTrait;
import org.longlow.constraints.fit.FitReport;
import org.longlow.constraints.fit.Judged;
import org.longlow.constraints.fit.Reason;
import org.longlow.constraints.fit.Share;
import org.longlow.constraints.fit.Telling;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.picture.AdjustPicture;
import org.longlow.sketcher.picture.CrowdPicture;
import org.longlow.sketcher.shop.Csv;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.page.Page;

/**
 * How a crowd fits, as it goes into a folder: everybody and what stops them as tables, pictures.
 *
 * @param machine what the machine is called
 * @param report how they fit
 * @param adjusted what adjustment would take in, if that was asked
 * @param units of figures
 */
public record FitSet(
    String machine, FitReport report, Optional<AdjustReport> adjusted, Units units) {

  /** Everybody, one row each. */
  public static final String PEOPLE = "people.csv";

  private static final String REASONS = "reasons.csv";
  private static final String SETTINGS = "settings.csv";
  private static final double MARGIN_MM = 8;

  private static final String UNFINISHED_WORDS =
      "These tables are not complete: making them goes on, or was stopped. Make them again.\n";

  /** Puts them into {@code folder}: whole or not at all. */
  public List<String> write(Path folder) throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(PEOPLE, bytes(people()));
    files.put(REASONS, bytes(reasons()));
    adjusted.ifPresent(a -> files.put(SETTINGS, bytes(settings(a))));
    byte[] sums = ListSums.of(files);
    files.put("stature.svg", Output.svg(Page.round(stature(), MARGIN_MM)));
    if (adjusted.isPresent()) {
      files.put("settings.svg", Output.svg(Page.round(settingsPicture(adjusted.get()), MARGIN_MM)));
    }
    files.put(ListSums.FILE, sums);
    return SummedFolder.write(
        folder, files, f -> List.of(), UNFINISHED_WORDS, InTheWay.Consent.GIVEN);
  }

  /** Returns stature over sitting height. */
  public Drawing stature() {
    return CrowdPicture.of(
        machine + ": " + report.fitting().words().in(units) + " fit", report, units);
  }

  private Drawing settingsPicture(AdjustReport a) {
    return AdjustPicture.of(machine + ": share that fits at each setting", a, units);
  }

  private static byte[] bytes(List<List<String>> lines) {
    return Csv.of(lines).getBytes(StandardCharsets.UTF_8);
  }

  private List<List<String>> people() {
    List<List<String>> lines = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of("person", "sex"));
    for (BodyTrait trait : BodyTrait.values()) {
      head.add(Csv.words(trait.words() + unit(trait)));
    }
    head.addAll(List.of("verdict", "outside the survey", "fails", "needs care"));
    lines.add(head);
    for (Judged person : report.people()) {
      List<String> line = new ArrayList<>();
      line.add(Csv.words(person.name()));
      line.add(person.sex().name().toLowerCase(Locale.ROOT));
      for (BodyTrait trait : BodyTrait.values()) {
        line.add(figure(trait, person.of(trait)));
      }
      line.add(person.verdict().says());
      line.add(person.outside() ? "yes" : "no");
      line.add(Csv.words(keys(person.fails())));
      line.add(Csv.words(keys(person.cares())));
      lines.add(line);
    }
    return lines;
  }

  private static String keys(List<Reason> reasons) {
    return reasons.stream().map(Reason::key).distinct().collect(Collectors.joining(" "));
  }

  private String unit(BodyTrait trait) {
    boolean mm = units == Units.MM;
    return switch (trait) {
      case MASS -> mm ? " (kg)" : " (lb)";
      case BUILD -> " (kg/m2)";
      case TRUNK -> "";
      default -> mm ? " (mm)" : " (in)";
    };
  }

  private String figure(BodyTrait trait, double value) {
    boolean mm = units == Units.MM;
    return switch (trait) {
      case MASS -> mm ? number(value, 1) : units.bare(value, FigureSort.MASS);
      case BUILD -> number(value, 2);
      case TRUNK -> number(value, 4);
      default -> mm ? number(value, 1) : number(value / 25.4, 3);
    };
  }

  private static String number(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  private List<List<String>> reasons() {
    List<List<String>> lines = new ArrayList<>();
    lines.add(
        List.of("reason", "in words", "people", "of", "share", "low", "high", "alone", "who"));
    for (FitReport.Stopping s : report.stopping()) {
      Share all = s.all();
      lines.add(
          List.of(
              Csv.words(s.reason().key()),
              Csv.words(s.reason().words()),
              String.valueOf(all.count()),
              String.valueOf(all.of()),
              number(all.value(), 4),
              number(all.low(), 4),
              number(all.high(), 4),
              String.valueOf(s.alone().count()),
              Csv.words(who(s.who()))));
    }
    return lines;
  }

  private String who(List<Telling> who) {
    return FitWords.who(who).in(units);
  }

  private List<List<String>> settings(AdjustReport a) {
    List<List<String>> lines = new ArrayList<>();
    boolean mm = units == Units.MM;
    lines.add(
        List.of("adjuster", "setting", "unit", "people", "of", "share", "low", "high", "barred"));
    for (AdjustReport.Curve curve : a.curves()) {
      boolean deg = curve.adjuster().turns();
      for (AdjustReport.Point point : curve.points()) {
        List<String> line = new ArrayList<>();
        line.add(Csv.words(curve.adjuster().name()));
        line.add(number(deg || mm ? point.setting() : point.setting() / 25.4, deg || mm ? 1 : 3));
        line.add(deg ? "deg" : mm ? "mm" : "in");
        if (point.share().filter(s -> s.of() > 0).isPresent()) {
          Share share = point.share().get();
          line.add(String.valueOf(share.count()));
          line.add(String.valueOf(share.of()));
          line.add(number(share.value(), 4));
          line.add(number(share.low(), 4));
          line.add(number(share.high(), 4));
        } else {
          line.addAll(List.of("", "", "", "", ""));
        }
        line.add(Csv.words(point.barred()));
        lines.add(line);
      }
    }
    return lines;
  }
}

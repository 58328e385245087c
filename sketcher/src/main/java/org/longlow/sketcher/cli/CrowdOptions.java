package org.longlow.sketcher.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.longlow.constraints.fit.BodyJudge;
import org.longlow.constraints.fit.Crowd;
import org.longlow.constraints.fit.CrowdTable;
import org.longlow.constraints.fit.SampledCrowd;
import org.longlow.rider.body.Gear;
import picocli.CommandLine.Option;

/** Which people are meant, what they wear and what counts about them. */
final class CrowdOptions {

  /** A table of people is refused beyond this. */
  private static final long MOST_BYTES = 200_000_000;

  static final String NOBODY_SITS =
      "nobody can sit on it: the rider's seat needs cushions with the roles pan and back, and a peg"
          + " or footboard";

  private static final Set<String> WORN = Set.of("helmet", "boots", "clothes");

  @Option(
      names = "--people",
      paramLabel = "N",
      description = "How many are sampled; of fit 2000 unless said.")
  private Integer people;

  @Option(
      names = "--seed",
      paramLabel = "S",
      description = "A whole number; the same gives the same people. 1 unless said.")
  private Long seed;

  @Option(
      names = "--women",
      paramLabel = "PERCENT",
      description = "How many of a hundred are women; 50 unless said.")
  private Double women;

  @Option(
      names = "--from",
      paramLabel = "soldiers|adults",
      description = {
        "soldiers: stature and mass of the survey, fitter and lighter than others, unless said;",
        "adults: of US adults, from memory."
      })
  private String from;

  @Option(
      names = "--measured",
      paramLabel = "CSV",
      description = {
        "A table of people instead: columns sex, stature, mass, if wanted name and measurements",
        "by their survey names (longlow figure body tells them)."
      })
  private Path measured;

  @Option(
      names = "--wearing",
      split = ",",
      paramLabel = "GEAR",
      description =
          "helmet, boots, clothes, with commas between, or nothing; helmet,boots unless said.")
  private List<String> wearing;

  @Option(
      names = "--without",
      split = ",",
      paramLabel = "KINDS",
      description = "Kinds of findings that do not count, such as hands,load.")
  private List<String> without = List.of();

  /**
   * Returns who is meant.
   *
   * @throws Refusal if options do not go together or the table is none of people
   */
  Crowd crowd() throws IOException {
    if (measured != null) {
      if (people != null || seed != null || women != null || from != null) {
        throw new Refusal(
            "--measured says who they are; leave out --people, --seed, --women and --from");
      }
      return read();
    }
    int size = people == null ? 2000 : people;
    if (size < 1 || size > SampledCrowd.MOST) {
      throw new Refusal("--people is " + size + "; give 1 to " + SampledCrowd.MOST);
    }
    double percent = women == null ? 50 : women;
    if (!(percent >= 0 && percent <= 100)) {
      throw new Refusal("--women is " + percent + "; give 0 to 100 of a hundred");
    }
    SampledCrowd.From whose =
        switch (from == null ? "soldiers" : from.strip()) {
          case "soldiers" -> SampledCrowd.From.SOLDIERS;
          case "adults" -> SampledCrowd.From.ADULTS;
          default -> throw new Refusal("--from is '" + from + "'; use soldiers or adults");
        };
    return new SampledCrowd(whose.of(seed == null ? 1 : seed, percent / 100), whose, size);
  }

  private Crowd read() throws IOException {
    if (!Files.isRegularFile(measured)) {
      throw new Refusal("--measured is " + measured + ", which is no file");
    }
    if (Files.size(measured) > MOST_BYTES) {
      throw new Refusal("--measured is " + measured + ", which is larger than 200 MB; split it");
    }
    CrowdTable.Read read =
        CrowdTable.of(new String(Files.readAllBytes(measured), StandardCharsets.UTF_8));
    return read.crowd()
        .orElseThrow(
            () -> new Refusal(read.faults().stream().map(f -> measured + ": " + f).toList()));
  }

  private List<String> worn() {
    return wearing == null
        ? List.of("helmet", "boots")
        : wearing.stream().map(String::strip).toList();
  }

  /** Returns what all of them wear. */
  Gear gear() {
    List<String> worn = worn();
    if (worn.equals(List.of("nothing"))) {
      return Gear.NONE;
    }
    for (String one : worn) {
      if (!WORN.contains(one)) {
        throw new Refusal(
            "--wearing says '" + one + "'; use helmet, boots, clothes or nothing alone");
      }
    }
    return Gear.riding(worn.contains("helmet"), worn.contains("boots"), worn.contains("clothes"));
  }

  /** Returns words of the kinds of findings that do not count. */
  Set<String> without() {
    Set<String> kinds = new TreeSet<>();
    for (String kind : without) {
      if (!BodyJudge.KINDS.contains(kind.strip())) {
        throw new Refusal(
            "--without says '"
                + kind.strip()
                + "', which is not judged here; kinds are "
                + String.join(", ", BodyJudge.KINDS));
      }
      kinds.add(kind.strip());
    }
    return kinds;
  }

  /** Returns the table of people; empty without one. */
  byte[] table() throws IOException {
    return measured == null ? new byte[0] : Files.readAllBytes(measured);
  }

  /** Returns all that was asked but the table, so that only alike runs are taken for the same. */
  String says() {
    return String.join(
        " ",
        String.valueOf(people),
        String.valueOf(seed),
        String.valueOf(women),
        String.valueOf(from),
        new TreeSet<>(worn()).toString(),
        new TreeSet<>(without).toString());
  }

  /**
   * Returns whether a crowd is meant at all, where a command can do without one.
   *
   * @throws Refusal if something is said of a crowd that is not asked for
   */
  boolean areAsked() {
    boolean asked = people != null || measured != null;
    if (!asked) {
      new Unused()
          .see(seed != null, "--seed")
          .see(women != null, "--women")
          .see(from != null, "--from")
          .see(wearing != null, "--wearing")
          .see(!without.isEmpty(), "--without")
          .refuse("without --people or --measured no crowd is meant: say one of them");
    }
    return asked;
  }
}

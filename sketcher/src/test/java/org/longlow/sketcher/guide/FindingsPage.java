package org.longlow.sketcher.guide;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Field;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.study.Study;

/** The page of all kinds of findings: those that the code declares, with what they rest on. */
final class FindingsPage {

  private static final String WORDS = "finding-words.txt";

  private final Map<String, String> words = words();
  private final Map<FindingGroup, Map<String, List<FindingKind>>> kinds = new TreeMap<>();
  private final Map<String, Set<String>> bases = new LinkedHashMap<>();

  FindingsPage(List<Study> studies) throws IOException {
    declared()
        .forEach(
            k ->
                kinds
                    .computeIfAbsent(k.group(), g -> new TreeMap<>())
                    .computeIfAbsent(k.word(), w -> new ArrayList<>())
                    .add(k));
    for (Study study : studies) {
      study
          .findings()
          .forEach(
              f -> {
                Set<String> those = bases.computeIfAbsent(f.kind().word(), w -> new TreeSet<>());
                f.basis().stream().filter(Basis::decides).forEach(b -> those.add(said(b)));
              });
    }
  }

  private static List<FindingKind> declared() {
    List<FindingKind> kinds = new ArrayList<>();
    for (JavaClass owner :
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.longlow.constraints")) {
      for (JavaField field : owner.getFields()) {
        if (field.getRawType().isEquivalentTo(FindingKind.class)
            && field.getModifiers().contains(JavaModifier.STATIC)) {
          kinds.add(value(field.reflect()));
        }
      }
    }
    return kinds;
  }

  private static FindingKind value(Field field) {
    try {
      field.setAccessible(true);
      return (FindingKind) field.get(null);
    } catch (IllegalAccessException e) {
      throw new IllegalArgumentException(field.toString(), e);
    }
  }

  private static Map<String, String> words() throws IOException {
    try (InputStream in = FindingsPage.class.getResourceAsStream(WORDS)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .map(line -> line.split(": ", 2))
          .collect(Collectors.toMap(p -> p[0], p -> p[1]));
    }
  }

  /** Returns kinds that nobody put into words, and words of kinds that are not there. */
  Set<String> missing() {
    Set<String> there =
        kinds.values().stream().flatMap(m -> m.keySet().stream()).collect(Collectors.toSet());
    Set<String> missing = new TreeSet<>(words.keySet());
    missing.removeAll(there);
    there.stream().filter(w -> !words.containsKey(w)).forEach(missing::add);
    return missing;
  }

  String text() {
    StringBuilder out =
        new StringBuilder(
            """
            # Every finding there is

            The name of a finding begins with its kind. *Rests on* says what its figures come from besides the drawing
            and the people, and the sorts of ground that findings of this kind had on the shipped machines, and on others
            made to be at fault; their full source stands beside each in the report. What is decided from memory never passes; what is from memory and
            only a side remark is not counted here.

            """);
    kinds.forEach(
        (group, those) -> {
          out.append("## ").append(group.title()).append("\n\n");
          if (!group.caution().isEmpty()) {
            out.append(group.caution()).append("\n\n");
          }
          out.append("| kind | what it tells | rests on |\n|---|---|---|\n");
          those.forEach(
              (word, same) ->
                  out.append("| `" + word + "` | " + words.get(word))
                      .append(" | " + restsOn(word, same) + " |\n"));
          out.append('\n');
        });
    return out.toString().stripTrailing() + "\n";
  }

  private String restsOn(String word, List<FindingKind> same) {
    List<String> said = new ArrayList<>();
    if (same.stream().anyMatch(FindingKind::weighed)) {
      said.add(same.stream().allMatch(FindingKind::weighed) ? "masses" : "masses, for some");
    }
    Set<String> seen = bases.getOrDefault(word, Set.of());
    said.add(seen.isEmpty() ? "not met on any of them" : String.join(", ", seen));
    return String.join("; ", said);
  }

  private static String said(Basis basis) {
    String kind = basis.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return switch (basis.known()) {
      case CHECKED -> kind;
      case TRANSCRIBED -> kind + " (read in a copy)";
      case FROM_MEMORY -> kind + " (from memory)";
    };
  }
}

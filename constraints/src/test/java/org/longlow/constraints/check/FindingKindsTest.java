package org.longlow.constraints.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.study.TestMachine;

/** The kinds of findings, wherever they are made. */
class FindingKindsTest {

  /** Each by its name, such as {@code LeanFindings.LEAN}. */
  private static final Map<String, FindingKind> KINDS = kinds();

  private static Map<String, FindingKind> kinds() {
    Map<String, FindingKind> kinds = new LinkedHashMap<>();
    for (JavaClass owner :
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.longlow.constraints.check")) {
      for (JavaField field : owner.getFields()) {
        if (field.getRawType().isEquivalentTo(FindingKind.class)) {
          value(field.reflect())
              .ifPresent(k -> kinds.put(owner.getSimpleName() + "." + field.getName(), k));
        }
      }
    }
    return kinds;
  }

  private static Optional<FindingKind> value(Field field) {
    if (!Modifier.isStatic(field.getModifiers())) {
      return Optional.empty(); // such as the kind that a finding has
    }
    try {
      field.setAccessible(true);
      return Optional.of((FindingKind) field.get(null));
    } catch (IllegalAccessException e) {
      throw new IllegalArgumentException(field.toString(), e);
    }
  }

  private static List<String> those(Predicate<FindingKind> such) {
    return KINDS.entrySet().stream()
        .filter(e -> such.test(e.getValue()))
        .map(Map.Entry::getKey)
        .toList();
  }

  @Test
  void noTwoPlacesMakeFindingsUnderOneWord() {
    Map<String, String> ownerOf = new LinkedHashMap<>();
    KINDS.forEach(
        (name, kind) -> {
          String owner = name.substring(0, name.indexOf('.'));
          assertThat(ownerOf.merge(kind.word(), owner, (a, b) -> a))
              .as(kind.word())
              .isEqualTo(owner);
          assertThat(kind.word()).matches("[a-z]+(-[a-z]+)*");
        });
    assertThat(KINDS).hasSizeGreaterThan(30);
    assertThat(Arrays.stream(FindingGroup.values()))
        .allMatch(g -> KINDS.values().stream().anyMatch(k -> k.group() == g));
  }

  /** One made anew each time would be no kind: others look for it by what it is. */
  @Test
  void everyFindingIsOfAKindThatIsThere() {
    for (String name : List.of("tourer", "runabout")) {
      assertThat(TestMachine.asFiled(name).findings())
          .extracting(Finding::kind)
          .allMatch(KINDS::containsValue);
    }
  }

  @Test
  void whatRestsOnMassesSaysSo() {
    assertThat(those(FindingKind::weighed))
        .containsExactlyInAnyOrder(
            "SightFindings.SIGHT",
            "SightFindings.FOOT",
            "RiseFindings.RISE",
            "GettingInFindings.GETTING_IN",
            "BehindFindings.BEHIND",
            "MirrorFindings.MIRROR",
            "EyeFindings.CREST",
            "EyeFindings.EDGE",
            "EyeFindings.EYES",
            "OwnBodyFindings.OWN_BODY",
            "StopFindings.FEET_DOWN",
            "StopFindings.HOLD_UP",
            "DoorwayFindings.DOORWAY",
            "GroundFindings.CLEARANCE",
            "StandSwing.SWUNG",
            "SagFindings.SAG",
            "AimFindings.AIM",
            "LeanFindings.LEAN",
            "LeanFindings.TOUCH",
            "RampFindings.RAMP",
            "DiveFindings.DIVE",
            "PullingAway.SQUAT",
            "SlideFindings.SLIDE",
            "TyreFindings.TYRE_LOAD",
            "BalanceFindings.BALANCE",
            "WindFindings.WIND",
            "StandFindings.STAND",
            "WorkStandFindings.WORK_STAND",
            "SteeringFindings.TRAIL",
            "SteeringFindings.RAKE",
            "LoadFindings.LOAD",
            "LoadFindings.LIFT",
            "HoldFindings.HAND_FORCE",
            "HoldFindings.STAYS_OPEN",
            "HoldFindings.NO_HELP",
            "HoldFindings.WAY_OUT",
            "HoldFindings.SHUT",
            "CatchFindings.RELEASE",
            "Rulings.LAW_HEIGHT");
    assertThat(those(FindingKind::toldForEach))
        .containsExactlyInAnyOrder(
            "SagFindings.SAG",
            "SteeringFindings.TRAIL",
            "SteeringFindings.RAKE",
            "LoadFindings.LOAD",
            "LoadFindings.LIFT");
    assertThat(those(FindingKind::fromMemory)).containsExactly("Rulings.LAW_FROM_MEMORY");
  }
}

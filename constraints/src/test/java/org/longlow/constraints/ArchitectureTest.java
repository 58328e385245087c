package org.longlow.constraints;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;

/** The order of the rooms of this module. */
@AnalyzeClasses(
    packages = "org.longlow.constraints",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  private static final String HERE = "org.longlow.constraints.";

  /** From the ground up; a room sees only those before it. */
  private static final List<String> ROOMS =
      List.of(
          "words",
          "disk",
          "formula",
          "machine",
          "machine.chassis",
          "layout",
          "machine.linkage",
          "machine.section",
          "machine.line",
          "machine.shop",
          "machine.ride",
          "law",
          "document",
          "space",
          "shape",
          "gap",
          "seat",
          "passage",
          "stand",
          "lock",
          "figure",
          "solve.problem",
          "solve.graph",
          "solve.relation",
          "solve.linear",
          "solve.step",
          "solve.block",
          "solve",
          "place",
          "check.finding",
          "check.person",
          "check.rule",
          "check.gap",
          "check.road",
          "check.ride",
          "check.section",
          "check.whole",
          "check",
          "study",
          "fit",
          "json",
          "suit",
          "mend",
          "built",
          "start");

  @ArchTest
  static void aRoomSeesOnlyThoseBelow(JavaClasses classes) {
    for (int k = 0; k + 1 < ROOMS.size(); k++) {
      String[] above =
          ROOMS.subList(k + 1, ROOMS.size()).stream().map(HERE::concat).toArray(String[]::new);
      noClasses()
          .that()
          .resideInAPackage(HERE + ROOMS.get(k))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(above)
          .check(classes);
    }
  }

  @ArchTest
  static void everyRoomHasItsPlace(JavaClasses classes) {
    assertThat(classes.stream().map(JavaClass::getPackageName).distinct())
        .containsExactlyInAnyOrderElementsOf(ROOMS.stream().map(HERE::concat).toList());
  }

  @ArchTest
  static final ArchRule theSolverIsEnteredByItsFrontDoor =
      noClasses()
          .that()
          .resideOutsideOfPackage("..constraints.solve..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              HERE + "solve.graph",
              HERE + "solve.linear",
              HERE + "solve.step",
              HERE + "solve.block")
          .because("how it solves may change while what it is asked stays");
}

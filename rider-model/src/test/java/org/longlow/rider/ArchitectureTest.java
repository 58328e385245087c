package org.longlow.rider;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;

@AnalyzeClasses(
    packages = "org.longlow.rider",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule noCycles =
      slices().matching("org.longlow.rider.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule bodyKnowsNoSeat =
      ArchRuleDefinition.noClasses()
          .that()
          .resideInAPackage("..rider.body..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("..rider.pose..", "..rider.seat..")
          .because("a body is the same whatever it sits on");
}

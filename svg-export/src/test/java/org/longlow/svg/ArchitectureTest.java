package org.longlow.svg;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "org.longlow", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule packagesHaveNoCycles =
      slices().matching("org.longlow.svg.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule drawingKnowsOnlyGeometry =
      classes()
          .that()
          .resideInAPackage("..svg.drawing..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage("java..", "org.locationtech.jts..", "org.longlow.svg.drawing..")
          .because("the screen draws the same picture without any file format");

  @ArchTest
  static final ArchRule pageKnowsNoFileFormat =
      noClasses()
          .that()
          .resideInAPackage("..svg.page..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache..", "org.longlow.svg.write..");

  @ArchTest
  static final ArchRule nothingReadsTheClock =
      noClasses()
          .should()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(java.time.Instant.class, "now")
          .because("the same layout must give the same file");
}

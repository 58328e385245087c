package org.longlow.sketcher;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The shape of the whole: one direction of imports, toolkits at the edge. */
@AnalyzeClasses(packages = "org.longlow", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule only_fx_knows_javafx =
      noClasses()
          .that()
          .resideOutsideOfPackage("..sketcher.fx..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx..", "com.sun.javafx..")
          .because("commands, the solver and the pictures run on machines without a display");

  @ArchTest
  static final ArchRule nodes_have_names_but_no_ids =
      noClasses()
          .that()
          .resideInAPackage("..sketcher.fx..")
          .should()
          .callMethodWhere(target(name("setId")))
          .because("styles are matched anew for each id; Called tells one node from another");

  @ArchTest
  static final ArchRule only_json_knows_jackson =
      noClasses()
          .that()
          .resideOutsideOfPackage("..constraints.json..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.fasterxml..", "com.networknt..")
          .because("the document outlives its file format");

  @ArchTest
  static final ArchRule the_rider_model_knows_no_machine =
      noClasses()
          .that()
          .resideInAPackage("org.longlow.rider..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.longlow.constraints..",
              "org.longlow.svg..",
              "org.longlow.sketcher..",
              "org.longlow.demo..")
          .because("a body is a body on any machine");

  @ArchTest
  static final ArchRule constraints_know_no_picture =
      noClasses()
          .that()
          .resideInAPackage("org.longlow.constraints..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.longlow.svg..", "org.longlow.sketcher..", "org.longlow.demo..")
          .because("answers come before pictures of them");

  @ArchTest
  static final ArchRule paper_knows_no_machine =
      noClasses()
          .that()
          .resideInAPackage("org.longlow.svg..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.longlow.rider..",
              "org.longlow.constraints..",
              "org.longlow.sketcher..",
              "org.longlow.demo..")
          .because("a drawing is a drawing of anything");

  @ArchTest
  static final ArchRule the_solver_knows_no_document =
      noClasses()
          .that()
          .resideInAPackage("..constraints.solve..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "..constraints.layout..",
              "..constraints.shape..",
              "..rider.body..",
              "..rider.pose..",
              "..rider.seat..")
          .because("the engine solves numbers, and people are numbers to it too");

  @ArchTest
  static final ArchRule packages_have_no_cycles =
      slices().matching("org.longlow.(*).(*)..").should().beFreeOfCycles();
}

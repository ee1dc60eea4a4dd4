package crumbtrail.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The bake goes one way through the house. */
@AnalyzeClasses(packages = "crumbtrail", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule the_bake_goes_one_way =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("quantity")
          .definedBy("crumbtrail.quantity..")
          .layer("words")
          .definedBy("crumbtrail.words..")
          .layer("knowledge")
          .definedBy("crumbtrail.knowledge..")
          .layer("picture")
          .definedBy("crumbtrail.picture..")
          .layer("sheet")
          .definedBy("crumbtrail.sheet..")
          .layer("pantry")
          .definedBy("crumbtrail.pantry..")
          .layer("formula")
          .definedBy("crumbtrail.formula..")
          .layer("dough")
          .definedBy("crumbtrail.dough..")
          .layer("oven")
          .definedBy("crumbtrail.oven..")
          .layer("vessel")
          .definedBy("crumbtrail.vessel..")
          .layer("keeping")
          .definedBy("crumbtrail.keeping..")
          .layer("workup")
          .definedBy("crumbtrail.workup..")
          .layer("rules")
          .definedBy("crumbtrail.rules..")
          .layer("findings")
          .definedBy("crumbtrail.findings..")
          .layer("advice")
          .definedBy("crumbtrail.advice..")
          .layer("lessons")
          .definedBy("crumbtrail.lessons..")
          .layer("report")
          .definedBy("crumbtrail.report..")
          .layer("handbook")
          .definedBy("crumbtrail.handbook..")
          .layer("accuracy")
          .definedBy("crumbtrail.accuracy..")
          .layer("api")
          .definedBy("crumbtrail.api..")
          .layer("web")
          .definedBy("crumbtrail.web..")
          .layer("cli")
          .definedBy("crumbtrail.cli..")
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("web")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("api")
          .mayOnlyBeAccessedByLayers("web", "cli")
          .whereLayer("handbook")
          .mayOnlyBeAccessedByLayers("api", "web", "cli")
          .whereLayer("accuracy")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("report")
          .mayOnlyBeAccessedByLayers("api", "web", "cli")
          .whereLayer("findings")
          .mayOnlyBeAccessedByLayers("advice", "lessons", "report", "handbook", "accuracy")
          .whereLayer("advice")
          .mayOnlyBeAccessedByLayers("lessons", "report", "handbook", "accuracy", "web", "cli")
          .whereLayer("lessons")
          .mayOnlyBeAccessedByLayers("report", "handbook", "api", "web", "cli")
          .whereLayer("rules")
          .mayOnlyBeAccessedByLayers(
              "findings", "advice", "lessons", "report", "handbook", "accuracy", "cli")
          .whereLayer("workup")
          .mayOnlyBeAccessedByLayers(
              "rules", "findings", "advice", "lessons", "report", "handbook", "accuracy")
          .whereLayer("picture")
          .mayOnlyBeAccessedByLayers("rules", "lessons", "report", "handbook", "web", "cli")
          .whereLayer("formula")
          .mayOnlyBeAccessedByLayers("workup", "advice", "report")
          .whereLayer("dough")
          .mayOnlyBeAccessedByLayers("workup", "keeping")
          .whereLayer("oven")
          .mayOnlyBeAccessedByLayers("workup")
          .whereLayer("vessel")
          .mayOnlyBeAccessedByLayers("workup")
          .whereLayer("keeping")
          .mayOnlyBeAccessedByLayers("workup")
          .withOptionalLayers(true)
          .because("each step reads what came before it and no step reaches back");

  @ArchTest
  static final ArchRule packages_have_no_cycles =
      slices()
          .matching("crumbtrail.(*)..")
          .should()
          .beFreeOfCycles()
          .because("a cycle would let a later step change an earlier one");

  @ArchTest
  static final ArchRule only_rules_sees_drools =
      noClasses()
          .that()
          .resideOutsideOfPackage("crumbtrail.rules..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.drools..", "org.kie..")
          .because("the engine is a detail of how rules run");

  @ArchTest
  static final ArchRule only_web_sees_javalin =
      noClasses()
          .that()
          .resideOutsideOfPackage("crumbtrail.web..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..", "gg.jte..")
          .because("pages are one face of two");

  @ArchTest
  static final ArchRule only_cli_prints =
      noClasses()
          .that()
          .resideOutsideOfPackage("crumbtrail.cli..")
          .and()
          .doNotHaveFullyQualifiedName("crumbtrail.rules.RuleBaseBuilder")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .because(
              "what computes returns its result; the build step that compiles rules is a program");
}

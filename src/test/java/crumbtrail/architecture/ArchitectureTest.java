package crumbtrail.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;

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
          .layer("compare")
          .definedBy("crumbtrail.compare..")
          .layer("lessons")
          .definedBy("crumbtrail.lessons..")
          .layer("report")
          .definedBy("crumbtrail.report..")
          .layer("people")
          .definedBy("crumbtrail.people..")
          .layer("bakelog")
          .definedBy("crumbtrail.bakelog..")
          .layer("trends")
          .definedBy("crumbtrail.trends..")
          .layer("study")
          .definedBy("crumbtrail.study..")
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
          .whereLayer("study")
          .mayOnlyBeAccessedByLayers("api", "web", "cli")
          .whereLayer("bakelog")
          .mayOnlyBeAccessedByLayers("study", "web", "cli")
          .whereLayer("trends")
          .mayOnlyBeAccessedByLayers("bakelog", "study", "api", "web", "cli")
          .whereLayer("people")
          .mayOnlyBeAccessedByLayers("bakelog", "web", "cli")
          .whereLayer("report")
          .mayOnlyBeAccessedByLayers("bakelog", "study", "api", "web", "cli")
          .whereLayer("findings")
          .mayOnlyBeAccessedByLayers(
              "advice", "compare", "lessons", "report", "handbook", "accuracy")
          .whereLayer("advice")
          .mayOnlyBeAccessedByLayers("lessons", "report", "handbook", "accuracy", "web", "cli")
          .whereLayer("lessons")
          .mayOnlyBeAccessedByLayers("report", "study", "handbook", "api", "web", "cli")
          .whereLayer("rules")
          .mayOnlyBeAccessedByLayers(
              "findings", "advice", "lessons", "report", "handbook", "accuracy", "cli")
          .whereLayer("workup")
          .mayOnlyBeAccessedByLayers(
              "rules", "findings", "advice", "compare", "lessons", "report", "handbook", "accuracy")
          .whereLayer("picture")
          .mayOnlyBeAccessedByLayers("rules", "lessons", "report", "handbook", "web", "cli")
          .whereLayer("formula")
          .mayOnlyBeAccessedByLayers("workup", "advice", "compare", "report")
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
  static final ArchRule only_the_store_sees_databases =
      noClasses()
          .that()
          .resideOutsideOfPackage("crumbtrail.bakelog.store..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.sql..",
              "javax.sql..",
              "org.h2..",
              "org.postgresql..",
              "org.jdbi..",
              "org.flywaydb..",
              "com.zaxxer..")
          .because("where bakes are kept is a detail, and a log can move from a file to a server");

  @ArchTest
  static final ArchRule what_somebody_may_see_is_decided_in_one_place =
      noClasses()
          .that()
          .resideInAPackage("crumbtrail.web..")
          .and()
          .doNotHaveFullyQualifiedName("crumbtrail.web.Sight")
          .should()
          .callMethod(LogStore.class, "of", Scope.class)
          .because("a page that asks for bakes by itself could forget whose they are");

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

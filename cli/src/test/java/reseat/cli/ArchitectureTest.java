package reseat.cli;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Holds the commands and reports to the layout described in DEVELOPERS.md. */
@AnalyzeClasses(packages = "reseat.cli", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule onlyCommandsParseTheCommandLine =
      noClasses()
          .that()
          .resideOutsideOfPackage("reseat.cli.command..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..");

  @ArchTest
  static final ArchRule onlyMainTouchesTheStandardStreams =
      noClasses().that().doNotBelongToAnyOf(Main.class).should(ACCESS_STANDARD_STREAMS);

  @ArchTest
  static final ArchRule onlyMainEndsTheProcess =
      noClasses()
          .that()
          .doNotBelongToAnyOf(Main.class)
          .should()
          .callMethod(System.class, "exit", int.class);
}

package reseat.plots;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Holds the pictures to the layout described in DEVELOPERS.md: a result in, a picture out. */
@AnalyzeClasses(packages = "reseat.plots", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule onlyChartsUseTheChartLibrary =
      noClasses()
          .that()
          .resideOutsideOfPackage("reseat.plots.chart..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.knowm..", "de.erichseifert..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule picturesAreDrawnFromResultsNotFromFiles =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("reseat.designfile..", "reseat.study..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule picturesNeverPrint =
      NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.allowEmptyShould(true);
}

package reseat.plots;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import reseat.plots.chart.HistogramChart;
import reseat.plots.chart.ParetoChart;
import reseat.plots.scene.ScenePainter;
import reseat.plots.scene.Typeface;

/** Holds the pictures to the layout described in DEVELOPERS.md: a result in, a picture out. */
@AnalyzeClasses(packages = "reseat.plots", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule onlyBitmapsOfChartsUseTheChartLibrary =
      noClasses()
          .that()
          .resideOutsideOfPackage("reseat.plots.chart.bitmap")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.knowm..");

  /** Everything else is drawn in a browser too, which has none of them. */
  @ArchTest
  static final ArchRule onlyBitmapsUseTheGraphicsClassesOfJava =
      noClasses()
          .that()
          .resideOutsideOfPackage("reseat.plots.chart.bitmap")
          .and()
          .doNotBelongToAnyOf(ScenePainter.class, Typeface.class)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.awt..", "javax.imageio..", "javax.swing..");

  @ArchTest
  static final ArchRule onlyChartsThatAPageDoesNotDrawHoldBitmaps =
      noClasses()
          .that()
          .resideOutsideOfPackage("reseat.plots.chart.bitmap")
          .and()
          .doNotBelongToAnyOf(HistogramChart.class, ParetoChart.class)
          .should()
          .dependOnClassesThat()
          .resideInAPackage("reseat.plots.chart.bitmap");

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

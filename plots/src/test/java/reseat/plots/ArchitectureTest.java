package reseat.plots;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;
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

  /** Of Math only what IEEE 754 fixes to the bit, and whole numbers. */
  private static final Set<String> EXACT =
      Set.of("abs", "min", "max", "sqrt", "floor", "ceil", "signum", "floorMod", "floorDiv");

  @ArchTest
  static final ArchRule everyEngineFindsTheSameNumbers =
      noClasses()
          .should()
          .accessTargetWhere(
              DescribedPredicate.describe(
                  "a function of Math that engines compute differently",
                  a ->
                      a.getTargetOwner().isEquivalentTo(StrictMath.class)
                          || (a.getTargetOwner().isEquivalentTo(Math.class)
                              && !EXACT.contains(a.getName()))))
          .because("its last bits differ from one engine to the next; use Elementary");

  @ArchTest
  static final ArchRule everyEngineWritesTheSameTexts =
      noClasses()
          .should()
          .accessTargetWhere(
              DescribedPredicate.describe(
                  "what writes a double or fills a pattern", ArchitectureTest::letsTheEngineWrite))
          .because("engines write numbers differently; use PrintedNumber and FilledText");

  /** Whether a class lets the engine write a number of its own way. */
  private static boolean letsTheEngineWrite(JavaAccess<?> a) {
    JavaClass owner = a.getTargetOwner();
    String name = a.getName();
    if (owner.isAssignableTo(java.util.Formatter.class)
        || owner.isAssignableTo(java.text.NumberFormat.class)
        || (owner.isAssignableTo(java.io.PrintStream.class) && name.matches("printf|format"))
        || (owner.isEquivalentTo(String.class) && name.matches("format|formatted"))
        || (owner.isEquivalentTo(Double.class) && name.equals("toString"))) {
      return true;
    }
    boolean takesReal =
        a.getTarget() instanceof CodeUnitAccessTarget unit
            && unit.getRawParameterTypes().stream()
                .anyMatch(t -> t.isEquivalentTo(double.class) || t.isEquivalentTo(float.class));
    return takesReal
        && ((owner.isAssignableTo(CharSequence.class) && name.matches("append|insert|valueOf"))
            || (owner.isEquivalentTo(java.math.BigDecimal.class) && name.equals("valueOf")));
  }
}

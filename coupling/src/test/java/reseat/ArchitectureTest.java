package reseat;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.math3.util.FastMath;
import reseat.design.CheckKind;

/** Holds the library to the layout described in DEVELOPERS.md. */
@AnalyzeClasses(packages = "reseat", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

  /** The packages in import order: each may import those before it. */
  private static final List<String> IMPORT_ORDER =
      List.of(
          "elementary",
          "units",
          "toml",
          "csv",
          "space",
          "numerics",
          "material",
          "contact",
          "seat",
          "ballmount",
          "preload",
          "design",
          "designfile",
          "equilibrium",
          "seating",
          "remount",
          "repeatability",
          "interchange",
          "readings",
          "budget",
          "check",
          "making",
          "study",
          "remedy",
          "search",
          "verification");

  /** Guards the other rules against a search that finds nothing; raise it as the library grows. */
  private static final int CLASSES_AT_LEAST = 400;

  @ArchTest
  static final ArchRule aPackageImportsOnlyThoseBeforeIt =
      classes().should(importOnlyPackagesBeforeTheirOwn());

  @ArchTest
  static final ArchRule packagesFormNoCycle =
      slices().matching("reseat.(*)..").should().beFreeOfCycles();

  @ArchTest static final ArchRule theLibraryNeverPrints = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

  @ArchTest
  static final ArchRule theLibraryNeverEndsTheProcess =
      noClasses().should().callMethod(System.class, "exit", int.class);

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
  static final ArchRule elementaryFunctionsStandInOnePlace =
      noClasses()
          .that(resideOutside("elementary"))
          .should()
          .dependOnClassesThat()
          .areAssignableTo(FastMath.class);

  @ArchTest
  static final ArchRule everyEngineWritesTheSameTexts =
      noClasses()
          .should()
          .accessTargetWhere(
              DescribedPredicate.describe(
                  "what writes a double or fills a pattern", ArchitectureTest::letsTheEngineWrite))
          .because("engines write numbers differently; use PrintedNumber and FilledText");

  @ArchTest
  static final ArchRule matrixLibraryServesNumericsAndStatisticsOnly =
      noClasses()
          .that(resideOutside("numerics", "readings"))
          .should()
          .dependOnClassesThat(resideInAnyPackage("org.ejml.."));

  @ArchTest
  static final ArchRule theEquilibriumUsesNoGeneralSolver =
      noClasses()
          .that()
          .resideInAnyPackage("reseat.space..", "reseat.seat..", "reseat.equilibrium..")
          .should()
          .dependOnClassesThat(resideInAnyPackage("org.apache.commons.math3.."));

  @ArchTest
  static final ArchRule aForeignReaderOfDesignFilesStaysAnOracleOfTests =
      noClasses().should().dependOnClassesThat(resideInAnyPackage("org.tomlj..", "org.antlr.."));

  @ArchTest
  static void theRulesSawTheLibrary(JavaClasses seen) {
    assertThat(seen.size()).isGreaterThanOrEqualTo(CLASSES_AT_LEAST);
  }

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

  /** Words of checks that mean another thing where they stand: a key of a file, a cause, a part. */
  private static final Set<String> OTHER_THINGS =
      Set.of(
          "designfile/MountingReader: bond",
          "remedy/MountLadders: bond",
          "designfile/WishReader: repeatability",
          "designfile/SizeTargets: repeatability",
          "designfile/SizeTargets: stiffness",
          "remount/Cause: preload line",
          "interchange/InterchangeScatter: repeatability",
          "study/OutputCatalog: stiffness",
          "study/OutputCatalog: lift-off",
          "check/PivotCheck: stiffness",
          "interchange/InterchangeSimulation: interchange",
          "verification/RemountTrends: repeatability");

  @ArchTest
  static void checksAreNamedByTheirConstantsAndNotByWords(JavaClasses seen) throws IOException {
    Path root = Path.of("src/main/java/reseat");
    Set<String> found = new TreeSet<>();
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        String name = root.relativize(file).toString().replace('\\', '/').replace(".java", "");
        String text = Files.readString(file);
        for (CheckKind kind : CheckKind.values()) {
          String words = kind.words();
          if (!name.equals("design/CheckKind") && text.contains('"' + words + '"')) {
            found.add(name + ": " + words);
          }
        }
      }
    }
    assertThat(found)
        .as("literals that spell a check of CheckKind, beside those that mean another thing")
        .containsExactlyInAnyOrderElementsOf(OTHER_THINGS);
  }

  private static DescribedPredicate<JavaClass> resideOutside(String... packages) {
    String[] patterns =
        Stream.of(packages).map(name -> "reseat." + name + "..").toArray(String[]::new);
    return DescribedPredicate.not(resideInAnyPackage(patterns));
  }

  private static ArchCondition<JavaClass> importOnlyPackagesBeforeTheirOwn() {
    return new ArchCondition<>("import only packages before their own in " + IMPORT_ORDER) {
      @Override
      public void check(JavaClass user, ConditionEvents events) {
        int own = place(user);
        if (own < 0) {
          events.add(
              SimpleConditionEvent.violated(
                  user, user.getName() + " is in a package that the import order does not list"));
          return;
        }
        user.getDirectDependenciesFromSelf().stream()
            .filter(use -> use.getTargetClass().getPackageName().startsWith("reseat."))
            .filter(use -> place(use.getTargetClass()) > own)
            .forEach(use -> events.add(SimpleConditionEvent.violated(user, use.getDescription())));
      }
    };
  }

  private static int place(JavaClass member) {
    String[] parts = member.getPackageName().split("\\.", -1);
    return parts.length < 2 ? -1 : IMPORT_ORDER.indexOf(parts[1]);
  }
}

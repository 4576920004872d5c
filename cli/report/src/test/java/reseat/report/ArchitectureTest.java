package reseat.report;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;

/** Holds the reporting layer to the rooms described in DEVELOPERS.md. */
@AnalyzeClasses(packages = "reseat.report", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

  /** The rooms in import order: each may import those before it. */
  private static final List<String> ROOMS =
      List.of(
          "page",
          "form",
          "check",
          "remount",
          "interchange",
          "readings",
          "shop",
          "ballmount",
          "search",
          "fullreport",
          "catalog");

  /** Guards the other rules against a search that finds nothing; raise it as the layer grows. */
  private static final int CLASSES_AT_LEAST = 100;

  @ArchTest
  static final ArchRule aRoomImportsOnlyThoseBeforeIt =
      classes().should(importOnlyRoomsBeforeTheirOwn());

  @ArchTest
  static final ArchRule roomsFormNoCycle =
      slices().matching("reseat.report.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule reportsKnowNeitherCommandsNorTheOptionParser =
      noClasses().should().dependOnClassesThat(resideInAnyPackage("reseat.cli..", "picocli.."));

  @ArchTest static final ArchRule reportsNeverPrint = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

  @ArchTest
  static final ArchRule reportsNeverEndTheProcess =
      noClasses().should().callMethod(System.class, "exit", int.class);

  @ArchTest
  static void theRulesSawTheLayer(JavaClasses seen) {
    assertThat(seen.size()).isGreaterThanOrEqualTo(CLASSES_AT_LEAST);
  }

  private static ArchCondition<JavaClass> importOnlyRoomsBeforeTheirOwn() {
    return new ArchCondition<>("import only rooms before their own in " + ROOMS) {
      @Override
      public void check(JavaClass user, ConditionEvents events) {
        int own = place(user);
        if (own < 0) {
          events.add(
              SimpleConditionEvent.violated(
                  user, user.getName() + " is in a room that the import order does not list"));
          return;
        }
        user.getDirectDependenciesFromSelf().stream()
            .filter(use -> use.getTargetClass().getPackageName().startsWith("reseat.report."))
            .filter(use -> place(use.getTargetClass()) > own)
            .forEach(use -> events.add(SimpleConditionEvent.violated(user, use.getDescription())));
      }
    };
  }

  /** Place of a class's room in the order; that of the layer's own package comment is the first. */
  private static int place(JavaClass one) {
    String room = one.getPackageName().replace("reseat.report.", "").replace(".made", "");
    return room.equals("reseat.report") ? 0 : ROOMS.indexOf(room);
  }
}

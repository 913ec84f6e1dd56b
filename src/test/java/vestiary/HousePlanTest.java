package vestiary;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.RequestScoped;
import java.sql.Connection;
import java.sql.DriverManager;
import java.time.Clock;
import java.util.Set;
import java.util.function.Predicate;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;

/** Who may know whom, and what things are called. */
class HousePlanTest {

  private static final JavaClasses HOUSE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("vestiary");

  private static final Set<String> EMPTY_WORDS =
      Set.of(
          "Manager",
          "Helper",
          "Util",
          "Utils",
          "Impl",
          "Processor",
          "Data",
          "Info",
          "Common",
          "Base",
          "Service");

  @Test
  void the_calendar_knows_the_jdk_alone() {
    coreKnowsOnly("vestiary.calendar..");
  }

  @Test
  void vesting_knows_the_calendar() {
    coreKnowsOnly("vestiary.vesting..", "vestiary.calendar..");
  }

  @Test
  void patterns_know_the_calendar_and_the_library_of_recurrences() {
    coreKnowsOnly("vestiary.pattern..", "vestiary.calendar..", "org.dmfs..");
  }

  @Test
  void allocation_knows_vesting_and_the_calendar() {
    coreKnowsOnly(
        "vestiary.allocation..",
        "vestiary.vesting..",
        "vestiary.calendar..",
        "com.google.ortools..",
        "org.ojalgo..");
  }

  @Test
  void the_libraries_that_solve_are_known_in_one_room() {
    noClasses()
        .that()
        .resideOutsideOfPackage("vestiary.allocation.solver..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("com.google.ortools..", "org.ojalgo..")
        .check(HOUSE);
  }

  @Test
  void rows_are_reached_by_their_own_feature_alone() {
    classes()
        .should(never("reach another feature's rows", HousePlanTest::isRowElsewhere))
        .check(HOUSE);
  }

  @Test
  void features_know_each_other_in_one_direction() {
    slices().matching("vestiary.(*)..").should().beFreeOfCycles().check(HOUSE);
  }

  @Test
  void only_what_comes_before_a_cluster_is_known_or_waits_for_all_reads_past_hibernate() {
    noClasses()
        .that()
        .resideOutsideOfPackages("vestiary.access..", "vestiary.backup..", "vestiary.regrouping..")
        .and()
        .doNotHaveFullyQualifiedName("vestiary.exchange.FirstStart")
        .and()
        .haveNameNotMatching("vestiary\\.(LocalDatabase|OwnDatabase|LimitedRole|Login|Main)")
        .and()
        .doNotHaveFullyQualifiedName("vestiary.plan.PlanJobs")
        .and()
        .doNotHaveFullyQualifiedName("vestiary.live.ChangeBell")
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(
            DataSource.class, AgroalDataSource.class, Connection.class, DriverManager.class)
        .check(HOUSE);
  }

  @Test
  void no_query_is_native_since_those_see_every_cluster() {
    noClasses().should().callMethodWhere(named("createNative.*")).check(HOUSE);
  }

  @Test
  void a_request_scoped_bean_is_reached_through_methods_alone() {
    fields()
        .that()
        .areDeclaredInClassesThat()
        .areAnnotatedWith(RequestScoped.class)
        .should()
        .bePrivate()
        .check(HOUSE);
  }

  @Test
  void the_time_is_read_from_a_clock_that_a_test_can_set() {
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("vestiary.Main")
        .and()
        .doNotHaveFullyQualifiedName("vestiary.LocalDatabase")
        .should()
        .callMethodWhere(describe("reads the machine's clock", HousePlanTest::readsMachineClock))
        .check(HOUSE);
  }

  @Test
  void no_name_ends_in_a_word_that_says_nothing() {
    classes()
        .should(
            new ArchCondition<JavaClass>("not end in a word that says nothing") {
              @Override
              public void check(JavaClass type, ConditionEvents events) {
                String[] words = type.getSimpleName().split("(?<=[a-z0-9])(?=[A-Z])");
                boolean empty = EMPTY_WORDS.contains(words[words.length - 1]);
                events.add(new SimpleConditionEvent(type, !empty, type.getName()));
              }
            })
        .check(HOUSE);
  }

  private static void coreKnowsOnly(String core, String... below) {
    String[] known = new String[below.length + 2];
    known[0] = "java..";
    known[1] = core;
    System.arraycopy(below, 0, known, 2, below.length);
    classes()
        .that()
        .resideInAPackage(core)
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(known)
        .check(HOUSE);
  }

  private static boolean isRowElsewhere(Dependency dependency) {
    JavaClass target = dependency.getTargetClass().getBaseComponentType();
    return target.getPackageName().startsWith("vestiary")
        && outermost(target).getSimpleName().matches(".*Rows?")
        && !target.getPackageName().equals(dependency.getOriginClass().getPackageName());
  }

  private static JavaClass outermost(JavaClass type) {
    return type.getEnclosingClass().map(HousePlanTest::outermost).orElse(type);
  }

  private static boolean readsMachineClock(JavaMethodCall call) {
    String owner = call.getTargetOwner().getName();
    String name = call.getName();
    boolean withoutClock =
        call.getTarget().getRawParameterTypes().stream()
            .noneMatch(p -> p.isEquivalentTo(Clock.class));
    return owner.startsWith("java.time.") && name.equals("now") && withoutClock
        || owner.equals("java.lang.System") && name.equals("currentTimeMillis");
  }

  private static DescribedPredicate<JavaMethodCall> named(String regex) {
    return describe("is named " + regex, call -> call.getName().matches(regex));
  }

  private static ArchCondition<JavaClass> never(String what, Predicate<Dependency> forbidden) {
    return new ArchCondition<>("never " + what) {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        type.getDirectDependenciesFromSelf().stream()
            .filter(forbidden)
            .forEach(d -> events.add(SimpleConditionEvent.violated(type, d.getDescription())));
      }
    };
  }
}

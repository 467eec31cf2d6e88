package twostrides;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import twostrides.rink.Rink;

/** The layout that DEVELOPERS.md describes, held by a test. */
class ArchitectureTest {

  /** What each package may import of the project, besides itself. */
  private static final Map<String, Set<String>> MAY_IMPORT =
      Map.ofEntries(
          Map.entry("toml", Set.of()),
          Map.entry("sheet", Set.of("toml")),
          Map.entry("output", Set.of()),
          Map.entry("cache", Set.of("output")),
          Map.entry("rink", Set.of()),
          Map.entry("game", Set.of("sheet", "rink", "rulebook")),
          Map.entry("starter", Set.of("sheet")),
          Map.entry("sanity", Set.of("game", "sheet", "rink")),
          Map.entry("tag", Set.of("sheet", "game", "rink", "serve", "picture")),
          Map.entry("picture", Set.of("rink")),
          Map.entry("serve", Set.of()),
          Map.entry("tracking", Set.of("sheet", "rink", "game")),
          Map.entry("rulebook", Set.of("rink", "toml")),
          Map.entry("race", Set.of("rink", "rulebook", "stats", "toml")),
          Map.entry("stats", Set.of()),
          Map.entry("exits", Set.of("game", "rink", "rulebook", "race", "stats")),
          Map.entry("season", Set.of("exits", "game", "race", "rink", "stats", "sheet", "output")),
          Map.entry("findings", Set.of("season", "exits", "game", "race", "rink", "stats")),
          Map.entry(
              "book",
              Set.of(
                  "findings",
                  "season",
                  "exits",
                  "game",
                  "race",
                  "rink",
                  "stats",
                  "sheet",
                  "output")),
          Map.entry("demo", Set.of("rink", "output")),
          Map.entry("cli", Set.of("*")));

  private static final String PENALTY = "twostrides.rulebook.penalty..";

  private static final JavaClasses OURS =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("twostrides");

  @Test
  void packagesAreFreeOfCycles() {
    slices().matching("twostrides.(*)..").should().beFreeOfCycles().check(OURS);
  }

  @Test
  void everyPackageIsOnTheList() {
    Set<String> found = OURS.stream().map(ArchitectureTest::topPackage).collect(Collectors.toSet());
    Set<String> strangers =
        found.stream().filter(p -> !MAY_IMPORT.containsKey(p)).collect(Collectors.toSet());
    org.junit.jupiter.api.Assertions.assertEquals(Set.of(), strangers);
  }

  @TestFactory
  Stream<DynamicTest> packagesKeepToTheirImports() {
    return MAY_IMPORT.entrySet().stream()
        .filter(e -> !e.getValue().contains("*"))
        .map(
            e ->
                DynamicTest.dynamicTest(
                    e.getKey(),
                    () -> {
                      List<String> forbidden =
                          MAY_IMPORT.keySet().stream()
                              .filter(p -> !p.equals(e.getKey()) && !e.getValue().contains(p))
                              .map(p -> "twostrides." + p + "..")
                              .toList();
                      ArchRule rule =
                          noClasses()
                              .that()
                              .resideInAPackage("twostrides." + e.getKey() + "..")
                              .should()
                              .dependOnClassesThat()
                              .resideInAnyPackage(forbidden.toArray(String[]::new))
                              .allowEmptyShould(true);
                      rule.check(OURS);
                    }));
  }

  /** The book uses the penalties; they know no book, and no package of ours at all. */
  @Test
  void penaltiesImportNothingOfOurs() {
    noClasses()
        .that()
        .resideInAPackage(PENALTY)
        .should()
        .dependOnClassesThat(resideInAPackage("twostrides..").and(resideOutsideOfPackage(PENALTY)))
        .check(OURS);
  }

  /** One game is read without any table; tables begin where games come together. */
  @Test
  void whatDecidesKnowsNoTables() {
    noClasses()
        .that()
        .resideInAnyPackage(
            "twostrides.game..",
            "twostrides.exits..",
            "twostrides.rulebook..",
            "twostrides.race..",
            "twostrides.stats..",
            "twostrides.tracking..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("tech.tablesaw..")
        .check(OURS);
  }

  /** Pictures know counts and lengths; what they are of, their page knows. */
  @Test
  void picturesKnowNoFindings() {
    noClasses()
        .that()
        .resideInAPackage("twostrides.book.chart..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "twostrides.findings..",
            "twostrides.season..",
            "twostrides.exits..",
            "twostrides.book",
            "twostrides.book.page..")
        .check(OURS);
  }

  /** A game has penalties, but its rows are read before any book rules on them. */
  @Test
  void gamesKnowPenaltiesButNoBook() {
    noClasses()
        .that()
        .resideInAPackage("twostrides.game..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("twostrides.rulebook")
        .check(OURS);
  }

  /** The demo is what the pipeline is held against: it takes lengths from the rink, no answers. */
  @Test
  void theDemoAsksTheRinkForLengthsOnly() {
    noClasses()
        .that()
        .resideInAPackage("twostrides.demo..")
        .should()
        .callMethodWhere(
            DescribedPredicate.describe(
                "a method of Rink that decides",
                call ->
                    call.getTargetOwner().isEquivalentTo(Rink.class)
                        && !call.getTarget().getRawParameterTypes().isEmpty()))
        .check(OURS);
  }

  @Test
  void onlyTheCommandLineTouchesTheConsole() {
    noClasses()
        .that()
        .resideOutsideOfPackage("twostrides.cli..")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .check(OURS);
  }

  @Test
  void onlyTheCommandLineEndsTheProgram() {
    classes()
        .that()
        .resideOutsideOfPackage("twostrides.cli..")
        .should(
            com.tngtech.archunit.lang.conditions.ArchConditions.not(
                com.tngtech.archunit.lang.conditions.ArchConditions.callMethod(
                    System.class, "exit", int.class)))
        .check(OURS);
  }

  private static String topPackage(JavaClass c) {
    String[] parts = c.getPackageName().split("\\.", -1);
    return parts.length > 1 ? parts[1] : "";
  }
}

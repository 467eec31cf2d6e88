package twostrides.game;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tech.tablesaw.api.Table;
import twostrides.exits.Settings;
import twostrides.findings.Reviewer;
import twostrides.findings.SeasonReview;
import twostrides.findings.TeamReview;
import twostrides.season.Columns;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.SheetException;

/** Names leave every game, and the counts stay with the same player. */
class AnonymousTest {

  private static final List<String> NAMES =
      List.of("8 Sole Brandt", "8 Ida Falk", "#17 Noor Vance", "Ada Lowe", "Bea Marsh", "123 Long");

  private static final Set<String> CODES =
      Set.of("No. 8", "No. 8b", "No. 17", "player 1", "player 2", "player 3");

  @TempDir static Path dir;

  private static SheetsRead named;

  /** Four games of play rows and one of tags; every column that holds a name has some. */
  @BeforeAll
  static void read() throws IOException, SheetException {
    Random dice = new Random(7);
    StringBuilder rows =
        new StringBuilder(
            "game,period,clock,team,player,other_player,action,outcome,x_m,y_m,on_ice,"
                + "opponent_on_ice,penalty,served_by\n");
    for (int i = 0; i < 600; i++) {
      String away = List.of("Wolves", "Otters").get(i / 150 % 2);
      String team = dice.nextBoolean() ? "Herons" : away;
      boolean out = i % 2 == 1;
      rows.append(
          String.format(
              Locale.ROOT,
              "game %d,%d,%d:%02d,%s,%s,%s,%s,%s,%d,3,%s,%s,%s,%s%n",
              1 + i / 150,
              1 + i % 150 / 50,
              19 - i % 50 / 3,
              59 - i % 50 % 3 * 20,
              team,
              name(dice),
              i % 5 == 1 ? name(dice) : "",
              i % 25 == 24 ? "penalty" : i % 5 == 1 ? "pass" : out ? "release" : "recovery",
              i % 25 != 24 && i % 5 == 1 ? "missed" : "",
              out ? -9 : -20,
              name(dice) + "; 17",
              name(dice) + "; 8",
              i % 25 == 24 ? "minor" : "",
              i % 50 == 24 ? name(dice) : i % 50 == 49 ? "nobody" : ""));
    }
    StringBuilder tags = new StringBuilder("game,period,clock,team,player,way_out,x_m,y_m,ended\n");
    for (int i = 0; i < 40; i++) {
      tags.append(
          String.format(
              Locale.ROOT,
              "tagged,1,%d:30,%s,%s,chip,-9,3,opponent%n",
              19 - i / 3,
              i % 4 == 3 ? "Otters" : "Herons",
              name(dice)));
    }
    named =
        SeasonReader.read(
            List.of(
                Files.writeString(dir.resolve("plays.csv"), rows),
                Files.writeString(dir.resolve("tags.csv"), tags)),
            Optional.empty(),
            false,
            n -> {});
    assertEquals(List.of(), named.setAside());
  }

  private static String name(Random dice) {
    return NAMES.get(dice.nextInt(NAMES.size()));
  }

  private static twostrides.season.Season season(List<Game> games, List<TaggedGame> tagged) {
    return twostrides.season.Season.of(games, tagged, Settings.DEFAULT, SkatersAtRelease.NONE);
  }

  private static twostrides.season.Season hidden() {
    return season(Anonymous.games(named.games()), Anonymous.tagged(named.tagged()));
  }

  private static void nameless(String text, String where) {
    for (String name : NAMES) {
      for (String word : name.split(" ", -1)) {
        if (word.chars().anyMatch(Character::isLetter)) {
          assertFalse(text.contains(word), word + " in " + where);
        }
      }
    }
  }

  @Test
  void noNameIsLeftInAnyGame() {
    assertTrue(named.games().toString().contains("Brandt"));
    nameless(Anonymous.games(named.games()).toString(), "games");
    nameless(Anonymous.tagged(named.tagged()).toString(), "tagged games");
  }

  @Test
  void noNameIsLeftInAnyTable() {
    for (Supplier<Table> made : hidden().tables()) {
      Table table = made.get();
      nameless(table.printAll(), table.name());
    }
  }

  @Test
  void numbersStayAndTwoPlayersNeverShareACode() {
    for (String team : List.of("Herons", "Wolves", "Otters")) {
      Set<String> codes =
          Anonymous.games(named.games()).stream()
              .flatMap(g -> g.rows().stream())
              .filter(r -> r.team().equals(Optional.of(team)))
              .flatMap(r -> r.player().stream())
              .collect(Collectors.toCollection(TreeSet::new));
      assertEquals(new TreeSet<>(CODES), codes, team);
    }
    Set<String> tagged =
        Anonymous.tagged(named.tagged()).stream()
            .flatMap(g -> g.exits().stream())
            .filter(e -> e.team().equals("Herons"))
            .flatMap(e -> e.player().stream())
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(new TreeSet<>(CODES), tagged);
  }

  /** Numbers alone in a list of skaters, and an empty box, are no names. */
  @Test
  void bareNumbersAndAnEmptyBoxStay() {
    List<PlayRow> rows =
        Anonymous.games(named.games()).stream().flatMap(g -> g.rows().stream()).toList();
    assertTrue(rows.stream().allMatch(r -> r.ownOnIce().contains("No. 17")));
    assertTrue(rows.stream().allMatch(r -> r.opponentOnIce().contains("No. 8")));
    assertEquals(
        named.games().stream()
            .flatMap(g -> g.rows().stream())
            .filter(r -> r.servedBy().equals(Optional.of("nobody")))
            .count(),
        rows.stream().filter(r -> r.servedBy().equals(Optional.of("nobody"))).count());
  }

  @Test
  void aPlayerKeepsTheirOwnCountsUnderTheCode() {
    SeasonReview with = Reviewer.review(season(named.games(), List.of()));
    SeasonReview without = Reviewer.review(season(Anonymous.games(named.games()), List.of()));
    assertEquals(3, with.teams().size());
    for (TeamReview team : with.teams()) {
      assertEquals(
          with.playersOf(team.team()).stream().map(p -> p.profile().attempts()).toList(),
          without.playersOf(team.team()).stream().map(p -> p.profile().attempts()).toList());
      assertEquals(NAMES.size(), with.playersOf(team.team()).size());
    }
  }

  @Test
  void theNamedGamesAreNotChanged() {
    Anonymous.games(named.games());
    assertTrue(
        season(named.games(), named.tagged()).exits().stringColumn(Columns.PLAYER).asList().stream()
            .anyMatch(p -> p.contains("Sole Brandt")));
  }
}

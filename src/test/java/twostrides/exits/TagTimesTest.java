package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.game.SeasonReader;
import twostrides.rulebook.Bookshelf;
import twostrides.stats.CensoredTime;

/** Rows of a tag sheet that say what happened without an exit; worked out by hand. */
class TagTimesTest {

  private static final String HEADER =
      "home,away,period,clock,team,way_out,ended,faceoff,strength,x_m,y_m\n";

  private static final String EXITS =
      """
      Herons,Wolves,1,19:30,Herons,chip,,,even,,
      Herons,Wolves,1,19:10,Herons,long clearance,icing,,even,,
      Herons,Wolves,1,18:40,Herons,chip,,,shorthanded,,
      Herons,Wolves,1,18:10,Herons,kept in,goal against,,shorthanded,,
      """;

  private static final String WHOLE =
      """
      Herons,Wolves,1,20:00,Herons,,,won,,,
      Herons,Wolves,1,19:30,Herons,chip,,,even,,
      Herons,Wolves,1,19:18,Herons,,opponent,,,,
      Herons,Wolves,1,19:10,Herons,long clearance,icing,,even,,
      Herons,Wolves,1,19:06,Wolves,,,won,,,
      Herons,Wolves,1,18:50,Herons,,,,shorthanded,,
      Herons,Wolves,1,18:40,Herons,chip,,,shorthanded,,
      Herons,Wolves,1,18:20,Herons,,opponent,,,,
      Herons,Wolves,1,18:10,Herons,kept in,goal against,,shorthanded,,
      Herons,Wolves,1,18:10,Wolves,,,lost,,,
      Herons,Wolves,1,18:10,Herons,,,,even,,
      Herons,Wolves,1,17:00,Wolves,,icing,,,-5,3
      Herons,Wolves,1,17:00,Wolves,,,won,,,
      """;

  @TempDir Path dir;

  private GameRecords read(String rows) throws Exception {
    Path sheet = Files.writeString(dir.resolve("tags.csv"), HEADER + rows);
    var season = SeasonReader.at(sheet.toString());
    assertEquals(List.of(), season.setAside());
    assertEquals(rows.lines().count(), season.rowsUsed());
    return TagReader.read(
        season.tagged().get(0), Settings.DEFAULT.withBook(Bookshelf.book("iihf")));
  }

  @Test
  void oneOfThePassesOfAGameGivesTheWholeBook() throws Exception {
    GameRecords game = read(WHOLE);
    assertEquals(4, game.exits().size());
    assertEquals(
        List.of(
            Optional.of(new CensoredTime(12, true)),
            Optional.of(new CensoredTime(4, false)),
            Optional.of(new CensoredTime(20, true)),
            Optional.empty()),
        game.exits().stream().map(e -> e.outcome().reentry()).toList());

    assertEquals(2, game.restarts().size());
    Restart first = game.restarts().get(0);
    assertEquals(Optional.of(false), first.faceOff().won());
    assertEquals(OptionalDouble.of(54), first.faceOff().elapsed());
    assertEquals(OptionalDouble.of(4), first.behind().orElseThrow().secondsToFaceOff());
    Restart second = game.restarts().get(1);
    assertEquals("Wolves", second.at().team());
    assertEquals(Optional.of(true), second.faceOff().won());
    assertTrue(second.behind().orElseThrow().exit().isEmpty());
    assertEquals(game.releases(), second.behind().orElseThrow().release().stream().toList());

    assertEquals(1, game.kills().size());
    Kill kill = game.kills().get(0);
    assertEquals("Herons", kill.team());
    assertEquals("Wolves", kill.opponent());
    assertEquals(70, kill.from().elapsed());
    assertEquals(40, kill.seconds());
    assertEquals(2, kill.exits().size());
    assertEquals(1, kill.goalsAgainst());
    assertEquals(OptionalDouble.of(20), kill.timeBought());
    assertEquals(OptionalInt.empty(), kill.attemptsAgainst(), "a tag sheet writes no shots");
    assertEquals(List.of(40.0, 40.0), kill.events().stream().map(Kill.Event::secondsIn).toList());
  }

  /** Exits alone are too far apart to say when a kill began, or when the opponent was back. */
  @Test
  void exitsAloneSayNothingOfIt() throws Exception {
    GameRecords game = read(EXITS);
    assertEquals(4, game.exits().size());
    assertEquals(List.of(), game.kills());
    assertTrue(game.exits().stream().allMatch(e -> e.outcome().reentry().isEmpty()));
    assertEquals(Optional.empty(), game.restarts().get(0).faceOff().won());
  }
}

package twostrides.game;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.sheet.SheetException;

/**
 * Clocks put back at a face-off: what does not count is set aside, the rest and the face-off stay.
 */
class ClockSetBackTest {

  private static final String HEAD = "period,clock,team,player,action,x_m,y_m,stoppage\n";

  @TempDir Path dir;

  /** The lines set aside of a sheet whose rows begin in line 2. */
  private List<Long> aside(String rows) throws IOException, SheetException {
    SheetsRead season = season(rows);
    assertEquals(season.rowsRead(), season.rowsUsed() + season.setAside().size());
    return season.setAside().stream().map(r -> r.row().line()).toList();
  }

  private SheetsRead season(String rows) throws IOException, SheetException {
    Path sheet = Files.writeString(dir.resolve("g.csv"), HEAD + rows);
    return SeasonReader.at(sheet.toString());
  }

  /** A face-off blown dead is not written; the next one stands at the stoppage before. */
  @Test
  void playAfterADrawBlownDeadIsSetAside() throws Exception {
    assertEquals(
        List.of(4L, 5L, 6L),
        aside(
            """
            1,18:59,Herons,4 Berg,release,-12,12,
            1,18:55,Herons,,stoppage,,,icing
            1,18:55,Wolves,9 Vik,touch,20,6,
            1,18:54,Herons,4 Berg,touch,-19,3,
            1,18:53,,,stoppage,,,other
            1,18:55,Wolves,9 Vik,faceoff,21,6.7,
            1,18:54,Wolves,9 Vik,recovery,19,3,
            1,18:53,Wolves,9 Vik,shot,22,3,
            """));
  }

  /**
   * The same with no stoppage written: the face-off counts, not the touches after it on the clock.
   */
  @Test
  void withoutStoppagesTheDrawCounts() throws Exception {
    assertEquals(
        List.of(3L, 4L),
        aside(
            """
            1,18:59,Herons,4 Berg,release,-12,12,
            1,18:54,Wolves,9 Vik,touch,20,6,
            1,18:53,Herons,4 Berg,touch,-19,3,
            1,18:55,Wolves,9 Vik,faceoff,21,6.7,
            1,18:54,Wolves,9 Vik,recovery,19,3,
            1,18:53,Wolves,9 Vik,shot,22,3,
            """));
  }

  /**
   * A clock mended at the whistle: the rows before the face-off count, and stand no later than it.
   */
  @Test
  void aClockMendedAtTheWhistleSetsNothingAside() throws Exception {
    SheetsRead season =
        season(
            """
            1,18:59,Herons,4 Berg,release,-12,12,
            1,18:54,Wolves,9 Vik,touch,-27,6,
            1,18:54,Herons,,stoppage,,,icing
            1,18:55,Wolves,9 Vik,faceoff,21,6.7,
            1,18:52,Wolves,9 Vik,recovery,19,3,
            """);
    assertEquals(List.of(), season.setAside());
    assertEquals(
        List.of(61.0, 65.0, 65.0, 65.0, 68.0),
        season.games().get(0).rows().stream().map(PlayRow::elapsed).toList());
  }

  /** A face-off whose own clock is wrong by more is set aside alone, as any other row. */
  @Test
  void aWrongClockOfADrawIsOneRow() throws Exception {
    assertEquals(
        List.of(5L),
        aside(
            """
            1,18:59,Herons,4 Berg,release,-12,12,
            1,18:54,Wolves,9 Vik,touch,-20,6,
            1,18:53,Wolves,9 Vik,touch,-19,3,
            1,18:57,Wolves,9 Vik,faceoff,21,6.7,
            1,18:51,Herons,4 Berg,touch,-19,3,
            1,18:50,Wolves,9 Vik,recovery,19,3,
            """));
  }

  /** A penalty is served all the same. */
  @Test
  void penaltiesStay() throws Exception {
    assertEquals(
        List.of(4L, 6L),
        aside(
            """
            1,18:59,Herons,4 Berg,release,-12,12,
            1,18:55,,,stoppage,,,goalkeeper
            1,18:55,Wolves,9 Vik,touch,20,6,
            1,18:55,Herons,4 Berg,penalty,,,
            1,18:54,,,stoppage,,,other
            1,18:55,Wolves,9 Vik,faceoff,21,6.7,
            1,18:54,Wolves,9 Vik,recovery,19,3,
            """));
  }
}

package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tech.tablesaw.api.Table;
import twostrides.game.SeasonReader;
import twostrides.game.SheetsRead;
import twostrides.season.Columns;
import twostrides.season.SkatersAtRelease;

class RestartsStageTest {

  private static final String HEAD =
      "game,period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against\n";

  /**
   * Two folders with a file of one name, and releases on the same line of both: a restart names the
   * release of its own game.
   */
  @Test
  void filesOfOneNameKeepTheirOwnReleases(@TempDir Path dir) throws Exception {
    String sent = ",Herons,4 Berg,release,lost,-10,5,5,5\n";
    String back = ",Wolves,9 Vik,recovery,,-12,5,5,5\n";
    String faceoffAt = ",Wolves,9 Vik,faceoff,,21,6.7,5,5\n";
    Path a = Files.createDirectories(dir.resolve("a")).resolve("game.csv");
    Path b = Files.createDirectories(dir.resolve("b")).resolve("game.csv");
    Files.writeString(
        a,
        HEAD
            + "A,1,19:00"
            + sent
            + "A,1,18:50"
            + back
            + "A,1,18:40"
            + sent
            + "A,1,18:36"
            + faceoffAt);
    Files.writeString(
        b,
        HEAD
            + "B,1,19:00"
            + back
            + "B,1,18:50"
            + back
            + "B,1,18:40"
            + sent
            + "B,1,18:36"
            + faceoffAt);
    SheetsRead season = SeasonReader.at(a.toString(), b.toString());
    Table t =
        twostrides.season.Season.of(
                season.games(), season.tagged(), Settings.DEFAULT, SkatersAtRelease.NONE)
            .restarts();
    assertEquals(2, t.rowCount());
    assertEquals("A", t.stringColumn(Columns.GAME).get(0));
    assertEquals(2, t.intColumn(Columns.RELEASE).getInt(0));
    assertEquals("B", t.stringColumn(Columns.GAME).get(1));
    assertEquals(1, t.intColumn(Columns.RELEASE).getInt(1));
  }
}

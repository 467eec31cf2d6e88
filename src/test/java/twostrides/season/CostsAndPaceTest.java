package twostrides.season;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.exits.Settings;
import twostrides.game.SeasonReader;
import twostrides.sheet.SheetException;
import twostrides.stats.Count;

/** How much few cases weigh beside what is assumed, and which carries say something of pace. */
class CostsAndPaceTest {

  /** Without a case there is only what is assumed; beside cases it weighs as twenty of them. */
  @Test
  void whatIsAssumedWeighsTwentyCases() {
    Costs none = new Costs(new Count(0, 0), 0, 0, 0, 0);
    double restarts = none.restartAfterGaining();
    double icing = none.icing();
    double loss = none.loss();
    assertEquals(icing, Costs.priorAttemptsAfterIcing());
    Costs costs = new Costs(new Count(9, 30), 60, 80, 8, 20);
    assertEquals((9 + 20 * restarts) / 50, costs.restartAfterGaining(), 1e-12);
    assertEquals((60 + 20 * icing) / 100, costs.icing(), 1e-12);
    assertEquals((8 + 20 * loss) / 40, costs.loss(), 1e-12);
  }

  /**
   * Carries of 1, 2 and 4 s over 3, 8 and 20 m; a touch in the same second, a carry backwards, and
   * one that the opponent ends are not carries up ice. What is assumed: 5.2 m/s, for 20 s.
   */
  @Test
  void aCarryOfASecondSaysSomethingOfPace(@TempDir Path dir) throws IOException, SheetException {
    Path sheet =
        Files.writeString(
            dir.resolve("sheet.csv"),
            """
            period,clock,team,player,action,x_m,y_m
            1,19:00,Herons,4 Berg,recovery,-26,0
            1,18:59,Herons,4 Berg,recovery,-23,0
            1,18:57,Herons,4 Berg,recovery,-15,0
            1,18:57,Herons,4 Berg,recovery,-13,0
            1,18:55,Herons,4 Berg,recovery,-24,0
            1,18:51,Herons,4 Berg,recovery,-4,0
            1,18:48,Wolves,9 Vik,recovery,2,0
            """);
    CarryRates rates =
        Season.of(
                SeasonReader.read(List.of(sheet), Optional.empty(), false, n -> {}).games(),
                List.of(),
                Settings.DEFAULT,
                SkatersAtRelease.NONE)
            .carrying();
    assertEquals(7, rates.secondsOfPace());
    assertEquals((31 + 5.2 * 20) / 27, rates.pace(), 1e-12);
  }
}

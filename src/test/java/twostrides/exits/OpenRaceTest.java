package twostrides.exits;

import java.nio.file.*;
import java.util.*;
import java.util.stream.*;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.Table;
import twostrides.game.Game;
import twostrides.race.*;
import twostrides.rates.*;

class OpenRaceTest {
  @Test
  void dump() throws Exception {
    StringBuilder b =
        new StringBuilder("game,short,missed,own,iced,p,touched,short,waved,past,next,nextx\n");
    List<List<Game>> sets =
        List.of(
            OpenData.games(),
            TrackedReleases.games(OpenData.FOLDER.resolve("tracked-2023/native")));
    for (List<Game> games : sets) {
      Table t = Pipeline.run(games, List.of(), OpenData.SETTINGS).releases();
      Map<String, Game> by = games.stream().collect(Collectors.toMap(Game::id, g -> g));
      List<String> rows =
          IntStream.range(0, t.rowCount())
              .parallel()
              .mapToObj(
                  i -> {
                    Game g = by.get(Cells.text(t, Columns.GAME, i).orElseThrow());
                    if (!(Cells.number(t, Columns.P_ICING, i).orElse(0) > 0)) return "";
                    boolean m = Cells.text(t, Columns.KIND, i).orElseThrow().equals("missed_pass");
                    double x = Cells.number(t, Columns.RELEASE_X_M, i).orElseThrow();
                    SkaterLevel lv =
                        g.id().startsWith("2023-12")
                            ? SkaterLevel.ELITE_MEN
                            : SkaterLevel.ELITE_WOMEN;
                    Scene s =
                        new Scene(
                            g.rink(),
                            x,
                            Cells.number(t, Columns.RELEASE_Y_M, i).orElse(0),
                            (m ? Delivery.MISSED_PASS : Delivery.SENT).forLevel(lv),
                            OptionalDouble.empty(),
                            List.of(),
                            lv);
                    RaceChances c =
                        new RaceModel(s, OpenData.BOOK.raceQuestion())
                            .run(new Draws(1, g.id() + i), 400);
                    double past = PuckSpread.of(s, new Draws(1, g.id() + i), 400).past();
                    return g.id()
                        + ","
                        + Cells.number(t, Columns.SHORT_OF_CENTER_M, i).orElseThrow()
                        + ","
                        + m
                        + ","
                        + g.rink().inOwnZone(x)
                        + ","
                        + Cells.text(t, Columns.RESTART_CAUSE, i).orElse("").startsWith("icing")
                        + ","
                        + c.pIcing()
                        + ","
                        + c.touched() / 400.
                        + ","
                        + c.stoppedShort() / 400.
                        + ","
                        + c.wavedOff() / 400.
                        + ","
                        + past
                        + ","
                        + Cells.text(t, Columns.NEXT_TOUCH, i).orElse("")
                        + ","
                        + Cells.number(t, Columns.NEXT_TOUCH_X_M, i).orElse(-99)
                        + "\n";
                  })
              .toList();
      rows.forEach(b::append);
    }
    Files.writeString(Path.of("/tmp/race/ice.csv"), b);
  }
}

package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.game.SeasonReader;

/**
 * A number that two players of a team wear is nobody's; checks of the sheets doubt such a sheet.
 */
class OnIceNamesTest {

  @TempDir Path dir;

  @Test
  void aNumberOfTwoStaysAsWritten() throws Exception {
    Path sheet =
        Files.writeString(
            dir.resolve("s.csv"),
            """
            home,away,period,clock,team,player,action
            Herons,Wolves,1,19:30,Herons,7 Dahl,recovery
            Herons,Wolves,1,19:20,Herons,7 Ekman,touch
            Herons,Wolves,1,19:10,Wolves,7 Vik,takeaway
            Herons,Wolves,1,19:00,Herons,4 Berg,takeaway
            """);
    OnIceNames names =
        OnIceNames.of(
            SeasonReader.read(List.of(sheet), Optional.empty(), false, n -> {}).games().get(0));
    assertEquals(List.of("4 Berg", "7"), names.of("Herons", List.of("7", "#4")));
    assertEquals(List.of("4", "7 Vik"), names.of("Wolves", List.of("7", "4")));
  }
}

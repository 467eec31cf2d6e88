package twostrides.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import twostrides.stats.Count;
import twostrides.stats.Trend;

class HabitTest {

  private static List<String> stretches(int games) {
    List<Count> byGame = new ArrayList<>();
    for (int g = 1; g <= games; g++) {
      byGame.add(new Count(1, g));
    }
    return Habit.of(byGame).stretches().stream()
        .map(s -> s.label() + ", " + s.count().trials())
        .toList();
  }

  @Test
  void everyGameStandsInOneThird() {
    assertEquals(List.of("games 1 to 2, 3", "games 3 to 4, 7", "games 5 to 7, 18"), stretches(7));
    assertEquals(
        List.of("games 1 to 4, 10", "games 5 to 8, 26", "games 9 to 12, 42"), stretches(12));
  }

  @Test
  void fewerThanThreeGamesAreFewerStretches() {
    assertEquals(List.of("game 1, 1", "game 2, 2"), stretches(2));
    assertEquals(List.of(), stretches(0));
  }

  @Test
  void allGamesAreTheSumAndTheTrendIsThatOfTheGames() {
    List<Count> byGame =
        List.of(new Count(0, 9), new Count(2, 9), new Count(4, 9), new Count(8, 9));
    Habit habit = Habit.of(byGame);
    assertEquals(new Count(14, 36), habit.all());
    assertEquals(Trend.Direction.RISING, habit.trend().direction());
  }
}

package twostrides.league;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * What the review is measured against: a column database that reads the same sheets with declared
 * columns and looks one and two rows ahead, which finds the releases that a stoppage and a face-off
 * followed. It checks nothing, keeps no row numbers and knows no rulebook.
 */
final class WindowQuery {
  private static final String SQL =
      """
      WITH step AS (
        SELECT game, team, action, x_m,
          lead(stoppage) OVER w AS then_stoppage, lead(action, 2) OVER w AS then_action
        FROM read_csv('%s/*.csv', header = true, delim = ',', quote = '"', columns = {
          'game': 'VARCHAR', 'date': 'DATE', 'home': 'VARCHAR', 'away': 'VARCHAR',
          'period': 'UTINYINT', 'clock': 'VARCHAR', 'team': 'VARCHAR', 'player': 'VARCHAR',
          'other_player': 'VARCHAR', 'action': 'VARCHAR', 'outcome': 'VARCHAR', 'x_m': 'DOUBLE',
          'y_m': 'DOUBLE', 'to_x_m': 'DOUBLE', 'to_y_m': 'DOUBLE', 'skaters_for': 'UTINYINT',
          'skaters_against': 'UTINYINT', 'on_ice': 'VARCHAR', 'opponent_on_ice': 'VARCHAR',
          'net_for_empty': 'VARCHAR', 'net_against_empty': 'VARCHAR', 'stoppage': 'VARCHAR',
          'penalty': 'VARCHAR', 'pressure': 'VARCHAR', 'own_skaters': 'VARCHAR',
          'opponent_skaters': 'VARCHAR', 'video_s': 'DOUBLE'})
        WINDOW w AS (PARTITION BY game, period ORDER BY clock DESC, video_s))
      SELECT team, count(*),
        count(*) FILTER (action IN ('release', 'pass') AND x_m < 0),
        count(*) FILTER (action IN ('release', 'pass') AND x_m < 0
          AND then_stoppage = 'icing' AND then_action = 'faceoff')
      FROM step GROUP BY team ORDER BY team
      """;

  private WindowQuery() {}

  /**
   * Prints rows, releases short of center, those iced, and the seconds of the query alone.
   *
   * @param args the folder with the sheets
   */
  public static void main(String[] args) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
        Statement statement = connection.createStatement()) {
      long start = System.nanoTime();
      long rows = 0;
      long releases = 0;
      long iced = 0;
      try (ResultSet team = statement.executeQuery(SQL.formatted(args[0]))) {
        while (team.next()) {
          rows += team.getLong(2);
          releases += team.getLong(3);
          iced += team.getLong(4);
        }
      }
      double seconds = (System.nanoTime() - start) / 1e9;
      System.out.printf("%d %d %d %f%n", rows, releases, iced, seconds);
    }
  }
}

package twostrides.book;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import twostrides.findings.Habit;
import twostrides.findings.PlayerNumbers;
import twostrides.findings.PlayerReview;
import twostrides.findings.PlayerSheets;
import twostrides.findings.SeasonReview;
import twostrides.findings.TeamReview;
import twostrides.rink.Rink;

/** The pages about players, and their sheets. */
final class PlayerPages {

  private final SeasonReview review;
  private final PlayerNumbers numbers;
  private final PlayerSheets sheets;
  private final PageFiles pages;
  private final IcingView icings;
  private final Rink rink;

  PlayerPages(SeasonReview review, PageFiles pages, IcingView icings, Rink rink) {
    this.review = review;
    this.numbers = new PlayerNumbers(review.season());
    this.sheets = new PlayerSheets(review.season(), numbers);
    this.pages = pages;
    this.icings = icings;
    this.rink = rink;
  }

  void players() throws IOException {
    pages.render(
        "players.html",
        "playerlist.jte",
        Map.of(
            "review",
            review,
            "picture",
            pages.headed("players-who", id -> icings.who(id, review.ourTeam()))));
  }

  void player(PlayerReview p) throws IOException {
    String id = Links.id(Links.file(p));
    Map<String, Object> values = new HashMap<>();
    Habit habit = habit(p);
    int games = games(p.team());
    values.put("review", review);
    values.put("player", p);
    values.put("grids", numbers.of(p.team(), p.player()));
    values.put("trend", pages.headed(id + "-trend", n -> TeamView.trend(n, habit, games)));
    values.put("trendWords", TeamView.trendWords(habit, games));
    values.put(
        "stack",
        pages.headed(id + "-ways", n -> TeamView.stack(n, "Tries to get out", p.profile())));
    values.put("map", pages.headed(id + "-map", n -> TeamView.map(p.releases(), rink).picture(n)));
    pages.render(Links.file(p), "player.jte", values);
  }

  private Habit habit(PlayerReview p) {
    return numbers.habit(p.team(), p.player());
  }

  private int games(String team) {
    return review.team(team).map(TeamReview::games).orElse(0);
  }

  void sheets(TeamReview t) throws IOException {
    List<SheetCard> cards = new ArrayList<>();
    for (PlayerReview p : review.playersOf(t.team())) {
      String id = "sheet-" + Links.id(Links.file(p));
      cards.add(
          new SheetCard(
              p,
              sheets.of(p),
              TeamView.map(p.releases(), rink).paper(id + "-map"),
              TeamView.trendWords(habit(p), games(p.team()))));
    }
    pages.render(
        Links.sheets(t),
        "sheets.jte",
        Map.of("team", t, "cards", cards, "words", new MomentWords(review.window())));
  }
}

package twostrides.book;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import twostrides.exits.Release;
import twostrides.findings.Grid;
import twostrides.findings.LastGame;
import twostrides.findings.Matched;
import twostrides.findings.NumberPage;
import twostrides.findings.Opponent;
import twostrides.findings.Profile;
import twostrides.findings.SeasonReview;
import twostrides.findings.Shares;
import twostrides.findings.TeamReview;

/** The opening page and those about teams: icings, kills, costs, situations, opponents. */
final class TeamPages {

  /** Clips to show on the opening page: time for a meeting. Assumed. */
  private static final int CLIPS = 3;

  private final SeasonReview review;
  private final PageFiles pages;
  private final IcingView icings;
  private final FlagCards cards;
  private final Matched afterIcing;
  private final TeamView view;

  TeamPages(
      SeasonReview review, PageFiles pages, IcingView icings, FlagCards cards, Matched afterIcing) {
    this.review = review;
    this.pages = pages;
    this.icings = icings;
    this.cards = cards;
    this.afterIcing = afterIcing;
    this.view = new TeamView(review);
  }

  void index() throws IOException {
    Optional<TeamReview> first = review.teams().stream().findFirst();
    Optional<LastGame> last = review.ourTeam().flatMap(t -> LastGame.of(review.season(), t));
    List<FlagCard> clips =
        Stream.concat(
                cards.some("flag", review.dearest(), review.flagged()).stream(),
                cards.some("look", review.firstToLookAt(), review.toLookAt()).stream())
            .limit(CLIPS)
            .toList();
    Map<String, Object> values = new HashMap<>();
    values.put("review", review);
    values.put("sentences", Sentences.of(review));
    values.put("clips", clips);
    values.put("last", last);
    values.put(
        "lastPicture",
        last.map(l -> pages.headed("last-game", id -> IcingView.lastGame(id, l, review.ourTeam())))
            .orElse(""));
    values.put(
        "numbers", pages.headed("team-numbers", id -> view.numbers(id, review.ourTeam(), "")));
    values.put(
        "ways",
        first
            .map(
                t ->
                    pages.headed(
                        "team-ways",
                        id -> IcingView.ways(id, List.of(t.profile()), Optional.of(t.team()), "")))
            .orElse(""));
    pages.render("index.html", "index.jte", values);
  }

  void icings() throws IOException {
    Optional<String> ours = review.ourTeam();
    Optional<TeamReview> team = ours.flatMap(review::team);
    List<Profile> profiles =
        team.map(List::of).orElse(review.teams()).stream().map(TeamReview::profile).toList();
    Map<String, Object> values = new HashMap<>();
    values.put("review", review);
    values.put("team", team);
    values.put(
        "zones",
        pages.headed(
            "icings-zones",
            id -> icings.zones(id, "Where icings start", ours, Optional.empty(), "")));
    values.put("ways", pages.headed("icings-ways", id -> IcingView.ways(id, profiles, ours, "")));
    values.put("who", pages.headed("icings-who", id -> icings.who(id, ours)));
    values.put(
        "cost", pages.headed("icings-cost", id -> IcingView.cost(id, afterIcing, review.window())));
    pages.render("icings.html", "icings.jte", values);
  }

  private void opponents(Grid exits) throws IOException {
    pages.render(
        "opponents.html",
        "opponents.jte",
        Map.of(
            "review",
            review,
            "picture",
            pages.headed("opponents", id -> TeamView.opponents(id, exits, review))));
  }

  void team(TeamReview t) throws IOException {
    String id = Links.id(Links.file(t));
    Map<String, Object> values = new HashMap<>();
    values.put("review", review);
    values.put("team", t);
    values.put(
        "numbers",
        pages.headed(id + "-numbers", n -> view.numbers(n, Optional.of(t.team()), "../")));
    values.put(
        "ways",
        pages.headed(
            id + "-ways",
            n -> IcingView.ways(n, List.of(t.profile()), Optional.of(t.team()), "../")));
    values.put(
        "zones",
        pages.headed(
            id + "-zones",
            n ->
                icings.zones(
                    n, "Where icings start", Optional.of(t.team()), Optional.empty(), "../")));
    boolean opponent = review.ourTeam().filter(o -> !o.equals(t.team())).isPresent();
    values.put("ours", opponent ? review.ourTeam() : Optional.<String>empty());
    values.put(
        "against",
        opponent
            ? pages.headed(
                id + "-against",
                n ->
                    icings.zones(
                        n,
                        "Where it forechecks us into icings",
                        review.ourTeam(),
                        Optional.of(t.team()),
                        "../"))
            : "");
    values.put("after", opponent ? Opponent.of(review, t.team()) : Optional.empty());
    pages.render(Links.file(t), "team.jte", values);
  }

  /** A page of numbers, and that about opponents, which shows one of its grids. */
  void numbers(NumberPage page) throws IOException {
    Map<String, Object> values = new HashMap<>();
    values.put("review", review);
    values.put("page", page);
    switch (page.file()) {
      case "kill.html" -> {
        KillView kill = new KillView(review.season(), review.ourTeam());
        values.put("kill", kill);
        values.put("numbers", pages.headed("kill-numbers", kill::numbers));
        values.put("strips", pages.headed("kill-strips", kill::strips));
        values.put("who", pages.headed("kill-who", kill::who));
        pages.render(page.file(), "kill.jte", values);
      }
      case "costs.html" -> {
        values.put(
            "picture",
            pages.headed("costs", id -> IcingView.cost(id, afterIcing, review.window())));
        pages.render(page.file(), "numbers.jte", values);
      }
      case "slices.html" -> {
        values.put(
            "picture",
            pages.headed(
                "situations",
                id ->
                    TeamView.situations(
                        id,
                        page,
                        Shares.team(review.season().exitRows(), review.ourTeam())
                            .byGame(Shares::iced),
                        review.ourTeam())));
        pages.render(page.file(), "numbers.jte", values);
        opponents(page.grid("opponent"));
      }
      case "empty-net.html" -> {
        List<Release> sent = TeamView.atEmptyNet(review);
        values.put(
            "picture",
            sent.isEmpty()
                ? ""
                : pages.headed(
                        "empty-net-goals", id -> TeamView.emptyNetGoals(id, page, review.window()))
                    + pages.headed(
                        "empty-net-map", id -> TeamView.emptyNetMap(id, sent, icings.rink())));
        pages.render(page.file(), "numbers.jte", values);
      }
      default -> throw new IllegalStateException("no page of numbers: " + page.file());
    }
  }
}

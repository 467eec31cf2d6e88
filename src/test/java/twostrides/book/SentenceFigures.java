package twostrides.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Leads, notes, captions and headings with numbers in them, made anew from the tables. */
final class SentenceFigures {

  private static final double NEAR = 5.0;
  private static final double PRIOR_CASES = 20;

  private SentenceFigures() {}

  static String count(int n, String noun) {
    return n + " " + noun + (n == 1 ? "" : "s");
  }

  /** What has to stand on a page. */
  static List<Want> of(BookRun b, String page) {
    List<Want> all = new ArrayList<>();
    switch (PageTable.kind(page)) {
      case "index.html" -> index(b, all);
      case "restarts.html" -> {
        all.add(restarts(b.data, Optional.empty()));
        all.add(
            Want.text(
                count(b.data.games.size(), "game")
                    + ", all teams, in the order of play: the team itself had the puck last and the opponent had no control before the face-off."));
      }
      case "teams" -> {
        String team = b.team(page);
        all.add(
            Want.text(
                count(b.data.gamesOfTeam.get(team).size(), "game")
                    + ", "
                    + count(b.exits(page).size(), "exit attempt")
                    + ", "
                    + count(TeamFigures.icings(b.data, team), "icing")));
        all.add(restarts(b.data, Optional.of(team)));
        if (opponent(b, page)) {
          all.add(against(b.data, b.data.ours().orElseThrow(), team));
        }
      }
      case "players" -> player(b, page, all);
      case "icings.html" -> icings(b.data, all);
      case "opponents.html" ->
          b.teams.stream()
              .filter(t -> !b.data.ours().equals(Optional.of(t)))
              .forEach(
                  t ->
                      all.add(
                          Want.text(t + ", " + count(b.data.gamesOfTeam.get(t).size(), "game"))));
      case "sheets" -> {
        int players = (int) b.players.stream().filter(p -> p.team().equals(b.team(page))).count();
        all.add(
            Want.text(
                count(players, "sheet")
                    + ": each is one printed page (A4 or Letter, upright), all of them one print job. To"
                    + " read them without glasses: large letters."));
      }
      case "costs.html" -> costs(b, all);
      case "kill.html" -> kill(b.data, all);
      case "empty-net.html" ->
          all.add(
              Want.text(
                  "Exits that gained center while the opponent's net was empty; goals within "
                      + b.data.shortly()
                      + " of the exit."));
      case "flags.html" -> flags(b.data, all);
      case "rulings.html" -> rulings(b, all);
      case "compare.html" -> all.addAll(CompareFigures.sentences(b));
      case "slices.html" ->
          all.add(
              Want.text(
                  "Exit attempts and pucks sent before the red line. Against the rest: points of a hundred, with a 95 % interval."));
      case "numbers.html" -> meanings(all);
      default -> {
        // No sentence of another page holds a number.
      }
    }
    return all;
  }

  /** Constants, as docs/numbers.md has them: the page says each of its paragraphs. */
  private static void meanings(List<Want> all) {
    try {
      String text = Files.readString(Path.of("docs/numbers.md"));
      for (String paragraph : text.split("\n\n|(?<=\n)#+ [^\n]*\n", -1)) {
        String plain =
            paragraph
                .replaceAll("\\[([^]]*)]\\([^)]*\\)", "$1")
                .replace("`", "")
                .replace('\n', ' ');
        if (plain.chars().anyMatch(Character::isDigit)) {
          all.add(Want.text(plain.strip()));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Want restarts(BookData d, Optional<String> team) {
    return Want.text(
        BookData.rows(d.restarts, BookData.team(team)).size()
            + " defensive-zone face-offs. The clock is the time left in the period at the face-off. Against: shot attempts of the opponent within "
            + d.shortly()
            + " of the face-off. By the book: what the rulebook of this run says of the facts in the sheet.");
  }

  private static void index(BookRun b, List<Want> all) {
    BookData d = b.data;
    List<BookData.Row> exits = BookData.rows(d.exits, BookData.team(d.ours()));
    List<BookData.Row> restarts = BookData.rows(d.restarts, BookData.team(d.ours()));
    String games = count(d.games.size(), "game");
    all.add(
        Want.text(
            games
                + " in these sheets."
                + d.ours()
                    .map(t -> " The book is about " + t + "; --team names another.")
                    .orElse("")));
    int icings = BookData.rows(restarts, BookData.Row::icing).size();
    String tried =
        "In "
            + games
            + " "
            + d.ours().orElse("the teams")
            + " tried to leave the own zone "
            + count(exits.size(), "time")
            + ", with "
            + count(icings, "icing");
    List<BookData.Row> iced = BookData.rows(restarts, BookData.Row::icing);
    int inferred = BookData.rows(iced, r -> r.is("restart_cause", "icing_inferred")).size();
    String which =
        (inferred == 0
                ? ""
                : inferred == icings
                    ? ", all of them inferred"
                    : ", " + inferred + " of them inferred")
            + ". Of the tries, ";
    Want start =
        d.games.isEmpty()
            ? Want.text(tried + which)
            : Want.like(
                tried + " (# a game)" + which, Want.num((double) icings / d.games.size(), 1));
    List<BookData.Row> others =
        BookData.rows(exits, r -> r.is("own_zone_restart", "true") && !r.icing());
    int penalties = BookData.rows(others, r -> r.is("restart_cause", "penalty")).size();
    all.add(
        start.then(
            BookData.byGame(exits, BookData::icedAfter)
                .sentence(
                    "",
                    " ended in icing, "
                        + penalties
                        + " in a face-off after a penalty and "
                        + (others.size() - penalties)
                        + " in another defensive-zone face-off.")));
    all.add(changed(exits));
    all.add(
        near(BookData.rows(restarts, BookData.Row::icing))
            .then(Want.name(" "))
            .then(worst(b, exits)));
    all.add(most(b));
    List<BookData.Row> counted = BookData.rows(restarts, r -> r.has("attempts_against_20s"));
    all.add(
        counted.isEmpty()
            ? Want.name("What icings cost is not in these sheets: no shots are written.")
            : Want.text(
                "In the "
                    + d.shortly()
                    + " after "
                    + count(BookData.rows(counted, BookData.Row::icing).size(), "icing")
                    + " the opponents had "
                    + against(BookData.rows(counted, BookData.Row::icing))
                    + "; after "
                    + count(
                        BookData.rows(counted, r -> !r.icing()).size(),
                        "other defensive-zone face-off")
                    + ", "
                    + against(BookData.rows(counted, r -> !r.icing()))
                    + "."));
    if (!ListFigures.clips(d).isEmpty()) {
      all.add(Want.text(flaggedOf(d) + " All of them"));
    }
    lastGame(d)
        .map(game -> BookData.rows(exits, r -> r.is("game", game)).get(0))
        .ifPresent(
            r ->
                all.add(
                    Want.text(
                        "The last game"
                            + (r.has("date") ? ", " + r.get("date") : "")
                            + ", against "
                            + r.get("opponent")
                            + ", beside the games before.")));
  }

  /** The last game by date of the book's team; empty without a team and below two games. */
  static Optional<String> lastGame(BookData d) {
    if (d.ours().isEmpty()) {
      return Optional.empty();
    }
    Map<String, String> days = new LinkedHashMap<>();
    for (BookData.Row r : BookData.rows(d.exits, BookData.team(d.ours()))) {
      days.putIfAbsent(r.get("game"), r.has("date") ? r.get("date") : "9999");
    }
    String last = "";
    for (String game : days.keySet()) {
      last = last.isEmpty() || days.get(game).compareTo(days.get(last)) >= 0 ? game : last;
    }
    return days.size() < 2 ? Optional.empty() : Optional.of(last);
  }

  /** Whether it is the page of an opponent of the book's team. */
  static boolean opponent(BookRun b, String page) {
    return b.data.ours().map(t -> !t.equals(b.team(page))).orElse(false);
  }

  /** What an opponent does to the book's team. */
  private static Want against(BookData d, String ours, String opponent) {
    List<BookData.Row> exits = BookData.rows(d.exits, r -> r.is("team", ours));
    List<BookData.Row> draws =
        BookData.rows(
            d.restarts,
            r -> r.is("team", ours) && r.is("opponent", opponent) && r.icing() && r.has("won_by"));
    List<BookData.Row> lost = BookData.rows(draws, r -> r.is("won_by", "opponent"));
    List<BookData.Row> shots = BookData.rows(lost, r -> r.has("attempts_against_20s"));
    return BookData.icedAfter(BookData.rows(exits, r -> r.is("opponent", opponent)))
        .sentence("Against it ", " of our tries to get out were iced, against the others ")
        .then(
            BookData.icedAfter(BookData.rows(exits, r -> !r.is("opponent", opponent)))
                .sentence("", ". It won "))
        .then(
            new Formulas.Share(lost.size(), draws.size())
                .sentence(
                    "",
                    " of the face-offs after our icings and had "
                        + BookData.sum(shots, "attempts_against_20s")
                        + " shot attempts within "
                        + d.shortly()
                        + " of "
                        + shots.size()
                        + " of those."));
  }

  private static void icings(BookData d, List<Want> all) {
    int icings =
        BookData.rows(d.restarts, r -> BookData.team(d.ours()).test(r) && r.icing()).size();
    all.add(
        d.ours().isEmpty()
            ? Want.text(icings + " icings in " + count(d.games.size(), "game") + ", all teams.")
            : Want.like(
                d.ours().get()
                    + ": "
                    + count(icings, "icing")
                    + " in "
                    + count(d.games.size(), "game")
                    + ", # a game. Icing ended "
                    + Want.counts(
                            BookData.icedAfter(BookData.rows(d.exits, BookData.team(d.ours()))))
                        .words()
                    + " tries to get out.",
                Want.num((double) icings / d.games.size(), 1)));
    all.add(Want.text("Shot attempts against in " + d.shortly()));
  }

  /** How many icings are flagged, and of how many nobody can say. */
  private static String flaggedOf(BookData d) {
    List<BookData.Row> ours = BookData.rows(d.flags, BookData.team(d.ours()));
    int flagged = flagged(ours);
    int look = look(ours);
    int weighed = BookData.rows(ours, ListFigures::fellShort).size();
    String icings = count(flagged + look + weighed, "icing") + " let go before the red line ";
    return (flagged == 0
            ? "None of " + icings + "is flagged."
            : flagged
                + " of "
                + icings
                + (flagged == 1 ? "is" : "are")
                + " flagged: there was time to gain the red line first, and trying would have cost less.")
        + (look == 0
            ? ""
            : " For "
                + look
                + " of them these sheets cannot say; they stand in the order in which to look.");
  }

  private static String against(List<BookData.Row> faceOffs) {
    return count(BookData.sum(faceOffs, "attempts_against_20s"), "shot attempt")
        + " and "
        + count(BookData.sum(faceOffs, "goals_against_20s"), "goal");
  }

  private static Want dearestFirst(BookData d, String before, String after) {
    return Want.text(
        before
            + "goals against within "
            + d.shortly()
            + " of the face-off, then attempts, then what trying would have saved on average."
            + after);
  }

  private static int flagged(List<BookData.Row> flags) {
    return BookData.rows(flags, f -> f.is("flagged", "true")).size();
  }

  private static int look(List<BookData.Row> flags) {
    return BookData.rows(flags, ListFigures::look).size();
  }

  /** The same of all teams. */
  private static String flaggedOfAll(BookData d) {
    int look = look(d.flags);
    int weighed = BookData.rows(d.flags, ListFigures::fellShort).size();
    return "All teams: "
        + flagged(d.flags)
        + " of "
        + count(flagged(d.flags) + look + weighed, "icing")
        + " flagged, "
        + look
        + " to look at.";
  }

  /** Restarts of the first and the last third of the games, and whether all games say more. */
  private static Want changed(List<BookData.Row> exits) {
    List<String> games = exits.stream().map(e -> e.get("game")).distinct().toList();
    int n = games.size();
    if (n < 3) {
      return Want.name("Fewer than three games with exit attempts: too few to say what changed.");
    }
    List<Formulas.Share> byGame =
        games.stream()
            .map(g -> BookData.icedAfter(BookData.rows(exits, e -> e.is("game", g))))
            .toList();
    int early = n / 3;
    int late = 2 * n / 3;
    String trend = Formulas.trend("", byGame).words();
    return Want.text(
        "Icing followed "
            + stretch(byGame.subList(0, early))
            + (early == 1 ? " in game 1 and " : " in games 1 to " + early + " and ")
            + stretch(byGame.subList(late, n))
            + (late + 1 == n ? " in game " + n : " in games " + (late + 1) + " to " + n)
            + ": "
            + (trend.startsWith("rising")
                ? "over all games the share rises, beyond chance."
                : trend.startsWith("falling")
                    ? "over all games the share falls, beyond chance."
                    : trend.startsWith("flat")
                        ? "over all games there is no clear change."
                        : "too few to say whether it moves."));
  }

  private static String stretch(List<Formulas.Share> games) {
    int k = games.stream().mapToInt(Formulas.Share::k).sum();
    int n = games.stream().mapToInt(Formulas.Share::n).sum();
    String share = n < 10 ? "too few to say" : Math.floor(100.0 * k / n + 0.5 + 1e-9) + " %";
    return k + " of " + count(n, "attempt") + (n == 0 ? "" : " (" + share.replace(".0", "") + ")");
  }

  private static Want near(List<BookData.Row> icings) {
    if (icings.isEmpty()) {
      return Want.name("No icing is written or can be inferred in these sheets.");
    }
    List<BookData.Row> placed = BookData.rows(icings, r -> r.has("short_of_center_m"));
    int near = BookData.rows(placed, r -> r.number("short_of_center_m") <= NEAR).size();
    return Want.text(
        "Of "
            + count(placed.size(), "icing")
            + " with a known release, "
            + near
            + (near == 1 ? " was" : " were")
            + " let go within 5.0 m (16 ft) of the red line.");
  }

  /** The likeliest highest of those with ten cases; what the page names where two are as likely. */
  private static int likeliest(
      AdjustedFigures rates, List<Formulas.Share> some, Predicate<Integer> named) {
    int best = -1;
    Map<Integer, Double> chances = some.size() < 2 ? Map.of() : rates.highest(some);
    for (int i = 0; i < some.size(); i++) {
      double lead = best < 0 ? 1 : chances.getOrDefault(i, 0.0) - chances.getOrDefault(best, 0.0);
      if (some.get(i).k() > 0 && !chances.isEmpty() && lead > (named.test(i) ? -0.01 : 0)) {
        best = i;
      }
    }
    return best;
  }

  private static Want highestOf(
      AdjustedFigures rates, List<Formulas.Share> some, int best, String what) {
    double chance = rates.highest(some).get(best);
    // Drawn, so a point off at most; below one per cent and above 99 nothing is ever the likeliest.
    return Want.like(
        "; the chance that this is the highest rate of "
            + some.size()
            + " "
            + what
            + " is # %"
            + (chance < 0.5 ? ": no clear difference." : "."),
        Want.fitted(chance));
  }

  private static Want worst(BookRun b, List<BookData.Row> exits) {
    List<TeamFigures.Kind> kinds = new ArrayList<>();
    List<Formulas.Share> enough = new ArrayList<>();
    List<Formulas.Share> all = new ArrayList<>();
    TeamFigures.byKind(exits)
        .forEach(
            (kind, rows) -> {
              Formulas.Share s = BookData.icedAfter(rows);
              all.add(s);
              if (!s.few()) {
                kinds.add(kind);
                enough.add(s);
              }
            });
    List<String> names =
        kinds.stream()
            .map(
                k ->
                    k.way()
                        + switch (k.strength()) {
                          case "even" -> ", at even strength";
                          case "shorthanded" -> ", shorthanded";
                          case "power play" -> ", on the power play";
                          default -> "";
                        }
                        + ", ")
            .toList();
    AdjustedFigures rates = new AdjustedFigures(all);
    String before = "Most often followed by an icing: ";
    int best = likeliest(rates, enough, i -> says(b, before + names.get(i)));
    return best < 0
        ? Want.name("Too few attempts or icings to say which way out leads to icings.")
        : rates
            .sentence(before + names.get(best), enough.get(best), "")
            .then(highestOf(rates, enough, best, "ways out"));
  }

  private static boolean says(BookRun b, String words) {
    return b.pages.get("index.html").select(".says li").text().contains(words);
  }

  private static Want most(BookRun b) {
    List<BookData.Player> players = new ArrayList<>();
    List<Formulas.Share> enough = new ArrayList<>();
    for (BookData.Player p : b.players) {
      Formulas.Share s = BookData.iced(BookData.rows(b.data.releases, BookData.of(p)));
      boolean ours = b.data.ours().isEmpty() || b.data.ours().get().equals(p.team());
      if (ours && !s.few()) {
        players.add(p);
        enough.add(s);
      }
    }
    List<String> names =
        players.stream()
            .map(
                p ->
                    (p.name().matches("\\d.*") ? "No. " : "")
                        + p.name()
                        + (b.data.ours().isPresent() ? "" : " (" + p.team() + ")")
                        + ": ")
            .toList();
    String before =
        "Whose pucks sent before the red line are iced most often? Most likely those of ";
    AdjustedFigures rates = b.data.icedRates();
    int best = likeliest(rates, enough, i -> says(b, before + names.get(i)));
    return best < 0
        ? Want.name("Too few releases or icings to say whose are iced most often.")
        : rates
            .sentence(before + names.get(best), enough.get(best), "")
            .then(highestOf(rates, enough, best, "players"));
  }

  private static void player(BookRun b, String page, List<Want> all) {
    BookData.Player p = b.player(page);
    all.add(
        b.data
            .icedRates()
            .sentence(
                p.team()
                    + ". "
                    + count(b.exits(page).size(), "exit attempt")
                    + "; pucks sent before the red line that were iced: ",
                BookData.iced(b.releases(page)),
                ""));
    all.add(b.figures.trend(p));
    all.add(b.figures.change(p));
    all.add(
        Want.text(
            count(b.releases(page).size(), "puck")
                + " sent before the red line, also from spells that began in the neutral zone. The clock is the time left in the period."));
  }

  private static void costs(BookRun b, List<Want> all) {
    all.add(Want.text("Shot attempts against in " + b.data.shortly()));
    List<BookData.Row> draws =
        BookData.rows(b.data.restarts, r -> r.icing() && r.has("attempts_against_20s"));
    int n = draws.size();
    int attempts = BookData.sum(draws, "attempts_against_20s");
    // 0.50 attempts before any sheet is read: docs/race.md.
    all.add(
        Want.like(
            "For the flags, an icing counts as # attempts against: "
                + attempts
                + " in "
                + n
                + " icings of these sheets, adjusted toward 0.50 (assumed) with the weight of 20 icings, so # % of the number is assumed.",
            Want.num((attempts + 0.50 * PRIOR_CASES) / (n + PRIOR_CASES), 2),
            Formulas.hundred(PRIOR_CASES / (n + PRIOR_CASES))));
    all.add(
        Want.like(
            "Goals for less goals against within "
                + b.data.shortly()
                + " of the face-off. Goals are rare, so the figure is adjusted toward a published one: end-zone face-offs at five against five of two NHL regular seasons, 63,428 in all (Schuckers 2012), taken with the weight of # face-offs (assumed). Those are all end-zone face-offs, not those after icing, and men of one league.",
            Want.num(b.goalPrior(), 0)));
    all.add(
        Want.text(
            "Each face-off is set against the exits of the same team that left the zone with no defensive-zone face-off after them, at the same score (leading, tied, trailing) and at the strength of the face-off: after a penalty the team is shorthanded by then. The interval resamples whole games (2000 times); it needs ten games."));
  }

  private static void kill(BookData d, List<Want> all) {
    List<BookData.Row> kills = BookData.rows(d.kills, BookData.team(d.ours()));
    List<BookData.Row> tries = KillFigures.shown(d);
    all.add(
        KillFigures.withoutGoal(kills)
            .sentence(
                count(kills.size(), "kill")
                    + ", "
                    + count(BookData.sum(kills, "goals_against"), "goal")
                    + " against. Killed without a goal: ",
                "")
            .then(
                BookData.byGame(tries, KillFigures::cleared)
                    .sentence(". Tries to clear that got out: ", ".")));
    int few =
        (int) KillFigures.byPlayer(d).stream().filter(p -> KillFigures.cleared(p).few()).count();
    if (few > 0) {
      all.add(
          Want.text(
              count(few, "player")
                  + " with under ten tries "
                  + (few == 1 ? "is" : "are")
                  + " left out: too few to say."));
    }
    all.add(
        Want.text(
            tries.size()
                + (tries.size() == 1 ? " try" : " tries")
                + " while shorthanded, in the order of play. Time bought: until the opponent had it in the zone again, or play stopped."));
    all.add(
        Want.text(
            "Attempts and goals against within "
                + d.shortly()
                + " of the release, or of the face-off where a defensive-zone face-off followed."));
    all.add(
        Want.name(
            "Who took it out, or lost it inside. The adjusted rate leans on all players of these sheets, the more the fewer attempts the player has."));
    all.add(
        Want.text(
            "Pucks sent before the red line within 10 s (assumed) of the last row that shows the team shorthanded: the exemption no longer held."));
    all.add(
        Want.text(
            BookData.rows(d.kills, BookData.team(d.ours())).size()
                + " stretches in which the team was shorthanded, from the first row that shows it to the first that does not."));
  }

  private static void flags(BookData d, List<Want> all) {
    List<BookData.Row> draws =
        BookData.rows(d.restarts, r -> r.icing() && r.has("attempts_against_20s"));
    List<BookData.Row> lost =
        BookData.rows(
            d.exits, r -> r.is("at_center", "lost short") && r.has("attempts_against_20s"));
    // Costs come from play sheets; rows of tag sheets say nothing of the window.
    Formulas.Share gained =
        BookData.restarted(
            BookData.rows(
                d.exits, r -> r.has("restart_within_20s") && r.is("at_center", "gained")));
    all.add(
        Want.text(
            d.ours()
                .map(t -> t + ": " + flaggedOf(d) + " " + flaggedOfAll(d))
                .orElse(flaggedOf(d))));
    all.add(
        Want.text(
            "A release is flagged when icing followed, skaters' places and speeds say that gaining center would likely have avoided it, and the expected cost of trying is below that of the icing. Chances are estimates, not verdicts on a player: look at the video. Costs are shot attempts against within "
                + d.shortly()
                + " in play sheets: "
                + BookData.sum(draws, "attempts_against_20s")
                + " in "
                + count(draws.size(), "icing")
                + ", "
                + BookData.sum(lost, "attempts_against_20s")
                + " after "
                + count(lost.size(), "puck")
                + " lost before the red line, and "
                + count(gained.k(), "defensive-zone face-off")
                + " after "
                + count(gained.n(), "exit")
                + " that gained center, each adjusted toward an assumed value with the weight of 20 cases."));
    List<BookData.Row> near = ListFigures.nearMisses(d);
    if (!near.isEmpty()) {
      all.add(
          Want.text(
              count(near.size(), "icing")
                  + " not flagged, though gaining center would as likely as not have avoided it; the likeliest first. Each says why not."));
    }
    if (flagged(d.flags) > 0) {
      all.add(dearestFirst(d, "Those that cost most stand first: ", ""));
    }
    int look = ListFigures.toLookAt(d).size();
    if (look > 0) {
      all.add(
          Want.text(
              "Of "
                  + count(look, "icing")
                  + (d.ours().isPresent() ? " of all teams" : "")
                  + " these sheets do not say where the skaters were and how fast they went. Whether there was time to gain center is unknown, and none of them is a flag. They stand in the order in which to look at the video, the likeliest first; the interval says how little the sheet knows."));
      all.add(
          Want.text(
              count(look, "icing")
                  + " without a verdict. The 95 % interval stands behind the chance; where there is none, the puck was let go too far from center for the sheet to say anything."));
    }
    all.add(
        Want.text(
            count(d.flags.size() - flagged(d.flags) - look, "puck")
                + " sent before the red line that a defensive-zone face-off followed and that are neither flagged nor to be looked at."));
  }

  private static void rulings(BookRun b, List<Want> all) {
    BookData d = b.data;
    int assumed = 0;
    for (PageTable t : PageTable.of("rulings.html", b.pages.get("rulings.html"))) {
      if (t.heading().equals("What this book says")) {
        assumed = (int) t.rows().stream().filter(r -> r.get(3).contains("assumed")).count();
      }
    }
    if (assumed > 0) {
      all.add(
          Want.text(
              "No source was found for "
                  + assumed
                  + " of these points: they are assumed until somebody chooses them in a book of their own (docs/rulings.md)."));
    }
    if (!d.manpower.isEmpty()) {
      // How many rows have both is in no table of the book: any number will do.
      all.add(
          Want.like(
              "The manpower columns and the penalty rows of these sheets disagree on "
                  + BookData.sum(d.manpower, "rows")
                  + " of # rows that have both. Where and why: manpower.csv.",
              Want.num(0, 0, 1e12)));
    }
    all.add(
        Want.text(
            d.audits.size()
                + " of "
                + BookData.rows(d.restarts, BookData.Row::icing).size()
                + " icings. No error: the sheet, the manpower or the book may be the one to correct."));
    all.add(
        Want.text(
            BookData.rows(d.rulings, o -> o.is("differs", "true")).size()
                + " pucks sent before the red line. The clock is the time left in the period at the release. What the sheet cannot say stays open."));
  }
}

package twostrides.book;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import twostrides.book.chart.ReleaseDiagram;
import twostrides.book.chart.RinkPlan;
import twostrides.findings.Comparison;
import twostrides.findings.FaceOffAfter;
import twostrides.findings.Grid;
import twostrides.findings.Habit;
import twostrides.findings.LastGame;
import twostrides.findings.Matched;
import twostrides.findings.NumberPage;
import twostrides.findings.NumberSettings;
import twostrides.findings.Numbers;
import twostrides.findings.Opponent;
import twostrides.findings.OtherBooks;
import twostrides.findings.PlayerReview;
import twostrides.findings.Profile;
import twostrides.findings.RestartCosts;
import twostrides.findings.SeasonReview;
import twostrides.findings.Shares;
import twostrides.findings.TeamReview;
import twostrides.rink.Rink;
import twostrides.season.Columns;
import twostrides.season.Flag;
import twostrides.season.Rows;

/**
 * Writes the review book: a folder that opens from disk with no network. Pages do not depend on
 * each other, so they are written on two threads; what is in them does not depend on that.
 */
public final class ReviewBook {

  private static final int THREADS = 2;

  /** Cards with drawings of releases to look at; all of them stand in a table. Assumed. */
  private static final int DRAWN = 10;

  /** Clips to show on the opening page: time for a meeting. Assumed. */
  private static final int CLIPS = 3;

  private final Path out;
  private final SeasonReview review;
  private final Numbers numbers;
  private final Comparison comparison;
  private final OtherBooks otherBooks;
  private final Imprint imprint;
  private final Rink rink;
  private final PictureFiles pictures;
  private final IcingView icings;
  private final Matched afterIcing;
  private final TemplateEngine pages =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "twostrides.book.page");

  private ReviewBook(
      Path out, SeasonReview review, NumberSettings settings, Rink rink, Imprint imprint) {
    this.out = out;
    this.review = review;
    this.numbers = Numbers.of(review.season(), review.ourTeam(), settings);
    this.comparison = Comparison.of(review);
    this.otherBooks = new OtherBooks(review.season());
    this.rink = rink;
    this.icings = new IcingView(review, rink);
    this.imprint = imprint;
    this.pictures = new PictureFiles(out, imprint.options().pngs());
    this.afterIcing =
        new RestartCosts(review.season(), review.ourTeam(), settings)
            .matched(review.ourTeam(), FaceOffAfter.ICING, review.season().columns().attempts());
  }

  /**
   * Writes pages and pictures.
   *
   * @param out folder, which exists
   * @param review what to show
   * @param settings what the run chose about the numbers
   * @param rink the rink of the diagrams
   * @param imprint foot of the pages
   * @param progress told how many pages of how many are written
   * @throws IOException when a file cannot be written
   */
  public static void write(
      Path out,
      SeasonReview review,
      NumberSettings settings,
      Rink rink,
      Imprint imprint,
      BiConsumer<Integer, Integer> progress)
      throws IOException {
    for (String folder : List.of("teams", "players", "sheets", "clips/players", "clips/sheets")) {
      Files.createDirectories(out.resolve(folder));
    }
    for (String own : List.of("book.css", "chart.css", "icon.svg", "compare.js")) {
      Files.writeString(out.resolve(own), resource(own), StandardCharsets.UTF_8);
    }
    String games = MeetingData.games(review, imprint.options().videos());
    Files.writeString(out.resolve("book.js"), Script.text(games), StandardCharsets.UTF_8);
    Files.writeString(
        out.resolve("meeting.js"),
        MeetingData.clips(review, rink) + resource("meeting.js"),
        StandardCharsets.UTF_8);
    new ReviewBook(out, review, settings, rink, imprint).pages(progress);
  }

  private interface Page {
    void write() throws IOException;
  }

  private void pages(BiConsumer<Integer, Integer> progress) throws IOException {
    List<Page> all = new ArrayList<>();
    all.add(this::index);
    all.add(this::rulings);
    all.add(this::flags);
    all.add(this::restarts);
    all.add(this::icings);
    all.add(this::players);
    all.add(this::opponents);
    all.add(this::compare);
    all.add(this::glossary);
    all.add(this::meeting);
    all.add(() -> ClipLists.write(out.resolve("clips"), imprint.options().videos(), review));
    numbers.pages().forEach(n -> all.add(() -> numbers(n)));
    review.teams().forEach(t -> all.add(() -> team(t)));
    review.players().forEach(p -> all.add(() -> player(p)));
    review.teams().forEach(t -> all.add(() -> sheets(t)));
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      List<Future<?>> written = new ArrayList<>();
      for (Page p : all) {
        written.add(
            threads.submit(
                () -> {
                  p.write();
                  return null;
                }));
      }
      for (int i = 0; i < written.size(); i++) {
        written.get(i).get();
        progress.accept(i + 1, all.size());
      }
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException io) {
        throw io;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("writing the book was interrupted", e);
    } finally {
      end(threads);
    }
  }

  /** When this returns nothing is written any more, after a failure either. */
  private static void end(ExecutorService threads) {
    threads.shutdownNow();
    boolean interrupted = false;
    boolean ended = false;
    while (!ended) {
      try {
        ended = threads.awaitTermination(1, TimeUnit.MINUTES);
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private void index() throws IOException {
    Optional<TeamReview> first = review.teams().stream().findFirst();
    Optional<LastGame> last = review.ourTeam().flatMap(t -> LastGame.of(review.season(), t));
    List<FlagCard> clips =
        Stream.concat(
                some("flag", review.dearest(), review.flagged()).stream(),
                some("look", review.firstToLookAt(), review.toLookAt()).stream())
            .limit(CLIPS)
            .toList();
    Map<String, Object> values = new HashMap<>();
    values.put("review", review);
    values.put("sentences", Sentences.of(review));
    values.put("clips", clips);
    values.put("last", last);
    values.put(
        "lastPicture",
        last.map(l -> pictures.headed("last-game", id -> IcingView.lastGame(id, l))).orElse(""));
    values.put(
        "numbers",
        pictures.headed("team-numbers", id -> TeamView.numbers(id, review, review.ourTeam(), "")));
    values.put(
        "ways",
        first
            .map(t -> pictures.headed("team-ways", id -> IcingView.ways(id, List.of(t.profile()))))
            .orElse(""));
    values.put("imprint", imprint);
    render("index.html", "index.jte", values);
  }

  private void icings() throws IOException {
    Optional<String> ours = review.ourTeam();
    Optional<TeamReview> team =
        ours.flatMap(o -> review.teams().stream().filter(t -> t.team().equals(o)).findFirst());
    List<Profile> profiles =
        review.teams().stream()
            .filter(t -> ours.isEmpty() || ours.get().equals(t.team()))
            .map(TeamReview::profile)
            .toList();
    Map<String, Object> values = new HashMap<>();
    values.put("review", review);
    values.put("team", team);
    values.put(
        "zones",
        pictures.headed(
            "icings-zones",
            id ->
                icings.zones(
                    id,
                    "Where icings start",
                    r -> ours.isEmpty() || ours.get().equals(r.at().team()))));
    values.put("ways", pictures.headed("icings-ways", id -> IcingView.ways(id, profiles)));
    values.put("who", pictures.headed("icings-who", id -> icings.who(id, ours)));
    values.put(
        "cost",
        pictures.headed("icings-cost", id -> IcingView.cost(id, afterIcing, review.window())));
    values.put("imprint", imprint);
    render("icings.html", "icings.jte", values);
  }

  private void players() throws IOException {
    render(
        "players.html",
        "playerlist.jte",
        Map.of(
            "review",
            review,
            "picture",
            pictures.headed("players-who", id -> icings.who(id, review.ourTeam())),
            "imprint",
            imprint));
  }

  private void opponents() throws IOException {
    Optional<NumberPage> slices =
        numbers.pages().stream().filter(p -> p.file().equals("slices.html")).findFirst();
    Optional<Grid> grid =
        slices.flatMap(p -> p.grids().stream().filter(g -> g.id().equals("opponent")).findFirst());
    render(
        "opponents.html",
        "opponents.jte",
        Map.of(
            "review",
            review,
            "picture",
            grid.map(g -> pictures.headed("opponents", id -> TeamView.opponents(id, g, review)))
                .orElse(""),
            "imprint",
            imprint));
  }

  private List<FlagCard> some(String kind, List<Flag> few, List<Flag> all) {
    return few.stream().map(f -> card(kind, all.indexOf(f) + 1, f)).toList();
  }

  private void rulings() throws IOException {
    render("rulings.html", "rulings.jte", Map.of("review", review, "imprint", imprint));
  }

  private void compare() throws IOException {
    List<Grid> books = new ArrayList<>();
    for (BookNote.Other o : imprint.book().others()) {
      books.add(otherBooks.grid(books.size() + 1, o.id(), o.name()));
    }
    String data = comparison.first().map(k -> CompareData.json(comparison, k)).orElse("");
    render(
        "compare.html",
        "compare.jte",
        Map.of("comparison", comparison, "data", data, "books", books, "imprint", imprint));
  }

  private void restarts() throws IOException {
    render("restarts.html", "restartlist.jte", Map.of("review", review, "imprint", imprint));
  }

  private void flags() throws IOException {
    render(
        "flags.html",
        "flags.jte",
        Map.of(
            "review",
            review,
            "cards",
            ownFirst(some("flag", review.flagged(), review.flagged())),
            "look",
            ownFirst(some("look", drawnToLookAt(), review.toLookAt())),
            "near",
            ownFirst(some("near-miss", review.nearMisses(), review.nearMisses())),
            "costs",
            review.season().costs(),
            "imprint",
            imprint));
  }

  /** Cards of the book's team first; the order stays else. */
  private List<FlagCard> ownFirst(List<FlagCard> cards) {
    return cards.stream()
        .sorted(
            Comparator.comparing(
                c -> !review.ourTeam().equals(Optional.of(c.flag().release().at().team()))))
        .toList();
  }

  /** Those of the first so many, and those that the opening page shows. */
  private List<Flag> drawnToLookAt() {
    List<Flag> all = review.toLookAt();
    List<Flag> opening = review.firstToLookAt();
    return all.stream().filter(f -> all.indexOf(f) < DRAWN || opening.contains(f)).toList();
  }

  private FlagCard card(String kind, int number, Flag f) {
    String id = String.format(Locale.ROOT, "%s-%03d", kind, number);
    ReleaseDiagram diagram = FlagView.diagram(f, rink);
    return new FlagCard(
        id, f, pictures.html(id, diagram.picture(id)), diagram.thumbnail(id + "-small"));
  }

  private void glossary() throws IOException {
    render("numbers.html", "glossary.jte", Map.of("words", Glossary.html(), "imprint", imprint));
  }

  private void meeting() throws IOException {
    render(
        "meeting.html",
        "meeting.jte",
        Map.of("plan", new RinkPlan(rink).drawing("meeting-rink"), "imprint", imprint));
  }

  private void numbers(NumberPage page) throws IOException {
    Map<String, Object> values = new HashMap<>();
    values.put("page", page);
    values.put("imprint", imprint);
    switch (page.file()) {
      case "kill.html" -> {
        KillView kill = new KillView(review.season(), review.ourTeam());
        values.put("kill", kill);
        values.put("numbers", pictures.headed("kill-numbers", kill::numbers));
        values.put("strips", pictures.headed("kill-strips", kill::strips));
        values.put("who", pictures.headed("kill-who", kill::who));
        render(page.file(), "kill.jte", values);
      }
      case "costs.html" -> {
        values.put(
            "picture",
            pictures.headed("costs", id -> IcingView.cost(id, afterIcing, review.window())));
        render(page.file(), "numbers.jte", values);
      }
      case "slices.html" -> {
        Rows exits = new Rows(review.season().exits());
        values.put(
            "picture",
            pictures.headed(
                "situations",
                id ->
                    TeamView.situations(
                        id,
                        page,
                        review
                            .ourTeam()
                            .map(t -> exits.where(Columns.TEAM, t))
                            .orElse(exits)
                            .byGame(Shares::iced))));
        render(page.file(), "numbers.jte", values);
      }
      default -> {
        values.put("picture", "");
        render(page.file(), "numbers.jte", values);
      }
    }
  }

  private void team(TeamReview t) throws IOException {
    String id = Links.id(Links.file(t));
    Map<String, Object> values = new HashMap<>();
    values.put("review", review);
    values.put("team", t);
    values.put(
        "numbers",
        pictures.headed(
            id + "-numbers", n -> TeamView.numbers(n, review, Optional.of(t.team()), "../")));
    values.put("ways", pictures.headed(id + "-ways", n -> IcingView.ways(n, List.of(t.profile()))));
    values.put(
        "zones",
        pictures.headed(
            id + "-zones",
            n -> icings.zones(n, "Where icings start", r -> r.at().team().equals(t.team()))));
    boolean opponent = review.ourTeam().filter(o -> !o.equals(t.team())).isPresent();
    values.put("ours", opponent ? review.ourTeam() : Optional.<String>empty());
    values.put(
        "against",
        opponent
            ? pictures.headed(
                id + "-against",
                n ->
                    icings.zones(
                        n,
                        "Where it forechecks us into icings",
                        r ->
                            r.at().team().equals(review.ourTeam().orElse(""))
                                && r.at().opponent().equals(Optional.of(t.team()))))
            : "");
    values.put("after", opponent ? Opponent.of(review, t.team()) : Optional.empty());
    values.put("imprint", imprint);
    render(Links.file(t), "team.jte", values);
  }

  private void player(PlayerReview p) throws IOException {
    String id = Links.id(Links.file(p));
    Map<String, Object> values = new HashMap<>();
    Habit habit = habit(p);
    int games = games(p.team());
    values.put("review", review);
    values.put("player", p);
    values.put("grids", numbers.players().of(p.team(), p.player()));
    values.put("trend", pictures.headed(id + "-trend", n -> TeamView.trend(n, habit, games)));
    values.put("trendWords", TeamView.trendWords(habit, games));
    values.put(
        "stack",
        pictures.headed(id + "-ways", n -> TeamView.stack(n, "Tries to get out", p.profile())));
    values.put(
        "map",
        pictures.headed(
            id + "-map", n -> TeamView.map(n, "Sent before the red line", p.releases(), rink)));
    values.put("imprint", imprint);
    render(Links.file(p), "player.jte", values);
  }

  private Habit habit(PlayerReview p) {
    return numbers.players().habit(p.team(), p.player());
  }

  private int games(String team) {
    return review.teams().stream()
        .filter(t -> t.team().equals(team))
        .mapToInt(TeamReview::games)
        .sum();
  }

  private void sheets(TeamReview t) throws IOException {
    List<SheetCard> cards = new ArrayList<>();
    for (PlayerReview p : review.playersOf(t.team())) {
      String id = "sheet-" + Links.id(Links.file(p));
      cards.add(
          new SheetCard(
              p,
              numbers.sheets().of(p),
              TeamView.map(id + "-map", "Sent before the red line", p.releases(), rink).paper(),
              TeamView.trend(id + "-trend", habit(p), games(p.team())).paper()));
    }
    render(
        Links.sheets(t),
        "sheets.jte",
        Map.of(
            "team",
            t,
            "cards",
            cards,
            "words",
            new MomentWords(review.window()),
            "imprint",
            imprint));
  }

  private void render(String file, String template, Map<String, Object> values) throws IOException {
    StringOutput html = new StringOutput();
    pages.render(template, values, html);
    // Line ends between the parts of a table are a good part of a page of many rows.
    String page = html.toString().replace(">\n<t", "><t").replace(">\n</t", "></t");
    Files.writeString(out.resolve(file), page, StandardCharsets.UTF_8);
  }

  static String resource(String name) {
    try (InputStream in = ReviewBook.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(
            "the program's own file " + name + " is missing from the jar");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

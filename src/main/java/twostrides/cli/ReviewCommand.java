package twostrides.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import twostrides.book.Format;
import twostrides.book.Imprint;
import twostrides.book.ReviewBook;
import twostrides.cache.CacheFolder;
import twostrides.exits.GameReader;
import twostrides.exits.GameRecords;
import twostrides.exits.ManpowerSource;
import twostrides.exits.RaceSettings;
import twostrides.exits.SeasonBooks;
import twostrides.exits.Settings;
import twostrides.findings.NumberSettings;
import twostrides.findings.Reviewer;
import twostrides.findings.SeasonReview;
import twostrides.game.Game;
import twostrides.game.RowAccount;
import twostrides.output.OutputFolder;
import twostrides.output.ParallelFiles;
import twostrides.output.ParallelFiles.Part;
import twostrides.race.TravelBound;
import twostrides.rulebook.BookException;
import twostrides.rulebook.BookSeason;
import twostrides.rulebook.IcingBook;
import twostrides.season.Season;
import twostrides.season.TableFile;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SetAside;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMaps;
import twostrides.tracking.GameOutline;
import twostrides.tracking.SyncSheets;
import twostrides.tracking.VideoSeconds;

/** The main job: sheets in, a review book out. */
@Command(
    name = "review",
    description = "Reads event sheets and writes the review book: pages, charts, tables.",
    mixinStandardHelpOptions = true)
class ReviewCommand implements Callable<Integer> {

  private static final int MOST_PROBLEMS = 20;

  /** Tracking errs in thousands of rows that are alike. */
  private static final int MOST_TRACKING_PROBLEMS = 5;

  @Spec CommandSpec spec;

  @Mixin Sheets sheets;

  @Mixin Books books;

  @Mixin Ice ice;

  @Mixin TrackingSheets tracking;

  @Mixin ClickedSkaters clicked;

  @Mixin ReviewCache cache;

  @Mixin RaceOptions raceOptions;

  @Mixin PageOptions pages;

  @Option(
      names = "--compare-rulebook",
      paramLabel = "BOOK",
      description =
          "Also lists the releases that this book would rule otherwise; may be given several times.")
  List<String> compare = new ArrayList<>();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "review",
      description =
          "Folder for the book (${DEFAULT-VALUE}). An older book there is replaced; files of your own"
              + " beside it stay as they are.")
  Path out;

  @Option(
      names = "--team",
      paramLabel = "TEAM",
      description =
          "The team the book is about; without it the one that plays in most of the games.")
  String team;

  @Option(
      names = "--manpower",
      paramLabel = "SOURCE",
      defaultValue = "columns",
      description =
          "What wins where manpower columns and penalty rows disagree: columns or penalties"
              + " (${DEFAULT-VALUE}).")
  ManpowerSource manpower;

  @Option(
      names = "--window",
      paramLabel = "S",
      defaultValue = "20",
      description = "Seconds in which restarts, attempts and goals count (${DEFAULT-VALUE}).")
  double window;

  @Option(
      names = "--no-names",
      description = "Write jersey numbers or codes instead of players' names.")
  boolean noNames;

  @Option(
      names = "--tables-only",
      description =
          "Writes the tables of the data folder and run.json, and no pages: for a whole league, or"
              + " for programs of your own.")
  boolean tablesOnly;

  @Option(
      names = "--json-lines",
      description =
          "Also writes exits and releases as JSON Lines, with receivers, end places and frames"
              + " (docs/tables.md).")
  boolean jsonLines;

  @Option(
      names = "--goal-prior",
      paramLabel = "N",
      defaultValue = "400",
      description =
          "Weight of the published net goals after own-zone face-offs, in face-offs (${DEFAULT-VALUE}, assumed).")
  double goalPriorWeight;

  /**
   * What a run made, for a command that goes on from it.
   *
   * @param games the games that were read, by id
   * @param all the season
   * @param whose the team asked for
   * @param tracked skaters of tracking sheets
   * @param book the book's folder
   */
  record Made(
      Map<String, GameOutline> games,
      Season all,
      Optional<String> whose,
      TrackedSkaters tracked,
      Path book) {}

  /** Empty until the book is written. */
  Optional<Made> made = Optional.empty();

  private Settings settings(
      RaceSettings race, SeasonBooks books, Map<BookSeason, SeasonBooks> seasons) {
    return new Settings(
        window, books.book(), books.others(), seasons, manpower, race, TravelBound.DEFAULT);
  }

  @Override
  public Integer call() throws Exception {
    if (!(window > 0 && window <= 1200)) {
      throw new ParameterException(
          spec.commandLine(),
          "--window: found " + window + ", expected seconds above 0 and up to 1200.");
    }
    if (!(goalPriorWeight >= 0 && goalPriorWeight <= NumberSettings.MOST_GOAL_PRIOR_WEIGHT)) {
      throw new ParameterException(
          spec.commandLine(),
          "--goal-prior: found "
              + goalPriorWeight
              + ", expected face-offs from 0 (left out) to "
              + (int) NumberSettings.MOST_GOAL_PRIOR_WEIGHT
              + ".");
    }
    if (tablesOnly && pages.png) {
      throw new ParameterException(
          spec.commandLine(), "--png: --tables-only draws nothing; leave one of the two out.");
    }
    Optional<String> wrong = tracking.wrong().or(clicked::wrong);
    if (wrong.isPresent()) {
      throw new ParameterException(spec.commandLine(), wrong.get());
    }
    PrintWriter console = spec.commandLine().getOut();
    Progress progress = new Progress(spec.commandLine().getErr());
    IcingBook asRead = books.book();
    books.others(compare);
    List<Path> files = sheets.files();
    List<Path> inputs = inputs(files);
    // Says at once what is wrong with the place, and puts back what a run left that was stopped.
    OutputFolder.at(out, SheetFiles.onDisk(inputs)).close();
    SheetMaps sheetMaps = sheets.sheetMaps();
    Ice.Played played = ice.of(asRead, sheetMaps);
    UnaryOperator<IcingBook> onIce = b -> ice.of(b, sheetMaps).book();
    RaceSettings race = raceOptions.race();
    Settings usual = settings(race, new SeasonBooks(asRead, List.of()), Map.of());
    ReviewCache.Shelves known = cache.open(out, decideGames(played, race), tracking.words());
    ReviewGames games =
        noNames || tracking.synced()
            ? ReviewGames.readAndWait(sheets, files, sheetMaps, played, progress)
            : ReviewGames.read(
                sheets,
                files,
                sheetMaps,
                played,
                progress,
                g -> records(g, usual, onIce),
                new SheetCache<>(known.sheets()));
    RowAccount read = games.rows();
    if (read.rowsUsed() == 0) {
      sheets.report(read, spec.commandLine().getErr(), MOST_PROBLEMS, ".");
      throw SheetException.ofFile(
          files.get(0).toString(),
          "no row that could be used in " + Format.count(files.size(), "sheet"),
          "rows of a play sheet or a tag sheet",
          "Run the command check on it; a sheet with other columns needs --map (docs/maps/README.md).");
    }
    sheets.refuseContradictions(spec.commandLine().getErr());
    Books.ByDate byDate = books.byDate(games.days(), compare, onIce);
    TrackingSheets.Maps maps = tracking.maps();
    SyncSheets sync = tracking.sync(games.byId(), maps);
    TrackedSkaters tracked = tracking.read(games.played(), maps, sync, progress, known);
    clicked.read(games.byId());
    VideoSeconds seconds = games.seconds(sync, tracking.syncReach);
    VideoReport video = VideoReport.of(seconds, sync);
    Settings settings =
        settings(race, new SeasonBooks(byDate.book(), byDate.others()), byDate.seasons());
    try (OutputFolder folder = OutputFolder.at(out, SheetFiles.onDisk(inputs))) {
      Season all =
          Season.ofRecords(
              games.records(seconds, noNames, settings),
              ReviewGames.tagged(seconds, noNames, settings),
              settings,
              tracked.and(clicked));
      Optional<String> whose = whose(all);
      Path tables = Files.createDirectories(folder.writing().resolve("data"));
      // After the pages, which keep most of the tables.
      List<Part> csv = TableFile.parts(all.tables(), tables);
      Optional<String> one = Optional.empty();
      if (!tablesOnly) {
        SeasonReview review = Reviewer.review(all, whose, pages.allPlayers);
        ReviewBook.write(
            folder.writing(),
            review,
            new NumberSettings(window, race.seed(), goalPriorWeight),
            new Imprint(
                Main.version(),
                Books.note(byDate),
                Sheets.rowsOnPage(read.rowsRead(), read.setAside().size())
                    + video.foot()
                    + clicked.foot(),
                pages.book(video)),
            csv,
            (n, total) -> progress.step("writing pages", n, total));
        progress.done();
        one = pages.oneFile ? Optional.of(ReviewBook.oneFile(review)) : one;
      } else {
        ParallelFiles.write(csv, n -> {});
      }
      video.write(tables);
      if (jsonLines) {
        TableFile.writeLines(all.lines(), tables);
      }
      List<DoubtfulRow> setAside =
          Stream.of(read.setAside(), sync.setAside(), tracked.setAside(), clicked.setAside())
              .flatMap(List::stream)
              .toList();
      if (!setAside.isEmpty() || !read.unreadable().isEmpty()) {
        SetAside.write(folder.writing().resolve("set-aside"), setAside, read.unreadable());
      }
      RunFile.write(
          folder.writing(),
          read,
          inputs,
          sheetMaps,
          settings,
          byDate.used(),
          played,
          noNames,
          goalPriorWeight,
          tracking.syncReach,
          clicked.error);
      Path written = folder.finish();
      known.line().ifPresent(console::println);
      tell(
          console,
          read,
          all,
          tracked,
          video,
          written,
          List.of(books.line(byDate), played.rinkLine(asRead)));
      if (one.isPresent()) {
        Path file = written.resolve(one.get());
        console.println(
            String.format(
                Locale.ROOT,
                "One file for a mail: %s, %.1f MB; needs nothing beside it but the videos.",
                file,
                Files.size(file) / 1e6));
      }
      made = Optional.of(new Made(games.byId(), all, whose, tracked, written));
    }
    return Main.DONE;
  }

  /** Whatever decides, besides its sheet, what a game gives. */
  private List<String> decideGames(Ice.Played played, RaceSettings race) throws SheetException {
    return List.of(
        CacheFolder.key(sheets.words()),
        CacheFolder.key(books.words(compare)),
        CacheFolder.key(ice.args()),
        played.usual().toString(),
        played.rinkFrom(),
        played.periodFrom(),
        String.valueOf(window),
        manpower.word(),
        String.valueOf(race.seed()),
        String.valueOf(race.simulations()),
        race.skaters().toString());
  }

  /** The records of a game by the book of its season; empty where that cannot be used. */
  private Optional<GameRecords> records(Game game, Settings usual, UnaryOperator<IcingBook> onIce) {
    try {
      SeasonBooks books = this.books.on(game.date(), compare, onIce);
      return Optional.of(
          GameReader.read(game, usual.withBook(books.book()).withOthers(books.others())));
    } catch (BookException e) {
      // Thrown again, for the first game by date, once all sheets are read.
      return Optional.empty();
    }
  }

  /** The team that was asked for; refused where no sheet has it. */
  private Optional<String> whose(Season all) {
    if (team == null) {
      return Optional.empty();
    }
    Set<String> teams = Reviewer.teams(all);
    if (!teams.contains(team)) {
      throw new ParameterException(
          spec.commandLine(),
          "--team: found \"" + team + "\", expected one of " + String.join(", ", teams) + ".");
    }
    return Optional.of(team);
  }

  /** Everything the run read: the sheets, the map if there is one, and tracking. */
  private List<Path> inputs(List<Path> files) throws SheetException {
    return Stream.of(files, sheets.mapFiles(), tracking.inputs(), clicked.inputs())
        .flatMap(List::stream)
        .toList();
  }

  private void tell(
      PrintWriter console,
      RowAccount rows,
      Season all,
      TrackedSkaters tracked,
      VideoReport video,
      Path book,
      List<String> rulesAndRink)
      throws IOException {
    Path aside = book.resolve("set-aside");
    SeasonLines lines = new SeasonLines(all);
    sheets.report(
        rows, console, MOST_PROBLEMS, "; all of them: " + aside.resolve(SetAside.PROBLEMS));
    console.println(lines.counts());
    rulesAndRink.forEach(console::println);
    console.println(lines.flags(tablesOnly ? "data/flags.csv" : "flags.html"));
    lines.manpower(manpower).ifPresent(console::println);
    video.report(console, MOST_PROBLEMS, aside);
    tracked.report(console, MOST_TRACKING_PROBLEMS, aside);
    clicked.report(console, MOST_TRACKING_PROBLEMS, aside);
    lines.evidence().ifPresent(console::println);
    if (noNames && !(rows.setAside().isEmpty() && clicked.setAside().isEmpty())) {
      console.println(
          "The rows in "
              + aside
              + " stand in their own words, names included: leave that folder out when you pass the book on.");
    }
    console.println(
        tablesOnly
            ? "The tables are in this folder: " + book.resolve("data")
            : "Open this page: " + book.resolve("index.html"));
  }
}

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
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import tech.tablesaw.api.Table;
import twostrides.chart.Charts;
import twostrides.findings.Comparison;
import twostrides.findings.Grid;
import twostrides.findings.NumberPage;
import twostrides.findings.Numbers;
import twostrides.findings.OtherBooks;
import twostrides.findings.PlayerReview;
import twostrides.findings.PlayerSheet;
import twostrides.findings.Profile;
import twostrides.findings.SeasonReview;
import twostrides.findings.TeamReview;
import twostrides.season.Flag;
import twostrides.season.TableFile;
import twostrides.stats.Count;

/**
 * Writes the review book: a folder that opens from disk with no network. Pages do not depend on
 * each other, so they are written on two threads; what is in them does not depend on that.
 */
public final class ReviewBook {

  private static final int THREADS = 2;

  /** Cards with drawings of releases to look at; all of them stand in a table. Assumed. */
  private static final int DRAWN = 10;

  private final Path out;
  private final SeasonReview review;
  private final Numbers numbers;
  private final Comparison comparison;
  private final OtherBooks otherBooks;
  private final Imprint imprint;
  private final Charts charts;
  private final DrawingFiles drawings;
  private final TemplateEngine pages =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "twostrides.book.page");

  private ReviewBook(
      Path out, SeasonReview review, Numbers numbers, Charts charts, Imprint imprint) {
    this.out = out;
    this.review = review;
    this.numbers = numbers;
    this.comparison = Comparison.of(review);
    this.otherBooks = new OtherBooks(review.season());
    this.charts = charts;
    this.imprint = imprint;
    this.drawings = new DrawingFiles(out, imprint.options().pngs());
  }

  /**
   * Writes pages, pictures and tables.
   *
   * @param out folder, which exists
   * @param review what to show
   * @param numbers the pages of numbers
   * @param charts how to draw
   * @param imprint foot of the pages
   * @param progress told how many pages of how many are written
   * @throws IOException when a file cannot be written
   */
  public static void write(
      Path out,
      SeasonReview review,
      Numbers numbers,
      Charts charts,
      Imprint imprint,
      BiConsumer<Integer, Integer> progress)
      throws IOException {
    for (String folder :
        List.of("data", "teams", "players", "sheets", "charts", "clips/players", "clips/sheets")) {
      Files.createDirectories(out.resolve(folder));
    }
    for (Table t : review.season().tables()) {
      TableFile.write(t, out.resolve("data").resolve(t.name() + ".csv"));
    }
    for (String own : List.of("book.css", "icon.svg", "compare.js")) {
      Files.writeString(out.resolve(own), resource(own), StandardCharsets.UTF_8);
    }
    Files.writeString(out.resolve("book.js"), Script.text(), StandardCharsets.UTF_8);
    new ReviewBook(out, review, numbers, charts, imprint).pages(progress);
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
    all.add(this::compare);
    all.add(this::glossary);
    all.add(this::clips);
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
      threads.shutdownNow();
    }
  }

  private void index() throws IOException {
    Optional<TeamReview> first = review.teams().stream().findFirst();
    Optional<Pictures> pictures =
        first.isEmpty()
            ? Optional.empty()
            : Optional.of(
                drawn(Links.file(first.get()), first.get().team(), first.get().profile()));
    render(
        "index.html",
        "index.jte",
        Map.of(
            "review",
            review,
            "sentences",
            Sentences.of(review),
            "pages",
            numbers.pages(),
            "dearest",
            some("flag", review.dearest(), review.flagged()),
            "look",
            some("look", review.firstToLookAt(), review.toLookAt()),
            "imprint",
            imprint,
            "pictures",
            pictures));
  }

  /** Cards of the opening page: their ids and drawings are those of the page of flags. */
  private List<FlagCard> some(String kind, List<Flag> few, List<Flag> all) throws IOException {
    List<FlagCard> cards = new ArrayList<>();
    for (Flag f : few) {
      cards.add(card(kind, all.indexOf(f) + 1, f));
    }
    return cards;
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
        Map.of(
            "comparison", comparison,
            "data", data,
            "books", books,
            "imprint", imprint));
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
            cards("flag", review.flagged()),
            "look",
            some("look", drawnToLookAt(), review.toLookAt()),
            "near",
            cards("near-miss", review.nearMisses()),
            "costs",
            review.season().costs(),
            "imprint",
            imprint));
  }

  /** Those to look at that have a card: the first few, and those of the opening page. */
  private List<Flag> drawnToLookAt() {
    List<Flag> all = review.toLookAt();
    List<Flag> opening = review.firstToLookAt();
    return all.stream().filter(f -> all.indexOf(f) < DRAWN || opening.contains(f)).toList();
  }

  private List<FlagCard> cards(String kind, List<Flag> flags) throws IOException {
    List<FlagCard> cards = new ArrayList<>();
    for (Flag f : flags) {
      cards.add(card(kind, cards.size() + 1, f));
    }
    return cards;
  }

  private FlagCard card(String kind, int number, Flag f) throws IOException {
    String id = String.format(Locale.ROOT, "%s-%03d", kind, number);
    return new FlagCard(id, f, drawings.write(id, () -> charts.flag(f)));
  }

  private void clips() throws IOException {
    Map<String, Integer> games = new TreeMap<>();
    review.flags().forEach(f -> games.put(f.release().at().when().game().id(), 0));
    review
        .players()
        .forEach(p -> p.releases().forEach(r -> games.put(r.at().when().game().id(), 0)));
    int number = 0;
    for (Map.Entry<String, Integer> g : games.entrySet()) {
      g.setValue(++number);
    }
    MomentWords words = new MomentWords(review.window());
    ClipLists lists = new ClipLists(out.resolve("clips"), imprint.options().videoName(), games);
    lists.write(
        "flags",
        review.flagged().stream()
            .filter(f -> f.release().at().when().video().isPresent())
            .map(Clip::of)
            .toList());
    lists.writeInOrder(
        "look",
        review.toLookAt().stream()
            .filter(f -> f.release().at().when().video().isPresent())
            .map(Clip::of)
            .toList());
    for (PlayerReview p : review.players()) {
      lists.write(
          Links.file(p).replace(".html", ""),
          p.releases().stream()
              .filter(r -> r.at().when().video().isPresent())
              .map(Clip::of)
              .toList());
      lists.writeInOrder(
          Links.sheetClips(p).replaceFirst("^clips/", ""),
          Stream.concat(p.worked().stream(), p.talk().stream())
              .filter(m -> m.at().when().video().isPresent())
              .map(m -> Clip.of(m, words.sentence(m)))
              .toList());
    }
  }

  private void glossary() throws IOException {
    render("numbers.html", "glossary.jte", Map.of("words", Glossary.html(), "imprint", imprint));
  }

  private void numbers(NumberPage page) throws IOException {
    render(page.file(), "numbers.jte", Map.of("page", page, "imprint", imprint));
  }

  private void team(TeamReview t) throws IOException {
    Pictures pictures = drawn(Links.file(t), t.team(), t.profile());
    render(
        Links.file(t),
        "team.jte",
        Map.of("review", review, "team", t, "imprint", imprint, "pictures", pictures));
  }

  private void player(PlayerReview p) throws IOException {
    Pictures pictures = drawn(Links.file(p), name(p), p.profile());
    render(
        Links.file(p),
        "player.jte",
        Map.of(
            "review",
            review,
            "player",
            p,
            "grids",
            numbers.players().of(p.team(), p.player()),
            "imprint",
            imprint,
            "pictures",
            pictures));
  }

  private void sheets(TeamReview t) throws IOException {
    List<SheetCard> cards = new ArrayList<>();
    for (PlayerReview p : review.playersOf(t.team())) {
      PlayerSheet sheet = numbers.sheets().of(p);
      cards.add(
          new SheetCard(
              p,
              sheet,
              map(Links.file(p), name(p), p.profile()),
              drawings.write(
                  chart(Links.file(p)) + "-habit", () -> charts.habit(p.player(), sheet.habit()))));
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

  private static String name(PlayerReview p) {
    return p.player() + ", " + p.team();
  }

  /** Draws a team or player. */
  private Pictures drawn(String page, String title, Profile profile) throws IOException {
    Optional<Drawing> ways =
        profile.attempts() < Count.FEWEST_TO_SAY
            ? Optional.empty()
            : Optional.of(drawings.write(chart(page) + "-ways", () -> charts.ways(title, profile)));
    return new Pictures(ways, map(page, title, profile));
  }

  private Drawing map(String page, String title, Profile profile) throws IOException {
    return drawings.write(chart(page) + "-map", () -> charts.map(title, profile));
  }

  /** Start of the names of a page's drawings. */
  private static String chart(String page) {
    return page.replace(".html", "").replace('/', '-');
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

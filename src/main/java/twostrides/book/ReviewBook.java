package twostrides.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import twostrides.book.chart.RinkPlan;
import twostrides.findings.FaceOffAfter;
import twostrides.findings.Matched;
import twostrides.findings.NumberSettings;
import twostrides.findings.Numbers;
import twostrides.findings.RestartCosts;
import twostrides.findings.SeasonReview;
import twostrides.rink.Rink;

/**
 * Writes the review book: a folder that opens from disk with no network. Pages do not depend on
 * each other, so they are written on two threads; what is in them does not depend on that.
 */
public final class ReviewBook {

  private static final int THREADS = 2;

  private ReviewBook() {}

  /**
   * Writes pages and pictures.
   *
   * @param out folder, which exists
   * @param review what to show
   * @param settings what the run chose about the numbers
   * @param imprint foot of the pages
   * @param progress told how many pages of how many are written
   * @throws IOException when a file cannot be written
   */
  public static void write(
      Path out,
      SeasonReview review,
      NumberSettings settings,
      Imprint imprint,
      BiConsumer<Integer, Integer> progress)
      throws IOException {
    for (String folder : List.of("teams", "players", "sheets", "clips/players", "clips/sheets")) {
      Files.createDirectories(out.resolve(folder));
    }
    for (String own : List.of("book.css", "chart.css", "icon.svg", "compare.js")) {
      Files.writeString(out.resolve(own), resource(own), StandardCharsets.UTF_8);
    }
    write(pages(out, review, settings, imprint), progress);
    if (imprint.options().oneFile()) {
      OneFile.write(out, review, Files.readString(out.resolve("book.js"), StandardCharsets.UTF_8));
    }
  }

  /** Name of the team's book as one file, in the book's folder, where the run asked for it. */
  public static String oneFile(SeasonReview review) {
    return OneFile.name(review);
  }

  private interface Page {
    void write() throws IOException;
  }

  private static List<Page> pages(
      Path out, SeasonReview review, NumberSettings settings, Imprint imprint) {
    Rink rink = review.season().rink();
    PageFiles files = new PageFiles(out, imprint);
    Numbers numbers = Numbers.of(review.season(), review.ourTeam(), settings);
    IcingView icings = new IcingView(review, rink);
    FlagCards cards = new FlagCards(files, rink);
    Matched afterIcing =
        new RestartCosts(review.season(), review.ourTeam(), settings)
            .matched(review.ourTeam(), FaceOffAfter.ICING, review.season().columns().attempts());
    TeamPages teams = new TeamPages(review, numbers, files, icings, cards, afterIcing);
    PlayerPages players = new PlayerPages(review, numbers, files, icings, rink);
    ListPages lists = new ListPages(review, files, cards);
    List<Page> all =
        new ArrayList<>(
            List.of(
                teams::index,
                teams::icings,
                teams::opponents,
                players::players,
                lists::flags,
                lists::rulings,
                lists::restarts,
                lists::compare,
                lists::glossary));
    all.add(() -> ClipLists.write(out.resolve("clips"), imprint.options().videos(), review));
    all.add(() -> meeting(out, files, review, rink, imprint));
    numbers.pages().forEach(n -> all.add(() -> teams.numbers(n)));
    review.teams().forEach(t -> all.add(() -> teams.team(t)));
    review.shown().forEach(p -> all.add(() -> players.player(p)));
    review.teams().stream()
        .filter(t -> review.shows(t.team()))
        .forEach(t -> all.add(() -> players.sheets(t)));
    return all;
  }

  /** The meeting page and the scripts that hold what can be watched. */
  private static void meeting(
      Path out, PageFiles files, SeasonReview review, Rink rink, Imprint imprint)
      throws IOException {
    files.render(
        "meeting.html", "meeting.jte", Map.of("plan", new RinkPlan(rink).drawing("meeting-rink")));
    MeetingData watched = new MeetingData(review);
    Files.writeString(
        out.resolve("book.js"),
        Script.text(watched.games(imprint.options().videos())),
        StandardCharsets.UTF_8);
    Files.writeString(
        out.resolve("meeting.js"),
        watched.clips(rink) + resource("meeting.js"),
        StandardCharsets.UTF_8);
  }

  private static void write(List<Page> all, BiConsumer<Integer, Integer> progress)
      throws IOException {
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

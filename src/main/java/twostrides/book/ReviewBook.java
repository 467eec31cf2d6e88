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
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import twostrides.book.chart.RinkPlan;
import twostrides.findings.FaceOffAfter;
import twostrides.findings.Matched;
import twostrides.findings.NumberPage;
import twostrides.findings.NumberSettings;
import twostrides.findings.RestartCosts;
import twostrides.findings.SeasonReview;
import twostrides.output.ParallelFiles;
import twostrides.output.ParallelFiles.Part;
import twostrides.rink.Rink;

/**
 * Writes the review book: a folder that opens from disk with no network. No page depends on
 * another.
 */
public final class ReviewBook {

  private ReviewBook() {}

  /**
   * Writes pages and pictures.
   *
   * @param out folder, which exists
   * @param review what to show
   * @param settings what the run chose about the numbers
   * @param imprint foot of the pages
   * @param beside what else is written, after the pages
   * @param progress told how many pages of how many are written
   * @throws IOException when a file cannot be written
   */
  public static void write(
      Path out,
      SeasonReview review,
      NumberSettings settings,
      Imprint imprint,
      List<Part> beside,
      BiConsumer<Integer, Integer> progress)
      throws IOException {
    for (String folder : List.of("teams", "players", "sheets", "clips/players", "clips/sheets")) {
      Files.createDirectories(out.resolve(folder));
    }
    for (String own : List.of("book.css", "chart.css", "icon.svg", "compare.js")) {
      Files.writeString(out.resolve(own), resource(own), StandardCharsets.UTF_8);
    }
    List<Part> pages = pages(out, review, settings, imprint);
    ParallelFiles.write(
        Stream.of(pages, beside).flatMap(List::stream).toList(),
        n -> progress.accept(Math.min(n, pages.size()), pages.size()));
    if (imprint.options().oneFile()) {
      OneFile.write(out, review, Files.readString(out.resolve("book.js"), StandardCharsets.UTF_8));
    }
  }

  /** Name of the team's book as one file, in the book's folder, where the run asked for it. */
  public static String oneFile(SeasonReview review) {
    return OneFile.name(review);
  }

  private static List<Part> pages(
      Path out, SeasonReview review, NumberSettings settings, Imprint imprint) {
    Rink rink = review.season().rink();
    PageFiles files = new PageFiles(out, imprint);
    IcingView icings = new IcingView(review, rink);
    FlagCards cards = new FlagCards(files, rink);
    Matched afterIcing =
        new RestartCosts(review.season(), review.ourTeam(), settings)
            .matched(review.ourTeam(), FaceOffAfter.ICING, review.season().columns().attempts());
    TeamPages teams = new TeamPages(review, files, icings, cards, afterIcing);
    PlayerPages players = new PlayerPages(review, files, icings, rink);
    ListPages lists = new ListPages(review, files, cards);
    List<Part> all =
        new ArrayList<>(
            List.of(
                teams::index,
                teams::icings,
                players::players,
                lists::flags,
                lists::rulings,
                lists::restarts,
                lists::compare,
                lists::glossary));
    all.add(() -> ClipLists.write(out.resolve("clips"), imprint.options().videos(), review));
    all.add(() -> meeting(out, files, review, rink, imprint));
    NumberPage.all(review.season(), review.ourTeam(), settings)
        .forEach(n -> all.add(() -> teams.numbers(n.get())));
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

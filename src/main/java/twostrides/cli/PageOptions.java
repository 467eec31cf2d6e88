package twostrides.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Option;
import twostrides.book.BookOptions;
import twostrides.book.Videos;

/** What a review may choose about the pages of its book. */
final class PageOptions {

  @Option(
      names = "--all-players",
      description =
          "Writes pages, sheets and clip lists for the players of every team, not only of the"
              + " book's.")
  boolean allPlayers;

  @Option(
      names = "--video-name",
      paramLabel = "NAME",
      defaultValue = "{game}.mp4",
      description =
          "A game's video file as playlists name it, seen from the folder clips of the book; {game} stands"
              + " for the game's id (${DEFAULT-VALUE}).")
  String videoName;

  @Option(
      names = "--video-of",
      paramLabel = "GAME=NAME",
      description =
          "The same for one game whose file is named otherwise; may be given several times.")
  Map<String, String> videoOf = new LinkedHashMap<>();

  @Option(
      names = "--png",
      description =
          "Also writes every drawing as PNG, for slides; takes two to three times as long.")
  boolean png;

  @Option(
      names = "--one-file",
      description =
          "Also writes the team's book as one HTML file, for a mail or a tablet: TEAM-book.html.")
  boolean oneFile;

  /** How the book is to be written. */
  BookOptions book(VideoReport video) {
    return new BookOptions(new Videos(videoName, videoOf, video.unsure()), png, oneFile);
  }
}

package twostrides.book;

import java.util.Locale;
import java.util.OptionalDouble;
import twostrides.book.chart.Link;
import twostrides.exits.When;

/** What a mark of a picture leads to: its clip, where the second of the video is known. */
final class Watch {

  private Watch() {}

  /**
   * The clip of an instant.
   *
   * @param when the instant
   * @param title what is to be seen, in words
   */
  static Link at(When when, String title) {
    return at(when, when.video(), title);
  }

  /**
   * The clip at a second of a game's video.
   *
   * @param when some instant of the game
   * @param video the second
   * @param title what is to be seen, in words
   */
  static Link at(When when, OptionalDouble video, String title) {
    if (video.isEmpty()) {
      return Link.words(title);
    }
    return Link.to(
        "#clip="
            + Links.encoded(when.game().id())
            + String.format(Locale.ROOT, "&at=%.1f", video.getAsDouble()),
        title);
  }
}

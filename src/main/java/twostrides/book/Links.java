package twostrides.book;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import twostrides.findings.Names;
import twostrides.findings.PlayerReview;
import twostrides.findings.SeasonReview;
import twostrides.findings.TeamReview;

/** Where pages lie in the book; file names are made from numbers and a-z only. */
public final class Links {

  /** Icings, written or inferred, in a page's list of causes. */
  static final String ICINGS = "icing, any";

  /** What the sheet does not say, in every list. */
  static final String NOT_KNOWN = "not known";

  private static final Pattern MARK = Pattern.compile("\\p{M}");
  private static final Pattern OTHERS = Pattern.compile("[^a-z0-9]+");
  private static final Pattern ENDS = Pattern.compile("^-+|-+$");

  private Links() {}

  /** A team's page. */
  public static String file(TeamReview t) {
    return String.format(Locale.ROOT, "teams/%02d-%s.html", t.number(), slug(t.team()));
  }

  /**
   * Rows of the list of every defensive-zone face-off.
   *
   * @param picks what is picked, by the names of the page's lists: key, value, key, value
   */
  static String restarts(Optional<String> team, String... picks) {
    StringBuilder out = new StringBuilder("restarts.html#");
    team.ifPresent(t -> out.append("f0-team=").append(encoded(t)).append('&'));
    for (int i = 0; i < picks.length; i += 2) {
      out.append(i == 0 ? "" : "&").append("f0-").append(picks[i]).append('=');
      out.append(encoded(picks[i + 1]));
    }
    return out.toString();
  }

  /** A team's player sheets. */
  public static String sheets(TeamReview t) {
    return file(t).replaceFirst("^teams/", "sheets/");
  }

  /** A player's page. */
  public static String file(PlayerReview p) {
    return String.format(Locale.ROOT, "players/%03d-%s.html", p.number(), slug(p.player()));
  }

  /** A player's page, where the book has one. */
  static Optional<String> page(SeasonReview review, PlayerReview p) {
    return Optional.of(file(p)).filter(f -> review.shows(p.team()));
  }

  /**
   * The page of a player by name; none where the book has no page about him.
   *
   * @param team his team
   * @param player his name, where it is known
   */
  public static Optional<String> player(SeasonReview review, String team, Optional<String> player) {
    return review.playersOf(team).stream()
        .filter(p -> Optional.of(p.player()).equals(player))
        .findFirst()
        .flatMap(p -> page(review, p));
  }

  /**
   * The page of a player of whom a row of figures speaks: by name and team, or of the book's team
   * by name alone.
   */
  public static Optional<String> named(SeasonReview review, String words) {
    return review.shown().stream()
        .filter(
            p ->
                words.equals(p.player() + ", " + p.team())
                    || (words.equals(p.player()) && review.ourTeam().equals(Optional.of(p.team()))))
        .map(Links::file)
        .findFirst();
  }

  /**
   * A sentence that names a player, in parts.
   *
   * @param before up to his name
   * @param name his name; empty where it names nobody
   * @param page his page
   * @param after what follows
   */
  public record Mention(String before, String name, Optional<String> page, String after) {}

  /** A sentence with the first player whom it names and who has a page. */
  public static Mention mention(SeasonReview review, String sentence) {
    return review.shown().stream()
        .filter(
            p ->
                sentence.contains(Names.player(p.player()) + ":")
                    || sentence.contains(
                        Names.player(p.player()) + " (" + Names.shown(p.team()) + "):"))
        .findFirst()
        .map(
            p -> {
              String name = Names.player(p.player());
              int at = sentence.indexOf(name);
              return new Mention(
                  sentence.substring(0, at),
                  name,
                  Optional.of(file(p)),
                  sentence.substring(at + name.length()));
            })
        .orElse(new Mention(sentence, "", Optional.empty(), ""));
  }

  /** A player's sheet on his team's page of sheets. */
  public static Optional<String> sheet(SeasonReview review, PlayerReview p) {
    return review.team(p.team()).map(t -> sheets(t) + "#" + sheetId(p));
  }

  /** The sheet's place on its page. */
  public static String sheetId(PlayerReview p) {
    return "player=" + p.number();
  }

  /** Clip lists of a player's sheet, without their ending. */
  public static String sheetClips(PlayerReview p) {
    return String.format(Locale.ROOT, "clips/sheets/%03d", p.number());
  }

  /** The team-mate before a player. */
  public static Optional<PlayerReview> before(SeasonReview review, PlayerReview p) {
    return neighbour(review, p, -1);
  }

  /** The team-mate after a player. */
  public static Optional<PlayerReview> after(SeasonReview review, PlayerReview p) {
    return neighbour(review, p, 1);
  }

  private static Optional<PlayerReview> neighbour(SeasonReview review, PlayerReview p, int step) {
    List<PlayerReview> mates = review.playersOf(p.team());
    int at = mates.indexOf(p) + step;
    return at >= 0 && at < mates.size() ? Optional.of(mates.get(at)) : Optional.empty();
  }

  /** A page's name as the beginning of its pictures' names: a-z, 0-9 and hyphens. */
  static String id(String file) {
    return file.replace(".html", "").replace('/', '-');
  }

  /** A name in the address of a page, behind the #. */
  static String encoded(String name) {
    return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
  }

  /** A name as part of a file's name: letters a to z and digits, at most 40. */
  public static String slug(String name) {
    String plain =
        MARK.matcher(Normalizer.normalize(name, Normalizer.Form.NFD).toLowerCase(Locale.ROOT))
            .replaceAll("");
    plain = ENDS.matcher(OTHERS.matcher(plain).replaceAll("-")).replaceAll("");
    String cut = plain.length() > 40 ? plain.substring(0, 40) : plain;
    return cut.isEmpty() ? "x" : cut;
  }
}

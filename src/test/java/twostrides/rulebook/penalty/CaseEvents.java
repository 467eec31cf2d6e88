package twostrides.rulebook.penalty;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import twostrides.rulebook.penalty.PenaltyRules.AtExpiry;
import twostrides.rulebook.penalty.PenaltyRules.CoincidentalMinors;

/** Reads the words of {@code cases.csv}; see the README.txt beside it. */
final class CaseEvents {

  private static final Pattern CALL =
      Pattern.compile(
          "(home|away) ([a-z_]+)(?: to (\\w+))?(?: served by (\\w+))?(?: for (\\d+:\\d\\d))?");

  private CaseEvents() {}

  /** The events of a cell, each with its place in the cell, from 1, as its order. */
  static List<BoxEvent> events(String cell) {
    List<BoxEvent> events = new ArrayList<>();
    if (cell.isBlank()) {
      return events;
    }
    for (String one : cell.split(";", -1)) {
      String[] words = one.strip().split(" ", 3);
      GameInstant at =
          new GameInstant(Integer.parseInt(words[0]), seconds(words[1]), events.size() + 1);
      events.add(event(at, words[2], "event " + (events.size() + 1)));
    }
    return events;
  }

  private static BoxEvent event(GameInstant at, String text, String ref) {
    String[] words = text.split(" ", -1);
    switch (words[0]) {
      case "stop":
        return new BoxEvent.Stopped(at);
      case "start":
        return new BoxEvent.Started(at);
      case "goal":
        return new BoxEvent.Goal(at, side(words[1]), text.endsWith("penalty-shot"), ref);
      case "signal":
        return new BoxEvent.Signalled(at, side(words[1]), ref);
      case "net":
        return new BoxEvent.NetEmpty(at, side(words[1]), words[2].equals("empty"));
      default:
        return call(at, text, ref);
    }
  }

  private static BoxEvent call(GameInstant at, String text, String ref) {
    Matcher m = CALL.matcher(text);
    if (!m.matches() || !PenaltyKind.words().containsKey(m.group(2))) {
      throw new IllegalArgumentException("not an event: " + text);
    }
    return new BoxEvent.Called(
        at,
        side(m.group(1)),
        PenaltyKind.words().get(m.group(2)),
        m.group(5) == null ? OptionalDouble.empty() : OptionalDouble.of(seconds(m.group(5))),
        Optional.ofNullable(m.group(3)),
        Optional.ofNullable(m.group(4)),
        ref);
  }

  static Side side(String word) {
    return word.equals("home") ? Side.HOME : Side.AWAY;
  }

  /** Seconds of m:ss. */
  static double seconds(String clock) {
    String[] parts = clock.split(":", -1);
    return 60 * Integer.parseInt(parts[0]) + Double.parseDouble(parts[1]);
  }

  /** The instant of an {@code at} cell. */
  static GameInstant instant(String cell) {
    String[] words = cell.split(" ", -1);
    int period = Integer.parseInt(words[0]);
    double elapsed = seconds(words[1]);
    if (words.length == 2) {
      return GameInstant.afterRows(period, elapsed);
    }
    return words[2].equals("row")
        ? new GameInstant(period, elapsed, Long.parseLong(words[3]))
        : GameInstant.beforeRows(period, elapsed);
  }

  /** A book and the settings that differ from it. */
  static PenaltyRules rules(String cell) {
    String[] words = cell.split(" ", -1);
    RulesDraft draft = new RulesDraft();
    book(draft, words[0]);
    for (int i = 1; i < words.length; i++) {
      String[] pair = words[i].split("=", -1);
      change(draft, pair[0], pair[1]);
    }
    return draft.rules();
  }

  private static void book(RulesDraft draft, String name) {
    switch (name) {
      case "common", "usah" -> {}
      case "nhl", "pwhl" -> {
        draft.coincidentalMinors = CoincidentalMinors.FOUR_ON_FOUR;
        draft.overtimeSkaters = OptionalInt.of(3);
        draft.shorthandedGoalFreesOwnMinor = name.equals("pwhl");
      }
      case "iihf" -> {
        draft.matchSeconds = OptionalDouble.empty();
        draft.expiredMajorEmptyBoxExempt = true;
        draft.overtimeSkaters = OptionalInt.of(3);
      }
      default -> throw new IllegalArgumentException("no such book: " + name);
    }
  }

  private static void change(RulesDraft draft, String key, String value) {
    switch (key) {
      case "minor" -> draft.minorSeconds = seconds(value);
      case "major" -> draft.majorSeconds = seconds(value);
      case "fewest" -> draft.fewestSkaters = Integer.parseInt(value);
      case "overtime" ->
          draft.overtimeSkaters =
              value.equals("regulation")
                  ? OptionalInt.empty()
                  : OptionalInt.of(Integer.parseInt(value));
      case "coincidental" ->
          draft.coincidentalMinors =
              value.equals("cancel") ? CoincidentalMinors.CANCEL : CoincidentalMinors.FOUR_ON_FOUR;
      case "frees" -> draft.shorthandedGoalFreesOwnMinor = value.equals("yes");
      case "expired-major-exempt" -> draft.expiredMajorEmptyBoxExempt = value.equals("yes");
      case "at-expiry" ->
          draft.atExpiry = value.equals("over") ? AtExpiry.OVER : AtExpiry.STILL_SERVED;
      default -> throw new IllegalArgumentException("no such setting: " + key);
    }
  }
}

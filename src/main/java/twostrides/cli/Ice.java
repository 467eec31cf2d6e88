package twostrides.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import twostrides.game.Usual;
import twostrides.rink.Rink;
import twostrides.rulebook.Grade;
import twostrides.rulebook.IcingBook;
import twostrides.rulebook.SettingKey;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetMaps;

/**
 * The rink and the length of a period of a command: an option says so, or the sheet map, or else
 * the rulebook. An option and a map that differ are refused.
 */
final class Ice {

  private static final double MINUTE = 60;

  @Spec(Spec.Target.MIXEE)
  CommandSpec spec;

  @Option(
      names = "--rink",
      paramLabel = "RINK",
      description = "nhl or iihf, where the sheet map does not say; left out it is the rulebook's.")
  String rinkName;

  @Option(
      names = "--period-length",
      paramLabel = "MIN",
      description =
          "Minutes of a period, where the sheet map does not say; left out it is the rulebook's.")
  Double minutes;

  /** Who says something: the text of run.json and of the console. */
  private static final String MAP = "sheet map";

  /**
   * What is played on, and how long.
   *
   * @param book the book, with the rink and the period of this run
   * @param usual the same for sheets
   * @param rinkFrom who says which rink
   * @param periodFrom who says how long a period is
   * @param periodSaid whether that is more than a book's own default
   */
  record Played(
      IcingBook book, Usual usual, String rinkFrom, String periodFrom, boolean periodSaid) {

    /**
     * The rink in words, and the rulebook's where that is another.
     *
     * @param asRead the book without what the run says
     */
    String rinkLine(IcingBook asRead) {
      Rink rink = usual.rink();
      boolean differs = !asRead.rink().equals(rink) && !asRead.setting(SettingKey.RINK).assumed();
      return String.format(
          Locale.ROOT,
          "Rink: %s, %.2f x %.2f m, by %s%s.",
          rink.name(),
          rink.length(),
          rink.width(),
          rinkFrom,
          differs ? "; the rulebook's is " + asRead.rink().name() : "");
    }
  }

  /**
   * The rink and the period of a run.
   *
   * @param book the rulebook
   * @param maps the sheet maps; where they differ they say nothing of the run as a whole
   */
  Played of(IcingBook book, SheetMaps maps) {
    Said<String> rink =
        said(
            "--rink",
            Optional.ofNullable(rinkName),
            allSay(maps, m -> m.text("rink", "name")),
            "rink.name");
    String names = String.join(" or ", Rink.ALL.stream().map(Rink::name).toList());
    Rink known =
        rink.value()
            .map(n -> Rink.named(n).orElseThrow(() -> refused("--rink", n, names)))
            .orElse(book.rink());
    if (minutes != null && !Double.isFinite(minutes)) {
      throw refused(
          "--period-length", String.valueOf(minutes), SettingKey.PERIOD_MINUTES.allowed());
    }
    Said<Double> period =
        said(
            "--period-length",
            Optional.ofNullable(minutes),
            allSay(
                maps,
                m ->
                    m.number("clock", "period_length_s").stream()
                        .mapToObj(x -> x / 60)
                        .findFirst()),
            "clock.period_length_s / 60");
    double length = period.value().orElse(book.number(SettingKey.PERIOD_MINUTES));
    String written = BigDecimal.valueOf(length).stripTrailingZeros().toPlainString();
    boolean usual = SettingKey.PERIOD_MINUTES.allows(written);
    if (!usual && minutes != null) {
      throw refused("--period-length", written, SettingKey.PERIOD_MINUTES.allowed());
    }
    IcingBook played = book;
    if (rink.value().isPresent()) {
      played = played.played(SettingKey.RINK, known.name(), rink.by());
    }
    if (period.value().isPresent() && usual) {
      played = played.played(SettingKey.PERIOD_MINUTES, written, period.by());
    }
    String byBook = "rulebook " + book.id();
    return new Played(
        played,
        new Usual(known, length * MINUTE),
        rink.value().isPresent() ? rink.by() : byBook,
        period.value().isPresent() ? period.by() : byBook,
        period.value().isPresent()
            || book.setting(SettingKey.PERIOD_MINUTES).grade() == Grade.CHOSEN);
  }

  /** The options as they were given, for a command that runs another. */
  List<String> args() {
    List<String> args = new ArrayList<>();
    if (rinkName != null) {
      args.addAll(List.of("--rink", rinkName));
    }
    if (minutes != null) {
      args.addAll(List.of("--period-length", String.valueOf(minutes)));
    }
    return args;
  }

  /** What every map says alike; nothing when one says otherwise, or nothing. */
  private static <T> Optional<T> allSay(SheetMaps maps, Function<SheetMap, Optional<T>> setting) {
    List<Optional<T>> said = maps.maps().stream().map(setting).distinct().toList();
    return said.size() == 1 ? said.get(0) : Optional.empty();
  }

  /** What an option or the map says, and which of the two. */
  private record Said<T>(Optional<T> value, String by) {}

  private <T> Said<T> said(String option, Optional<T> given, Optional<T> mapped, String key) {
    if (given.isPresent() && mapped.isPresent() && !given.equals(mapped)) {
      throw refused(
          option,
          String.valueOf(given.get()),
          key
              + " of the sheet map, "
              + mapped.get()
              + ". Leave the option out, or correct the map");
    }
    return new Said<>(given.or(() -> mapped), given.isPresent() ? option : MAP);
  }

  private ParameterException refused(String option, String found, String expected) {
    return new ParameterException(
        spec.commandLine(), option + ": found " + found + ", expected " + expected + ".");
  }
}

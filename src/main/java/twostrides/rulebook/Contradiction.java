package twostrides.rulebook;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Two settings that cannot both hold in one book.
 *
 * @param first the one key
 * @param second the other key
 * @param when whether a book has both
 * @param why why they cannot both hold, a phrase
 */
record Contradiction(SettingKey first, SettingKey second, Predicate<IcingBook> when, String why) {

  private static final List<Contradiction> ALL =
      List.of(
          new Contradiction(
              SettingKey.TYPE,
              SettingKey.TOUCH_NULLIFIES,
              b -> b.says(Choice.TYPE_AUTOMATIC) && b.says(Choice.TOUCH_NULLIFIES_BEFORE_OR_AFTER),
              "automatic icing is complete at the goal line, so no touch after it can count"),
          new Contradiction(
              SettingKey.TYPE,
              SettingKey.BACK_OF_NET,
              b -> b.says(Choice.TYPE_AUTOMATIC) && b.says(Choice.BACK_OF_NET_YES),
              "automatic icing is complete before the puck can come off the back of the net"),
          new Contradiction(
              SettingKey.TYPE,
              SettingKey.NO_RACE,
              b -> !b.says(Choice.TYPE_HYBRID) && b.says(Choice.NO_RACE_DEFENDER_BACK),
              "only hybrid icing asks what holds where nobody chases"),
          new Contradiction(
              SettingKey.TYPE,
              SettingKey.TIE,
              b -> b.says(Choice.TYPE_AUTOMATIC) && b.says(Choice.TIE_WAVED_OFF),
              "automatic icing has no race, so none can be level"),
          new Contradiction(
              SettingKey.SHORTHANDED_EXEMPT,
              SettingKey.EXPIRED_MAJOR_EXEMPT,
              b -> b.says(Choice.SHORTHANDED_EXEMPT_NO) && b.says(Choice.EXPIRED_MAJOR_EXEMPT_YES),
              "a book that exempts no shorthanded team cannot exempt one whose major is over"),
          new Contradiction(
              SettingKey.OVERTIME_SKATERS,
              SettingKey.FEWEST_SKATERS,
              b -> b.number(SettingKey.OVERTIME_SKATERS) < b.number(SettingKey.FEWEST_SKATERS),
              "overtime cannot start below the fewest skaters"),
          new Contradiction(
              SettingKey.MINOR_MINUTES,
              SettingKey.MAJOR_MINUTES,
              b -> b.number(SettingKey.MAJOR_MINUTES) < b.number(SettingKey.MINOR_MINUTES),
              "a major is not shorter than a minor"));

  /**
   * The first contradiction in a book.
   *
   * @param book the book
   */
  static Optional<Contradiction> in(IcingBook book) {
    return ALL.stream().filter(c -> c.when().test(book)).findFirst();
  }
}

package twostrides.demo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import twostrides.demo.Skater.Habits;
import twostrides.demo.Skater.Legs;
import twostrides.demo.Skater.Role;

/**
 * The invented league: towns, teams and players that exist nowhere. The same in every run, whatever
 * the seed: the seed changes games, not people.
 *
 * @param own the team whose season is shown
 * @param opponents whom that team meets, in the order of the schedule
 */
record League(Team own, List<Team> opponents) {
  private static final List<String> GIVEN =
      List.of(
          "Sole", "Ida", "Tove", "Maren", "Elke", "Juna", "Wren", "Asta", "Runa", "Petra", "Odile",
          "Nell", "Signe", "Brisa", "Lene", "Mirka", "Una", "Hedda", "Yara", "Fenna", "Ilse",
          "Cato", "Jorun", "Tamsin", "Vesna", "Alba", "Kaja", "Merle", "Ronja", "Silke");
  private static final List<String> SURNAME_STARTS =
      List.of(
          "Orrin", "Brekka", "Quilla", "Marro", "Fennu", "Ostra", "Tarvo", "Vella", "Skarri",
          "Lomma", "Dunne", "Pella", "Grava", "Wisku");
  private static final List<String> SURNAME_ENDS =
      List.of("vik", "sund", "mund", "rey", "holt", "dahn", "lock", "nost", "quist", "thorn");

  /** Fixed: people do not change with the seed of a run. */
  private static final long PEOPLE_SEED = 20_311_004L;

  /** Legs are drawn apart, so that who is who does not change with them. */
  private static final long LEGS_SEED = 20_311_005L;

  /**
   * The six defenders of the team whose season is shown; what a reader of its book should find. In
   * order: 4 hurries though there is time and sends it too far, 17 carries, 6 hurries a little, 23
   * passes well, 2 and 28 are ordinary. Nobody else of that team is iced more often than the
   * others.
   */
  private static final List<Habits> OWN_DEFENDERS =
      List.of(
          new Habits(4.5, 1.0, -0.02, 5.5),
          new Habits(0.3, 1.9, 0.03, 1.0),
          new Habits(2.4, 0.9, -0.03, 1.0),
          new Habits(0.6, 0.9, 0.09, 1.0),
          Habits.USUAL,
          new Habits(1.1, 0.8, -0.01, 1.0));

  /** Jersey numbers of that team: twelve forwards, then the six defenders in the order above. */
  private static final List<Integer> OWN_NUMBERS =
      List.of(9, 12, 21, 14, 19, 8, 10, 25, 27, 11, 18, 36, 4, 17, 6, 23, 2, 28);

  /** Codes and names, in the order of the schedule; the first six are the rivals. */
  private static final List<String> OPPONENTS =
      List.of(
          "TAR Tarn Wolves",
          "COP Copperfen Kites",
          "SAL Old Saltry Otters",
          "MER Merrowdale Pikes",
          "ASH Ashlock Lanterns",
          "BRA Brackenholm Storks",
          "FEN Fenwhistle Cranes",
          "DRU Drumlow Millers",
          "HAZ Hazelgarth Larks",
          "ORM Ormsbeck Tinkers",
          "PEL Pellbrook Plovers",
          "LUN Lunnersea Gulls",
          "KES Kesterfell Rooks",
          "THR Thrushden Weavers",
          "GRI Gristmoor Ferrymen",
          "NRW Norrowby Smelts",
          "JUT Juttering Hares",
          "EBB Ebbsworth Coopers",
          "IVE Iverholt Stoats",
          "RUD Ruddlefield Finches",
          "UMB Umberlow Terns",
          "YAR Yarrowick Drovers",
          "ZEL Zelkover Bitterns",
          "BIR Birchensund Potters",
          "CAI Cairnlea Bells",
          "DOV Dovecombe Wagoners",
          "ELS Elsinmarsh Newts",
          "FOX Foxlorne Ringers",
          "HOL Hollowtarn Loons",
          "KIN Kindlewick Colliers",
          "MOS Mossgill Tanners");

  /** Skaters of the other teams wear 2 to 29; goalkeepers 30 to 35. */
  private static final int LOWEST_NUMBER = 2;

  private static final int HIGHEST_NUMBER = 29;

  /** Builds the league; every call gives the same one. */
  static League found() {
    SplittableRandom people = new SplittableRandom(PEOPLE_SEED);
    SplittableRandom legs = new SplittableRandom(LEGS_SEED);
    Iterator<String> names = names(people).iterator();
    Team own = team("GLA", "Glasswater Herons", names, people, legs, true);
    List<Team> opponents = new ArrayList<>();
    for (String o : OPPONENTS) {
      opponents.add(team(o.substring(0, 3), o.substring(4), names, people, legs, false));
    }
    return new League(own, List.copyOf(opponents));
  }

  /** Names used once each: every surname with one given name, then the same with others. */
  private static List<String> names(SplittableRandom people) {
    List<String> surnames = new ArrayList<>();
    SURNAME_STARTS.forEach(start -> SURNAME_ENDS.forEach(end -> surnames.add(start + end)));
    for (int i = surnames.size() - 1; i > 0; i--) {
      Collections.swap(surnames, i, people.nextInt(i + 1));
    }
    int[] given = surnames.stream().mapToInt(s -> people.nextInt(GIVEN.size())).toArray();
    List<String> names = new ArrayList<>();
    for (int round = 0; round < GIVEN.size(); round++) {
      for (int i = 0; i < given.length; i++) {
        names.add(GIVEN.get((given[i] + round) % GIVEN.size()) + " " + surnames.get(i));
      }
    }
    return names;
  }

  private static Team team(
      String code,
      String name,
      Iterator<String> names,
      SplittableRandom people,
      SplittableRandom legs,
      boolean shown) {
    List<Skater> forwards = new ArrayList<>();
    Iterator<Integer> numbers = numbers(people, shown).iterator();
    for (int i = 0; i < Team.FORWARDS; i++) {
      forwards.add(
          new Skater(
              numbers.next(), names.next(), Role.FORWARD, drawn(people), legs(legs, 7.8, 9.2)));
    }
    List<Skater> defenders = new ArrayList<>();
    for (int i = 0; i < Team.DEFENDERS; i++) {
      Habits habits = shown ? OWN_DEFENDERS.get(i) : drawn(people);
      String who = shown && i == 1 ? "Noor Halvik" : names.next();
      defenders.add(new Skater(numbers.next(), who, Role.DEFENDER, habits, legs(legs, 7.4, 8.8)));
    }
    Skater keeper =
        new Skater(
            shown ? 31 : people.nextInt(30, 36),
            names.next(),
            Role.GOALKEEPER,
            Habits.USUAL,
            Legs.USUAL);
    return new Team(code, name, forwards, defenders, keeper);
  }

  private static List<Integer> numbers(SplittableRandom people, boolean shown) {
    if (shown) {
      return OWN_NUMBERS;
    }
    List<Integer> free =
        IntStream.rangeClosed(LOWEST_NUMBER, HIGHEST_NUMBER)
            .boxed()
            .collect(Collectors.toCollection(ArrayList::new));
    List<Integer> worn = new ArrayList<>();
    for (int i = 0; i < Team.FORWARDS + Team.DEFENDERS; i++) {
      worn.add(free.remove(people.nextInt(free.size())));
    }
    return worn;
  }

  private static Habits drawn(SplittableRandom people) {
    return new Habits(
        people.nextDouble(0.5, 1.6),
        people.nextDouble(0.7, 1.35),
        people.nextDouble(-0.04, 0.04),
        1.0);
  }

  private static Legs legs(SplittableRandom legs, double slowest, double fastest) {
    return new Legs(
        legs.nextDouble(slowest, fastest), legs.nextDouble(4.0, 5.4), legs.nextDouble(0.2, 0.45));
  }
}

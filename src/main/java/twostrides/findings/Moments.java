package twostrides.findings;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import twostrides.exits.Against;
import twostrides.exits.AtCenter;
import twostrides.exits.Exit;
import twostrides.exits.ExitOutcome;
import twostrides.exits.LetGo;
import twostrides.exits.Release;
import twostrides.game.Pressure;
import twostrides.game.Strength;
import twostrides.season.Flag;
import twostrides.season.Season;

/**
 * Chooses for each player the moments that worked and those to talk about, by the rules of
 * docs/numbers.md.
 */
final class Moments {

  /**
   * Harder ones first: how many things made it hard, then a skater short before heavy pressure
   * before a long shift, then later in the season.
   */
  private static final Comparator<Moment> HARDER_FIRST =
      Comparator.comparingInt((Moment m) -> -m.hardness())
          .thenComparing(m -> !m.shorthanded())
          .thenComparing(m -> !m.heavyPressure());

  private final List<Flag> dearestFirst;
  private final Map<Reviewer.Who, List<Moment>> worked = new HashMap<>();
  private final Map<Reviewer.Who, List<Moment>> talk = new HashMap<>();

  Moments(Season season) {
    dearestFirst =
        season.flagRecords().stream().filter(Flag::flagged).sorted(SeasonReview.DEAREST).toList();
    season.games().stream().flatMap(g -> g.exits().stream()).forEach(this::exit);
    season
        .releaseRecords()
        .forEach(a -> release(a.release(), season.flag(a.release()).filter(Flag::flagged)));
    worked.values().forEach(Collections::reverse);
    worked.values().forEach(all -> all.sort(HARDER_FIRST));
    talk.values().forEach(Collections::reverse);
    talk.values().forEach(all -> all.sort(worseFirst()));
  }

  /**
   * By kind; flags as on their page, icings by how near the red line they were let go, pucks given
   * away by the attempts that followed. What is level: later in the season first.
   */
  private Comparator<Moment> worseFirst() {
    return Comparator.comparing(Moment::kind)
        .thenComparingDouble(
            m ->
                switch (m.kind()) {
                  case FLAGGED -> dearestFirst.indexOf(m.flag().orElseThrow());
                  case ICED -> m.at().where().shortOfCenter().orElseThrow();
                  case GIVEN_AWAY -> -m.outcome().against().map(Against::attempts).orElse(-1);
                  case WORKED, RESTARTED -> 0;
                });
  }

  List<Moment> worked(Reviewer.Who who) {
    return worked.getOrDefault(who, List.of());
  }

  List<Moment> talk(Reviewer.Who who) {
    return talk.getOrDefault(who, List.of());
  }

  private void exit(Exit e) {
    ExitOutcome o = e.outcome();
    boolean restart = o.restarted().orElse(false) || o.restartWithinWindow().orElse(false);
    boolean attempt = o.against().filter(a -> a.attempts() > 0 || a.goals() > 0).isPresent();
    if (e.mark().equals(Optional.of(AtCenter.GAINED)) && !restart && !attempt) {
      Moment m = new Moment(Moment.Kind.WORKED, e.at(), o, Optional.of(e), Optional.empty());
      if (m.shift().orElse(0) >= Moment.OVERLONG_SHIFT_S) {
        return;
      }
      e.player().ifPresent(p -> add(worked, new Reviewer.Who(e.at().team(), p), m));
    }
  }

  private void release(Release r, Optional<Flag> flag) {
    Optional<Moment.Kind> kind = kind(r, flag.isPresent());
    Reviewer.Who.of(r)
        .ifPresent(
            w ->
                kind.ifPresent(
                    k -> add(talk, w, new Moment(k, r.at(), r.outcome(), r.exit(), flag))));
  }

  /** Why a release is one to talk about; empty when it is not. */
  private static Optional<Moment.Kind> kind(Release r, boolean flagged) {
    return switch (MarkOutcome.of(r.outcome())) {
      case ICED -> Optional.of(flagged ? Moment.Kind.FLAGGED : Moment.Kind.ICED);
      case OTHER_RESTART -> Optional.of(flagged ? Moment.Kind.FLAGGED : Moment.Kind.RESTARTED);
      case OPPONENT_NEXT -> givenAway(r) ? Optional.of(Moment.Kind.GIVEN_AWAY) : Optional.empty();
      case OWN_NEXT, STOPPED -> Optional.empty();
    };
  }

  /** Little pressure, no skater short, and no shot: there was a choice. */
  private static boolean givenAway(Release r) {
    Optional<Pressure> pressure = r.at().state().pressure();
    boolean little = pressure.filter(p -> p == Pressure.NONE || p == Pressure.LIGHT).isPresent();
    boolean shot = r.how().shot().filter(s -> s != LetGo.Shot.NONE).isPresent();
    return little && r.at().state().strength() != Strength.SHORTHANDED && !shot;
  }

  private static void add(Map<Reviewer.Who, List<Moment>> to, Reviewer.Who who, Moment m) {
    to.computeIfAbsent(who, k -> new ArrayList<>()).add(m);
  }
}

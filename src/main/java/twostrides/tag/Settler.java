package twostrides.tag;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.rink.Place;

/** Weighs icings by clicked skaters; the command line knows how. */
public interface Settler {

  /**
   * An icing without a verdict.
   *
   * @param game its game
   * @param clock period and clock, as the sheet has them, in words
   * @param heading game, clock, player and team in words
   * @param place where the puck was let go, metres, frame of the team that let it go
   * @param video second of the game's video, where it is known
   * @param sentence what the book says of it
   */
  record Icing(
      String game,
      String clock,
      String heading,
      Place place,
      OptionalDouble video,
      String sentence) {}

  /**
   * A click.
   *
   * @param place metres, frame of the team that let the puck go
   * @param error standard error of the place each way, metres, where it was clicked on the picture;
   *     on the rink a click has the error of the run
   */
  record Click(Place place, Optional<Double> error) {}

  /**
   * A skater as he was clicked.
   *
   * @param own whether he is of the team that let the puck go
   * @param carrier whether he let it go
   * @param at his place
   * @param later his place half a second later, empty where it was not clicked
   */
  record Clicked(boolean own, boolean carrier, Click at, Optional<Click> later) {}

  /**
   * What is said of an icing with those skaters.
   *
   * @param settled whether there is a verdict
   * @param gain the chance to gain center with its interval, in words
   * @param sentence the book's sentence, or what is wrong with the clicks
   * @param picture the rink diagram as an SVG file, empty where something is wrong
   */
  record Verdict(boolean settled, String gain, String sentence, String picture) {}

  /** The icings to look at, in the book's order. */
  List<Icing> icings();

  /** What is said of the icing of a number, from 0, with these skaters. */
  Verdict weigh(int icing, List<Clicked> skaters) throws IOException;

  /** The rows of the places sheet that say so, column by column. */
  List<Map<String, String>> rows(int icing, List<Clicked> skaters);
}

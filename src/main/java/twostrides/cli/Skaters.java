package twostrides.cli;

import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import twostrides.race.SkaterSet;

/** The skaters of a command: a level of play, or a file of the user's own. */
final class Skaters {
  private Skaters() {}

  /**
   * Finds them, or says what is wrong.
   *
   * @param wordOrFile what {@code --level} was given
   * @param line the command, for a message
   */
  static SkaterSet find(String wordOrFile, CommandLine line) {
    try {
      return SkaterSet.find(wordOrFile);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(line, "--level: " + e.getMessage(), e);
    }
  }
}

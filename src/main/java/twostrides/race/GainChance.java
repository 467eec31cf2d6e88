package twostrides.race;

/**
 * The chance of bringing the puck to the red line before a checker is there.
 *
 * @param chance the recalibrated chance with its 95 % interval
 * @param grade how well the places behind it are known
 * @param raw the race's own chance before recalibration, mean over the simulations, 0 to 1
 * @param error simulation error of the raw chance: one standard error
 * @param seconds time that the straightest way about as good as the best takes, mean over the
 *     simulations, s
 * @param degrees direction that this way has in most simulations, from straight up ice, positive to
 *     the left
 */
public record GainChance(
    Chance chance, GainGrade grade, double raw, double error, double seconds, double degrees) {}

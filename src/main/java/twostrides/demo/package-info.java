/**
 * An invented league, simulated touch by touch with its truth kept, so that the pipeline can be
 * held against what was really so. Skaters are bodies with places and speeds; whether one gets to
 * another decides carries. Shares no deciding code with the pipeline. Metres, seconds, m/s; each
 * side's frame has +x as its attack, the world is in the home team's.
 *
 * <p>May import {@code rink}, for its lengths alone, and {@code output}.
 */
package twostrides.demo;

/**
 * An invented league, simulated touch by touch with its truth kept, so that the pipeline can be
 * held against what was really so. Shares no deciding code with the pipeline.
 *
 * <p>May import {@code rink}.
 */
package twostrides.demo;

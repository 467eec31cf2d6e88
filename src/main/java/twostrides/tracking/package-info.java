/**
 * Skaters' places over time, from tracking sheets: who was where at an instant of the video, and
 * how fast. Places in metres in one team's frame, speeds in metres a second, time in seconds of
 * video; which second of video belongs to which game clock is said by a sync sheet or by rows that
 * have both.
 *
 * <p>{@link twostrides.tracking.TrackForm} declares the sheets, {@link twostrides.tracking.Tracks}
 * reads one game at a time into arrays, {@link twostrides.tracking.Smoother} gives velocities,
 * {@link twostrides.tracking.VideoClock} matches clock and video. Without any tracking {@link
 * twostrides.tracking.SyncSheets} and {@link twostrides.tracking.VideoSeconds} give the rows of a
 * season their seconds of the video.
 *
 * <p>May import {@code sheet}, {@code rink} and {@code game}.
 */
package twostrides.tracking;

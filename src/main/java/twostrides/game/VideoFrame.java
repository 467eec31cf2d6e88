package twostrides.game;

import java.util.Optional;

/**
 * A frame of a tracking sheet.
 *
 * @param sheet the sheet
 * @param segment the piece of video that counts its own frames, where the sheet says so
 * @param number the frame
 */
public record VideoFrame(String sheet, Optional<String> segment, int number) {}

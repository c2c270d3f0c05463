package org.thalweg.fastening;

import java.util.Optional;
import org.thalweg.units.Length;
import org.thalweg.wind.WindZone;

/**
 * A part of a seam whose clips stand evenly. Where two parts meet there is a clip; it is counted with the lower one.
 *
 * @param from where it begins, from the seam's lowest place; 0 or more
 * @param to   where it ends
 * @param most greatest spacing in it
 * @param zone the wind zone that says so; nothing where clips are not spaced for the wind. Of several that ask for the same,
 *             the hardest
 * @param row  the clips, from {@code from} on
 */
public record ClipRun(Length from, Length to, Length most, Optional<WindZone> zone, EvenRow row) {}

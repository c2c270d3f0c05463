/**
 * Tape and tables. A crew reads its tape in feet, inches and sixteenths, or in millimetres; the estimator counts
 * squares and pounds. Rain is so much an hour, water so much a minute. This room reads the caller's unit once and writes it back once; every other room works in
 * metres, radians and kilograms and never learns what an inch is.
 */
@NullMarked
package org.thalweg.units;

import org.jspecify.annotations.NullMarked;

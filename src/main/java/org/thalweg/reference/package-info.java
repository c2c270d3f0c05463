/**
 * The tables on the shop wall: what a square foot of 24 gauge weighs, how far copper grows on a summer day, how flat a
 * standing-seam roof may be. Each figure stands in a file as it was printed, with where it was read and how sure of it
 * we are; this room reads the files once and never changes them.
 *
 * <p>A figure that was recalled and not seen in print says so wherever it is cited. Where the tables disagree, the
 * choice is made in one place and the reason stands beside it. Tables are in inches, pounds and degrees Fahrenheit as
 * often as not; what leaves this room for others to compute with is in metres, kilograms and kelvins.
 */
@NullMarked
package org.thalweg.reference;

import org.jspecify.annotations.NullMarked;

/**
 * Rows of screws, clips and cleats' fasteners: so far apart at most, at most so far from each end, evenly spaced.
 */
@NullMarked
package org.thalweg.fastening;

import org.jspecify.annotations.NullMarked;

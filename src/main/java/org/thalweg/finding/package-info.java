/**
 * What we noticed. A <em>finding</em> comes with the answer: a valley too flat, a sliver at the rake, a panel longer
 * than the truck. A <em>refusal</em> comes instead of it: what was sent describes no roof. Both carry a code that
 * never changes meaning, the place, the figures, and what to do about it.
 */
@NullMarked
package org.thalweg.finding;

import org.jspecify.annotations.NullMarked;

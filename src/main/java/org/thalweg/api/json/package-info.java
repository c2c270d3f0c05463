/**
 * From bytes to wire records, strictly. A member that is not known, a number in quotes, a second member of the same name:
 * all of it is refused, everything at once, each with a pointer. What is read has a digest, so that a caller can tell
 * later which request an answer belongs to.
 *
 * <p>The binding of JSON to records is written out here and not left to a data-binding library, because such a library
 * stops at the first mistake, converts kindly what should be refused, and words its complaints for programmers.
 */
@NullMarked
package org.thalweg.api.json;

import org.jspecify.annotations.NullMarked;

/**
 * What goes over the wire, member by member: the published contract as records. Requests hold the caller's numbers and
 * tape strings just as they came; only the readers and writers of {@link org.thalweg.api} turn them into the trade's
 * records and back. A member that may be absent is {@code @Nullable} in a request and {@code Optional} in an answer.
 */
@NullMarked
package org.thalweg.api.wire;

import org.jspecify.annotations.NullMarked;

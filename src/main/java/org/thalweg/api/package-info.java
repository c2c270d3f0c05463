/**
 * The door. Callers come with JSON over HTTP; this room reads it into the trade's records, hands them over, and writes
 * the result back in the caller's units. No other room knows JSON, HTTP or Quarkus.
 */
@NullMarked
package org.thalweg.api;

import org.jspecify.annotations.NullMarked;

/**
 * The night shift. Saved jobs lie in files, more than anyone posts one by one; a process takes its share of them, prices
 * it by one book, and leaves whole files of answers behind or nothing. No server is started for it.
 */
@NullMarked
package org.thalweg.api.batch;

import org.jspecify.annotations.NullMarked;

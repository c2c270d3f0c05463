/**
 * One job, from the measured roof to what is ordered, in reading order. The only room that calls all the others.
 */
@NullMarked
package org.thalweg.packet;

import org.jspecify.annotations.NullMarked;

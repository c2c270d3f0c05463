package org.thalweg.api.wire;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Part of an answer that comes back in a request: members that are not its components are passed over, because answers grow and
 * have more than is asked for here. They are still read as JSON.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
public @interface PassesOver {}

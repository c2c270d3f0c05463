package org.thalweg.units;

/**
 * A figure that knows what it measures, so that a finding or a refusal can be written in the caller's unit
 * long after the request was read.
 */
public sealed interface Measure
        permits Length, Angle, Pitch, Area, Mass, Flow, Rainfall, Temperature, Force, Pressure, Count {}

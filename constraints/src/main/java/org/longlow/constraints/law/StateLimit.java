package org.longlow.constraints.law;

import org.longlow.constraints.layout.Part.LampKind;

/**
 * Heights of a lamp's centre in one state that are tighter than the federal ones.
 *
 * @param state its name
 * @param leastMm mm above the road
 * @param mostMm mm above the road
 */
public record StateLimit(
    String state, LampKind kind, double leastMm, double mostMm, LawSource source) {}
